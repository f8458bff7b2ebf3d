"""Facts survive their bytes, the bytes are few, and they are the bytes of format 1."""

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.plan import Side
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutRated,
    Fact,
    FaultMarked,
    LoadUsed,
    Paused,
    PauseReason,
    RepDone,
    RepMissed,
    RestExtended,
    Resumed,
    RunBegan,
    RunEnded,
    RunOutcome,
    SessionRated,
    SkipReason,
)
from app.store.encoding import decode, encode
from tests.strategies import any_fact

ONE_OF_EACH: tuple[Fact, ...] = (
    RunBegan(),
    BoutBegan(5_000, 0, 1),
    RepDone(9_000, 0, 1, 1, Side.LEFT, 5_000, 12),
    RepMissed(13_000, 0, 1, 2, Side.LEFT),
    FaultMarked(13_200, 0, 1, 1, Side.LEFT, "trunk rolls"),
    FaultMarked(13_300, 0, 1, 1, Side.LEFT, None),
    BoutEnded(13_300, 0, 1, BoutOutcome.ENDED_EARLY),
    BoutRated(20_000, 0, 1, 1, 10, 0, "épaule"),
    RestExtended(21_000, 1, 15_000),
    Paused(22_000, PauseReason.INTERRUPTED),
    Resumed(90_000),
    BoutEnded(95_000, 1, 1, BoutOutcome.SKIPPED, SkipReason.PAIN, ""),
    RunEnded(95_000, RunOutcome.ABANDONED),
    SessionRated(1_895_000, None, 1_800_000),
    LoadUsed(1_896_000, 0, 1, "12.5"),
)
# Written by hand from the rules: a number n >= 0 is 2n, n < 0 is -2n-1, in groups of seven bits; an answer is
# 0 for nothing, else one more; a text is 0 for nothing, 1 where it is new; a tag with 10 added says that the
# place is the one to be expected.
BY_HAND = (
    "01"
    "01 00"
    "02 00 02 904e"
    "13 00 c03e 18"
    "14 c03e"
    "05 00 00 00 03 9003 01 0b 7472756e6b20726f6c6c73"
    "05 00 00 00 03 c801 00"
    "16 00 01 00 00"
    "17 d868 03 15 01 01 07 c3a97061756c65"
    "0a 02 d00f b0ea01"
    "08 d00f 01"
    "09 c0a608"  # 68 000 later: 136 000 = 64 + 128 (38 + 128 x 8)
    "16 904e 02 01 01 00"
    "0b 00 01"
    "0c 80dddb01 00 81dddb01 00"
    "0d 01 00 d00f 01 04 31322e35"
)


@given(st.lists(any_fact(), max_size=12))
def test_facts_come_back_from_their_bytes(facts: list[Fact]) -> None:
    assert decode(encode(facts)) == tuple(facts)


def test_the_bytes_are_those_of_format_1() -> None:
    assert encode(ONE_OF_EACH).hex() == BY_HAND.replace(" ", "")
    assert decode(bytes.fromhex(BY_HAND)) == ONE_OF_EACH


def test_a_rep_at_a_tempo_costs_at_most_eight_bytes() -> None:
    reps = [
        RepDone(3_600_000 + rep * 8_000, 40, 1, rep, Side.RIGHT, 3_592_000 + rep * 8_000, 16)
        for rep in range(1, 21)
    ]
    assert len(encode(reps)) <= 8 * len(reps)


def test_the_first_rep_of_the_next_bout_costs_no_more_than_the_others() -> None:
    before: list[Fact] = [
        BoutBegan(5_000, 0, 1),
        RepDone(9_000, 0, 1, 1, Side.LEFT, 5_000, 0),
        BoutBegan(60_000, 1, 1),
    ]
    first = RepDone(64_000, 1, 1, 1, Side.LEFT, 60_000, 0)
    assert len(encode([*before, first])) - len(encode(before)) <= 8


def test_a_fault_that_comes_again_is_not_spelt_again() -> None:
    marks = [FaultMarked(0, 0, 1, rep, Side.LEFT, "trunk rolls back") for rep in range(1, 11)]
    assert encode(marks).count(b"trunk rolls back") == 1
    assert decode(encode(marks)) == tuple(marks)


def test_a_half_of_a_letter_pair_in_a_note_is_no_reason_to_lose_a_rating() -> None:
    rated = BoutRated(0, 0, 1, note="\ud83d")
    assert decode(encode([rated])) == (rated,)


@given(st.lists(any_fact(), min_size=1, max_size=4), st.data())
def test_bytes_cut_short_are_refused_or_give_the_facts_before_the_cut(
    facts: list[Fact], data: st.DataObject
) -> None:
    whole = encode(facts)
    cut = whole[: data.draw(st.integers(0, len(whole) - 1))]
    with suppress(ValueError):
        before = decode(cut)
        assert before == tuple(facts[: len(before)])
        assert len(before) < len(facts)


@given(st.binary(max_size=40))
def test_any_other_bytes_are_refused_with_a_value_error_or_read(body: bytes) -> None:
    with suppress(ValueError):
        decode(b"\x01" + body)


@pytest.mark.parametrize(
    "body",
    [
        b"",
        b"\x02",
        b"\x01\x00",
        b"\x01\x0e\x00",
        b"\x01\x0d\x00\x02\x00\x00",
        b"\x01\x08\x00\x02",
        b"\x01\x01" + b"\x80" * 11,
        b"\x01\x04\x00\x00\x06\x00\x00",
        b"\x01\x0c\x00\x00\x00\x02",
        b"\x01\x0c\x00\x00\x00\x01\x09a",
    ],
    ids=[
        "nothing",
        "another format",
        "no fact 0",
        "no fact 14",
        "no load",
        "no such reason",
        "a number without an end",
        "no such side",
        "no text before it",
        "a text without an end",
    ],
)
def test_what_is_not_format_1_is_refused(body: bytes) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        decode(body)
