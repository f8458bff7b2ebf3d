"""Errors of tests, their changes and their agreement against worked values, remembered data and libraries."""

import math
from collections.abc import Callable
from datetime import date

import numpy as np
import pandas as pd
import pingouin
import pytest
from hypothesis import given
from hypothesis import strategies as st
from sklearn.datasets import load_linnerud

from app.analysis.measurement import (
    agreement,
    can_show_small_change,
    minimal_detectable_change,
    pair_variation,
    repeatability_sd,
    smallest_worthwhile_change,
    typical_error,
)
from app.analysis.reliability import trusts_of
from app.domain.plan import Side
from app.domain.tried import Tried

# Eight differences between two tries; figures worked from the formulas in Hopkins 2000 (secondary: course
# notes).
DIFFERENCES = [1, -2, 3, 0, -1, 2, -3, 1]

# Peak flow in l/min of 17 people, each measured twice with two meters: Bland and Altman 1986, Lancet
# 327:307-310. The data are typed from memory; the paper's figures are from memory as well.
WRIGHT_1 = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427]
WRIGHT_2 = [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421]
MINI_1 = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451]
MINI_2 = [525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443]


def apart(first: list[int], second: list[int]) -> list[float]:
    """The differences of two tries."""
    return [one - other for one, other in zip(first, second, strict=True)]


def test_typical_error_and_detectable_change_of_eight_differences() -> None:
    error = typical_error(DIFFERENCES)
    assert error is not None
    assert error == pytest.approx(1.436141, abs=5e-7)
    assert minimal_detectable_change(error) == pytest.approx(3.980779, abs=1e-4)
    assert minimal_detectable_change(error) == pytest.approx(1.96 * 2.031010, abs=1e-4)


def test_the_spread_of_the_same_eight_differences() -> None:
    # Worked from the same formulas: 1.96 SD of the differences is the detectable change.
    found = agreement(DIFFERENCES, [0.0] * len(DIFFERENCES), multiple=1.96)
    assert found is not None
    assert found.sd == pytest.approx(2.031010, abs=5e-7)
    assert (found.high - found.low) / 2 == pytest.approx(3.980779, abs=5e-7)


def test_the_smallest_worthwhile_change_is_a_small_effect() -> None:
    # Cohen calls 0.2, 0.5 and 0.8 SD small, medium and large (secondary: course notes on Hopkins 2000).
    assert smallest_worthwhile_change([4.0, 6.0]) == pytest.approx(0.2 * math.sqrt(2))


def test_the_detectable_change_is_2_77_typical_errors() -> None:
    # 1.96 x sqrt 2 = 2.771859; with the exact point of the normal curve it is 2.771808.
    assert minimal_detectable_change(1) == pytest.approx(2.771859, abs=6e-5)


def test_two_peak_flow_meters_agree_as_remembered() -> None:
    found = agreement([float(each) for each in WRIGHT_1], [float(each) for each in MINI_1])
    assert found is not None
    assert found.bias == pytest.approx(-2.1176, abs=5e-5)
    assert found.sd == pytest.approx(38.7651, abs=5e-5)
    assert found.low == pytest.approx(-79.65, abs=5e-3)
    assert found.high == pytest.approx(75.41, abs=5e-3)
    # As the paper prints them, from memory.
    assert (round(found.bias, 1), round(found.sd, 1)) == (-2.1, 38.8)


@pytest.mark.parametrize(
    ("first", "second", "repeatability", "printed", "error"),
    [(WRIGHT_1, WRIGHT_2, 21.6469, 21.6, 15.3612), (MINI_1, MINI_2, 28.1582, 28.2, 20.4158)],
)
def test_each_meter_repeats_as_remembered(
    first: list[int], second: list[int], repeatability: float, printed: float, error: float
) -> None:
    found = repeatability_sd(first, second)
    assert found is not None
    assert found == pytest.approx(repeatability, abs=5e-5)
    assert round(found, 1) == printed
    assert typical_error(apart(first, second)) == pytest.approx(error, abs=5e-5)


