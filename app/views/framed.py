"""A page of the desk with the way back above it."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.views.theme import Look, palette
from app.views.translation import tr
from app.views.widgets.plain import quiet_button, scrolling


def framed(look: Look, page: QWidget, back: Callable[[], object]) -> QWidget:
    """Put a way back to the start above a page, which is scrolled where letters are too large for it."""
    frame = QWidget()
    frame.setPalette(palette(look.scheme))
    frame.setAutoFillBackground(True)
    column = QVBoxLayout(frame)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    column.addWidget(quiet_button(look, tr("← Start  (Esc)"), back), 0, Qt.AlignmentFlag.AlignLeft)
    column.addWidget(scrolling(page, page.accessibleName(), sideways=True), 1)
    frame.setFocusProxy(page)
    return frame
