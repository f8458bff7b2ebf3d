"""The keys of the first page, shown on F1."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QGridLayout, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.plain import label, scrolling

MOST_OF_WINDOW = 0.95
"""The keys take no more of the window than this."""

HOME_KEYS: tuple[tuple[str, str], ...] = (
    (message("Enter or Space"), message("begin what is most likely, as the button says")),
    (message("letters"), message("look for a name")),
    (message("↑ and ↓"), message("choose who trains; in the plans, choose a plan")),
    (message("Tab"), message("go on to the plans, the answers owed, the other pages")),
    (message("Ctrl+O"), message("open a plan")),
    (message("F2"), message("give the first answer that is owed; then 0-9, Enter keeps it")),
    (message("Ctrl+,"), message("how the screens look")),
    (message("F11"), message("full screen")),
    (message("F1"), message("this page")),
)


class HomeKeys(QDialog):
    """Shows what each key does; any key closes it."""

    def __init__(self, look: Look, parent: QWidget) -> None:
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
        for row, (key, what) in enumerate(HOME_KEYS):
            grid.addWidget(label(look, tr(key), weight=Weight.SEMIBOLD), row, 0)
            grid.addWidget(label(look, tr(what), wrap=look.text > 1.0), row, 1)
        grid.setColumnStretch(1, 1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(edge, edge, edge, edge)
        outer.addWidget(scrolling(inside, tr("Keys")))
        wanted = inside.sizeHint() + QSize(3 * edge, 2 * edge + 2)
        room = parent.window().size() * MOST_OF_WINDOW
        width = room.width() if look.text > 1.0 else wanted.width()
        self.resize(QSize(width, wanted.height()).boundedTo(room))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close at any key."""
        if not event.isAutoRepeat():
            self.close()
