"""Labels, buttons and cards in the look of the house."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QScrollArea, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.lines import in_order

BEGIN_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignAbsolute | Qt.AlignmentFlag.AlignVCenter
"""Where lines begin that run from right to left; Qt would go by the letters of each text alone."""


def label(
    look: Look,
    text: str = "",
    *,
    pixels: float | None = None,
    weight: Weight = Weight.REGULAR,
    colour: str | None = None,
    wrap: bool = False,
) -> QLabel:
    """Make a text; in ink and of the running size unless said otherwise."""
    made = QLabel(text)
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setFont(look.font(look.sizes.body if pixels is None else pixels, weight))
    made.setWordWrap(wrap)
    made.setStyleSheet(f"color: {colour or look.scheme.ink}")
    if QGuiApplication.layoutDirection() is Qt.LayoutDirection.RightToLeft:
        made.setAlignment(BEGIN_RIGHT)
    return made


def say(where: QLabel, text: str) -> None:
    """Set a text where it differs: setting the same text anew would lay the window out again."""
    if where.text() != text:
        where.setText(text)


def quiet_button(look: Look, text: str, act: Callable[[], object], *, tip: str = "") -> QPushButton:
    """Make a button that is a word until it is pointed at or reached by Tab."""
    made = _button(look, text, act, tip)
    scheme = look.scheme
    made.setStyleSheet(
        f"QPushButton {{ color: {scheme.quiet}; background: transparent; border: 2px solid transparent;"
        " border-radius: 6px; padding: 6px 10px; }"
        f"QPushButton:hover {{ color: {scheme.ink}; }}"
        f"QPushButton:focus {{ border-color: {scheme.quiet}; }}"
        f"QPushButton:disabled {{ color: {scheme.faint}; }}"
    )
    return made


def strong_button(look: Look, text: str, act: Callable[[], object], *, tip: str = "") -> QPushButton:
    """Make the button of what is most likely wanted."""
    made = _button(look, text, act, tip)
    scheme = look.scheme
    made.setStyleSheet(
        f"QPushButton {{ color: {scheme.on_accent}; background: {scheme.accent};"
        f" border: 3px solid {scheme.accent};"
        " border-radius: 8px; padding: 10px 22px; }"
        f"QPushButton:focus {{ border-color: {scheme.ink}; }}"
        f"QPushButton:disabled {{ color: {scheme.quiet}; background: {scheme.well};"
        f" border-color: {scheme.well_edge}; }}"
    )
    made.setFont(look.font(look.sizes.heading, Weight.SEMIBOLD))
    return made


def card(look: Look) -> QFrame:
    """Make a panel on the ground with a thin line around it."""
    made = QFrame()
    made.setObjectName("card")
    scheme = look.scheme
    made.setStyleSheet(
        f"QFrame#card {{ background: {scheme.panel};"
        f" border: 1px solid {scheme.quiet}; border-radius: 14px; }}"
    )
    return made


def scrolling(inside: QWidget, name: str, *, sideways: bool = False) -> QScrollArea:
    """Let something that may be taller than its place be scrolled; it shows the ground it stands on.

    What is wider too, such as a table with its charts, is scrolled `sideways`.
    """
    scroll = QScrollArea()
    scroll.setWidgetResizable(True)
    if not sideways:
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    scroll.setFrameShape(QScrollArea.Shape.NoFrame)
    scroll.setAccessibleName(name)
    scroll.setWidget(inside)
    scroll.viewport().setAutoFillBackground(False)
    inside.setAutoFillBackground(False)
    return scroll


def _button(look: Look, text: str, act: Callable[[], object], tip: str) -> QPushButton:
    made = QPushButton(in_order(text))
    made.setFont(look.font(look.sizes.body))
    made.setCursor(Qt.CursorShape.PointingHandCursor)
    made.setFocusPolicy(Qt.FocusPolicy.TabFocus)
    made.setAccessibleName(text)
    if tip:
        made.setToolTip(tip)
    made.clicked.connect(lambda _checked=False: act())
    return made
