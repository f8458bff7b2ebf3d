"""What the tones are like: equally loud, in their band, distinct, and each side in its place."""

from itertools import combinations

import numpy as np
import pytest
from numpy.typing import NDArray

from app.audio.samples import PEAK, PER_MS, RATE, Wave, rms
from app.audio.tones import LOUDNESS, RAMP_MS, tone
from app.domain.cue_tones import ACCENT_MS, CHORD_MS, MARK_MS, RELEASE_MS, TICK_MS
from app.domain.cue_values import SPOKEN, CueKind
from app.domain.plan import Side

LENGTHS = {
    CueKind.EXPLOSIVE: ACCENT_MS,
    CueKind.RELEASE: RELEASE_MS,
    CueKind.END: CHORD_MS,
    CueKind.MARK: MARK_MS,
    CueKind.TICK: TICK_MS,
}
TONES = [kind for kind in CueKind if kind not in SPOKEN]
EACH = [pytest.param(kind, side, id=f"{kind}-{side}") for kind in TONES for side in Side]
GLIDE_MS = 350


def heard(kind: CueKind, side: Side = Side.BOTH) -> Wave:
    return tone(kind, LENGTHS.get(kind, GLIDE_MS), side)


def decibels(ratio: float) -> float:
    return 20 * float(np.log10(ratio))


def spectrum(wave: Wave) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    power = np.abs(np.fft.rfft(wave.sum(axis=1), 1 << 17)) ** 2
    return np.asarray(np.fft.rfftfreq(1 << 17, 1 / RATE)), np.asarray(power, dtype=np.float64)


@pytest.mark.parametrize(("kind", "side"), EACH)
def test_a_tone_is_as_long_as_asked_and_never_near_clipping(kind: CueKind, side: Side) -> None:
    wave = heard(kind, side)
    assert wave.shape == (LENGTHS.get(kind, GLIDE_MS) * PER_MS, 2)
    assert np.max(np.abs(wave)) < PEAK


@pytest.mark.parametrize(("kind", "side"), EACH)
def test_all_tones_are_equally_loud_within_a_decibel_in_stereo_and_on_one_loudspeaker(
    kind: CueKind, side: Side
) -> None:
    wave = heard(kind, side)
    assert abs(decibels(rms(wave) / LOUDNESS)) < 0.01
    assert abs(decibels(rms(wave.mean(axis=1)) / LOUDNESS)) < 1


@pytest.mark.parametrize(("kind", "side"), EACH)
def test_the_energy_of_a_tone_is_between_500_and_2000_hz(kind: CueKind, side: Side) -> None:
    frequency, power = spectrum(heard(kind, side))
    assert power[(frequency >= 500) & (frequency <= 2_000)].sum() > 0.95 * power.sum()


@pytest.mark.parametrize(("kind", "side"), EACH)
def test_a_tone_sounds_from_its_very_first_sample_and_begins_and_ends_softly(
    kind: CueKind, side: Side
) -> None:
    wave = heard(kind, side)
    peak = np.max(np.abs(wave))
    assert np.all(np.abs(wave[0]) * 32_767 >= 8)
    assert np.max(np.abs(wave[:PER_MS])) < 0.15 * peak
    assert np.max(np.abs(wave[-PER_MS:])) < 0.15 * peak


def test_the_ramp_is_of_15_ms_with_ticks_no_exception() -> None:
    for kind in (CueKind.HOLD, CueKind.TICK):
        wave = np.abs(heard(kind)[:, 0])
        loudest = wave.max()
        assert wave[: RAMP_MS * PER_MS // 2].max() < 0.6 * loudest
        assert wave[: (RAMP_MS + 2) * PER_MS].max() > 0.97 * loudest


@pytest.mark.parametrize("kind", TONES)
def test_left_is_louder_on_the_left_and_right_on_the_right(kind: CueKind) -> None:
    left, right, both = (heard(kind, side) for side in (Side.LEFT, Side.RIGHT, Side.BOTH))
    assert decibels(rms(left[:, 0]) / rms(left[:, 1])) > 6
    assert decibels(rms(right[:, 1]) / rms(right[:, 0])) > 6
    assert np.array_equal(both[:, 0], both[:, 1])


@pytest.mark.parametrize("kind", [kind for kind in TONES if kind is not CueKind.TICK])
def test_left_and_right_differ_on_one_loudspeaker_too(kind: CueKind) -> None:
    left, right = (spectrum(heard(kind, side))[1] for side in (Side.LEFT, Side.RIGHT))
    # 1 is the same spectrum up to loudness.
    likeness = float(np.sum(np.sqrt(left * right)) / np.sqrt(left.sum() * right.sum()))
    assert likeness < 0.97


def test_the_right_tick_has_an_overtone_that_the_left_has_not() -> None:
    shares = {}
    for side in (Side.LEFT, Side.RIGHT):
        frequency, power = spectrum(heard(CueKind.TICK, side))
        shares[side] = power[frequency > 1_500].sum() / power.sum()
    assert shares[Side.LEFT] < 0.01
    assert shares[Side.RIGHT] > 0.3


@pytest.mark.parametrize(("one", "other"), list(combinations(TONES, 2)))
def test_no_two_kinds_of_tone_have_the_same_shape(one: CueKind, other: CueKind) -> None:
    first, second = (np.asarray(heard(kind)[:, 0], dtype=np.float64) for kind in (one, other))
    length = max(len(first), len(second))
    joined = np.fft.irfft(np.fft.rfft(first, 2 * length) * np.conj(np.fft.rfft(second, 2 * length)))
    likeness = np.max(np.abs(joined)) / np.sqrt(np.sum(first**2) * np.sum(second**2))
    assert likeness < 0.8


def test_a_spoken_kind_has_no_tone() -> None:
    with pytest.raises(KeyError):
        tone(CueKind.COUNT, 100, Side.LEFT)


def test_a_tone_is_kept_and_cannot_be_changed() -> None:
    kept = heard(CueKind.TICK)
    assert heard(CueKind.TICK) is kept
    with pytest.raises(ValueError, match="read-only"):
        kept[0] = 0
