"""How long a session lasts, by arithmetic alone: a plan is measured before it is laid out span by span."""

from app.domain.bout_work import rep_phases
from app.domain.dose import OwnPaceReps, rep_band
from app.domain.plan import Exercise, Plan, Sides
from app.domain.sequence import planned_sets


def session_ms(plan: Plan) -> int:
    """Length in ms of all in the session that has one; work at the athlete's own pace counts nothing."""
    total = 0
    for planned in planned_sets(plan):
        exercise = plan.stages[planned.stage].exercises[planned.exercise]
        gap_ms = 0 if planned.gap is None else planned.gap.length_ms
        total += max(gap_ms, plan.lead_in_ms) + bout_ms(exercise, plan.fast_ms)
        if exercise.sides is Sides.EACH:
            total += max(plan.side_change_ms, plan.lead_in_ms) + bout_ms(exercise, plan.fast_ms)
    return total


def bout_ms(exercise: Exercise, fast_ms: int) -> int:
    """Length in ms of the work of one bout, 0 where it has no end of its own."""
    if isinstance(exercise.dose, OwnPaceReps):
        return 0
    phases = rep_phases(exercise.dose, fast_ms)
    reps = rep_band(exercise.dose).high * (2 if exercise.sides is Sides.ALTERNATE else 1)
    between = sum(phase.length_ms for phase in phases if phase.between)
    return reps * sum(phase.length_ms for phase in phases) - between
