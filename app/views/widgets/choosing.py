"""The keys of a page of choices: Enter keeps them, Esc forgets them."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractButton, QWidget


def follow_choosing(
    page: QWidget, event: QKeyEvent, keep: Callable[[], object], leave: Callable[[], object]
) -> bool:
    """Follow a key on a page of choices; False where it means nothing to them.

    Enter presses the button reached, else keeps the choices; Esc leaves.
    """
    reached = page.focusWidget()
    if event.key() == Qt.Key.Key_Escape:
        leave()
    elif event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
        return False
    elif isinstance(reached, QAbstractButton):
        reached.click()
    else:
        keep()
    return True
