"""The ladder: short treads rising to the right, one a stage; the one stood on is bright, those done grey."""

from PySide6.QtCore import QLineF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.views.theme import Look


class Ladder(QWidget):
    """Paints where in the session the athlete stands."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._names: tuple[str, ...] = ()
        self._here = 0
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Give five treads their room."""
        return QSize(round(self._look.sizes.body * 21), round(self._look.sizes.body * 2.6))

    def show_stage(self, names: tuple[str, ...], here: int) -> None:
        """Stand on stage `here` (from 0) of those named."""
        if (names, here) == (self._names, self._here):
            return
        self._names, self._here = names, here
        self.setAccessibleName(f"Stage {here + 1} of {len(names)}: {names[here]}")
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the treads."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        count = max(len(self._names), 1)
        step = self.width() / count
        thick = self._look.sizes.body * 0.28
        rise = 0.0 if count == 1 else (self.height() - 2 * thick) / (count - 1)
        for index in range(len(self._names)):
            y = self.height() - thick - rise * index
            pen = QPen(QColor(self._colour(index)), thick if index == self._here else thick * 0.72)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            painter.setPen(pen)
            painter.drawLine(QLineF(index * step + thick, y, (index + 0.86) * step - thick, y))
        painter.end()

    def _colour(self, index: int) -> str:
        scheme = self._look.scheme
        if index == self._here:
            return scheme.ink
        return scheme.quiet if index < self._here else scheme.faint
