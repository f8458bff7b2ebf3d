"""A loudness in whole percent: a slider with its figure beside it."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QSlider, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.plain import label, say

STEP, PAGE = 5, 10


class PercentSlider(QWidget):
    """Takes 0 to 100 percent: arrows move by five, Page Up and Page Down by ten, Home and End to an end."""

    def __init__(self, look: Look, name: str, percent: int) -> None:
        super().__init__()
        self._slider = QSlider(Qt.Orientation.Horizontal)
        self._slider.setRange(0, 100)
        self._slider.setSingleStep(STEP)
        self._slider.setPageStep(PAGE)
        self._slider.setAccessibleName(name)
        self._slider.setStyleSheet(_style(look))
        self._figure = label(look, pixels=look.sizes.heading, weight=Weight.SEMIBOLD)
        self._figure.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._figure.setMinimumWidth(self._figure.fontMetrics().horizontalAdvance("100 %"))
        self._slider.valueChanged.connect(self._show)
        self.setFocusProxy(self._slider)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(look.sizes.body)
        row.addWidget(self._slider, 1)
        row.addWidget(self._figure)
        self._slider.setValue(percent)
        self._show(percent)

    @property
    def percent(self) -> int:
        """The percent chosen."""
        return self._slider.value()

    def _show(self, percent: int) -> None:
        say(self._figure, f"{percent} %")


def _style(look: Look) -> str:
    scheme, high = look.scheme, round(look.sizes.body * 1.1)
    bar = high // 3
    return (
        f"QSlider {{ min-height: {high + 8}px; }}"
        f"QSlider::groove:horizontal {{ height: {bar}px; background: {scheme.unfilled};"
        f" border-radius: {bar // 2}px; }}"
        f"QSlider::sub-page:horizontal {{ background: {scheme.accent}; border-radius: {bar // 2}px; }}"
        f"QSlider::handle:horizontal {{ width: {high}px; margin: {-(high - bar) // 2}px 0;"
        f" background: {scheme.ink}; border-radius: {high // 2}px; }}"
        f"QSlider::handle:horizontal:focus {{ border: 4px solid {scheme.quiet};"
        f" width: {high - 8}px; }}"
    )
