"""A card with a chart of any series: pointed at in words, turned into a table, copied, kept as a picture."""

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAction, QGuiApplication, QKeySequence, QPalette
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QLabel, QMenu, QStackedWidget, QWidget

from app.domain.errors import PacewrightError
from app.views.charts.data import ChartData
from app.views.charts.export import Page, save_chart
from app.views.charts.series_chart import SeriesChart
from app.views.theme import LIGHT, Look, palette
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.rows_model import Column, RowsModel
from app.views.widgets.rows_table import RowsTable
from app.views.widgets.word_button import WordButton

WHY, MORE = message("Why?"), message("More")
AS_TABLE, AS_CHART = message("As table"), message("As chart")
COPY, SAVE = message("Copy as text"), message("Save as picture…")
COPIED, SAVED = message("The figures are copied."), message("Saved as {path}.")
FILTER = "SVG (*.svg);;PNG (*.png)"


class FreeLabel(QLabel):
    """A wrapped text that is content with any height; else all cards beside it would be asked for theirs."""

    def hasHeightForWidth(self) -> bool:
        """No: there is room enough."""
        return False


class DataCard(Card):
    """One chart and its table. `why` carries the place whose figures are to be explained.

    The figures of the place pointed at stand below; W asks why, T turns, Ctrl+C copies and Ctrl+S saves while
    the chart or the table has the keys.
    """

    why = Signal(int)

    def __init__(self, heading: str, panels: int = 1, parent: QWidget | None = None) -> None:
        super().__init__(heading, "", parent)
        self.chart = SeriesChart(tr("Chart: {heading}").format(heading=heading), panels)
        self.model: RowsModel[tuple[str, ...]] = RowsModel((), LIGHT, self)
        self.table = RowsTable(self.model, tr("{heading}, figures").format(heading=heading))
        self.readout = ElidedLabel()
        self.readout.setAccessibleName(tr("{heading}, figures pointed at").format(heading=heading))
        self.readout.setForegroundRole(QPalette.ColorRole.WindowText)
        self.empty = FreeLabel()
        self.empty.setWordWrap(True)
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.empty.setTextFormat(Qt.TextFormat.PlainText)
        self.empty.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self._look: Look | None = None
        self._turned = False
        self.ask_why, self.switch, self.more = (
            WordButton(tr(WHY)),
            WordButton(tr(AS_TABLE)),
            WordButton(tr(MORE)),
        )
        self.menu = QMenu(self)
        self._faces = QStackedWidget()
        for face in (self.chart, self.table, self.empty):
            self._faces.addWidget(face)
        for button in (self.ask_why, self.switch, self.more):
            button.setAccessibleName(f"{heading}: {button.text().rstrip('?').lower()}")
            self.header.addWidget(button)
        self.body.addWidget(self._faces, 1)
        self.foot = QHBoxLayout()
        self.foot.addWidget(self.readout, 1)
        self.body.addLayout(self.foot)
        self._connect(heading)

    def show_data(self, data: ChartData) -> None:
        """Show these series, or why there are none."""
        self.set_aside(data.aside)
        self.chart.setAccessibleName(data.name)
        rows = [(f"{place:06d}", *data.cells(place)) for place in range(len(data.labels))]
        self.model.set_rows(rows, data_columns(data))
        self.chart.show_data(data)
        self.empty.setText(data.empty)
        bare = data.is_empty
        for button in (self.ask_why, self.switch, self.more):
            button.setEnabled(not bare)
        if bare:
            self._face(self.empty)
        else:
            self._face(self.table if self._turned else self.chart)
        self._say_place()

    def show_blank(self) -> None:
        """Show nothing, and hold nothing of what was shown before."""
        self.set_aside("")
        self.model.set_rows([])
        self.chart.forget()
        self.empty.setText("")
        for button in (self.ask_why, self.switch, self.more):
            button.setEnabled(False)
        self._face(self.chart)
        self._say_place()

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        self._look = look
        self.chart.set_look(look)
        self.table.set_look(look, dense=True)
        for button in (self.ask_why, self.switch, self.more):
            button.set_look(look)
        self.menu.setPalette(palette(look.scheme))
        self.menu.setFont(look.font(look.sizes.body))
        self.readout.setFont(look.font(look.sizes.small))
        self.empty.setFont(look.font(look.sizes.body))

    def copy(self) -> None:
        """Put all figures on the clipboard, tabs between cells."""
        if self.chart.data is not None:
            QGuiApplication.clipboard().setText(self.chart.data.as_text())
            self.readout.say(tr(COPIED))

    def save(self) -> None:
        """Ask for a file, and keep the picture there."""
        name, _ = QFileDialog.getSaveFileName(self.window(), tr(SAVE), "", FILTER)
        if name:
            self.save_as(Path(name))

    def save_as(self, path: Path) -> None:
        """Keep the picture in a file; `.svg` where the name has no ending. Says what came of it."""
        if self._look is None:
            return
        whole = path if path.suffix else path.with_suffix(".svg")
        try:
            save_chart(Page(self.chart, self._look, self.heading.text(), self.aside.text()), whole)
            self.readout.say(tr(SAVED).format(path=whole))
        except PacewrightError as error:
            self.readout.say(str(error))

    def turn(self) -> None:
        """Show the table for the chart, or the chart for the table; the keys go with it."""
        to_table = self._faces.currentWidget() is self.chart
        if self._faces.currentWidget() is not self.empty:
            self._turned = to_table
            self._face(self.table if to_table else self.chart)

    def close_plots(self) -> None:
        """Let go of the drawing before the program ends."""
        self.chart.close_plots()

    def _face(self, face: QWidget) -> None:
        before = self._faces.currentWidget()
        had_keys = before is not None and before.hasFocus()
        self._faces.setCurrentWidget(face)
        self.switch.setText(tr(AS_CHART if face is self.table else AS_TABLE))
        self.switch.setAccessibleName(f"{self.heading.text()}: {self.switch.text().lower()}")
        self.readout.setVisible(face is self.chart)
        if had_keys:
            face.setFocus()

    def _connect(self, heading: str) -> None:
        self.chart.pointed.connect(self._say_place)
        self.chart.chosen.connect(self.why)
        self.ask_why.clicked.connect(self._want_why)
        self.switch.clicked.connect(self.turn)
        self.more.clicked.connect(self._open_menu)
        for words, keys, act in (
            (WHY, "W", self._want_why),
            (AS_TABLE, "T", self.turn),
            (COPY, QKeySequence(QKeySequence.StandardKey.Copy), self.copy),
            (SAVE, QKeySequence(QKeySequence.StandardKey.Save), self.save),
        ):
            action = QAction(tr(words), self)
            action.setShortcut(QKeySequence(keys))
            action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            action.triggered.connect(act)
            self._faces.addAction(action)
            if words in (COPY, SAVE):
                self.menu.addAction(action)
        self.menu.setAccessibleName(tr("{heading}: more").format(heading=heading))

    def _open_menu(self) -> None:
        self.menu.popup(self.more.mapToGlobal(self.more.rect().bottomLeft()))

    def _want_why(self) -> None:
        if self._faces.currentWidget() is self.table and self.table.currentIndex().isValid():
            self.why.emit(int(self.model.rows[self.table.currentIndex().row()][0]))
        elif self.chart.place is not None:
            self.why.emit(self.chart.place)

    def _say_place(self, _place: int | None = None) -> None:
        self.readout.say(self.chart.accessibleDescription())


def data_columns(data: ChartData) -> tuple[Column[tuple[str, ...]], ...]:
    """The columns of a chart's table; a row is its place in figures of equal length, then its cells."""
    return tuple(
        Column(
            title,
            lambda row, number=number: row[number],  # type: ignore[misc]
            lambda row: row[0],
            wide=number == 1,
            right=number > 1,
        )
        for number, title in enumerate(data.titles, start=1)
    )
