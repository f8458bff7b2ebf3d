"""Sound as it was heard: played into a PulseAudio of the test's own, and recorded."""

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from tests.player import known_bout
from tests.playing import Playing
from tests.pulse import RATE, PulseAudio, installed, pulse_audio

pytestmark = [
    pytest.mark.sound,
    pytest.mark.skipif(not installed(), reason="PulseAudio is not installed"),
]
EXACT = {"simpleaudio": 0, "miniaudio": 1}
"""Samples by which cues of a bout may be off against each other."""
RECORDINGS = {"simpleaudio": 1, "miniaudio": 3}
"""miniaudio waits for the interpreter: an overloaded machine may starve it once, not again and again."""
SILENT_WITHIN_MS = 100
FRAMES_A_MS = 48


@pytest.fixture
def server(tmp_path: Path) -> Iterator[PulseAudio]:
    with pulse_audio(tmp_path) as own:
        yield own


def onsets(samples: NDArray[np.int16]) -> NDArray[np.int64]:
    """First samples after at least 10 ms of silence."""
    loud = np.flatnonzero(np.any(samples != 0, axis=1))
    return loud[np.insert(np.diff(loud) > 480, 0, True)] if loud.size else loud


def farthest_off(server: PulseAudio, speaker: str) -> int:
    """Samples by which the farthest of the nine cues is off against the first; a second when torn."""
    with server.recording() as recording:
        player = Playing(server.environment, speaker, "bout")
        assert player.hear() == {"speaker": speaker, "notice": None}
        assert player.end() == ""
    meant, heard = onsets(known_bout()), onsets(recording.samples())
    assert len(meant) == 9
    if len(heard) != len(meant):
        return RATE
    off = (heard - heard[0]) - (meant - meant[0])
    return int(np.max(np.abs(off)))


@pytest.mark.parametrize("speaker", EXACT)
def test_the_cues_of_a_bout_are_where_they_belong_beside_busy_threads(
    server: PulseAudio, speaker: str
) -> None:
    tries = range(RECORDINGS[speaker])
    assert any(farthest_off(server, speaker) <= EXACT[speaker] for _ in tries)


@pytest.mark.parametrize("speaker", EXACT)
def test_a_stop_is_silence_within_a_tenth_of_a_second(server: PulseAudio, speaker: str) -> None:
    with server.recording() as recording:
        player = Playing(server.environment, speaker, "tone")
        player.hear_until(lost=False)
        recording.wait_for_sound()
        player.tell("stop")
        player.hear_until()
        # What the recorder has not yet written by now counts against the speaker.
        told = recording.frames
        player.end()
    loud = np.flatnonzero(recording.samples().any(axis=1))
    assert (loud[-1] - told) / FRAMES_A_MS <= SILENT_WITHIN_MS


@pytest.mark.parametrize("speaker", ["auto", "miniaudio"])
def test_a_server_that_dies_is_told_and_the_sound_comes_back_with_it(
    server: PulseAudio, speaker: str
) -> None:
    player = Playing(server.environment, speaker, "tone")
    player.hear_until(lost=False)
    server.end()
    gone = player.hear_until(lost=True, speaker="silent")
    assert gone["notice"].startswith("The sound device has gone.")
    server.start()
    with server.recording() as recording:
        back = player.hear_until(lost=False)
        assert back["notice"] is None
        recording.wait_for_sound()
        player.tell("stop")
        player.hear_until()
        assert player.end() == ""
