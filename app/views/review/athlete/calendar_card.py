"""The calendar of sessions as a card; a session that was done can be opened from it."""

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtWidgets import QAbstractItemView

from app.views.review.athlete.calendar import Week, calendar_columns
from app.views.theme import LIGHT, Look
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.rows_model import RowsModel
from app.views.widgets.rows_table import RowsTable

LEGEND = message("● done · ✕ missed · – excused · ○ planned")


class CalendarCard(Card):
    """Weeks down, days across. `opened` carries the run of the day that was chosen."""

    opened = Signal(str)

    def __init__(self) -> None:
        super().__init__(tr("Calendar of sessions"), tr(LEGEND))
        self.model: RowsModel[Week] = RowsModel(calendar_columns(), LIGHT, self)
        self.table = RowsTable(self.model, tr("Calendar of sessions"))
        self.table.sort_by(0, Qt.SortOrder.DescendingOrder)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.activated.connect(self._open)
        self.body.addWidget(self.table, 1)

    def show_weeks(self, weeks: Sequence[Week]) -> None:
        """Show these weeks."""
        self.model.set_rows(weeks)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        self.table.set_look(look, dense=True)

    def _open(self, index: QModelIndex) -> None:
        if index.column() == 0:
            return
        marks = self.model.rows[index.row()].days[index.column() - 1]
        done = [mark.run_id for mark in marks if mark.run_id is not None]
        if done:
            self.opened.emit(done[0])
