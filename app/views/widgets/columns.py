"""Parts side by side where there is room for them, else one below the other."""

from collections.abc import Sequence

from PySide6.QtCore import QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget


class Columns(QWidget):
    """Lays parts out in a row by their shares of the width; too narrow for that, it stacks them."""

    def __init__(self, parts: Sequence[tuple[QWidget, int]], spacing: int) -> None:
        super().__init__()
        self._parts = tuple(part for part, _ in parts)
        self._spacing = spacing
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(spacing)
        for part, share in parts:
            self._row.addWidget(part, share)

    @property
    def stacked(self) -> bool:
        """Whether the parts stand one below the other."""
        return self._row.direction() is QBoxLayout.Direction.TopToBottom

    def minimumSizeHint(self) -> QSize:
        """Room for the widest part, and for the height of all as they stand."""
        return QSize(max(self._widths, default=0), self._row.minimumSize().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Stand in a row or stack, as the width asks for."""
        super().resizeEvent(event)
        narrow = self.width() < sum(self._widths) + self._spacing * (len(self._widths) - 1)
        if narrow != self.stacked:
            way = QBoxLayout.Direction.TopToBottom if narrow else QBoxLayout.Direction.LeftToRight
            self._row.setDirection(way)
            self.updateGeometry()

    @property
    def _widths(self) -> tuple[int, ...]:
        """The least width of each part that is shown."""
        shown = (part for part in self._parts if not part.isHidden())
        return tuple(max(part.minimumSizeHint().width(), part.minimumWidth()) for part in shown)
