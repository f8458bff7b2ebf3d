"""Session load by day and week, with monotony and strain; what is unknown stays so."""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import fmean

from app.analysis.load import session_load
from app.domain.reviewed import AthleteRecord, ReviewedSession

DAYS_A_WEEK = 7
INCOMPLETE = "A day of this week is unknown."
ALL_ALIKE = "Every day was the same, so that the spread is nought."
NOTHING_DONE = "There was no load in this week."


@dataclass(frozen=True, slots=True)
class DayLoad:
    """Load of a day in AU, 0 on a rest day, None where unknown; `sessions` counts those of the day."""

    day: date
    load: float | None
    sessions: int = 0


@dataclass(frozen=True, slots=True)
class WeekLoad:
    """Load of an ISO week from Monday, in AU; None where a day of it is unknown.

    `known` sums the days that are known and `days_known` counts them. `monotony` has no unit, `strain` is in
    AU; both are None with `reason` saying why.
    """

    monday: date
    total: float | None
    known: float
    days_known: int
    monotony: float | None
    strain: float | None
    reason: str | None


def spread(values: Sequence[float], *, of_sample: bool = True) -> float:
    """Standard deviation in the unit of the values, over n - 1, or over n where it is not `of_sample`.

    Values that are all the same have exactly none. Raises ValueError for fewer than two.
    """
    if len(values) < 2:
        raise ValueError("A standard deviation needs two values.")
    if min(values) == max(values):
        return 0.0
    mean = fmean(values)
    squares = math.fsum((value - mean) ** 2 for value in values)
    return math.sqrt(squares / (len(values) - of_sample))


def monotony(days: Sequence[float | None], *, of_sample: bool = True) -> float | None:
    """Mean of the daily loads / their standard deviation, no unit; rest days are 0.

    The SD is that of a sample (n - 1): the source's abstract does not say which, and the other one makes
    seven days' monotony greater by sqrt(7/6). None when a day is unknown or the SD is 0. Source: Foster 1998,
    Med Sci Sports Exerc 30:1164-1168 ("daily mean/standard deviation").
    """
    known = [day for day in days if day is not None]
    if len(known) < max(len(days), 2):
        return None
    around = spread(known, of_sample=of_sample)
    return fmean(known) / around if around else None


def strain(days: Sequence[float | None], *, of_sample: bool = True) -> float | None:
    """Sum of the daily loads x their monotony, not rounded, in AU; None where monotony is.

    Source: Foster 1998, Med Sci Sports Exerc 30:1164-1168 ("load * monotony").
    """
    alike = monotony(days, of_sample=of_sample)
    return None if alike is None else math.fsum(day or 0.0 for day in days) * alike


def why_no_monotony(days: Sequence[float | None]) -> str | None:
    """The reason why a week has no monotony; None when it has one."""
    if any(day is None for day in days):
        return INCOMPLETE
    if not any(days):
        return NOTHING_DONE
    return ALL_ALIKE if monotony(days) is None else None


def day_load(sessions: Iterable[ReviewedSession]) -> float | None:
    """Load of one day in AU: the sum of its sessions' RPE x minutes; None as soon as one is unknown."""
    loads = [session_load(session.rpe, session.minutes) for session in sessions]
    known = [load for load in loads if load is not None]
    return math.fsum(known) if len(known) == len(loads) else None


def loads_by_day(
    record: AthleteRecord, first: date | None = None, last: date | None = None
) -> tuple[DayLoad, ...]:
    """Each day from `first` to `last` (those of the record) with its load.

    A day without a session is a rest day (0) when the record knows of that time and the day is over; before
    `since`, and from today on, it is unknown, as a day is one of whose sessions has no effort or no length.
    """
    by_day: dict[date, list[ReviewedSession]] = {}
    for session in record.sessions:
        by_day.setdefault(session.day, []).append(session)
    start, end = first or record.first, last or record.last
    days = (start + timedelta(days=number) for number in range((end - start).days + 1))
    return tuple(_day(record, day, by_day.get(day, [])) for day in days)


def loads_by_week(record: AthleteRecord) -> tuple[WeekLoad, ...]:
    """Each ISO week that the record's days touch; days outside of them are unknown."""
    by_day = {each.day: each.load for each in loads_by_day(record)}
    monday = record.first - timedelta(days=record.first.weekday())
    weeks = []
    while monday <= record.last:
        weeks.append(week_load(monday, [by_day.get(monday + timedelta(days=d)) for d in range(DAYS_A_WEEK)]))
        monday += timedelta(days=DAYS_A_WEEK)
    return tuple(weeks)


def week_load(monday: date, days: Sequence[float | None]) -> WeekLoad:
    """Total, monotony and strain of the seven days from a Monday."""
    known = [day for day in days if day is not None]
    total = math.fsum(known)
    complete = len(known) == len(days)
    return WeekLoad(
        monday,
        total if complete else None,
        total,
        len(known),
        monotony(days),
        strain(days),
        why_no_monotony(days),
    )


def _day(record: AthleteRecord, day: date, sessions: list[ReviewedSession]) -> DayLoad:
    if sessions:
        return DayLoad(day, day_load(sessions), len(sessions))
    known = record.since is not None and record.since <= day < record.today
    return DayLoad(day, 0.0 if known else None)
