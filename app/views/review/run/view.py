"""Everything the page of a run shows, worked out before it is shown; plain values, no widgets."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from app.analysis.figure import Figure
from app.analysis.figures_of_run import run_figures
from app.analysis.load import session_load
from app.domain.fold import Closing
from app.domain.keeping import Note, Rating
from app.domain.plan import Side
from app.domain.profile import Stroke, profile_of
from app.domain.readiness import Readiness
from app.domain.records import BoutPrescribed, BoutRecord, Fact, Paused, RepRecord, Resumed, RunHeader
from app.domain.timeline import Timeline
from app.domain.tolerance import DEFAULT_TOLERANCE, Tolerance

MS_PER_MINUTE = 60_000
LEAST_SCALE_MS = 10_000


@dataclass(frozen=True, slots=True)
class DoneRep:
    """A rep on the axis of its bout: ms from the bout's first phase; `strokes` is its shape on that axis."""

    record: RepRecord
    start_ms: int
    end_ms: int
    strokes: tuple[Stroke, ...]


@dataclass(frozen=True, slots=True)
class BoutLine:
    """One attempt at a bout, or a bout that was not begun (`record` None), with its planned shape.

    `scale_ms` is the length of the axis, the same for all bouts of a run. `planned` is empty where the shape
    is not known: at the athlete's own pace, or where the plan of then cannot be laid out any more.
    """

    asked: BoutPrescribed
    record: BoutRecord | None
    planned: tuple[Stroke, ...]
    done: tuple[DoneRep, ...]
    scale_ms: int


@dataclass(frozen=True, slots=True)
class RunView:
    """A run's page. `paused_ms` is how long it stood still, `minutes` its whole length; None is unknown.

    `before` is what the athlete said before it, `tolerance` what its tempo is judged by.
    """

    header: RunHeader
    closing: Closing
    lines: tuple[BoutLine, ...]
    notes: tuple[Note, ...] = ()
    ratings: tuple[Rating, ...] = ()
    pauses: int = 0
    paused_ms: int = 0
    imported: bool = False
    before: tuple[Readiness, ...] = ()
    tolerance: Tolerance = DEFAULT_TOLERANCE

    @property
    def figures(self) -> tuple[Figure, ...]:
        """The figures of the run, which know why."""
        bouts = [(line.asked, line.record) for line in self.lines]
        return run_figures(self.closing, bouts, self.ratings, self.before, self.tolerance)

    @property
    def minutes(self) -> float | None:
        """Minutes from beginning to end, rests included."""
        return None if self.closing.elapsed_ms is None else self.closing.elapsed_ms / MS_PER_MINUTE

    @property
    def load(self) -> float | None:
        """Session load in AU; None where the effort or the length is unknown."""
        return session_load(self.closing.session_rpe, self.minutes)

    @property
    def pain(self) -> int | None:
        """The highest pain stated in any bout."""
        return max(
            (line.record.pain for line in self.lines if line.record and line.record.pain is not None),
            default=None,
        )


Bouts = Sequence[tuple[BoutPrescribed, BoutRecord | None]]


def bout_lines(bouts: Bouts, timeline: Timeline | None) -> tuple[BoutLine, ...]:
    """The lines of a run's bouts; `timeline` is its plan laid out, None where that cannot be."""
    shapes = _shapes(timeline)
    planned = [_planned(asked, shapes) for asked, _ in bouts]
    scale = max(
        [
            LEAST_SCALE_MS,
            *(
                _length(asked, record, strokes)
                for (asked, record), strokes in zip(bouts, planned, strict=True)
            ),
        ]
    )
    return tuple(
        BoutLine(asked, record, strokes, _done(record, strokes), scale)
        for (asked, record), strokes in zip(bouts, planned, strict=True)
    )


def pauses_of(facts: Iterable[Fact]) -> tuple[int, int]:
    """How often a run stood still, and for how many ms; a pause that never ended counts, without length."""
    count, length, since = 0, 0, None
    for fact in facts:
        match fact:
            case Paused(at_ms=at):
                count, since = count + 1, at
            case Resumed(at_ms=at) if since is not None:
                length, since = length + at - since, None
    return count, length


_Key = tuple[str, str, int, Side, int | None]


def _shapes(timeline: Timeline | None) -> dict[_Key, tuple[Stroke, ...]]:
    if timeline is None:
        return {}
    found = {}
    for bout in timeline.bouts:
        exercise, stage = timeline.exercise_of(bout), timeline.stage_of(bout)
        side = Side.BOTH if bout.alternating else bout.side
        key = (stage.name, exercise.name, bout.set_number, side, bout.work_ms)
        found[key] = profile_of(bout, exercise)
    return found


def _planned(asked: BoutPrescribed, shapes: dict[_Key, tuple[Stroke, ...]]) -> tuple[Stroke, ...]:
    return shapes.get((asked.stage_name, asked.exercise, asked.set_number, asked.side, asked.work_ms), ())


def _length(asked: BoutPrescribed, record: BoutRecord | None, strokes: tuple[Stroke, ...]) -> int:
    done = 0
    if record is not None and record.began_ms is not None:
        done = max([0, *(rep.end_ms - record.began_ms for rep in record.reps)])
    return max(asked.work_ms or 0, strokes[-1].end_ms if strokes else 0, done)


def _done(record: BoutRecord | None, planned: tuple[Stroke, ...]) -> tuple[DoneRep, ...]:
    if record is None or record.began_ms is None:
        return ()
    shapes: dict[tuple[int, Side], list[Stroke]] = {}
    for stroke in planned:
        shapes.setdefault((stroke.rep, stroke.side), []).append(stroke)
    found = []
    for rep in record.reps:
        start, end = rep.start_ms - record.began_ms, rep.end_ms - record.began_ms
        shape = shapes.get((rep.rep, rep.side), [])
        if rep.missed and end <= start and shape:
            start, end = shape[0].start_ms, shape[-1].end_ms
        found.append(DoneRep(rep, start, end, tuple(shape)))
    return tuple(found)
