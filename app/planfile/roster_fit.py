"""How a roster fits a plan: what an athlete has of their own that changes nothing in it."""

from collections.abc import Iterable

from app.domain.athlete import Athlete
from app.domain.dose import WorkTime
from app.domain.plan import Exercise, Plan
from app.planfile.shown import near_name, shown


def without_effect(athlete: Athlete, plan: Plan) -> tuple[str, ...]:
    """A sentence for each exercise with something that has no effect.

    It is not in the plan, or not done in reps, or without a name for the variant that is to be done.
    """
    exercises = [exercise for stage in plan.stages for exercise in stage.exercises]
    known = {exercise.name for exercise in exercises}
    counted = {exercise.name for exercise in exercises if not isinstance(exercise.dose, WorkTime)}
    return (
        *(_unknown(athlete, name, known) for name in unmatched(athlete, plan)),
        *(_uncounted(athlete, name) for name in athlete.reps if name in known - counted),
        *(
            _unnamed(athlete, name, variant)
            for name, variant in athlete.variants.items()
            if name in known and not _has_variant(exercises, name, variant)
        ),
    )


def unmatched(athlete: Athlete, plan: Plan) -> tuple[str, ...]:
    """The exercises an athlete has something of their own for and the plan does not have, in order."""
    known = {exercise.name for stage in plan.stages for exercise in stage.exercises}
    loaded = (exercise for exercise, _ in athlete.loads_kg)
    named = dict.fromkeys([*loaded, *athlete.reps, *athlete.variants, *sorted(athlete.sits_out)])
    return tuple(name for name in named if name not in known)


def _unknown(athlete: Athlete, name: str, known: set[str]) -> str:
    near = near_name(name, known)
    meant = f", did you mean {shown(near)}?" if near else "."
    return f"{shown(name)} is not in this plan; what {athlete.name} has for it is not used{meant}"


def _uncounted(athlete: Athlete, name: str) -> str:
    return f"{shown(name)} is timed work in this plan; the reps that {athlete.name} has for it are not used."


def _has_variant(exercises: Iterable[Exercise], name: str, variant: str) -> bool:
    return any(
        exercise.name == name and (exercise.easier if variant == "easier" else exercise.harder)
        for exercise in exercises
    )


def _unnamed(athlete: Athlete, name: str, variant: str) -> str:
    return f"{shown(name)} has no {variant} variant in this plan; {athlete.name} does it as it is."
