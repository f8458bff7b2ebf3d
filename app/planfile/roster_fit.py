"""How a roster fits a plan: what an athlete has of their own that changes nothing in it."""

import difflib

from app.domain.athlete import Athlete
from app.domain.dose import WorkTime
from app.domain.plan import Plan
from app.planfile.shown import shown

ALIKE = 0.8
"""From this likeness on a name is taken for a misspelling: a roster may serve several plans."""


def without_effect(athlete: Athlete, plan: Plan) -> tuple[str, ...]:
    """A sentence for each exercise whose numbers have no effect: not in the plan, or not done in reps."""
    exercises = [exercise for stage in plan.stages for exercise in stage.exercises]
    known = {exercise.name for exercise in exercises}
    counted = {exercise.name for exercise in exercises if not isinstance(exercise.dose, WorkTime)}
    return (
        *(_unknown(athlete, name, known) for name in unmatched(athlete, plan)),
        *(_uncounted(athlete, name) for name in athlete.reps if name in known - counted),
    )


def unmatched(athlete: Athlete, plan: Plan) -> tuple[str, ...]:
    """The exercises an athlete has something of their own for and the plan does not have, in order."""
    known = {exercise.name for stage in plan.stages for exercise in stage.exercises}
    named = dict.fromkeys([*(exercise for exercise, _ in athlete.loads_kg), *athlete.reps])
    return tuple(name for name in named if name not in known)


def _unknown(athlete: Athlete, name: str, known: set[str]) -> str:
    folded = {other.casefold(): other for other in sorted(known)}
    near = difflib.get_close_matches(name.casefold(), folded, n=1, cutoff=ALIKE)
    meant = f", did you mean {shown(folded[near[0]])}?" if near else "."
    return f"{shown(name)} is not in this plan; what {athlete.name} has for it is not used{meant}"


def _uncounted(athlete: Athlete, name: str) -> str:
    return f"{shown(name)} is timed work in this plan; the reps that {athlete.name} has for it are not used."
