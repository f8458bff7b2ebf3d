"""The sound's pages: what is chosen, tried, kept and set against the picture, by keys, without a device."""

import threading
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QLabel, QPushButton, QSlider, QStackedWidget, QWidget
from pytestqt.qtbot import QtBot

from app import wiring
from app.audio.trial import Heard, Trial
from app.domain.cue_values import CueLevel
from app.domain.errors import PacewrightError
from app.planfile.settings import Settings
from app.planfile.settings_edit import Changes
from app.views.calibration import CalibrationPage
from app.views.house import House
from app.views.lettering import type_scale
from app.views.sound.page import SoundPage
from app.views.sound.room import SoundRoom
from app.views.sound.words import devices_offered
from app.views.theme import Look, Place, choose
from app.views.widgets.choice_box import ChoiceBox
from tests.fakes import HandClock, RecordingSpeaker
from tests.rig import Rig

LOOK = Look(choose(Place.TRAINING), "Inter", type_scale(16))
FOUND = ("Hall speakers", "Headphones")


class QuietTrial(Trial):
    """A trial that plays until it is stopped, and says what it is told to."""

    def __init__(self, heard: Heard) -> None:
        self.heard, self.stopped, self.over = heard, threading.Event(), False

    def begin(self) -> Heard:
        return self.heard

    def wait(self) -> None:
        self.stopped.wait(10)
        self.over = True

    def stop(self) -> None:
        self.stopped.set()


class Room:
    """The sound's room with everything it needs, and what it did."""

    def __init__(self, qtbot: QtBot, house: House, settings: Settings) -> None:
        self.qtbot, self.saved, self.tried = qtbot, list[Changes](), list[tuple[Settings, QuietTrial]]()
        self.speaker, self.refused = RecordingSpeaker(40), ""
        self.heard = Heard("simpleaudio", 1.0, ())
        self.spoken_to: list[Settings] = []
        self.house = replace(
            house,
            read_settings=lambda: settings,
            save_settings=self._save,
            list_devices=lambda: FOUND,
            make_clock=lambda: HandClock(3_000),
            try_speaker=self._speaker,
            make_trial=self._trial,
        )
        self.left = 0
        self.enter()

    def enter(self) -> None:
        self.room = SoundRoom(LOOK, self.house)
        self.room.left.connect(self._count)
        self.room.resize(1366, 768)
        self.qtbot.addWidget(self.room)
        self.room.show()
        self.qtbot.waitUntil(lambda: "found" in self.texts(), timeout=3_000)

    def _count(self) -> None:
        self.left += 1

    def _save(self, changes: Changes) -> None:
        if self.refused:
            raise PacewrightError(self.refused)
        self.saved.append(changes)

    def _speaker(self, settings: Settings) -> RecordingSpeaker:
        self.spoken_to.append(settings)
        return self.speaker

    def _trial(self, settings: Settings) -> QuietTrial:
        self.tried.append((settings, QuietTrial(self.heard)))
        return self.tried[-1][1]

    @property
    def page(self) -> SoundPage:
        (page,) = self.room.findChildren(SoundPage)
        return page

    @property
    def mute(self) -> QCheckBox:
        (mute,) = self.page.findChildren(QCheckBox)
        return mute

    @property
    def showing(self) -> QWidget:
        shown = self.room.currentWidget()
        assert shown is not None
        return shown

    def texts(self) -> str:
        return "\n".join(part.text() for part in self.page.findChildren(QLabel))

    def box(self, name: str) -> ChoiceBox:
        (found,) = (box for box in self.page.findChildren(ChoiceBox) if box.accessibleName() == name)
        return found

    def slider(self, name: str) -> QSlider:
        (found,) = (part for part in self.page.findChildren(QSlider) if part.accessibleName() == name)
        return found

    def pick(self, name: str, value: object) -> None:
        self.box(name).setCurrentIndex(self.box(name).findData(value))

    def button(self, words: str) -> QPushButton:
        found = [each for each in self.page.findChildren(QPushButton) if each.text().startswith(words)]
        assert len(found) == 1, words
        return found[0]

    def click(self, words: str) -> None:
        self.qtbot.mouseClick(self.button(words), Qt.MouseButton.LeftButton)

    def press(self, part: QWidget, *keys: Qt.Key) -> None:
        for key in keys:
            self.qtbot.keyClick(part, key)


