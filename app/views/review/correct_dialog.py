"""The dialog in which a run is corrected: what was done, the new value with who and why, and the history."""

from PySide6.QtCore import QItemSelection, QSize, Qt, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QDialog, QFormLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from app.analysis.local_time import known_zone
from app.domain.correctable import check_value
from app.views.lettering import Weight
from app.views.review import words
from app.views.review.correct_fields import Field, Part, parts_of, value_words
from app.views.review.details import RunDetails
from app.views.review.history import HistoryLine, conflict_words, history_columns, lines_of
from app.views.review.marks import LEGEND, marked
from app.views.review.signing import Signing
from app.views.review.value_editor import ValueEditor
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.bars import quieten_bars
from app.views.widgets.card import Card
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.outlines import outline_fields
from app.views.widgets.plain import scrolling, strong_button
from app.views.widgets.rows_model import Column, RowsModel
from app.views.widgets.rows_table import RowsTable
from app.views.widgets.word_button import WordButton

SAME = message("That value holds already. Enter another, or close.")
WIDE = 10_000
KEPT = message("What was recorded stays as it is. A correction is written beside it.")


class CorrectDialog(QDialog):
    """Lets one run be corrected. It changes nothing itself.

    `corrected` carries field, value, who and why; `taken_back` a correction, who and why.
    """

    corrected = Signal(object, object, str, str)
    taken_back = Signal(object, str, str)

    def __init__(self, look: Look, who: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._details: RunDetails | None = None
        self._fields: tuple[Field, ...] = ()
        self.setWindowTitle(tr("Correct a session"))
        self.title, self.subtitle = ElidedLabel(), ElidedLabel(least=30)
        self.parts: RowsModel[Part] = RowsModel(part_columns(), look.scheme, self)
        self.part_list = RowsTable(self.parts, tr("What was done"))
        self.field = ChoiceBox(tr("What is wrong"), 24, look)
        self.present = QLabel()
        self.editor = ValueEditor(look)
        self.signing = Signing(self.say, who)
        self.message = QLabel(tr(KEPT))
        self.correct = strong_button(look, tr("Correct"), self._correct)
        self.lines: RowsModel[HistoryLine] = RowsModel(history_columns(), look.scheme, self)
        self.history = RowsTable(self.lines, tr("History"))
        self.conflict = QLabel()
        self.take_back = WordButton(tr("Take back"))
        self._lay_out()
        self._connect()
        self._set_look(look)

    def show_details(self, details: RunDetails) -> None:
        """Show a run as it is now; the part and the field chosen stay chosen."""
        place, field = max(self._chosen_part(), 0), max(self.field.currentIndex(), 0)
        self._details = details
        header = details.header
        started = words.moment(header.started_at.astimezone(known_zone(header.zone)))
        self.title.say(header.plan_title)
        self.subtitle.say(words.DOT.join((header.athlete, started, header.zone)))
        self.parts.set_rows(parts_of(details))
        self.lines.set_rows(lines_of(details))
        self.conflict.setText(conflict_words(details))
        self.conflict.setVisible(bool(self.conflict.text()))
        self.part_list.selectRow(min(place, len(self.parts.rows) - 1))
        self.field.setCurrentIndex(min(field, self.field.count() - 1))
        self._show_field()
        self._weigh_history()

    def say(self, sentence: str) -> None:
        """Say what came of a correction, or what stands in its way."""
        self.message.setText(sentence)

    def _connect(self) -> None:
        self.part_list.selectionModel().selectionChanged.connect(self._show_part)
        self.history.selectionModel().selectionChanged.connect(self._weigh_history)
        self.field.activated.connect(self._show_field)
        self.take_back.clicked.connect(self._take_back)

    def _chosen_part(self) -> int:
        rows = self.part_list.selectionModel().selectedRows()
        return rows[0].row() if rows else -1

    def _show_part(self, _chosen: QItemSelection | None = None) -> None:
        place = self._chosen_part()
        if place < 0:
            return
        self._fields = self.parts.rows[place].fields
        self.field.clear()
        for field in self._fields:
            self.field.addItem(field.title)
        self._show_field()

    def _show_field(self, _place: int = 0) -> None:
        field = self._field_chosen()
        if field is None or self._details is None:
            return
        zone = self._details.header.zone
        self.present.setText(value_words(field.name, field.value, zone))
        self.editor.show_field(field, zone, self._details.athletes)

    def _field_chosen(self) -> Field | None:
        place = self.field.currentIndex()
        return self._fields[place] if 0 <= place < len(self._fields) else None

    def _correct(self) -> None:
        field, value = self._field_chosen(), self.editor.value
        if field is None or not self.signing.said():
            return
        try:
            check_value(field.target.subject, field.name, value)
        except ValueError as error:
            self.say(f"{str(error)[:1].upper()}{str(error)[1:]}.")
            return
        if value == field.value and not self.conflict.text():
            self.say(tr(SAME))
            return
        self.corrected.emit(field, value, *self.signing.take())

    def _take_back(self) -> None:
        line = self._line_chosen()
        if line is not None and self.signing.said():
            self.taken_back.emit(line.correction, *self.signing.take())

    def _line_chosen(self) -> HistoryLine | None:
        rows = self.history.selectionModel().selectedRows()
        return self.lines.rows[rows[0].row()] if rows else None

    def _weigh_history(self, _chosen: QItemSelection | None = None) -> None:
        line = self._line_chosen()
        holds = line is not None and self._details is not None
        self.take_back.setEnabled(
            holds
            and line is not None
            and self._details is not None
            and self._details.history.holds(line.correction)
        )

    def _lay_out(self) -> None:
        self._done, self._new = Card(tr("What was done"), tr(LEGEND)), Card(tr("Correction"))
        self._past = Card(tr("History"), tr("Nothing is written over; taking back is a further correction."))
        self._done.body.addWidget(self.part_list)
        form = QFormLayout()
        self._captions = [
            QLabel(text) for text in (tr("What is wrong"), tr("Now"), tr("Should be"), tr("Who"), tr("Why"))
        ]
        entries = (self.field, self.present, self.editor, *self.signing.entries)
        for caption, entry in zip(self._captions, entries, strict=True):
            caption.setBuddy(entry)
            entry.setAccessibleName(caption.text())
            form.addRow(caption, entry)
        self._new.body.addLayout(form)
        self._new.body.addWidget(self.message)
        self._new.body.addStretch(1)
        self._new.body.addWidget(self.correct, 0, Qt.AlignmentFlag.AlignRight)
        self._past.header.addWidget(self.take_back)
        self._past.body.addWidget(self.conflict)
        self._past.body.addWidget(self.history)
        above = QHBoxLayout()
        above.addWidget(self._done, 6)
        above.addWidget(self._new, 4)
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(above, 6)
        column.addWidget(self._past, 4)
        self._scroll = scrolling(inside, tr("Correction and history"))
        frame = QVBoxLayout(self)
        frame.addWidget(self.title)
        frame.addWidget(self.subtitle)
        frame.addWidget(self._scroll, 1)

    def _set_look(self, look: Look) -> None:
        self.setPalette(palette(look.scheme))
        outline_fields(self, look.scheme)
        quieten_bars(self._scroll, look)
        sizes = look.sizes
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        self.subtitle.setFont(look.font(sizes.body))
        self.subtitle.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        for card in (self._done, self._new, self._past):
            card.set_look(look)
        for table in (self.part_list, self.history):
            table.set_look(look, dense=True)
        for box in (self.field,):
            box.set_look(look)
        for entry in (*self.signing.entries, self.present, *self._captions):
            entry.setFont(look.font(sizes.body))
        for words_ in (self.message, self.conflict):
            words_.setWordWrap(True)
            words_.setTextFormat(Qt.TextFormat.PlainText)
            words_.setFont(look.font(sizes.small))
        self.conflict.setStyleSheet(f"color: {look.scheme.attention}")
        self.take_back.set_look(look)
        self.correct.setDefault(True)
        parent = self.parentWidget()
        room = QSize(WIDE, WIDE) if parent is None else parent.size()
        self.resize(
            min(sizes.body * 74, room.width() - sizes.body), min(sizes.body * 50, room.height() - sizes.body)
        )


def part_columns() -> tuple[Column[Part], ...]:
    """The session and its bouts: what, and the figures of each."""
    return (
        Column("", lambda part: part.title, lambda part: part.title, wide=True),
        Column(
            tr("Reps"),
            lambda part: marked(part.reps, part.corrected, "reps_stated", "missed"),
            lambda part: part.reps,
            right=True,
        ),
        Column(
            tr("RPE"),
            lambda part: marked(part.rpe, part.corrected, "rpe", "session_rpe"),
            lambda part: part.rpe,
            right=True,
        ),
        Column(
            tr("Pain"),
            lambda part: marked(part.pain, part.corrected, "pain"),
            lambda part: part.pain,
            right=True,
        ),
        Column(
            tr("Note"),
            lambda part: marked(part.note, part.corrected, "note"),
            lambda part: part.note,
            wide=True,
        ),
    )
