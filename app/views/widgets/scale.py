"""A question answered with a whole number, 0 to 10 unless said otherwise; unanswered stays unknown."""

from functools import partial

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.fitted import FittedLabel

UNANSWERED = message("unanswered: stays unknown")

EFFORT_WORDS: dict[int, str] = {
    0: message("rest"),
    1: message("very, very easy"),
    2: message("easy"),
    3: message("moderate"),
    4: message("somewhat hard"),
    5: message("hard"),
    7: message("very hard"),
    10: message("maximal"),
}
"""Foster's words for session RPE (J Strength Cond Res 15:109, 2001, quoted); 6, 8 and 9 have none."""


class Scale(QWidget):
    """A row of numbered buttons under a title, and the word of the number chosen."""

    answered = Signal(object)

    def __init__(self, look: Look, title: str, words: dict[int, str], most: int = 10) -> None:
        super().__init__()
        self._look, self._title, self._words = look, title, words
        self._value: int | None = None
        self._asked: bool | None = None
        self._heading = QLabel(title)
        self._heading.setFont(look.font(look.sizes.heading))
        self._word = FittedLabel(look, pixels=look.sizes.body, lines=2)
        self._word.setAlignment(Qt.AlignmentFlag.AlignTrailing | Qt.AlignmentFlag.AlignVCenter)
        self._buttons = [self._button(number) for number in range(most + 1)]
        row = QHBoxLayout()
        row.setSpacing(round(look.sizes.body * 0.5))
        for button in self._buttons:
            row.addWidget(button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(round(look.sizes.body * 0.5))
        head = QHBoxLayout()
        head.addWidget(self._heading)
        head.addWidget(self._word, 1)
        layout.addLayout(head)
        layout.addLayout(row)
        self._paint()

    @property
    def value(self) -> int | None:
        """The number chosen, None when unanswered."""
        return self._value

    def show_value(self, value: int | None) -> None:
        """Show a number without saying that it was answered."""
        self._value = value
        self._paint()

    def show_asked(self, *, asked: bool) -> None:
        """Show whether number keys answer this question now."""
        if asked == self._asked:
            return
        self._asked = asked
        scheme = self._look.scheme
        words = tr("{question}  ·  press a number").format(question=self._title)
        self._heading.setText(words if asked else self._title)
        self._heading.setStyleSheet(f"color: {scheme.ink if asked else scheme.quiet}")

    def answer(self, value: int) -> None:
        """Answer as by pressing the button of a number."""
        if not 0 <= value < len(self._buttons):
            return
        self._value = value
        self._paint()
        self.answered.emit(self._value)

    def _button(self, number: int) -> QPushButton:
        button = QPushButton(str(number))
        button.setFont(self._look.font(self._look.sizes.heading, Weight.SEMIBOLD))
        button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        button.setMinimumSize(round(self._look.sizes.body * 1.6), self._look.margin)
        word = self._words.get(number)
        name = f"{self._title} {number}"
        button.setAccessibleName(f"{name}, {tr(word)}" if word else name)
        button.setCheckable(True)
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        button.toggled.connect(partial(self._press, number))
        return button

    def _press(self, number: int, _checked: bool) -> None:
        self.answer(number)

    def _paint(self) -> None:
        scheme = self._look.scheme
        for number, button in enumerate(self._buttons):
            chosen = number == self._value
            with QSignalBlocker(button):
                button.setChecked(chosen)
            ground, ink = (scheme.ink, scheme.ground) if chosen else (scheme.well, scheme.ink)
            edge = ground if chosen else scheme.well_edge
            button.setStyleSheet(
                f"QPushButton {{ background: {ground}; color: {ink};"
                f" border: 2px solid {edge}; border-radius: 8px; padding: 0; }}"
                f"QPushButton:focus {{ border: 2px solid {scheme.accent}; }}"
            )
        self._word.setText(self._describe())
        self._word.setStyleSheet(f"color: {scheme.quiet if self._value is None else scheme.ink}")

    def _describe(self) -> str:
        if self._value is None:
            return tr(UNANSWERED)
        word = self._words.get(self._value)
        return f"{self._value} · {tr(word)}" if word else str(self._value)
