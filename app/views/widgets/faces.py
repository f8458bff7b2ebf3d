"""Panels on top of each other, each shown whole: folded where it is too wide, scrolled where too high."""

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QLayoutItem,
    QScrollArea,
    QSizePolicy,
    QStackedWidget,
    QWidget,
)

from app.views.theme import Look
from app.views.widgets.bars import quieten_bars

BAR_PX = 20
"""Room for a scroll bar."""


class Folding(QScrollArea):
    """A panel laid out as a row, which becomes a column where the row is too wide for it.

    Folded, what the panel itself would scroll stands there whole, and all of it is scrolled together.
    """

    def __init__(self, panel: QWidget, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.panel = panel
        self._whole = False
        row = panel.layout()
        is_row = isinstance(row, QBoxLayout) and row.direction() is QBoxLayout.Direction.LeftToRight
        self._row = row if isinstance(row, QBoxLayout) and is_row else None
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        panel.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.setWidget(panel)
        self.viewport().setAutoFillBackground(False)
        panel.setAutoFillBackground(False)

    @property
    def folded(self) -> bool:
        """Whether the parts stand one below the other."""
        return self._row is not None and self._row.direction() is QBoxLayout.Direction.TopToBottom

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fold or unfold, as the width asks for."""
        super().resizeEvent(event)
        self.fold()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Fold or unfold when other words are shown."""
        if watched is self.panel and event.type() is QEvent.Type.LayoutRequest:
            self.fold()
        return super().eventFilter(watched, event)

    def fold(self) -> None:
        """Fold or unfold for what is shown now."""
        if self._row is None:
            return
        narrow = _needed(self._row) > self.viewport().width()
        if narrow != self.folded:
            way = QBoxLayout.Direction.TopToBottom if narrow else QBoxLayout.Direction.LeftToRight
            self._row.setDirection(way)
        if narrow or self._whole:
            self._show_whole(narrow)

    def _show_whole(self, narrow: bool) -> None:
        self._whole = narrow
        for area in self.panel.findChildren(QScrollArea):
            inside = area.widget()
            height = _height(inside, area.viewport().width()) if narrow and inside is not None else 0
            if area.minimumHeight() != height:
                area.setMinimumHeight(height)


class Faces(QStackedWidget):
    """Shows one panel at a time; one with a name folds and is scrolled, another takes the room there is."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._places: dict[QWidget, QWidget] = {}

    def add(self, panel: QWidget, name: str = "") -> None:
        """Take a panel."""
        place = self._places[panel] = Folding(panel, name) if name else panel
        if isinstance(place, Folding):
            quieten_bars(place, self._look)
        self.addWidget(place)

    @property
    def face(self) -> QWidget | None:
        """The panel in sight."""
        shown = self.currentWidget()
        return shown.panel if isinstance(shown, Folding) else shown

    def show_face(self, panel: QWidget) -> None:
        """Bring a panel into sight, folded for what it shows now."""
        place = self._places[panel]
        if isinstance(place, Folding):
            place.fold()
        self.setCurrentWidget(place)


def _needed(row: QBoxLayout) -> int:
    """The width the parts need side by side."""
    items = [row.itemAt(index) for index in range(row.count())]
    widths = [_width(item) for item in items if item is not None and not item.isEmpty()]
    margins = row.contentsMargins()
    return sum(widths) + row.spacing() * max(len(widths) - 1, 0) + margins.left() + margins.right()


def _height(inside: QWidget, width: int) -> int:
    """How high all of something is at a width."""
    wanted = inside.heightForWidth(width) if inside.hasHeightForWidth() else inside.sizeHint().height()
    return max(wanted, inside.minimumHeight())


def _width(item: QLayoutItem) -> int:
    """The least width of a part; of what it scrolls, that of the whole."""
    widget, inner = item.widget(), item.layout()
    least = item.minimumSize().width()
    if isinstance(widget, QScrollArea):
        inside = widget.widget()
        if inside is None:
            return least
        return max(least, max(inside.minimumSizeHint().width(), inside.minimumWidth()) + BAR_PX)
    parts = [] if inner is None else [inner.itemAt(index) for index in range(inner.count())]
    return max([least, *(_width(part) for part in parts if part is not None)])
