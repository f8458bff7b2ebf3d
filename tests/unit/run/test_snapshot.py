"""What a screen is told of a run at one moment."""

from operator import itemgetter

import pytest

from app.domain.dose import Band, HoldReps, OwnPaceReps, TempoReps
from app.domain.plan import Side, Sides
from app.domain.records import SkipReason
from app.domain.tempo import Phase, parse_tempo
from app.domain.timeline import SpanKind, Timeline
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    CountRep,
    ExtendRest,
    Intent,
    MarkFault,
    MarkMissed,
    Pause,
    RedoBout,
    SkipExercise,
    Stop,
    Tick,
)
from app.run.snapshot import Snapshot, reps_to_a_side, snapshot, span_at
from app.run.state import Doing, Stand
from tests.bouts import exercise, timeline_of

A_SECOND = 1_000
LEAD_IN = 5_000
REP = 6_000
SIDE_CHANGE = 8_000
EACH = timeline_of(
    exercise(TempoReps(Band.exactly(2), parse_tempo("3-1-2-0")), sides=Sides.EACH, cues=("Knee out", "Tall"))
)
WORK = 2 * REP
ALL = LEAD_IN + WORK + SIDE_CHANGE + WORK


def shown(timeline: Timeline, at_ms: int, *intents: tuple[int, Intent]) -> Snapshot:
    """The snapshot so long after 'ready', other intents at their moments before it."""
    controller = Controller(timeline)
    ticks = [(moment, Tick()) for moment in (*range(0, at_ms, A_SECOND), at_ms)]
    for moment, intent in sorted([(0, Begin()), *intents, *ticks], key=itemgetter(0)):
        controller.handle(intent, moment)
    return snapshot(timeline, controller.state, at_ms)


def test_before_the_run_all_of_it_is_left() -> None:
    controller = Controller(EACH)
    before = snapshot(EACH, controller.state, 123)
    assert (before.stand, before.left_ms, before.phase) == (Stand.READY, ALL, None)


def test_in_the_lead_in_the_countdown_is_what_is_left_of_it() -> None:
    now = shown(EACH, 1_200)
    assert (now.doing, now.gap_left_ms, now.gap_all_ms) == (Doing.LEAD_IN, 3_800, LEAD_IN)
    assert (now.phase, now.phase_left_ms, now.left_ms) == (None, None, ALL - 1_200)


@pytest.mark.parametrize(
    ("into", "phase", "left", "rep"),
    [
        (0, Phase.ECCENTRIC, 3_000, 1),
        (2_999, Phase.ECCENTRIC, 1, 1),
        (3_000, Phase.HOLD_LENGTHENED, 1_000, 1),
        (4_000, Phase.CONCENTRIC, 2_000, 1),
        (REP, Phase.ECCENTRIC, 3_000, 2),
        (WORK - 1, Phase.CONCENTRIC, 1, 2),
    ],
)
def test_in_the_work_phase_seconds_and_count_are_those_of_the_moment(
    into: int, phase: Phase, left: int, rep: int
) -> None:
    now = shown(EACH, LEAD_IN + into)
    assert (now.phase, now.phase_left_ms, now.rep, now.reps) == (phase, left, rep, 2)
    assert (now.side, now.doing, now.local_ms) == (Side.LEFT, Doing.WORK, into)
    assert now.left_ms == ALL - LEAD_IN - into


def test_between_the_sides_the_gap_and_the_side_to_come_are_shown() -> None:
    now = shown(EACH, LEAD_IN + WORK + 1_000)
    assert (now.doing, now.gap_kind, now.gap_left_ms) == (
        Doing.GAP,
        SpanKind.SIDE_CHANGE,
        SIDE_CHANGE - 1_000,
    )
    assert (now.side, now.last_bout) == (Side.RIGHT, 0)


def test_sides_that_alternate_are_counted_to_a_side_each() -> None:
    timeline = timeline_of(exercise(HoldReps(Band.exactly(2), Band.exactly(4_000)), sides=Sides.ALTERNATE))
    assert reps_to_a_side(timeline.bouts[0]) == 2
    seen = [shown(timeline, LEAD_IN + step * REP) for step in range(4)]
    assert [(now.rep, now.side) for now in seen] == [
        (1, Side.LEFT),
        (1, Side.RIGHT),
        (2, Side.LEFT),
        (2, Side.RIGHT),
    ]


