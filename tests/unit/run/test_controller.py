"""The run as a state machine, on small plans and hand-made clock times."""

from collections.abc import Iterable
from typing import TypeVar

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose, HoldReps, OwnPaceReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Plan, Side, Sides, Stage, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutRated,
    Fact,
    FaultMarked,
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
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    BeginNow,
    CountRep,
    EndBout,
    ExtendRest,
    Intent,
    MarkFault,
    MarkMissed,
    Pause,
    RateBout,
    RateSession,
    RedoBout,
    Resume,
    SkipExercise,
    Stop,
    Tick,
)
from app.run.state import Doing, Stand

F = TypeVar("F")

TWO_REPS = TempoReps(Band.exactly(2), parse_tempo("2-1-1-0"))


def timeline_of(*exercises: Exercise) -> Timeline:
    return compile_timeline(Plan("Try-out", (Stage("One", StageKind.ACTIVATION, exercises),)))


def one(dose: Dose, sides: Sides = Sides.BOTH, sets: int = 1) -> Timeline:
    return timeline_of(Exercise("Heel raise", dose, sides=sides, sets=sets, rest_ms=30_000))


class Led:
    """A controller with a clock of its own that ticks four times a second, as a screen would."""

    def __init__(self, timeline: Timeline) -> None:
        self.controller = Controller(timeline)
        self.now = 1_000_000
        self.facts: list[Fact] = []

    def do(self, intent: Intent) -> tuple[Fact, ...]:
        _, facts = self.controller.handle(intent, self.now)
        self.facts.extend(facts)
        return facts

    def to(self, run_ms: int) -> "Led":
        while self.now < 1_000_000 + run_ms:
            self.now = min(self.now + 250, 1_000_000 + run_ms)
            self.do(Tick())
        return self

    def begin(self) -> "Led":
        self.do(Begin())
        return self

    def kinds(self) -> list[type]:
        return [type(fact) for fact in self.facts]

    def of(self, kind: type[F]) -> list[F]:
        return [fact for fact in self.facts if isinstance(fact, kind)]


def reps(facts: Iterable[RepDone]) -> list[tuple[int, int, int]]:
    return [(fact.rep, fact.start_ms, fact.at_ms) for fact in facts]


def test_a_two_rep_bout_runs_from_lead_in_to_finished_at_the_scheduled_moments() -> None:
    led = Led(one(TWO_REPS)).begin().to(14_000)
    assert led.facts == [
        RunBegan(0),
        BoutBegan(5_000, 0, 1),
        RepDone(9_000, 0, 1, 1, Side.BOTH, 5_000, 0),
        RepDone(13_000, 0, 1, 2, Side.BOTH, 9_000, 0),
        BoutEnded(13_000, 0, 1, BoutOutcome.DONE),
        RunEnded(13_000, RunOutcome.FINISHED),
    ]
    assert led.controller.over


def test_nothing_happens_before_ready() -> None:
    led = Led(one(TWO_REPS)).to(60_000)
    assert led.facts == []
    assert led.controller.state.stand is Stand.READY


def test_a_late_tick_catches_up_in_order_and_says_by_how_much() -> None:
    led = Led(one(TWO_REPS)).begin().to(8_250)
    led.now += 1_700
    (rep,) = led.do(Tick())
    assert isinstance(rep, RepDone)
    assert (rep.at_ms, rep.late_ms) == (9_000, 950)


def test_a_silence_of_more_than_two_seconds_pauses_where_the_clock_was_last_seen() -> None:
    led = Led(one(TWO_REPS)).begin().to(8_000)
    led.now += 2_001
    assert led.do(Tick()) == (Paused(8_000, PauseReason.INTERRUPTED),)


def test_a_silence_of_two_seconds_is_caught_up() -> None:
    led = Led(one(TWO_REPS)).begin().to(8_000)
    led.now += 2_000
    assert [type(fact) for fact in led.do(Tick())] == [RepDone]


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


def test_each_side_is_a_bout_of_its_own() -> None:
    led = Led(one(TWO_REPS, Sides.EACH)).begin().to(40_000)
    assert [fact.side for fact in led.of(RepDone)] == [Side.LEFT, Side.LEFT, Side.RIGHT, Side.RIGHT]


def test_alternating_sides_share_a_bout_and_count_for_themselves() -> None:
    led = Led(one(TWO_REPS, Sides.ALTERNATE)).begin().to(40_000)
    done = [(fact.rep, fact.side) for fact in led.of(RepDone)]
    assert done == [(1, Side.LEFT), (1, Side.RIGHT), (2, Side.LEFT), (2, Side.RIGHT)]


