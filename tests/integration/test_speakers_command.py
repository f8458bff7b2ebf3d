"""The command that lists the devices and plays a test, without playing to any."""

import numpy as np
import pytest

from app.__main__ import main
from app.audio.samples import PER_MS, rms
from app.cli.speakers import rehearsal_of_tones


def test_the_test_sound_is_a_rep_on_the_left_then_one_on_the_right_then_the_chord() -> None:
    sound = rehearsal_of_tones().astype(np.float64)
    loud = np.flatnonzero(sound.any(axis=1))
    assert loud[0] == 1_000 * PER_MS
    left, right = sound[1_000 * PER_MS : 3_900 * PER_MS], sound[4_000 * PER_MS : 6_900 * PER_MS]
    assert rms(left[:, 0]) > 2 * rms(left[:, 1])
    assert rms(right[:, 1]) > 2 * rms(right[:, 0])
    chord = sound[7_000 * PER_MS : 7_450 * PER_MS]
    assert chord.any()
    assert np.array_equal(chord[:, 0], chord[:, 1])


def test_silence_can_be_tested_at_once(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["speakers", "--speaker", "silent"]) == 0
    told = capsys.readouterr()
    assert told.out.startswith("simpleaudio: the system's default device\nminiaudio: ")
    assert told.err == ""
