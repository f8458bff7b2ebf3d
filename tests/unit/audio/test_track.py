"""A bout as samples: exact, never clipped, speech over softened tones."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.audio.samples import FULL_SCALE, PEAK, PER_MS, Spoken, to_stereo
from app.audio.tones import tone
from app.audio.track import DUCK_RAMP_MS, DUCKED, Volumes, render_track
from app.domain.cue_values import Cue, CueKind
from app.domain.plan import Side

LOUDEST = int(PEAK * FULL_SCALE) + 1


def tick(at: int, side: Side = Side.BOTH) -> Cue:
    return Cue(at, CueKind.TICK, side, 50, "1")


def words(at: int, text: str = "rep 1", side: Side = Side.BOTH) -> Cue:
    return Cue(at, CueKind.COUNT, side, 400, text, text)


def phrase(ms: int = 400, level: float = 0.4) -> Spoken:
    """A phrase of one steady value, so that whatever lies over it can be told apart."""
    return np.full(ms * PER_MS, round(level * FULL_SCALE), dtype=np.int16)


def onsets(track: np.ndarray) -> list[int]:
    """First samples after silence of at least 20 ms."""
    loud = np.flatnonzero(np.any(track != 0, axis=1))
    return [int(at) for at in loud[np.insert(np.diff(loud) > 20 * PER_MS, 0, True)]] if loud.size else []


@given(st.lists(st.integers(0, 20_000), unique=True, max_size=40), st.integers(-5_000, 10_000))
@settings(max_examples=80)
def test_each_tone_begins_at_its_own_sample_exactly(times: list[int], start: int) -> None:
    spaced = [at for place, at in enumerate(sorted(times)) if not place or at - sorted(times)[place - 1] > 80]
    cues = [tick(start + at) for at in spaced]
    track = render_track(cues, start, start + 21_000)
    assert track.shape == (21_000 * PER_MS, 2)
    assert track.dtype == np.int16
    assert onsets(track) == [at * PER_MS for at in spaced]


def test_what_lies_outside_the_stretch_is_left_out_and_what_crosses_its_end_is_cut() -> None:
    cues = [tick(99), tick(200), Cue(480, CueKind.HOLD, Side.BOTH, 300, "hold"), tick(500)]
    track = render_track(cues, 100, 500)
    assert onsets(track) == [100 * PER_MS, 380 * PER_MS]
    whole = to_stereo(tone(CueKind.HOLD, 300, Side.BOTH))
    assert np.array_equal(track[380 * PER_MS :], whole[: 20 * PER_MS])


def test_the_same_cues_give_the_same_samples_wherever_the_track_begins() -> None:
    cues = [tick(1_000), words(2_000), Cue(2_000, CueKind.ECCENTRIC, Side.LEFT, 400, "lower")]
    whole = render_track(cues, 0, 4_000, phrases={"rep 1": phrase()})
    later = render_track(cues, 1_500, 4_000, phrases={"rep 1": phrase()})
    assert np.array_equal(whole[1_500 * PER_MS :], later)


def test_nothing_to_cue_is_silence_and_no_stretch_is_no_samples() -> None:
    assert not render_track([], 0, 50).any()
    assert render_track([tick(0)], 10, 10).shape == (0, 2)


def test_speech_begins_at_its_own_sample_on_both_channels() -> None:
    track = render_track([words(1_234)], 0, 2_000, phrases={"rep 1": phrase()})
    assert onsets(track) == [1_234 * PER_MS]
    assert np.array_equal(track[1_234 * PER_MS : 1_634 * PER_MS, 0], phrase())


def test_speech_of_one_side_is_louder_there() -> None:
    track = render_track([words(0, side=Side.RIGHT)], 0, 400, phrases={"rep 1": phrase()})
    assert track[0, 1] > 2 * track[0, 0] > 0


def test_a_text_without_a_phrase_is_left_out() -> None:
    assert not render_track([words(0)], 0, 400).any()
    assert not render_track([words(0)], 0, 400, phrases={"rep 1": phrase(0)}).any()


def test_tones_are_6_db_softer_under_speech_and_not_before_or_after() -> None:
    cues = [Cue(0, CueKind.HOLD, Side.BOTH, 1_000, "hold"), words(400)]
    silent = phrase(level=0.0)
    silent[0] = 1
    track = render_track(cues, 0, 1_000, phrases={"rep 1": silent}).astype(float)
    alone = tone(CueKind.HOLD, 1_000, Side.BOTH) * FULL_SCALE
    under = slice(410 * PER_MS, 790 * PER_MS)
    assert np.allclose(track[under], alone[under] * DUCKED, atol=2)
    assert 20 * np.log10(DUCKED) == pytest.approx(-6)
    before, after = slice(0, (400 - DUCK_RAMP_MS) * PER_MS), slice((800 + DUCK_RAMP_MS) * PER_MS, None)
    assert np.allclose(track[before], alone[before], atol=1)
    assert np.allclose(track[after], alone[after], atol=1)


def test_a_softened_tone_still_begins_at_its_own_sample() -> None:
    cues = [Cue(500, CueKind.ECCENTRIC, Side.LEFT, 400, "lower"), words(500)]
    track = render_track(cues, 0, 1_000, phrases={"rep 1": phrase(level=0.1)})
    assert onsets(track) == [500 * PER_MS]


def test_no_sample_is_above_minus_one_dbfs_however_much_sounds_together() -> None:
    cues = [words(0), words(100, "two"), Cue(50, CueKind.END, Side.LEFT, 450, "bout done"), tick(200)]
    loud = phrase(level=0.95)
    track = render_track(cues, 0, 1_000, phrases={"rep 1": loud, "two": loud})
    assert np.max(np.abs(track.astype(int))) <= LOUDEST
    # Made softer as a whole, not cut off: the steady phrase under the tone is nowhere flat at the limit.
    assert np.count_nonzero(np.abs(track.astype(int)) >= LOUDEST - 1) < 20


def test_volumes_work_apart_and_mute() -> None:
    cues = [tick(0), words(500)]
    spoken = {"rep 1": phrase()}
    half = render_track(cues, 0, 1_000, volumes=Volumes(0.5, 1.0), phrases=spoken)
    full = render_track(cues, 0, 1_000, phrases=spoken)
    assert np.allclose(half[: 50 * PER_MS], full[: 50 * PER_MS] / 2, atol=1)
    assert np.array_equal(half[500 * PER_MS :], full[500 * PER_MS :])
    assert not render_track(cues, 0, 1_000, volumes=Volumes(0.0, 0.0), phrases=spoken).any()
