"""Readiness against the athlete's own last 28 days, never against a fixed limit."""

import math
from bisect import bisect_left
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import fmean

from app.analysis.load_weeks import spread
from app.analysis.local_time import known_zone
from app.domain.readiness import Readiness

WINDOW_DAYS = 28
FEWEST_DAYS = 14
ITEM_MISSING = "One of the four questions is not answered."
TOO_FEW_DAYS = "There are too few days to compare with: fewer than 14 of the last 28."
NO_SPREAD = "All days before were the same, so that there is no spread to compare with."


@dataclass(frozen=True, slots=True)
class ReadinessPoint:
    """Readiness of a local day: `total` 4 (well) to 28 (badly), `z` in SDs above the own `mean`.

    `days` counts the days that `mean` and `sd` rest on; `reason` says why there is no `z`.
    """

    day: date
    total: int | None
    z: float | None
    mean: float | None
    sd: float | None
    days: int
    reason: str | None


def local_day(answers: Readiness) -> date:
    """The day of an answer by the clock on the wall."""
    return answers.at.astimezone(known_zone(answers.zone)).date()


def against_own(total: int | None, before: Sequence[float]) -> tuple[float | None, str | None]:
    """(Total - mean) / SD (n - 1) of the days before, in SDs, and why there is none where there is none.

    Source: the four items and their sum, Hooper et al. 1995, Med Sci Sports Exerc 27:106-112; comparing with
    the own last 28 days, of which 14 must be known, is a choice.
    """
    if total is None:
        return None, ITEM_MISSING
    if len(before) < FEWEST_DAYS:
        return None, TOO_FEW_DAYS
    around = spread(before)
    return ((total - fmean(before)) / around, None) if around else (None, NO_SPREAD)


def readiness_course(
    answers: Iterable[Readiness], first: date = date.min, last: date = date.max
) -> tuple[ReadinessPoint, ...]:
    """One point a local day, the last answer of each, against the 28 days before it.

    Only of the days from `first` to `last`; the answers may begin before.
    """
    totals = _totals(answers)
    return tuple(_point(day, totals) for day in sorted(totals) if first <= day <= last)


def latest_known(
    answers: Iterable[Readiness], first: date, last: date
) -> tuple[ReadinessPoint, ReadinessPoint] | None:
    """The last point from `first` to `last` that has a total, and the last that has a `z`.

    Where there is none such, the last of all; None without answers in that time.
    """
    totals = _totals(answers)
    days = sorted(day for day in totals if first <= day <= last)
    if not days:
        return None
    known = sorted(day.toordinal() for day, total in totals.items() if total is not None)
    with_total = next((day for day in reversed(days) if totals[day] is not None), days[-1])
    for day in reversed(days):
        at = day.toordinal()
        before = bisect_left(known, at) - bisect_left(known, at - WINDOW_DAYS)
        if totals[day] is not None and before >= FEWEST_DAYS:
            point = _point(day, totals)
            if point.z is not None:
                return _point(with_total, totals), point
    return _point(with_total, totals), _point(days[-1], totals)


def latest_readiness(answers: Iterable[Readiness]) -> ReadinessPoint | None:
    """The last point of the course; None without answers."""
    totals = _totals(answers)
    return _point(max(totals), totals) if totals else None


def _totals(answers: Iterable[Readiness]) -> dict[date, int | None]:
    by_day: dict[date, Readiness] = {}
    for answer in sorted(answers, key=lambda each: each.at):
        by_day[local_day(answer)] = answer
    return {day: answer.total for day, answer in by_day.items()}


def _point(day: date, totals: dict[date, int | None]) -> ReadinessPoint:
    window = (day - timedelta(days=number) for number in range(1, WINDOW_DAYS + 1))
    before = [float(total) for total in map(totals.get, window) if total is not None]
    z, reason = against_own(totals[day], before)
    mean = fmean(before) if before else None
    sd = spread(before) if len(before) > 1 else None
    return ReadinessPoint(
        day, totals[day], z, mean, None if sd is None or math.isnan(sd) else sd, len(before), reason
    )
