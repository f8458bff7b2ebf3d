"""Facts become records: every rep once, faults with their rep, the last answer that was given."""

import pytest

from app.domain.fold import UNNAMED_FAULT, Closing, as_meant, fold_bout, fold_closing, fold_run, standing
from app.domain.plan import Side
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutRated,
    BoutRecord,
    Fact,
    FaultMarked,
    LoadUsed,
    Paused,
    PauseReason,
    RepDone,
    RepMissed,
    RepRecord,
    RestExtended,
    Resumed,
    RunBegan,
    RunEnded,
    RunOutcome,
    SessionRated,
    SkipReason,
    TakenBack,
)


def rep(number: int, at_ms: int, side: Side = Side.LEFT, bout: int = 0, attempt: int = 1) -> RepDone:
    return RepDone(at_ms, bout, attempt, number, side, at_ms - 4_000, 12)


def fault(number: int, at_ms: int, name: str | None, bout: int = 0, attempt: int = 1) -> FaultMarked:
    return FaultMarked(at_ms, bout, attempt, number, Side.LEFT, name)


BOUT: tuple[Fact, ...] = (
    RunBegan(),
    BoutBegan(5_000, 0, 1),
    rep(1, 9_000),
    rep(2, 13_000),
    BoutEnded(13_000, 0, 1, BoutOutcome.DONE),
)


def test_a_bout_holds_its_reps_in_order_with_their_times() -> None:
    assert fold_bout(BOUT, 0, 1) == BoutRecord(
        bout=0,
        attempt=1,
        reps=(
            RepRecord(1, Side.LEFT, 5_000, 9_000, 12),
            RepRecord(2, Side.LEFT, 9_000, 13_000, 12),
        ),
        outcome=BoutOutcome.DONE,
        began_ms=5_000,
        ended_ms=13_000,
    )


def test_what_was_not_answered_is_unknown() -> None:
    record = fold_bout(BOUT, 0, 1)
    assert (record.reps_stated, record.rpe, record.pain, record.note) == (None, None, None, None)
    assert record.reps_done == 2


def test_a_later_answer_replaces_and_none_leaves_as_it_was() -> None:
    record = fold_bout(
        (
            *BOUT,
            BoutRated(20_000, 0, 1, reps=1, rpe=6),
            BoutRated(21_000, 0, 1, rpe=7, pain=0, note="left elbow"),
            BoutRated(90_000, 0, 1, pain=2),
        ),
        0,
        1,
    )
    assert (record.reps_stated, record.rpe, record.pain, record.note) == (1, 7, 2, "left elbow")
    assert record.reps_done == 1


def test_the_load_used_is_the_last_one_said_and_unknown_before() -> None:
    assert fold_bout(BOUT, 0, 1).load_kg is None
    said = (LoadUsed(20_000, 0, 1, "10"), LoadUsed(21_000, 0, 1, "12.5"), LoadUsed(22_000, 1, 1, "30"))
    assert fold_bout((*BOUT, *said), 0, 1).load_kg == "12.5"


def test_a_fault_goes_with_its_rep_when_marked_during_it_and_when_marked_after_it() -> None:
    facts = (
        BoutBegan(0, 0, 1),
        fault(1, 2_000, "shoulder hikes"),
        rep(1, 4_000),
        rep(2, 8_000),
        fault(2, 8_500, "trunk rolls"),
        BoutEnded(8_600, 0, 1, BoutOutcome.DONE),
    )
    assert [one.faults for one in fold_bout(facts, 0, 1).reps] == [("shoulder hikes",), ("trunk rolls",)]


def test_a_fault_marked_after_the_bout_ended_goes_with_its_rep() -> None:
    record = fold_bout((*BOUT, fault(2, 15_000, "trunk rolls")), 0, 1)
    assert [one.clean for one in record.reps] == [True, False]


