"""Three ways to lead the athlete's screen: by keys alone, by accessible actions alone, by the mouse alone."""

from typing import Protocol

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QLineEdit, QPushButton

from tests.desk import Desk

KEY = Qt.Key
SESSION = "How hard was the session?"


class Hand(Protocol):
    """Does one thing at a time; `types` tells whether it can write words."""

    types: bool

    def begin(self) -> None: ...
    def count(self) -> None: ...
    def fault(self) -> None: ...
    def missed(self) -> None: ...
    def end_bout(self) -> None: ...
    def fewer_reps(self) -> None: ...
    def load_as_planned(self) -> None: ...
    def answer(self, question: str, number: int) -> None: ...
    def write(self, words: str) -> None: ...
    def leave(self) -> None: ...


class Keys:
    """Presses keys where they go."""

    types = True

    def __init__(self, desk: Desk) -> None:
        self.desk = desk

    def begin(self) -> None:
        self.desk.press(KEY.Key_Return)

    def count(self) -> None:
        self.desk.press(KEY.Key_Return)

    def fault(self) -> None:
        self.desk.press(KEY.Key_F)

    def missed(self) -> None:
        self.desk.press(KEY.Key_M)

    def end_bout(self) -> None:
        self.desk.press(KEY.Key_E)

    def fewer_reps(self) -> None:
        self.desk.press(KEY.Key_Down)

    def load_as_planned(self) -> None:
        self.desk.press(KEY.Key_L).press_where_the_keys_go(KEY.Key_Return)

    def answer(self, _question: str, number: int) -> None:
        self.desk.press(*(KEY(KEY.Key_0 + int(digit)) for digit in str(number)))
        self.desk.now_s += 2

    def write(self, words: str) -> None:
        self.desk.press(KEY.Key_W)
        self.desk.qtbot.keyClicks(self.desk.page.focusWidget(), words)
        self.desk.press_where_the_keys_go(KEY.Key_Return)

    def leave(self) -> None:
        self.desk.press(KEY.Key_Space)


class Mouse:
    """Clicks buttons; it cannot write."""

    types = False

    def __init__(self, desk: Desk) -> None:
        self.desk = desk

    def do(self, name: str, *, whole: bool = False) -> None:
        """Press the button of that name, or whose name begins with it."""
        self.desk.qtbot.mouseClick(self._button(name, whole=whole), Qt.MouseButton.LeftButton)

    def _button(self, name: str, *, whole: bool) -> QPushButton:
        found = [
            part
            for part in self.desk.page.findChildren(QPushButton)
            if part.isVisibleTo(self.desk.page) and _is(part.accessibleName(), name, whole=whole)
        ]
        assert found, f"no button '{name}' in sight"
        return found[0]

    def begin(self) -> None:
        self.do("I am ready")

    def count(self) -> None:
        self.do("One more rep")

    def fault(self) -> None:
        self.do("A fault")

    def missed(self) -> None:
        self.do("Not done")

    def end_bout(self) -> None:
        self.do("End this bout")

    def fewer_reps(self) -> None:
        self.do("One rep fewer")

    def load_as_planned(self) -> None:
        self.do("as planned")

    def answer(self, question: str, number: int) -> None:
        self.do(f"{question} {number}", whole=True)

    def write(self, words: str) -> None:
        raise AssertionError(f"a mouse does not write {words!r}")

    def leave(self) -> None:
        self.do("Done")


class Accessible(Mouse):
    """Does what assistive technology does: names, actions and texts of the accessible tree, no events."""

    types = True

    def do(self, name: str, *, whole: bool = False) -> None:
        button = self._button(name, whole=whole)
        action = QAccessible.queryAccessibleInterface(button).actionInterface()
        action.doAction(action.pressAction())
        # The press is shown for a moment before it is released.
        self.desk.qtbot.waitUntil(lambda: not button.isDown())

    def write(self, words: str) -> None:
        self.do("Add a note")
        (line,) = [
            part for part in self.desk.page.findChildren(QLineEdit) if part.isVisibleTo(self.desk.page)
        ]
        QAccessible.queryAccessibleInterface(line).setText(QAccessible.Text.Value, words)
        self.do("Keep it")


def _is(name: str, wanted: str, *, whole: bool) -> bool:
    return name.split(", ", maxsplit=1)[0] == wanted if whole else name.startswith(wanted)
