"""What was done against what was planned, by exercise and side, as a table on the athlete's screen."""

from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from app.analysis.session_done import DoneRow, SessionDone
from app.domain.plan import Side
from app.domain.words import band_text, side_word
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import label, say

DASH = "–"
"""Stands for what is not defined or not known."""


class DoneTable(QWidget):
    """A row an exercise and side: reps, time under tension, contacts; below it sums and faults."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._done: SessionDone | None = None
        self._cells: list[QLabel] = []
        self._contacts = False
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(look.sizes.body)
        self._grid.setVerticalSpacing(round(look.sizes.body * 0.25))
        self._grid.setColumnStretch(0, 1)
        self._sums = label(look, wrap=True)
        self._faults = label(look, wrap=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._grid)
        column.addSpacing(round(look.sizes.body * 0.5))
        column.addWidget(self._sums)
        column.addWidget(self._faults)
        column.addStretch(1)

    def show_done(self, done: SessionDone) -> None:
        """Show these figures."""
        if done == self._done:
            return
        self._done = done
        for old in self._cells:
            self._grid.removeWidget(old)
            old.hide()
            old.deleteLater()
        self._cells.clear()
        self._contacts = any(row.contacts != 0 for row in done.rows)
        heads = ("", "", tr("reps"), tr("under tension"), tr("contacts") if self._contacts else "")
        for column, words in enumerate(heads):
            self._cell(0, column, label(self._look, words, colour=self._look.scheme.quiet))
        for place, row in enumerate(done.rows, 1):
            self._show_row(place, row)
        say(self._sums, sums_text(done))
        say(self._faults, faults_line(done))

    def _show_row(self, place: int, row: DoneRow) -> None:
        scheme = self._look.scheme
        side = "" if row.side is Side.BOTH else tr(side_word(row.side)).lower()
        reps = tr("{done} of {asked}").format(done=row.reps, asked=band_text(row.asked))
        colour = scheme.ink if row.met else scheme.notice
        self._cell(place, 0, label(self._look, row.name, wrap=True))
        self._cell(place, 1, label(self._look, side, colour=scheme.quiet))
        self._cell(place, 2, label(self._look, reps, weight=Weight.SEMIBOLD, colour=colour))
        self._cell(place, 3, label(self._look, tension_text(row.tut_ms), colour=scheme.quiet))
        contacts = DASH if row.contacts is None else str(row.contacts)
        contacts = contacts if self._contacts else ""
        self._cell(place, 4, label(self._look, contacts, colour=scheme.quiet))

    def _cell(self, row: int, column: int, cell: QLabel) -> None:
        self._grid.addWidget(cell, row, column)
        self._cells.append(cell)


def tension_text(tut_ms: int | None) -> str:
    """Time under tension in whole seconds, a dash where it is not defined."""
    return DASH if tut_ms is None else tr("{seconds} s").format(seconds=round(tut_ms / 1000))


def sums_text(done: SessionDone) -> str:
    """The sums of a session in a sentence."""
    contacts = DASH if done.contacts is None else str(done.contacts)
    words = tr("In all: {tension} under tension by the tempo written, contacts: {contacts}.")
    return words.format(tension=tension_text(done.tut_ms), contacts=contacts)


def faults_line(done: SessionDone) -> str:
    """The faults of a session by name, with how often each was marked."""
    if not done.faults:
        return tr("No fault was named.")
    named = [tr("{fault} × {n}").format(fault=fault, n=n) for fault, n in done.faults]
    return tr("Faults: {faults}").format(faults=", ".join(named))
