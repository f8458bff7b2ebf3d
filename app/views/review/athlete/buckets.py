"""Stretches of time that charts gather days into: days, ISO weeks or months."""

from bisect import bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from typing import TypeVar

from app.views.review import words
from app.views.review.figure_words import month_words, short_month_words, weekday_words
from app.views.translation import tr

MOST_WEEKS = 110
"""Up to so many weeks a stretch is shown by week, else by month."""
DAY = timedelta(days=1)
Item = TypeVar("Item")


class Step(StrEnum):
    """How long a bucket is."""

    DAY = "day"
    WEEK = "week"
    MONTH = "month"


@dataclass(frozen=True, slots=True)
class Bucket:
    """From `first` to `last` day, both included; `label` stands below it, `name` says it in full.

    `of` names it as figures do: the ISO date of a day or a Monday, year and month of a month.
    """

    first: date
    last: date
    label: str
    name: str
    of: str = ""


def step_of(first: date, last: date) -> Step:
    """Weeks, or months where there would be too many weeks to tell apart."""
    return Step.WEEK if (last - first).days <= 7 * MOST_WEEKS else Step.MONTH


def buckets(first: date, last: date, step: Step) -> tuple[Bucket, ...]:
    """The buckets that two days and all between them lie in, in order; the outer ones may reach beyond."""
    found: list[Bucket] = []
    day = _begin(first, step)
    while day <= last:
        after = _after(day, step)
        found.append(Bucket(day, after - DAY, "", ""))
        day = after
    one_year = len({_year(bucket, step) for bucket in found}) <= 1
    return tuple(
        Bucket(
            bucket.first,
            bucket.last,
            _label(bucket, step, one_year=one_year),
            _name(bucket, step),
            bucket.first.isoformat()[: 7 if step is Step.MONTH else None],
        )
        for bucket in found
    )


def gathered(
    items: Iterable[Item], days: Iterable[date], into: Sequence[Bucket]
) -> tuple[tuple[Item, ...], ...]:
    """The items in each bucket, in their order; `days` are theirs, those outside are left out."""
    found: list[list[Item]] = [[] for _ in into]
    starts = [bucket.first for bucket in into]
    for item, day in zip(items, days, strict=True):
        number = _place(day, starts)
        if number is not None and day <= into[number].last:
            found[number].append(item)
    return tuple(map(tuple, found))


def _place(day: date, starts: Sequence[date]) -> int | None:
    place = bisect_right(starts, day) - 1
    return place if place >= 0 else None


def _begin(day: date, step: Step) -> date:
    if step is Step.WEEK:
        return day - timedelta(days=day.weekday())
    return day.replace(day=1) if step is Step.MONTH else day


def _after(day: date, step: Step) -> date:
    if step is Step.MONTH:
        return (day + timedelta(days=31)).replace(day=1)
    return day + (timedelta(days=7) if step is Step.WEEK else DAY)


def _year(bucket: Bucket, step: Step) -> int:
    return bucket.first.isocalendar().year if step is Step.WEEK else bucket.first.year


def _label(bucket: Bucket, step: Step, *, one_year: bool) -> str:
    if step is Step.DAY:
        return words.day(bucket.first)
    short = f"’{_year(bucket, step) % 100:02d}"
    if step is Step.MONTH:
        return short_month_words(bucket.first)
    week = f"{bucket.first.isocalendar().week}"
    return week if one_year else f"{week} {short}"


def _name(bucket: Bucket, step: Step) -> str:
    if step is Step.DAY:
        return weekday_words(bucket.first)
    if step is Step.MONTH:
        return month_words(bucket.first)
    span = words.span(bucket.first, bucket.last)
    return tr("Week {n}, {span}").format(n=bucket.first.isocalendar().week, span=span)
