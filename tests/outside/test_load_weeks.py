"""Weeks of load, monotony, strain and weighted means against hand-worked weeks and a reference library."""

import math
from datetime import date, timedelta

import numpy as np
import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.load_course import ACUTE_DAYS, CHRONIC_DAYS, load_course, weight
from app.analysis.load_weeks import DayLoad, loads_by_day, loads_by_week, monotony, spread, strain, week_load
from tests.reviewed import record, session

# Worked by hand from the formula of Foster 1998, Med Sci Sports Exerc 30:1164-1168 ("daily mean/standard
# deviation", "load * monotony"); its abstract does not say which SD, so that both are worked out. These are
# no published weeks. Days, total, mean, SD n-1, SD n, monotony n-1, monotony n, strain n-1, strain n.
WEEKS = [
    ([420, 0, 300, 560, 0, 420, 0], 1700, 242.8571, 239.2846, 221.5345, 1.0149, 1.0962, 1725.38, 1863.62),
    ([400, 200, 600, 0, 300, 500, 0], 2000, 285.7143, 234.0126, 216.6536, 1.2209, 1.3188, 2441.87, 2637.52),
    ([350] * 6 + [0], 2100, 300, 132.2876, 122.4745, 2.2678, 2.4495, 4762.35, 5143.93),
    ([600] + [0] * 6, 600, 85.7143, 226.7787, 209.9563, 0.3780, 0.4082, 226.78, 244.95),
]
Week = tuple[list[float], float, float, float, float, float, float, float, float]


@pytest.mark.parametrize("week", WEEKS)
def test_a_week_by_hand_gives_its_total_monotony_and_strain(week: Week) -> None:
    days, total, mean, sd_sample, sd_all, mono_sample, mono_all, strain_sample, strain_all = week
    found = week_load(date(2026, 11, 16), days)
    assert found.total == total
    assert found.total / 7 == pytest.approx(mean, abs=5e-5)
    assert found.monotony == pytest.approx(mono_sample, abs=5e-5)
    assert found.strain == pytest.approx(strain_sample, abs=5e-3)
    assert found.reason is None
    assert spread(days) == pytest.approx(sd_sample, abs=5e-5)
    assert spread(days, of_sample=False) == pytest.approx(sd_all, abs=5e-5)
    assert monotony(days, of_sample=False) == pytest.approx(mono_all, abs=5e-5)
    assert strain(days, of_sample=False) == pytest.approx(strain_all, abs=5e-3)


@pytest.mark.parametrize("week", WEEKS)
def test_the_two_deviations_differ_by_the_root_of_seven_sixths(week: Week) -> None:
    # Arithmetic: sqrt(n / (n - 1)) for n = 7 is 1.080123.
    of_all, of_sample = monotony(week[0], of_sample=False), monotony(week[0])
    assert of_all is not None
    assert of_sample is not None
    assert of_all / of_sample == pytest.approx(1.080123, abs=1e-6)


def test_six_equal_days_and_a_rest_give_exactly_six_over_root_seven() -> None:
    # An identity of the formula, worked by hand: 6 / sqrt 7 = 2.26779, with n instead sqrt 6 = 2.44949.
    assert monotony([350.0] * 6 + [0]) == pytest.approx(6 / math.sqrt(7), abs=1e-12)
    assert monotony([350.0] * 6 + [0], of_sample=False) == pytest.approx(math.sqrt(6), abs=1e-12)


def test_one_day_of_seven_gives_exactly_one_over_root_seven() -> None:
    # An identity of the formula, worked by hand: 1 / sqrt 7, with n instead 1 / sqrt 6; the strain is the SD.
    assert monotony([600.0] + [0.0] * 6) == pytest.approx(1 / math.sqrt(7), abs=1e-12)
    assert monotony([600.0] + [0.0] * 6, of_sample=False) == pytest.approx(1 / math.sqrt(6), abs=1e-12)
    assert strain([600.0] + [0.0] * 6) == pytest.approx(spread([600.0] + [0.0] * 6), abs=1e-9)


