"""A fact as a row of plain values: nothing is lost, and nothing passes that is no fact."""

from dataclasses import fields
from typing import get_args

import pytest
from hypothesis import given

from app.domain.fact_rows import FACT_KINDS, FACT_WORDS, fact_of, fact_row
from app.domain.plan import Side
from app.domain.records import BoutEnded, BoutOutcome, Fact, FaultMarked, RepDone, SkipReason
from app.domain.values import Row
from tests.strategies import any_fact


@given(any_fact())
def test_a_fact_within_bounds_reads_back_as_itself(fact: Fact) -> None:
    row = fact_row(fact)
    assert None not in row.values()
    try:
        for name, value in row.items():
            if name != "fact":
                FACT_KINDS[name].check(value)
    except ValueError:
        with pytest.raises(ValueError, match="must be"):
            fact_of(row)
        return
    assert fact_of(row) == fact
    assert fact_of({name: row.get(name) for name in ("fact", *FACT_KINDS)}) == fact


def test_every_fact_has_a_word_and_every_field_a_kind() -> None:
    assert set(FACT_WORDS.values()) == set(get_args(Fact))
    assert {field.name for kind in FACT_WORDS.values() for field in fields(kind)} == set(FACT_KINDS)


def test_a_row_says_what_happened_in_words() -> None:
    assert fact_row(RepDone(9_000, 0, 1, 2, Side.LEFT, 5_000, 3)) == {
        "fact": "rep_done",
        "at_ms": 9_000,
        "bout": 0,
        "attempt": 1,
        "rep": 2,
        "side": "left",
        "start_ms": 5_000,
        "late_ms": 3,
    }
    skipped = fact_row(BoutEnded(9_000, 0, 1, BoutOutcome.SKIPPED, SkipReason.PAIN))
    assert (skipped["outcome"], skipped["reason"]) == ("skipped", "pain")
    assert fact_of({**fact_row(FaultMarked(1, 0, 1, 1, Side.LEFT, None))}) == FaultMarked(
        1, 0, 1, 1, Side.LEFT, None
    )


@pytest.mark.parametrize(
    ("row", "because"),
    [
        ({}, "fact must be one of run_began"),
        ({"fact": "flew"}, "fact must be one of"),
        ({"fact": ["run_began"]}, "fact must be one of"),
        ({"fact": "run_began"}, "at_ms is missing"),
        ({"fact": "run_began", "at_ms": 0, "rep": 1}, "rep does not go with run_began"),
        ({"fact": "run_ended", "at_ms": 0, "outcome": "skipped"}, "outcome must be one of finished"),
        ({"fact": "paused", "at_ms": 0, "reason": "pain"}, "reason must be one of asked"),
        ({"fact": "session_rated", "at_ms": 0, "rpe": 11}, "rpe must be a whole number from 0 to 10"),
        (
            {"fact": "bout_began", "at_ms": 0, "bout": 0, "attempt": 0},
            "attempt must be a whole number from 1",
        ),
    ],
)
def test_a_row_that_is_no_fact_is_refused(row: Row, because: str) -> None:
    with pytest.raises(ValueError, match=because):
        fact_of(row)
