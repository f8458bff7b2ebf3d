"""Which cue comes when in a bout."""

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.cue_values import Cue, CueKind, CueLevel, caption
from app.domain.cues import CODA_MS, QUIET_MS, bout_cues, side_at, whole_bout_cues
from app.domain.dose import OwnPaceReps
from app.domain.plan import Sides
from app.domain.timeline import Bout, Timeline
from tests.bouts import EVERY_DOSE, LEFT, RIGHT, ROTATION, bout_of, exercise, tempo_reps, timeline_of
from tests.strategies import exercises


def tones(cues: tuple[Cue, ...]) -> list[Cue]:
    return [cue for cue in cues if not cue.kind.spoken]


def spoken(cues: tuple[Cue, ...]) -> list[tuple[int, str]]:
    return [(cue.at_ms, caption(cue)) for cue in cues if cue.kind.spoken]


def whole(timeline: Timeline, bout: Bout) -> tuple[Cue, ...]:
    return bout_cues(timeline, bout, from_ms=-bout.before_ms)


def test_a_bout_is_cued_phase_by_phase_from_its_lead_in_to_its_end() -> None:
    timeline = timeline_of(ROTATION)
    heard = [(cue.at_ms, cue.kind.value, caption(cue)) for cue in tones(whole(timeline, timeline.bouts[1]))]
    assert heard[:8] == [
        (-3_000, "tick", "3"),
        (-2_000, "tick", "2"),
        (-1_000, "tick", "1"),
        (0, "concentric", "lift"),
        (2_000, "hold_shortened", "hold"),
        (3_000, "eccentric", "lower"),
        (5_000, "hold_lengthened", "hold"),
        (6_000, "concentric", "lift"),
    ]
    assert heard[-1] == (24_000, "end", "bout done")
    assert len(heard) == 3 + 4 * 4 + 1


def test_the_sides_of_an_exercise_are_cued_on_their_side() -> None:
    timeline = timeline_of(ROTATION)
    for bout, side in zip(timeline.bouts, (LEFT, RIGHT), strict=True):
        work = [cue.side for cue in tones(whole(timeline, bout)) if cue.kind is not CueKind.END]
        assert set(work) == {side}


def test_speech_says_side_rep_phase_and_coaching() -> None:
    timeline = timeline_of(ROTATION)
    heard = spoken(whole(timeline, timeline.bouts[0]))
    assert (-4_000, "left side") in heard
    assert (-4_000, "Side-lying external rotation") in heard
    assert [cue for cue in heard if "rep" in cue[1]] == [
        (0, "rep 1"),
        (6_000, "rep 2"),
        (12_000, "rep 3"),
        (18_000, "last rep"),
    ]
    assert (12_000, "halfway") in heard
    assert (0, "Elbow down") in heard
    assert (18_000, "Slow on the way back") in heard
    assert (3_000, "lower") in heard
    assert (15_000, "lower") not in heard


def test_a_cue_is_never_given_in_the_first_second_of_a_sound() -> None:
    timeline = timeline_of(ROTATION, lead_in_ms=3_000)
    cues = whole(timeline, timeline.bouts[0])
    assert [cue.at_ms for cue in cues if cue.kind is CueKind.TICK] == [-2_000, -1_000]
    assert cues[0].at_ms == -3_000 + QUIET_MS


def test_a_bout_resumed_at_a_rep_has_a_lead_in_right_before_it_and_nothing_earlier() -> None:
    timeline = timeline_of(ROTATION)
    cues = bout_cues(timeline, timeline.bouts[1], from_ms=12_000 - 5_000, work_from_ms=12_000)
    heard = [(cue.at_ms, cue.kind.value) for cue in cues if cue.at_ms < 14_000]
    assert heard == [
        (8_000, "side"),
        (9_000, "tick"),
        (10_000, "tick"),
        (11_000, "tick"),
        (12_000, "concentric"),
        (12_000, "count"),
        (12_000, "halfway"),
    ]
    assert cues[-1].at_ms == 24_000


def test_an_alternating_bout_resumed_on_the_other_side_names_that_side() -> None:
    timeline, bout = bout_of(tempo_reps("2-0-2-0", 3), sides=Sides.ALTERNATE)
    cues = bout_cues(timeline, bout, from_ms=4_000 - 5_000, work_from_ms=4_000)
    assert spoken(cues)[0] == (0, "right first")
    assert {cue.side for cue in cues if cue.kind is CueKind.TICK} == {RIGHT}


def test_a_rest_made_longer_is_announced_from_where_it_now_begins() -> None:
    timeline = timeline_of(exercise(EVERY_DOSE["tempo"], sets=2, rest_ms=40_000))
    bout = timeline.bouts[1]
    longer = bout_cues(timeline, bout, from_ms=-55_000, rest_ms=50_000)
    assert spoken(longer)[:2] == [(-54_000, "rest"), (-30_000, "30 seconds")]
    assert spoken(whole(timeline, bout))[:2] == [(-39_000, "rest"), (-10_000, "10 seconds")]


