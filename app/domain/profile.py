"""The profile of a bout: position over time, the shape that leads the eye.

Height is 0 at the bottom of the movement and 1 at the top, without a unit. Slope is speed.
"""

from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise

from app.domain.dose import TempoReps
from app.domain.plan import Exercise, Side
from app.domain.tempo import Phase
from app.domain.timeline import Bout, WorkSpan

LOW, HIGH, MIDDLE, SLACK, LANDED = 0.0, 1.0, 0.55, 0.12, 0.15
EASE_MS = 400
SPRING_MS = 450

STRAIGHT: dict[Phase, tuple[float, float]] = {
    Phase.ECCENTRIC: (HIGH, LOW),
    Phase.HOLD_LENGTHENED: (LOW, LOW),
    Phase.CONCENTRIC: (LOW, HIGH),
    Phase.HOLD_SHORTENED: (HIGH, HIGH),
    Phase.HOLD: (MIDDLE, MIDDLE),
    Phase.STICK: (LANDED, LANDED),
    Phase.RESET: (LANDED, LANDED),
    Phase.WORK: (MIDDLE, MIDDLE),
    Phase.OWN: (MIDDLE, MIDDLE),
}

Point = tuple[int, float]


@dataclass(frozen=True, slots=True)
class Stroke:
    """The line of one phase. `points` are (ms from the bout's first phase, height), at least two.

    `explosive` marks a phase done as fast as control allows; `mark_ms` the lower bound of a ranged hold.
    """

    start_ms: int
    end_ms: int
    phase: Phase
    rep: int
    side: Side
    explosive: bool
    points: tuple[Point, ...]
    mark_ms: int | None = None

    @property
    def first_height(self) -> float:
        """Height where the stroke begins."""
        return self.points[0][1]


def profile_of(bout: Bout, exercise: Exercise) -> tuple[Stroke, ...]:
    """The strokes of a bout in order; none for work at the athlete's own pace, whose shape is not known."""
    strokes = []
    for span in bout.work:
        if span.end_ms is None:
            return ()
        points = _points(span.phase, span.start_ms, span.end_ms)
        strokes.append(
            Stroke(
                span.start_ms,
                span.end_ms,
                span.phase,
                span.rep,
                span.side,
                _explosive(exercise, span),
                points,
                span.mark_ms,
            )
        )
    return tuple(strokes)


def height_at(strokes: tuple[Stroke, ...], at_ms: float) -> float:
    """Height at a moment; before the first stroke and after the last the line stays level."""
    if not strokes:
        return MIDDLE
    index = bisect_right(strokes, at_ms, key=lambda stroke: stroke.start_ms) - 1
    if index < 0:
        return strokes[0].first_height
    points = strokes[index].points
    for (begin, low), (end, high) in pairwise(points):
        if at_ms <= end and end > begin:
            return low + (high - low) * (max(at_ms, begin) - begin) / (end - begin)
    return points[-1][1]


def _explosive(exercise: Exercise, span: WorkSpan) -> bool:
    if span.phase in (Phase.GO, Phase.MOVE):
        return True
    if not isinstance(exercise.dose, TempoReps):
        return False
    tempo = exercise.dose.tempo
    return (span.phase is Phase.ECCENTRIC and tempo.eccentric is None) or (
        span.phase is Phase.CONCENTRIC and tempo.concentric is None
    )


def _points(phase: Phase, start: int, end: int) -> tuple[Point, ...]:
    if phase in STRAIGHT:
        low, high = STRAIGHT[phase]
        return ((start, low), (end, high))
    if phase is Phase.MOVE:
        return ((start, LANDED), (end, HIGH), (end, LANDED))
    if phase is Phase.GO:
        spring = min(SPRING_MS, (end - start) // 3)
        return ((start, LANDED), (start + spring, HIGH), (start + 2 * spring, LANDED), (end, LANDED))
    ease = min(EASE_MS, (end - start) // 3)
    return ((start, MIDDLE), (start + ease, SLACK), (end - ease, SLACK), (end, MIDDLE))
