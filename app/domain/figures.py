"""Derived figures of a compiled plan: what it asks for, by exercise, by stage and in the whole session.

Time under tension is the sum of the tempo's digits times the reps (textbook rule; the checks in
tests/outside name it), and a hold's seconds times its reps; relaxing between reps is not in it. Landings,
jumps, own-pace reps and timed work have no tempo, so theirs is not defined and is None, never zero.

A rep of both sides together counts once in a total, and once for each side: both limbs did it.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from app.domain.bout_work import rep_phases
from app.domain.dose import Band, HoldReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Side, Sides, Stage
from app.domain.timeline import Bout, Timeline

NO_REPS = Band.exactly(0)


@dataclass(frozen=True, slots=True)
class Kilograms:
    """Kg times reps: `low` for the lower bounds of reps, `high` for the upper."""

    low: Decimal
    high: Decimal


@dataclass(frozen=True, slots=True)
class Figures:
    """What a stretch of a session asks for. Lengths in ms; times are those of the upper bounds.

    `timed_ms` is the length of gaps and work as far as they have one, `timed_work_ms` that of the work
    alone, pauses between its reps included. `tut_ms` is None where no dose defines it; `nominal` says that an
    X phase is in it. `isometric_ms` is the time of isometric reps; the pauses of a tempo are not in it. Timed
    work counts as one rep. `contacts` is None when some are unknown. `known_load_kg` sums kg times reps where
    a load is known, None where none is; `load_complete` says whether every load was known.
    """

    timed_ms: int
    timed_work_ms: int
    open_ended: bool
    reps: Band
    reps_left: Band
    reps_right: Band
    tut_ms: int | None
    tut_left_ms: int | None
    tut_right_ms: int | None
    isometric_ms: int
    nominal: bool
    contacts: Band | None
    known_load_kg: Kilograms | None
    load_complete: bool

    @property
    def duration_ms(self) -> int | None:
        """Length in ms with the gaps before each bout; None when some work is open-ended."""
        return None if self.open_ended else self.timed_ms

    @property
    def work_ms(self) -> int | None:
        """Length of the work in ms; None when some of it is open-ended."""
        return None if self.open_ended else self.timed_work_ms

    @property
    def density(self) -> float | None:
        """Work over total time, 0-1; None when some work is open-ended or nothing takes time."""
        return None if self.open_ended or not self.timed_ms else self.timed_work_ms / self.timed_ms

    @property
    def volume_load_kg(self) -> Kilograms | None:
        """Kg times reps; None when a load is unknown."""
        return self.known_load_kg if self.load_complete else None


@dataclass(frozen=True, slots=True)
class ExerciseFigures:
    """The figures of one exercise, by its place in the plan."""

    stage: int
    exercise: int
    name: str
    figures: Figures


@dataclass(frozen=True, slots=True)
class StageFigures:
    """The figures of one stage and of its exercises in order."""

    stage: int
    name: str
    figures: Figures
    exercises: tuple[ExerciseFigures, ...]


@dataclass(frozen=True, slots=True)
class SessionFigures:
    """The figures of a whole session and of its stages in order."""

    figures: Figures
    stages: tuple[StageFigures, ...]


def session_figures(timeline: Timeline) -> SessionFigures:
    """The figures of a compiled plan. A gap belongs to the exercise of the bout that follows it."""
    by_place: dict[tuple[int, int], list[Figures]] = {}
    for bout in timeline.bouts:
        by_place.setdefault((bout.stage, bout.exercise), []).append(bout_figures(timeline, bout))
    stages: list[StageFigures] = []
    for stage_index, stage in enumerate(timeline.plan.stages):
        exercises = tuple(
            ExerciseFigures(stage_index, index, exercise.name, together(by_place[stage_index, index]))
            for index, exercise in enumerate(stage.exercises)
        )
        total = together(part.figures for part in exercises)
        stages.append(StageFigures(stage_index, stage.name, total, exercises))
    return SessionFigures(together(part.figures for part in stages), tuple(stages))


def bout_figures(timeline: Timeline, bout: Bout) -> Figures:
    """The figures of one bout and the gap before it."""
    exercise = timeline.exercise_of(bout)
    tut = set_tut_ms(exercise, timeline.plan.fast_ms)
    no_tut = None if tut is None else 0
    bout_tut = None if tut is None else tut * (2 if exercise.sides is Sides.ALTERNATE else 1)
    load = _volume_load(bout, exercise)
    return Figures(
        timed_ms=bout.before_ms + (bout.work_ms or 0),
        timed_work_ms=bout.work_ms or 0,
        open_ended=bout.open_ended,
        reps=Band(bout.low, bout.high),
        reps_left=_side_reps(bout, exercise, Side.LEFT),
        reps_right=_side_reps(bout, exercise, Side.RIGHT),
        tut_ms=bout_tut,
        tut_left_ms=tut if works(bout, exercise, Side.LEFT) else no_tut,
        tut_right_ms=tut if works(bout, exercise, Side.RIGHT) else no_tut,
        isometric_ms=(bout_tut or 0) if isinstance(exercise.dose, HoldReps) else 0,
        nominal=isinstance(exercise.dose, TempoReps) and exercise.dose.tempo.explosive,
        contacts=_contacts(timeline.stage_of(bout), exercise, bout),
        known_load_kg=load,
        load_complete=load is not None,
    )


def set_tut_ms(exercise: Exercise, fast_ms: int) -> int | None:
    """Time under tension of one set on one side in ms, X taken as `fast_ms`; None where none is defined."""
    if not isinstance(exercise.dose, TempoReps | HoldReps):
        return None
    phases = rep_phases(exercise.dose, fast_ms)
    return exercise.dose.reps.high * sum(part.length_ms for part in phases if not part.between)


def works(bout: Bout, exercise: Exercise, side: Side) -> bool:
    """Whether a side works in a bout: both do together, and where they alternate."""
    return exercise.sides is Sides.ALTERNATE or bout.side in (side, Side.BOTH)


def together(parts: Iterable[Figures]) -> Figures:
    """The figures of several stretches as one.

    A time stays None where nothing defines it; contacts are unknown as soon as some are.
    """
    all_parts = tuple(parts)
    return Figures(
        timed_ms=sum(part.timed_ms for part in all_parts),
        timed_work_ms=sum(part.timed_work_ms for part in all_parts),
        open_ended=any(part.open_ended for part in all_parts),
        reps=_sum_bands(part.reps for part in all_parts),
        reps_left=_sum_bands(part.reps_left for part in all_parts),
        reps_right=_sum_bands(part.reps_right for part in all_parts),
        tut_ms=_sum_known(part.tut_ms for part in all_parts),
        tut_left_ms=_sum_known(part.tut_left_ms for part in all_parts),
        tut_right_ms=_sum_known(part.tut_right_ms for part in all_parts),
        isometric_ms=sum(part.isometric_ms for part in all_parts),
        nominal=any(part.nominal for part in all_parts),
        contacts=_sum_contacts([part.contacts for part in all_parts]),
        known_load_kg=_sum_loads(part.known_load_kg for part in all_parts),
        load_complete=all(part.load_complete for part in all_parts),
    )


def _side_reps(bout: Bout, exercise: Exercise, side: Side) -> Band:
    if not works(bout, exercise, side):
        return NO_REPS
    share = 2 if exercise.sides is Sides.ALTERNATE else 1
    return Band(bout.low // share, bout.high // share)


def _contacts(stage: Stage, exercise: Exercise, bout: Bout) -> Band | None:
    """Contacts of a bout. In timed work they are known only when the plan states them for the whole of it."""
    per_rep = stage.contacts_per_rep(exercise)
    if isinstance(exercise.dose, WorkTime) and exercise.contacts is None and per_rep:
        return None
    return Band(bout.low * per_rep, bout.high * per_rep)


def _volume_load(bout: Bout, exercise: Exercise) -> Kilograms | None:
    if isinstance(exercise.dose, WorkTime) or bout.load_kg is None:
        return None
    if exercise.sides is not Sides.ALTERNATE:
        return Kilograms(bout.load_kg * bout.low, bout.load_kg * bout.high)
    if bout.other_load_kg is None:
        return None
    both = bout.load_kg + bout.other_load_kg
    return Kilograms(both * (bout.low // 2), both * (bout.high // 2))


def _sum_bands(bands: Iterable[Band]) -> Band:
    low = high = 0
    for band in bands:
        low, high = low + band.low, high + band.high
    return Band(low, high)


def _sum_contacts(bands: list[Band | None]) -> Band | None:
    known = [band for band in bands if band is not None]
    return _sum_bands(known) if len(known) == len(bands) else None


def _sum_known(lengths: Iterable[int | None]) -> int | None:
    known = [length for length in lengths if length is not None]
    return sum(known) if known else None


def _sum_loads(loads: Iterable[Kilograms | None]) -> Kilograms | None:
    known = [load for load in loads if load is not None]
    if not known:
        return None
    return Kilograms(
        sum((load.low for load in known), Decimal(0)), sum((load.high for load in known), Decimal(0))
    )
