"""A button that is only its word, in the colour of links."""

from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QPushButton, QWidget

from app.views.theme import Look


class WordButton(QPushButton):
    """A flat button; its word stands for it, so the word says what happens."""

    def __init__(self, word: str, parent: QWidget | None = None) -> None:
        super().__init__(word, parent)
        self.setFlat(True)

    def sizeHint(self) -> QSize:
        """As wide as its word, with a little room to hit it beside."""
        metrics = self.fontMetrics()
        return QSize(metrics.horizontalAdvance(self.text()) + metrics.height(), round(metrics.height() * 1.6))

    def minimumSizeHint(self) -> QSize:
        """The same: a word does not give way."""
        return self.sizeHint()

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        palette = self.palette()
        palette.setColor(QPalette.ColorRole.ButtonText, QColor(look.scheme.accent))
        self.setPalette(palette)
        self.setFont(look.font(look.sizes.small))
