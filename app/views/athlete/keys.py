"""Which key asks for what. Every key is also a button or is said on the screen."""

from PySide6.QtCore import Qt

from app.run.intents import BeginNow, CountRep, EndBout, ExtendRest, Intent, MarkFault, MarkMissed, RedoBout

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

KEY_PAGE: tuple[tuple[str, str], ...] = (
    ("Space", "begin, pause, go on"),
    ("Enter or ↓", "one more rep, at your own pace"),
    ("F", "mark a fault on this rep"),
    ("1-9 at work", "mark a fault by its number on this rep"),
    ("M", "this rep is not being done"),
    ("E", "end this bout"),
    ("A", "do the bout again"),
    ("K", "leave out this exercise"),
    ("T", "15 s more rest"),
    ("N", "cut the rest short"),
    ("0-9 at rest", "answer: effort, then pain; 1 and 0 quickly for 10"),
    ("S", "stop the session; asks once more"),
    ("F11", "full screen"),
    ("F1", "this page"),
)
