"""What the athlete's screen says of a moment."""

import pytest

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose, OwnPaceReps, TempoReps
from app.domain.plan import Exercise, Plan, Side, Sides, Stage, StageKind
from app.domain.records import SkipReason
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline
from app.run.controller import Controller
from app.run.intents import Begin, CountRep, Intent, Pause, SkipExercise, Tick
from app.run.snapshot import Snapshot, snapshot
from app.views.athlete.wording import headline, next_line, paused_line
from app.views.theme import Place, choose

THREE_REPS = TempoReps(Band.exactly(3), parse_tempo("2-1-1-0"))
SCHEME = choose(Place.TRAINING)


def timeline_of(*exercises: Exercise) -> Timeline:
    return compile_timeline(Plan("Try-out", (Stage("One", StageKind.ACTIVATION, exercises),)))


def shown_after(timeline: Timeline, *led: tuple[int, Intent]) -> Snapshot:
    """The run as it stands after these intents at these moments, ticks between them."""
    controller, now = Controller(timeline), 0
    controller.handle(Begin(), now)
    for at_ms, intent in led:
        while now < at_ms:
            now = min(now + 500, at_ms)
            controller.handle(Tick(), now)
        controller.handle(intent, now)
    return snapshot(timeline, controller.state, now)


@pytest.mark.parametrize(
    ("dose", "led", "to_do"),
    [
        (THREE_REPS, ((1_000, Tick()),), "3 to do"),
        (THREE_REPS, ((10_000, Pause()),), "2 to do"),
        (OwnPaceReps(Band(2, 5)), ((7_000, CountRep()), (8_000, Pause())), "4 to do"),
    ],
)
def test_the_lead_in_says_how_many_reps_are_still_to_be_done(
    dose: Dose, led: tuple[tuple[int, Intent], ...], to_do: str
) -> None:
    shown = shown_after(timeline_of(Exercise("Heel raise", dose)), *led)
    assert headline(shown, SCHEME).of_text == to_do


def test_what_comes_next_is_never_what_is_left_out() -> None:
    pair = [Exercise(name, THREE_REPS, sets=2, superset="A", rest_ms=30_000) for name in ("Row", "Press")]
    shown = shown_after(timeline_of(*pair), (6_000, SkipExercise(SkipReason.EQUIPMENT, bout=1)))
    assert next_line(shown) == "next: 3, after 30 s"
    over = shown_after(
        timeline_of(*pair[:1], Exercise("Hop", THREE_REPS)), (0, SkipExercise(SkipReason.TIME))
    )
    assert next_line(over) == "last bout of the session"


def test_a_pause_says_at_which_rep_of_which_side_it_goes_on() -> None:
    lunge = Exercise("Lunge", THREE_REPS, sides=Sides.ALTERNATE)
    shown = shown_after(timeline_of(lunge), (10_000, Pause()))
    assert shown.side is Side.RIGHT
    assert paused_line(shown) == "Goes on with rep 1 of 3, right side, after 5 s to get ready."
