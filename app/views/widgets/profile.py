"""The profile: a bout's position over time, moving past a fixed now-line with a ring riding on it.

For those who asked for less motion the line stands and the now-line moves along it, sheet after sheet. Time
runs from left to right in either form and in every reading direction, as a shape is the same for all.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Iterator
from itertools import groupby, pairwise

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.domain.profile import Stroke, height_at
from app.domain.tempo import Phase
from app.views.contrast import mixed
from app.views.lettering import Weight
from app.views.theme import NEXT, Look
from app.views.translation import tr
from app.views.widgets.sheets import EDGE, sheet_of, sheet_starts

NOW_AT = 0.29
REPS_AHEAD = 2.05
REPS_STANDING = 3.6
"""Reps on a sheet that stands."""
LEAST_AHEAD_MS, MOST_AHEAD_MS = 5_000.0, 30_000.0
TOP, BOTTOM, NUMBERS = 0.16, 0.78, 0.93
DONE = 0.36
MOST_STALE_PX = 0.8
"""The picture may be behind the moment by so much of a pixel of the screen."""
NUMBER_STEPS = (1, 2, 5, 10, 20)


class ProfileView(QWidget):
    """Paints the strokes of one bout around one moment. It owns no time: `show_moment` tells it.

    Done fades and thins, the rep under way is bold, what is to come is half-bright.
    """

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._look = look
        self._strokes: tuple[Stroke, ...] = ()
        self._starts: list[int] = []
        self._firsts: list[Stroke] = []
        self._from_ms = 0
        self._at_ms = 0.0
        self._sheets: tuple[float, ...] = ()
        self._ahead_ms = LEAST_AHEAD_MS
        self._begin_ms = self._px_a_ms = 0.0
        self._pens: dict[tuple[tuple[Phase, bool] | None, float, float], QPen] = {}
        self._number_font = look.font(look.sizes.heading, Weight.SEMIBOLD)
        self.setAccessibleName(tr("Profile of the rep"))

    def sizeHint(self) -> QSize:
        """Give a size that shows a rep in a window of its own."""
        return QSize(640, 260)

    def show_bout(self, strokes: tuple[Stroke, ...], from_ms: int) -> None:
        """Take the strokes of a bout that is entered at the start of the rep at `from_ms`."""
        index = bisect_left(strokes, from_ms, key=lambda stroke: stroke.start_ms)
        self._strokes = strokes[index:]
        self._starts = [stroke.start_ms for stroke in self._strokes]
        self._firsts = [next(rep) for _, rep in groupby(self._strokes, lambda each: (each.rep, each.side))]
        self._from_ms = from_ms
        ahead = REPS_STANDING * (1 - NOW_AT) if self._look.still else REPS_AHEAD
        self._ahead_ms = min(max(ahead * _rep_ms(self._strokes), LEAST_AHEAD_MS), MOST_AHEAD_MS)
        reps = [first.start_ms for first in self._firsts] if self._look.still else []
        end_ms = self._strokes[-1].end_ms if self._strokes else 0
        self._sheets = sheet_starts(reps, end_ms, self._whole_ms)
        self._measure()
        self.update()

    def show_moment(self, at_ms: float) -> None:
        """Bring the line and the now-line together at `at_ms` of the bout's axis.

        Nothing is painted anew before the line has moved by most of a pixel: many small ones cost little.
        """
        moved_px = abs(at_ms - self._at_ms) * self._px_a_ms * self.devicePixelRatioF()
        if moved_px < MOST_STALE_PX and (at_ms < self._from_ms) == (self._at_ms < self._from_ms):
            return
        self._at_ms = at_ms
        self._measure()
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Measure anew."""
        super().resizeEvent(event)
        self._measure()

    def _measure(self) -> None:
        """Where the line begins and how wide a ms is: asked for with every point that is painted."""
        whole = self._ahead_ms / (1 - NOW_AT)
        self._begin_ms = self._at_ms - NOW_AT * whole
        if self._sheets:
            self._begin_ms = sheet_of(self._sheets, self._at_ms) - EDGE * whole
        self._px_a_ms = self.width() / whole

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the moment."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.scheme.ground))
        if self._strokes:
            self._paint_ground(painter, list(self._visible()))
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint_numbers(painter)
            for stroke, line in self._lines():
                self._paint_line(painter, stroke, line)
            self._paint_marks(painter)
            self._paint_now(painter)
        painter.end()

    @property
    def _whole_ms(self) -> float:
        """The time from edge to edge."""
        return self._ahead_ms / (1 - NOW_AT)

    def _x(self, at_ms: float) -> float:
        return (at_ms - self._begin_ms) * self._px_a_ms

    @property
    def _now_x(self) -> float:
        """Where the now-line stands; on a sheet it waits at the edge for the work to begin."""
        return max(self._x(self._at_ms), 0.0 if not self._look.still else self.width() * EDGE / 2)

    def _y(self, height: float) -> float:
        return self.height() * (BOTTOM - (BOTTOM - TOP) * height)

    def _span_ms(self) -> tuple[float, float]:
        return self._begin_ms, self._begin_ms + self._whole_ms

    def _in_sight(self) -> tuple[Stroke, ...]:
        begin, end = self._span_ms()
        first = max(bisect_right(self._starts, begin) - 1, 0)
        return self._strokes[first : bisect_right(self._starts, end)]

    def _visible(self) -> Iterator[QPointF]:
        strokes = self._in_sight()
        if not strokes:
            return
        if strokes[0] is self._strokes[0]:
            yield QPointF(
                min(self._x(self._span_ms()[0]), self._x(self._from_ms)), self._y(strokes[0].first_height)
            )
        for stroke in strokes:
            for at_ms, height in stroke.points:
                yield QPointF(self._x(at_ms), self._y(height))

    def _lines(self) -> Iterator[tuple[Stroke | None, QLineF]]:
        begin, _ = self._span_ms()
        if begin < self._from_ms:
            level = self._y(self._strokes[0].first_height)
            yield None, QLineF(self._x(begin), level, self._x(self._from_ms), level)
        for stroke in self._in_sight():
            for (start, low), (end, high) in pairwise(stroke.points):
                yield stroke, QLineF(self._x(start), self._y(low), self._x(end), self._y(high))

    def _paint_ground(self, painter: QPainter, points: list[QPointF]) -> None:
        if not points:
            return
        floor = self.height() * 0.96
        shape = QPolygonF([QPointF(points[0].x(), floor), *points, QPointF(points[-1].x(), floor)])
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(mixed(self._look.scheme.ink, self._look.scheme.ground, 0.06)))
        painter.drawPolygon(shape)

    def _paint_line(self, painter: QPainter, stroke: Stroke | None, line: QLineF) -> None:
        now = self._now_x
        full = self.height() * 0.028
        if line.x1() < now:
            behind = QLineF(line)
            if line.x2() > now and line.dx() > 0:
                behind.setP2(line.pointAt((now - line.x1()) / line.dx()))
            painter.setPen(self._pen(stroke, full * 0.6, DONE))
            painter.drawLine(behind)
        if line.x2() > now:
            ahead = QLineF(line)
            if line.x1() < now:
                ahead.setP1(line.pointAt((now - line.x1()) / line.dx()))
            under_way = stroke is not None and self._under_way(stroke)
            painter.setPen(self._pen(stroke, full) if under_way else self._pen(stroke, full * 0.75, NEXT))
            painter.drawLine(ahead)

    def _under_way(self, stroke: Stroke) -> bool:
        index = max(bisect_right(self._starts, self._at_ms) - 1, 0)
        here = self._strokes[index]
        return (stroke.rep, stroke.side) == (here.rep, here.side)

    def _pen(self, stroke: Stroke | None, width: float, strength: float = 1.0) -> QPen:
        key = (None if stroke is None else (stroke.phase, stroke.explosive), strength, width)
        if key not in self._pens:
            pen = QPen(QColor(self._colour(stroke, strength)), width)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            self._pens[key] = pen
        return self._pens[key]

    def _colour(self, stroke: Stroke | None, strength: float) -> str:
        scheme = self._look.scheme
        if stroke is None:
            return scheme.unfilled if strength > DONE else scheme.faint
        if strength == NEXT:
            return scheme.coming(stroke.phase, explosive=stroke.explosive)
        return mixed(scheme.line(stroke.phase, explosive=stroke.explosive), scheme.ground, strength)

    def _paint_numbers(self, painter: QPainter) -> None:
        painter.setFont(self._number_font)
        scheme = self._look.scheme
        gap, top, base = self.height() * 0.025, self.height() * 0.85, self.height() * NUMBERS
        for stroke in self._firsts[:: self._step(gap)]:
            x = self._x(stroke.start_ms)
            if not -self.width() * NOW_AT < x < self.width():
                continue
            painter.setPen(QPen(QColor(scheme.faint), 2))
            painter.drawLine(QLineF(x, top, x, base))
            painter.setPen(QColor(scheme.ink if self._under_way(stroke) else scheme.quiet))
            painter.drawText(QPointF(x + gap, base), str(stroke.rep))

    def _step(self, gap: float) -> int:
        """Every how many reps a number is painted, so that none runs into the next."""
        if len(self._firsts) < 2:
            return 1
        rep_px = self._x(self._firsts[1].start_ms) - self._x(self._firsts[0].start_ms)
        widest = max(self._firsts[0].rep, self._firsts[-1].rep)
        needed = QFontMetricsF(self._number_font).horizontalAdvance(str(widest)) + 2 * gap
        return next((step for step in NUMBER_STEPS if step * rep_px >= needed), NUMBER_STEPS[-1])

    def _paint_marks(self, painter: QPainter) -> None:
        """Paint, on a ranged hold, where it is long enough."""
        half = self.height() * 0.04
        for stroke in self._in_sight():
            if stroke.mark_ms is not None:
                x, y = self._x(stroke.mark_ms), self._y(height_at(self._strokes, stroke.mark_ms))
                painter.setPen(QPen(QColor(self._look.scheme.ink), 3))
                painter.drawLine(QLineF(x, y - half, x, y + half))

    def _paint_now(self, painter: QPainter) -> None:
        scheme = self._look.scheme
        x = self._now_x
        painter.setPen(QPen(QColor(scheme.quiet), 2))
        painter.drawLine(QLineF(x, 0, x, self.height() * 0.96))
        waiting = self._at_ms < self._from_ms
        here = self._strokes[max(bisect_right(self._starts, self._at_ms) - 1, 0)]
        colour = scheme.quiet if waiting else scheme.line(here.phase, explosive=here.explosive)
        level = self._strokes[0].first_height if waiting else height_at(self._strokes, self._at_ms)
        centre = QPointF(x, self._y(level))
        radius = self.height() * 0.058
        painter.setPen(Qt.PenStyle.NoPen)
        for part, fill in ((1.7, mixed(colour, scheme.ground, 0.3)), (1.0, colour), (0.38, scheme.ground)):
            painter.setBrush(QColor(fill))
            painter.drawEllipse(centre, radius * part, radius * part)

    def ring(self) -> QRectF:
        """Give the place of the ring in the widget, for those who test what is painted."""
        radius = self.height() * 0.058
        waiting = self._at_ms < self._from_ms
        level = self._strokes[0].first_height if waiting else height_at(self._strokes, self._at_ms)
        return QRectF(self._now_x - radius, self._y(level) - radius, 2 * radius, 2 * radius)


def _rep_ms(strokes: tuple[Stroke, ...]) -> float:
    if not strokes:
        return 0.0
    first = strokes[0]
    same = [stroke for stroke in strokes[:12] if (stroke.rep, stroke.side) == (first.rep, first.side)]
    return float(same[-1].end_ms - first.start_ms)
