"""What the coach sees at a glance: what the room does, what comes, who is chosen, what was struck."""

from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import card, say

ECHO_MS = 8_000
"""What was struck last is shown back large for so long."""


class NowPanel(QWidget):
    """Says it in large letters; it takes no keys."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._now = FittedLabel(look, pixels=look.sizes.display * 1.5, weight=Weight.BOLD)
        self._next = FittedLabel(look, pixels=look.sizes.title, colour=look.scheme.quiet, lines=2)
        self._who = FittedLabel(look, pixels=look.sizes.display, weight=Weight.BOLD)
        self._what = FittedLabel(look, pixels=look.sizes.title, lines=2)
        self._card: QFrame = card(look)
        inside = QVBoxLayout(self._card)
        edge = round(look.sizes.body)
        inside.setContentsMargins(edge, edge // 2, edge, edge // 2)
        inside.addWidget(self._who)
        inside.addWidget(self._what)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._now)
        layout.addWidget(self._next)
        layout.addSpacing(edge)
        layout.addWidget(self._card)

    @property
    def echo(self) -> tuple[str, str]:
        """Who is meant, and what was struck."""
        return self._who.text(), self._what.text()

    def show_now(self, now: str, following: str) -> None:
        """Say what the room does, and what comes."""
        say(self._now, now)
        say(self._next, following)

    def show_echo(self, who: str, what: str) -> None:
        """Say who is chosen or was meant, and what was struck; a dash where there is nothing."""
        say(self._who, who or "–")
        say(self._what, what)
