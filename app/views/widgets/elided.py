"""One line of words that gives way when there is no room, and keeps the whole in its tooltip."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from app.views.widgets.lines import paint_words

LEAST_LETTERS = 6


class ElidedLabel(QLabel):
    """A label whose text ends in an ellipsis where it does not fit; it keeps room for `least` letters."""

    def __init__(self, text: str = "", parent: QWidget | None = None, *, least: int = LEAST_LETTERS) -> None:
        super().__init__(parent)
        self._least = least
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.say(text)

    def say(self, text: str) -> None:
        """Show other words."""
        self.setText(text)
        self.setToolTip(text)

    def minimumSizeHint(self) -> QSize:
        """Room for the least letters."""
        least = self.fontMetrics().averageCharWidth() * self._least
        return QSize(min(least, self.sizeHint().width()), super().minimumSizeHint().height())

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint as much of the text as there is room for."""
        room = self.contentsRect()
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, room.width())
        painter = QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        paint_words(painter, room, self.alignment(), text)
