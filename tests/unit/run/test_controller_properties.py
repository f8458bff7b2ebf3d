"""Whatever is pressed, whenever: a run keeps to its rules."""

from collections import Counter

from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.compiler import compile_timeline
from app.domain.plan import Plan, Stage, StageKind
from app.domain.records import (
    BoutEnded,
    BoutRated,
    FaultMarked,
    LoadUsed,
    RepDone,
    RepMissed,
    RunEnded,
    SessionRated,
    TakenBack,
)
from app.domain.timeline import rep_windows
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    CountRep,
    Intent,
    RateSession,
    Resume,
    Stop,
    Tick,
)
from app.run.state import Stand
from tests.driven import DOSES, MOMENTS, TIMELINE, drive


@given(MOMENTS)
@settings(max_examples=150)
def test_every_state_is_legal_and_no_rep_is_recorded_twice(moments: list[tuple[Intent, int]]) -> None:
    _, facts, _ = drive(TIMELINE, moments)
    passed = [fact for fact in facts if isinstance(fact, RepDone | RepMissed)]
    once = Counter((fact.bout, fact.attempt, fact.rep, fact.side) for fact in passed)
    assert not [key for key, count in once.items() if count > 1]
    ends = Counter((fact.bout, fact.attempt) for fact in facts if isinstance(fact, BoutEnded))
    assert not [key for key, count in ends.items() if count > 1]


@given(MOMENTS)
@settings(max_examples=150)
def test_facts_come_in_the_order_of_time_and_stop_when_the_run_ends(
    moments: list[tuple[Intent, int]],
) -> None:
    _, facts, _ = drive(
        TIMELINE, [*moments, (Stop(), 10), (Tick(), 500), (CountRep(), 5), (RateSession(3), 5)]
    )
    times = [fact.at_ms for fact in facts]
    assert times == sorted(times)
    end = next(index for index, fact in enumerate(facts) if isinstance(fact, RunEnded))
    said = BoutRated | LoadUsed | FaultMarked | TakenBack | SessionRated
    assert all(isinstance(fact, said) for fact in facts[end + 1 :])


@given(MOMENTS)
@settings(max_examples=100)
def test_no_rest_and_no_pause_is_without_an_end(moments: list[tuple[Intent, int]]) -> None:
    controller, _, now = drive(TIMELINE, moments)
    now = max(now, controller.state.seen_ms)
    for _ in range(4_000):
        if controller.over:
            break
        now += 1_000
        counting = controller.timeline.bouts[controller.state.bout].open_ended
        going_on = Resume() if controller.state.stand is Stand.PAUSED else CountRep() if counting else Tick()
        controller.handle(going_on, now)
    assert controller.over


@given(st.lists(st.integers(1, 2_000), min_size=1, max_size=600))
@settings(max_examples=60)
def test_the_rhythm_of_ticks_changes_nothing_but_the_lateness(steps: list[int]) -> None:
    timeline = compile_timeline(Plan("Timed", (Stage("One", StageKind.ACTIVATION, (*DOSES[:4], DOSES[5])),)))
    controller, now = Controller(timeline), 0
    facts = list(controller.handle(Begin(), now)[1])
    for step in [*steps, *[1_000] * 400]:
        now += step
        facts.extend(controller.handle(Tick(), now)[1])
    assert controller.over
    ends = [fact for fact in facts if isinstance(fact, BoutEnded)]
    start = 0
    for bout, end in zip(timeline.bouts, ends, strict=True):
        start += bout.before_ms
        done = [fact.at_ms for fact in facts if isinstance(fact, RepDone) and fact.bout == bout.index]
        assert done == [start + window.done_ms for window in rep_windows(bout)]
        start += bout.work_ms or 0
        assert end.at_ms == start
    assert facts[-1].at_ms == timeline.timed_ms
