"""The dialog in which the reference side of an athlete is chosen: the side, who and why, and the history."""

from PySide6.QtCore import QItemSelection, Qt, Signal
from PySide6.QtWidgets import QDialog, QFormLayout, QLabel, QVBoxLayout, QWidget

from app.analysis.local_time import known_zone
from app.domain.correctable import Value
from app.domain.plan import Side
from app.views.lettering import Weight
from app.views.review import words
from app.views.review.history import HOLDS, REPLACED
from app.views.review.reference.known import Chosen, KnownReference
from app.views.review.signing import Signing
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.bars import quieten_bars
from app.views.widgets.card import Card
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.outlines import outline_fields
from app.views.widgets.plain import scrolling, strong_button
from app.views.widgets.rows_model import Column, RowsModel, Tone
from app.views.widgets.rows_table import RowsTable
from app.views.widgets.word_button import WordButton

ABOUT = message("The side that the other is measured against. The program never chooses it.")
SIDES: dict[Side | None, str] = {
    None: message("no side"),
    Side.LEFT: message("left"),
    Side.RIGHT: message("right"),
}
WIDE, HIGH, ROOM = 46, 34, 10_000


class ReferenceDialog(QDialog):
    """Changes nothing itself. `chosen` carries side, who and why; `taken_back` a correction, who and why."""

    chosen = Signal(object, str, str)
    taken_back = Signal(object, str, str)

    def __init__(self, look: Look, who: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Reference side"))
        self.title = ElidedLabel(least=12)
        self.side = ChoiceBox(tr("Reference side"), 12, look)
        for told in SIDES.values():
            self.side.addItem(tr(told))
        self.signing = Signing(self.say, who)
        self.message = QLabel(tr(ABOUT))
        self.choose = strong_button(look, tr("Choose"), self._choose)
        self.lines: RowsModel[Chosen] = RowsModel(choice_columns(), look.scheme, self)
        self.history = RowsTable(self.lines, tr("History"))
        self.take_back = WordButton(tr("Take back"))
        self._lay_out()
        self.history.selectionModel().selectionChanged.connect(self._weigh)
        self.take_back.clicked.connect(self._take_back)
        self._set_look(look)

    def show_known(self, known: KnownReference) -> None:
        """Show the side as it is now, and how it came to be."""
        self.title.say(words.DOT.join((tr("Reference side"), known.athlete)))
        self.side.setCurrentIndex(list(SIDES).index(known.side))
        self.lines.set_rows(known.choices)
        self._weigh()

    def say(self, sentence: str) -> None:
        """Say what came of it, or what stands in its way."""
        self.message.setText(sentence)

    def _choose(self) -> None:
        if self.signing.said():
            self.chosen.emit(tuple(SIDES)[self.side.currentIndex()], *self.signing.take())

    def _take_back(self) -> None:
        line = self._line()
        if line is not None and self.signing.said():
            self.taken_back.emit(line.correction, *self.signing.take())

    def _line(self) -> Chosen | None:
        rows = self.history.selectionModel().selectedRows()
        return self.lines.rows[rows[0].row()] if rows else None

    def _weigh(self, _chosen: QItemSelection | None = None) -> None:
        line = self._line()
        self.take_back.setEnabled(line is not None and line.holds)

    def _lay_out(self) -> None:
        self._new = Card(tr("Choice"))
        self._past = Card(tr("History"), tr("Nothing is written over; taking back is a further correction."))
        form = QFormLayout()
        self._captions = [QLabel(told) for told in (tr("Side"), tr("Who"), tr("Why"))]
        for caption, entry in zip(self._captions, (self.side, *self.signing.entries), strict=True):
            caption.setBuddy(entry)
            entry.setAccessibleName(caption.text())
            form.addRow(caption, entry)
        self._new.body.addLayout(form)
        self._new.body.addWidget(self.message)
        self._new.body.addWidget(self.choose, 0, Qt.AlignmentFlag.AlignRight)
        self._past.header.addWidget(self.take_back)
        self._past.body.addWidget(self.history)
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._new)
        column.addWidget(self._past, 1)
        self._scroll = scrolling(inside, tr("Choice and history"))
        frame = QVBoxLayout(self)
        frame.addWidget(self.title)
        frame.addWidget(self._scroll, 1)

    def _set_look(self, look: Look) -> None:
        self.setPalette(palette(look.scheme))
        outline_fields(self, look.scheme)
        quieten_bars(self._scroll, look)
        sizes = look.sizes
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        for card in (self._new, self._past):
            card.set_look(look)
        self.history.set_look(look, dense=True)
        self.side.set_look(look)
        for entry in (*self.signing.entries, *self._captions):
            entry.setFont(look.font(sizes.body))
        self.message.setWordWrap(True)
        self.message.setTextFormat(Qt.TextFormat.PlainText)
        self.message.setFont(look.font(sizes.small))
        self.take_back.set_look(look)
        self.choose.setDefault(True)
        parent = self.parentWidget()
        width, height = (ROOM, ROOM) if parent is None else (parent.width(), parent.height())
        self.resize(min(sizes.body * WIDE, width - sizes.body), min(sizes.body * HIGH, height - sizes.body))


def choice_columns() -> tuple[Column[Chosen], ...]:
    """When, from what to what, who, why, and whether it holds."""
    return (
        Column(tr("When"), _when, lambda line: line.correction.change.at),
        Column(tr("Before"), lambda line: _side(line.correction.before), _when),
        Column(tr("After"), lambda line: _side(line.correction.after), _when),
        Column(tr("Who"), lambda line: line.correction.change.who, lambda line: line.correction.change.who),
        Column(
            tr("Why"),
            lambda line: line.correction.change.why,
            lambda line: line.correction.change.why,
            wide=True,
        ),
        Column("", _state, _state, tone=lambda line: Tone.INK if line.holds else Tone.QUIET),
    )


def _when(line: Chosen) -> str:
    change = line.correction.change
    return words.moment(change.at.astimezone(known_zone(change.zone)))


def _side(value: Value) -> str:
    return tr(SIDES[None if value is None else Side(str(value))])


def _state(line: Chosen) -> str:
    return tr(HOLDS if line.holds else REPLACED)
