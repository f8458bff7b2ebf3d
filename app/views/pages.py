"""The pages of the window, one on top of the other."""

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QStackedWidget

LEAST_WINDOW = QSize(480, 320)


class Pages(QStackedWidget):
    """The pages on top of each other. None of them makes the window larger: what has no room is scrolled.

    Letters grow with the window, so that a window that grew with its letters would never stop.
    """

    def minimumSizeHint(self) -> QSize:
        """The same whatever the pages ask for."""
        return LEAST_WINDOW
