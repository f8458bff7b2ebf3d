"""A run taken up from its facts stands where it stood."""

from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.compiler import compile_timeline
from app.domain.plan import Plan, Stage, StageKind
from app.domain.records import PauseReason, RepDone, RunEnded, RunOutcome
from app.domain.timeline import Timeline
from app.run.controller import Controller
from app.run.intents import Begin, Intent, Pause, Resume, Tick
from app.run.order import left_of
from app.run.restore import restore
from app.run.state import Stand
from tests.driven import DOSES, FREE, MOMENTS, TIMELINE, drive


@given(st.sampled_from([TIMELINE, FREE]), MOMENTS)
@settings(max_examples=300)
def test_it_stands_where_a_pause_would_have_left_it(
    timeline: Timeline, moments: list[tuple[Intent, int]]
) -> None:
    controller, facts, now = drive(timeline, moments)
    controller.handle(Pause(), max(now, controller.state.seen_ms))
    before = controller.state
    after = restore(timeline, facts, now_ms=77_000)
    assert (after.stand, after.outcome) == (before.stand, before.outcome)
    assert after.skipped == before.skipped
    assert after.over == before.over
    assert left_of(timeline, after) == left_of(timeline, before)
    assert after.faults == before.faults
    assert after.attempts == before.attempts
    waits_for_a_redo = not before.begun and before.attempts[before.bout] > 0
    if before.stand is Stand.PAUSED and not waits_for_a_redo:
        assert (after.bout, after.begun) == (before.bout, before.begun)
        assert (after.passed, after.not_done) == (before.passed, before.not_done)
        assert after.last_bout == before.last_bout
        assert after.work_from_ms == before.work_from_ms
        assert after.pause is PauseReason.INTERRUPTED


def test_the_runs_own_time_goes_on_from_its_last_fact() -> None:
    timeline = compile_timeline(Plan("Timed", (Stage("One", StageKind.ACTIVATION, DOSES[:1]),)))
    first, now = Controller(timeline), 0
    facts = list(first.handle(Begin(), now)[1])
    while not any(isinstance(fact, RepDone) for fact in facts):
        now += 250
        facts.extend(first.handle(Tick(), now)[1])
    second = Controller(timeline, restore(timeline, facts, now_ms=500_000), len(facts))
    number, resumed = second.handle(Resume(), 501_000)
    assert number == len(facts)
    assert resumed[0].at_ms == facts[-1].at_ms + 1_000
    now = 501_000
    while not second.over:
        now += 500
        resumed = (*resumed, *second.handle(Tick(), now)[1])
    done = [(fact.bout, fact.rep) for fact in (*facts, *resumed) if isinstance(fact, RepDone)]
    assert len(done) == len(set(done)) == 8
    assert isinstance(resumed[-1], RunEnded)
    assert resumed[-1].outcome is RunOutcome.FINISHED
