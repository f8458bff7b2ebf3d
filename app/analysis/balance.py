"""Landings and balance: landings stuck by side, jumps in their square, reach of the leg, errors."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from app.analysis.adherence import Interval, wilson
from app.domain.plan import Side
from app.domain.reviewed import PartTotals

MOST_ERRORS = 10
CONDITIONS = 6
ANTERIOR_LIMIT_CM = 4.0
LANDING_BANDS = (4.0, "excellent"), (5.0, "good"), (6.0, "moderate")


@dataclass(frozen=True, slots=True)
class CountShare:
    """`good` of `n`; the share is 0-1 and None when n is 0."""

    good: int
    n: int

    @property
    def share(self) -> float | None:
        """Good / n, 0-1; None when n is 0."""
        return self.good / self.n if self.n else None

    @property
    def interval(self) -> Interval | None:
        """The 95 % Wilson interval of the share, as if tries were independent; None when n is 0."""
        return wilson(self.good, self.n)


def landings_stuck(parts: Iterable[PartTotals]) -> dict[Side, CountShare]:
    """Landings stuck of those done, by side: reps of a landing exercise without a fault. Common practice.

    A part of which nobody marked reps one by one counts nowhere.
    """
    found: dict[Side, CountShare] = {}
    for part in parts:
        if part.landings and part.totals.clean is not None:
            before = found.get(part.side, CountShare(0, 0))
            found[part.side] = CountShare(
                before.good + min(part.totals.clean, part.totals.done), before.n + part.totals.done
            )
    return {side: found[side] for side in Side if side in found}


def in_square(inside: int, out: int) -> CountShare:
    """Jumps that ended in the marked square, of all. Common practice, no source."""
    return CountShare(inside, inside + out)


def reach_composite(anterior: float, posteromedial: float, posterolateral: float, limb: float) -> float:
    """(Anterior + posteromedial + posterolateral) / (3 x limb length) x 100, in %; all in cm.

    The limb is measured from the anterior superior iliac spine to the medial malleolus. Source: Plisky et al.
    2006, J Orthop Sports Phys Ther 36:911-919 (secondary). Raises ValueError unless the limb has a length.
    """
    if limb <= 0:
        raise ValueError("A limb has a length.")
    return (anterior + posteromedial + posterolateral) / (3 * limb) * 100


def anterior_reach_apart(left_cm: float, right_cm: float) -> bool:
    """Whether the anterior reaches differ by more than 4 cm; 4.0 itself is not more.

    Source: Plisky et al. 2006, J Orthop Sports Phys Ther 36:911-919 (secondary), of school basketball; no
    limit for everybody.
    """
    return abs(left_cm - right_cm) > ANTERIOR_LIMIT_CM


def balance_errors(counted: int | None) -> int:
    """Errors of one condition of 20 s: those counted, 10 at most; None means that it could not be held: 10.

    Source: University of North Carolina, manual of the Balance Error Scoring System. Raises ValueError for a
    negative count.
    """
    if counted is None:
        return MOST_ERRORS
    if counted < 0:
        raise ValueError("Errors are counted from nought.")
    return min(counted, MOST_ERRORS)


def balance_total(conditions: Sequence[int | None]) -> int | None:
    """Errors of all six conditions, 0-60; None unless there are six. A condition not held counts as 10.

    Source: University of North Carolina, manual of the Balance Error Scoring System.
    """
    return sum(map(balance_errors, conditions)) if len(conditions) == CONDITIONS else None


def landing_band(errors: float) -> str:
    """How a mean of landing errors is called: excellent to 4, good above 4 to 5, moderate to 6, poor above 6.

    Source: Padua et al. 2009, Am J Sports Med 37:1996-2002, from memory. A name, no verdict on anybody.
    """
    return next((name for most, name in LANDING_BANDS if errors <= most), "poor")
