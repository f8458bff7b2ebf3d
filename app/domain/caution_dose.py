"""Cautions about the dose of single exercises: tension, holds, and what to stop at."""

from collections.abc import Iterator

from app.domain.caution_value import EXPLOSIVE_STAGES, Caution, CautionRule, Place, caution
from app.domain.dose import HoldReps, TempoReps
from app.domain.figures import set_tut_ms
from app.domain.plan import Exercise, Sides, Stage
from app.domain.thresholds import EXPLOSIVE_HOLD_BASIS, STOP_SIGNS_BASIS, Thresholds
from app.domain.timeline import Timeline
from app.domain.units import seconds_text


def stop_signs(timeline: Timeline, _thresholds: Thresholds) -> Iterator[Caution]:
    """Exercises of reactive and power stages that name no sign to stop at."""
    for stage, exercise in _exercises(timeline):
        if stage.kind in EXPLOSIVE_STAGES and not exercise.stop_if:
            yield caution(
                CautionRule.STOP_SIGNS,
                Place(stage.name, exercise.name),
                f"a {stage.kind} exercise without stop_if",
                "an athlete landing and jumping alone should know when to stop",
                STOP_SIGNS_BASIS,
            )


def explosive_holds(timeline: Timeline, _thresholds: Thresholds) -> Iterator[Caution]:
    """Tempos that ask a hold where the movement is meant to be quick.

    In reactive and power stages any hold counts; with an X elsewhere only the hold between lowering and
    rising, for a pause after an explosive lift is ordinary strength work.
    """
    for stage, exercise in _exercises(timeline):
        if not isinstance(exercise.dose, TempoReps):
            continue
        tempo = exercise.dose.tempo
        quick_stage = stage.kind in EXPLOSIVE_STAGES
        lengthened = tempo.hold_lengthened > 0 and (quick_stage or tempo.explosive)
        if lengthened or (quick_stage and tempo.hold_shortened > 0):
            reason = (
                "the time between lowering and rising is usually kept as short as possible in explosive work"
                if lengthened
                else "explosive work usually has no hold within its reps"
            )
            yield caution(
                CautionRule.EXPLOSIVE_HOLD,
                Place(stage.name, exercise.name),
                f"the tempo {tempo} asks a hold in an explosive exercise",
                reason,
                EXPLOSIVE_HOLD_BASIS,
            )


def set_tensions(timeline: Timeline, thresholds: Thresholds) -> Iterator[Caution]:
    """Sets at a tempo whose time under tension on a side is long."""
    limit = thresholds.set_tension_seconds
    for stage, exercise in _exercises(timeline):
        tut = set_tut_ms(exercise, timeline.plan.fast_ms)
        if isinstance(exercise.dose, TempoReps) and tut is not None and tut > limit.value * 1000:
            nominal = " nominally" if exercise.dose.tempo.explosive else ""
            yield caution(
                CautionRule.SET_TENSION,
                Place(stage.name, exercise.name),
                f"a set is{nominal} {seconds_text(tut)} s under tension{_by_side(exercise)}, "
                f"more than {limit.value:g} s",
                "form may give way before the set ends",
                limit.basis,
            )


def isometric_totals(timeline: Timeline, thresholds: Thresholds) -> Iterator[Caution]:
    """Isometric exercises whose holds, all sets together, are long on a side."""
    limit = thresholds.isometric_seconds
    for stage, exercise in _exercises(timeline):
        tut = set_tut_ms(exercise, timeline.plan.fast_ms)
        if not isinstance(exercise.dose, HoldReps) or tut is None:
            continue
        total = tut * exercise.sets
        if total > limit.value * 1000:
            yield caution(
                CautionRule.ISOMETRIC_TOTAL,
                Place(stage.name, exercise.name),
                f"{seconds_text(total)} s of holds in all{_by_side(exercise)}, more than {limit.value:g} s",
                "long isometric totals tire and are usually built up step by step",
                limit.basis,
            )


def _by_side(exercise: Exercise) -> str:
    return " on each side" if exercise.sides in (Sides.EACH, Sides.ALTERNATE) else ""


def _exercises(timeline: Timeline) -> Iterator[tuple[Stage, Exercise]]:
    for stage in timeline.plan.stages:
        for exercise in stage.exercises:
            yield stage, exercise
