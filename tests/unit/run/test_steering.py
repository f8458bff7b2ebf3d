"""What moves a run: pausing, ending, doing again, leaving out, resting longer or shorter, stopping."""

from app.domain.dose import Band, HoldReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Side
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    Paused,
    PauseReason,
    RepDone,
    RepMissed,
    RestExtended,
    Resumed,
    RunEnded,
    RunOutcome,
    SkipReason,
)
from app.run.intents import (
    BeginNow,
    EndBout,
    ExtendRest,
    MarkMissed,
    Pause,
    RedoBout,
    Resume,
    SkipExercise,
    Stop,
)
from app.run.state import Doing
from tests.led import TWO_REPS, Led, one, reps, timeline_of


def test_going_on_after_a_pause_starts_the_interrupted_rep_anew_after_a_lead_in() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    led.do(Pause())
    led.to(20_000)
    assert led.facts[-1] == Paused(10_000, PauseReason.ASKED)
    led.do(Resume())
    led.to(29_000)
    assert led.facts[-4:] == [
        Resumed(20_000),
        RepDone(29_000, 0, 1, 2, Side.BOTH, 25_000, 0),
        BoutEnded(29_000, 0, 1, BoutOutcome.DONE),
        RunEnded(29_000, RunOutcome.FINISHED),
    ]


def test_a_pause_in_a_rest_keeps_what_is_left_of_it() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    led.do(Pause())
    led.to(50_000)
    led.do(Resume())
    led.to(80_000)
    assert led.of(BoutBegan)[-1] == BoutBegan(73_000, 1, 1)


def test_ending_a_bout_twice_ends_one() -> None:
    led = Led(one(TWO_REPS, sets=3)).begin().to(6_000)
    led.do(EndBout())
    assert led.do(EndBout()) == ()
    assert led.controller.state.bout == 1


def test_a_rep_that_was_missed_is_not_counted_towards_a_bout_that_is_ended() -> None:
    led = Led(one(TempoReps(Band(2, 4), TWO_REPS.tempo))).begin().to(6_000)
    led.do(MarkMissed())
    led.to(14_000)
    led.do(EndBout())
    assert [fact.rep for fact in led.of(RepMissed)] == [1]
    assert [fact.rep for fact in led.of(RepDone)] == [2]
    assert led.of(BoutEnded)[0].outcome is BoutOutcome.ENDED_EARLY
    met = Led(one(TempoReps(Band(2, 4), TWO_REPS.tempo))).begin().to(6_000)
    met.do(MarkMissed())
    met.to(18_000)
    met.do(EndBout())
    assert met.of(BoutEnded)[0].outcome is BoutOutcome.DONE


def test_doing_a_bout_again_in_the_rest_after_it_keeps_both_attempts() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    led.do(RedoBout())
    led.do(RedoBout())
    led.to(34_000)
    assert led.of(BoutBegan) == [BoutBegan(5_000, 0, 1), BoutBegan(25_000, 0, 2)]
    assert [fact.attempt for fact in led.of(RepDone)] == [1, 1, 2, 2]
    assert led.controller.state.bout == 1


def test_doing_the_bout_under_way_again_breaks_it_off() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    assert led.do(RedoBout()) == (BoutEnded(10_000, 0, 1, BoutOutcome.BROKEN_OFF),)
    led.to(24_000)
    assert led.of(BoutEnded)[-1] == BoutEnded(23_000, 0, 2, BoutOutcome.DONE)


def test_skipping_an_exercise_leaves_out_all_that_remains_of_it_with_the_reason() -> None:
    first = Exercise("Heel raise", TWO_REPS, sets=3)
    second = Exercise("Hop", TWO_REPS)
    led = Led(timeline_of(first, second)).begin().to(6_000)
    skipped = led.do(SkipExercise(SkipReason.PAIN, "left calf"))
    ends = [fact for fact in skipped if isinstance(fact, BoutEnded)]
    assert [(end.bout, end.attempt, end.outcome, end.reason) for end in ends] == [
        (bout, 1, BoutOutcome.SKIPPED, SkipReason.PAIN) for bout in (0, 1, 2)
    ]
    assert led.controller.state.bout == 3
    assert led.controller.state.doing(led.controller.timeline, led.now) is Doing.GAP


def test_skipping_the_last_exercise_finishes_the_run() -> None:
    led = Led(one(TWO_REPS)).begin()
    assert led.do(SkipExercise(SkipReason.TIME))[-1] == RunEnded(0, RunOutcome.FINISHED)


def test_an_exercise_skipped_in_a_superset_stays_out_of_later_rounds() -> None:
    pair = [Exercise(name, TWO_REPS, sets=2, superset="A") for name in ("Row", "Press")]
    led = Led(timeline_of(*pair)).begin().to(6_000)
    led.do(SkipExercise(SkipReason.EQUIPMENT))
    led.to(120_000)
    done = {fact.bout for fact in led.of(RepDone)}
    assert {
        led.controller.timeline.exercise_of(led.controller.timeline.bouts[bout]).name for bout in done
    } == {"Press"}


