"""What is heard before the work of a bout."""

from app.domain.cue_gap import gap_before, gap_speech, gap_ticks
from app.domain.cue_values import CueKind, caption
from app.domain.cue_words import ENGLISH, TONGUES, Tongue
from app.domain.plan import Sides
from app.domain.timeline import Timeline
from tests.bouts import EVERY_DOSE, LEFT, ROTATION, exercise, tempo_reps, timeline_of


def said(timeline: Timeline, index: int, tongue: Tongue = ENGLISH) -> list[tuple[int, str]]:
    bout = timeline.bouts[index]
    gap = gap_before(bout, 0, None)
    return [(cue.at_ms, caption(cue)) for cue in gap_speech(timeline, bout, gap, bout.side, tongue)]


def test_the_first_bout_is_led_in_with_its_exercise_and_side() -> None:
    assert said(timeline_of(ROTATION), 0) == [
        (-5_000, "Side-lying external rotation"),
        (-5_000, "left side"),
    ]


def test_a_change_of_side_says_to_which_and_once_more_before_the_work() -> None:
    assert said(timeline_of(ROTATION), 1) == [(-7_500, "change to the right side"), (-5_000, "right side")]


def test_a_changeover_says_what_comes_next_and_how_to_set_up_and_the_time_left() -> None:
    landing = exercise(EVERY_DOSE["stick"], "Drop landing", setup="Stand on the low box")
    assert said(timeline_of(exercise(EVERY_DOSE["tempo"]), landing), 1) == [
        (-19_500, "next: Drop landing"),
        (-19_500, "Stand on the low box"),
        (-10_000, "10 seconds"),
    ]


def test_a_rest_is_named_and_a_long_one_counts_down_from_thirty() -> None:
    timeline = timeline_of(exercise(EVERY_DOSE["tempo"], sets=2, rest_ms=90_000))
    assert said(timeline, 1) == [(-89_500, "rest"), (-30_000, "30 seconds"), (-10_000, "10 seconds")]


def test_a_short_rest_does_not_count_down() -> None:
    timeline = timeline_of(exercise(EVERY_DOSE["tempo"], sets=2, rest_ms=19_000))
    assert said(timeline, 1) == [(-18_500, "rest")]


def test_the_next_round_of_a_superset_names_the_exercise_after_the_rest() -> None:
    pair = [
        exercise(EVERY_DOSE["tempo"], name, sets=2, superset="A", rest_ms=30_000) for name in ("Pull", "Push")
    ]
    assert said(timeline_of(*pair), 2)[:2] == [(-29_500, "rest"), (-29_500, "next: Pull")]


def test_coaching_that_quick_reps_leave_no_room_for_is_given_before_them() -> None:
    quick = exercise(EVERY_DOSE["quick"], sets=3, rest_ms=19_000, cues=("Quick feet", "Tall hips"))
    timeline = timeline_of(quick)
    assert [said(timeline, index)[-1][1] for index in (1, 2)] == ["Tall hips", "Quick feet"]


def test_an_alternating_bout_says_which_side_is_first() -> None:
    timeline = timeline_of(exercise(tempo_reps("3-0-1-0", 4), sides=Sides.ALTERNATE))
    assert said(timeline, 0)[-1] == (-5_000, "left first")


def test_a_gap_is_spoken_in_the_language_asked_for() -> None:
    assert said(timeline_of(ROTATION), 1, TONGUES["de"]) == [
        (-7_500, "Wechsel: rechte Seite"),
        (-5_000, "rechte Seite"),
    ]


def test_ticks_before_the_work_do_not_reach_back_beyond_the_gap() -> None:
    timeline = timeline_of(ROTATION)
    gap = gap_before(timeline.bouts[0], 6_000, None)
    assert (gap.start_ms, gap.lead_in_ms, gap.work_ms) == (1_000, 1_000, 6_000)
    assert [tick.at_ms for tick in gap_ticks(gap, LEFT)] == [3_000, 4_000, 5_000]
    assert {tick.kind for tick in gap_ticks(gap, LEFT)} == {CueKind.TICK}
