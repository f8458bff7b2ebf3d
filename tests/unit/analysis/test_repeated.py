"""Pairs are the first two tries of a day, and the error they tell is that of the differences between them."""

from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.repeated import detectable_changes, pairs_by_test
from app.domain.plan import Side
from app.domain.tried import Tried

DAY = date(2026, 11, 2)


def tried(value: float, attempt: int = 1, **other: object) -> Tried:
    given_ = {"whose": b"1", "test": "single_hop", "side": Side.LEFT, "day": DAY, "unit": "cm"} | other
    return Tried(attempt=attempt, value=value, **given_)  # type: ignore[arg-type]


def test_the_first_two_tries_of_a_day_and_side_are_a_pair() -> None:
    tries = [
        tried(140),
        tried(150, whose=b"2"),
        tried(142, 2),
        tried(139, 3),
        tried(130, side=Side.RIGHT),
        tried(131, 2, side=Side.RIGHT),
        tried(151, day=DAY + timedelta(days=1)),
    ]
    assert pairs_by_test(tries) == {"single_hop": ((140, 142), (130, 131))}


def test_another_unit_and_tests_of_which_nothing_is_known_are_left_out() -> None:
    tries = [
        tried(1.4, unit="m"),
        tried(1.5, 2, unit="m"),
        tried(3, test="unheard"),
        tried(4, 2, test="unheard"),
    ]
    assert pairs_by_test(tries) == {}


@given(st.lists(st.tuples(st.integers(50, 300), st.integers(50, 300)), min_size=10, max_size=40))
def test_the_change_that_can_be_detected_is_that_worked_with_numpy(pairs: list[tuple[int, int]]) -> None:
    tries = [
        tried(value, attempt, day=DAY + timedelta(days=place))
        for place, pair in enumerate(pairs)
        for attempt, value in enumerate(pair, 1)
    ]
    differences = [second - first for first, second in pairs]
    # Hopkins 2000 (secondary: course notes): 1.96 x sqrt 2 x SD of the differences / sqrt 2.
    expected = 1.959964 * float(np.std(differences, ddof=1))
    assert detectable_changes(tries)["single_hop"] == pytest.approx(expected, rel=1e-6)


def test_under_ten_pairs_the_error_is_unknown() -> None:
    tries = [
        tried(140 + attempt, attempt, day=DAY + timedelta(days=place))
        for place in range(9)
        for attempt in (1, 2)
    ]
    assert detectable_changes(tries) == {}
