"""The buttons of the coach's console: the same as its keys, for a hand on the mouse."""

from collections.abc import Callable
from functools import partial

from PySide6.QtWidgets import QGridLayout

from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import quiet_button


def steering_buttons(look: Look, strike: Callable[[str], object]) -> QGridLayout:
    """Make a button for each key that steers the room; `strike` is given the key's sign."""
    grid = QGridLayout()
    grid.setVerticalSpacing(0)
    buttons = (
        (tr("+15 s  (T)"), "T"),
        (tr("Begin now  (N)"), "N"),
        (tr("End this bout  (E)"), "E"),
        (tr("Do it again  (A)"), "A"),
        (tr("One rep for all  (Enter)"), "\r"),
        (tr("Leave out  (K)"), "K"),
        (tr("Back  (←)"), "<"),
        (tr("On  (→)"), ">"),
        (tr("Softer  (-)"), "-"),
        (tr("Louder  (+)"), "+"),
        (tr("Sound off or on  (V)"), "V"),
        (tr("Stop  (S)"), "S"),
    )
    for index, (words, sign) in enumerate(buttons):
        grid.addWidget(quiet_button(look, words, partial(strike, sign)), index // 2, index % 2)
    return grid
