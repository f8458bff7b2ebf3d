"""The shape of a bout: lowering slopes down, a hold is flat, lifting slopes up, a landing drops and stays."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Plan, Stage, StageKind
from app.domain.profile import HIGH, LANDED, LOW, Stroke, height_at, profile_of
from app.domain.tempo import Phase, parse_tempo


def strokes_of(dose: Dose) -> tuple[Stroke, ...]:
    exercise = Exercise("Any", dose)
    (bout,) = compile_timeline(Plan("Try-out", (Stage("One", StageKind.OTHER, (exercise,)),))).bouts
    return profile_of(bout, exercise)


SLOW = strokes_of(TempoReps(Band.exactly(2), parse_tempo("3-1-2-1")))


@pytest.mark.parametrize(
    ("at_ms", "height"),
    [
        (0, 1.0),
        (1_500, 0.5),
        (3_000, 0.0),
        (3_900, 0.0),
        (5_000, 0.5),
        (6_000, 1.0),
        (7_000, 1.0),
        (8_500, 0.5),
    ],
)
def test_position_follows_the_tempo(at_ms: int, height: float) -> None:
    assert height_at(SLOW, at_ms) == pytest.approx(height)


def test_position_is_level_before_and_after() -> None:
    assert height_at(SLOW, -4_000) == HIGH
    assert height_at(SLOW, 99_000) == HIGH


def test_an_x_phase_is_explosive_and_its_neighbours_are_not() -> None:
    strokes = strokes_of(TempoReps(Band.exactly(1), parse_tempo("3-1-X-0")))
    assert [(stroke.phase, stroke.explosive) for stroke in strokes] == [
        (Phase.ECCENTRIC, False),
        (Phase.HOLD_LENGTHENED, False),
        (Phase.CONCENTRIC, True),
    ]


def test_a_landing_drops_and_stays() -> None:
    move, stick = strokes_of(StickReps(Band.exactly(1), Band(3_000, 5_000)))
    assert height_at((move, stick), 1_999) > 0.9
    assert height_at((move, stick), 2_001) == LANDED
    assert stick.points == ((2_000, LANDED), (7_000, LANDED))
    assert stick.mark_ms == 5_000


def test_own_pace_has_no_shape() -> None:
    assert strokes_of(OwnPaceReps(Band.exactly(3))) == ()


@pytest.mark.parametrize(
    "dose",
    [
        HoldReps(Band.exactly(2), Band.exactly(300), relax_ms=100),
        SignalReps(Band.exactly(2), 100),
        WorkTime(Band.exactly(100)),
        StickReps(Band.exactly(2), Band.exactly(100), move_ms=100, reset_ms=0),
    ],
)
def test_the_shortest_phases_keep_their_points_in_order(dose: Dose) -> None:
    for stroke in strokes_of(dose):
        moments = [moment for moment, _ in stroke.points]
        assert moments == sorted(moments)
        assert (moments[0], moments[-1]) == (stroke.start_ms, stroke.end_ms)


@given(st.floats(-1e6, 1e6))
def test_position_never_leaves_its_range(at_ms: float) -> None:
    assert LOW <= height_at(SLOW, at_ms) <= HIGH
