"""Machines without sound, and with sound that goes nowhere: the program goes on and says so plainly."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.playing import Playing
from tests.pulse import ALSA_TO_NOWHERE, ALSA_WITHOUT_DEVICE

pytestmark = pytest.mark.sound
ROOT = Path(__file__).parents[2]


def world(folder: Path, alsa: str) -> dict[str, str]:
    """An environment in which ALSA is set up as given and there is no PulseAudio."""
    settings = folder / "asound.conf"
    settings.write_text(alsa)
    return {
        **os.environ,
        "ALSA_CONFIG_PATH": f"/usr/share/alsa/alsa.conf:{settings}",
        "XDG_RUNTIME_DIR": str(folder),
        "PULSE_SERVER": f"unix:{folder}/nothing",
        "HOME": str(folder),
    }


def pacewright(environment: dict[str, str], *words: str) -> "subprocess.CompletedProcess[str]":
    return subprocess.run(
        [sys.executable, "-m", "app", *words],
        env=environment, cwd=ROOT, capture_output=True, text=True, check=False, timeout=60,
    )  # fmt: skip


@pytest.mark.parametrize("speaker", ["auto", "simpleaudio", "miniaudio"])
def test_without_a_device_a_buffer_is_taken_in_silence_with_a_notice(tmp_path: Path, speaker: str) -> None:
    player = Playing(world(tmp_path, ALSA_WITHOUT_DEVICE), speaker, "tone")
    first = player.hear()
    assert first["speaker"] == "silent"
    assert first["notice"].startswith("No sound: ")
    assert "tried again at the next bout" in first["notice"]
    player.hear()
    player.tell("stop")
    assert player.hear()["stop_took_ms"] < 100
    assert player.end() == ""


def test_without_a_device_the_speakers_command_says_so_and_fails(tmp_path: Path) -> None:
    done = pacewright(world(tmp_path, ALSA_WITHOUT_DEVICE), "speakers")
    assert done.returncode == 1
    assert "miniaudio: no device found" in done.stdout
    assert done.stderr.startswith("No sound: The sound device could not be opened")
    assert len(done.stderr.splitlines()) == 1


def test_sound_that_goes_nowhere_does_no_harm(tmp_path: Path) -> None:
    player = Playing(world(tmp_path, ALSA_TO_NOWHERE), "simpleaudio", "tone")
    assert player.hear() == {"speaker": "simpleaudio", "notice": None}
    player.hear()
    player.tell("stop")
    player.hear_until()
    assert player.end() == ""


def test_the_devices_of_a_named_kind_can_be_listed_without_a_sound(tmp_path: Path) -> None:
    done = pacewright(world(tmp_path, ALSA_WITHOUT_DEVICE), "speakers", "--list")
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout.splitlines()[0] == "simpleaudio: the system's default device"


def test_a_device_that_is_not_there_is_named(tmp_path: Path) -> None:
    done = pacewright(
        world(tmp_path, ALSA_WITHOUT_DEVICE), "speakers", "--speaker", "miniaudio", "--device", "Hall"
    )
    assert done.returncode == 1
    assert "There is no sound device called 'Hall'." in done.stderr
