"""The picture of an exercise: out of the folder of its plan, and from nowhere else."""

import re
from pathlib import Path

from PySide6.QtCore import QByteArray, QRectF, QSize, QSizeF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPaintEvent
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.views.theme import Look

MOST_BYTES = 4_000_000
PAPER = "#E9EDF2"
"""Pictures are mostly drawn in dark lines on white or on nothing: they stand on paper in every scheme."""
REACHES_OUT = re.compile(rb"<image|<!entity|@import|url\(\s*['\"]?(?!#)", re.IGNORECASE)
"""What would let a drawing show another file."""
ROUND = 14
PNG_MARK = b"\x89PNG"

Figure = QImage | QSvgRenderer


def load_figure(folder: Path | None, picture: str | None) -> Figure | None:
    """The picture of a plan in a folder; None where there is none, or none that can be shown.

    It must lie in that folder or below it, be a PNG or an SVG that draws itself, and not be huge.
    """
    data = b"" if folder is None or picture is None else _read(folder, picture)
    if not data:
        return None
    if data.startswith(PNG_MARK):
        image = QImage.fromData(data)
        return None if image.isNull() else image
    if REACHES_OUT.search(data):
        return None
    drawing = QSvgRenderer(QByteArray(data))
    return drawing if drawing.isValid() else None


def _read(folder: Path, picture: str) -> bytes:
    """The bytes of a file in a folder or below it; none where it is not there, huge or of another kind."""
    try:
        path = (folder / picture).resolve()
        inside = path.is_relative_to(folder.resolve()) and path.suffix.lower() in (".png", ".svg")
        if not inside or not path.is_file() or path.stat().st_size > MOST_BYTES:
            return b""
        return path.read_bytes()
    except (OSError, ValueError):
        return b""


class FigureView(QWidget):
    """Paints the picture of an exercise as large as it fits; takes no room where there is none."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._figure: Figure | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(round(look.sizes.body * 5))
        self.hide()

    def sizeHint(self) -> QSize:
        """Room to recognise a posture."""
        return QSize(round(self._look.sizes.body * 14), round(self._look.sizes.body * 9))

    def show_figure(self, figure: Figure | None, name: str) -> None:
        """Show a picture of the exercise of that name, or nothing."""
        self.setVisible(figure is not None)
        if figure is not self._figure:
            self._figure = figure
            self.setAccessibleName(name)
            self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint paper and picture."""
        if self._figure is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(PAPER))
        painter.drawRoundedRect(QRectF(self.rect()), ROUND, ROUND)
        edge = self._look.sizes.body * 0.6
        room = QRectF(self.rect()).adjusted(edge, edge, -edge, -edge)
        if isinstance(self._figure, QSvgRenderer):
            self._figure.render(painter, _fitted(QSizeF(self._figure.defaultSize()), room))
        else:
            painter.drawImage(_fitted(QSizeF(self._figure.size()), room), self._figure)
        painter.end()


def _fitted(size: QSizeF, room: QRectF) -> QRectF:
    """The largest rectangle of that shape in the middle of a room."""
    inside = size.scaled(room.size(), Qt.AspectRatioMode.KeepAspectRatio)
    left = room.left() + (room.width() - inside.width()) / 2
    return QRectF(left, room.top() + (room.height() - inside.height()) / 2, inside.width(), inside.height())
