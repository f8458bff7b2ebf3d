"""Finding room for speech among tones and other speech."""

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.cue_fit import BREATH_MS, fit_speech
from app.domain.cue_values import Cue, CueKind, caption
from app.domain.cues import whole_bout_cues
from app.domain.plan import Exercise
from tests.bouts import EVERY_DOSE, LEFT, ROTATION, exercise, timeline_of
from tests.strategies import exercises

LENGTHS = {"rep 12": 700, "12": 420, "lower": 360, "Elbow down": 900, "Slow": 400, "right side": 650}


def length_ms(text: str) -> int | None:
    return LENGTHS.get(text)


def tone(at: int, kind: CueKind = CueKind.ECCENTRIC, length: int = 300) -> Cue:
    return Cue(at, kind, LEFT, length, kind.value)


def count(at: int, until: int = 9_000) -> Cue:
    return Cue(at, CueKind.COUNT, LEFT, 0, "rep 12", "rep 12", ("12",), until)


def sliding(kind: CueKind, text: str, at: int, until: int) -> Cue:
    return Cue(at, kind, LEFT, 0, text, text, (), until, slides=True)


def said(cues: tuple[Cue, ...]) -> list[tuple[int, str]]:
    return [(cue.at_ms, caption(cue)) for cue in cues if cue.kind.spoken]


@pytest.mark.parametrize(("next_tone", "expected"), [(700, "rep 12"), (699, "12"), (420, "12")])
def test_a_count_is_said_in_the_longest_form_that_ends_before_the_next_phase(
    next_tone: int, expected: str
) -> None:
    assert said(fit_speech([tone(0), count(0), tone(next_tone)], length_ms)) == [(0, expected)]


def test_a_count_without_room_that_no_tone_goes_with_becomes_a_tick() -> None:
    fitted = fit_speech([count(0), tone(419)], length_ms)
    assert [(cue.at_ms, cue.kind, cue.shown) for cue in fitted] == [
        (0, CueKind.TICK, "rep 12"),
        (419, CueKind.ECCENTRIC, "eccentric"),
    ]


def test_a_count_without_room_beside_the_tone_of_a_phase_leaves_the_tone_alone() -> None:
    assert fit_speech([tone(0), count(0), tone(400)], length_ms) == (tone(0), tone(400))


def test_a_phrase_that_can_wait_begins_a_breath_after_what_is_sounding() -> None:
    cues = [tone(0), count(0), sliding(CueKind.PHASE, "lower", 0, 2_000), tone(2_000)]
    assert said(fit_speech(cues, length_ms)) == [(0, "rep 12"), (700 + BREATH_MS, "lower")]


def test_a_phrase_that_finds_no_room_by_its_end_is_left_out() -> None:
    cues = [tone(0), count(0), sliding(CueKind.PHASE, "lower", 0, 1_139), tone(2_000)]
    assert said(fit_speech(cues, length_ms)) == [(0, "rep 12")]


def test_the_phrase_of_higher_priority_has_the_room() -> None:
    coaching = sliding(CueKind.COACHING, "Elbow down", 0, 1_500)
    side = sliding(CueKind.SIDE, "right side", 0, 1_500)
    assert said(fit_speech([coaching, side], length_ms)) == [(0, "right side")]


def test_coaching_keeps_clear_of_ticks_when_it_can_and_goes_over_them_when_it_must() -> None:
    ticks = [tone(at, CueKind.TICK, 50) for at in (1_000, 2_000, 3_000)]
    coaching = sliding(CueKind.COACHING, "Elbow down", 500, 4_000)
    assert said(fit_speech([*ticks[:2], coaching], length_ms)) == [(2_050 + BREATH_MS, "Elbow down")]
    tight = sliding(CueKind.COACHING, "Elbow down", 500, 1_900)
    assert said(fit_speech([*ticks, tight], length_ms)) == [(500, "Elbow down")]


def test_a_coaching_cue_is_not_said_twice_in_a_row() -> None:
    texts = ("Slow", "Slow", "Elbow down", "Slow")
    cues = [sliding(CueKind.COACHING, text, at * 3_000, at * 3_000 + 2_000) for at, text in enumerate(texts)]
    assert said(fit_speech(cues, length_ms)) == [(0, "Slow"), (6_000, "Elbow down"), (9_000, "Slow")]


def test_without_a_voice_the_tones_are_left_as_they_were() -> None:
    timeline = timeline_of(ROTATION)
    cues = whole_bout_cues(timeline, timeline.bouts[0])
    assert fit_speech(cues, lambda _text: None) == tuple(cue for cue in cues if not cue.kind.spoken)


@pytest.mark.parametrize("name", [name for name in EVERY_DOSE if name != "own"])
def test_tones_keep_their_places_whatever_is_said(name: str) -> None:
    timeline = timeline_of(exercise(EVERY_DOSE[name], cues=("Ribs down",), setup="Stand tall"))
    cues = whole_bout_cues(timeline, timeline.bouts[0])
    fitted = fit_speech(cues, lambda text: 60 * len(text))
    tones = {cue for cue in cues if not cue.kind.spoken}
    assert tones <= set(fitted)
    assert all(cue.kind is CueKind.TICK for cue in set(fitted) - tones if not cue.kind.spoken)


@settings(max_examples=60)
@given(exercises(), st.integers(20, 150), st.integers(0, 3))
def test_no_phrase_overlaps_another_or_the_beginning_of_a_tone_that_outranks_it(
    any_exercise: Exercise, ms_a_letter: int, index: int
) -> None:
    timeline = timeline_of(any_exercise)
    bout = timeline.bouts[min(index, len(timeline.bouts) - 1)]
    wished = whole_bout_cues(timeline, bout)
    fitted = fit_speech(wished, lambda text: ms_a_letter * len(text))
    phrases = [cue for cue in fitted if cue.kind.spoken]
    for first, second in pairwise(phrases):
        assert first.end_ms + BREATH_MS <= second.at_ms
    starts = [cue.at_ms for cue in fitted if not cue.kind.spoken and cue.kind is not CueKind.TICK]
    for phrase in phrases:
        assert phrase.length_ms == ms_a_letter * len(phrase.text or "")
        assert phrase.until_ms is None or phrase.end_ms <= phrase.until_ms
        assert not [at for at in starts if phrase.at_ms < at < phrase.end_ms]
    fixed = {(cue.at_ms, cue.kind) for cue in wished if cue.kind.spoken and not cue.slides}
    assert {(cue.at_ms, cue.kind) for cue in phrases if not cue.slides} <= fixed


def test_a_phrase_ends_a_breath_before_the_next_one() -> None:
    waiting = sliding(CueKind.COACHING, "Slow", 0, 2_000)
    for at, expected in ((480, [(0, "Slow"), (480, "rep 12")]), (479, [(479, "rep 12")])):
        assert said(fit_speech([waiting, count(at, 3_000)], length_ms))[: len(expected)] == expected


def test_a_count_that_would_outlast_its_rep_is_shortened() -> None:
    assert said(fit_speech([count(0, until=699)], length_ms)) == [(0, "12")]
