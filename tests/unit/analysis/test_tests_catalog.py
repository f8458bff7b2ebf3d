"""The catalogue of tests is sound, and of a day's tries what counts is what the test says."""

from datetime import timedelta

import pytest

from app.analysis.tests_catalog import (
    CATALOGUE,
    Counts,
    DayValue,
    FieldTest,
    More,
    counting,
    day_values,
    field_test,
    own_detectable_change,
    own_error,
    own_worthwhile_change,
)
from app.domain.keeping import Result
from app.domain.plan import Side
from tests.reviewed import MONDAY, result

HOP = CATALOGUE[0]


@pytest.mark.parametrize("test", CATALOGUE, ids=lambda test: test.key)
def test_every_test_can_be_entered_and_found(test: FieldTest) -> None:
    assert field_test(test.key) is test
    assert test.name
    assert test.unit
    assert test.tries >= (5 if test.counts is Counts.MEAN_OF_BEST_FIVE else 1)
    assert test.least < test.most
    assert test.counts is not Counts.BEST or test.more_is_better is not None


def test_keys_and_names_are_of_one_test_each() -> None:
    assert len({test.key for test in CATALOGUE}) == len(CATALOGUE)
    assert len({test.name for test in CATALOGUE}) == len(CATALOGUE)
    assert field_test("no such test") is None


@pytest.mark.parametrize(
    ("counts", "more", "expected"),
    [
        (Counts.BEST, More.BETTER, 9.0),
        (Counts.BEST, More.WORSE, 1.0),
        (Counts.BEST, More.NEITHER, 2.0),
        (Counts.MEAN, More.BETTER, 25 / 6),
        (Counts.LAST, More.BETTER, 2.0),
        (Counts.MEAN_OF_BEST_FIVE, More.BETTER, 4.8),
    ],
)
def test_what_counts_of_several_tries(counts: Counts, more: More, expected: float) -> None:
    assert counting([4, 9, 1, 6, 3, 2], counts, more) == pytest.approx(expected)


def test_the_best_five_need_five_tries() -> None:
    assert counting([1, 2, 3, 4], Counts.MEAN_OF_BEST_FIVE, More.BETTER) is None
    assert counting([], Counts.BEST, More.BETTER) is None


def test_a_day_s_tries_are_one_value_by_side() -> None:
    later = MONDAY + timedelta(days=7)
    results = [
        result(120, attempt=1),
        result(131, attempt=2),
        result(150, side=Side.RIGHT),
        result(140, day=later),
        result(999, unit="in"),
        result(999, test="triple_hop"),
    ]
    assert day_values(results, HOP, Side.LEFT) == (DayValue(MONDAY, 131, 2), DayValue(later, 140, 1))
    assert day_values(results, HOP, Side.RIGHT) == (DayValue(MONDAY, 150, 1),)
    assert day_values(results, HOP, Side.BOTH) == ()


def pairs(differences: list[int]) -> list[Result]:
    """Two tries a week apart by these differences."""
    days = [MONDAY + timedelta(days=7 * number) for number in range(len(differences))]
    tries = zip(days, differences, strict=True)
    return [
        result(100 + more, day=day, attempt=1 + bool(more)) for day, apart in tries for more in (0, apart)
    ]


def test_the_error_of_a_test_is_that_of_the_own_tries() -> None:
    # Their mean is 0 and their squares sum to 38: SD = sqrt(38 / 9), typical error SD / sqrt 2.
    differences = [1, -2, 3, -1, 2, -3, 1, -1, 2, -2]
    error = (38 / 9) ** 0.5 / 2**0.5
    assert own_error(pairs(differences), HOP) == pytest.approx(error)
    assert own_detectable_change(pairs(differences), HOP) == pytest.approx(1.959964 * 2**0.5 * error)


def test_too_few_pairs_are_no_error() -> None:
    assert own_error(pairs([1, -2, 3, -1, 2, -3, 1, -1, 2]), HOP) is None
    assert own_detectable_change([], HOP) is None


def test_tries_of_two_athletes_are_no_pair() -> None:
    results = [result(100, athlete=name, attempt=1) for name in ("Hugo", "Esra")] * 10
    assert own_error(results[:2], HOP) is None


def test_the_smallest_worthwhile_change_is_of_each_athlete_s_last_day() -> None:
    # Values 1 to 10 with 5 more on the right: means 3.5 to 12.5, whose SD (n - 1) is sqrt(82.5 / 9).
    early = [result(500, athlete=str(number), day=MONDAY - timedelta(days=7)) for number in range(10)]
    late = [
        result(number + more, athlete=str(number), side=side)
        for number in range(1, 11)
        for side, more in ((Side.LEFT, 0), (Side.RIGHT, 5))
    ]
    assert own_worthwhile_change([*early[1:], *late], HOP) == pytest.approx(0.2 * (82.5 / 9) ** 0.5)
    assert own_worthwhile_change(late[:18], HOP) is None
