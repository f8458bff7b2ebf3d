"""The outline of a body on which a place is pointed out, by mouse, touch or keys."""

from collections.abc import Callable
from functools import partial
from typing import cast

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QEnterEvent,
    QKeyEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QRegion,
    QResizeEvent,
    QTransform,
)
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QWidget

from app.domain.plan import Side
from app.run.readiness_form import Spot
from app.views.before.body_parts import HEIGHT, PARTS, WIDTH, Facing, Part
from app.views.theme import Look
from app.views.translation import tr

ROUNDING = 0.3
"""Share of a side that is rounded off at each of its ends."""
GAP = 0.55
"""Between the two figures, as a share of a figure's width."""
ARROWS = {
    Qt.Key.Key_Left: QPoint(-1, 0),
    Qt.Key.Key_Right: QPoint(1, 0),
    Qt.Key.Key_Up: QPoint(0, -1),
    Qt.Key.Key_Down: QPoint(0, 1),
}
ASIDE = 2.5
"""How much farther a region seems that lies beside the way of an arrow."""


def spot_words(spot: Spot) -> str:
    """The name of a place with its side."""
    if spot.side is None:
        return tr(spot.place)
    words = tr("{place}, left") if spot.side is Side.LEFT else tr("{place}, right")
    return words.format(place=tr(spot.place))


class PartButton(QAbstractButton):
    """A region that can be pressed; the map beneath paints it, and it takes the mouse within its shape."""

    def __init__(self, part: Part, look_anew: Callable[[], None], parent: QWidget) -> None:
        super().__init__(parent)
        self.part = part
        self._look_anew = look_anew
        self.setCheckable(True)
        self.setAccessibleName(spot_words(part.spot))
        self.setToolTip(spot_words(part.spot))
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint nothing."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses it; arrows are the map's."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
        elif event.key() in ARROWS:
            event.ignore()
        else:
            super().keyPressEvent(event)

    def enterEvent(self, event: QEnterEvent) -> None:
        """Let the map show that it is pointed at."""
        super().enterEvent(event)
        self._look_anew()

    def event(self, event: QEvent) -> bool:
        """Let the map show when it is reached, left or chosen."""
        if event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut, QEvent.Type.Leave):
            self._look_anew()
        return super().event(event)


class BodyMap(QWidget):
    """Two figures side by side, from the front and from the back. `pointed` carries the spot pressed."""

    pointed = Signal(object)

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._chosen: Spot | None = None
        self._paths: list[QPainterPath] = []
        self._buttons = [PartButton(part, self.update, self) for part in PARTS]
        for button in self._buttons:
            button.toggled.connect(partial(self._point, button))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(round(look.sizes.body / look.text * 20))

    def sizeHint(self) -> QSize:
        """As wide as both figures are."""
        height = round(self._look.sizes.body / self._look.text * 24)
        return QSize(round(height * (2 + GAP) * WIDTH / HEIGHT * 1.2), height)

    def show_spot(self, spot: Spot | None) -> None:
        """Show what was chosen."""
        self._chosen = spot
        for button in self._buttons:
            with QSignalBlocker(button):
                button.setChecked(button.part.spot == spot)
        self.update()

    def step(self, key: int) -> bool:
        """Reach the nearest region in the direction of an arrow key; tells whether it was one."""
        if key not in ARROWS:
            return False
        here = cast("QWidget | None", self.focusWidget())
        if not isinstance(here, PartButton):
            chosen = [button for button in self._buttons if button.isChecked()]
            (chosen or self._buttons)[0].setFocus(Qt.FocusReason.TabFocusReason)
            return True
        there = self._nearest(here, ARROWS[Qt.Key(key)])
        if there is not None:
            there.setFocus(Qt.FocusReason.TabFocusReason)
        return True

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Follow an arrow that a region left to the map."""
        if not self.step(event.key()):
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the regions where the figures are painted."""
        super().resizeEvent(event)
        self._paths = []
        for button in self._buttons:
            path = self._transform(button.part.facing).map(rounded(button.part))
            self._paths.append(path)
            around = path.boundingRect().toAlignedRect()
            button.setGeometry(around)
            button.setMask(QRegion(path.toFillPolygon().toPolygon().translated(-around.topLeft())))

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint both figures, what is chosen, pointed at and reached, and which is which."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        scheme = self._look.scheme
        for button, path in zip(self._buttons, self._paths, strict=True):
            ground = scheme.accent if button.isChecked() else scheme.well
            painter.setBrush(QColor(ground))
            reached = button.hasFocus() or button.underMouse()
            painter.setPen(QPen(QColor(scheme.ink), 2.5) if reached else QPen(QColor(scheme.quiet), 1))
            painter.drawPath(path)
        self._paint_words(painter)
        painter.end()

    def _paint_words(self, painter: QPainter) -> None:
        painter.setFont(self._look.font(self._look.sizes.small))
        painter.setPen(QColor(self._look.scheme.quiet))
        words = {
            Facing.FRONT: (tr("right"), tr("Front"), tr("left")),
            Facing.BACK: (tr("left"), tr("Back"), tr("right")),
        }
        line = painter.fontMetrics().height()
        for facing, (first, name, last) in words.items():
            frame = self._transform(facing).mapRect(QRectF(0, 0, WIDTH, HEIGHT))
            beside = frame.adjusted(-frame.width() * GAP / 2, 0, frame.width() * GAP / 2, 0)
            foot = QRectF(beside.left(), self.height() - line, beside.width(), line)
            top = QRectF(beside.left(), frame.top() + frame.height() * 0.06, beside.width(), line)
            painter.drawText(foot, Qt.AlignmentFlag.AlignCenter, name)
            painter.drawText(top, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignAbsolute, first)
            painter.drawText(top, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignAbsolute, last)

    def _transform(self, facing: Facing) -> QTransform:
        line = round(self._look.sizes.small * 1.6)
        scale = min((self.height() - line) / HEIGHT, self.width() / ((2 + GAP) * WIDTH))
        middle = self.width() * (0.25 if facing is Facing.FRONT else 0.75)
        top = (self.height() - line - HEIGHT * scale) / 2
        return QTransform(scale, 0, 0, scale, middle - WIDTH * scale / 2, top)

    def _nearest(self, here: PartButton, way: QPoint) -> PartButton | None:
        start = QPointF(here.geometry().center())

        def far(button: PartButton) -> float:
            to = QPointF(button.geometry().center()) - start
            along = to.x() * way.x() + to.y() * way.y()
            beside = abs(to.x() * way.y()) + abs(to.y() * way.x())
            return along + ASIDE * beside if along > 1 else float("inf")

        best = min(self._buttons, key=far)
        return best if far(best) < float("inf") else None

    def _point(self, button: PartButton, _checked: bool) -> None:
        self.show_spot(self._chosen)
        self.pointed.emit(button.part.spot)


def rounded(part: Part) -> QPainterPath:
    """The shape of a region with its corners rounded off, in the frame of its figure."""
    corners = [QPointF(x, y) for x, y in part.corners]
    path = QPainterPath()
    for index, corner in enumerate(corners):
        before, after = corners[index - 1], corners[(index + 1) % len(corners)]
        start, end = corner + (before - corner) * ROUNDING, corner + (after - corner) * ROUNDING
        if index == 0:
            path.moveTo(start)
        else:
            path.lineTo(start)
        path.quadTo(corner, end)
    path.closeSubpath()
    return path
