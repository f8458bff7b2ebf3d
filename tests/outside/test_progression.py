"""Signs of progression against worked rows of the trade's rules, and the ten percent in exact fractions."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from app.analysis.progression import Reached, double_progression, load_step, two_for_two, week_change


@pytest.mark.parametrize(
    ("last_sets", "found"), [([12, 12], True), ([12, 11], False), ([11, 12, 12], True), ([12, 0, 12], False)]
)
def test_two_for_two_of_a_goal_of_ten(last_sets: list[int], found: bool) -> None:
    # NSCA, from memory: at least 2 reps above the goal in the last set of 2 consecutive workouts. A session
    # in which the exercise was left out (0) breaks the run: a choice.
    assert two_for_two(10, last_sets) is found


@pytest.mark.parametrize(
    ("sets", "found"),
    [([12, 12, 12], Reached.TOP), ([12, 12, 11], Reached.WITHIN), ([8, 8, 8], Reached.WITHIN)],
)
def test_double_progression_of_three_sets_of_8_to_12(sets: list[int], found: Reached) -> None:
    # Common practice, from memory: 12, 12, 12 and then more load and 8s; 12, 12, 11 and it is held.
    assert double_progression(8, 12, sets) is found


def test_a_range_of_one_number_is_at_its_top_from_there() -> None:
    # By the same rule: 3x10 asked for.
    assert double_progression(10, 10, [10, 10, 11]) is Reached.TOP
    assert double_progression(10, 10, [10, 10, 9]) is Reached.BELOW


def test_a_small_base_shows_its_absolute_change_and_nought_has_no_percent() -> None:
    # Arithmetic; that a percentage of nothing is not shown is common practice.
    small, none = week_change(10, 30), week_change(0, 90)
    assert (small.absolute, small.percent, small.beyond_ten_percent) == (20, 200, True)
    assert (none.absolute, none.percent, none.beyond_ten_percent) == (90, None, None)


def test_exactly_a_tenth_more_is_not_beyond_ten_percent() -> None:
    # Arithmetic: 110 after 100 is +10.0 % exactly.
    found = week_change(100, 110)
    assert (found.absolute, found.percent, found.beyond_ten_percent) == (10, 10, False)
    assert week_change(100, 110.01).beyond_ten_percent is True
    assert week_change(0.3, 0.33).beyond_ten_percent is False
    assert (0.33 - 0.3) / 0.3 > 0.1, "which floats take for more than a tenth"


MILLISECONDS = st.integers(0, 10 * 7 * 12 * 3_600_000)
"""Of an effort of up to 10 in a week: whole milliseconds x whole efforts are 60 000 parts of an AU."""


@given(MILLISECONDS, MILLISECONDS)
def test_a_change_is_that_of_exact_fractions(before: int, this: int) -> None:
    # fractions of Python: exact rational arithmetic.
    assume(before > 0)
    begin, end = Fraction(before, 60_000), Fraction(this, 60_000)
    found = week_change(float(begin), float(end))
    assert found.absolute == float(end - begin)
    assert found.percent == float((end - begin) / begin * 100)
    assert found.beyond_ten_percent is (end > begin * Fraction(11, 10))


@given(MILLISECONDS.filter(bool))
def test_a_tenth_more_of_any_week_is_a_tenth_and_the_next_part_is_beyond(parts: int) -> None:
    # fractions of Python: 11/10 of a number of tenths is exact.
    begin, end = Fraction(parts * 10, 60_000), Fraction(parts * 11, 60_000)
    assert week_change(float(begin), float(end)).beyond_ten_percent is False
    assert week_change(float(begin), float(end + Fraction(1, 60_000))).beyond_ten_percent is True


@given(st.decimals("0.5", "400", places=2))
def test_the_step_of_a_load_is_2_to_10_percent_of_it(load: Decimal) -> None:
    # ACSM 2009, Med Sci Sports Exerc 41:687-708: 2-10 % more when 1 or 2 reps above the target can be done.
    step = load_step(load)
    assert Fraction(step.least_kg) == Fraction(load) / 50
    assert Fraction(step.most_kg) == Fraction(load) / 10
