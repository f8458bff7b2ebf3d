"""RPE and load of each session: diamonds above, bars below, a dash where the load is unknown."""

from collections.abc import Sequence
from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QWidget

from app.analysis.load import SessionLoad
from app.views.charts.chart import Chart
from app.views.charts.scales import round_ticks
from app.views.review.words import day, load_line, whole
from app.views.translation import tr

WINDOW = 40
MARK_PX = 12
DASH_PX = 8
BAR = 0.66
LEAST_TOP_AU = 100.0


class LoadChart(Chart):
    """RPE 0 to 10 over load in AU, one place a session, the newest at the right."""

    widest = "1\u202f000\u202fAU"

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(
            tr("Chart of session RPE and session load, by session"), 2, WINDOW, tr("date"), parent
        )
        self._sessions: tuple[SessionLoad, ...] = ()
        self._marks: Any = pg.ScatterPlotItem(size=MARK_PX, symbol="d", pen=None)
        self._bars: Any = pg.BarGraphItem(x=[], height=[], width=BAR, pen=None)
        self._pointed: Any = pg.BarGraphItem(x=[], height=[], width=BAR, pen=None)
        self._ring: Any = pg.ScatterPlotItem(size=MARK_PX + 8, symbol="d", brush=None)
        self._unknown: Any = pg.ScatterPlotItem(size=DASH_PX, symbol="_", pen=None)
        for item in (self._ring, self._marks):
            self.plots[0].addItem(item)
        for item in (self._bars, self._pointed, self._unknown):
            self.plots[1].addItem(item)
        self.set_height(0, 10.0)
        self.plots[0].getAxis("left").setTicks([rpe_ticks()])
        self.graphics.ci.layout.setRowStretchFactor(0, 2)
        self.graphics.ci.layout.setRowStretchFactor(1, 3)

    @property
    def sessions(self) -> tuple[SessionLoad, ...]:
        """The sessions shown, the earliest first."""
        return self._sessions

    def show_sessions(self, sessions: Sequence[SessionLoad]) -> None:
        """Show these sessions, the earliest first."""
        self._sessions = tuple(sessions)
        ticks = round_ticks(max(LEAST_TOP_AU, *(session.load or 0.0 for session in sessions)))
        self.set_height(1, ticks[-1])
        self.plots[1].getAxis("left").setTicks([load_ticks(ticks)])
        self.set_places(
            [day(session.started) for session in sessions], [load_line(session) for session in sessions]
        )
        self.redraw()

    def redraw(self) -> None:
        """Place the marks, the bars and the dashes."""
        if self.look is None:
            return
        scheme = self.look.scheme
        rated = [
            (place, session.rpe) for place, session in enumerate(self._sessions) if session.rpe is not None
        ]
        loads = [
            (place, session.load) for place, session in enumerate(self._sessions) if session.load is not None
        ]
        unknown = [place for place, session in enumerate(self._sessions) if session.load is None]
        self._marks.setData(x=_column(rated, 0), y=_column(rated, 1), brush=QColor(scheme.ink))
        self._bars.setOpts(
            x=_column(loads, 0), height=_column(loads, 1), brush=QColor(scheme.accent), pen=None
        )
        dashes = np.array(unknown, dtype=float)
        self._unknown.setData(x=dashes, y=np.zeros(len(unknown)), brush=QColor(scheme.quiet))
        self.mark(self.place)

    def mark(self, place: int | None) -> None:
        """Darken the bar and ring the diamond pointed at."""
        if self.look is None:
            return
        session = None if place is None else self._sessions[place]
        bar = [] if session is None or session.load is None else [session.load]
        ring = [] if session is None or session.rpe is None else [session.rpe]
        self._pointed.setOpts(x=[place] * len(bar), height=bar, brush=QColor(self.look.scheme.ink), pen=None)
        self._ring.setData(x=[place] * len(ring), y=ring, pen=pg.mkPen(self.look.scheme.ink, width=1))


def rpe_ticks() -> list[tuple[float, str]]:
    """Ticks of the rating, the topmost with its name."""
    return [(0.0, "0"), (5.0, "5"), (10.0, f"{tr('RPE')}\u202f10")]


def load_ticks(ticks: Sequence[float]) -> list[tuple[float, str]]:
    """Ticks with their figures, the topmost with the unit."""
    return [(tick, whole(tick) + (f"\u202f{tr('AU')}" if tick == ticks[-1] else "")) for tick in ticks]


def _column(pairs: Sequence[tuple[float, float]], which: int) -> Any:  # noqa: ANN401 - numpy array of floats
    return np.array([pair[which] for pair in pairs], dtype=float)
