"""Signs of progression: what is unknown decides nothing, and what is known decides as soon as it can."""

from decimal import Decimal

import pytest

from app.analysis.progression import Reached, double_progression, load_step, two_for_two, week_change


@pytest.mark.parametrize(
    ("last_sets", "found"),
    [
        ([], None),
        ([12], None),
        ([11], False),
        ([None, 12], None),
        ([12, None], None),
        ([None, 11], False),
        ([11, None], False),
        ([12, None, 12], None),
        ([9, 12, 12], True),
        ([15, 20], True),
    ],
)
def test_two_for_two_is_unknown_only_where_the_unknown_session_decides(
    last_sets: list[int | None], found: bool | None
) -> None:
    assert two_for_two(10, last_sets) is found


def test_an_exercise_left_out_in_a_session_breaks_the_run() -> None:
    assert two_for_two(10, [12, 0, 12]) is False
    assert two_for_two(10, [12, 0, 12, 12]) is True


@pytest.mark.parametrize(
    ("sets", "found"),
    [
        ([], None),
        ([12, None, 12], None),
        ([12, None, 7], Reached.BELOW),
        ([0], Reached.BELOW),
        ([8, 12, 12], Reached.WITHIN),
        ([13, 12, 14], Reached.TOP),
    ],
)
def test_a_range_is_at_its_top_only_where_every_set_is_known_to_be(
    sets: list[int | None], found: Reached | None
) -> None:
    assert double_progression(8, 12, sets) is found


def test_a_range_the_wrong_way_round_is_refused() -> None:
    with pytest.raises(ValueError, match="lesser number"):
        double_progression(12, 8, [])


@pytest.mark.parametrize(("before", "this"), [(None, 100.0), (100.0, None), (None, None)])
def test_a_change_with_an_unknown_week_is_unknown(before: float | None, this: float | None) -> None:
    found = week_change(before, this)
    assert (found.before, found.this) == (before, this)
    assert (found.absolute, found.percent, found.beyond_ten_percent) == (None, None, None)


def test_a_change_from_nothing_has_no_percent_and_is_told_all_the_same() -> None:
    found = week_change(0, 40)
    assert (found.absolute, found.percent, found.beyond_ten_percent) == (40, None, None)


def test_a_week_of_nothing_is_a_hundred_percent_less() -> None:
    found = week_change(40, 0)
    assert (found.absolute, found.percent, found.beyond_ten_percent) == (-40, -100, False)


def test_no_week_is_below_nought() -> None:
    with pytest.raises(ValueError, match="below nought"):
        week_change(10, -1)


def test_a_step_of_a_load_is_exact_in_decimals() -> None:
    step = load_step(Decimal("42.5"))
    assert (step.least_kg, step.most_kg) == (Decimal("0.85"), Decimal("4.25"))
