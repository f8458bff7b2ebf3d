"""Adherence in reps: what was done of what was prescribed, by week, with its interval."""

import math
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import NormalDist

from app.analysis.local_time import local_start
from app.domain.records import RunSummary

Z_95 = NormalDist().inv_cdf(0.975)
CAUTION = "as if reps were independent"


@dataclass(frozen=True, slots=True)
class Interval:
    """Bounds of a share, each from 0 to 1."""

    low: float
    high: float


@dataclass(frozen=True, slots=True)
class WeekReps:
    """Reps of one ISO week. All counts are None in a week without a session that ended: a gap, not a zero.

    `reps_met` counts, bout by bout, reps up to those prescribed, so that it never exceeds `reps_prescribed`;
    `reps_extra` are those beyond. `not_ended` counts runs left out because they have not ended, `corrected`
    those of which reps were corrected.
    """

    monday: date
    sessions: int
    reps_met: int | None
    reps_prescribed: int | None
    reps_extra: int | None
    not_ended: int = 0
    corrected: int = 0

    @property
    def year(self) -> int:
        """The ISO year, which is not always the calendar year of the Monday."""
        return self.monday.isocalendar().year

    @property
    def week(self) -> int:
        """The ISO week, 1 to 53."""
        return self.monday.isocalendar().week

    @property
    def share(self) -> float | None:
        """Reps met / reps prescribed, 0 to 1; None where nothing was prescribed."""
        if self.reps_met is None or not self.reps_prescribed:
            return None
        return self.reps_met / self.reps_prescribed

    @property
    def interval(self) -> Interval | None:
        """The 95 % Wilson interval of `share`, as if reps were independent; None where there is no share."""
        if self.reps_met is None or self.reps_prescribed is None:
            return None
        return wilson(self.reps_met, self.reps_prescribed)


def wilson(k: int, n: int, z: float = Z_95) -> Interval | None:
    """Score interval of a proportion of `k` in `n`; None when n = 0.

    (p + z^2/2n -+ z sqrt(p(1-p)/n + z^2/4n^2)) / (1 + z^2/n), p = k/n; unitless, within 0 to 1. It supposes
    that the n are independent, which reps and sessions of one athlete are not. Source: Wilson 1927, J Am Stat
    Assoc 22:209-212; method 3 of Newcombe 1998, Stat Med 17:857-872. Raises ValueError unless 0 <= k <= n.
    """
    if not 0 <= k <= n:
        raise ValueError(f"{k} of {n} is no proportion")
    if n == 0:
        return None
    share, spread = k / n, z * z / n
    middle = share + spread / 2
    half = math.sqrt(spread * (share * (1 - share) + spread / 4))
    low = 0.0 if k == 0 else (middle - half) / (1 + spread)
    high = 1.0 if k == n else (middle + half) / (1 + spread)
    return Interval(low, high)


def reps_by_week(summaries: Iterable[RunSummary], zone: str | None = None) -> tuple[WeekReps, ...]:
    """Reps met and prescribed by ISO week (ISO 8601: from Monday), from the first with a run to the last.

    A run belongs to the week in which it began in its own time zone, or in `zone` where one is named. A run
    that has not ended is due no reps yet, only counted as `not_ended`. Weeks without a session are gaps. Of
    imported runs no reps are known, so that they are left out.
    """
    weeks: defaultdict[date, list[RunSummary]] = defaultdict(list)
    for summary in (each for each in summaries if not each.imported):
        weeks[_monday(local_start(summary, zone).date())].append(summary)
    if not weeks:
        return ()
    first, last = min(weeks), max(weeks)
    mondays = (first + timedelta(weeks=number) for number in range((last - first).days // 7 + 1))
    return tuple(_week(monday, weeks.get(monday, [])) for monday in mondays)


def _monday(day: date) -> date:
    return day - timedelta(days=day.weekday())


def _week(monday: date, runs: list[RunSummary]) -> WeekReps:
    ended = [run for run in runs if run.outcome is not None]
    if not ended:
        return WeekReps(monday, 0, None, None, None, len(runs))
    met = sum(run.reps_met for run in ended)
    return WeekReps(
        monday,
        len(ended),
        met,
        sum(run.reps_prescribed for run in ended),
        sum(run.reps_done for run in ended) - met,
        len(runs) - len(ended),
        sum("reps_met" in run.corrected for run in ended),
    )
