"""The command that lists the devices and plays a test, without playing to any."""

import pytest

from app.__main__ import main


def test_silence_can_be_tested_at_once(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["speakers", "--speaker", "silent"]) == 0
    told = capsys.readouterr()
    assert told.out.startswith("simpleaudio: the system's default device\nminiaudio: ")
    assert told.err == ""
