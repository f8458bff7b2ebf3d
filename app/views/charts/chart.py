"""A chart over places along the bottom: what every chart of Review shares."""

from bisect import bisect_left
from collections.abc import Sequence
from typing import Any

import pyqtgraph as pg
from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QGraphicsSimpleTextItem, QVBoxLayout, QWidget

from app.views.charts.scales import label_places, spread_labels
from app.views.theme import Look
from app.views.translation import tr

HALF = 0.6
LEAST_PLACES = 8
RIGHT_PX, LEFT_PX, LABEL_GAP_PX = 22, 12, 6
BESIDE_PX = 40
BEYOND_PX = 12
KEYS = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}


class Chart(QWidget):
    """One or more plots above each other over the same places.

    One place is pointed at: by the mouse, by the arrow keys, or by `point_at`. Dragging pans, the wheel
    widens. `unit` says what the labels along the bottom are, `widest` is the longest
    label at the left.
    """

    widest = "100"
    pointed = Signal(int)
    chosen = Signal(int)

    def __init__(self, name: str, plots: int, window: int, unit: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(name)
        self.look: Look | None = None
        self.place: int | None = None
        self._window = window
        self._count = 0
        self._at: tuple[float, ...] | None = None
        self._labels: tuple[str, ...] = ()
        self._spoken: tuple[str, ...] = ()
        self._measured: tuple[object, float] = (None, 0.0)
        self.graphics: Any = pg.GraphicsLayoutWidget()
        for surface in (self.graphics, self.graphics.viewport()):
            surface.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.graphics.setAccessibleName(tr("{name}, drawing").format(name=name))
        self.graphics.setMinimumSize(1, 1)
        self.graphics.ci.layout.setSpacing(4)
        self.graphics.ci.setContentsMargins(0, 0, RIGHT_PX, 0)
        self.plots: list[Any] = [self._add_plot(row, last=row == plots - 1) for row in range(plots)]
        for drawn in (self.graphics.ci, *self.plots):
            drawn.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self._unit = QGraphicsSimpleTextItem(unit, self.plots[-1].getAxis("bottom"))
        frame = QVBoxLayout(self)
        frame.setContentsMargins(2, 2, 2, 2)
        frame.addWidget(self.graphics)
        self.graphics.scene().sigMouseMoved.connect(self._hover)
        self.graphics.scene().sigMouseClicked.connect(self._click)
        self.plots[-1].vb.sigXRangeChanged.connect(self._label_bottom)
        self._heights = [(0.0, 1.0)] * plots
        for plot in self.plots:
            plot.vb.sigResized.connect(self._fit)

    @property
    def count(self) -> int:
        """How many places there are."""
        return self._count

    def set_places(
        self, labels: Sequence[str], spoken: Sequence[str], at: Sequence[float] | None = None
    ) -> None:
        """Say what stands at each place: its label, its figures in words; point at the last.

        `at` are the positions of the places, rising; one after the other from 0 where not given.
        """
        self._labels, self._spoken = tuple(labels), tuple(spoken)
        self._count = len(self._labels)
        self._at = tuple(at) if at else None
        width = max(self._count if self._at is None else self._at[-1] + 1, LEAST_PLACES)
        last = width - 1 + HALF
        first = max(-HALF, last - self._window)
        box = self.plots[-1].vb
        box.setLimits(
            xMin=-HALF, xMax=last, minXRange=min(LEAST_PLACES, width), maxXRange=width - 1 + 2 * HALF
        )
        box.setXRange(first, last, padding=0)
        self._label_bottom()
        self.rescale()
        self.point_at(self._count - 1 if self._count else None)

    def say_unit(self, unit: str) -> None:
        """Say what the labels along the bottom are."""
        self._unit.setText(unit)

    def position(self, place: int) -> float:
        """Where a place lies along the bottom."""
        return float(place) if self._at is None else self._at[place]

    def nearest(self, position: float) -> int:
        """The place nearest to a position; there must be one."""
        if self._at is None:
            return min(max(round(position), 0), self._count - 1)
        after = min(max(bisect_left(self._at, position), 1), self._count - 1) if self._count > 1 else 0
        before = max(after - 1, 0)
        return before if position - self._at[before] <= self._at[after] - position else after

    def set_height(self, row: int, top: float, bottom: float = 0.0) -> None:
        """Let a plot reach from `bottom` to `top`, with room for a label beyond both."""
        self._heights[row] = (bottom, top)
        self._fit()

    def set_look(self, look: Look) -> None:
        """Take colours and letters; existing plots do not follow a palette by themselves."""
        self.look = look
        scheme = look.scheme
        font = look.font(look.sizes.small)
        metrics = QFontMetricsF(font)
        self.graphics.setBackground(QColor(scheme.panel))
        for plot in self.plots:
            for side in ("left", "bottom"):
                axis = plot.getAxis(side)
                axis.setStyle(tickFont=font)
                axis.setTextPen(QColor(scheme.quiet))
                axis.setPen(None)
            plot.getAxis("left").setTickPen(pg.mkPen(scheme.faint, width=1))
            plot.getAxis("left").setWidth(metrics.horizontalAdvance(self.widest) + LEFT_PX)
        self.plots[-1].getAxis("bottom").setHeight(metrics.height() + LABEL_GAP_PX)
        self._unit.setFont(font)
        self._unit.setBrush(QColor(scheme.quiet))
        self._unit.setPos(-metrics.horizontalAdvance(self.widest) - LEFT_PX, LABEL_GAP_PX)
        self._fit()
        self.redraw()

    def redraw(self) -> None:
        """Give every item the colours of the look; what a kind of chart adds."""

    def rescale(self) -> None:
        """Fit what is drawn to a new size of the plots; what a kind of chart adds."""

    def mark(self, place: int | None) -> None:
        """Show which place is pointed at; what a kind of chart adds."""

    def point_at(self, place: int | None) -> None:
        """Point at a place, bringing it into sight; None points at nothing."""
        if place is not None and not 0 <= place < self._count:
            return
        self.place = place
        self.mark(place)
        if place is None:
            self.setAccessibleDescription("")
            return
        self._reveal(place)
        self.setAccessibleDescription(self._spoken[place])
        self.pointed.emit(place)

    def places_wide(self, pixels: float) -> float:
        """How many places a width in pixels covers as they are shown now."""
        (first, last), _ = self.plots[-1].vb.viewRange()
        return float(pixels * (last - first) / max(self.plots[-1].vb.width(), 1.0))

    def close_plots(self) -> None:
        """Let go of the drawing before the program ends."""
        self.graphics.close()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move along the places with the arrow keys, Home and End; Return chooses."""
        place = self._from_key(Qt.Key(event.key()))
        if place is not None and self._count:
            self.point_at(min(max(place, 0), self._count - 1))
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, self.accessibleDescription()))
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.place is not None:
            self.chosen.emit(self.place)
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        """Repaint when enabled or disabled."""
        super().changeEvent(event)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint a frame while the keys are the chart's."""
        if self.hasFocus() and self.look:
            painter = QPainter(self)
            painter.setPen(QPen(QColor(self.look.scheme.accent), 1))
            painter.drawRect(self.rect().adjusted(0, 0, -1, -1))

    def _from_key(self, key: Qt.Key) -> int | None:
        if key == Qt.Key.Key_Home:
            return 0
        last = self._count - 1
        if key == Qt.Key.Key_End or (key in KEYS and self.place is None):
            return last
        return self.place + KEYS[key] if key in KEYS and self.place is not None else None

    def _add_plot(self, row: int, *, last: bool) -> Any:  # noqa: ANN401 - pyqtgraph carries no types
        plot = pg.PlotItem(viewBox=pg.ViewBox(enableMenu=False), enableMenu=False)
        # pyqtgraph gives its menu no parent, so that it would outlive the chart.
        plot.ctrlMenu.setParent(self.graphics, plot.ctrlMenu.windowFlags())
        self.graphics.addItem(plot, row=row, col=0)
        plot.hideButtons()
        plot.setMouseEnabled(x=True, y=False)
        plot.vb.setDefaultPadding(0)
        for side in ("left", "bottom"):
            axis = plot.getAxis(side)
            axis.enableAutoSIPrefix(False)
            axis.setStyle(tickLength=0, hideOverlappingLabels=BESIDE_PX, tickTextOffset=LABEL_GAP_PX)
            axis.setZValue(plot.vb.zValue() - 1)
        plot.getAxis("left").setGrid(255)
        plot.getAxis("bottom").setStyle(tickAlpha=0)
        plot.showAxis("bottom", last)
        if row:
            plot.setXLink(self.graphics.getItem(0, 0))
        return plot

    def _fit(self) -> None:
        for plot, (low, high) in zip(self.plots, self._heights, strict=True):
            beyond = (high - low) * BEYOND_PX / max(plot.vb.height() - 2 * BEYOND_PX, 1.0)
            plot.setYRange(low - beyond, high + beyond, padding=0)
        self._label_bottom()
        self.rescale()

    def _label_bottom(self) -> None:
        if self.look is None:
            return
        metrics = QFontMetricsF(self.look.font(self.look.sizes.small))
        (first, last), _ = self.plots[-1].vb.viewRange()
        widest = self._widest_label(metrics)
        room, wide = self.plots[-1].vb.width(), widest + metrics.averageCharWidth()
        if self._at is None:
            places = label_places(first, last, self._count, room, wide)
        else:
            places = spread_labels(self._at, (first, last), room, wide)
        said = [self._labels[place] for place in places]
        ticks = [
            (self.position(place), "" if label == before else label)
            for place, label, before in zip(places, said, ["", *said], strict=False)
        ]
        self.plots[-1].getAxis("bottom").setTicks([ticks])

    def _widest_label(self, metrics: QFontMetricsF) -> float:
        """How wide the widest label is; measured anew only for other labels or letters."""
        asked = self._labels, self.look
        if asked != self._measured[0]:
            widest = max(map(metrics.horizontalAdvance, set(self._labels)), default=0.0)
            self._measured = asked, widest
        return self._measured[1]

    def _reveal(self, place: int) -> None:
        (first, last), _ = self.plots[-1].vb.viewRange()
        at = self.position(place)
        if at - HALF < first:
            self.plots[-1].vb.translateBy(x=at - HALF - first)
        elif at + HALF > last:
            self.plots[-1].vb.translateBy(x=at + HALF - last)

    def _place_under(self, spot: QPointF) -> int | None:
        for plot in self.plots:
            if self._count and plot.vb.sceneBoundingRect().contains(spot):
                return self.nearest(float(plot.vb.mapSceneToView(spot).x()))
        return None

    def _hover(self, spot: QPointF) -> None:
        place = self._place_under(spot)
        if place is not None and place != self.place:
            self.point_at(place)

    def _click(self, click: Any) -> None:  # noqa: ANN401 - pyqtgraph carries no types
        place = self._place_under(click.scenePos())
        if place is not None:
            self.setFocus(Qt.FocusReason.MouseFocusReason)
            self.chosen.emit(place)
