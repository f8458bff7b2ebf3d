"""The timeline: its spans, and when its reps begin and end."""

from app.domain.plan import Exercise, Side, Sides
from app.domain.tempo import Phase
from app.domain.timeline import RepWindow, SpanKind, rep_windows
from tests.planned import compiled, holds, own_pace, signals, sticks, tempo_reps, work_for


def test_spans_count_from_ready_on_one_clock() -> None:
    timeline = compiled(Exercise("Squat", tempo_reps(1, "3-0-1-0"), sets=2, rest_ms=45_000))
    assert [(span.start_ms, span.end_ms, span.kind) for span in timeline.spans()] == [
        (0, 5_000, SpanKind.LEAD_IN),
        (5_000, 8_000, SpanKind.WORK),
        (8_000, 9_000, SpanKind.WORK),
        (9_000, 49_000, SpanKind.REST),
        (49_000, 54_000, SpanKind.LEAD_IN),
        (54_000, 57_000, SpanKind.WORK),
        (57_000, 58_000, SpanKind.WORK),
    ]


def test_the_clock_starts_again_after_work_without_an_end() -> None:
    timeline = compiled(Exercise("Jump", own_pace(5)), Exercise("Plank", work_for(30)))
    assert [(span.start_ms, span.end_ms) for span in timeline.spans()] == [
        (0, 5_000),
        (5_000, None),
        (0, 15_000),
        (15_000, 20_000),
        (20_000, 50_000),
    ]


def test_a_gap_carries_the_bout_that_follows_and_no_rep() -> None:
    timeline = compiled(Exercise("Hop", signals(1, 4), sides=Sides.EACH))
    gap = next(span for span in timeline.spans() if span.kind is SpanKind.SIDE_CHANGE)
    assert (gap.bout.index, gap.side, gap.rep, gap.phase) == (1, Side.RIGHT, None, None)


def test_marks_run_on_the_clock_of_the_session() -> None:
    timeline = compiled(Exercise("Hop", sticks(1, (3, 5))))
    assert [span.mark_ms for span in timeline.spans() if span.phase is Phase.STICK] == [10_000]


def test_what_has_no_length_adds_nothing_and_is_said() -> None:
    timeline = compiled(Exercise("Jump", own_pace(5)), Exercise("Plank", work_for(30)))
    assert (timeline.timed_ms, timeline.open_ended) == (5_000 + 20_000 + 30_000, True)
    assert compiled(Exercise("Plank", work_for(30))).open_ended is False


def test_a_rep_is_done_before_the_relaxing_that_follows_it() -> None:
    (bout,) = compiled(Exercise("Squeeze", holds(2, 5, relax=1))).bouts
    assert rep_windows(bout) == (
        RepWindow(1, Side.BOTH, 0, 5_000, 6_000),
        RepWindow(2, Side.BOTH, 6_000, 11_000, 11_000),
    )


def test_a_landing_is_done_when_it_has_been_stuck() -> None:
    (bout,) = compiled(Exercise("Hop", sticks(2, 3, move=2, reset=4))).bouts
    assert [(window.done_ms, window.end_ms) for window in rep_windows(bout)] == [
        (5_000, 9_000),
        (14_000, 14_000),
    ]


def test_a_rep_at_a_tempo_is_done_with_its_last_phase() -> None:
    (bout,) = compiled(Exercise("Squat", tempo_reps(2, "3-1-1-1"))).bouts
    assert [(window.start_ms, window.done_ms) for window in rep_windows(bout)] == [
        (0, 6_000),
        (6_000, 12_000),
    ]


def test_alternating_reps_have_a_window_a_side() -> None:
    (bout,) = compiled(Exercise("Hop", signals(1, 4), sides=Sides.ALTERNATE)).bouts
    assert [(window.rep, window.side) for window in rep_windows(bout)] == [(1, Side.LEFT), (1, Side.RIGHT)]


def test_work_without_an_end_has_no_windows() -> None:
    (bout,) = compiled(Exercise("Jump", own_pace(5))).bouts
    assert rep_windows(bout) == ()


def test_bouts_know_their_stage_and_exercise() -> None:
    timeline = compiled(Exercise("Squat", work_for(5)), Exercise("Plank", work_for(30)))
    assert timeline.exercise_of(timeline.bouts[1]).name == "Plank"
    assert timeline.stage_of(timeline.bouts[1]).name == "Stage"
