"""The settings file: defaults, what each key says, and every problem at once."""

from pathlib import Path

import pytest

from app.domain.cue_values import CueLevel
from app.domain.errors import FileProblemsError
from app.domain.thresholds import DEFAULT
from app.planfile.screen_settings import ScreenSettings
from app.planfile.settings import Settings, parse_settings, read_settings

WHOLE = """# mine
format = 1
[sound]
speaker = "miniaudio"
device = "Hall speakers"
cues = "spare"
language = "de"
tones = 80
voice = 50
mute = true
[[latency]]
device = "simpleaudio"
ms = 40
[screen]
distance = 4.5
scheme = "dark"
contrast = "high"
motion = "reduced"
text = 150
language = "de"
direction = "rtl"
ask_before = false
[cautions]
session_minutes = 75
"""


def test_no_file_is_all_defaults(tmp_path: Path) -> None:
    assert read_settings(tmp_path / "settings.toml") == Settings()


def test_an_empty_file_is_all_defaults() -> None:
    assert parse_settings("", "s") == Settings()
    assert Settings().ask_before


def test_every_key_is_read() -> None:
    read = parse_settings(WHOLE, "s")
    assert (read.speaker, read.device, read.cues, read.language) == (
        "miniaudio",
        "Hall speakers",
        CueLevel.SPARE,
        "de",
    )
    assert (read.tones, read.voice, read.mute, read.distance_m) == (0.8, 0.5, True, 4.5)
    assert read.screen == ScreenSettings("dark", "high", "reduced", 150, "de", "rtl")
    assert not read.ask_before
    assert read.latency_ms == {"simpleaudio": 40}
    assert read.thresholds.session_minutes.value == 75
    assert read.thresholds.isometric_seconds == DEFAULT.isometric_seconds


def test_all_problems_come_at_once_each_with_its_place() -> None:
    text = (
        '[sound]\nspeaker = "loud"\ntones = 101\nmute = "no"\n'
        "[screen]\ndistance = nan\n[cautions]\nsesion_minutes = 3\n"
    )
    with pytest.raises(FileProblemsError) as caught:
        parse_settings(text, "s.toml")
    assert [(problem.line, problem.column) for problem in caught.value.problems] == [
        (2, 11),
        (3, 9),
        (4, 8),
        (6, 12),
        (8, 18),
    ]
    assert "session_minutes" in str(caught.value)


@pytest.mark.parametrize(
    "line",
    [
        'scheme = "sepia"',
        'contrast = "low"',
        'motion = "none"',
        "text = 99",
        "text = 201",
        'language = "fr"',
        'direction = "up"',
    ],
)
def test_a_screen_that_cannot_be_is_refused_with_its_place(line: str) -> None:
    with pytest.raises(FileProblemsError) as caught:
        parse_settings(f"[screen]\n{line}\n", "s.toml")
    assert [problem.line for problem in caught.value.problems] == [2]


def test_the_words_of_the_file_are_those_of_what_they_choose() -> None:
    from typing import get_args

    from app.audio.speaker.choice import Preference
    from app.audio.voice import LANGUAGES
    from app.planfile import settings

    assert get_args(Preference) == settings.SPEAKERS
    assert settings.LANGUAGES == LANGUAGES
