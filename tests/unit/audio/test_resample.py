"""Changing the rate of speech without changing the speech."""

import numpy as np
import pytest

from app.audio.resample import design, resample

FROM, TO = 22_050, 48_000


def sine(hertz: float, rate: int, seconds: float = 0.5) -> np.ndarray:
    return np.sin(2 * np.pi * hertz * np.arange(int(rate * seconds)) / rate)


@pytest.mark.parametrize("hertz", [100, 1_000, 5_000, 9_500])
def test_a_sine_stays_that_sine_undelayed(hertz: float) -> None:
    out = resample(sine(hertz, FROM), FROM, TO)
    middle = slice(2_000, -2_000)
    assert np.max(np.abs(out - sine(hertz, TO)[: len(out)])[middle]) < 0.02


def test_nothing_appears_above_the_old_band() -> None:
    noise = np.random.default_rng(5).standard_normal(FROM)
    power = np.abs(np.fft.rfft(resample(noise, FROM, TO) * np.hanning(TO))) ** 2
    above = np.fft.rfftfreq(TO, 1 / TO) > 12_000
    assert 10 * np.log10(power[above].max() / power[~above].max()) < -80


@pytest.mark.parametrize(
    ("frames", "expected"), [(0, 0), (1, 3), (147, 320), (22_050, 48_000), (1_000, 2_177)]
)
def test_the_length_is_that_of_the_same_time_rounded_up(frames: int, expected: int) -> None:
    assert len(resample(np.ones(frames), FROM, TO)) == expected


def test_the_same_rate_changes_nothing() -> None:
    wave = sine(440, TO)
    assert np.array_equal(resample(wave, TO, TO), wave)


def test_the_filter_is_symmetric_and_keeps_loudness() -> None:
    taps = design(320, 147)
    assert np.allclose(taps, taps[::-1])
    assert taps.sum() == pytest.approx(320)
    assert resample(np.ones(2_000), FROM, TO)[1_000:3_000] == pytest.approx(1, abs=1e-4)
