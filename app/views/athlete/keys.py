"""Which key asks for what. Every key is also a button or is said on the screen."""

from collections.abc import Callable

from PySide6.QtCore import Qt

from app.run.intents import BeginNow, CountRep, EndBout, ExtendRest, Intent, MarkFault, MarkMissed, RedoBout
from app.run.sounding import Loudness

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
}

LOUDNESS_KEYS: dict[Qt.Key, Callable[[Loudness], Loudness]] = {
    Qt.Key.Key_Plus: Loudness.louder,
    Qt.Key.Key_Equal: Loudness.louder,
    Qt.Key.Key_Minus: Loudness.softer,
    Qt.Key.Key_V: Loudness.switched,
}
"""On many keyboards + is reached with Shift from =."""

KEY_PAGE: tuple[tuple[str, str], ...] = (
    ("Space", "begin, pause, go on"),
    ("Enter or ↓", "one more rep, at your own pace"),
    ("F", "mark a fault on this rep; 1-9 soon after names it"),
    ("1-9 at work", "mark a fault by its number on this rep"),
    ("M", "this rep is not being done"),
    ("E", "end this bout"),
    ("A", "do the bout again"),
    ("K", "leave out this exercise"),
    ("T", "15 s more rest"),
    ("N", "cut the rest short"),
    ("0-9 at rest, at the end", "answer: effort, then pain, then the session; 1 and 0 quickly for 10"),
    ("S", "stop the session; asks once more"),
    ("+ and -", "louder and softer, at once"),
    ("V", "sound off, and on again"),
    ("F11", "full screen"),
    ("F1", "this page"),
)
