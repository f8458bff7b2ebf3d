"""What lately and what usually: exponentially weighted and plain means of daily load, side by side.

They stand in their own unit and are never divided by one another: as a measure of risk their ratio was
refuted (Impellizzeri et al. 2020, J Athl Train 55:893-901).
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import fmean

from app.analysis.load_weeks import DayLoad

ACUTE_DAYS, CHRONIC_DAYS = 7, 28


@dataclass(frozen=True, slots=True)
class CoursePoint:
    """Lately (`acute`, 7 days) and usually (`chronic`, 28 days), in the unit of the loads, on one day.

    Both are None on a day that is unknown and from there on, until they begin anew; `days` counts the known
    days that they rest on. `mean_acute` and `mean_chronic` are plain means of the last 7 and 28 days, None
    where one of these is unknown.
    """

    day: date
    acute: float | None
    chronic: float | None
    days: int
    mean_acute: float | None = None
    mean_chronic: float | None = None


def weight(days: int) -> float:
    """Lambda of an exponentially weighted mean over N days, no unit: 2 / (N + 1).

    Source: Williams et al. 2017, Br J Sports Med 51:209-210. Raises ValueError for fewer than one day.
    """
    if days < 1:
        raise ValueError("A mean is over one day at least.")
    return 2 / (days + 1)


def rolling_mean(loads: Sequence[float], days: int) -> float | None:
    """Plain mean of the last days of daily loads, in their unit; None where there are fewer days than that.

    Common practice, no source. Raises ValueError for fewer than one day.
    """
    if days < 1:
        raise ValueError("A mean is over one day at least.")
    return fmean(loads[-days:]) if len(loads) >= days else None


def load_course(days: Iterable[DayLoad]) -> tuple[CoursePoint, ...]:
    """Acute and chronic by day, seeded with the first known day and anew after each unknown one.

    today = load x lambda + (1 - lambda) x yesterday, with the first day's load for a beginning. Source:
    Williams et al. 2017, Br J Sports Med 51:209-210; the beginning is a choice.
    """
    fast, slow = weight(ACUTE_DAYS), weight(CHRONIC_DAYS)
    points: list[CoursePoint] = []
    acute = chronic = None
    known: list[float] = []
    for each in days:
        if each.load is None:
            acute, chronic, known = None, None, []
        else:
            acute = each.load if acute is None else each.load * fast + acute * (1 - fast)
            chronic = each.load if chronic is None else each.load * slow + chronic * (1 - slow)
            known.append(each.load)
        plain = (rolling_mean(known, length) for length in (ACUTE_DAYS, CHRONIC_DAYS))
        points.append(CoursePoint(each.day, acute, chronic, len(known), *plain))
    return tuple(points)
