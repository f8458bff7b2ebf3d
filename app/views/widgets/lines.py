"""Lines of words as they are painted: they begin where the layout begins, and run as their own letters do."""

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QGuiApplication, QPainter
from PySide6.QtWidgets import QStyle

ISOLATE, END = "\u2066", "\u2069"
"""Characters that keep a text running from left to right whatever stands around it."""


def paint_words(
    painter: QPainter, place: QRect, alignment: Qt.AlignmentFlag, text: str, flags: int = 0
) -> None:
    """Paint words into a place. `alignment` is mirrored where the painter's layout is; the words are not."""
    side = QStyle.visualAlignment(painter.layoutDirection(), alignment)
    painter.setLayoutDirection(Qt.LayoutDirection.LayoutDirectionAuto)
    painter.drawText(place, int(side | Qt.AlignmentFlag.AlignAbsolute) | flags, text)


def in_order(text: str) -> str:
    """A text for a part that Qt paints: in the order it was written in, in a mirrored layout too."""
    mirrored = QGuiApplication.layoutDirection() is Qt.LayoutDirection.RightToLeft
    return f"{ISOLATE}{text}{END}" if mirrored and text and not _runs_left(text) else text


def _runs_left(text: str) -> bool:
    """Whether a text has letters that run from right to left."""
    from unicodedata import bidirectional

    return any(bidirectional(letter) in ("R", "AL") for letter in text)
