"""The shapes that mark what needs a look, beside their words: triangle, square, circle, cross, dash."""

from enum import Enum

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF


class Shape(Enum):
    """Which shape; `attention` a triangle, `notice` a square, `good` a circle."""

    TRIANGLE = "triangle"
    SQUARE = "square"
    CIRCLE = "circle"


def paint_shape(painter: QPainter, shape: Shape, centre: QPointF, size: float, colour: QColor) -> None:
    """Fill a shape about a centre; `size` is its width in pixels."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(Qt.PenStyle.NoPen))
    painter.setBrush(colour)
    half = size / 2
    x, y = centre.x(), centre.y()
    if shape is Shape.TRIANGLE:
        painter.drawPolygon(
            QPolygonF([QPointF(x, y - half), QPointF(x + half, y + half), QPointF(x - half, y + half)])
        )
    elif shape is Shape.SQUARE:
        painter.drawRect(QRectF(x - half * 0.85, y - half * 0.85, size * 0.85, size * 0.85))
    else:
        painter.drawEllipse(centre, half, half)
    painter.restore()
