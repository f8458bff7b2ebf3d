"""The order of stages: locked, free, left out, taken up again."""

from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.compiler import compile_timeline
from app.domain.plan import Exercise, Plan, Stage, StageKind, StageOrder
from app.domain.records import BoutBegan, BoutChosen, BoutEnded, BoutOutcome, RunEnded, RunOutcome, SkipReason
from app.domain.timeline import Timeline
from app.run.intents import GoToStage, Intent, Pause, RedoBout, Resume, SkipExercise, SkipStage
from app.run.order import Rung, ladder
from app.run.restore import restore
from app.run.snapshot import snapshot
from app.run.state import Stand
from tests.driven import MOMENTS, TIMELINE, drive
from tests.led import TWO_REPS, Led

CLOSED = (BoutOutcome.DONE, BoutOutcome.ENDED_EARLY, BoutOutcome.SKIPPED)


def three_stages(order: StageOrder, sets: int = 1) -> Timeline:
    stages = [
        Stage(name, StageKind.ACTIVATION, (Exercise(name + " raise", TWO_REPS, sets=sets, rest_ms=30_000),))
        for name in ("First", "Second", "Third")
    ]
    return compile_timeline(Plan("Try-out", tuple(stages), order=order))


def rungs(led: Led) -> list[Rung]:
    return list(ladder(led.controller.timeline, led.controller.state))


@given(MOMENTS)
@settings(max_examples=150)
def test_no_bout_of_a_later_stage_begins_before_the_earlier_stages_are_done_or_left_out(
    moments: list[tuple[Intent, int]],
) -> None:
    _, facts, _ = drive(TIMELINE, moments)
    closed: set[int] = set()
    for fact in facts:
        if isinstance(fact, BoutEnded) and fact.outcome in CLOSED:
            closed.add(fact.bout)
        if isinstance(fact, BoutBegan):
            stage = TIMELINE.bouts[fact.bout].stage
            earlier = {bout.index for bout in TIMELINE.bouts if bout.stage < stage}
            assert earlier <= closed


def test_a_locked_plan_offers_no_other_stage() -> None:
    led = Led(three_stages(StageOrder.LOCKED)).begin().to(6_000)
    led.do(Pause())
    assert rungs(led) == [Rung.HERE, Rung.LOCKED, Rung.LOCKED]
    assert snapshot(led.controller.timeline, led.controller.state, led.now).choices == ()
    assert led.do(GoToStage(1)) == ()


def test_a_stage_is_left_out_with_its_reason_bout_by_bout_and_the_next_one_opens() -> None:
    led = Led(three_stages(StageOrder.LOCKED, sets=2)).begin().to(6_000)
    left_out = led.do(SkipStage(SkipReason.EQUIPMENT, "no bands"))
    assert [fact for fact in left_out if isinstance(fact, BoutEnded)] == [
        BoutEnded(6_000, bout, 1, BoutOutcome.SKIPPED, SkipReason.EQUIPMENT, "no bands") for bout in (0, 1)
    ]
    assert rungs(led) == [Rung.BEHIND, Rung.HERE, Rung.LOCKED]
    led.do(SkipStage(SkipReason.TIME))
    led.do(SkipStage(SkipReason.TIME))
    assert led.facts[-1] == RunEnded(6_000, RunOutcome.FINISHED)


def test_in_a_free_plan_another_stage_is_gone_to_from_the_pause_and_the_first_is_come_back_to() -> None:
    led = Led(three_stages(StageOrder.FREE)).begin().to(6_000)
    led.do(Pause())
    assert rungs(led) == [Rung.HERE, Rung.OPEN, Rung.OPEN]
    assert led.do(GoToStage(2)) == (
        BoutEnded(6_000, 0, 1, BoutOutcome.BROKEN_OFF),
        BoutChosen(6_000, 2),
    )
    assert led.do(GoToStage(2)) == (), "the same key twice is one choice"
    assert led.controller.state.stand is Stand.PAUSED
    led.do(Resume())
    led.to(200_000)
    assert [(fact.bout, fact.attempt) for fact in led.of(BoutBegan)] == [(0, 1), (2, 1), (0, 2), (1, 1)]
    assert led.facts[-1] == RunEnded(led.facts[-1].at_ms, RunOutcome.FINISHED)


def test_a_crash_after_choosing_a_stage_comes_back_to_that_stage() -> None:
    led = Led(three_stages(StageOrder.FREE)).begin().to(6_000)
    led.do(GoToStage(1))
    after = restore(led.controller.timeline, led.facts, 0)
    assert (after.bout, after.begun, after.attempts) == (1, False, (1, 0, 0))


def test_what_is_done_in_a_free_plan_is_not_offered_again() -> None:
    led = Led(three_stages(StageOrder.FREE)).begin().to(20_000)
    assert led.controller.state.bout == 1
    assert led.do(GoToStage(0)) == ()
    assert rungs(led) == [Rung.BEHIND, Rung.HERE, Rung.OPEN]


def test_leaving_out_an_exercise_of_which_nothing_is_left_is_written_and_outlives_a_crash() -> None:
    led = Led(three_stages(StageOrder.LOCKED)).begin().to(20_000)
    written = led.do(SkipExercise(SkipReason.PAIN, "sharp", bout=0))
    assert written == (BoutEnded(20_000, 0, 2, BoutOutcome.SKIPPED, SkipReason.PAIN, "sharp"),)
    assert led.do(SkipExercise(SkipReason.PAIN, "sharp", bout=0)) == ()
    after = restore(led.controller.timeline, led.facts, 0)
    for state in (led.controller.state, after):
        assert (state.bout, state.skipped, state.last_bout) == (1, frozenset({(0, 0)}), None)
    assert led.do(RedoBout()) == ()


@given(st.integers(-2, 5))
def test_a_stage_that_is_not_there_is_not_gone_to(stage: int) -> None:
    led = Led(three_stages(StageOrder.FREE)).begin().to(6_000)
    assert bool(led.do(GoToStage(stage))) == (stage in (1, 2))
