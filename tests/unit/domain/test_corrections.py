"""Which correction holds, whatever the order they came in, and which are in conflict."""

import random
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.correctable import Subject, Value
from app.domain.corrections import Change, Correction, Target, history, open_ends, undoing
from app.domain.plan import Side

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
BOUT = Target(Subject.BOUT, RUN, 0, 1)
NOON = datetime(2026, 3, 3, 12, tzinfo=UTC)


def made(
    number: int, after: Value, minutes: int = 0, replaces: tuple[int, ...] = (), field: str = "rpe"
) -> Correction:
    """A correction of a bout, named by its number."""
    at = NOON + timedelta(minutes=minutes)
    change = Change(BOUT, field, after, "Tomas", "misheard", at, "Europe/Lisbon")
    return Correction(name(number), change, None, tuple(name(other) for other in replaces))


def name(number: int) -> str:
    return f"0190163d-8694-7000-8000-{number:012d}"


def holding(*corrections: Correction) -> Value:
    return history(corrections).holding[BOUT, "rpe"].after


def test_the_latest_of_those_that_know_nothing_of_each_other_holds_and_they_are_in_conflict() -> None:
    early, late = made(2, 5, minutes=1), made(1, 6, minutes=2)
    found = history([late, early])
    assert found.holding[BOUT, "rpe"] == late
    (conflict,) = found.conflicts
    assert (conflict.holds, conflict.others) == (late, (early,))
    assert found.holds(late)
    assert not found.holds(early)


def test_of_two_at_one_moment_the_one_with_the_later_name_holds() -> None:
    assert holding(made(7, 4), made(3, 5)) == 4


def test_one_that_knows_of_another_holds_even_where_a_clock_went_wrong() -> None:
    first, second = made(1, 5, minutes=60), made(2, 6, minutes=0, replaces=(1,))
    assert holding(first, second) == 6
    assert history([first, second]).conflicts == ()


def test_a_correction_that_knows_of_both_ends_a_conflict() -> None:
    both = [made(1, 5, minutes=1), made(2, 6, minutes=2)]
    assert history(both).conflicts
    settled = history([*both, made(3, 5, minutes=3, replaces=(1, 2))])
    assert settled.conflicts == ()
    assert settled.holding[BOUT, "rpe"].after == 5


def test_two_that_say_the_same_are_in_no_conflict() -> None:
    assert history([made(1, 5, minutes=1), made(2, 5, minutes=2)]).conflicts == ()


def test_fields_and_things_are_corrected_apart() -> None:
    found = history([made(1, 5), made(2, 3, field="pain")])
    assert {field for _, field in found.holding} == {"rpe", "pain"}
    assert found.conflicts == ()


def test_a_circle_of_corrections_still_has_one_that_holds() -> None:
    circle = [made(1, 5, minutes=1, replaces=(2,)), made(2, 6, minutes=2, replaces=(1,))]
    assert holding(*circle) == 6
    assert len(open_ends(circle)) == 2
    assert holding(made(1, 5, replaces=(1,))) == 5


@given(
    st.lists(
        st.tuples(st.integers(0, 9), st.integers(0, 5), st.sets(st.integers(0, 11), max_size=3)),
        min_size=1,
        max_size=12,
    ),
    st.randoms(use_true_random=False),
)
def test_the_same_corrections_come_to_the_same_in_any_order_and_however_often(
    given_: list[tuple[int, int, set[int]]], chance: random.Random
) -> None:
    corrections = [
        made(number, after, minutes, tuple(sorted(replaces)))
        for number, (after, minutes, replaces) in enumerate(given_)
    ]
    shuffled = [*corrections, *chance.choices(corrections, k=3)]
    chance.shuffle(shuffled)
    assert history(shuffled) == history(corrections)
    assert history(corrections).holding[BOUT, "rpe"] in corrections


def test_undoing_goes_back_to_what_held_before() -> None:
    first = made(1, 5)
    change = undoing(first, "Ines", "was right after all", NOON + timedelta(hours=1), "UTC")
    assert (change.target, change.field, change.after) == (BOUT, "rpe", None)
    assert (change.who, change.why) == ("Ines", "was right after all")


@pytest.mark.parametrize(
    "parts",
    [
        {"subject": Subject.BOUT},
        {"subject": Subject.BOUT, "bout": 1},
        {"subject": Subject.RUN, "bout": 1, "attempt": 1},
        {"subject": Subject.REP, "bout": 1, "attempt": 1, "rep": 1},
        {"subject": Subject.BOUT, "bout": 1, "attempt": 1, "rep": 1, "side": Side.LEFT},
    ],
)
def test_a_target_has_the_parts_of_its_subject_and_no_others(parts: dict[str, object]) -> None:
    with pytest.raises(ValueError, match="is not named by"):
        Target(of=RUN, **parts)  # type: ignore[arg-type]


@pytest.mark.parametrize(("who", "why"), [("", "misheard"), ("Tomas", "  "), ("Tomas", "")])
def test_a_correction_names_who_and_why(who: str, why: str) -> None:
    with pytest.raises(ValueError, match="is a text"):
        Change(BOUT, "rpe", 5, who, why, NOON, "UTC")


def test_a_correction_to_no_possible_value_is_refused() -> None:
    with pytest.raises(ValueError, match="rpe is a whole number from 0 to 10"):
        made(1, 11)
    with pytest.raises(ValueError, match="no no_such"):
        made(1, 11, field="no_such")
