"""Sheets of a standing profile: they cover the bout, turn at reps, and show what comes."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.views.widgets.sheets import EDGE, FULL, HALF, sheet_of, sheet_starts

REPS = st.lists(st.integers(100, 60_000), min_size=1, max_size=40)


@given(REPS, st.floats(5_000, 60_000))
def test_sheets_rise_and_every_moment_stands_before_the_right_edge(lengths: list[int], whole: float) -> None:
    reps = [sum(lengths[:index]) for index in range(len(lengths))]
    starts = sheet_starts(reps, sum(lengths), whole)
    assert starts[0] == 0
    assert all(one < other <= one + HALF * whole for one, other in pairwise(starts))
    for moment in (0, sum(lengths) // 3, sum(lengths)):
        assert moment - sheet_of(starts, moment) <= HALF * whole < (1 - EDGE) * whole


def test_sheets_turn_where_reps_begin_and_two_more_are_in_sight() -> None:
    rep, whole = 4_000, 3.6 * 4_000
    starts = sheet_starts([rep * index for index in range(8)], 8 * rep, whole)
    assert starts == tuple(float(rep * index) for index in range(8))
    last_in_sight = starts[1] + (1 - EDGE) * whole
    assert last_in_sight >= starts[2] + 2 * rep, "just before it is turned"


def test_fast_reps_share_a_sheet_so_that_it_turns_less_than_once_a_second() -> None:
    starts = sheet_starts(range(0, 60_000, 400), 60_000, 7_000)
    assert min(other - one for one, other in pairwise(starts)) > 1_000
    assert all(start % 400 == 0 for start in starts)


def test_a_rep_longer_than_a_sheet_is_turned_in_its_middle() -> None:
    assert sheet_starts([0], 45_000, 30_000) == (0.0, 15_000.0, 30_000.0)
    assert FULL < HALF


@pytest.mark.parametrize(("at_ms", "expected"), [(-5_000, 0.0), (0, 0.0), (14_999, 0.0), (15_000, 15_000.0)])
def test_a_moment_is_on_the_sheet_that_began_last(at_ms: float, expected: float) -> None:
    assert sheet_of((0.0, 15_000.0, 30_000.0), at_ms) == expected


def test_no_reps_make_no_sheets() -> None:
    assert sheet_starts([], 0, 7_000) == ()
