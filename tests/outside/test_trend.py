"""Slopes and rank tests against an example worked by hand, real data sets and reference libraries."""

import math
from collections.abc import Callable, Sequence

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.stats import kendalltau, norm, siegelslopes, theilslopes
from sklearn.datasets import load_linnerud
from statsmodels.datasets import nile

from app.analysis.trend import mann_kendall, repeated_medians, theil_sen, trend

# Worked by hand with every sign shown by J. Little, College of the Holy Cross (MannKendallByHand.txt): 72 up,
# 18 down, one tie: S = 54, Z = 2.9058.
BY_HAND = [12.9, 14.8, 13.2, 15.7, 13.8, 15.6, 12.9, 11.0, 17.3, 15.9, 19.0, 18.3, 20.1, 21.7]

Line = Callable[[Sequence[float], Sequence[float]], object]
SHORT = st.lists(st.integers(-20, 20), min_size=2, max_size=25)


def test_the_example_worked_by_hand() -> None:
    found = mann_kendall(BY_HAND)
    assert found.s == 72 - 18 == 54
    assert found.variance == pytest.approx(14 * 13 * 33 / 18 - 2 * 1 * 9 / 18)
    assert found.variance == pytest.approx(332.6667, abs=5e-5)
    assert found.z == pytest.approx(2.9058, abs=5e-5)
    assert found.p / 2 == pytest.approx(0.0018, abs=5e-5)


def test_the_slope_of_the_example() -> None:
    # Worked from the definitions and confirmed with scipy: times 0 to 13.
    found, test = theil_sen(range(14), BY_HAND), mann_kendall(BY_HAND)
    assert found.slope == pytest.approx(0.566667, abs=5e-7)
    assert found.intercept == pytest.approx(11.966667, abs=5e-7)
    assert found.low == pytest.approx(0.325, abs=5e-7)
    assert found.high == pytest.approx(0.866667, abs=5e-7)
    assert test.p == pytest.approx(0.003663, abs=5e-7)
    assert test.tau_a == pytest.approx(0.593407, abs=5e-7)
    assert test.tau_b == pytest.approx(0.596694, abs=5e-7)


def test_the_variance_is_not_the_misprinted_one() -> None:
    # One R help page prints n(n-1)(n+5)/18, which gives 192.1; the right one without ties is n(n-1)(2n+5)/18.
    assert mann_kendall(BY_HAND).variance > 14 * 13 * (14 + 5) / 18 + 100
    assert mann_kendall(range(14)).variance == pytest.approx(14 * 13 * 33 / 18)


def test_a_course_turned_over_has_the_trend_turned_over_and_none_has_nought() -> None:
    # Z = (S - 1) / sd, 0 or (S + 1) / sd: the textbook form (Gilbert 1987, from memory).
    up, down, level = mann_kendall(BY_HAND), mann_kendall(BY_HAND[::-1]), mann_kendall([5.0] * 9)
    assert (down.s, down.z, down.tau_a, down.p) == (-up.s, -up.z, -up.tau_a, up.p)
    assert down.z == pytest.approx((down.s + 1) / down.variance**0.5)
    assert (level.s, level.z, level.p, level.tau_b) == (0, 0, 1, None)
    there_and_back = mann_kendall([1, 2, 2, 1])
    assert (there_and_back.s, there_and_back.z, there_and_back.p) == (0, 0, 1)
    assert there_and_back.variance == pytest.approx((4 * 3 * 13 - 2 * (2 * 1 * 9)) / 18)


@pytest.mark.parametrize("line", [theil_sen, repeated_medians])
def test_a_line_is_of_as_many_values_as_times(line: Line) -> None:
    # By the definition of a pair.
    with pytest.raises(ValueError, match="two times"):
        line([1, 2, 3], [1, 2])
    with pytest.raises(ValueError, match="two times"):
        line([2, 2], [1, 2])


def test_the_repeated_medians_of_the_example() -> None:
    # Worked from the definition of Siegel 1982 and confirmed with scipy: times 0 to 13.
    slope, intercept = repeated_medians(range(14), BY_HAND)
    assert slope == pytest.approx(0.54)
    assert intercept == pytest.approx(12.9)


