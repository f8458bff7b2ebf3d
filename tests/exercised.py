"""Invented sets of an exercise in the last sessions of an athlete, for tests."""

from collections.abc import Sequence
from datetime import date, timedelta
from decimal import Decimal

from app.domain.dose import DoseKind
from app.domain.plan import Side
from app.domain.reviewed import ExerciseDone, SetDone
from tests.reviewed import MONDAY


def exercise_done(
    reps: Sequence[int | None] = (12, 12, 11),
    *,
    day: date = MONDAY,
    exercise: str = "External rotation",
    side: Side = Side.LEFT,
    asked: tuple[int, int] = (8, 12),
    load: str | None = "4",
    dose: DoseKind | None = DoseKind.TEMPO,
) -> ExerciseDone:
    """A session of an exercise: sets of these reps, all asked for and loaded alike."""
    kg = None if load is None else Decimal(load)
    sets = tuple(SetDone(*asked, each, kg) for each in reps)
    return ExerciseDone(f"run-{day}", day, exercise, side, dose, sets)


def season_of_sets(today: date, exercises: int = 4) -> tuple[ExerciseDone, ...]:
    """The last three sessions of some exercises on both sides, with something of everything among them."""
    found = []
    for number in range(exercises):
        for side in (Side.LEFT, Side.RIGHT) if number % 4 != 3 else (Side.BOTH,):
            name = NAMES[number % 4] if number < 4 else f"{NAMES[number % 4]} {number // 4 + 1}"
            for back in range(3):
                behind = 1 if side is Side.LEFT else 0
                reps = [(14, 14, 14 - behind), (12, 11, None), (5, 5), (20, 19 - behind, 18)][number % 4]
                found.append(
                    exercise_done(
                        reps,
                        day=today - timedelta(days=3 + number % 3 + 7 * back),
                        exercise=name,
                        side=side,
                        asked=((8, 12), (10, 10), (5, 5), (15, 20))[number % 4],
                        load=("4.5", "2.5", None, "42.5")[number % 4],
                        dose=DoseKind.STICK if number % 4 == 2 else DoseKind.TEMPO,
                    )
                )
    return tuple(found)


NAMES = ("External rotation in side lying", "Row with a long band", "Drop landing", "Split squat")
