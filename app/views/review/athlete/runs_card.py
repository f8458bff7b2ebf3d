"""The runs of an athlete as a list: Return opens one, and one can be corrected."""

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, Signal, SignalInstance

from app.domain.records import RunSummary
from app.views.review import words
from app.views.review.marks import LEGEND
from app.views.review.runs import run_columns
from app.views.theme import LIGHT, Look
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.rows_model import RowsModel
from app.views.widgets.rows_table import RowsTable
from app.views.widgets.word_button import WordButton

OPEN, CORRECT = message("Open"), message("Correct…")


class RunsCard(Card):
    """A list of runs. `opened` and `correct_wanted` carry the UUID of the one that is chosen."""

    opened = Signal(str)
    correct_wanted = Signal(str)

    def __init__(self) -> None:
        super().__init__(tr("Sessions"))
        self.model: RowsModel[RunSummary] = RowsModel(run_columns(), LIGHT, self)
        self.table = RowsTable(self.model, tr("Sessions"))
        self.table.sort_by(0, Qt.SortOrder.DescendingOrder)
        self.open, self.correct = WordButton(tr(OPEN)), WordButton(tr(CORRECT))
        for button in (self.open, self.correct):
            self.header.addWidget(button)
        self.body.addWidget(self.table, 1)
        self.open.clicked.connect(lambda: self._emit(self.opened))
        self.correct.clicked.connect(lambda: self._emit(self.correct_wanted))
        self.table.activated.connect(self._activated)
        self.table.selectionModel().selectionChanged.connect(self._weigh)

    def show_runs(self, runs: Sequence[RunSummary], *, pain: bool, correcting: bool) -> None:
        """Show these runs; `correcting` says whether one can be corrected."""
        self.model.columns = run_columns(offset=words.zones_differ(runs), pain=pain)
        self.model.set_rows(runs)
        self.set_aside(tr(LEGEND) if any(run.corrected for run in runs) else "")
        self.correct.setVisible(correcting)
        self._weigh()

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        self.table.set_look(look)
        for button in (self.open, self.correct):
            button.set_look(look)

    def _activated(self, _index: QModelIndex) -> None:
        self._emit(self.opened)

    def _weigh(self) -> None:
        one = len(self.table.selectionModel().selectedRows()) == 1
        self.open.setEnabled(one)
        self.correct.setEnabled(one)

    def _emit(self, signal: SignalInstance) -> None:
        chosen = self.table.selectionModel().selectedRows()
        if len(chosen) == 1:
            signal.emit(self.model.rows[chosen[0].row()].run_id)
