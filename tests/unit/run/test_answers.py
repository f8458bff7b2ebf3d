"""What is said of a run while it goes: counts, faults, missed reps, ratings."""

import pytest

from app.domain.dose import Band, HoldReps, OwnPaceReps
from app.domain.fold import fold_bout
from app.domain.plan import Exercise, Side
from app.domain.records import (
    BoutEnded,
    BoutOutcome,
    BoutRated,
    FaultMarked,
    LoadUsed,
    RepDone,
    RepMissed,
    SessionRated,
    SkipReason,
    TakenBack,
)
from app.run.intents import (
    CountRep,
    EndBout,
    MarkFault,
    MarkMissed,
    Pause,
    RateBout,
    RateSession,
    RedoBout,
    Resume,
    SkipExercise,
    TakeBack,
)
from app.run.state import RepMark
from tests.led import TWO_REPS, Led, one, reps, timeline_of


def test_own_pace_counts_by_press_and_ends_at_the_upper_count() -> None:
    led = Led(one(OwnPaceReps(Band(2, 3)))).begin().to(10_000)
    for _ in range(3):
        led.do(CountRep())
        led.to(led.now - 1_000_000 + 1_500)
    assert reps(led.of(RepDone)) == [(1, 5_000, 10_000), (2, 10_000, 11_500), (3, 11_500, 13_000)]
    assert led.of(BoutEnded) == [BoutEnded(13_000, 0, 1, BoutOutcome.DONE)]


def test_a_press_that_bounces_counts_once() -> None:
    led = Led(one(OwnPaceReps(Band.exactly(8)))).begin().to(10_000)
    led.do(CountRep())
    led.now += 249
    assert led.do(CountRep()) == ()
    led.now += 1
    assert [type(fact) for fact in led.do(CountRep())] == [RepDone]


def test_a_count_in_the_lead_in_is_no_rep() -> None:
    led = Led(one(OwnPaceReps(Band.exactly(8)))).begin().to(4_999)
    assert led.do(CountRep()) == ()


def test_ending_an_own_pace_bout_within_its_range_is_done_and_below_it_is_early() -> None:
    enough = Led(one(OwnPaceReps(Band(1, 3)))).begin().to(10_000)
    enough.do(CountRep())
    enough.do(EndBout())
    short = Led(one(OwnPaceReps(Band(2, 3)))).begin().to(10_000)
    short.do(CountRep())
    short.do(EndBout())
    assert enough.of(BoutEnded)[0].outcome is BoutOutcome.DONE
    assert short.of(BoutEnded)[0].outcome is BoutOutcome.ENDED_EARLY


def test_a_fault_belongs_to_the_rep_under_way_and_is_marked_once() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    assert led.do(MarkFault("knee caves in")) == (FaultMarked(10_000, 0, 1, 2, Side.BOTH, "knee caves in"),)
    assert led.do(MarkFault("knee caves in")) == ()
    assert led.do(MarkFault("heel lifts")) == (FaultMarked(10_000, 0, 1, 2, Side.BOTH, "heel lifts"),)


def test_a_name_given_soon_after_a_mark_goes_to_the_rep_that_was_marked() -> None:
    led = Led(one(TWO_REPS)).begin().to(8_900)
    led.do(MarkFault())
    led.to(9_500)
    assert led.do(MarkFault("heel lifts")) == (FaultMarked(9_500, 0, 1, 1, Side.BOTH, "heel lifts"),)
    assert led.do(MarkFault("knee caves in")) == (FaultMarked(9_500, 0, 1, 2, Side.BOTH, "knee caves in"),)


def test_a_name_given_late_goes_to_the_rep_under_way() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(6_000)
    led.do(MarkFault())
    led.to(11_001)
    assert led.do(MarkFault("heel lifts")) == (FaultMarked(11_001, 0, 1, 2, Side.BOTH, "heel lifts"),)


def test_a_fault_marked_in_the_rest_belongs_to_the_last_rep() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    assert led.do(MarkFault()) == (FaultMarked(20_000, 0, 1, 2, Side.BOTH, None),)


def test_a_fault_marked_while_relaxing_belongs_to_the_hold_before() -> None:
    led = Led(one(HoldReps(Band.exactly(2), Band.exactly(4_000)))).begin().to(10_000)
    (fact,) = led.do(MarkFault())
    assert isinstance(fact, FaultMarked)
    assert fact.rep == 1


def test_a_missed_rep_passes_as_missed() -> None:
    led = Led(one(TWO_REPS)).begin().to(6_000)
    led.do(MarkMissed())
    led.do(MarkMissed())
    led.to(14_000)
    assert led.of(RepMissed) == [RepMissed(9_000, 0, 1, 1, Side.BOTH)]
    assert [fact.rep for fact in led.of(RepDone)] == [2]


def test_a_bout_is_rated_only_when_it_is_over_and_also_after_the_run() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    assert led.do(RateBout(0, rpe=4)) == ()
    led.to(14_000)
    assert led.do(RateBout(0, rpe=4)) == (BoutRated(14_000, 0, 1, None, 4, None, None),)
    assert led.do(RateBout(7, rpe=4)) == ()


def test_a_load_is_written_down_by_itself_and_beside_other_answers() -> None:
    led = Led(one(TWO_REPS)).begin().to(14_000)
    assert led.do(RateBout(0, load_kg="12.5")) == (LoadUsed(14_000, 0, 1, "12.5"),)
    assert led.do(RateBout(0, rpe=4, load_kg="0")) == (
        BoutRated(14_000, 0, 1, None, 4, None, None),
        LoadUsed(14_000, 0, 1, "0"),
    )


