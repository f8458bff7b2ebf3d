"""What a record says of itself."""

import pytest

from app.domain.plan import Side
from app.domain.records import BoutOutcome, BoutRecord, RepRecord


def rep(number: int, *, missed: bool = False, faults: tuple[str, ...] = ()) -> RepRecord:
    return RepRecord(number, Side.BOTH, 0, 1_000, 0, missed, faults)


@pytest.mark.parametrize(
    ("record", "clean"),
    [
        (rep(1), True),
        (rep(1, missed=True), False),
        (rep(1, faults=("lands on the heel",)), False),
        (rep(1, faults=("",)), False),
    ],
)
def test_a_clean_rep_is_completed_and_without_a_fault(record: RepRecord, clean: bool) -> None:
    assert record.clean is clean


@pytest.mark.parametrize(("stated", "done"), [(None, 2), (5, 5), (0, 0)])
def test_reps_done_are_those_stated_else_those_counted(stated: int | None, done: int) -> None:
    reps = (rep(1), rep(2, missed=True), rep(3))
    assert BoutRecord(0, 1, reps, BoutOutcome.DONE, 0, 3_000, reps_stated=stated).reps_done == done