def test_the_same_fault_twice_on_a_rep_is_one_and_another_is_a_second() -> None:
    marks = (
        fault(1, 9_100, "trunk rolls"),
        fault(1, 9_200, "trunk rolls"),
        fault(1, 9_300, "elbow lifts"),
    )
    assert fold_bout((*BOUT, *marks), 0, 1).reps[0].faults == ("trunk rolls", "elbow lifts")


def test_a_name_takes_the_place_of_a_mark_without_one() -> None:
    facts = (
        RepDone(4_000, 0, 1, 1, Side.LEFT, 1_000, 0),
        FaultMarked(4_100, 0, 1, 1, Side.LEFT, None),
        FaultMarked(4_900, 0, 1, 1, Side.LEFT, "heel lifts"),
    )
    assert fold_bout(facts, 0, 1).reps[0].faults == ("heel lifts",)


def test_a_fault_without_a_name_makes_the_rep_unclean() -> None:
    first = fold_bout((*BOUT, fault(1, 9_100, None)), 0, 1).reps[0]
    assert first.faults == (UNNAMED_FAULT,)
    assert not first.clean


def test_a_fault_on_one_side_leaves_the_other_side_of_an_alternating_rep_clean() -> None:
    facts = (rep(1, 4_000), rep(1, 8_000, Side.RIGHT), fault(1, 8_100, "knee falls in"))
    left, right = fold_bout(facts, 0, 1).reps
    assert (left.side, left.clean, right.side, right.clean) == (Side.LEFT, False, Side.RIGHT, True)


def test_a_fault_on_a_rep_that_was_never_recorded_makes_no_rep() -> None:
    assert len(fold_bout((*BOUT, fault(9, 15_000, "trunk rolls")), 0, 1).reps) == 2


def test_a_missed_rep_is_kept_and_not_counted() -> None:
    facts = (BoutBegan(0, 0, 1), rep(1, 4_000), RepMissed(8_000, 0, 1, 2, Side.LEFT))
    record = fold_bout(facts, 0, 1)
    assert [one.missed for one in record.reps] == [False, True]
    assert not record.reps[1].clean
    assert record.reps_done == 1


def test_a_rep_recorded_again_replaces_the_first() -> None:
    record = fold_bout((RepMissed(4_000, 0, 1, 1, Side.LEFT), rep(1, 4_100)), 0, 1)
    assert [(one.end_ms, one.missed) for one in record.reps] == [(4_100, False)]


def test_a_bout_left_out_has_its_reason_and_no_beginning() -> None:
    facts = (BoutEnded(70_000, 3, 1, BoutOutcome.SKIPPED, SkipReason.PAIN, "front of the shoulder"),)
    record = fold_bout(facts, 3, 1)
    assert (record.outcome, record.reason, record.note, record.began_ms, record.reps) == (
        BoutOutcome.SKIPPED,
        SkipReason.PAIN,
        "front of the shoulder",
        None,
        (),
    )


def test_a_bout_without_an_end_was_broken_off_at_the_last_rep() -> None:
    record = fold_bout((*BOUT[:-1], Paused(20_000, PauseReason.INTERRUPTED)), 0, 1)
    assert (record.outcome, record.ended_ms) == (BoutOutcome.BROKEN_OFF, 13_000)


def test_answers_do_not_move_the_end_of_a_bout_that_was_broken_off() -> None:
    assert fold_bout((*BOUT[:-1], BoutRated(99_000, 0, 1, rpe=4)), 0, 1).ended_ms == 13_000


def test_an_attempt_of_which_nothing_is_known_is_an_error() -> None:
    with pytest.raises(ValueError, match="nothing was done"):
        fold_bout(BOUT, 0, 2)


