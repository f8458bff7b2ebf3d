"""A chart in a card, with the figures of the place pointed at in words, and all of them as a table."""

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QStackedWidget, QWidget

from app.views.charts.chart import Chart
from app.views.theme import LIGHT, Look
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.rows_model import Column, RowsModel
from app.views.widgets.rows_table import RowsTable
from app.views.widgets.word_button import WordButton

AS_TABLE, AS_CHART = message("As table"), message("As chart")


class ChartCard(Card):
    """One chart, its readout and its table."""

    def __init__(
        self,
        heading: str,
        aside: str,
        chart: Chart,
        columns: tuple[Column[Any], ...],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(heading, aside, parent)
        self.chart = chart
        self.model: RowsModel[Any] = RowsModel(columns, LIGHT, self)
        self.table = RowsTable(self.model, tr("{heading}, figures").format(heading=heading))
        self.table.sort_by(0, Qt.SortOrder.DescendingOrder)
        self.readout = ElidedLabel()
        self.readout.setAccessibleName(tr("{heading}, figures pointed at").format(heading=heading))
        self.readout.setForegroundRole(QPalette.ColorRole.WindowText)
        self.switch = WordButton(tr(AS_TABLE))
        self.switch.setAccessibleName(f"{heading}: {self.switch.text()}")
        self.switch.clicked.connect(self._turn)
        self._faces = QStackedWidget()
        self._faces.addWidget(chart)
        self._faces.addWidget(self.table)
        self.header.addWidget(self.switch)
        self.body.addWidget(self._faces, 1)
        self.body.addWidget(self.readout)
        chart.pointed.connect(self._read_out)

    def set_rows(self, rows: tuple[Any, ...]) -> None:
        """Fill the table."""
        self.model.set_rows(rows)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        self.chart.set_look(look)
        self.table.set_look(look, dense=True)
        self.switch.set_look(look)
        self.readout.setFont(look.font(look.sizes.small))

    def _turn(self) -> None:
        to_table = self._faces.currentWidget() is self.chart
        self._faces.setCurrentWidget(self.table if to_table else self.chart)
        self.switch.setText(tr(AS_CHART) if to_table else tr(AS_TABLE))
        self.switch.setAccessibleName(f"{self.heading.text()}: {self.switch.text()}")
        self.readout.setVisible(not to_table)

    def _read_out(self, _place: int) -> None:
        self.readout.say(self.chart.accessibleDescription())