def test_a_rest_cut_short_leaves_the_lead_in_alone() -> None:
    timeline = timeline_of(exercise(EVERY_DOSE["tempo"], sets=2, rest_ms=60_000))
    cues = bout_cues(timeline, timeline.bouts[1], from_ms=-5_000, rest_ms=0)
    assert all(cue.at_ms >= -3_000 for cue in cues)
    assert [cue.kind for cue in cues][:3] == [CueKind.TICK] * 3


def test_open_ended_work_is_cued_to_its_beginning() -> None:
    timeline, bout = bout_of(OwnPaceReps(EVERY_DOSE["own"].reps))  # type: ignore[union-attr]
    last = whole(timeline, bout)[-1]
    assert (last.at_ms, last.kind, caption(last)) == (0, CueKind.EXPLOSIVE, "begin")


@pytest.mark.parametrize("name", EVERY_DOSE)
def test_tones_only_says_nothing_and_spare_says_less_than_full(name: str) -> None:
    timeline, bout = bout_of(EVERY_DOSE[name], cues=("Ribs down", "Land softly"))
    full, spare, bare = (
        bout_cues(timeline, bout, from_ms=-bout.before_ms, level=level)
        for level in (CueLevel.FULL, CueLevel.SPARE, CueLevel.TONES)
    )
    assert spoken(bare) == []
    assert set(spare) <= set(full)
    assert CueKind.COACHING not in {cue.kind for cue in spare}
    assert tones(full) == tones(spare) == list(bare)


def test_an_unbroken_recording_keeps_the_ticks_that_follow_close_on_a_bout() -> None:
    timeline = timeline_of(exercise(EVERY_DOSE["tempo"], sets=2, rest_ms=3_000), lead_in_ms=3_000)
    ticks = [cue.at_ms for cue in whole_bout_cues(timeline, timeline.bouts[1]) if cue.kind is CueKind.TICK]
    assert ticks == [-3_000, -2_000, -1_000]


def test_the_side_at_an_instant_is_that_of_the_phase_that_has_begun() -> None:
    _, bout = bout_of(tempo_reps("2-0-2-0", 2), sides=Sides.ALTERNATE)
    assert [side_at(bout, at) for at in (-1, 0, 3_999, 4_000, 8_000)] == [LEFT, LEFT, LEFT, RIGHT, LEFT]


@st.composite
def led_bouts(draw: st.DrawFn) -> tuple[Timeline, Bout]:
    """Any bout of a plan of one exercise."""
    timeline = timeline_of(draw(exercises()), lead_in_ms=draw(st.integers(3_000, 9_000)))
    return timeline, draw(st.sampled_from(timeline.bouts))


@settings(max_examples=60)
@given(led_bouts())
def test_each_phase_has_its_own_tone_and_no_two_tones_sound_together(led: tuple[Timeline, Bout]) -> None:
    bout = led[1]
    cues = whole(*led)
    assert list(cues) == sorted(cues, key=lambda cue: cue.at_ms)
    assert all(caption(cue).strip() for cue in cues)
    starts = {tone.at_ms: tone for tone in tones(cues)}
    for span in bout.work:
        assert starts[span.start_ms].kind not in {CueKind.TICK, CueKind.MARK, CueKind.END}
        assert starts[span.start_ms].side is span.side
        if span.end_ms is not None:
            assert starts[span.start_ms].end_ms < span.end_ms
    if bout.work_ms is not None:
        assert starts[bout.work_ms].kind is CueKind.END
    for first, second in pairwise(tones(cues)):
        assert first.end_ms <= second.at_ms


@settings(max_examples=60)
@given(led_bouts())
def test_ticks_stand_at_the_last_three_seconds_of_long_stretches_only(led: tuple[Timeline, Bout]) -> None:
    bout = led[1]
    spans = [(span.start_ms, span.end_ms) for span in bout.work if span.end_ms is not None]
    ends = {0} | {end for start, end in spans if end - start >= 4_000}
    allowed = {end - left for end in ends for left in (1_000, 2_000, 3_000)}
    cues = whole(*led)
    ticked = {cue.at_ms for cue in cues if cue.kind is CueKind.TICK}
    assert ticked <= allowed
    marked = {cue.at_ms for cue in cues if cue.kind is CueKind.MARK}
    beside_a_mark = {at for at in allowed for mark in marked if abs(at - mark) < 150}
    in_the_first_second = {at for at in allowed if at < -bout.before_ms + QUIET_MS}
    assert allowed - ticked <= beside_a_mark | in_the_first_second


@settings(max_examples=60)
@given(led_bouts(), st.integers(0, 1_000))
def test_a_sound_begun_anywhere_has_the_cues_of_the_whole_from_a_second_on(
    led: tuple[Timeline, Bout], permille: int
) -> None:
    bout = led[1]
    stretch = bout.before_ms + (bout.work_ms or 0) + CODA_MS
    begin = -bout.before_ms + stretch * permille // 1_000
    late = bout_cues(*led, from_ms=begin)
    assert tones(late) == [tone for tone in tones(whole(*led)) if tone.at_ms >= begin + QUIET_MS]
    assert all(cue.at_ms >= begin + QUIET_MS for cue in late)
