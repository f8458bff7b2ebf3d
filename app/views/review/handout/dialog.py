"""The dialog for a report: of which days, in which form and language, with which notes."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QDate, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDateEdit,
    QDialog,
    QFormLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from app.analysis.local_time import known_zone
from app.domain.keeping import Note
from app.reports.report_words import LANGUAGES
from app.views.lettering import Weight
from app.views.review import words
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.outlines import outline_fields
from app.views.widgets.plain import strong_button

WIDE = 10_000
WRONG_WAY_ROUND = message("The last day lies before the first. Choose a later one.")
HEALTH = message("The file holds health data and is not encrypted.")
NAMES = {"en": "English", "de": "Deutsch"}


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is to be made: the days, both included, notes by id, and whether it is opened afterwards."""

    athlete: str
    first: date
    last: date
    language: str
    sheet: bool
    notes: frozenset[str]
    opened: bool


class ReportDialog(QDialog):
    """Asks what a report is to hold. `wanted` carries a `Wanted`. It makes nothing itself."""

    wanted = Signal(object)

    def __init__(
        self, look: Look, athlete: str, days: tuple[date, date], language: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._athlete = athlete
        self._notes: tuple[Note, ...] = ()
        self.setWindowTitle(tr("Report"))
        self.title = ElidedLabel(tr("Report: {name}").format(name=athlete))
        self.first, self.last = (_day_edit(day) for day in days)
        self.form_of, self.language = ChoiceBox(tr("Kind"), 24, look), ChoiceBox(tr("Language"), 24, look)
        self.form_of.addItem(tr("Report of one to three pages"), False)
        self.form_of.addItem(tr("Sheet for the athlete, one page"), True)
        for code in LANGUAGES:
            self.language.addItem(NAMES[code], code)
        self.language.setCurrentIndex(LANGUAGES.index(language) if language in LANGUAGES else 0)
        self.notes = QListWidget()
        self.opened = QCheckBox(tr("Open it afterwards"))
        self.opened.setChecked(True)
        self.message = QLabel(tr(HEALTH))
        self.save = strong_button(look, tr("Save as …"), self._save)
        self.save.setDefault(True)
        self._card = Card(tr("What stands in it"))
        self._lay_out()
        self.first.dateChanged.connect(self._show_notes)
        self.last.dateChanged.connect(self._show_notes)
        self._set_look(look)

    def show_notes(self, notes: Sequence[Note]) -> None:
        """Offer notes; none of them is chosen until somebody chooses it."""
        self._notes = tuple(notes)
        self._show_notes()

    def say(self, sentence: str) -> None:
        """Say what came of it, or what stands in its way."""
        self.message.setText(sentence)

    @property
    def days(self) -> tuple[date, date]:
        """First and last day, as chosen."""
        return _date(self.first), _date(self.last)

    @property
    def chosen_notes(self) -> frozenset[str]:
        """The ids of the notes that are ticked."""
        items = (self.notes.item(row) for row in range(self.notes.count()))
        return frozenset(
            item.data(Qt.ItemDataRole.UserRole)
            for item in items
            if item.checkState() is Qt.CheckState.Checked
        )

    def _save(self) -> None:
        first, last = self.days
        if last < first:
            self.say(tr(WRONG_WAY_ROUND))
            self.last.setFocus()
            return
        self.wanted.emit(
            Wanted(
                self._athlete,
                first,
                last,
                self.language.currentData(),
                self.form_of.currentData(),
                self.chosen_notes,
                self.opened.isChecked(),
            )
        )

    def _show_notes(self, *_changed: object) -> None:
        ticked = self.chosen_notes
        first, last = self.days
        self.notes.clear()
        for note in self._notes:
            day = note.at.astimezone(known_zone(note.zone)).date()
            if first <= day <= last:
                told = f"{words.dated(day)}, {note.who}: {' '.join(note.text.split())}"
                item = QListWidgetItem(told, self.notes)
                item.setData(Qt.ItemDataRole.UserRole, note.id)
                chosen = note.id in ticked
                item.setCheckState(Qt.CheckState.Checked if chosen else Qt.CheckState.Unchecked)
        self._notes_caption.setText(tr("Notes, none unless ticked") if self.notes.count() else tr("No notes"))
        self.notes.setVisible(self.notes.count() > 0)

    def _lay_out(self) -> None:
        told: tuple[tuple[str, QWidget], ...] = (
            (tr("From"), self.first),
            (tr("To"), self.last),
            (tr("Kind"), self.form_of),
            (tr("Language"), self.language),
        )
        form = QFormLayout()
        self._captions = [QLabel(text) for text, _ in told]
        for caption, (text, entry) in zip(self._captions, told, strict=True):
            caption.setBuddy(entry)
            entry.setAccessibleName(text)
            form.addRow(caption, entry)
        self._notes_caption = QLabel()
        self.notes.setAccessibleName(tr("Notes"))
        self.notes.setWordWrap(True)
        self._card.body.addLayout(form)
        self._card.body.addWidget(self._notes_caption)
        self._card.body.addWidget(self.notes, 1)
        self._card.body.addStretch()
        frame = QVBoxLayout(self)
        frame.addWidget(self.title)
        frame.addWidget(self._card, 1)
        frame.addWidget(self.opened)
        frame.addWidget(self.message)
        frame.addWidget(self.save, 0, Qt.AlignmentFlag.AlignRight)

    def _set_look(self, look: Look) -> None:
        self.setPalette(palette(look.scheme))
        outline_fields(self, look.scheme)
        sizes = look.sizes
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        self._card.set_look(look)
        for part in (self.first, self.last, self.notes, self.opened, self.message, *self._captions):
            part.setFont(look.font(sizes.body))
        self._notes_caption.setFont(look.font(sizes.body))
        self.message.setWordWrap(True)
        self.message.setTextFormat(Qt.TextFormat.PlainText)
        for box in (self.form_of, self.language):
            box.set_look(look)
        parent = self.parentWidget()
        room = QSize(WIDE, WIDE) if parent is None else parent.size()
        self.resize(
            min(sizes.body * 44, room.width() - sizes.body), min(sizes.body * 40, room.height() - sizes.body)
        )


def _day_edit(day: date) -> QDateEdit:
    edit = QDateEdit(QDate(day.year, day.month, day.day))
    edit.setDisplayFormat("yyyy-MM-dd")
    edit.setCalendarPopup(True)
    return edit


def _date(edit: QDateEdit) -> date:
    found = edit.date()
    return date(found.year(), found.month(), found.day())
