"""The faults of a bout: those that were marked, and those that can still be marked on its last rep."""

from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from app.domain.plan import Exercise
from app.domain.records import BoutRecord
from app.run.intents import MarkFault
from app.run.state import RepMark
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import label, quiet_button, say

MOST_CHIPS = 9


class FaultChips(QWidget):
    """Shows what was marked; a button a fault of the exercise marks it on the last rep of the bout.

    `marked` carries the intent.
    """

    marked = Signal(object)

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._names: tuple[str, ...] = ()
        self._on: RepMark | None = None
        self._chips: list[QPushButton] = []
        self._said = FittedLabel(look, pixels=look.sizes.body, lines=2)
        self._row = FlowLayout(None, round(look.sizes.body * 0.2))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(round(look.sizes.body * 0.3))
        heading = tr("Faults  ·  F, then a number, marks one on the last rep")
        column.addWidget(label(look, heading, colour=look.scheme.quiet))
        column.addLayout(self._row)
        column.addWidget(self._said)

    def show_bout(self, exercise: Exercise, record: BoutRecord) -> None:
        """Show the faults of a bout of an exercise."""
        self._on = None
        if record.reps:
            last = record.reps[-1]
            self._on = RepMark(record.bout, record.attempt, last.rep, last.side)
        if exercise.faults[:MOST_CHIPS] != self._names:
            self._names = exercise.faults[:MOST_CHIPS]
            self._build()
        for chip in self._chips:
            chip.setEnabled(self._on is not None)
        say(self._said, faults_text(record))

    def name(self, number: int) -> str | None:
        """The fault of a number from 1."""
        return self._names[number - 1] if 1 <= number <= len(self._names) else None

    def _build(self) -> None:
        for old in self._chips:
            self._row.removeWidget(old)
            old.hide()
            old.deleteLater()
        self._chips = []
        for number, name in enumerate(self._names, 1):
            words = tr("{number}  {fault}").format(number=number, fault=name)
            chip = quiet_button(self._look, words, partial(self._mark, name))
            chip.setAccessibleName(tr("Mark {fault} on the last rep").format(fault=name))
            self._chips.append(chip)
            self._row.addWidget(chip)

    def _mark(self, name: str) -> None:
        if self._on is not None:
            self.marked.emit(MarkFault(name, self._on))


def faults_text(record: BoutRecord) -> str:
    """The faults that were marked on the reps of a bout, rep by rep."""
    marked = [
        tr("rep {rep} · {fault}").format(rep=rep.rep, fault=fault or tr("a fault"))
        for rep in record.reps
        for fault in rep.faults
    ]
    return "   ".join(marked) or tr("none marked")
