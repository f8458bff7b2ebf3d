"""`open`: whose word goes first, the command's or the file's, and what of the sound is written."""

import argparse

import pytest

from app import wiring
from app.cli import open_program
from app.domain.cue_values import CueLevel
from app.planfile.settings import Settings
from app.run.sounding import Loudness
from app.views.house import House
from tests.bouts import ROTATION, timeline_of

KEPT = Settings(speaker="miniaudio", cues=CueLevel.SPARE, language="de", tones=0.4, voice=0.8)


def opened(*words: str) -> House:
    parser = argparse.ArgumentParser()
    open_program.configure(parser)
    return open_program.house_for(parser.parse_args(words))


@pytest.mark.parametrize(
    ("words", "speaker", "cues", "language"),
    [
        ((), "miniaudio", CueLevel.SPARE, "de"),
        (("--sound", "silent"), "silent", CueLevel.SPARE, "de"),
        (("--cues", "tones", "--language", "fr"), "miniaudio", CueLevel.TONES, "fr"),
    ],
)
def test_the_words_of_the_command_go_before_those_of_the_file(
    words: tuple[str, ...], speaker: str, cues: CueLevel, language: str
) -> None:
    holding = opened(*words).overrule(KEPT)
    assert (holding.speaker, holding.cues, holding.language) == (speaker, cues, language)
    assert (holding.tones, holding.voice) == (0.4, 0.8)


def test_what_the_sounds_page_keeps_holds_for_the_next_session_but_for_the_commands_words() -> None:
    house = opened("--sound", "silent")
    house.save_settings({("sound", "speaker"): "simpleaudio", ("latency", "simpleaudio", "ms"): 70})
    assert house.read_settings().speaker == "simpleaudio"
    assert house.choose_speaker().name == "silent"
    assert opened().choose_speaker().name == "simpleaudio"
    assert opened().choose_speaker().latency_ms == 70


def test_a_muted_run_has_its_speaker_and_can_be_heard_again() -> None:
    wiring.save_settings({("sound", "mute"): True, ("sound", "tones"): 40, ("sound", "voice"): 20})
    house = opened("--sound", "silent")
    sound = house.make_sound(timeline_of(ROTATION), house.choose_speaker(), house.make_clock())
    assert sound.loudness == Loudness(40, muted=True)
    sound.close()
    assert opened("--sound", "simpleaudio").choose_speaker().name == "simpleaudio"
