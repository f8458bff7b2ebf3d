"""The keys of the first page, shown on F1."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QGridLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.plain import label

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
        grid = QGridLayout(self)
        edge = round(look.sizes.body * 1.6)
        grid.setContentsMargins(edge, edge, edge, edge)
        grid.setHorizontalSpacing(edge)
        grid.setVerticalSpacing(round(look.sizes.body * 0.4))
        for row, (key, what) in enumerate(HOME_KEYS):
            grid.addWidget(label(look, tr(key), weight=Weight.SEMIBOLD), row, 0)
            grid.addWidget(label(look, tr(what)), row, 1)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close at any key."""
        if not event.isAutoRepeat():
            self.close()