@given(st.lists(st.integers(0, 900), min_size=7, max_size=7), st.floats(0.01, 100))
def test_monotony_does_not_depend_on_the_unit_and_strain_grows_with_it(days: list[int], scale: float) -> None:
    # An identity of the formula.
    alike = monotony(days)
    scaled = [day * scale for day in days]
    if alike is not None:
        assert monotony(scaled) == pytest.approx(alike, rel=1e-9)
        assert strain(scaled) == pytest.approx(scale * sum(days) * alike, rel=1e-9)


def test_a_day_unknown_is_no_day_of_rest() -> None:
    # Common practice, no source: of an unknown day neither monotony nor strain, of a rest both.
    days = [420.0, 0, 300, 560, 0, 420]
    assert week_load(date(2026, 11, 16), [*days, 0]).monotony == pytest.approx(1.0149, abs=5e-5)
    found = week_load(date(2026, 11, 16), [*days, None])
    assert (found.total, found.monotony, found.strain) == (None, None, None)
    assert found.reason == "A day of this week is unknown."


def test_rest_is_known_from_the_first_day_of_the_record_to_yesterday() -> None:
    # Common practice, no source: a day without a session is rest only where the record would know of one.
    tuesday = date(2026, 11, 17)
    days = loads_by_day(record(sessions=(), since=tuesday, today=date(2026, 11, 20)))
    assert [each.load for each in days] == [None, 0, 0, 0, None, None, None]


@pytest.mark.parametrize("load", [300.0, 0.1])
def test_days_that_are_all_alike_have_no_monotony_and_say_so(load: float) -> None:
    # The formula divides by an SD of nought: neither infinity nor nought.
    found = week_load(date(2026, 11, 16), [load] * 7)
    assert (found.monotony, found.strain) == (None, None)
    assert found.reason == "Every day was the same, so that the spread is nought."


def test_a_week_of_rest_has_no_monotony_either() -> None:
    # 0 / 0 by the formula.
    found = week_load(date(2026, 11, 16), [0.0] * 7)
    assert (found.total, found.monotony, found.strain) == (0, None, None)
    assert found.reason == "There was no load in this week."


# One athlete's own weeks as published on athleticpopulation.blogspot.com (2010): total, monotony as printed,
# strain as printed. Printed strain differs from total x printed monotony, which only an unrounded one
# explains.
PRINTED = [
    (1592, 1.63, 2595),
    (1298, 1.79, 2324),
    (555, 0.55, 307),
    (1307, 0.9, 1173),
    (1390, 1.07, 1494),
]


def test_strain_is_of_the_unrounded_monotony() -> None:
    assert sum(round(total * printed) != strained for total, printed, strained in PRINTED) == 4
    for total, printed, strained in PRINTED:
        assert round(strained / total, 2) == pytest.approx(printed, abs=0.011)
    days = WEEKS[0][0]
    alike = monotony(days)
    assert alike is not None
    assert strain(days) == pytest.approx(1700 * alike, abs=1e-9)
    assert strain(days) != pytest.approx(1700 * round(alike, 2), abs=1)


@given(
    st.lists(st.floats(0, 2_000, allow_subnormal=False), min_size=2, max_size=14).filter(
        lambda days: max(days) - min(days) > 1e-3
    )
)
def test_monotony_and_strain_are_those_worked_with_numpy(days: list[float]) -> None:
    # numpy: mean and standard deviation with ddof = 1 and 0.
    for of_sample in (True, False):
        expected = np.mean(days) / np.std(days, ddof=int(of_sample))
        assert monotony(days, of_sample=of_sample) == pytest.approx(expected, rel=1e-9)
        assert strain(days, of_sample=of_sample) == pytest.approx(np.sum(days) * expected, rel=1e-9)


