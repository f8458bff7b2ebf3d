"""The tests a practitioner can enter: unit, what more of it means, sides, tries, and which try counts.

No typical error of these tests is at hand from a source, so that none is written here: the error that a
difference is held against is the one measured with the own tries, see `own_error`.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from statistics import fmean

from app.analysis.jumps import BEST_OF_TEN, mean_of_best
from app.analysis.local_time import known_zone
from app.analysis.measurement import minimal_detectable_change, smallest_worthwhile_change, typical_error
from app.domain.keeping import Result
from app.domain.plan import Side

FEWEST_PAIRS = 10
FEWEST_ATHLETES = 10
TOO_FEW_PAIRS = "There are too few repeated tries to know the error of this test: fewer than 10."
NO_UNIT = "1"


class More(StrEnum):
    """What a higher value means."""

    BETTER = "better"
    WORSE = "worse"
    NEITHER = "neither"


class Counts(StrEnum):
    """Which of several tries on one day counts."""

    BEST = "best"
    MEAN = "mean"
    MEAN_OF_BEST_FIVE = "mean_of_best_five"
    LAST = "last"


@dataclass(frozen=True, slots=True)
class FieldTest:
    """A test. `key` is what the record keeps, `name` what a screen shows; `tries` is how many are asked for.

    Values lie from `least` to `most` in `unit` ("1" for none). `standing` says on what tries and their
    summary rest.
    """

    key: str
    name: str
    unit: str
    more: More
    by_side: bool
    tries: int
    counts: Counts
    least: float
    most: float
    standing: str = "common practice, no source"

    @property
    def more_is_better(self) -> bool | None:
        """Whether more is better; None where it is neither good nor bad."""
        return None if self.more is More.NEITHER else self.more is More.BETTER


def _sided(key: str, name: str, unit: str, most: float, more: More = More.BETTER) -> FieldTest:
    return FieldTest(key, name, unit, more, True, 3, Counts.BEST, 0, most)


def _both(key: str, name: str, unit: str, most: float) -> FieldTest:
    return FieldTest(key, name, unit, More.BETTER, False, 3, Counts.BEST, 0, most)


CATALOGUE: tuple[FieldTest, ...] = (
    _sided("single_hop", "Single hop for distance", "cm", 400),
    _sided("triple_hop", "Triple hop for distance", "cm", 1_200),
    _sided("crossover_hop", "Crossover hop for distance", "cm", 1_200),
    _sided("timed_hop", "Six metre timed hop", "s", 60, More.WORSE),
    _both("jump_height", "Counter-movement jump, height", "cm", 120),
    _sided("one_leg_jump_height", "Counter-movement jump on one leg, height", "cm", 100),
    _both("drop_jump_flight", "Drop jump, flight over contact", NO_UNIT, 10),
    _both("drop_jump_height", "Drop jump, height over contact", "m/s", 10),
    FieldTest(
        "ten_hops_flight",
        "Ten hops, flight over contact",
        NO_UNIT,
        More.BETTER,
        False,
        10,
        Counts.MEAN_OF_BEST_FIVE,
        0,
        10,
        "Harper et al. 2011, from memory",
    ),
    FieldTest(
        "ten_hops_height",
        "Ten hops, height over contact",
        "m/s",
        More.BETTER,
        False,
        10,
        Counts.MEAN_OF_BEST_FIVE,
        0,
        10,
        "Harper et al. 2011, from memory",
    ),
    _sided("reach_anterior", "Reach forwards on one leg", "cm", 200),
    _sided("reach_posteromedial", "Reach backwards and inwards on one leg", "cm", 200),
    _sided("reach_posterolateral", "Reach backwards and outwards on one leg", "cm", 200),
    FieldTest("limb_length", "Limb length", "cm", More.NEITHER, True, 1, Counts.LAST, 30, 150),
    FieldTest("stance_open", "Stance on one leg, eyes open", "s", More.BETTER, True, 1, Counts.BEST, 0, 30),
    FieldTest(
        "stance_closed", "Stance on one leg, eyes closed", "s", More.BETTER, True, 1, Counts.BEST, 0, 30
    ),
    FieldTest(
        "balance_errors",
        "Balance errors, six stances",
        "errors",
        More.WORSE,
        False,
        1,
        Counts.LAST,
        0,
        60,
        "University of North Carolina, manual of the Balance Error Scoring System",
    ),
    FieldTest(
        "landing_errors",
        "Landing errors, jump from a 30 cm box",
        "errors",
        More.WORSE,
        False,
        3,
        Counts.MEAN,
        0,
        19,
        "Padua et al. 2009 (mean of three jumps; items from memory)",
    ),
    _sided("external_rotation", "Shoulder external rotation, force", "N", 1_000),
    _sided("internal_rotation", "Shoulder internal rotation, force", "N", 1_000),
    FieldTest(
        "rotation_range", "Shoulder rotation, total range", "deg", More.NEITHER, True, 3, Counts.MEAN, 0, 270
    ),
    _sided("adductor_squeeze", "Adductor strength, force", "N", 2_000),
    _both("one_rep_max", "One-rep maximum, measured", "kg", 1_000),
)


@dataclass(frozen=True, slots=True)
class DayValue:
    """What counts of the tries of one day, in the unit of the test; `tries` is how many there were."""

    day: date
    value: float
    tries: int


def field_test(key: str) -> FieldTest | None:
    """The test of a key; None for one that is not in the catalogue."""
    return next((test for test in CATALOGUE if test.key == key), None)


def counting(values: list[float], counts: Counts, more: More) -> float | None:
    """What counts of tries in order, in their unit; None where it is not defined.

    The best is the least where more is worse, and where more is neither it is the last. The best five need
    five.
    """
    if not values:
        return None
    match counts:
        case Counts.MEAN:
            return fmean(values)
        case Counts.MEAN_OF_BEST_FIVE:
            return mean_of_best(values, BEST_OF_TEN)
        case Counts.BEST if more is not More.NEITHER:
            return max(values) if more is More.BETTER else min(values)
        case _:
            return values[-1]


def day_values(results: Iterable[Result], test: FieldTest, side: Side) -> tuple[DayValue, ...]:
    """What counts of each local day's tries at a test on a side, in order of days.

    Tries in another unit than the test's are left out. A day on which nothing counts is left out.
    """
    days = _tries(results, test).items()
    found = (
        (day, [float(each.value) for each in tries], each_side) for (day, each_side), tries in sorted(days)
    )
    counted = (
        (day, counting(values, test.counts, test.more), len(values))
        for day, values, each_side in found
        if each_side is side
    )
    return tuple(DayValue(day, value, tries) for day, value, tries in counted if value is not None)


def own_error(results: Iterable[Result], test: FieldTest) -> float | None:
    """Typical error of a test in its unit from the first two tries of each day, athlete and side.

    None under ten pairs, a choice. Source: typical error as in `measurement.typical_error`.
    """
    by_athlete: dict[str, list[Result]] = {}
    for result in results:
        by_athlete.setdefault(result.athlete, []).append(result)
    pairs = [
        float(tries[1].value) - float(tries[0].value)
        for own in by_athlete.values()
        for tries in _tries(own, test).values()
        if len(tries) > 1
    ]
    return typical_error(pairs) if len(pairs) >= FEWEST_PAIRS else None


def own_detectable_change(results: Iterable[Result], test: FieldTest) -> float | None:
    """Minimal detectable change of a test in its unit by its own error; None where that is not known."""
    error = own_error(results, test)
    return None if error is None else minimal_detectable_change(error)


def own_worthwhile_change(results: Iterable[Result], test: FieldTest) -> float | None:
    """Smallest worthwhile change of a test in its unit, from the last day of each athlete, sides averaged.

    The spread between athletes is freed of the own error where that is known. None under ten athletes, a
    choice. Source: as in `measurement.smallest_worthwhile_change`.
    """
    every = tuple(results)
    by_athlete: dict[str, list[Result]] = {}
    for result in every:
        by_athlete.setdefault(result.athlete, []).append(result)
    lasts = (
        [values[-1].value for side in Side if (values := day_values(own, test, side))]
        for own in by_athlete.values()
    )
    means = [fmean(last) for last in lasts if last]
    if len(means) < FEWEST_ATHLETES:
        return None
    return smallest_worthwhile_change(means, own_error(every, test))


def _tries(results: Iterable[Result], test: FieldTest) -> dict[tuple[date, Side], list[Result]]:
    found: dict[tuple[date, Side], list[Result]] = {}
    wanted = (each for each in results if each.test == test.key and each.unit == test.unit)
    for result in sorted(wanted, key=lambda each: (each.at, each.attempt, each.id)):
        day = result.at.astimezone(known_zone(result.zone)).date()
        found.setdefault((day, result.side), []).append(result)
    return found
