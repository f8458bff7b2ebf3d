"""How far a test can be trusted, by the record's own tries: what two tries of one day differ by."""

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import fmean

from app.analysis.intraclass import Intraclass, intraclass
from app.analysis.measurement import (
    Agreement,
    agreement,
    can_show_small_change,
    minimal_detectable_change,
    pair_variation,
    repeatability_sd,
    smallest_worthwhile_change,
    typical_error,
)
from app.analysis.tests_catalog import kept_under
from app.analysis.tests_values import Group, Try, grouped
from app.domain.tried import Tried

FEWEST_PAIRS = 10
FEWEST_ATHLETES = 10
TOO_FEW_PAIRS = "There are too few repeated tries to know the error of this test: fewer than 10."
TOO_FEW_ATHLETES = "There are too few athletes with this test: fewer than 10."


@dataclass(frozen=True, slots=True)
class Trust:
    """What is known of a test by the first two tries of each day, athlete and side; None where unknown.

    `pairs` is how many there were, `athletes` of how many the spread is known. `error` is the typical error
    of a try, `detectable` the minimal detectable change, `worthwhile` the smallest worthwhile one,
    `agreement` the first try less the second with its limits, `repeatability` the root mean square of the
    differences: all in the unit of the test. `variation` is the coefficient of variation of a try in %, `icc`
    the intraclass correlations. `shows_small` says whether the test can show the smallest
    worthwhile change.
    """

    pairs: int = 0
    athletes: int = 0
    error: float | None = None
    detectable: float | None = None
    worthwhile: float | None = None
    agreement: Agreement | None = None
    repeatability: float | None = None
    variation: float | None = None
    icc: Intraclass | None = None
    shows_small: bool | None = None


UNKNOWN = Trust()
Trusts = Mapping[str, Trust]
"""What is known of tests, by their key."""


def trusts_of(tries: Iterable[Tried]) -> Trusts:
    """What is known of each test of which there are tries; they come in the order in which they were made."""
    by_key: dict[str, list[Tried]] = {}
    for tried in tries:
        by_key.setdefault(tried.test, []).append(tried)
    found = {}
    for test in kept_under(by_key):
        own = [
            tried for key in (test.key, *(part.key for part in test.parts)) for tried in by_key.get(key, ())
        ]
        found[test.key] = trust_of(grouped(own, test))
    return found


def trust_of(tries: Mapping[Group, Sequence[Try]]) -> Trust:
    """What is known of one test; under ten pairs nothing of its error, under ten athletes no spread."""
    values = {group: [each.value for each in own if each.value is not None] for group, own in tries.items()}
    pairs = [(own[0], own[1]) for own in values.values() if len(own) > 1]
    spread, held = _lasts(values)
    enough = len(pairs) >= FEWEST_PAIRS
    first, second = [one for one, _ in pairs], [other for _, other in pairs]
    error = typical_error([other - one for one, other in pairs]) if enough else None
    of_means = None if error is None else error * math.sqrt(held)
    worthwhile = smallest_worthwhile_change(spread, of_means) if len(spread) >= FEWEST_ATHLETES else None
    return Trust(
        len(pairs),
        len(spread),
        error,
        None if error is None else minimal_detectable_change(error),
        worthwhile,
        agreement(first, second) if enough else None,
        repeatability_sd(first, second) if enough else None,
        pair_variation(pairs) if enough else None,
        intraclass(pairs) if enough else None,
        can_show_small_change(worthwhile, error),
    )


def detectable_changes(trusts: Trusts) -> dict[str, float]:
    """Minimal detectable changes by the key of their test, in its unit; unknown ones are left out."""
    return {key: trust.detectable for key, trust in trusts.items() if trust.detectable is not None}


def _lasts(values: Mapping[Group, Sequence[float]]) -> tuple[list[float], float]:
    """The mean of the tries of each athlete's last day, sides averaged, and the part of the error it holds.

    That part is the variance of such a mean by that of a try, 1 for a single one: the mean over athletes of
    the sum of 1 / tries of each side, by the number of sides squared.
    """
    days: dict[bytes, dict[date, list[Sequence[float]]]] = {}
    for (whose, _, day), own in values.items():
        if own:
            days.setdefault(whose, {}).setdefault(day, []).append(own)
    lasts = [by_day[max(by_day)] for by_day in days.values()]
    held = [sum(1 / len(side) for side in sides) / len(sides) ** 2 for sides in lasts]
    return [fmean(map(fmean, sides)) for sides in lasts], fmean(held) if held else 0.0