def days_of(loads: list[float]) -> list[DayLoad]:
    """Known days in a row."""
    return [DayLoad(date(2026, 10, 1) + timedelta(days=number), load) for number, load in enumerate(loads)]


def test_weights_are_two_over_n_and_one() -> None:
    # Williams et al. 2017, Br J Sports Med 51:209-210: lambda = 2 / (N + 1), 0.25 and 0.0689655.
    assert weight(7) == 0.25
    assert weight(28) == pytest.approx(0.0689655, abs=5e-8)


def test_the_course_is_that_of_the_closed_form() -> None:
    # Closed form of the recursion, worked by hand: 21 days of 300 and then 7 of 600, beginning at 300.
    last = load_course(days_of([300.0] * 21 + [600.0] * 7))[-1]
    assert last.acute == pytest.approx(559.954834, abs=5e-7)
    assert last.chronic == pytest.approx(418.079509, abs=5e-7)
    assert last.acute == pytest.approx(600 - 300 * 0.75**7, rel=1e-12)
    assert last.chronic == pytest.approx(600 - 300 * (27 / 29) ** 7, rel=1e-12)
    assert last.acute is not None
    assert last.chronic is not None
    assert last.acute / last.chronic == pytest.approx(1.339350, abs=5e-7)
    assert last.days == 28


@given(st.lists(st.floats(0, 3_000), min_size=1, max_size=60))
def test_the_course_is_the_recursion_of_pandas_and_not_its_default(loads: list[float]) -> None:
    # pandas: ewm(span=N, adjust=False) is the recursion; the default adjust=True is another mean.
    last = load_course(days_of(loads))[-1]
    series = pd.Series(loads)
    for found, span in ((last.acute, ACUTE_DAYS), (last.chronic, CHRONIC_DAYS)):
        expected = float(series.ewm(span=span, adjust=False).mean().iloc[-1])
        assert found == pytest.approx(expected, rel=1e-9, abs=1e-9)


def test_the_default_of_pandas_would_be_another_course() -> None:
    loads = [300.0] * 21 + [600.0] * 7
    adjusted = float(pd.Series(loads).ewm(span=28).mean().iloc[-1])
    assert load_course(days_of(loads))[-1].chronic != pytest.approx(adjusted, rel=0.01)


def test_of_two_months_with_the_same_weeks_the_later_load_weighs_more() -> None:
    # Williams et al. 2017: with the same weekly sums, load that comes later gives the greater acute mean.
    early, late = [10.0, 0, 0, 0, 0, 0, 0], [0.0, 0, 0, 0, 0, 0, 10]
    means = [load_course(days_of([1.0] * 21 + week))[-1].acute for week in (early, late)]
    assert means[0] is not None
    assert means[1] is not None
    assert means[0] < means[1]


@given(st.dates(date(2020, 1, 1), date(2035, 1, 1)), st.lists(st.integers(0, 900), min_size=14, max_size=60))
def test_weeks_are_summed_as_pandas_sums_them(first: date, loads: list[int]) -> None:
    # pandas: resample by weeks that end on a Sunday; those with fewer than seven days are incomplete here.
    days = [first + timedelta(days=number) for number in range(len(loads))]
    runs = tuple(session(day, rpe=1, minutes=float(load)) for day, load in zip(days, loads, strict=True))
    looked = record(
        first=first, last=days[-1], today=days[-1] + timedelta(days=1), since=first, sessions=runs
    )
    weeks = pd.Series(loads, index=pd.DatetimeIndex(days)).resample("W-SUN")
    expected = zip(weeks.sum(), weeks.count(), weeks.std(), strict=True)
    for found, (total, count, spread_of_week) in zip(loads_by_week(looked), expected, strict=True):
        assert (found.known, found.days_known) == (total, count)
        assert found.total == (total if count == 7 else None)
        if count == 7 and spread_of_week > 0:
            assert found.monotony == pytest.approx(total / 7 / spread_of_week, rel=1e-9)
        else:
            assert found.monotony is None
