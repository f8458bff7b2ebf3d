"""What is said during the work, by what its tempo leaves room for."""

import pytest

from app.domain.cue_speech import coaching_cue, shortest_rep_ms, work_speech
from app.domain.cue_values import Cue, CueKind
from app.domain.cue_words import ENGLISH
from app.domain.cues import whole_bout_cues
from app.domain.dose import Band, Dose, HoldReps, OwnPaceReps, WorkTime
from app.domain.plan import Sides
from app.domain.timeline import rep_windows
from tests.bouts import EVERY_DOSE, bout_of, exercise, tempo_reps, timeline_of


def said(dose: Dose, **more: object) -> list[Cue]:
    timeline, bout = bout_of(dose, **more)
    return list(work_speech(timeline.exercise_of(bout), bout, ENGLISH))


def test_reps_under_two_seconds_are_counted_by_fives_and_nothing_else_is_said() -> None:
    cues = said(tempo_reps("0.5-0-0.5-0", 12), cues=("Tall",))
    assert [(cue.at_ms, cue.kind, cue.text) for cue in cues] == [
        (4_000, CueKind.COUNT, "5"),
        (9_000, CueKind.COUNT, "10"),
    ]


def test_alternating_reps_under_two_seconds_are_counted_once_for_both_sides() -> None:
    cues = said(tempo_reps("0.5-0-0.5-0", 5), sides=Sides.ALTERNATE)
    assert [(cue.at_ms, cue.text) for cue in cues] == [(8_000, "5")]


def test_reps_under_three_seconds_are_counted_and_no_more() -> None:
    kinds = {cue.kind for cue in said(tempo_reps("1-0-1-0", 6), cues=("Tall",))}
    assert kinds == {CueKind.COUNT}


def test_a_count_can_be_said_shorter() -> None:
    counts = [cue for cue in said(tempo_reps("3-0-1-0", 3)) if cue.kind is CueKind.COUNT]
    assert [(cue.text, *cue.shorter) for cue in counts] == [
        ("rep 1", "1"),
        ("rep 2", "2"),
        ("last rep", "last", "3"),
    ]


def test_each_alternating_rep_names_its_side() -> None:
    counts = [
        cue for cue in said(tempo_reps("3-0-1-0", 2), sides=Sides.ALTERNATE) if cue.kind is CueKind.COUNT
    ]
    assert [cue.text for cue in counts] == ["left, rep 1", "right, rep 1", "left, rep 2", "right, rep 2"]
    assert counts[1].shorter == ("right 1", "right")


@pytest.mark.parametrize(("reps", "at_rep"), [(4, 3), (5, 3), (10, 6)])
def test_halfway_is_said_at_the_rep_after_the_middle(reps: int, at_rep: int) -> None:
    halfway = [cue for cue in said(tempo_reps("3-0-1-0", reps)) if cue.kind is CueKind.HALFWAY]
    assert [cue.at_ms for cue in halfway] == [(at_rep - 1) * 4_000]


def test_three_reps_have_no_halfway() -> None:
    assert CueKind.HALFWAY not in {cue.kind for cue in said(tempo_reps("3-0-1-0", 3))}


def test_the_middle_of_a_long_hold_and_of_continuous_work_is_said() -> None:
    held = [
        cue.at_ms
        for cue in said(HoldReps(Band.exactly(2), Band.exactly(30_000)))
        if cue.kind is CueKind.HALFWAY
    ]
    assert held == [15_000, 47_000]
    worked = [cue.at_ms for cue in said(WorkTime(Band.exactly(40_000))) if cue.kind is CueKind.HALFWAY]
    assert worked == [20_000]
    short = said(HoldReps(Band.exactly(2), Band.exactly(10_000)))
    assert CueKind.HALFWAY not in {cue.kind for cue in short}


def test_coaching_cues_rotate_every_third_rep() -> None:
    cues = said(tempo_reps("3-0-1-0", 10), cues=("Ribs down", "Elbow high"))
    coaching = [cue for cue in cues if cue.kind is CueKind.COACHING]
    coached = [(cue.at_ms // 4_000 + 1, cue.text) for cue in coaching]
    # It may be said in any of its three reps, whichever has room.
    assert [cue.until_ms for cue in coaching] == [12_000, 24_000, 36_000, 40_000]
    assert coached == [(1, "Ribs down"), (4, "Elbow high"), (7, "Ribs down"), (10, "Elbow high")]


@pytest.mark.parametrize(
    ("dose", "standing"),
    [
        (tempo_reps("3-0-1-0", 7), ["a", "a", "a", "b", "b", "b", "a"]),
        (tempo_reps("1-0-1-0", 4), ["b", "b", "b", "b"]),
        (OwnPaceReps(Band.exactly(3)), ["b", "b", "b"]),
    ],
)
def test_a_cue_stands_for_three_reps_or_for_a_set_without_room_for_words(
    dose: Dose, standing: list[str]
) -> None:
    timeline = timeline_of(exercise(dose, cues=("a", "b"), sets=2))
    second = timeline.bouts[1]
    reps = range(1, len(standing) + 1)
    assert [coaching_cue(timeline.exercise_of(second), second, rep) for rep in reps] == standing
    assert coaching_cue(exercise(dose), second, 1) is None


@pytest.mark.parametrize("name", EVERY_DOSE)
def test_the_cue_that_is_said_is_the_one_that_stands_then(name: str) -> None:
    timeline = timeline_of(exercise(EVERY_DOSE[name], cues=("a", "b", "c"), sets=2, rest_ms=60_000))
    heard = [
        (bout, cue)
        for bout in timeline.bouts
        for cue in whole_bout_cues(timeline, bout)
        if cue.kind is CueKind.COACHING
    ]
    assert heard
    for bout, cue in heard:
        reps = [window.rep for window in rep_windows(bout) if window.start_ms <= cue.at_ms]
        standing = coaching_cue(timeline.exercise_of(bout), bout, max(reps, default=1), cue.at_ms)
        assert cue.text == standing


def test_phases_are_named_in_the_first_two_reps_and_explosive_ones_never() -> None:
    named = [(cue.at_ms, cue.text) for cue in said(tempo_reps("3-1-X-0", 4)) if cue.kind is CueKind.PHASE]
    assert named == [(0, "lower"), (3_000, "hold"), (5_000, "lower"), (8_000, "hold")]


def test_continuous_work_is_coached_at_its_first_and_third_quarter() -> None:
    cues = said(WorkTime(Band.exactly(40_000)), cues=("Light feet",))
    assert [(cue.at_ms, cue.text) for cue in cues if cue.kind is CueKind.COACHING] == [
        (10_000, "Light feet"),
        (30_000, "Light feet"),
    ]


def test_each_half_of_continuous_work_has_a_cue_of_its_own() -> None:
    dose, cues = WorkTime(Band.exactly(40_000)), ("a", "b", "c")
    assert [cue.text for cue in said(dose, cues=cues) if cue.kind is CueKind.COACHING] == ["a", "b"]
    timeline, bout = bout_of(dose, cues=cues)
    standing = [coaching_cue(timeline.exercise_of(bout), bout, 1, at) for at in (0, 19_999, 20_000, 39_999)]
    assert standing == ["a", "a", "b", "b"]


def test_work_at_ones_own_pace_is_not_spoken_into() -> None:
    assert said(OwnPaceReps(Band.exactly(8)), cues=("Light feet",)) == []
    assert shortest_rep_ms(bout_of(OwnPaceReps(Band.exactly(8)))[1]) is None