def test_a_run_gives_every_attempt_in_the_order_it_was_written() -> None:
    facts = (
        *BOUT,
        RestExtended(14_000, 1, 15_000),
        BoutBegan(30_000, 1, 1),
        rep(1, 34_000, bout=1),
        Paused(35_000, PauseReason.ASKED),
        BoutRated(35_500, 0, 1, rpe=3),
        Resumed(40_000),
        BoutEnded(41_000, 1, 1, BoutOutcome.BROKEN_OFF),
        BoutBegan(50_000, 1, 2),
        rep(1, 54_000, bout=1, attempt=2),
        BoutEnded(54_000, 1, 2, BoutOutcome.DONE),
        RunEnded(54_000, RunOutcome.FINISHED),
        SessionRated(60_000, 5, 6_000),
    )
    records = fold_run(facts)
    assert [(one.bout, one.attempt, one.reps_done) for one in records] == [(0, 1, 2), (1, 1, 1), (1, 2, 1)]
    assert records[0].rpe == 3
    assert all(record == fold_bout(facts, record.bout, record.attempt) for record in records)


def test_answers_about_a_bout_that_was_never_begun_make_no_record() -> None:
    assert fold_run((RunBegan(), BoutRated(1_000, 0, 1, rpe=3))) == ()


def test_a_run_that_goes_on_has_no_end() -> None:
    assert fold_closing(BOUT) == Closing()


def test_a_rating_after_the_end_brings_its_lag_and_an_empty_one_changes_nothing() -> None:
    ended = fold_closing((*BOUT, RunEnded(13_000, RunOutcome.FINISHED)))
    assert ended == Closing(RunOutcome.FINISHED, 13_000)
    rated = fold_closing((SessionRated(1_813_000, 6, 1_800_000, "hard"),), ended)
    assert rated == Closing(RunOutcome.FINISHED, 13_000, 6, 1_800_000, "hard")
    assert fold_closing((SessionRated(2_000_000, None, 1_987_000),), rated) == rated
    again = fold_closing((SessionRated(2_000_000, 4, 1_987_000),), rated)
    assert (again.session_rpe, again.lag_ms, again.note) == (4, 1_987_000, "hard")


def record(attempt: int, outcome: BoutOutcome, reps: int) -> BoutRecord:
    return BoutRecord(0, attempt, (), outcome, 0, 1_000, reps_stated=reps)


def test_an_attempt_that_came_to_its_end_stands_before_one_that_was_broken_off_or_left_out() -> None:
    done, again = record(1, BoutOutcome.DONE, 12), record(2, BoutOutcome.DONE, 8)
    for outcome in (BoutOutcome.BROKEN_OFF, BoutOutcome.SKIPPED):
        assert standing([done, record(2, outcome, 3)]) == {0: done}
    assert standing([done, again]) == {0: again}, "what was done again to its end replaces the first"
    assert standing([done, record(2, BoutOutcome.ENDED_EARLY, 2)])[0].attempt == 2


def test_of_attempts_without_an_end_the_fullest_stands() -> None:
    first, second = record(1, BoutOutcome.BROKEN_OFF, 5), record(2, BoutOutcome.BROKEN_OFF, 2)
    assert standing([first, second, record(3, BoutOutcome.SKIPPED, 0)]) == {0: first}
    assert standing([second, record(3, BoutOutcome.BROKEN_OFF, 2)])[0].attempt == 3
    assert standing([]) == {}


def test_a_taking_back_takes_the_last_that_is_left_of_its_own_attempt() -> None:
    facts = (
        BoutBegan(0, 0, 1),
        BoutRated(10, 0, 1, rpe=4),
        BoutRated(20, 0, 1, rpe=9),
        BoutRated(30, 1, 1, rpe=2),
        TakenBack(40, 0, 1),
        TakenBack(50, 2, 1),
    )
    assert fold_bout(facts, 0, 1).rpe == 4
    assert as_meant(facts) == (*facts[:2], facts[3])
    assert fold_bout((*facts, TakenBack(60, 0, 1), TakenBack(70, 0, 1)), 0, 1).rpe is None
