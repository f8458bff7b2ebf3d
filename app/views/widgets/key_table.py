"""A page of keys over another page: what each does, until any key is pressed."""

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QGridLayout, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import label, scrolling

MOST_OF_WINDOW = 0.95
"""The keys take no more of the window than this."""

Rows = Sequence[tuple[str, str]]
"""The message of a key, and that of what it does."""


class KeyTable(QDialog):
    """Shows rows of keys; any key closes it, so that the next one reaches the page behind it."""

    def __init__(self, look: Look, parent: QWidget, rows: Rows) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Keys"))
        self.setStyleSheet(f"QDialog {{ background: {look.scheme.panel}; }}")
        edge = round(look.sizes.body * 1.6)
        inside = QWidget()
        grid = QGridLayout(inside)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(edge)
        grid.setVerticalSpacing(round(look.sizes.body * 0.4))
        for row, (key, what) in enumerate(rows):
            grid.addWidget(label(look, tr(key), weight=Weight.SEMIBOLD), row, 0)
            grid.addWidget(label(look, tr(what), wrap=look.text > 1.0), row, 1)
        grid.setColumnStretch(1, 1)
        scroll = scrolling(inside, tr("Keys"))
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(edge, edge, edge, edge)
        outer.addWidget(scroll)
        wanted = inside.sizeHint() + QSize(3 * edge, 2 * edge + 2)
        room = parent.window().size() * MOST_OF_WINDOW
        width = room.width() if look.text > 1.0 else wanted.width()
        self.resize(QSize(width, wanted.height()).boundedTo(room))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close at any key."""
        if not event.isAutoRepeat():
            self.close()
