"""The compiler: a plan becomes the timeline of one athlete, in whole milliseconds, once."""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from decimal import Decimal

from app.domain.athlete import Athlete
from app.domain.bout_work import work_of
from app.domain.dose import WorkTime, rep_band
from app.domain.errors import SessionTooLongError
from app.domain.length import bout_ms, session_ms
from app.domain.plan import LONGEST_SESSION_MS, Exercise, First, Plan, Side, Sides
from app.domain.sequence import Gap, PlannedSet, planned_sets
from app.domain.timeline import Bout, RepWindow, SpanKind, Timeline, WorkSpan, windows_of
from app.domain.units import clock_text, exact_clock_text


def compile_timeline(plan: Plan, athlete: Athlete | None = None, weaker: Side | None = None) -> Timeline:
    """The timeline of a plan for one athlete, or for anybody when none is given.

    The athlete's first side, reps and loads stand in for the plan's, and the timeline's plan has those reps.
    `weaker` is the side that begins where the plan says so; while it is unknown the left begins.
    Raises SessionTooLongError when the athlete's reps make it longer than six hours.
    """
    suited = plan if athlete is None else suit(plan, athlete)
    return Timeline(suited, tuple(_Compilation(suited, athlete, weaker).bouts()))


def suit(plan: Plan, athlete: Athlete) -> Plan:
    """The plan with the athlete's own reps, by exercise name, in place of the written ones.

    Raises SessionTooLongError when they make the session longer than six hours.
    """
    if not athlete.reps:
        return plan
    stages = tuple(
        replace(stage, exercises=tuple(_suit_exercise(exercise, athlete) for exercise in stage.exercises))
        for stage in plan.stages
    )
    suited = replace(plan, stages=stages)
    length_ms, names = session_ms(suited), _made_longer(plan, suited)
    if length_ms > LONGEST_SESSION_MS and names:
        raise SessionTooLongError(
            f"With the reps of {athlete.name} for {', '.join(names)} the session lasts "
            f"{exact_clock_text(length_ms)}, and {clock_text(LONGEST_SESSION_MS)} is the most. "
            "Give fewer reps in the roster, or split the plan."
        )
    return suited


def _made_longer(plan: Plan, suited: Plan) -> tuple[str, ...]:
    """Names of the exercises that an athlete's reps make longer, each once, in quotes."""
    written, own = (
        [exercise for stage in each.stages for exercise in stage.exercises] for each in (plan, suited)
    )
    names = [
        f'"{after.name}"'
        for before, after in zip(written, own, strict=True)
        if bout_ms(after, plan.fast_ms) > bout_ms(before, plan.fast_ms)
    ]
    return tuple(dict.fromkeys(names))


def first_side(exercise: Exercise, athlete: Athlete | None = None, weaker: Side | None = None) -> Side:
    """The side an exercise begins on; `both` for work of both sides together."""
    if exercise.sides not in (Sides.EACH, Sides.ALTERNATE):
        return Side(exercise.sides.value)
    if athlete is not None and athlete.first in (Side.LEFT, Side.RIGHT):
        return athlete.first
    if exercise.first is First.WEAKER:
        return Side.RIGHT if weaker is Side.RIGHT else Side.LEFT
    return Side(exercise.first.value)


def _suit_exercise(exercise: Exercise, athlete: Athlete) -> Exercise:
    band = athlete.reps.get(exercise.name)
    if band is None or isinstance(exercise.dose, WorkTime):
        return exercise
    return replace(exercise, dose=replace(exercise.dose, reps=band))


_Laid = tuple[tuple[WorkSpan, ...], tuple[RepWindow, ...]]


@dataclass(frozen=True, slots=True)
class _Compilation:
    """One plan on its way to a timeline.

    The sets of an exercise are alike on a side: their spans and reps are laid once and shared. `laid` holds
    them by stage, exercise and side.
    """

    plan: Plan
    athlete: Athlete | None
    weaker: Side | None
    laid: dict[tuple[int, int, Side], _Laid] = field(default_factory=dict)

    def bouts(self) -> Iterator[Bout]:
        """Every bout in the order of the session."""
        side_change = Gap(SpanKind.SIDE_CHANGE, self.plan.side_change_ms)
        index = 0
        for planned in planned_sets(self.plan):
            exercise = self.plan.stages[planned.stage].exercises[planned.exercise]
            first = first_side(exercise, self.athlete, self.weaker)
            yield self._bout(index, planned, first, planned.gap)
            index += 1
            if exercise.sides is Sides.EACH:
                yield self._bout(index, planned, first.other, side_change)
                index += 1

    def _bout(self, index: int, planned: PlannedSet, side: Side, gap: Gap | None) -> Bout:
        exercise = self.plan.stages[planned.stage].exercises[planned.exercise]
        band = rep_band(exercise.dose)
        alternating = exercise.sides is Sides.ALTERNATE
        lead_in_ms = self.plan.lead_in_ms
        work, windows = self._work(planned, exercise, side)
        return Bout(
            index=index,
            stage=planned.stage,
            exercise=planned.exercise,
            set_number=planned.number,
            side=side,
            gap_kind=None if gap is None else gap.kind,
            # The lead-in is the end of the gap; a gap no longer than it becomes the lead-in alone.
            gap_ms=0 if gap is None else max(gap.length_ms - lead_in_ms, 0),
            lead_in_ms=lead_in_ms,
            work=work,
            windows=windows,
            low=band.low * (2 if alternating else 1),
            high=band.high * (2 if alternating else 1),
            load_kg=self._load(exercise, side),
            other_load_kg=self._load(exercise, side.other) if alternating else None,
        )

    def _work(self, planned: PlannedSet, exercise: Exercise, side: Side) -> _Laid:
        key = (planned.stage, planned.exercise, side)
        if key not in self.laid:
            work = work_of(exercise, side, self.plan.fast_ms)
            self.laid[key] = work, windows_of(work)
        return self.laid[key]

    def _load(self, exercise: Exercise, side: Side) -> Decimal | None:
        if self.athlete is None:
            return exercise.load_kg
        return self.athlete.load_kg(exercise.name, side, exercise.load_kg)
