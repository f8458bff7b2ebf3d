"""What could be lifted once, estimated from a load lifted more often: three formulas, and others in use."""

import math
from collections.abc import Callable
from dataclasses import dataclass

MOST_REPS = 12
TOO_MANY = "Above 12 reps the estimate is too far off."
TEMPO_WORK = "The reps were done to a prescribed tempo, for which no estimate holds."
NO_LOAD = "The load is unknown."
PERCENT_OF_MAXIMUM = {
    1: 100,
    2: 95,
    3: 93,
    4: 90,
    5: 87,
    6: 85,
    7: 83,
    8: 80,
    9: 77,
    10: 75,
    11: 70,
    12: 67,
    15: 65,
}


@dataclass(frozen=True, slots=True)
class Estimate:
    """Estimated one-rep maximum in kg by three formulas; all None with a `reason` where it is refused."""

    epley: float | None
    brzycki: float | None
    lombardi: float | None
    reason: str | None = None


def epley(load_kg: float, reps: int) -> float:
    """Load x (1 + reps / 30), in kg; one rep returns the load. Source: Epley 1985, from memory."""
    return _estimated(load_kg, reps, lambda: load_kg * (1 + reps / 30))


def brzycki(load_kg: float, reps: int) -> float:
    """Load x 36 / (37 - reps), in kg. Source: Brzycki 1993, from memory."""
    return _estimated(load_kg, reps, lambda: load_kg * 36 / (37 - reps))


def lombardi(load_kg: float, reps: int) -> float:
    """Load x reps^0.10, in kg. Source: Lombardi 1989, Beginning Weight Training, from memory."""
    return _estimated(load_kg, reps, lambda: load_kg * float(reps) ** 0.10)


def oconner(load_kg: float, reps: int) -> float:
    """Load x (1 + 0.025 x reps), in kg; one rep returns it. Source: O'Conner et al. 1989, from memory."""
    return _estimated(load_kg, reps, lambda: load_kg * (1 + 0.025 * reps))


def mayhew(load_kg: float, reps: int) -> float:
    """100 x load / (52.2 + 41.9 e^(-0.055 reps)), in kg. Source: Mayhew et al. 1992, from memory."""
    return _estimated(load_kg, reps, lambda: 100 * load_kg / (52.2 + 41.9 * math.exp(-0.055 * reps)))


def wathen(load_kg: float, reps: int) -> float:
    """100 x load / (48.8 + 53.8 e^(-0.075 reps)), in kg. Source: Wathen 1994, from memory."""
    return _estimated(load_kg, reps, lambda: 100 * load_kg / (48.8 + 53.8 * math.exp(-0.075 * reps)))


def percent_of_maximum(reps: int) -> int | None:
    """Which part of the one-rep maximum a load is that can be lifted so often, in %; None outside the table.

    Source: table of the National Strength and Conditioning Association, from memory. People differ widely: 6
    to 26 reps were done at 70 % in the squat (Zourdos et al. 2021).
    """
    return PERCENT_OF_MAXIMUM.get(reps)


def estimated_one_rep_max(load_kg: float | None, reps: int, *, tempo_work: bool = False) -> Estimate:
    """Three estimates in kg, or why there is none. Reps are of one set taken to the last possible rep."""
    if tempo_work:
        return Estimate(None, None, None, TEMPO_WORK)
    if load_kg is None:
        return Estimate(None, None, None, NO_LOAD)
    if reps > MOST_REPS:
        return Estimate(None, None, None, TOO_MANY)
    return Estimate(epley(load_kg, reps), brzycki(load_kg, reps), lombardi(load_kg, reps))


def _estimated(load_kg: float, reps: int, formula: Callable[[], float]) -> float:
    if not 1 <= reps <= MOST_REPS or load_kg < 0:
        raise ValueError(f"An estimate needs a load and 1 to {MOST_REPS} reps, not {load_kg} kg x {reps}.")
    return load_kg if reps == 1 else formula()