@pytest.fixture
def settings() -> Settings:
    return Settings(tones=0.8, device="Hall speakers")


@pytest.fixture
def room(qtbot: QtBot, rig: Rig, settings: Settings) -> Iterator[Room]:
    made = Room(qtbot, rig.house, settings)
    yield made
    made.room.end()


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Rig:
    return Rig(qtbot, tmp_path, wiring.open_record)


def test_what_is_kept_is_shown_and_keeping_it_unchanged_writes_nothing(room: Room) -> None:
    assert room.box("Output").currentText() == "Hall speakers"
    assert room.slider("Loudness of tones").value() == 80
    room.press(room.page, Qt.Key.Key_Return)
    assert (room.saved, room.left) == ([], 1)


def test_only_what_was_changed_is_written(room: Room) -> None:
    room.pick("Played by", "miniaudio")
    room.pick("Output", "Headphones")
    room.pick("What is said", CueLevel.TONES)
    room.pick("Language", "fr")
    room.mute.setChecked(True)
    room.click("Keep it")
    (changes,) = room.saved
    assert changes == {
        ("sound", "speaker"): "miniaudio",
        ("sound", "device"): "Headphones",
        ("sound", "cues"): "tones",
        ("sound", "language"): "fr",
        ("sound", "mute"): True,
    }
    assert room.left == 1


def test_escape_forgets_the_choices(room: Room) -> None:
    room.pick("Language", "de")
    room.press(room.box("Language"), Qt.Key.Key_Escape)
    assert (room.saved, room.left) == ([], 1)


def test_loudness_is_set_by_keys_in_steps_of_five_and_ten(room: Room) -> None:
    tones = room.slider("Loudness of tones")
    room.press(tones, Qt.Key.Key_Right, Qt.Key.Key_PageUp, Qt.Key.Key_Left, Qt.Key.Key_Left)
    assert tones.value() == 85
    assert "85 %" in room.texts()
    voice = room.slider("Loudness of the voice")
    room.press(voice, Qt.Key.Key_Home)
    room.press(room.page, Qt.Key.Key_Return)
    assert room.saved == [{("sound", "tones"): 85, ("sound", "voice"): 0}]


def test_every_choice_is_reached_by_tab_and_has_a_name(room: Room) -> None:
    room.room.activateWindow()
    parts, reached = room.page.findChildren(QWidget), list[str]()
    part: QWidget | None = room.box("Played by")
    while part is not None and part.accessibleName() not in reached:
        reached.append(part.accessibleName())
        part = part.nextInFocusChain()
        while part is not None and not (part.focusPolicy() & Qt.FocusPolicy.TabFocus and part in parts):
            part = part.nextInFocusChain()
    assert reached == [
        "Played by", "Output", "Look again", "What is said", "Language", "Loudness of tones",
        "Loudness of the voice", "Mute", "Test", "Set sound and picture together…",
        "Leave it as it was  (Esc)", "Keep it  (Enter)", "What may be chosen of the sound",
    ]  # fmt: skip


def test_enter_on_a_button_presses_it_and_keeps_nothing(room: Room) -> None:
    room.room.activateWindow()
    room.button("Test").setFocus()
    room.page.focusWidget()
    room.press(room.page, Qt.Key.Key_Return)
    assert len(room.tried) == 1
    assert room.left == 0


def test_a_test_plays_what_is_chosen_and_says_what_it_plays_through(room: Room) -> None:
    room.heard = Heard("miniaudio", 1.0, ("Sound plays through miniaudio: no ALSA.", "No speech: none."))
    room.pick("What is said", CueLevel.SPARE)
    room.click("Test")
    tried, trial = room.tried[0]
    assert (tried.cues, tried.tones, tried.device) == (CueLevel.SPARE, 0.8, "Hall speakers")
    room.qtbot.waitUntil(lambda: "Plays through miniaudio." in room.texts(), timeout=3_000)
    assert "Sound plays through miniaudio: no ALSA.\nNo speech: none." in room.texts()
    room.click("Stop the test")
    room.qtbot.waitUntil(lambda: trial.over, timeout=3_000)
    room.qtbot.waitUntil(lambda: room.button("Test").isVisible(), timeout=3_000)


