"""The strip of a bout: its planned profile above, what was done below, rep by rep, on one axis of time."""

from collections.abc import Iterable

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from app.domain.plan import Side
from app.domain.profile import Stroke
from app.domain.records import BoutOutcome, RepRecord
from app.views.review import words
from app.views.review.correct_fields import UNNAMED
from app.views.review.run.view import BoutLine, DoneRep
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.shapes import Shape, paint_shape

GAP = 0.08
CROSS_PX, FAULT_PX = 7.0, 8.0
PLANNED_PX, DONE_PX = 1.0, 2.0
MS_PER_SECOND = 1_000


def paint_strip(painter: QPainter, room: QRectF, line: BoutLine, look: Look) -> None:
    """Paint a bout into a room: planned in the upper half, done in the lower."""
    half = room.height() * (0.5 - GAP / 2)
    above = QRectF(room.left(), room.top(), room.width(), half)
    below = QRectF(room.left(), room.bottom() - half, room.width(), half)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _paint_planned(painter, above, line, look)
    for rep in line.done:
        _paint_rep(painter, below, line, rep, look)
    painter.restore()


def strip_words(line: BoutLine) -> str:
    """The same in words."""
    asked, record = line.asked, line.record
    told = [tr("planned {n} reps").format(n=reps_words(asked.low, asked.high))]
    if asked.work_ms is not None:
        told.append(tr("in {s} s").format(s=seconds(asked.work_ms)))
    if record is None:
        return words.DOT.join((*told, tr("not begun")))
    told.append(tr("done {n}").format(n=record.reps_done))
    told += [tr("rep {n} missed").format(n=rep_name(rep)) for rep in record.reps if rep.missed]
    told += [
        tr("rep {n}: {faults}").format(n=rep_name(rep), faults=fault_names(rep.faults))
        for rep in record.reps
        if rep.faults
    ]
    return words.DOT.join(told)


def reps_words(low: int, high: int) -> str:
    """A number of reps, or a range of it."""
    return words.whole(low) if low == high else f"{words.whole(low)}–{words.whole(high)}"


def seconds(ms: int) -> str:
    """Milliseconds in whole seconds."""
    return words.whole(ms / MS_PER_SECOND)


def fault_names(faults: Iterable[str]) -> str:
    """Faults in a line, commas between them."""
    return ", ".join(fault or tr(UNNAMED) for fault in faults)


def rep_name(rep: RepRecord) -> str:
    """The number of a rep, with its side where sides alternate."""
    if rep.side is Side.BOTH:
        return f"{rep.rep}"
    return tr("{n} left").format(n=rep.rep) if rep.side is Side.LEFT else tr("{n} right").format(n=rep.rep)


def _paint_planned(painter: QPainter, room: QRectF, line: BoutLine, look: Look) -> None:
    quiet = QColor(look.scheme.quiet)
    if line.planned:
        painter.setPen(QPen(quiet, PLANNED_PX))
        for stroke in line.planned:
            painter.drawPolyline(_polygon(stroke, room, line.scale_ms))
        return
    length = line.asked.work_ms
    painter.setPen(QPen(quiet, PLANNED_PX, Qt.PenStyle.SolidLine if length else Qt.PenStyle.DashLine))
    right = _x(room, length, line.scale_ms) if length else room.right()
    painter.drawLine(QLineF(room.left(), room.center().y(), right, room.center().y()))


def _paint_rep(painter: QPainter, room: QRectF, line: BoutLine, rep: DoneRep, look: Look) -> None:
    scheme = look.scheme
    left, right = _x(room, rep.start_ms, line.scale_ms), _x(room, rep.end_ms, line.scale_ms)
    if rep.record.missed:
        middle, arm = QPointF((left + right) / 2, room.center().y()), CROSS_PX / 2
        painter.setPen(QPen(QColor(scheme.attention), DONE_PX))
        for down in (-arm, arm):
            painter.drawLine(QLineF(middle.x() - arm, middle.y() - down, middle.x() + arm, middle.y() + down))
    elif rep.strokes:
        for stroke in rep.strokes:
            painter.setPen(QPen(QColor(scheme.line(stroke.phase, explosive=stroke.explosive)), DONE_PX))
            painter.drawPolyline(_stretched(stroke, rep, room, line.scale_ms))
    else:
        painter.setPen(QPen(QColor(scheme.accent), DONE_PX))
        low = room.bottom() - room.height() * 0.25
        painter.drawPolyline(
            QPolygonF([QPointF(left, low - 4), QPointF(left, low), QPointF(max(right - 2, left + 1), low)])
        )
    if rep.record.faults:
        spot = QPointF((left + right) / 2, room.top() + FAULT_PX / 2)
        paint_shape(painter, Shape.SQUARE, spot, FAULT_PX, QColor(scheme.notice))


def _polygon(stroke: Stroke, room: QRectF, scale_ms: int) -> QPolygonF:
    return QPolygonF([QPointF(_x(room, at, scale_ms), _y(room, height)) for at, height in stroke.points])


def _stretched(stroke: Stroke, rep: DoneRep, room: QRectF, scale_ms: int) -> QPolygonF:
    """A stroke laid onto the time in which its rep was done."""
    first, last = rep.strokes[0].start_ms, rep.strokes[-1].end_ms
    times = (rep.end_ms - rep.start_ms) / max(last - first, 1)
    return QPolygonF(
        [
            QPointF(_x(room, rep.start_ms + (at - first) * times, scale_ms), _y(room, height))
            for at, height in stroke.points
        ]
    )


def _x(room: QRectF, at_ms: float, scale_ms: int) -> float:
    return room.left() + room.width() * min(max(at_ms, 0) / max(scale_ms, 1), 1.0)


def _y(room: QRectF, height: float) -> float:
    return room.bottom() - room.height() * (0.08 + 0.84 * height)


def outcome_words(line: BoutLine) -> str:
    """How a bout ended; what was left out says why."""
    record = line.record
    if record is None:
        return tr("not begun")
    if record.outcome is BoutOutcome.SKIPPED:
        return _skipped(record.reason.value if record.reason else None)
    return {
        BoutOutcome.DONE: tr("done"),
        BoutOutcome.ENDED_EARLY: tr("ended early"),
        BoutOutcome.BROKEN_OFF: tr("broken off"),
    }[record.outcome]


def _skipped(reason: str | None) -> str:
    told = {
        "pain": tr("left out: pain"),
        "equipment": tr("left out: equipment"),
        "time": tr("left out: time"),
        "other": tr("left out: another reason"),
    }
    return told.get(reason or "", tr("left out"))
