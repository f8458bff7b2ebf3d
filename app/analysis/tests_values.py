"""What counts of the tries at a test: of each try its value, of each day what the test says."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import fmean
from typing import NamedTuple

from app.analysis.jumps import BEST_OF_TEN, mean_of_best
from app.analysis.local_time import known_zone
from app.analysis.tests_catalog import keys_of
from app.analysis.tests_kinds import Counts, FieldTest, More
from app.domain.keeping import Result
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.domain.tried import Tried

Group = tuple[bytes, Side, date]
"""Whose tries, on which side, on which local day."""


@dataclass(frozen=True, slots=True)
class DayValue:
    """What counts of the tries of one day, in the unit of the test; `tries` is how many there were."""

    day: date
    value: float
    tries: int


class Try(NamedTuple):
    """One try: its value in the unit of its test, and its parts in order.

    The value is None where the parts give none; the parts are empty where the value was given by itself.
    """

    value: float | None
    parts: tuple[float, ...] = ()


def counting(values: Sequence[float], counts: Counts, more: More) -> float | None:
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
    found = []
    for day, tries in day_tries(results, test, side).items():
        values = [each.value for each in tries if each.value is not None]
        value = counting(values, test.counts, test.more)
        if value is not None:
            found.append(DayValue(day, value, len(values)))
    return tuple(found)


def values_within(record: AthleteRecord, test: FieldTest, side: Side) -> tuple[DayValue, ...]:
    """As `day_values`, of the record's days alone."""
    return tuple(each for each in day_values(record.results, test, side) if record.covers(each.day))


def day_tries(results: Iterable[Result], test: FieldTest, side: Side) -> dict[date, tuple[Try, ...]]:
    """An athlete's tries at a test on a side by local day, in order of days, each day in the order made."""
    keys = keys_of(test)
    own = [each for each in results if each.side is side and each.test in keys]
    own.sort(key=lambda each: (each.at, each.attempt, each.id))
    found = grouped(map(_light, own), test)
    return {day: tuple(tries) for (_, _, day), tries in sorted(found.items(), key=lambda each: each[0][2])}


def grouped(tries: Iterable[Tried], test: FieldTest) -> dict[Group, list[Try]]:
    """The tries at a test by whose they are, side and day, as they come; those in another unit are left out.

    A try of parts is whole when all of them are there under its number; a value given by itself goes before.
    """
    places = {part.key: place for place, part in enumerate(test.parts)}
    units = {test.key: test.unit} | {part.key: part.unit for part in test.parts}
    found: dict[Group, dict[tuple[int, int], Try]] = {}
    pieces: dict[tuple[Group, int], dict[int, float]] = {}
    for number, tried in enumerate(tries):
        if units.get(tried.test) != tried.unit:
            continue
        group = tried.whose, tried.side, tried.day
        mine = found.setdefault(group, {})
        if tried.test not in places:
            mine.pop((tried.attempt, -1), None)
            mine[tried.attempt, number] = Try(tried.value)
            continue
        parts = pieces.setdefault((group, tried.attempt), {})
        parts[places[tried.test]] = tried.value
        if len(parts) == len(places) and not any(attempt == tried.attempt for attempt, at in mine if at >= 0):
            values = tuple(parts[place] for place in range(len(places)))
            mine[tried.attempt, -1] = Try(test.value_of(values), values)
    return {group: list(mine.values()) for group, mine in found.items() if mine}


def _light(result: Result) -> Tried:
    day = result.at.astimezone(known_zone(result.zone)).date()
    return Tried(b"", result.test, result.side, day, result.attempt, float(result.value), result.unit)
