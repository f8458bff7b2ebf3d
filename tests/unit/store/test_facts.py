"""Where the facts of a run are cut into pieces to be folded."""

from hypothesis import given
from hypothesis import strategies as st

from app.domain.plan import Side
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutRated,
    Fact,
    RepDone,
    RunBegan,
    RunEnded,
    RunOutcome,
    SessionRated,
)
from app.store.facts import cut
from tests.strategies import run_facts

REP = RepDone(9_000, 0, 1, 1, Side.LEFT, 5_000, 0)


def cut_facts(facts: tuple[Fact, ...]) -> tuple[list[list[Fact]], list[Fact]]:
    pieces, rest = cut(enumerate(facts))
    return [[fact for _, fact in piece] for piece in pieces], [fact for _, fact in rest]


def test_a_bout_under_way_stays_loose() -> None:
    facts = (RunBegan(), BoutBegan(5_000, 0, 1), REP)
    assert cut_facts(facts) == ([], list(facts))


def test_a_piece_ends_with_its_bout_and_what_comes_after_is_the_rest() -> None:
    bout = (RunBegan(), BoutBegan(5_000, 0, 1), REP, BoutEnded(9_000, 0, 1, BoutOutcome.DONE))
    rated = BoutRated(12_000, 0, 1, rpe=4)
    assert cut_facts((*bout, rated)) == ([list(bout)], [rated])


def test_a_bout_left_out_while_another_is_under_way_does_not_part_that_one() -> None:
    facts = (
        BoutBegan(0, 0, 1),
        REP,
        BoutEnded(9_500, 1, 1, BoutOutcome.SKIPPED),
        BoutEnded(9_600, 0, 1, BoutOutcome.ENDED_EARLY),
    )
    assert cut_facts(facts) == ([list(facts)], [])


def test_the_end_of_the_run_ends_the_last_piece_with_a_bout_still_under_way() -> None:
    facts = (BoutBegan(0, 0, 1), REP, RunEnded(9_500, RunOutcome.ABANDONED))
    late = SessionRated(80_000, 5, 70_500)
    assert cut_facts((*facts, late)) == ([list(facts)], [late])


@given(st.integers(1, 4).flatmap(run_facts))
def test_nothing_is_lost_moved_or_doubled_by_cutting(facts: tuple[Fact, ...]) -> None:
    pieces, rest = cut(enumerate(facts))
    assert [numbered for piece in (*pieces, rest) for numbered in piece] == list(enumerate(facts))