@pytest.mark.filterwarnings("ignore:The inplace keyword")  # of pandas, about a call of pingouin's
@pytest.mark.parametrize(
    ("first", "second", "repeatability", "error"),
    [(WRIGHT_1, WRIGHT_2, 21.6469, 15.3612), (MINI_1, MINI_2, 28.1582, 20.4158)],
)
def test_a_record_of_two_tries_each_tells_how_far_its_test_can_be_trusted(
    first: list[int], second: list[int], repeatability: float, error: float
) -> None:
    # The same 17 people as tries at a test; the intraclass correlations of pingouin.
    tries = [
        Tried(bytes([whose]), "single_hop", Side.LEFT, date(2026, 11, 2), attempt, float(value), "cm")
        for whose, pair in enumerate(zip(first, second, strict=True))
        for attempt, value in enumerate(pair, 1)
    ]
    found = trusts_of(tries)["single_hop"]
    assert (found.pairs, found.athletes) == (17, 17)
    assert found.error == pytest.approx(error, abs=5e-5)
    assert found.repeatability == pytest.approx(repeatability, abs=5e-5)
    assert found.detectable == pytest.approx(1.959964 * math.sqrt(2) * error, abs=2e-4)
    assert found.agreement == agreement([float(each) for each in first], [float(each) for each in second])
    # The mean of two tries holds half of the variance of one's error (the variance of a mean, any textbook).
    between = np.mean([first, second], axis=0).var(ddof=1)
    assert found.worthwhile == pytest.approx(0.2 * math.sqrt(between - error**2 / 2), abs=1e-4)
    assert found.shows_small is (0.2 * math.sqrt(between - error**2 / 2) >= error)
    assert found.icc is not None
    long = [
        (who, place, value)
        for place, column in enumerate((first, second))
        for who, value in enumerate(column)
    ]
    frame = pd.DataFrame(long, columns=["whose", "try", "value"])
    expected = pingouin.intraclass_corr(frame, targets="whose", raters="try", ratings="value")["ICC"]
    one = (found.icc.one_way, found.icc.agreement, found.icc.consistency)
    assert one == pytest.approx(tuple(expected[:3]), abs=1e-9)


def test_the_smallest_worthwhile_change_of_twenty_men() -> None:
    # Data set `linnerud` of scikit-learn: SD of chin-ups 5.2863, of sit-ups 62.5666, of jumps 51.2775.
    columns = load_linnerud().data.T.tolist()
    for values, sd in zip(columns, (5.2863, 62.5666, 51.2775), strict=True):
        assert smallest_worthwhile_change(values) == pytest.approx(0.2 * sd, abs=2e-5)


def test_the_spread_between_athletes_is_freed_of_the_error() -> None:
    # True SD = sqrt(SD^2 - error^2) (Hopkins 2002, as an idea seen in a list message): SD 5, error 3 gives 4.
    values = [0.0, 10.0]
    sd = math.sqrt(50)
    assert smallest_worthwhile_change(values, math.sqrt(50 - 16)) == pytest.approx(0.2 * 4)
    assert smallest_worthwhile_change(values, sd + 1) == 0


def test_a_test_with_more_error_than_the_smallest_change_cannot_show_it() -> None:
    # Hopkins 2000 (secondary: course notes).
    assert can_show_small_change(0.9, 1.0) is False
    assert can_show_small_change(1.1, 1.0) is True
    assert can_show_small_change(1.0, 1.0) is True, "only below the error it cannot"
    assert can_show_small_change(None, 1.0) is None


@given(st.lists(st.tuples(st.floats(1, 1e3), st.floats(1, 1e3)), min_size=2, max_size=30))
def test_errors_are_those_worked_with_numpy(pairs: list[tuple[float, float]]) -> None:
    first, second = np.array(pairs).T
    differences = first - second
    assert typical_error(differences.tolist()) == pytest.approx(
        differences.std(ddof=1) / np.sqrt(2), abs=1e-9
    )
    found = agreement(first.tolist(), second.tolist())
    assert found is not None
    assert found.bias == pytest.approx(differences.mean(), abs=1e-9)
    assert found.sd == pytest.approx(differences.std(ddof=1), abs=1e-9)
    variation = pair_variation(list(zip(first.tolist(), second.tolist(), strict=True)))
    within = differences.std(ddof=1) / math.sqrt(2)
    assert variation == pytest.approx(100 * within / np.concatenate([first, second]).mean(), abs=1e-9)


def test_a_variation_in_percent_is_of_the_mean_and_wants_two_pairs() -> None:
    # CV % = 100 SD / mean (Hopkins 2000; secondary: course notes). Differences of 1 and -1: an error of 1.
    assert pair_variation([(9.0, 10.0), (11.0, 10.0)]) == pytest.approx(100 * 1 / 10)
    assert pair_variation([(10.0, 11.0)]) is None
    assert pair_variation([(-1.0, 1.0), (1.0, -1.0)]) is None
    assert pair_variation([]) is None


@pytest.mark.parametrize("compare", [agreement, repeatability_sd])
def test_tries_are_compared_two_by_two(compare: Callable[[list[float], list[float]], object]) -> None:
    # By the definition of a pair.
    with pytest.raises(ValueError, match="argument 2 is shorter"):
        compare([1.0, 2.0, 3.0], [1.0, 2.0])
