"""Whatever is pressed, whenever: a run keeps to its rules."""

from collections import Counter

from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind
from app.domain.records import (
    BoutEnded,
    BoutRated,
    Fact,
    PauseReason,
    RepDone,
    RepMissed,
    RunEnded,
    SessionRated,
    SkipReason,
)
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline, rep_windows
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
from app.run.snapshot import snapshot
from app.run.state import Stand

DOSES = (
    Exercise("a", TempoReps(Band(1, 2), parse_tempo("2-1-X-1")), sides=Sides.EACH, sets=2, rest_ms=0),
    Exercise("b", HoldReps(Band.exactly(2), Band(3_000, 4_000)), sides=Sides.ALTERNATE, superset="A"),
    Exercise("c", StickReps(Band.exactly(2), Band(3_000, 5_000)), superset="A", sets=2, rest_ms=12_000),
    Exercise("d", SignalReps(Band.exactly(3), 2_000), sides=Sides.LEFT),
    Exercise("e", OwnPaceReps(Band(2, 3)), sides=Sides.EACH),
    Exercise("f", WorkTime(Band.exactly(5_000))),
)
INTENTS: st.SearchStrategy[Intent] = st.one_of(
    st.sampled_from(
        [
            Tick(),
            Tick(),
            Tick(),
            Begin(),
            Pause(),
            Resume(),
            Resume(),
            CountRep(),
            CountRep(),
            MarkMissed(),
            EndBout(),
        ]
    ),
    st.sampled_from(
        [RedoBout(), BeginNow(), ExtendRest(), MarkFault(), MarkFault("x"), Pause(PauseReason.INTERRUPTED)]
    ),
    st.builds(SkipExercise, st.sampled_from(SkipReason), st.none(), st.none() | st.integers(-1, 30)),
    st.builds(RateBout, st.integers(-1, 20), st.none() | st.integers(0, 20), st.none() | st.integers(0, 10)),
    st.builds(RateSession, st.none() | st.integers(0, 10)),
)
MOMENTS = st.lists(st.tuples(INTENTS, st.integers(-500, 2_500)), min_size=20, max_size=120)
TIMELINE = compile_timeline(
    Plan(
        "All doses", (Stage("One", StageKind.ACTIVATION, DOSES[:2]), Stage("Two", StageKind.POWER, DOSES[2:]))
    )
)


def drive(timeline: Timeline, moments: list[tuple[Intent, int]]) -> tuple[Controller, list[Fact], int]:
    controller, now = Controller(timeline), 5_000
    facts: list[Fact] = []
    facts.extend(controller.handle(Begin(), now)[1])
    for intent, passed in moments:
        now += passed
        facts.extend(controller.handle(intent, now)[1])
        _assert_legal(controller, now)
    return controller, facts, now


def _assert_legal(controller: Controller, now: int) -> None:
    state, timeline = controller.state, controller.timeline
    bout = timeline.bouts[state.bout]
    assert 0 <= state.passed <= bout.high
    assert (state.pause is not None) == (state.stand is Stand.PAUSED)
    assert (state.outcome is None) == (state.stand is not Stand.ENDED)
    if state.stand is not Stand.ENDED:
        assert (bout.stage, bout.exercise) not in state.skipped
        assert state.work_from_ms <= (bout.work_ms or 0)
    shown = snapshot(timeline, state, max(now, state.seen_ms))
    assert shown.left_ms >= 0
    assert shown.phase_left_ms is None or shown.phase_left_ms > 0 or state.stand is Stand.ENDED
    assert shown.gap_left_ms is None or shown.gap_left_ms > 0
    assert shown.rep <= max(shown.reps, 1)


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
    assert all(isinstance(fact, BoutRated | SessionRated) for fact in facts[end + 1 :])


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
