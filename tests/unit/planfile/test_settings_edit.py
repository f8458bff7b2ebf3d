"""Single settings written into a file that stays as its author wrote it."""

from dataclasses import replace
from pathlib import Path

import pytest

from app.domain.cue_values import CueLevel
from app.domain.errors import FileProblemsError, PacewrightError
from app.planfile.screen_settings import ScreenSettings
from app.planfile.settings import Settings, read_settings
from app.planfile.settings_edit import Changes, save_settings, screen_changes, sound_changes

MINE = """# how the hall wants it
format = 1

[sound]   # by ear
tones = 80   # the hall echoes
voice = 50

[[latency]]
device = "simpleaudio"
ms = 40      # measured on the stage
# nothing below is changed by hand
[screen]
distance = 4.5
"""


@pytest.fixture
def path(tmp_path: Path) -> Path:
    file = tmp_path / "settings.toml"
    file.write_text(MINE, encoding="utf-8")
    return file


def test_a_value_takes_its_place_and_every_remark_keeps_its_own(path: Path) -> None:
    save_settings(path, {("sound", "tones"): 65})
    assert path.read_text(encoding="utf-8") == MINE.replace("tones = 80   #", "tones = 65   #")


def test_what_is_the_same_is_written_as_it_was(path: Path) -> None:
    save_settings(path, {("sound", "tones"): 80, ("latency", "simpleaudio", "ms"): 40})
    assert path.read_text(encoding="utf-8") == MINE


def test_new_keys_join_their_table_and_none_takes_one_out(path: Path) -> None:
    save_settings(path, {("sound", "device"): "Hall speakers", ("sound", "mute"): True})
    assert (read_settings(path).device, read_settings(path).mute) == ("Hall speakers", True)
    save_settings(path, {("sound", "device"): None, ("sound", "voice"): None, ("sound", "language"): None})
    assert (read_settings(path).device, read_settings(path).voice) == (None, 1.0)
    assert "# the hall echoes" in path.read_text(encoding="utf-8")


def test_a_latency_is_written_to_the_row_of_its_device_or_to_a_row_of_its_own(path: Path) -> None:
    save_settings(path, {("latency", "miniaudio: Hall", "ms"): 180})
    save_settings(path, {("latency", "simpleaudio", "ms"): 35})
    assert read_settings(path).latency_ms == {"simpleaudio": 35, "miniaudio: Hall": 180}
    assert "ms = 35      # measured on the stage" in path.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    "written",
    [
        "sound.tones = 40   # dotted\n",
        'sound = { tones = 40 }\nlatency = [{ device = "simpleaudio", ms = 3 }]\n',
        "[screen]\ndistance = 2\n",
        "# only a remark\n",
        "",
    ],
)
def test_tables_in_every_spelling_are_written_into(path: Path, written: str) -> None:
    path.write_text(written, encoding="utf-8")
    changes: Changes = {
        ("sound", "tones"): 70,
        ("sound", "cues"): "spare",
        ("latency", "simpleaudio", "ms"): 9,
        ("latency", "other", "ms"): 19,
    }
    save_settings(path, changes)
    read = read_settings(path)
    assert (read.tones, read.cues) == (0.7, CueLevel.SPARE)
    assert read.latency_ms == {"simpleaudio": 9, "other": 19}
    remarks = [line.partition("#")[2] for line in written.splitlines() if "#" in line]
    assert all(remark in path.read_text(encoding="utf-8") for remark in remarks)


def test_the_file_and_its_folder_are_made(tmp_path: Path) -> None:
    path = tmp_path / "deep" / "settings.toml"
    save_settings(path, {("latency", "simpleaudio", "ms"): 35})
    assert read_settings(path) == Settings(latency_ms={"simpleaudio": 35})
    assert path.read_text(encoding="utf-8").startswith("format = 1\n")


@pytest.mark.parametrize("broken", ["[[[", "[sound]\nvolume = 3\n", "sound = 3\n"])
def test_a_file_that_is_not_in_order_is_left_as_it_is(path: Path, broken: str) -> None:
    path.write_text(broken, encoding="utf-8")
    with pytest.raises(FileProblemsError):
        save_settings(path, {("sound", "tones"): 70})
    assert path.read_text(encoding="utf-8") == broken


def test_what_the_file_may_not_say_is_not_written(path: Path) -> None:
    with pytest.raises(FileProblemsError, match="loud"):
        save_settings(path, {("sound", "tones"): 10, ("sound", "speaker"): "loud"})
    assert path.read_text(encoding="utf-8") == MINE


def test_a_folder_that_cannot_be_written_to_is_said_in_words(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    with pytest.raises(PacewrightError, match="cannot be written"):
        save_settings(tmp_path / "file" / "settings.toml", {("sound", "tones"): 70})


def test_only_what_differs_of_the_sound_is_a_change(path: Path) -> None:
    before = read_settings(path)
    after = replace(before, speaker="miniaudio", device="Hall", cues=CueLevel.TONES, tones=0.35, mute=True)
    changes = sound_changes(before, after)
    assert changes == {
        ("sound", "speaker"): "miniaudio",
        ("sound", "device"): "Hall",
        ("sound", "cues"): "tones",
        ("sound", "tones"): 35,
        ("sound", "mute"): True,
    }
    save_settings(path, changes)
    assert read_settings(path) == after
    assert sound_changes(after, after) == {}
    save_settings(path, sound_changes(after, before))
    assert read_settings(path) == before


def test_only_what_differs_of_the_screen_is_written_and_read_again_as_chosen(path: Path) -> None:
    before = read_settings(path)
    after = replace(before, distance_m=2.5, screen=ScreenSettings("system", text=150))
    changes = screen_changes(before, after)
    assert changes == {("screen", "distance"): 2.5, ("screen", "scheme"): "system", ("screen", "text"): 150}
    save_settings(path, changes)
    assert read_settings(path) == after
    assert screen_changes(after, after) == {}


def test_whether_a_session_begins_with_questions_is_written_with_the_screen(path: Path) -> None:
    changes = screen_changes(Settings(), Settings(ask_before=False))
    assert changes == {("screen", "ask_before"): False}
    save_settings(path, changes)
    assert not read_settings(path).ask_before
