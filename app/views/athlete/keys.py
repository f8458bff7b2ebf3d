"""Which key asks for what. Every key is also a button or is said on the screen."""

import unicodedata
from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication, QKeyEvent

from app.run.intents import (
    BeginNow,
    CountRep,
    EndBout,
    ExtendRest,
    Intent,
    MarkFault,
    MarkMissed,
    RedoBout,
    TakeBack,
)
from app.run.sounding import Loudness
from app.views.translation import message

KEY_INTENTS: dict[Qt.Key, Intent] = {
    Qt.Key.Key_Return: CountRep(),
    Qt.Key.Key_Enter: CountRep(),
    Qt.Key.Key_Down: CountRep(),
    Qt.Key.Key_F: MarkFault(),
    Qt.Key.Key_M: MarkMissed(),
    Qt.Key.Key_E: EndBout(),
    Qt.Key.Key_A: RedoBout(),
    Qt.Key.Key_T: ExtendRest(),
    Qt.Key.Key_N: BeginNow(),
    Qt.Key.Key_Backspace: TakeBack(),
}

LOUDNESS_KEYS: dict[Qt.Key, Callable[[Loudness], Loudness]] = {
    Qt.Key.Key_Plus: Loudness.louder,
    Qt.Key.Key_Equal: Loudness.louder,
    Qt.Key.Key_Minus: Loudness.softer,
    Qt.Key.Key_V: Loudness.switched,
}
"""On many keyboards + is reached with Shift from =."""

KEY_PAGE: tuple[tuple[str, str], ...] = (
    (message("Space"), message("begin, pause, go on")),
    (message("Enter or ↓"), message("ready; then one more rep, at your own pace")),
    ("F", message("mark a fault on this rep; 1-9 soon after names it")),
    (message("1-9 at work"), message("mark a fault by its number on this rep")),
    ("M", message("this rep is not being done")),
    (message("Backspace"), message("take back the last mark or answer")),
    ("E", message("end this bout")),
    ("A", message("do the bout again")),
    ("K", message("leave out this exercise; asks why")),
    ("X", message("leave out the rest of this stage; asks why")),
    ("G", message("go to another stage, where the plan leaves their order free")),
    ("T", message("15 s more rest")),
    ("N", message("cut the rest short")),
    (
        message("0-9 at rest, at the end"),
        message("answer: effort, then pain, then the session; 1 and 0 quickly for 10"),
    ),
    (message("← and →"), message("to an earlier bout that is not answered, and back")),
    (message("↑ and ↓ at rest"), message("one rep more or fewer was done")),
    ("L", message("the load that was used; Enter keeps it")),
    ("W", message("write a note; Enter keeps it")),
    ("S", message("stop the session; asks once more")),
    (message("+ and -"), message("louder and softer, at once")),
    ("V", message("sound off, and on again")),
    ("F11", message("full screen")),
    ("F1", message("this page")),
)

ROWS = ("QWERTYUIOP", "ASDFGHJKL", "ZXCVBNM")
_KEYCODES: Mapping[str, tuple[int, int, int, int]] = {
    "evdev": (10, 24, 38, 52),
    "windows": (0x02, 0x10, 0x1E, 0x2C),
}
"""Where the row of digits and the three of letters begin, by scan code.

X keycodes are the kernel's plus eight (linux/input-event-codes.h), those of Windows the first set of a PC
keyboard (Microsoft, Keyboard Scan Code Specification). On macOS Qt gives none.
"""
DIGITS = "1234567890"


def meant(event: QKeyEvent, platform: str | None = None) -> Qt.Key:
    """The key that is meant, whatever the keyboard's layout.

    A letter that is not Latin stands for the one in its place on an English keyboard, a key of the row of
    digits for its digit, with Shift or without. Where the place is not known, the text decides.
    """
    key, place = Qt.Key(event.key()), _place(event.nativeScanCode(), platform)
    if Qt.Key.Key_0 <= key <= Qt.Key.Key_9 or Qt.Key.Key_A <= key <= Qt.Key.Key_Z:
        return key
    if place is not None and (place.isdigit() or _foreign(event)):
        return Qt.Key[f"Key_{place}"]
    return _by_text(event.text()) or key


def _place(scan: int, platform: str | None) -> str | None:
    name = QGuiApplication.platformName() if platform is None else platform
    codes = _KEYCODES.get("windows" if name == "windows" else "evdev" if name in ("xcb", "wayland") else "")
    if codes is None:
        return None
    for first, row in zip(codes, (DIGITS, *ROWS), strict=True):
        if first <= scan < first + len(row):
            return row[scan - first]
    return None


def _foreign(event: QKeyEvent) -> bool:
    """Whether a letter of another script is written by a key."""
    text = event.text() or (chr(event.key()) if event.key() < 0x110000 else "")
    return len(text) == 1 and text.isalpha() and not text.isascii()


def _by_text(text: str) -> Qt.Key | None:
    """The key of a digit in any script, or of a Latin letter in another width."""
    if len(text) != 1:
        return None
    digit = unicodedata.digit(text, -1)
    if digit >= 0 and unicodedata.category(text) == "Nd":
        return Qt.Key(Qt.Key.Key_0 + digit)
    plain = unicodedata.normalize("NFKC", text).upper()
    return Qt.Key[f"Key_{plain}"] if len(plain) == 1 and "A" <= plain <= "Z" else None
