"""A run before it is shown: each bout on one axis, planned shapes where they are known, what was left out."""

import pytest

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, TempoReps
from app.domain.plan import Exercise, Plan, Side, Sides, Stage, StageKind
from app.domain.prescription import prescriptions
from app.domain.records import BoutOutcome, Paused, PauseReason, Resumed, RunBegan, SkipReason
from app.domain.tempo import parse_tempo
from app.views.review.run.columns import bout_columns
from app.views.review.run.strip import outcome_words, strip_words
from app.views.review.run.view import LEAST_SCALE_MS, bout_lines, pauses_of
from tests.reviewing import NOTE, asked, done, run_view

EXERCISE = Exercise("Step-down", TempoReps(Band.exactly(8), parse_tempo("2-1-1-1")), sides=Sides.EACH)
TIMELINE = compile_timeline(Plan("Landing", (Stage("Catch", StageKind.STABILITY, (EXERCISE,)),)))


def test_planned_shapes_are_those_of_the_plan_for_the_bouts_that_are_still_as_they_were() -> None:
    first, second = prescriptions(TIMELINE)
    changed = asked(1, Side.RIGHT, work_ms=first.work_ms and first.work_ms + 1)
    lines = bout_lines(((first, None), (second, None), (changed, None)), TIMELINE)
    assert [len({stroke.rep for stroke in line.planned}) for line in lines] == [8, 8, 0]
    assert all(line.done == () for line in lines)


def test_all_bouts_share_the_axis_of_the_longest() -> None:
    lines = bout_lines(((asked(0), done(0)), (asked(1, work_ms=90_000), None)), None)
    assert {line.scale_ms for line in lines} == {90_000}
    assert bout_lines(((asked(0, work_ms=None), None),), None)[0].scale_ms == LEAST_SCALE_MS


def test_reps_lie_where_they_were_done_counted_from_the_bout_s_beginning() -> None:
    (line,) = bout_lines(((asked(0), done(0, 3)),), None)
    assert [(rep.start_ms, rep.end_ms) for rep in line.done] == [
        (0, 5_000),
        (5_000, 10_000),
        (10_000, 15_000),
    ]


def test_a_rep_done_has_the_shape_that_was_planned_for_it() -> None:
    (first, _) = prescriptions(TIMELINE)
    (line,) = bout_lines(((first, done(0, 2, side=first.side)),), TIMELINE)
    shapes = [[stroke.rep for stroke in rep.strokes] for rep in line.done]
    assert [set(reps) for reps in shapes] == [{1}, {2}]


def test_pauses_are_counted_and_their_length_added_up() -> None:
    facts = (
        RunBegan(),
        Paused(1_000, PauseReason.ASKED),
        Resumed(5_000),
        Paused(9_000, PauseReason.INTERRUPTED),
    )
    assert pauses_of(facts) == (2, 4_000)
    assert pauses_of(()) == (0, 0)


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({}, "done"),
        ({"outcome": BoutOutcome.ENDED_EARLY}, "ended early"),
        ({"outcome": BoutOutcome.BROKEN_OFF}, "broken off"),
        ({"outcome": BoutOutcome.SKIPPED, "reason": SkipReason.PAIN}, "left out: pain"),
        ({"outcome": BoutOutcome.SKIPPED, "reason": SkipReason.EQUIPMENT}, "left out: equipment"),
        ({"outcome": BoutOutcome.SKIPPED, "reason": SkipReason.TIME}, "left out: time"),
        ({"outcome": BoutOutcome.SKIPPED, "reason": SkipReason.OTHER}, "left out: another reason"),
        ({"outcome": BoutOutcome.SKIPPED}, "left out"),
    ],
)
def test_how_a_bout_ended_is_said_with_the_reason(changes: dict[str, object], expected: str) -> None:
    (line,) = bout_lines(((asked(0), done(0, 0, **changes)),), None)
    assert outcome_words(line) == expected


def test_the_strip_is_told_in_words_too() -> None:
    (line,) = bout_lines(((asked(0, low=5, high=8, work_ms=None), done(0, 3, side=Side.BOTH)),), None)
    assert strip_words(line) == "planned 5–8 reps · done 3 · rep 3: knee falls in"
    (nothing,) = bout_lines(((asked(0), None),), None)
    assert strip_words(nothing) == "planned 8 reps · in 40 s · not begun"


def test_what_was_corrected_is_marked() -> None:
    (line,) = bout_lines(((asked(0), done(0, corrected=frozenset({"rpe", "faults"}))),), None)
    cells = {column.title: column.text(line) for column in bout_columns()}
    assert (cells["RPE"], cells["Faults"], cells["Pain"]) == ("* 4", "* knee falls in", "▲ 6")


def test_without_pain_neither_pain_nor_notes_nor_pain_as_a_reason_is_there() -> None:
    view = run_view()
    told = [column.text(line) for line in view.lines for column in bout_columns(pain=False)]
    assert "Pain" not in [column.title for column in bout_columns(pain=False)]
    assert "left out" in told
    assert not any("pain" in text or NOTE in text for text in told)


def test_load_and_minutes_are_unknown_without_an_end() -> None:
    view = run_view()
    assert (view.minutes, view.load, view.pain) == (40.0, 200.0, 6)
    unknown = run_view(())
    assert unknown.pain is None
