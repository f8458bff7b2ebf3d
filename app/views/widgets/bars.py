"""The bars to scroll with, quiet as in the tables."""

from PySide6.QtWidgets import QAbstractScrollArea

from app.views.theme import Look


def quieten_bars(area: QAbstractScrollArea, look: Look) -> None:
    """Give both bars of an area the colours of the look."""
    style = (
        f"QScrollBar {{ background: {look.scheme.ground}; }}"
        "QScrollBar:vertical { width: 10px; } QScrollBar:horizontal { height: 10px; }"
        f"QScrollBar::handle {{ background: {look.scheme.quiet}; border-radius: 3px; margin: 2px; }}"
        "QScrollBar::handle:vertical { min-height: 32px; } QScrollBar::handle:horizontal { min-width: 32px; }"
        "QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }"
        "QScrollBar::add-page, QScrollBar::sub-page { background: none; }"
    )
    area.verticalScrollBar().setStyleSheet(style)
    area.horizontalScrollBar().setStyleSheet(style)
