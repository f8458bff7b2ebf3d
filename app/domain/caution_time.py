"""Cautions that follow from the order in time: too little rest, and power work on a tired target."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby, pairwise

from app.domain.caution_value import EXPLOSIVE_STAGES, Caution, CautionRule, Place, caution
from app.domain.dose import HoldReps, SignalReps
from app.domain.figures import set_tut_ms, works
from app.domain.plan import Side, StageKind
from app.domain.tempo import Phase
from app.domain.thresholds import Thresholds
from app.domain.timeline import Bout, Timeline
from app.domain.units import seconds_text

AT_EASE = frozenset({Phase.STICK, Phase.RESET, Phase.HOLD, Phase.RELAX})
"""Phases that are no explosive work: the landing is held, the athlete resets or rests."""


@dataclass(frozen=True, slots=True)
class _SetTimes:
    """Explosive work and everything else of one set and the gap after it, in ms."""

    active_ms: int
    rest_ms: int

    @property
    def ratio(self) -> float:
        return self.rest_ms / self.active_ms


def explosive_rests(timeline: Timeline, thresholds: Thresholds) -> Iterator[Caution]:
    """Explosive exercises with a set whose rest is short for its work.

    Work is each explosive action: a rep on a signal and the movement of a landing last as long as an X phase,
    anything else as long as on the timeline. Rest is what is left of the set and the gap after it. Only rest
    before more explosive work counts, and only of sets whose length is known.
    """
    limit = thresholds.explosive_rest_ratio
    for (stage_index, index), times in _times_by_exercise(timeline).items():
        stage = timeline.plan.stages[stage_index]
        worst = min(times, key=lambda time: time.ratio)
        if worst.ratio < limit.value:
            yield caution(
                CautionRule.EXPLOSIVE_REST,
                Place(stage.name, stage.exercises[index].name),
                f"{seconds_text(worst.active_ms)} s of explosive work to {seconds_text(worst.rest_ms)} s of "
                f"rest, about 1:{worst.ratio:.1f}, less than 1:{limit.value:g}",
                "quality of explosive work depends on being rested",
                limit.basis,
            )


def hold_rests(timeline: Timeline, thresholds: Thresholds) -> Iterator[Caution]:
    """Long holds whose side works again after less rest than the bout was long.

    Rest is the time from the end of a bout to the next of the same exercise on the same side.
    """
    limit = thresholds.long_hold_seconds
    told: set[tuple[int, int]] = set()
    for bout, rest_ms in _rests_of_a_side(timeline):
        stage, exercise = timeline.stage_of(bout), timeline.exercise_of(bout)
        place = (bout.stage, bout.exercise)
        if not isinstance(exercise.dose, HoldReps) or exercise.dose.hold.high <= limit.value * 1000:
            continue
        if place not in told and bout.work_ms is not None and rest_ms < bout.work_ms:
            told.add(place)
            yield caution(
                CautionRule.HOLD_REST,
                Place(stage.name, exercise.name),
                f"{seconds_text(rest_ms)} s of rest after {seconds_text(bout.work_ms)} s of work "
                f"with holds over {limit.value:g} s",
                "after long holds the rest is usually at least as long as the work",
                limit.basis,
            )


def tired_targets(timeline: Timeline, thresholds: Thresholds) -> Iterator[Caution]:
    """Power exercises whose target was long under tension before, on the side that had more of it."""
    limit = thresholds.tension_before_power_seconds
    tension: dict[tuple[str, Side], int] = {}
    seen: set[tuple[int, int]] = set()
    for bout in timeline.bouts:
        stage, exercise = timeline.stage_of(bout), timeline.exercise_of(bout)
        if exercise.target is None:
            continue
        target = exercise.target.strip().casefold()
        before = max(tension.get((target, side), 0) for side in (Side.LEFT, Side.RIGHT))
        begins = (bout.stage, bout.exercise) not in seen
        seen.add((bout.stage, bout.exercise))
        if stage.kind is StageKind.POWER and begins and before > limit.value * 1000:
            yield caution(
                CautionRule.TIRED_TARGET,
                Place(stage.name, exercise.name),
                f"power work on '{exercise.target}' after {seconds_text(before)} s of it under tension, "
                f"more than {limit.value:g} s",
                "power is usually trained on a rested target",
                limit.basis,
            )
        tut = set_tut_ms(exercise, timeline.plan.fast_ms) or 0
        for side in (Side.LEFT, Side.RIGHT):
            if works(bout, exercise, side):
                tension[target, side] = tension.get((target, side), 0) + tut


def _times_by_exercise(timeline: Timeline) -> dict[tuple[int, int], list[_SetTimes]]:
    sets = [
        tuple(bouts)
        for _, bouts in groupby(timeline.bouts, lambda bout: (bout.stage, bout.exercise, bout.set_number))
    ]
    found: dict[tuple[int, int], list[_SetTimes]] = {}
    for bouts, following in pairwise(sets):
        times = _set_times(timeline, bouts, following[0])
        if times is not None:
            found.setdefault((bouts[0].stage, bouts[0].exercise), []).append(times)
    return found


def _set_times(timeline: Timeline, bouts: tuple[Bout, ...], following: Bout) -> _SetTimes | None:
    """Work and rest of an explosive set before another; None for any other, or of unknown length."""
    explosive = _explosive(timeline, bouts[0]) and _explosive(timeline, following)
    if not explosive or any(bout.open_ended for bout in bouts):
        return None
    active = sum(_active_ms(bout, timeline.plan.fast_ms) for bout in bouts)
    whole = sum(bout.work_ms or 0 for bout in bouts) + sum(bout.before_ms for bout in bouts[1:])
    return _SetTimes(active, whole - active + following.before_ms) if active else None


def _explosive(timeline: Timeline, bout: Bout) -> bool:
    kind, dose = timeline.stage_of(bout).kind, timeline.exercise_of(bout).dose
    return kind in EXPLOSIVE_STAGES or isinstance(dose, SignalReps)


def _active_ms(bout: Bout, fast_ms: int) -> int:
    active = 0
    for span in bout.work:
        if span.end_ms is not None and span.phase not in AT_EASE:
            length = span.end_ms - span.start_ms
            active += min(length, fast_ms) if span.phase in (Phase.GO, Phase.MOVE) else length
    return active


def _rests_of_a_side(timeline: Timeline) -> Iterator[tuple[Bout, int]]:
    """Bouts followed by another of their exercise and side, with the time between where it is known."""
    last: dict[tuple[int, int, Side], tuple[Bout, int]] = {}
    now = 0
    for bout in timeline.bouts:
        key = (bout.stage, bout.exercise, bout.side)
        start = now + bout.before_ms
        if key in last:
            earlier, ended = last[key]
            yield earlier, start - ended
        if bout.work_ms is None:
            last.clear()
        now = start + (bout.work_ms or 0)
        last[key] = (bout, now)