@pytest.mark.parametrize("load", ["-1", "1000.5", "12,5", "heavy", "1e2", ""])
def test_a_load_is_a_decimal_number_from_0_to_1000_kg(load: str) -> None:
    with pytest.raises(ValueError, match="load_kg"):
        RateBout(0, load_kg=load)


def test_the_session_rating_keeps_its_lag() -> None:
    led = Led(one(TWO_REPS)).begin().to(20_000)
    assert led.do(RateSession(5)) == (SessionRated(20_000, 5, 7_000),)


def test_a_rep_at_ones_own_pace_after_a_pause_begins_when_the_work_goes_on() -> None:
    led = Led(one(OwnPaceReps(Band.exactly(3)))).begin().to(10_000)
    led.do(CountRep())
    led.to(12_000).do(Pause())
    led.to(30_000).do(Resume())
    led.to(34_750)
    assert led.do(CountRep()) == (), "the lead-in is no work"
    led.to(37_000).do(CountRep())
    assert reps(led.of(RepDone)) == [(1, 5_000, 10_000), (2, 35_000, 37_000)]


def test_ending_a_hold_marked_as_missed_keeps_it_missed() -> None:
    led = Led(one(HoldReps(Band(1, 2), Band(3_000, 6_000)))).begin().to(9_000)
    led.do(MarkMissed())
    led.do(EndBout())
    assert led.of(RepMissed) == [RepMissed(9_000, 0, 1, 1, Side.BOTH)]
    assert led.of(RepDone) == []


def test_a_bout_left_in_the_middle_can_still_be_rated() -> None:
    led = Led(timeline_of(Exercise("Heel raise", TWO_REPS), Exercise("Hop", TWO_REPS))).begin().to(10_000)
    led.do(SkipExercise(SkipReason.PAIN))
    assert led.controller.state.last_bout == 0
    assert [type(fact) for fact in led.do(RateBout(0, pain=4))] == [BoutRated]


def test_the_first_rep_of_the_next_set_begins_with_its_work() -> None:
    led = Led(one(OwnPaceReps(Band.exactly(1)), sets=2)).begin().to(8_000)
    led.do(CountRep())
    led.to(8_000 + 30_000 + 4_000).do(CountRep())
    assert reps(led.of(RepDone)) == [(1, 5_000, 8_000), (1, 38_000, 42_000)]


def test_a_missed_rep_that_is_interrupted_is_begun_afresh() -> None:
    led = Led(one(TWO_REPS)).begin().to(6_000)
    led.do(MarkMissed())
    led.do(Pause())
    led.do(Resume())
    led.to(20_000)
    assert led.of(RepMissed) == []
    assert [fact.rep for fact in led.of(RepDone)] == [1, 2]


def test_no_rep_is_missed_between_two_reps_nor_in_a_lead_in() -> None:
    led = Led(one(HoldReps(Band.exactly(2), Band.exactly(4_000)))).begin().to(4_000)
    led.do(MarkMissed())
    led.to(10_000).do(MarkMissed())
    led.do(Pause())
    led.do(Resume())
    led.to(12_000).do(MarkMissed())
    led.to(30_000)
    assert led.of(RepMissed) == []


def test_what_was_said_last_is_taken_back_first_and_stays_written() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    led.do(MarkFault("wobbles"))
    led.do(RateBout(0, rpe=4))
    led.do(RateBout(0, pain=7))
    assert [led.do(TakeBack()) for _ in range(4)] == [(TakenBack(20_000, 0, 1),)] * 3 + [()]
    record = fold_bout(led.facts, 0, 1)
    assert (record.rpe, record.pain, [rep.faults for rep in record.reps]) == (None, None, [(), ()])
    assert [type(fact) for fact in led.facts].count(BoutRated) == 2
    led.do(MarkFault("wobbles"))
    assert fold_bout(led.facts, 0, 1).reps[-1].faults == ("wobbles",), "it can be marked again"


def test_taking_back_leaves_what_was_said_before_this_rest() -> None:
    led = Led(one(TWO_REPS, sets=3)).begin().to(20_000)
    led.do(RateBout(0, rpe=4))
    led.to(45_000)
    assert led.controller.state.begun
    assert led.do(TakeBack()) == ()


def test_a_rep_marked_as_not_done_by_mistake_is_done_after_all() -> None:
    led = Led(one(TWO_REPS)).begin().to(6_000)
    led.do(MarkMissed())
    led.do(MarkMissed())
    assert led.do(TakeBack()) == ()
    led.to(9_000)
    assert (led.of(RepMissed), [fact.rep for fact in led.of(RepDone)]) == ([], [1])


def test_a_fault_is_marked_afterwards_on_a_rep_of_an_earlier_bout() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(60_000)
    on = RepMark(0, 1, 2, Side.BOTH)
    assert led.do(MarkFault("wobbles", on)) == (FaultMarked(60_000, 0, 1, 2, Side.BOTH, "wobbles"),)
    assert led.do(MarkFault("wobbles", on)) == ()
    for mistaken in (RepMark(1, 1, 3, Side.BOTH), RepMark(0, 3, 1, Side.BOTH), RepMark(0, 1, 1, Side.LEFT)):
        assert led.do(MarkFault("wobbles", mistaken)) == ()


def test_a_late_answer_goes_to_the_attempt_it_names() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    led.do(RedoBout())
    led.to(26_000)
    assert led.do(RateBout(0, rpe=4)) == (), "the second attempt is under way"
    assert led.do(RateBout(0, rpe=4, attempt=1)) == (BoutRated(26_000, 0, 1, rpe=4),)
    assert led.do(RateBout(0, rpe=4, attempt=3)) == ()
