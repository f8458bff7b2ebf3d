"""The ladder: short treads rising to the right, one a stage.

The one stood on is bright, those behind are grey, those to come faint; a locked one is an outline. It rises
the way lines are read: to the left where they run from right to left.
"""

from PySide6.QtCore import QLineF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.run.order import Rung
from app.views.theme import Look
from app.views.translation import tr


class Ladder(QWidget):
    """Paints where in the session the athlete stands."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._names: tuple[str, ...] = ()
        self._rungs: tuple[Rung, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Give five treads their room."""
        body = self._look.sizes.body / self._look.text
        return QSize(round(body * 21), round(body * 2.6))

    def show_stages(self, names: tuple[str, ...], rungs: tuple[Rung, ...]) -> None:
        """Show the stages named and how each stands to the run; one of them is where it stands."""
        if (names, rungs) == (self._names, self._rungs):
            return
        self._names, self._rungs = names, rungs
        here = rungs.index(Rung.HERE)
        words = tr("Stage {n} of {m}: {name}").format(n=here + 1, m=len(names), name=names[here])
        locked = [name for name, rung in zip(names, rungs, strict=True) if rung is Rung.LOCKED]
        about = tr("Locked until what is before them is done or left out: {names}")
        self.setAccessibleName(words)
        self.setToolTip(about.format(names=", ".join(locked)) if locked else "")
        self.setAccessibleDescription(self.toolTip())
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
            begin, end = index * step + thick, (index + 0.86) * step - thick
            if self.layoutDirection() is Qt.LayoutDirection.RightToLeft:
                begin, end = self.width() - end, self.width() - begin
            line = QLineF(begin, y, end, y)
            self._paint_tread(painter, line, self._rungs[index], thick)
        painter.end()

    def _paint_tread(self, painter: QPainter, line: QLineF, rung: Rung, thick: float) -> None:
        scheme = self._look.scheme
        colour = {Rung.HERE: scheme.ink, Rung.BEHIND: scheme.quiet}.get(rung, scheme.unfilled)
        if rung is Rung.LOCKED:
            half = thick * 0.45
            painter.setPen(QPen(QColor(scheme.quiet), 1))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            outline = QRectF(line.x1() - half, line.y1() - half, line.dx() + 2 * half, 2 * half)
            painter.drawRoundedRect(outline, half, half)
            return
        pen = QPen(QColor(colour), thick if rung is Rung.HERE else thick * 0.72)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.drawLine(line)
