"""Which key is meant, on keyboards whose letters are not Latin and whose digits need Shift."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent

from app.views.athlete.keys import KEY_INTENTS, KEY_PAGE, meant
from app.views.athlete.page import HALTS

KEY = Qt.Key
NONE, SHIFT, KEYPAD = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.KeypadModifier,
)


def pressed(
    key: int, text: str, scan: int = 0, modifiers: Qt.KeyboardModifier = NONE, platform: str = "xcb"
) -> Qt.Key:
    return meant(QKeyEvent(QEvent.Type.KeyPress, key, modifiers, scan, 0, 0, text), platform)


@pytest.mark.parametrize("platform", ["xcb", "windows", "offscreen"])
def test_latin_letters_and_digits_mean_themselves_wherever_they_lie(platform: str) -> None:
    assert pressed(KEY.Key_A, "a", 24, platform=platform) is KEY.Key_A, "A lies where Q is in France"
    assert pressed(KEY.Key_7, "7", 16, platform=platform) is KEY.Key_7
    assert pressed(KEY.Key_7, "7", 79, KEYPAD, platform) is KEY.Key_7
    assert pressed(KEY.Key_Space, " ", 65, platform=platform) is KEY.Key_Space


@pytest.mark.parametrize(
    ("text", "scan", "platform", "key"),
    [
        ("а", 41, "xcb", KEY.Key_F),
        ("ы", 39, "wayland", KEY.Key_S),
        ("η", 43, "xcb", KEY.Key_H),
        ("ש", 0x1E, "windows", KEY.Key_A),
        ("т", 0x31, "windows", KEY.Key_N),
    ],
)
def test_a_letter_of_another_script_stands_for_the_one_in_its_place(
    text: str, scan: int, platform: str, key: Qt.Key
) -> None:
    assert pressed(ord(text.upper()), text, scan, platform=platform) is key


@pytest.mark.parametrize(
    ("key", "text", "scan", "digit"),
    [
        (KEY.Key_Ampersand, "&", 10, KEY.Key_1),
        (KEY.Key_Eacute, "é", 11, KEY.Key_2),
        (KEY.Key_Minus, "-", 15, KEY.Key_6),
        (KEY.Key_Agrave, "à", 19, KEY.Key_0),
    ],
)
def test_the_row_of_digits_needs_no_shift(key: Qt.Key, text: str, scan: int, digit: Qt.Key) -> None:
    """As on a French keyboard."""
    assert pressed(key, text, scan) is digit
    assert pressed(digit, str(digit.value - 48), scan, SHIFT) is digit


def test_the_minus_of_an_english_keyboard_stays_softer() -> None:
    assert pressed(KEY.Key_Minus, "-", 20) is KEY.Key_Minus
    assert pressed(KEY.Key_Minus, "-", 0x0C, platform="windows") is KEY.Key_Minus


@pytest.mark.parametrize(
    ("text", "key"), [("٤", KEY.Key_4), ("४", KEY.Key_4), ("７", KEY.Key_7), ("ｆ", KEY.Key_F)]
)
def test_where_the_place_is_not_known_the_text_decides(text: str, key: Qt.Key) -> None:
    assert pressed(ord(text), text, platform="cocoa") is key


@pytest.mark.parametrize("text", ["²", "½", "é", ""])
def test_what_is_no_digit_and_no_letter_of_ours_stays_what_it_is(text: str) -> None:
    assert pressed(KEY.Key_twosuperior, text, platform="cocoa") is KEY.Key_twosuperior


def test_no_key_asks_for_two_things() -> None:
    assert not set(KEY_INTENTS) & set(HALTS)
    letters = [key for key, _ in KEY_PAGE]
    assert len(letters) == len(set(letters))
