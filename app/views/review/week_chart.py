"""Reps met of those prescribed, by week: a dot with its interval, and a gap where there was no session."""

from collections.abc import Sequence
from itertools import groupby
from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QWidget

from app.analysis.adherence import WeekReps
from app.views.charts.chart import Chart
from app.views.review.words import week_line
from app.views.translation import tr

WINDOW = 26
INTERVAL_PX = 3
DOT_PX = 8
RING_PX = 16
TICKS = ((0.0, "0\u202f%"), (0.5, "50\u202f%"), (1.0, "100\u202f%"))


class WeekChart(Chart):
    """Dots from 0 to 100 %, one a week."""

    widest = "100\u202f%"

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(tr("Chart of reps met of those prescribed, by week"), 1, WINDOW, tr("week"), parent)
        self._weeks: tuple[WeekReps, ...] = ()
        self._intervals: Any = pg.BarGraphItem(x=[], y0=[], y1=[], width=0.0, pen=None)
        self._dots: Any = pg.ScatterPlotItem(size=DOT_PX, symbol="o", pen=None)
        self._ring: Any = pg.ScatterPlotItem(size=RING_PX, symbol="o", brush=None)
        self._gaps: list[Any] = []
        for item in (self._intervals, self._ring, self._dots):
            self.plots[0].addItem(item)
        self.set_height(0, 1.0)
        self.plots[0].getAxis("left").setTicks([TICKS])

    def show_weeks(self, weeks: Sequence[WeekReps]) -> None:
        """Show these weeks, each the one after the last."""
        self._weeks = tuple(weeks)
        self.set_places(week_labels(weeks), [week_line(week) for week in weeks])
        self.redraw()

    def redraw(self) -> None:
        """Place the dots, the intervals and the words of the gaps."""
        if self.look is None:
            return
        known = [(place, week) for place, week in enumerate(self._weeks) if week.share is not None]
        x = np.array([place for place, _ in known], dtype=float)
        y = np.array([week.share for _, week in known], dtype=float)
        bounds = [week.interval for _, week in known]
        low = np.array([bound.low for bound in bounds if bound], dtype=float)
        high = np.array([bound.high for bound in bounds if bound], dtype=float)
        colour = QColor(self.look.scheme.accent)
        self._dots.setData(x=x, y=y, brush=colour)
        self._intervals.setOpts(x=x, y0=low, y1=high, brush=colour, pen=None)
        self._name_gaps()
        self.mark(self.place)

    def rescale(self) -> None:
        """Keep the lines of the intervals as wide as they are."""
        self._intervals.setOpts(width=self.places_wide(INTERVAL_PX))

    def mark(self, place: int | None) -> None:
        """Put a ring about the dot pointed at."""
        share = None if place is None else self._weeks[place].share
        if share is None or self.look is None:
            self._ring.setData(x=[], y=[])
            return
        self._ring.setData(x=[place], y=[share], pen=pg.mkPen(self.look.scheme.accent, width=1))

    def _name_gaps(self) -> None:
        middles = [
            (run[0] + run[-1]) / 2
            for off, places in groupby(
                range(len(self._weeks)), lambda place: self._weeks[place].share is None
            )
            if off
            for run in [list(places)]
        ]
        while len(self._gaps) < len(middles):
            self._gaps.append(pg.TextItem(tr("off"), anchor=(0.5, 1.0)))
            self.plots[0].addItem(self._gaps[-1])
        for number, item in enumerate(self._gaps):
            item.setVisible(number < len(middles))
            if number < len(middles) and self.look:
                item.setFont(self.look.font(self.look.sizes.small))
                item.setColor(QColor(self.look.scheme.quiet))
                item.setPos(middles[number], 0.0)


def week_labels(weeks: Sequence[WeekReps]) -> tuple[str, ...]:
    """The number of each week, with its year where the weeks do not all lie in one."""
    one_year = len({week.year for week in weeks}) <= 1
    return tuple(f"{week.week}" if one_year else f"{week.week} ’{week.year % 100:02d}" for week in weeks)
