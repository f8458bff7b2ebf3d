"""Figures of progression show what they rest on, and signs that cannot be read say why."""

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

import pytest

from app.analysis.figure import Figure
from app.analysis.figures_progression import ExerciseSigns, exercise_signs, progression_figures
from app.analysis.progression import Reached
from app.domain.dose import DoseKind
from app.domain.plan import Side
from app.domain.reviewed import ExerciseDone, SetDone
from tests.exercised import exercise_done, season_of_sets
from tests.reviewed import MONDAY, TODAY, record

EARLIER = MONDAY - timedelta(days=3)


def signs(*sessions: ExerciseDone) -> ExerciseSigns:
    """Those of the only exercise; its sessions the latest first."""
    (found,) = exercise_signs(record(exercises=sessions))
    return found


def given(figure: Figure) -> dict[str, object]:
    return dict(figure.inputs)


def test_the_last_session_stands_with_its_sets_and_the_range_asked_for() -> None:
    found = signs(exercise_done((12, None, 11)))
    assert (found.load.value, found.reps.value, found.reps.n) == (4, 11, 1)
    assert given(found.reps) == {
        "day": "2026-11-16",
        "reps by set": "12 – 11",
        "reps asked for by set": "8-12",
        "load by set, kg": "4 4 4",
    }
    assert found.reps.of == "exercise: External rotation; side: left"


def test_a_last_set_that_nobody_counted_is_unknown_and_not_nought() -> None:
    found = signs(exercise_done((12, None)))
    assert (found.reps.value, found.reps.n) == (None, 0)
    assert found.reps.reason == "How many reps were done in the last set is unknown."
    assert signs(exercise_done((12, 0))).reps.value == 0


def test_two_for_two_is_seen_in_two_sessions_running_and_shows_both() -> None:
    found = signs(exercise_done((14,)), exercise_done((15,), day=EARLIER)).two_for_two
    assert (found.value, found.n, found.unit) == (1, 2, "yes or no")
    assert given(found) == {
        "most reps asked for": 12,
        "load of the last set, kg": 4,
        "2026-11-13": 15,
        "2026-11-16": 14,
    }
    assert signs(exercise_done((14,)), exercise_done((13,), day=EARLIER)).two_for_two.value == 0
    assert signs(exercise_done((14,)), exercise_done((0,), day=EARLIER)).two_for_two.value == 0


@pytest.mark.parametrize(
    "before",
    [
        exercise_done((14,), day=EARLIER, load="3.5"),
        exercise_done((14,), day=EARLIER, load=None),
        exercise_done((14,), day=EARLIER, asked=(8, 11)),
        exercise_done((None,), day=EARLIER),
    ],
)
def test_a_session_with_another_load_or_goal_or_unknown_reps_makes_no_pair(before: ExerciseDone) -> None:
    found = signs(exercise_done((14,)), before, exercise_done((14,), day=EARLIER - timedelta(days=3)))
    assert found.two_for_two.value is None
    assert found.two_for_two.reason is not None
    assert found.two_for_two.reason.startswith("The last two sessions with this load")


def test_an_unknown_load_is_named_beside_the_sign() -> None:
    found = signs(exercise_done((14,), load=None), exercise_done((14,), day=EARLIER, load=None))
    assert (found.two_for_two.value, found.two_for_two.unknown) == (1, ("load of the last set, kg",))
    assert (found.load.value, found.load.reason) == (None, "No load was said or planned.")
    assert [step.value for step in found.steps] == [None, None]


def test_the_top_of_the_range_is_reached_by_every_set() -> None:
    for reps, value, reached in (
        ((12, 12, 12), 1, Reached.TOP),
        ((12, 12, 11), 0, Reached.WITHIN),
        ((12, 7, 12), 0, Reached.BELOW),
        ((12, None, 12), None, None),
    ):
        found = signs(exercise_done(reps))
        assert (found.double.value, found.reached) == (value, reached)
        assert given(found.double)["where the sets lie"] == (None if reached is None else reached.value)


def test_where_no_range_is_asked_for_there_is_no_top_of_it() -> None:
    one = signs(exercise_done((10,), asked=(10, 10))).double
    assert (one.value, one.reason) == (None, "One number of reps is asked for, and no range.")
    done = exercise_done((12, 10))
    mixed = replace(done, sets=(done.sets[0], SetDone(6, 8, 10, Decimal(4))))
    assert signs(mixed).double.reason == "The sets ask for different ranges of reps."


@pytest.mark.parametrize("dose", [DoseKind.STICK, DoseKind.SIGNAL, DoseKind.WORK, None])
def test_landings_jumps_and_timed_work_have_no_signs_of_load(dose: DoseKind | None) -> None:
    found = signs(exercise_done((14,), dose=dose), exercise_done((14,), day=EARLIER, dose=dose))
    for figure in (found.two_for_two, found.double):
        assert (figure.value, figure.reason is not None) == (None, True)
    assert found.reps.value == (None if dose is DoseKind.WORK else 14)


def test_work_for_a_time_has_no_reps_to_tell() -> None:
    found = signs(exercise_done((1, 1), asked=(1, 1), dose=DoseKind.WORK))
    assert found.reps.reason == "It is work for a time, which has no reps."
    assert given(found.reps)["reps by set"] == given(found.reps)["reps asked for by set"] == "–"


def test_the_step_of_a_load_is_two_to_ten_percent_of_it_in_kg() -> None:
    found = signs(exercise_done(load="42.5"))
    assert [step.value for step in found.steps] == [0.85, 4.25]
    assert {step.unit for step in found.steps} == {"kg"}
    none = signs(exercise_done(load="0"))
    assert (none.load.value, none.steps[0].value) == (0, None)
    assert none.steps[0].reason == "The load is nought, so that there is no step."


def test_each_side_has_its_own_signs_and_what_was_done_last_stands_first() -> None:
    sessions = (
        exercise_done(exercise="Row", side=Side.BOTH, day=EARLIER),
        exercise_done(side=Side.LEFT),
        exercise_done(side=Side.RIGHT),
    )
    found = exercise_signs(record(exercises=sessions))
    assert [(each.last.exercise, each.last.side) for each in found] == [
        ("External rotation", Side.LEFT),
        ("External rotation", Side.RIGHT),
        ("Row", Side.BOTH),
    ]
    assert found[-1].load.of == "exercise: Row"


def test_an_exercise_asked_for_in_two_ways_has_one_row_and_that_of_its_last() -> None:
    other = exercise_done((20,), dose=DoseKind.OWN_PACE)
    found = signs(exercise_done((14,)), other, exercise_done((14,), day=EARLIER))
    assert found.two_for_two.value == 1


def test_no_two_figures_have_one_name_and_one_thing_they_are_of() -> None:
    figures = progression_figures(record(exercises=season_of_sets(TODAY, 40)))
    assert len({(figure.name, figure.of) for figure in figures}) == len(figures) == 6 * 70
    assert all(figure.formula and figure.source for figure in figures)
