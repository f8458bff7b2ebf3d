"""What lately and what usually: two exponentially weighted courses of daily load, side by side.

They are two lines in their own unit and never divided by one another: as a measure of risk their ratio
was refuted (Impellizzeri et al. 2020, J Athl Train 55:893-901).
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from app.analysis.load_weeks import DayLoad

ACUTE_DAYS, CHRONIC_DAYS = 7, 28


@dataclass(frozen=True, slots=True)
class CoursePoint:
    """Lately (`acute`, 7 days) and usually (`chronic`, 28 days), in the unit of the loads, on one day.

    Both are None on a day that is unknown and from there on, until they begin anew; `days` counts the known
    days that they rest on.
    """

    day: date
    acute: float | None
    chronic: float | None
    days: int


def weight(days: int) -> float:
    """Lambda of an exponentially weighted mean over N days, no unit: 2 / (N + 1).

    Source: Williams et al. 2017, Br J Sports Med 51:209-210. Raises ValueError for fewer than one day.
    """
    if days < 1:
        raise ValueError("A mean is over one day at least.")
    return 2 / (days + 1)


def weighted_mean(loads: Sequence[float], days: int) -> float | None:
    """Exponentially weighted mean at the end of daily loads, in their unit; None of none.

    today = load x lambda + (1 - lambda) x yesterday, with the first day's load for a beginning. Source:
    Williams et al. 2017, Br J Sports Med 51:209-210; the beginning is a choice.
    """
    if not loads:
        return None
    share, mean = weight(days), loads[0]
    for load in loads[1:]:
        mean = load * share + mean * (1 - share)
    return mean


def load_course(days: Iterable[DayLoad]) -> tuple[CoursePoint, ...]:
    """Acute and chronic by day, seeded with the first known day and anew after each unknown one."""
    fast, slow = weight(ACUTE_DAYS), weight(CHRONIC_DAYS)
    points: list[CoursePoint] = []
    acute = chronic = None
    count = 0
    for each in days:
        if each.load is None:
            acute, chronic, count = None, None, 0
        else:
            acute = each.load if acute is None else each.load * fast + acute * (1 - fast)
            chronic = each.load if chronic is None else each.load * slow + chronic * (1 - slow)
            count += 1
        points.append(CoursePoint(each.day, acute, chronic, count))
    return tuple(points)
