"""One side against the other: raw values, an index with its reference, a difference with direction."""

import math
from dataclasses import dataclass
from enum import StrEnum

from app.domain.plan import Side

NO_BOTH = "A value of one side is missing."
NO_REFERENCE = "Nobody has said which side is the reference."
NO_DIVISION = "The side that it is divided by is nought."
NO_ERROR_KNOWN = "The error of this test is not known."


class Standing(StrEnum):
    """What may be said of a difference between the sides."""

    UNKNOWN = "unknown"
    WITHIN_ERROR = "within_error"
    BEYOND_ERROR = "beyond_error"


@dataclass(frozen=True, slots=True)
class Symmetry:
    """The sides of one test. `left` and `right` are raw values in the unit of the test; None is unknown.

    `index` is the limb symmetry index in % of the `reference` side and can pass 100; `difference` is the
    symmetric difference in %, 0-100, `behind` the side that does worse (BOTH where they are equal). `apart`
    is their distance in the unit of the test and `mdc` the test's minimal detectable change; `standing`
    compares these two, and only where it is beyond the error may anything be said of a side that lags.
    `reasons` say what is missing.
    """

    left: float | None
    right: float | None
    reference: Side | None
    index: float | None
    difference: float | None
    behind: Side | None
    apart: float | None
    mdc: float | None
    standing: Standing
    reasons: tuple[str, ...]


def symmetry(
    left: float | None,
    right: float | None,
    *,
    reference: Side | None = None,
    more_is_better: bool = True,
    mdc: float | None = None,
) -> Symmetry:
    """Both sides of a test compared, none of them taken for the reference unless it is named.

    Values are in the unit of the test and not negative, `mdc` likewise. Raises ValueError for a negative
    value.
    """
    if left is None or right is None:
        return Symmetry(left, right, reference, None, None, None, None, mdc, Standing.UNKNOWN, (NO_BOTH,))
    reasons: list[str] = []
    index = None
    if reference in (None, Side.BOTH):
        reasons.append(NO_REFERENCE)
    else:
        own, other = (left, right) if reference is Side.LEFT else (right, left)
        index = limb_symmetry_index(other, own, more_is_better=more_is_better)
        if index is None:
            reasons.append(NO_DIVISION)
    apart = abs(left - right)
    if mdc is None:
        reasons.append(NO_ERROR_KNOWN)
    return Symmetry(
        left,
        right,
        reference,
        index,
        symmetric_difference(left, right),
        side_behind(left, right, more_is_better=more_is_better),
        apart,
        mdc,
        standing(apart, mdc),
        tuple(reasons),
    )


def limb_symmetry_index(involved: float, reference: float, *, more_is_better: bool = True) -> float | None:
    """Involved / reference x 100, in %; where less is better (a time), reference / involved x 100.

    None where it would be divided by 0. It can pass 100. Source: Gokeler et al. 2017 (PMC5315711); for times
    Noyes et al. 1991, from memory. Raises ValueError for a negative value.
    """
    _not_negative(involved, reference)
    above, below = (involved, reference) if more_is_better else (reference, involved)
    return above / below * 100 if below else None


def symmetric_difference(left: float, right: float) -> float | None:
    """(Greater - smaller) / greater x 100, in %, the same whichever side is which; 0 when both are equal.

    None when both are 0. Source: the percentage difference for one-sided tests of Bishop et al. 2018,
    Strength Cond J, from memory. Raises ValueError for a negative value.
    """
    _not_negative(left, right)
    greater = max(left, right)
    return abs(left - right) / greater * 100 if greater else None


@dataclass(frozen=True, slots=True)
class OtherIndices:
    """Other indices in use for two sides, in %, for comparison with figures made elsewhere; None undefined.

    With the greater G and the smaller S: `over_sum` (G - S) / (G + S), `over_mean` (G - S) / mean of both,
    `over_smaller` (G - S) / S. `angle` is the symmetry angle: negative where the first side is the smaller.
    """

    over_sum: float | None
    over_mean: float | None
    over_smaller: float | None
    angle: float | None


def other_indices(one: float, other: float) -> OtherIndices:
    """Further indices of two sides, in %; all but the angle are the same whichever side is which.

    Symmetry angle = (45 degrees - atan2(other, one)) / 90 degrees x 100. Source: the equations collected by
    Bishop et al. 2016, Strength Cond J, doi 10.1519/SSC.0000000000000264. Raises ValueError for a negative
    value.
    """
    _not_negative(one, other)
    greater, smaller = max(one, other), min(one, other)
    if not greater:
        return OtherIndices(None, None, None, None)
    apart = greater - smaller
    angle = (45 - math.degrees(math.atan2(other, one))) / 90 * 100
    return OtherIndices(
        apart / (greater + smaller) * 100,
        apart / ((greater + smaller) / 2) * 100,
        apart / smaller * 100 if smaller else None,
        angle,
    )


def side_behind(left: float, right: float, *, more_is_better: bool = True) -> Side:
    """The side that does worse; BOTH when they are equal."""
    if left == right:
        return Side.BOTH
    return Side.LEFT if (left < right) is more_is_better else Side.RIGHT


def standing(apart: float | None, mdc: float | None) -> Standing:
    """Whether a distance exceeds the error of its test, both in its unit; the limit itself is within it."""
    if apart is None or mdc is None:
        return Standing.UNKNOWN
    return Standing.BEYOND_ERROR if apart > mdc else Standing.WITHIN_ERROR


def _not_negative(*values: float) -> None:
    if min(values) < 0:
        raise ValueError("A side's value is not negative.")