def test_at_ones_own_pace_there_are_no_seconds_left_and_the_count_is_what_was_counted() -> None:
    timeline = timeline_of(exercise(OwnPaceReps(Band.exactly(5))))
    now = shown(timeline, LEAD_IN + 9_000, (LEAD_IN + 2_000, CountRep()), (LEAD_IN + 4_000, CountRep()))
    assert (now.phase, now.phase_left_ms, now.rep, now.reps) == (Phase.OWN, None, 2, 5)
    assert (now.left_ms, now.left_open) == (0, True)


def test_in_a_pause_time_stands_still() -> None:
    paused = (LEAD_IN + 1_000, Pause())
    first, later = shown(EACH, LEAD_IN + 1_500, paused), shown(EACH, LEAD_IN + 60_000, paused)
    assert first.stand is Stand.PAUSED
    assert (first.local_ms, first.left_ms) == (later.local_ms, later.left_ms)


def test_marks_are_those_of_the_rep_under_way() -> None:
    marks = ((LEAD_IN + 500, MarkFault("knee in")), (LEAD_IN + 700, MarkMissed()))
    assert shown(EACH, LEAD_IN + 1_000, *marks).marked == ("knee in",)
    assert shown(EACH, LEAD_IN + 1_000, *marks).missed
    after = shown(EACH, LEAD_IN + REP + 1_000, *marks)
    assert (after.marked, after.missed) == ((), False)


def test_nothing_is_left_of_a_run_that_was_stopped() -> None:
    now = shown(EACH, LEAD_IN + 2_000, (LEAD_IN + 1_000, Stop()))
    assert (now.stand, now.left_ms) == (Stand.ENDED, 0)


def test_a_position_before_or_after_the_work_has_the_phase_at_that_end() -> None:
    bout = EACH.bouts[0]
    assert span_at(bout, -1) is bout.work[0]
    assert span_at(bout, WORK + 1) is bout.work[-1]


def test_what_follows_and_what_is_left_pass_over_what_is_left_out() -> None:
    dose = TempoReps(Band.exactly(2), parse_tempo("3-1-2-0"))
    pair = [exercise(dose, name, superset="A", sets=2, rest_ms=30_000) for name in ("Row", "Press")]
    timeline = timeline_of(*pair, exercise(OwnPaceReps(Band.exactly(5))))
    whole = shown(timeline, LEAD_IN)
    assert (whole.following, whole.left_open) == (timeline.bouts[1], True)
    without = (
        (LEAD_IN, SkipExercise(SkipReason.EQUIPMENT, bout=1)),
        (LEAD_IN, SkipExercise(SkipReason.TIME, bout=4)),
    )
    now = shown(timeline, LEAD_IN, *without)
    assert (now.following, now.left_open) == (timeline.bouts[2], False)
    assert now.left_ms == WORK + timeline.bouts[2].before_ms + WORK


def test_nothing_follows_when_the_rest_is_left_out() -> None:
    now = shown(EACH, LEAD_IN + WORK + SIDE_CHANGE)
    assert (now.bout.index, now.following) == (1, None)


def test_a_rest_made_longer_is_longer_as_a_whole() -> None:
    begun = LEAD_IN + WORK
    now = shown(EACH, begun + 1_000)
    assert (now.gap_left_ms, now.gap_all_ms) == (SIDE_CHANGE - 1_000, SIDE_CHANGE)
    longer = shown(EACH, begun + 1_000, (begun + 500, ExtendRest()))
    assert (longer.gap_left_ms, longer.gap_all_ms) == (SIDE_CHANGE + 14_000, SIDE_CHANGE + 15_000)


def test_marks_of_an_attempt_that_was_broken_off_are_not_those_of_the_next() -> None:
    marked = (LEAD_IN + 500, MarkFault("knee in"))
    again = (LEAD_IN + 1_000, RedoBout())
    assert shown(EACH, LEAD_IN + 1_000 + LEAD_IN + 500, marked, again).marked == ()
