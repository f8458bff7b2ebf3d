"""Durations and time under tension against published arithmetic and facts of the trade."""

import pytest

from app.domain.compiler import compile_timeline
from app.domain.figures import Figures, session_figures
from app.domain.tempo import Begins
from app.domain.timeline import Timeline, rep_windows
from app.planfile.reader import parse_plan
from tests.plan_tables import Table, toml_of


def timeline(exercise: Table, kind: str = "other", fast: float = 1.0) -> Timeline:
    """The timeline of a plan of one exercise."""
    stage = {"name": "One", "kind": kind, "exercise": [{"name": "One", **exercise}]}
    text = toml_of({"format": 1, "title": "Check", "fast": fast, "stage": [stage]})
    return compile_timeline(parse_plan(text, "check.toml", None))


def figures(exercise: Table, kind: str = "other", fast: float = 1.0) -> Figures:
    """The figures of a plan of one exercise."""
    return session_figures(timeline(exercise, kind, fast)).figures


# Time under tension of a set is the sum of the four digits times the reps: rule and example 3-1-2-0 as
# printed in an open textbook page (healthmedicines.net); the products are calculated.
@pytest.mark.parametrize(
    ("exercise", "seconds"),
    [
        ({"tempo": "3010", "reps": 10}, 40),
        ({"tempo": "4010", "reps": 8}, 40),
        ({"tempo": "3120", "reps": 10}, 60),
        ({"tempo": "40X0", "reps": 6}, 30),
        ({"tempo": "3030", "reps": 15}, 90),
        ({"tempo": "3030", "reps": 15, "sets": 3}, 270),
        ({"hold": 45, "reps": 5}, 225),
    ],
)
def test_time_under_tension_of_a_set(exercise: Table, seconds: int) -> None:
    assert figures(exercise).tut_ms == seconds * 1000


def test_time_under_tension_with_an_x_follows_the_length_given_to_it() -> None:
    # An X has no length of its own: with 1 s a rep of 40X0 takes 5 s, towards 0 s it takes 4 (calculated,
    # convention).
    found = figures({"tempo": "40X0", "reps": 6}, fast=0.1)
    assert found.tut_ms == 24_600
    assert found.nominal


def test_one_sided_work_is_counted_a_side_and_both_together() -> None:
    # 2010, 3 x 12 a side: 36 reps and 108 s a side, 216 s on both (calculated by the same rule).
    found = figures({"tempo": "2010", "sets": 3, "reps": 12, "sides": "each"})
    assert (found.reps_left.high, found.reps_right.high) == (36, 36)
    assert (found.tut_left_ms, found.tut_right_ms, found.tut_ms) == (108_000, 108_000, 216_000)


@pytest.mark.parametrize("begins", list(Begins))
def test_what_is_played_first_changes_no_length(begins: Begins) -> None:
    # Coaching articles agree: the first number is always the eccentric, whatever is played first.
    found = figures({"tempo": "3-2-1-0", "reps": 10, "begins": begins.value})
    assert found.tut_ms == found.work_ms == 60_000


def test_a_chin_up_at_3010_pulls_first_and_lowers_for_three_seconds() -> None:
    # Common practice, no source: 3010 on a chin-up plays concentric 1 s, then eccentric 3 s.
    (bout,) = timeline({"tempo": "3010", "reps": 1, "begins": "concentric"}).bouts
    assert [(span.phase.value, (span.end_ms or 0) - span.start_ms) for span in bout.work] == [
        ("concentric", 1_000),
        ("eccentric", 3_000),
    ]


def test_up_two_hold_four_down_two() -> None:
    # Common practice, no source: up 2 s, hold 4 s, down 2 s is 8 s a rep; 20 reps are 160 s a set, 320 s on
    # both sides.
    laid = timeline({"tempo": "2-0-2-4", "begins": "concentric", "reps": 20, "sides": "each"})
    assert [bout.work_ms for bout in laid.bouts] == [160_000, 160_000]
    assert session_figures(laid).figures.work_ms == 320_000
    assert {window.end_ms - window.start_ms for window in rep_windows(laid.bouts[0])} == {8_000}


def test_down_four_hold_two_up_two() -> None:
    # Common practice, no source: down 4 s, hold 2 s, up 2 s, 20 reps a side: 160 s a side; concentric last
    # in each rep.
    laid = timeline({"tempo": "4-2-2-0", "reps": 20, "sides": "each"})
    assert [bout.work_ms for bout in laid.bouts] == [160_000, 160_000]
    assert laid.bouts[0].work[2].phase.value == "concentric"
    assert session_figures(laid).figures.work_ms == 320_000


def test_a_landing_is_held_three_to_five_seconds_and_counts_from_three() -> None:
    # Common practice, no source: a landing is held 3-5 s and is clean from 3 s; 6-10 reps a leg, met from 6.
    laid = timeline({"stick": [3, 5], "reps": [6, 10], "sides": "each"})
    for bout in laid.bouts:
        held = [span for span in bout.work if span.phase.value == "stick"]
        assert (bout.low, bout.high, len(held)) == (6, 10, 10)
        assert {(span.end_ms or 0) - span.start_ms for span in held} == {5_000}
        assert {(span.mark_ms or 0) - span.start_ms for span in held} == {3_000}


def test_a_short_squeeze_of_an_activation_drill() -> None:
    # Common practice, no source: a short isometric squeeze is held 4 s, 20 a side.
    found = figures({"hold": 4, "reps": 20, "sides": "each"}, kind="activation")
    assert (found.tut_left_ms, found.tut_right_ms, found.isometric_ms) == (80_000, 80_000, 160_000)