def test_a_hold_is_done_when_it_ends_and_not_after_the_relaxing() -> None:
    led = Led(one(HoldReps(Band.exactly(2), Band.exactly(4_000)))).begin().to(30_000)
    assert reps(led.of(RepDone)) == [(1, 5_000, 9_000), (2, 11_000, 15_000)]


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


def test_ending_a_bout_twice_ends_one() -> None:
    led = Led(one(TWO_REPS, sets=3)).begin().to(6_000)
    led.do(EndBout())
    assert led.do(EndBout()) == ()
    assert led.controller.state.bout == 1


def test_a_fault_belongs_to_the_rep_under_way_and_is_marked_once() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    assert led.do(MarkFault("knee caves in")) == (FaultMarked(10_000, 0, 1, 2, Side.BOTH, "knee caves in"),)
    assert led.do(MarkFault("knee caves in")) == ()
    assert led.do(MarkFault("heel lifts")) == (FaultMarked(10_000, 0, 1, 2, Side.BOTH, "heel lifts"),)


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
    assert [(fact.bout, fact.outcome, fact.reason) for fact in skipped if isinstance(fact, BoutEnded)] == [
        (0, BoutOutcome.SKIPPED, SkipReason.PAIN),
        (1, BoutOutcome.SKIPPED, SkipReason.PAIN),
        (2, BoutOutcome.SKIPPED, SkipReason.PAIN),
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


def test_a_bout_is_rated_only_when_it_is_over_and_also_after_the_run() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    assert led.do(RateBout(0, rpe=4)) == ()
    led.to(14_000)
    assert led.do(RateBout(0, rpe=4)) == (BoutRated(14_000, 0, 1, None, 4, None, None),)
    assert led.do(RateBout(7, rpe=4)) == ()


def test_the_session_rating_keeps_its_lag() -> None:
    led = Led(one(TWO_REPS)).begin().to(20_000)
    assert led.do(RateSession(5)) == (SessionRated(20_000, 5, 7_000),)


def test_a_clock_that_steps_back_stands_still() -> None:
    led = Led(one(TWO_REPS)).begin().to(10_000)
    led.now -= 5_000
    assert led.do(Tick()) == ()
    led.now += 5_000
    assert led.do(Tick()) == ()


def test_facts_are_numbered_without_a_gap() -> None:
    controller = Controller(one(TWO_REPS))
    numbered = [
        controller.handle(Begin(), 0),
        *(controller.handle(Tick(), now) for now in range(0, 14_000, 100)),
    ]
    count = 0
    for first, facts in numbered:
        assert first == count
        count += len(facts)
    assert count == 6


def test_a_rep_at_ones_own_pace_after_a_pause_begins_when_the_work_goes_on() -> None:
    led = Led(one(OwnPaceReps(Band.exactly(3)))).begin().to(10_000)
    led.do(CountRep())
    led.to(12_000).do(Pause())
    led.to(30_000).do(Resume())
    led.to(34_750)
    assert led.do(CountRep()) == (), "the lead-in is no work"
    led.to(37_000).do(CountRep())
    assert reps(led.of(RepDone)) == [(1, 5_000, 10_000), (2, 35_000, 37_000)]


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


def test_ending_a_hold_marked_as_missed_keeps_it_missed() -> None:
    led = Led(one(HoldReps(Band(1, 2), Band(3_000, 6_000)))).begin().to(9_000)
    led.do(MarkMissed())
    led.do(EndBout())
    assert led.of(RepMissed) == [RepMissed(9_000, 0, 1, 1, Side.BOTH)]
    assert led.of(RepDone) == []


def test_ending_a_bout_in_the_relaxing_after_a_hold_adds_no_rep() -> None:
    led = Led(one(HoldReps(Band(2, 3), Band(2_000, 4_000)))).begin().to(10_000)
    led.do(EndBout())
    assert reps(led.of(RepDone)) == [(1, 5_000, 9_000)]


def test_a_bout_left_in_the_middle_can_still_be_rated() -> None:
    led = Led(timeline_of(Exercise("Heel raise", TWO_REPS), Exercise("Hop", TWO_REPS))).begin().to(10_000)
    led.do(SkipExercise(SkipReason.PAIN))
    assert led.controller.state.last_bout == 0
    assert [type(fact) for fact in led.do(RateBout(0, pain=4))] == [BoutRated]


def test_leaving_out_the_sets_to_come_still_asks_about_the_one_before() -> None:
    led = Led(timeline_of(Exercise("Heel raise", TWO_REPS, sets=2), Exercise("Hop", TWO_REPS)))
    led.begin().to(20_000).do(SkipExercise(SkipReason.TIME))
    assert (led.controller.state.bout, led.controller.state.last_bout) == (2, 0)
    assert led.do(RedoBout()) == (), "what was left out is not done again"