def test_a_muted_test_says_that_it_is_not_heard(room: Room) -> None:
    room.mute.setChecked(True)
    room.click("Test")
    room.qtbot.waitUntil(lambda: "Muted: nothing is heard of it." in room.texts(), timeout=3_000)
    assert room.tried[0][0].mute


def test_leaving_stops_the_test(room: Room) -> None:
    room.click("Test")
    room.room.end()
    assert room.tried[0][1].stopped.is_set()


def test_outputs_are_looked_for_away_from_the_screen_and_anew_when_asked(room: Room) -> None:
    looked: list[threading.Thread] = []

    def found_now() -> tuple[str, ...]:
        looked.append(threading.current_thread())
        return ("Bluetooth box",)

    room.page._list_devices = found_now
    room.click("Look again")
    room.qtbot.waitUntil(lambda: "1 found" in room.texts(), timeout=3_000)
    assert looked[0] is not threading.main_thread()
    assert room.box("Output").findData("Bluetooth box") > 0
    assert room.box("Output").currentText() == "Hall speakers (not there now)"
    assert room.page.chosen.device == "Hall speakers"


def test_an_output_is_chosen_only_where_one_can_be_named(room: Room) -> None:
    enabled = []
    for speaker in ("auto", "simpleaudio", "miniaudio", "silent"):
        room.pick("Played by", speaker)
        enabled.append(room.box("Output").isEnabled())
    assert enabled == [True, False, True, False]


def test_what_the_command_decides_is_said(room: Room) -> None:
    assert "the command that opened it" not in room.texts()
    room.page._overrule = lambda settings: replace(settings, speaker="silent", language="de")
    room.pick("What is said", CueLevel.TONES)
    assert "the command that opened it decides: speaker silent, language de." in room.texts()


def test_what_cannot_be_written_is_said_and_nothing_is_lost(room: Room) -> None:
    room.refused = "settings.toml cannot be written: no room on the disk."
    room.pick("Language", "es")
    room.click("Keep it")
    assert "no room on the disk" in room.texts()
    assert room.left == 0
    assert room.page.chosen.language == "es"


def test_sound_and_picture_are_set_together_for_what_is_chosen_and_the_choices_wait(room: Room) -> None:
    room.pick("Played by", "simpleaudio")
    room.click("Set sound and picture together")
    beat = room.showing
    assert isinstance(beat, CalibrationPage)
    assert room.spoken_to[0].speaker == "simpleaudio"
    room.press(beat, Qt.Key.Key_Right, Qt.Key.Key_Space)
    assert room.saved == [{("latency", "recording", "ms"): 45}]
    assert room.showing is room.page
    assert room.speaker.asked[-2:] == ["stop", "close"]
    assert "The sound of recording is taken to come 45 ms late" in room.texts()
    assert room.page.chosen.latency_ms == {"recording": 45}
    assert room.page.chosen.speaker == "simpleaudio"


def test_leaving_the_room_ends_the_beat_too(room: Room) -> None:
    room.click("Set sound and picture together")
    room.room.end()
    assert room.speaker.asked[-1] == "close"


def test_an_output_that_is_not_there_stays_to_be_chosen() -> None:
    assert devices_offered(("A",), None) == {None: "the system's default", "A": "A"}
    assert devices_offered((), "B") == {None: "the system's default", "B": "B (not there now)"}


def test_the_start_page_leads_to_the_sound_and_back(rig: Rig, qtbot: QtBot) -> None:
    rig.open()
    rig.window.open_sound()
    assert isinstance(rig.page, SoundRoom)
    page = rig.page.findChild(SoundPage)
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert "Who is training?" in rig.texts()
    rig.window.open_sound()
    rig.window.close()


def test_settings_that_are_not_in_order_are_said_on_the_start_page(rig: Rig) -> None:
    def refuse() -> Settings:
        raise PacewrightError("settings.toml:3:1: unknown key")

    rig.house = replace(rig.house, read_settings=refuse)
    rig.open()
    rig.window.open_sound()
    assert "settings.toml:3:1: unknown key" in rig.texts()
    assert not isinstance(rig.page, QStackedWidget)
    rig.window.close()
