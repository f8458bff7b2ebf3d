"""The page of the coach's keys, on F1."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QDialog, QGridLayout, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.plain import label, scrolling

MOST_OF_WINDOW = 0.95
SIGNS = {
    Qt.Key.Key_Space: " ",
    Qt.Key.Key_Return: "\r",
    Qt.Key.Key_Enter: "\r",
    Qt.Key.Key_Escape: "\x1b",
    Qt.Key.Key_Left: "<",
    Qt.Key.Key_PageUp: "<",
    Qt.Key.Key_Right: ">",
    Qt.Key.Key_PageDown: ">",
}
KEY_PAGE: tuple[tuple[str, str], ...] = (
    (message("Space"), message("begin, pause, go on")),
    (message("digit or letter, ↑ ↓"), message("choose somebody; then one of these:")),
    (message("1 to 9"), message("… the fault with that number")),
    (message("F, M"), message("… a fault without a name, a missed rep")),
    (message("O, Y"), message("… sits out the exercise, a note")),
    (message("Enter, L"), message("… is here, leaves for good (L twice)")),
    (message("H"), message("… at stations: their tempo is heard, or no longer")),
    (message("/"), message("find a name, before the session")),
    (message("Enter"), message("one rep for all, at one's own pace")),
    (message("T, N"), message("15 s more rest, begin now")),
    (message("E, A"), message("end this bout, do it again")),
    (message("K"), message("leave out this exercise for all; at stations, this window")),
    (message("←, →"), message("back, on: by a bout or a window")),
    (message("+, -, V"), message("louder, softer, sound off or on")),
    (message("S twice"), message("stop for everybody")),
    (message("F9"), message("gym screen")),
    (message("Esc"), message("out of a choice; out of the session, which is asked")),
)


class ConsoleKeys(QDialog):
    """Shows what each key does; any key closes it, and the session goes on behind it."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Keys"))
        self.setStyleSheet(f"QDialog {{ background: {look.scheme.panel}; }}")
        edge = round(look.sizes.body * 1.6)
        inside = QWidget()
        grid = QGridLayout(inside)
        grid.setHorizontalSpacing(edge)
        for row, (key, what) in enumerate(KEY_PAGE):
            grid.addWidget(label(look, tr(key), weight=Weight.SEMIBOLD), row, 0)
            grid.addWidget(label(look, tr(what)), row, 1)
        scroll = scrolling(inside, tr("Keys"))
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(edge, edge, edge, edge)
        outer.addWidget(scroll)
        room, wanted = parent.window().size() * MOST_OF_WINDOW, inside.sizeHint()
        self.resize(
            min(wanted.width() + 4 * edge, room.width()), min(wanted.height() + 3 * edge, room.height())
        )
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close at any key, so that the next one reaches the session."""
        if not event.isAutoRepeat():
            self.close()
