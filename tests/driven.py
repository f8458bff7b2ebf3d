"""A run driven by any intents at any moments, and what must hold at each of them."""

import random
from decimal import Decimal

from hypothesis import strategies as st

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Plan, Side, Sides, Stage, StageKind, StageOrder
from app.domain.records import (
    Fact,
    PauseReason,
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
    GoToStage,
    Intent,
    MarkFault,
    MarkMissed,
    Pause,
    RateBout,
    RateSession,
    RedoBout,
    Resume,
    SkipExercise,
    SkipStage,
    TakeBack,
    Tick,
)
from app.run.snapshot import snapshot
from app.run.state import RepMark, Stand

DOSES = (
    Exercise(
        "a",
        TempoReps(Band(1, 2), parse_tempo("2-1-X-1")),
        sides=Sides.EACH,
        sets=2,
        rest_ms=0,
        load_kg=Decimal("7.5"),
        faults=("x", "y"),
    ),
    Exercise("b", HoldReps(Band.exactly(2), Band(3_000, 4_000)), sides=Sides.ALTERNATE, superset="A"),
    Exercise("c", StickReps(Band.exactly(2), Band(3_000, 5_000)), superset="A", sets=2, rest_ms=12_000),
    Exercise("d", SignalReps(Band.exactly(3), 2_000), sides=Sides.LEFT),
    Exercise("e", OwnPaceReps(Band(2, 3)), sides=Sides.EACH),
    Exercise("f", WorkTime(Band.exactly(5_000))),
)
COMMON: tuple[Intent, ...] = (
    *[Tick()] * 8,
    *[CountRep()] * 3,
    *[Resume()] * 4,
    Begin(),
    Pause(),
    MarkMissed(),
    EndBout(),
    RedoBout(),
    BeginNow(),
    BeginNow(),
    ExtendRest(),
    MarkFault(),
    MarkFault("x"),
    TakeBack(),
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
        [
            RedoBout(),
            BeginNow(),
            ExtendRest(),
            MarkFault(),
            MarkFault("x"),
            TakeBack(),
            Pause(PauseReason.INTERRUPTED),
        ]
    ),
    st.builds(
        MarkFault,
        st.sampled_from(["x", "y"]),
        st.builds(RepMark, st.integers(-1, 15), st.integers(0, 2), st.integers(0, 4), st.sampled_from(Side)),
    ),
    st.builds(SkipStage, st.sampled_from(SkipReason)),
    st.builds(GoToStage, st.integers(-1, 3)),
    st.builds(SkipExercise, st.sampled_from(SkipReason), st.none(), st.none() | st.integers(-1, 30)),
    st.builds(
        RateBout,
        st.integers(-1, 20),
        st.none() | st.integers(0, 20),
        st.none() | st.integers(0, 10),
        load_kg=st.none() | st.just("12.5"),
        attempt=st.none() | st.integers(0, 3),
    ),
    st.builds(RateSession, st.none() | st.integers(0, 10)),
)
MOMENTS = st.lists(
    st.tuples(INTENTS | st.just(Tick()), st.integers(-500, 2_500) | st.just(2_000)), min_size=20, max_size=160
)
STAGES = (Stage("One", StageKind.ACTIVATION, DOSES[:2]), Stage("Two", StageKind.POWER, DOSES[2:]))
TIMELINE = compile_timeline(Plan("All doses", STAGES))
FREE = compile_timeline(
    Plan(
        "All doses, in any order",
        (*STAGES[:1], *(Stage(dose.name, StageKind.POWER, (dose,)) for dose in DOSES[3:])),
        order=StageOrder.FREE,
    )
)


def drive(timeline: Timeline, moments: list[tuple[Intent, int]]) -> tuple[Controller, list[Fact], int]:
    controller, now = Controller(timeline), 5_000
    facts: list[Fact] = []
    facts.extend(controller.handle(Begin(), now)[1])
    for intent, passed in moments:
        now += passed
        facts.extend(controller.handle(intent, now)[1])
        assert_legal(controller, now)
    return controller, facts, now


USUAL, ODD = (250, 700, 1_900, 2_000), (0, 1, 16, 2_001, 60_000, -400)


def random_intent(chance: random.Random) -> Intent:  # noqa: PLR0911 - one a kind
    """Any intent, the common ones more often; now and then one that makes no sense."""
    kind = chance.random()
    if kind < 0.6:
        return chance.choice((Tick(), Tick(), Resume(), CountRep()))
    if kind < 0.8:
        return chance.choice(COMMON)
    if kind < 0.9:
        pain, reps = chance.choice([None, *range(11)]), chance.choice([None, 0, 3, 200])
        return RateBout(chance.randint(-1, 20), reps, chance.choice([None, 4, 10]), pain)
    if kind < 0.905:
        return SkipExercise(chance.choice(list(SkipReason)), None, chance.choice([None, -1, 2, 30]))
    if kind < 0.906:
        return SkipStage(chance.choice(list(SkipReason)))
    if kind < 0.92:
        return GoToStage(chance.randint(-1, 4))
    return RateSession(chance.choice([None, 0, 7]))


def drive_randomly(timeline: Timeline, chance: random.Random, count: int) -> list[Fact]:
    """A run driven by so many random intents at random moments, its state checked after each."""
    moments = [
        (random_intent(chance), chance.choice(ODD if chance.random() < 0.1 else USUAL)) for _ in range(count)
    ]
    return drive(timeline, moments)[1]


def assert_legal(controller: Controller, now: int) -> None:
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
