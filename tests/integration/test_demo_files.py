"""The demo data: plans a practitioner could show, for athletes who do not exist."""

from pathlib import Path

import pytest

from app.domain.compiler import compile_timeline
from app.domain.dose import HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Plan, Sides, StageKind
from app.planfile.reader import read_plan
from app.planfile.roster import read_roster
from app.planfile.roster_fit import unmatched

DEMO = Path(__file__).parents[2] / "demo_data"
NAMES = ("landing_control", "shoulder_rotators")
PLANS = {name: read_plan(DEMO / f"{name}.toml") for name in NAMES}
ROSTER = read_roster(DEMO / "roster.toml")
LADDER = (
    StageKind.ACTIVATION,
    StageKind.INTEGRATION,
    StageKind.STABILITY,
    StageKind.REACTIVE,
    StageKind.POWER,
)


def exercises(*plans: Plan) -> list[Exercise]:
    return [exercise for plan in plans for stage in plan.stages for exercise in stage.exercises]


@pytest.mark.parametrize("name", NAMES)
def test_each_plan_climbs_the_whole_ladder(name: str) -> None:
    assert tuple(stage.kind for stage in PLANS[name].stages) == LADDER


@pytest.mark.parametrize("name", NAMES)
def test_each_plan_fits_between_twenty_five_and_forty_minutes(name: str) -> None:
    minutes = compile_timeline(PLANS[name]).timed_ms / 60_000
    assert 25 <= minutes <= 38  # what is done at one's own pace comes on top


def test_together_they_show_every_form_of_dose_and_of_sides() -> None:
    shown = exercises(*PLANS.values())
    forms = {type(exercise.dose) for exercise in shown}
    assert forms == {TempoReps, HoldReps, StickReps, SignalReps, OwnPaceReps, WorkTime}
    assert {exercise.sides for exercise in shown} >= {Sides.BOTH, Sides.EACH, Sides.ALTERNATE}
    assert any(exercise.superset for exercise in shown)
    assert any(isinstance(exercise.dose, TempoReps) and exercise.dose.tempo.explosive for exercise in shown)


@pytest.mark.parametrize("name", NAMES)
def test_each_exercise_says_how_to_begin_and_what_to_mind(name: str) -> None:
    for exercise in exercises(PLANS[name]):
        assert exercise.setup
        assert exercise.cues
        assert exercise.faults


def test_twelve_athletes_have_something_of_their_own_only_for_exercises_there_are() -> None:
    names = "Anouk, Bram, Chidi, Dagny, Esra, Farid, Greta, Hugo, Ines, Jarno, Kaya, Lotte"
    assert ", ".join(athlete.name for athlete in ROSTER) == names
    for athlete in ROSTER:
        assert set.intersection(*(set(unmatched(athlete, plan)) for plan in PLANS.values())) == set()


def test_every_athlete_can_do_every_plan_within_the_hour() -> None:
    for athlete in ROSTER:
        for plan in PLANS.values():
            assert compile_timeline(plan, athlete).timed_ms < 3_600_000
