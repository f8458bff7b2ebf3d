"""How pieces of somebody's file are shown in messages."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.planfile.shown import UNSEEN, choices, code_point, shown, suggestion


@pytest.mark.parametrize(
    ("value", "text"),
    [
        ("word", '"word"'),
        ("x" * 41, f'"{"x" * 40}..."'),
        ("a\tb\u202ec\u00a0d", '"a<U+0009>b<U+202E>c<U+00A0>d"'),
        (True, "true"),
        (12, "12"),
        (10**16, "a number that large"),
        (-(10**400), "a number that small"),
        (Decimal("1.50"), "1.50"),
        (Decimal("nan"), "nan"),
        (Decimal("inf"), "inf"),
        (Decimal("-inf"), "-inf"),
        (float("-inf"), "-inf"),
        ([1], "a list"),
        ({"a": 1}, "a table"),
    ],
)
def test_a_value_is_shown_briefly_and_on_one_line(value: object, text: str) -> None:
    assert shown(value) == text


@given(st.text() | st.integers() | st.floats() | st.dates() | st.decimals())
def test_whatever_the_value_nothing_unseen_is_shown(value: object) -> None:
    assert shown(value).isprintable()
    assert UNSEEN.search(shown(value)) is None


@given(st.characters(categories=["Cc"]))
def test_every_control_character_counts_as_unseen(character: str) -> None:
    assert UNSEEN.fullmatch(character)


@given(st.characters(categories=("L", "N", "P", "S", "M")))
def test_letters_marks_and_signs_of_any_script_do_not(character: str) -> None:
    assert not UNSEEN.match(character)


def test_a_character_is_named_by_its_number() -> None:
    assert code_point("\u202e") == "U+202E"
    assert code_point("👣") == "U+1F463"


@pytest.mark.parametrize(
    ("word", "near"),
    [("Reps", "reps"), ("rep", "reps"), ("side-change", "side_change"), (" hold ", "hold"), ("zebra", None)],
)
def test_a_near_miss_gets_a_suggestion_and_a_far_one_none(word: str, near: str | None) -> None:
    assert suggestion(word, ["reps", "hold", "side_change"]) == near


def test_a_word_without_end_gets_no_suggestion() -> None:
    assert suggestion("reps" * 100_000, ["reps" * 100_000]) is None


def test_choices_are_joined_as_people_say_them() -> None:
    assert choices(["a"]) == "a"
    assert choices(["a", "b"]) == "a or b"
    assert choices(["a", "b", "c"]) == "a, b or c"


def test_a_number_too_large_to_be_written_out_is_shown_all_the_same() -> None:
    assert shown(-(10**5000)) == "a number that small"
