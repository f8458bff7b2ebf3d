"""The run as a state machine, on small plans and hand-made clock times."""

from app.domain.dose import Band, HoldReps
from app.domain.plan import Side, Sides
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    Paused,
    PauseReason,
    RepDone,
    RunBegan,
    RunEnded,
    RunOutcome,
)
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    Tick,
)
from app.run.state import Stand
from tests.led import TWO_REPS, Led, one, reps


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
