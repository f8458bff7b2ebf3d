"""The sound on the athlete's screen: how far the voice is, why there is none, louder, softer, off."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app.run.sounding import Loudness, Making
from tests.desk import TWO_REPS, Desk

NO_SPEECH = "No speech: The speech library is not installed. Cues are tones only."


@pytest.fixture
def desk(qtbot: QtBot) -> Desk:
    return Desk(qtbot, TWO_REPS)


def test_how_far_the_voice_is_is_shown_until_it_is_made(desk: Desk) -> None:
    assert "Voice" not in desk.texts()
    desk.sound.making = Making(40, 120)
    assert "Voice: 40 of 120 phrases" in desk.wait(500).texts()
    desk.sound.making = None
    assert "Voice" not in desk.wait(500).texts()


def test_why_there_is_no_speech_or_no_sound_is_said_before_the_run(desk: Desk) -> None:
    desk.sound.notice = NO_SPEECH
    desk.speaker.notice = "No sound: There is no sound device."
    shown = desk.wait(500).texts()
    assert NO_SPEECH in shown
    assert "No sound: There is no sound device." in shown


def test_a_run_can_begin_before_the_voice_is_made(desk: Desk) -> None:
    desk.sound.making = Making(1, 120)
    desk.press(Qt.Key.Key_Space).wait(6_000)
    assert "Lower, 1, 1 of 2" in desk.texts()


@pytest.mark.parametrize(
    ("keys", "loudness"),
    [
        ([Qt.Key.Key_Minus], Loudness(90)),
        ([Qt.Key.Key_Minus, Qt.Key.Key_Minus, Qt.Key.Key_Plus], Loudness(90)),
        ([Qt.Key.Key_Equal], Loudness(100)),
        ([Qt.Key.Key_Minus] * 12, Loudness(0)),
        ([Qt.Key.Key_V], Loudness(100, muted=True)),
        ([Qt.Key.Key_V, Qt.Key.Key_V], Loudness(100)),
        ([Qt.Key.Key_V, Qt.Key.Key_Minus], Loudness(90)),
    ],
)
def test_keys_make_it_softer_louder_and_silent(desk: Desk, keys: list[Qt.Key], loudness: Loudness) -> None:
    desk.press(Qt.Key.Key_Space).wait(6_000).press(*keys)
    assert desk.sound.loudness == loudness
    assert desk.reps == []


def test_a_change_is_said_for_three_seconds_and_silence_as_long_as_it_lasts(desk: Desk) -> None:
    desk.press(Qt.Key.Key_Space).wait(1_000).press(Qt.Key.Key_Minus)
    assert "Sound 90 %" in desk.texts()
    desk.now_s += 3.0
    assert "Sound" not in desk.wait(500).texts()
    desk.press(Qt.Key.Key_V)
    desk.now_s += 60.0
    assert "Sound off" in desk.wait(500).texts()
    desk.press(Qt.Key.Key_V)
    desk.now_s += 3.0
    assert "Sound" not in desk.wait(500).texts()


def test_the_loudness_is_reached_with_the_mouse_before_a_run_and_in_its_pauses(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS).click("softer")
    assert desk.sound.loudness == Loudness(90)
    desk.press(Qt.Key.Key_Space).wait(6_000).press(Qt.Key.Key_Space)
    desk.click("louder").click("sound off")
    assert desk.sound.loudness == Loudness(100, muted=True)
    assert "Sound off" in desk.texts()
    desk.click("sound on")
    assert desk.sound.loudness == Loudness(100)


def test_none_of_the_sound_s_keys_does_anything_else() -> None:
    from app.views.athlete.keys import KEY_INTENTS, KEY_PAGE, LOUDNESS_KEYS

    taken = {*KEY_INTENTS, Qt.Key.Key_Space, Qt.Key.Key_S, Qt.Key.Key_K, Qt.Key.Key_F1, Qt.Key.Key_F11}
    assert not taken & set(LOUDNESS_KEYS)
    said = dict(KEY_PAGE)
    assert {"+ and -", "V"} <= set(said)


def test_a_held_key_changes_it_once(qtbot: QtBot) -> None:
    from PySide6.QtCore import QEvent
    from PySide6.QtGui import QKeyEvent

    desk = Desk(qtbot, TWO_REPS)
    held = QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_Minus, Qt.KeyboardModifier.NoModifier, "-", True)
    desk.press(Qt.Key.Key_Minus)
    desk.page.keyPressEvent(held)
    assert desk.sound.loudness == Loudness(90)
