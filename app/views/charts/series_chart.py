"""A chart of any series: dots with intervals, lines by side, bars, on panels over the same places."""

from itertools import groupby
from typing import Any

import pyqtgraph as pg
from PySide6.QtGui import QColor, QFontMetricsF
from PySide6.QtWidgets import QWidget

from app.views.charts.chart import LEFT_PX, Chart
from app.views.charts.data import ChartData
from app.views.charts.panel_items import INTERVAL_PX, PanelItems
from app.views.theme import Look


class SeriesChart(Chart):
    """Draws a `ChartData`; other data with as many panels may follow, and reuses what is drawn."""

    def __init__(self, name: str, panels: int = 1, unit: str = "", parent: QWidget | None = None) -> None:
        super().__init__(name, panels, 1, unit, parent)
        self.data: ChartData | None = None
        self.drawn = [PanelItems(plot) for plot in self.plots]
        self._gaps: list[Any] = []

    def show_data(self, data: ChartData) -> None:
        """Show these series. There must be as many panels as the chart was made with."""
        self.data, self.place = data, None
        self._window = data.window
        self.say_unit(data.unit)
        self.widest = max(
            (word for panel in data.panels for _, word in panel.ticks), key=len, default=self.widest
        )
        for row, panel in enumerate(data.panels):
            self.set_height(row, panel.top, panel.bottom)
            self.plots[row].getAxis("left").setTicks([list(panel.ticks)])
            self.graphics.ci.layout.setRowStretchFactor(row, panel.share)
            self._name_zones(row)
        if self.look is not None:
            self.set_look(self.look)
        self.set_places(data.labels, data.spoken, data.at or None)
        self.redraw()
        if data.last_known is not None:
            self.point_at(data.last_known)

    def forget(self) -> None:
        """Hold and draw no data any more."""
        self.data = None
        for items in self.drawn:
            items.hide()
        for item in self._gaps:
            item.setVisible(False)
        self.set_places((), ())

    def set_look(self, look: Look) -> None:
        """Take colours and letters, also for the words of the zones."""
        font = look.font(look.sizes.small)
        metrics = QFontMetricsF(font)
        words = [zone.word for panel in self._panels for zone in panel.zones]
        for plot in self.plots:
            axis = plot.getAxis("right")
            axis.setStyle(tickFont=font)
            axis.setTextPen(QColor(look.scheme.quiet))
            axis.setPen(None)
            axis.setTickPen(None)
            axis.setWidth(max(map(metrics.horizontalAdvance, words), default=0.0) + LEFT_PX)
        super().set_look(look)

    def redraw(self) -> None:
        """Place everything in the colours of the look."""
        if self.look is None or self.data is None:
            return
        at = self.data.at or tuple(map(float, range(len(self.data.labels))))
        for items, panel in zip(self.drawn, self.data.panels, strict=True):
            items.show(panel, at, self.look)
        self._name_gaps()
        self.rescale()
        self.mark(self.place)

    def rescale(self) -> None:
        """Keep the lines of the intervals as wide as they are."""
        for items in self.drawn if self.data else ():
            items.widen(self.places_wide(INTERVAL_PX))

    def mark(self, place: int | None) -> None:
        """Ring and darken what is pointed at."""
        if self.look is None or self.data is None:
            return
        for items in self.drawn:
            items.mark(place, self.look)

    @property
    def _panels(self) -> tuple[Any, ...]:
        return self.data.panels if self.data else ()

    def _name_zones(self, row: int) -> None:
        zones = self._panels[row].zones
        self.plots[row].showAxis("right", any(panel.zones for panel in self._panels))
        axis = self.plots[row].getAxis("right")
        axis.enableAutoSIPrefix(False)
        axis.setStyle(tickLength=0, tickAlpha=0)
        axis.setTicks([[((zone.low + zone.high) / 2, zone.word) for zone in zones]])

    def _name_gaps(self) -> None:
        if self.look is None or self.data is None:
            return
        spans = _gaps(self.data) if self.data.gap else []
        while len(self._gaps) < len(spans):
            self._gaps.append(pg.TextItem("", anchor=(0.5, 1.0)))
            self.plots[0].addItem(self._gaps[-1], ignoreBounds=True)
        for number, item in enumerate(self._gaps):
            item.setVisible(number < len(spans))
            if number < len(spans):
                first, last = spans[number]
                item.setText(self.data.gap)
                item.setFont(self.look.font(self.look.sizes.small))
                item.setColor(QColor(self.look.scheme.quiet))
                item.setPos((self.position(first) + self.position(last)) / 2, self.data.panels[0].bottom)


def _gaps(data: ChartData) -> list[tuple[int, int]]:
    """Stretches of places, first and last included, where the first panel has neither value nor dash."""
    series = data.panels[0].series
    dashed = {place for each in series for place in each.unknown}
    spans = []
    for off, places in groupby(
        range(len(data.labels))[: data.gaps_up_to],
        lambda place: place not in dashed and all(each.values[place] is None for each in series),
    ):
        run = list(places)
        if off:
            spans.append((run[0], run[-1]))
    return spans
