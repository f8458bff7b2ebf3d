"""The tones, the resampling and the files against what stands outside the project."""

import re
import shutil
import subprocess
import wave
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy import signal

from app.audio.bout_sound import Manner
from app.audio.guide import write_guide
from app.audio.resample import design, resample
from app.audio.samples import RATE, Wave
from app.audio.tones import C5, C6, E5, E6, G5, G6, LOUDNESS, note, tone
from app.domain.cue_values import CueKind, CueLevel
from app.domain.plan import Side
from tests.bouts import EVERY_DOSE, ROTATION, exercise, timeline_of

# Equal temperament on A4 = 440 Hz (ISO 16: the standard tuning frequency). The frequencies are those of the
# usual printed tables of notes, from memory, to two places.
TABLE = {"C5": 523.25, "E5": 659.26, "G5": 783.99, "A5": 880.00, "C6": 1046.50, "E6": 1318.51, "G6": 1567.98}
NOTES = {"C5": C5, "E5": E5, "G5": G5, "A5": note(12), "C6": C6, "E6": E6, "G6": G6}
GLIDE_MS = 400


def pitch_at(wave_: Wave, start_ms: int, length_ms: int = 60) -> float:
    """The strongest frequency of a stretch, by FFT with a parabola through the peak."""
    part = wave_[start_ms * 48 : (start_ms + length_ms) * 48, 0].astype(np.float64)
    size = 1 << 16
    power = np.log(np.abs(np.fft.rfft(part * np.hanning(len(part)), size)) + 1e-12)
    top = int(np.argmax(power))
    left, middle, right = power[top - 1 : top + 2]
    return float((top + 0.5 * (left - right) / (left - 2 * middle + right)) * RATE / size)


@pytest.mark.parametrize("name", TABLE)
def test_notes_are_those_of_equal_temperament(name: str) -> None:
    assert NOTES[name] == pytest.approx(TABLE[name], abs=0.005)


@pytest.mark.parametrize(
    ("kind", "name"),
    [
        (CueKind.HOLD_LENGTHENED, "C5"),
        (CueKind.HOLD, "E5"),
        (CueKind.HOLD_SHORTENED, "G5"),
        (CueKind.TICK, "A5"),
    ],
)
def test_a_level_tone_has_the_pitch_of_its_note_throughout(kind: CueKind, name: str) -> None:
    level = tone(kind, GLIDE_MS, Side.LEFT)
    for start in (0, 150, GLIDE_MS - 60):
        # A cent is a hundredth of a semitone; 5 cents is about what a trained ear tells apart (from memory).
        assert abs(1200 * np.log2(pitch_at(level, start) / TABLE[name])) < 5


@pytest.mark.parametrize(
    ("kind", "first", "last"), [(CueKind.ECCENTRIC, "G5", "C5"), (CueKind.CONCENTRIC, "C5", "G5")]
)
def test_a_glide_runs_from_note_to_note_by_equal_steps_of_pitch(kind: CueKind, first: str, last: str) -> None:
    glide = tone(kind, GLIDE_MS, Side.LEFT)
    places = np.arange(20, GLIDE_MS - 80, 40)
    heard = np.array([pitch_at(glide, int(place)) for place in places])
    semitones = 12 * np.log2(heard / TABLE[first])
    whole = 12 * np.log2(TABLE[last] / TABLE[first])
    assert np.max(np.abs(semitones - whole * (places + 30) / GLIDE_MS)) < 0.15


@pytest.mark.parametrize(
    ("kind", "names"), [(CueKind.EXPLOSIVE, ("C6", "E6", "G6")), (CueKind.END, ("C5", "E5", "G5", "C6"))]
)
def test_notes_struck_together_are_all_there(kind: CueKind, names: tuple[str, ...]) -> None:
    wave_ = tone(kind, 450, Side.BOTH)[:, 0].astype(np.float64)
    power = np.abs(np.fft.rfft(wave_ * np.hanning(len(wave_)), 1 << 17))
    peaks, _ = signal.find_peaks(power, height=power.max() * 0.2, distance=50)
    heard = peaks * RATE / (1 << 17)
    assert len(heard) == len(names)
    assert heard == pytest.approx([TABLE[name] for name in names], rel=0.003)


@pytest.mark.parametrize(("rate_from", "rate_to"), [(22_050, 48_000), (16_000, 48_000), (48_000, 22_050)])
def test_resampling_equals_scipys_with_the_same_filter(rate_from: int, rate_to: int) -> None:
    noise = np.random.default_rng(3).standard_normal(4_001)
    common = int(np.gcd(rate_from, rate_to))
    up, down = rate_to // common, rate_from // common
    expected = signal.resample_poly(noise, up, down, window=design(up, down) / up)
    assert np.max(np.abs(resample(noise, rate_from, rate_to) - expected)) < 1e-12


def test_the_filter_holds_the_band_and_stops_what_is_above_by_90_db() -> None:
    frequency, response = signal.freqz(design(320, 147) / 320, worN=1 << 16, fs=22_050 * 320)
    loudness: NDArray[np.float64] = 20 * np.log10(np.abs(response) + 1e-15)
    assert np.max(np.abs(loudness[frequency < 9_500])) < 0.2
    assert np.max(loudness[frequency > 12_000]) < -90


def test_a_wav_file_is_what_it_says_to_others_too(tmp_path: Path) -> None:
    timeline = timeline_of(ROTATION, exercise(EVERY_DOSE["tempo"], "Row"))
    path = tmp_path / "session.wav"
    write_guide(path, timeline, Manner(CueLevel.TONES), {})
    frames = (timeline.timed_ms + 500) * 48
    with wave.open(str(path)) as file:
        assert file.getparams()[:5] == (2, 2, 48_000, frames, "NONE")
    if shutil.which("soxi") is None:
        pytest.skip("sox is not installed")
    told = subprocess.run(["soxi", str(path)], capture_output=True, text=True, check=True).stdout
    for line in (
        r"Channels\s+: 2",
        r"Sample Rate\s+: 48000",
        r"Precision\s+: 16-bit",
        rf"= {frames} samples",
    ):
        assert re.search(line, told)


def test_loudness_by_sox_is_the_loudness_meant(tmp_path: Path) -> None:
    if shutil.which("sox") is None:
        pytest.skip("sox is not installed")
    path = tmp_path / "hold.wav"
    samples = np.rint(tone(CueKind.HOLD, 5_000, Side.BOTH) * 32_767).astype("<i2")
    with path.open("wb") as raw, wave.open(raw, "wb") as file:
        file.setparams((2, 2, RATE, len(samples), "NONE", "not compressed"))
        file.writeframes(samples.tobytes())
    told = subprocess.run(["sox", str(path), "-n", "stat"], capture_output=True, text=True, check=True).stderr
    found = re.search(r"RMS\s+amplitude:\s+([\d.]+)", told)
    assert found
    assert float(found[1]) == pytest.approx(LOUDNESS, rel=0.001)
