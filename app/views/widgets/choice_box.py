"""A box to choose one of several from, in the look of the desk."""

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QComboBox, QWidget

from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.lines import paint_words

RADIUS = 6


class ChoiceBox(QComboBox):
    """A combo box of constant width: long words are elided and whole in the tooltips."""

    def __init__(self, name: str, letters: int, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._letters = letters
        self.setAccessibleName(name)
        self.view().setAccessibleName(tr("{name}, choices").format(name=name))
        self.setMaxVisibleItems(16)
        self.currentTextChanged.connect(self.setToolTip)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._look = look
        self.setFont(look.font(look.sizes.body))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Room for so many letters and the mark."""
        metrics = self.fontMetrics()
        return QSize(
            metrics.averageCharWidth() * self._letters + 3 * self._pad, round(metrics.height() * 1.7)
        )

    def minimumSizeHint(self) -> QSize:
        """The same: it does not give way."""
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the frame, the choice and a mark that there are others."""
        scheme = self._look.scheme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(
            QPen(QColor(scheme.accent if self.hasFocus() else scheme.quiet), 2 if self.hasFocus() else 1)
        )
        painter.setBrush(QColor(scheme.panel))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), RADIUS, RADIUS)
        mirrored = self.layoutDirection() is Qt.LayoutDirection.RightToLeft
        before, after = (2 * self._pad, self._pad) if mirrored else (self._pad, 2 * self._pad)
        room = self.rect().adjusted(before, 0, -after, 0)
        painter.setPen(QColor(scheme.ink if self.isEnabled() else scheme.quiet))
        text = painter.fontMetrics().elidedText(self.currentText(), Qt.TextElideMode.ElideRight, room.width())
        paint_words(painter, room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, text)
        middle, reach = (
            QPointF(self._pad if mirrored else self.width() - self._pad, self.height() / 2),
            self._pad / 3,
        )
        painter.setPen(QPen(QColor(scheme.quiet), 1.5))
        painter.drawPolyline(
            QPolygonF(
                [
                    middle + QPointF(-reach, -reach / 2),
                    middle + QPointF(0, reach / 2),
                    middle + QPointF(reach, -reach / 2),
                ]
            )
        )

    @property
    def _pad(self) -> int:
        return self._look.sizes.body * 4 // 5
