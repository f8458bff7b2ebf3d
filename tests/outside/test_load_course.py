"""Plain means of 7 and 28 days: the numerators and denominators of worked rows, divided nowhere but here."""

from datetime import date, timedelta

import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.load_course import ACUTE_DAYS, CHRONIC_DAYS, load_course, rolling_mean, weight
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


def test_a_mean_of_one_day_is_that_day() -> None:
    # By the formulas: lambda = 2 / (1 + 1) leaves nothing of yesterday.
    assert weight(1) == 1
    assert rolling_mean([300.0, 500.0], 1) == 500
    assert rolling_mean([], 1) is None


def test_all_load_in_the_last_week_is_four_times_the_mean_and_nothing_lies_before() -> None:
    loads = weeks(0, 0, 0, 700)
    acute, chronic = both(loads)
    assert (acute, chronic) == (100, 25)
    assert acute / chronic == 4, "the most that there can be"
    assert rolling_mean(loads[:21], 21) == 0, "over which nothing is divided"


def test_weeks_of_6_6_6_and_10_give_the_published_ratio_whatever_their_days() -> None:
    # Williams et al. 2017, Br J Sports Med 51:209-210: 1.43 for three fictitious athletes, whose days are not
    # at hand; weeks of 6, 6, 6 and 10 are consistent with it (10 / 7).
    for last_week in ([10.0, 0, 0, 0, 0, 0, 0], [0.0, 0, 0, 0, 0, 0, 10], [10 / 7] * 7):
        acute, chronic = both([*weeks(6, 6, 6), *last_week])
        assert acute / chronic == pytest.approx(10 / 7, rel=1e-12)
        assert round(acute / chronic, 2) == 1.43


@given(st.lists(st.floats(0, 3_000), min_size=1, max_size=70))
def test_the_plain_means_of_each_day_are_those_of_pandas(loads: list[float]) -> None:
    # pandas: rolling(N).mean(), which is unknown before N days.
    days = [DayLoad(date(2026, 10, 1) + timedelta(days=number), load) for number, load in enumerate(loads)]
    found = pd.DataFrame([(point.mean_acute, point.mean_chronic) for point in load_course(days)], dtype=float)
    series = pd.Series(loads)
    for column, span in enumerate((ACUTE_DAYS, CHRONIC_DAYS)):
        expected = series.rolling(span).mean()
        pd.testing.assert_series_equal(found[column], expected, check_names=False, rtol=1e-9, atol=1e-6)
