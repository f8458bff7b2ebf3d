"""The kinds of numbers a file may hold."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.dose import Band
from app.domain.tempo import Tempo
from app.planfile.amounts import Count, Load, Ranged, Seconds, TempoText, tidy
from tests.plantexts import Refusals, accepted, refused


@pytest.mark.parametrize(
    ("value", "ms"),
    [
        (1, 1000),
        (Decimal("0.1"), 100),
        (0.1, 100),
        (600, 600_000),
        (Decimal("1.234"), 1234),
        (Decimal("2.50"), 2500),
    ],
)
def test_seconds_become_whole_milliseconds(value: object, ms: int) -> None:
    assert accepted(Seconds(), value) == ms


@pytest.mark.parametrize(
    ("value", "says"),
    [
        (0, "0 is out of range; write 0.1 to 600 seconds"),
        (Decimal("0.099"), "0.099 is out of range; write 0.1 to 600 seconds"),
        (Decimal("600.001"), "600.001 is out of range; write 0.1 to 600 seconds"),
        (-1, "-1 is out of range; write 0.1 to 600 seconds"),
        (10**400, "a number that large is out of range; write 0.1 to 600 seconds"),
        (Decimal("nan"), "nan is out of range; write 0.1 to 600 seconds"),
        (float("inf"), "inf is out of range; write 0.1 to 600 seconds"),
        (Decimal("1.0005"), "1.0005 is finer than a millisecond; write three decimals at most"),
        ("4", 'this must be a number, not "4"; write a number, without quotes'),
        (True, "this must be a number, not true; write a number"),
        ([4], "this must be a number, not a list; write a number"),
    ],
)
def test_what_is_no_length_of_a_phase_is_refused(value: object, says: str) -> None:
    assert refused(Seconds(), value) == [says]


def test_zero_is_taken_only_where_something_may_be_left_out() -> None:
    kind = Seconds(or_none=True)
    assert accepted(kind, 0) == accepted(kind, Decimal("-0.0")) == 0
    assert refused(kind, Decimal("0.05")) == ["0.05 is out of range; write 0 or 0.1 to 600 seconds"]


@given(st.decimals(Decimal("0.1"), 600, places=3))
def test_every_length_of_three_decimals_is_kept_to_the_millisecond(seconds: Decimal) -> None:
    assert accepted(Seconds(), seconds) == seconds * 1000


@pytest.mark.parametrize(
    ("value", "says"),
    [
        (0, "0 is out of range; write a whole number from 1 to 20"),
        (21, "21 is out of range; write a whole number from 1 to 20"),
        (Decimal("2.0"), "2.0 is not a whole number; write one from 1 to 20"),
        ("2", 'this must be a number, not "2"; write a number, without quotes'),
        (False, "this must be a number, not false; write a number"),
    ],
)
def test_a_count_is_a_whole_number_within_its_limits(value: object, says: str) -> None:
    assert accepted(Count(1, 20), 20) == 20
    assert refused(Count(1, 20), value) == [says]


def test_one_amount_and_a_range_are_both_bands() -> None:
    kind = Ranged(Count(1, 200))
    assert accepted(kind, 8) == Band(8, 8)
    assert accepted(kind, [8, 8]) == Band(8, 8)
    assert accepted(kind, [8, 10]) == Band(8, 10)
    assert accepted(Ranged(Seconds()), [3, Decimal("4.5")]) == Band(3000, 4500)


def test_a_range_has_two_bounds_the_lower_first() -> None:
    kind = Ranged(Count(1, 200))
    assert refused(kind, [10, 8]) == ["the range runs downwards; write the lower number first: [8, 10]"]
    assert refused(kind, [8]) == ["a range has two numbers, not 1; write it like [lower, upper]"]
    assert refused(kind, [1, 2, 3]) == ["a range has two numbers, not 3; write it like [lower, upper]"]
    assert refused(kind, [[1], [2]])[0] == "this must be a number, not a list; write a number"


def test_both_bounds_of_a_range_are_judged_each_at_its_place() -> None:
    refusals = Refusals()
    assert Ranged(Count(1, 200)).read([0, 201], refusals) is None
    assert [place for _, place in refusals] == [(0,), (1,)]


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (0, "0"),
        (Decimal("2.50"), "2.5"),
        (1000, "1000"),
        (Decimal("1E+1"), "10"),
        (Decimal("-0.0"), "0"),
        (0.1, "0.1"),
    ],
)
def test_a_load_is_kept_exactly_and_shown_plainly(value: object, text: str) -> None:
    assert str(accepted(Load(), value)) == text


@pytest.mark.parametrize(
    "value",
    [-1, Decimal("1000.001"), Decimal("0.0001"), Decimal("1e-999999"), Decimal("inf"), "5", True, None],
)
def test_what_is_no_load_is_refused(value: object) -> None:
    assert len(refused(Load(), value)) == 1


def test_a_tempo_is_text_of_four_fields_none_over_six_hundred() -> None:
    assert accepted(TempoText(), "30X0") == Tempo(3000, 0, None, 0)
    assert accepted(TempoText(), "600-0-0-0") == Tempo(600_000, 0, 0, 0)
    assert refused(TempoText(), "601-0-0-0") == [
        "a phase of the tempo is too long; write 600 seconds at most"
    ]
    assert refused(TempoText(), 3010) == ['a tempo is text, not 3010; put it in quotes, like "3-0-1-0"']


def test_a_tempo_with_unseen_characters_or_without_end_is_not_repeated_in_the_message() -> None:
    for value in ("3-0-\u202e1-0", "3-0-1-0\n", "3" * 100_000):
        (message,) = refused(TempoText(), value)
        assert len(message) < 120
        assert message.isprintable()


@given(st.decimals(0, 1000, places=3))
def test_tidying_a_number_changes_how_it_is_written_and_not_what_it_is(number: Decimal) -> None:
    assert tidy(number) == number
    assert "E" not in str(tidy(number))
    assert not (("." in str(tidy(number))) and str(tidy(number)).endswith("0"))
