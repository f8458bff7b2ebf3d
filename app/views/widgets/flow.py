"""A layout that sets its parts side by side and goes on in the next line where there is no more room."""

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class FlowLayout(QLayout):
    """Parts at their own size, from the side where reading begins, line by line."""

    def __init__(self, parent: QWidget | None, gap: int) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._gap = gap
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:
        """Take a part."""
        self._items.append(item)

    def count(self) -> int:
        """How many parts there are."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """A part by its place."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Let a part go."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """It takes no more room than it is given."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """The narrower it is, the higher."""
        return True

    def heightForWidth(self, width: int) -> int:
        """How high it is at a width."""
        return self._place(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:
        """Set the parts into a rectangle."""
        super().setGeometry(rect)
        self._place(rect, move=True)

    def sizeHint(self) -> QSize:
        """Room for the widest part."""
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        """Room for the widest part."""
        sizes = [item.minimumSize() for item in self._shown()]
        return QSize(
            max((size.width() for size in sizes), default=0),
            max((size.height() for size in sizes), default=0),
        )

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _place(self, rect: QRect, *, move: bool) -> int:
        x, y, line = rect.x(), rect.y(), 0
        parent = self.parentWidget()
        mirrored = parent is not None and parent.isRightToLeft()
        for item in self._shown():
            size = item.sizeHint().boundedTo(QSize(max(rect.width(), 1), item.sizeHint().height()))
            if x > rect.x() and x + size.width() > rect.x() + rect.width():
                x, y, line = rect.x(), y + line + self._gap, 0
            if move:
                left = rect.x() + rect.right() - x - size.width() + 1 if mirrored else x
                item.setGeometry(QRect(QPoint(left, y), size))
            x += size.width() + self._gap
            line = max(line, size.height())
        return y + line - rect.y()
