"""The page of keys, on F1."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QGridLayout, QWidget

from app.views.athlete.keys import KEY_PAGE
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.plain import label


class KeyPage(QDialog):
    """Shows what each key does; any key closes it, and the session goes on behind it."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle("Keys")
        self.setStyleSheet(f"QDialog {{ background: {look.scheme.panel}; }}")
        grid = QGridLayout(self)
        edge = round(look.sizes.body * 2)
        grid.setContentsMargins(edge, edge, edge, edge)
        grid.setHorizontalSpacing(edge)
        for row, (key, what) in enumerate(KEY_PAGE):
            grid.addWidget(label(look, key, weight=Weight.SEMIBOLD, pixels=look.sizes.heading), row, 0)
            grid.addWidget(label(look, what, pixels=look.sizes.heading), row, 1)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close at any key, so that the next one reaches the session."""
        if not event.isAutoRepeat():
            self.close()
