"""A card: a panel with rounded corners, a heading, and quiet words below it."""

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.elided import ElidedLabel

RADIUS = 10


class Card(QWidget):
    """A panel on the ground; what it holds goes into `body`, small controls into `header` at the right.

    `aside` says in quiet words, below the heading, in what units the card speaks.
    """

    def __init__(self, heading: str, aside: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.heading = ElidedLabel(heading)
        self.aside = ElidedLabel()
        self.aside.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.header = QHBoxLayout()
        self.header.addWidget(self.heading, 1)
        self._head = QVBoxLayout()
        self._head.setSpacing(0)
        self._head.addLayout(self.header)
        self._head.addWidget(self.aside)
        self.body = QVBoxLayout(self)
        self.body.addLayout(self._head)
        self.set_aside(aside)
        self.setAccessibleName(heading)

    def set_aside(self, words: str) -> None:
        """Say other quiet words, or none."""
        self.aside.say(words)
        self.aside.setVisible(bool(words))

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        margin = look.sizes.body
        self.body.setContentsMargins(margin, margin - 3, margin, margin - 3)
        self.body.setSpacing(margin // 2)
        self.header.setSpacing(margin)
        self.heading.setFont(look.font(look.sizes.heading, Weight.SEMIBOLD))
        self.aside.setFont(look.font(look.sizes.small))

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the panel."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(self.palette().color(QPalette.ColorRole.Mid)), 1))
        painter.setBrush(self.palette().color(QPalette.ColorRole.Base))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), RADIUS, RADIUS)