@given(st.data(), SHORT)
def test_repeated_medians_are_those_of_scipy(data: st.DataObject, values: list[int]) -> None:
    steps = data.draw(st.lists(st.integers(1, 9), min_size=len(values), max_size=len(values)))
    times = [float(sum(steps[: place + 1])) for place in range(len(values))]
    expected = siegelslopes([float(value) for value in values], times)
    slope, intercept = repeated_medians(times, [float(value) for value in values])
    assert slope == pytest.approx(expected.slope, abs=1e-9)
    assert intercept == pytest.approx(expected.intercept, abs=1e-9)


def test_times_from_nought_or_from_one_change_the_intercept_only() -> None:
    from_nought, from_one = theil_sen(range(14), BY_HAND), theil_sen(range(1, 15), BY_HAND)
    assert from_one.slope == from_nought.slope
    assert from_one.intercept == pytest.approx(from_nought.intercept - from_nought.slope)


def test_a_century_of_the_nile() -> None:
    # Data set `nile` of statsmodels; figures worked with scipy.
    volumes = nile.load_pandas().data["volume"].tolist()
    test, found = mann_kendall(volumes), theil_sen(range(100), volumes)
    assert test.s == -1387
    assert test.variance == pytest.approx(112728.3333, abs=5e-5)
    assert test.z == pytest.approx(-4.128067, abs=5e-7)
    assert found.slope == pytest.approx(-2.6)
    assert found.low == pytest.approx(-3.6279, abs=5e-5)
    assert found.high == pytest.approx(-1.4286, abs=5e-5)


def test_twenty_men_on_the_bar() -> None:
    # Data set `linnerud` of scikit-learn: sit-ups against chin-ups; figures worked with scipy.
    chins, situps, _ = load_linnerud().data.T.tolist()
    found = theil_sen(chins, situps)
    assert found.slope == pytest.approx(8.75)
    assert found.intercept == pytest.approx(21.875)
    assert found.low == pytest.approx(3.8)
    assert found.high == pytest.approx(12.5625)


@given(st.data(), SHORT)
def test_slopes_are_those_of_scipy(data: st.DataObject, values: list[int]) -> None:
    # scipy.stats.theilslopes, Sen's interval with ties, method "separate".
    size = len(values)
    times = data.draw(st.lists(st.integers(0, 30), min_size=size, max_size=size))
    assume(len(set(times)) > 1)
    found, expected = theil_sen(times, values), theilslopes(values, times, alpha=0.95)
    assert found.slope == pytest.approx(expected.slope, abs=1e-12)
    assert found.intercept == pytest.approx(expected.intercept, abs=1e-9)
    assert found.low == pytest.approx(expected.low_slope, abs=1e-12)
    assert found.high == pytest.approx(expected.high_slope, abs=1e-12)


@given(SHORT)
def test_tau_b_is_that_of_scipy(values: list[int]) -> None:
    # scipy.stats.kendalltau against time: tau-b, nan where all values are the same.
    found, expected = mann_kendall(values).tau_b, kendalltau(range(len(values)), values).statistic
    assert found is None if math.isnan(expected) else found == pytest.approx(expected, abs=1e-12)


@given(SHORT)
def test_p_is_the_normal_curve_of_z(values: list[int]) -> None:
    # scipy.stats.norm: two tails beyond z.
    found = mann_kendall(values)
    assert found.p == pytest.approx(2 * norm.sf(abs(found.z)), rel=1e-9)


@pytest.mark.parametrize(("count", "said"), [(7, False), (8, True)])
def test_under_eight_points_nothing_is_said(count: int, *, said: bool) -> None:
    # The exact table is wanted for 10 and fewer (Gilbert 1987); eight as the least is a choice.
    found = trend(range(count), BY_HAND[:count])
    assert (found.slope is not None) is said
    assert (found.test is not None) is said
    assert (found.reason is None) is said