def test_another_exercise_can_be_left_out_of_what_is_to_come() -> None:
    pair = [Exercise(name, TWO_REPS, sets=2, superset="A") for name in ("Row", "Press")]
    led = Led(timeline_of(*pair)).begin().to(20_000)
    assert led.controller.state.bout == 1
    skipped = led.do(SkipExercise(SkipReason.PAIN, bout=0))
    assert [(fact.bout, fact.outcome) for fact in skipped if isinstance(fact, BoutEnded)] == [
        (2, BoutOutcome.SKIPPED)
    ]
    assert led.controller.state.bout == 1
    assert led.do(SkipExercise(SkipReason.PAIN, bout=0)) == ()


def test_a_longer_rest_puts_off_the_next_bout() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    assert led.do(ExtendRest()) == (RestExtended(20_000, 1, 15_000),)
    led.to(59_000)
    assert led.of(BoutBegan)[-1] == BoutBegan(58_000, 1, 1)


def test_a_rest_is_not_made_longer_during_work() -> None:
    led = Led(one(TWO_REPS)).begin().to(6_000)
    assert led.do(ExtendRest()) == ()


def test_beginning_now_goes_to_the_lead_in() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    led.do(BeginNow())
    led.to(26_000)
    assert led.of(BoutBegan)[-1] == BoutBegan(25_000, 1, 1)


def test_stopping_keeps_the_reps_and_abandons_the_run() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    assert led.do(Stop()) == (
        BoutEnded(10_000, 0, 1, BoutOutcome.BROKEN_OFF),
        RunEnded(10_000, RunOutcome.ABANDONED),
    )
    assert led.do(Stop()) == ()
    assert len(led.of(RepDone)) == 1


def test_stopping_before_ready_records_nothing() -> None:
    led = Led(one(TWO_REPS))
    assert led.do(Stop()) == ()
    assert led.controller.over


def test_ending_a_hold_that_has_lasted_its_lower_bound_keeps_its_rep() -> None:
    plank = one(WorkTime(Band(30_000, 45_000)))
    enough = Led(plank).begin().to(5_000 + 30_000)
    enough.do(EndBout())
    assert enough.facts[-3:] == [
        RepDone(35_000, 0, 1, 1, Side.BOTH, 5_000, 0),
        BoutEnded(35_000, 0, 1, BoutOutcome.DONE),
        RunEnded(35_000, RunOutcome.FINISHED),
    ]
    short = Led(plank).begin().to(5_000 + 29_750)
    short.do(EndBout())
    assert short.of(RepDone) == []
    assert short.of(BoutEnded)[0].outcome is BoutOutcome.ENDED_EARLY


def test_ending_a_bout_in_the_relaxing_after_a_hold_adds_no_rep() -> None:
    led = Led(one(HoldReps(Band(2, 3), Band(2_000, 4_000)))).begin().to(10_000)
    led.do(EndBout())
    assert reps(led.of(RepDone)) == [(1, 5_000, 9_000)]


def test_leaving_out_the_sets_to_come_still_asks_about_the_one_before() -> None:
    led = Led(timeline_of(Exercise("Heel raise", TWO_REPS, sets=2), Exercise("Hop", TWO_REPS)))
    led.begin().to(20_000).do(SkipExercise(SkipReason.TIME))
    assert (led.controller.state.bout, led.controller.state.last_bout) == (2, 0)
    assert led.do(RedoBout()) == (), "what was left out is not done again"


def test_a_bout_that_is_done_again_is_not_asked_about_until_it_is_over() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    asked = [led.controller.state.last_bout]
    led.do(RedoBout())
    asked.append(led.controller.state.last_bout)
    asked.append(led.to(34_000).controller.state.last_bout)
    assert asked == [0, None, 0]


def test_a_rest_is_made_longer_in_a_pause_too() -> None:
    led = Led(one(TWO_REPS, sets=2)).begin().to(20_000)
    led.do(Pause())
    assert led.do(ExtendRest()) == (RestExtended(20_000, 1, 15_000),)
    led.do(Resume())
    led.to(59_000)
    assert led.of(BoutBegan)[-1] == BoutBegan(58_000, 1, 1)


def test_a_pause_in_mid_bout_can_be_made_longer_and_cut_short_and_goes_on_at_its_rep() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    led.do(Pause())
    led.do(ExtendRest())
    led.do(Resume())
    led.to(12_000).do(BeginNow())
    led.to(22_000)
    assert reps(led.of(RepDone)) == [(1, 5_000, 9_000), (2, 17_000, 21_000)]
