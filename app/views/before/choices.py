"""Answers to choose from, one below the other: each a wide button with its key and its words."""

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import label


class ChoiceRow(QPushButton):
    """A button as wide as its place: the key at its beginning, the words after it, wrapped where long."""

    def __init__(self, look: Look, key: str, words: str, name: str) -> None:
        super().__init__()
        self._look = look
        self._key = label(look, key, pixels=look.sizes.heading * 1.15, weight=Weight.BOLD)
        self._words = label(look, words, pixels=look.sizes.heading, wrap=True)
        row = QHBoxLayout(self)
        edge = round(look.sizes.body * 0.5)
        row.setContentsMargins(edge * 2, edge, edge * 2, edge)
        row.setSpacing(look.sizes.body)
        row.addWidget(self._key)
        row.addWidget(self._words, 1)
        self._key.setFixedWidth(self._key.fontMetrics().horizontalAdvance("0" * max(len(key), 1)))
        for part in (self._key, self._words):
            part.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setAccessibleName(name)
        self.show_chosen(chosen=False)

    def show_chosen(self, *, chosen: bool) -> None:
        """Show whether this is the answer."""
        scheme = self._look.scheme
        with QSignalBlocker(self):
            self.setChecked(chosen)
        ground, ink = (scheme.ink, scheme.ground) if chosen else (scheme.well, scheme.ink)
        edge = ground if chosen else scheme.well_edge
        self.setStyleSheet(
            f"QPushButton {{ background: {ground}; border: 2px solid {edge}; border-radius: 8px; }}"
            f"QPushButton:hover {{ border-color: {scheme.quiet}; }}"
            f"QPushButton:focus {{ border-color: {scheme.accent}; }}"
        )
        for part in (self._key, self._words):
            part.setStyleSheet(f"color: {ink}; background: transparent")

    def hasHeightForWidth(self) -> bool:
        """Long words take more lines."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Room for the words."""
        inside = self.layout()
        return super().sizeHint().height() if inside is None else inside.totalHeightForWidth(width)

    def sizeHint(self) -> QSize:
        """Room for the words on as few lines as they like."""
        inside = self.layout()
        return super().sizeHint() if inside is None else inside.totalSizeHint()


class Choices(QWidget):
    """Answers to choose from, each with a key. `answered` carries the number of the one pressed, from 1."""

    answered = Signal(int)

    def __init__(self, look: Look, title: str, words: Sequence[str]) -> None:
        super().__init__()
        self._rows = [
            ChoiceRow(
                look, str(number), each, tr("{title} {n}, {word}").format(title=title, n=number, word=each)
            )
            for number, each in enumerate(words, 1)
        ]
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(round(look.sizes.body * 0.45))
        for number, row in enumerate(self._rows, 1):
            row.toggled.connect(partial(self._press, number))
            column.addWidget(row)

    def show_number(self, number: int | None) -> None:
        """Show which was chosen."""
        for each, row in enumerate(self._rows, 1):
            row.show_chosen(chosen=each == number)

    def _press(self, number: int, _checked: bool) -> None:
        self.answered.emit(number)
