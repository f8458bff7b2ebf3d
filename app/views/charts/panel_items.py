"""The drawn items of one plot of a chart: made once, given other data afterwards."""

from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor

from app.views.charts.chart import LEAST_PLACES
from app.views.charts.data import Form, Ink, Mark, Panel, Series, Slope, Zone
from app.views.theme import Look

DOT_PX, RING_PX, DASH_PX = 9, 17, 8
SIZES = {Mark.SQUARE: 11, Mark.CIRCLE: 8}
"""A square is seen behind a circle of the same value."""
INTERVAL_PX = 3
BAR = 0.66
ZONE_ALPHA, FAINT_ALPHA = 26, 100
END_GAP = 0.9


class PanelItems:
    """Draws a panel into a plot. Items are kept and reused; those not needed are hidden."""

    def __init__(self, plot: Any) -> None:  # noqa: ANN401 - pyqtgraph carries no types
        self._plot = plot
        self._at: tuple[float, ...] = ()
        self._panel: Panel | None = None
        self._pools: dict[str, list[Any]] = {}
        self._used: dict[str, int] = {}
        self._ring: Any = pg.ScatterPlotItem(size=RING_PX, symbol="o", brush=None)
        self._dark: Any = pg.BarGraphItem(x=[], height=[], width=BAR, pen=None)
        self._ring.setZValue(20)
        self._dark.setZValue(1)
        plot.addItem(self._ring)
        plot.addItem(self._dark)
        self.intervals: list[Any] = []

    def show(self, panel: Panel, at: Sequence[float], look: Look) -> None:
        """Draw these series at these positions in the colours of the look."""
        self._panel, self._at = panel, tuple(at)
        self._used = dict.fromkeys(self._pools, 0)
        self.intervals = []
        for zone in panel.zones:
            self._draw_zone(zone, look)
        for series in panel.series:
            self._draw(series, panel, look)
        for slope in panel.slopes:
            self._draw_slope(slope, look)
        for kind, items in self._pools.items():
            for number, item in enumerate(items):
                item.setVisible(number < self._used.get(kind, 0))

    def hide(self) -> None:
        """Draw nothing."""
        self._panel, self._used, self.intervals = None, {}, []
        for item in (item for items in self._pools.values() for item in items):
            item.setVisible(False)
        self._ring.setData(x=[], y=[])
        self._dark.setOpts(x=[], height=[])

    def widen(self, places: float) -> None:
        """Keep the lines of intervals as wide as they are; `places` is that width in places."""
        for item in self.intervals:
            item.setOpts(width=places)

    def mark(self, place: int | None, look: Look) -> None:
        """Ring the points of a place, and darken its bar."""
        spots, bars = self._at_place(place)
        x = [] if place is None else [self._at[place]]
        ink = QColor(look.scheme.ink)
        ringed = [x[0] + shift for shift, _ in spots]
        self._ring.setData(x=ringed, y=[value for _, value in spots], pen=pg.mkPen(ink, width=1))
        self._dark.setOpts(x=x * len(bars), height=bars, y0=self._bottom, brush=ink, pen=None)

    def drawn(self, kind: str) -> list[Any]:
        """The items of a kind in use: bars, curve, dots, interval, dash, end, zone, slope."""
        return self._pools.get(kind, [])[: self._used.get(kind, 0)]

    @property
    def _bottom(self) -> float:
        return 0.0 if self._panel is None else self._panel.bottom

    def _at_place(self, place: int | None) -> tuple[list[tuple[float, float]], list[float]]:
        """Points as how far beside the place and at what height they are, and the heights of bars."""
        spots: list[tuple[float, float]] = []
        bars: list[float] = []
        if place is not None and self._panel is not None:
            for series in self._panel.series:
                value = series.values[place]
                if value is not None and series.form is Form.BARS:
                    bars.append(value - self._bottom)
                elif value is not None:
                    spots.append((series.shift, value))
        return spots, bars

    def _draw(self, series: Series, panel: Panel, look: Look) -> None:
        colour = QColor(getattr(look.scheme, series.ink.value))
        known = [place for place, value in enumerate(series.values) if value is not None]
        x = np.array([self._at[place] + series.shift for place in known], dtype=float)
        y = np.array([series.values[place] for place in known], dtype=float)
        if series.form is Form.BARS:
            bars = self._take("bars", lambda: pg.BarGraphItem(x=[], height=[], width=BAR, pen=None))
            bars.setOpts(x=x, height=y - panel.bottom, y0=panel.bottom, brush=colour, pen=None)
        else:
            self._draw_points(series, x, y, colour)
        if series.unknown:
            dash = self._take("dash", lambda: pg.ScatterPlotItem(size=DASH_PX, symbol="_", pen=None))
            places = np.array([self._at[place] for place in series.unknown], dtype=float)
            dash.setData(x=places, y=np.full(len(places), panel.bottom), brush=QColor(look.scheme.quiet))
        if series.ended and known:
            self._draw_end(series, panel, look, known[-1])

    def _draw_points(self, series: Series, x: Any, y: Any, colour: QColor) -> None:  # noqa: ANN401 - arrays
        if series.form is Form.LINE:
            curve = self._take("curve", lambda: pg.PlotCurveItem(connect="finite", antialias=True))
            whole = np.array([np.nan if value is None else value for value in series.values], dtype=float)
            curve.setData(x=np.array(self._at, dtype=float), y=whole, pen=pg.mkPen(colour, width=1))
        bounded = [
            (position + series.shift, low, high)
            for position, low, high in zip(self._at, series.low, series.high, strict=False)
            if low is not None and high is not None
        ]
        if bounded:
            interval = self._take(
                "interval", lambda: pg.BarGraphItem(x=[], y0=[], y1=[], width=0.0, pen=None)
            )
            at, low, high = (np.array(column, dtype=float) for column in zip(*bounded, strict=True))
            interval.setOpts(x=at, y0=low, y1=high, brush=colour, pen=None)
            self.intervals.append(interval)
        dots = self._take("dots", lambda: pg.ScatterPlotItem(size=DOT_PX, pen=None))
        dots.setData(x=x, y=y, symbol=series.mark.value, size=SIZES.get(series.mark, DOT_PX), brush=colour)

    def _draw_end(self, series: Series, panel: Panel, look: Look, place: int) -> None:
        value = series.values[place] or 0.0
        others = [
            each.values[place] for each in panel.series if each is not series and len(each.values) > place
        ]
        after = panel.series[panel.series.index(series) + 1 :]
        alike = any(each.values[place] == value for each in after if len(each.values) > place)
        below = alike or any(other is not None and other > value for other in others)
        below = below or (value == panel.top and value not in others)
        text = self._take("end", lambda: pg.TextItem(""))
        text.setText(series.name)
        text.setFont(look.font(look.sizes.small))
        text.setColor(QColor(getattr(look.scheme, series.ink.value)))
        text.setAnchor((END_GAP, -0.25 if below else 1.25))
        text.setPos(self._at[place], value)

    def _draw_zone(self, zone: Zone, look: Look) -> None:
        item = self._take("zone", lambda: pg.BarGraphItem(x0=[], width=[], y0=[], height=[], pen=None))
        colour = QColor(getattr(look.scheme, zone.ink.value))
        colour.setAlpha(FAINT_ALPHA if zone.ink is Ink.FAINT else ZONE_ALPHA)
        item.setZValue(-20)
        last = max([*self._at[-1:], float(LEAST_PLACES)])
        wide, high = [last + 2.0], [zone.high - zone.low]
        item.setOpts(x0=[-1.0], width=wide, y0=[zone.low], height=high, brush=colour, pen=None)

    def _draw_slope(self, slope: Slope, look: Look) -> None:
        line = self._take("slope", lambda: pg.PlotCurveItem(antialias=True))
        pen = pg.mkPen(QColor(look.scheme.quiet), width=1, style=Qt.PenStyle.DashLine)
        line.setData(x=np.array(slope.x, dtype=float), y=np.array(slope.y, dtype=float), pen=pen)

    def _take(self, kind: str, make: Callable[[], Any]) -> Any:  # noqa: ANN401 - pyqtgraph carries no types
        items = self._pools.setdefault(kind, [])
        number = self._used.get(kind, 0)
        if number == len(items):
            items.append(make())
            self._plot.addItem(items[-1], ignoreBounds=True)
        self._used[kind] = number + 1
        return items[number]
