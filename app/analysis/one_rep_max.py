"""What could be lifted once, estimated from a load lifted more often: three formulas."""

from collections.abc import Callable
from dataclasses import dataclass

MOST_REPS = 12
TOO_MANY = "Above 12 reps the estimate is too far off."
TEMPO_WORK = "The reps were done to a prescribed tempo, for which no estimate holds."
NO_LOAD = "The load is unknown."


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
