"""An answer that is owed: a line until it is opened, then a question answered with a number."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from time import monotonic

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from app.domain.plan import Side
from app.domain.squad import OwedKind, OwedRating
from app.views.home.words import about_words, question_words
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import label, quiet_button
from app.views.widgets.scale import EFFORT_WORDS, Scale

TEN_WITHIN_S = 1.0
"""1 and then 0 so soon after it are 10."""
PAIN_WORDS = {0: message("none"), 10: message("the worst imaginable")}


@dataclass(frozen=True, slots=True)
class LateAnswer:
    """What was answered to what was owed: 0-10, and of pain the place and the side."""

    owed: OwedRating
    value: int
    place: str | None = None
    side: Side | None = None


class OwedCard(QFrame):
    """Asks one athlete one thing.

    `answered` carries a LateAnswer, `unasked` what is not to be asked again, `opened` the card itself, once
    it wants to be the one that number keys answer, `closed` comes once it does no more.
    """

    answered = Signal(object)
    unasked = Signal(object)
    opened = Signal(object)
    closed = Signal()

    def __init__(
        self, look: Look, owed: OwedRating, today: date, now_s: Callable[[], float] = monotonic
    ) -> None:
        super().__init__()
        self.owed = owed
        self._look, self._now_s = look, now_s
        self._one_at_s: float | None = None
        self.setObjectName("owed")
        scheme = look.scheme
        self.setStyleSheet(
            f"QFrame#owed {{ background: {scheme.panel}; border: 1px solid {scheme.quiet};"
            " border-radius: 10px; }"
        )
        words = EFFORT_WORDS if owed.kind is OwedKind.SESSION_RPE else PAIN_WORDS
        self.scale = Scale(look, question_words(owed), words)
        pain = owed.kind is OwedKind.NEXT_MORNING_PAIN
        self.place = self._place_line() if pain else None
        sides = (Side.LEFT, Side.RIGHT) if pain else ()
        self._sides = {side: self._side_button(side) for side in sides}
        self.line = quiet_button(look, tr("Answer"), self.open)
        about = about_words(owed, today)
        self.line.setAccessibleName(tr("{about}. Answer").format(about=about))
        self._inside = QWidget()
        self._lay_out(about)
        self._inside.hide()

    @property
    def is_open(self) -> bool:
        """Whether number keys answer this card."""
        return self._inside.isVisibleTo(self)

    def open(self) -> None:
        """Ask the question."""
        self._inside.show()
        self.line.hide()
        self._question.hide()
        self.scale.show_asked(asked=True)
        self.setFocus()
        self.opened.emit(self)

    def close_again(self) -> None:
        """Be a line again; nothing is kept."""
        self._inside.hide()
        self.line.show()
        self._question.show()
        self.scale.show_value(None)
        self.closed.emit()

    def number(self, number: int) -> None:
        """A number key was pressed; 1 and 0 quickly are 10."""
        now = self._now_s()
        soon = self._one_at_s is not None and now - self._one_at_s <= TEN_WITHIN_S
        self._one_at_s = now if number == 1 else None
        self.scale.answer(10 if number == 0 and soon else number)

    def keep(self) -> None:
        """Have the answer kept, where there is one."""
        value = self.scale.value
        if value is None:
            return
        hurts = value > 0 and self.place is not None
        place = None if self.place is None else " ".join(self.place.text().split()) or None
        side = next((side for side, button in self._sides.items() if button.isChecked()), None)
        self.answered.emit(LateAnswer(self.owed, value, place if hurts else None, side if hurts else None))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Digits answer, Enter keeps, Esc asks later; while the card is a line they are the page's."""
        key = Qt.Key(event.key())
        if not self.is_open or event.isAutoRepeat():
            event.ignore()
        elif Qt.Key.Key_0 <= key <= Qt.Key.Key_9:
            self.number(key - Qt.Key.Key_0)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.keep()
        elif key == Qt.Key.Key_Escape:
            self.close_again()
            self.line.setFocus()
        else:
            event.ignore()

    def _lay_out(self, about: str) -> None:
        look = self._look
        edge = round(look.sizes.body * 0.5)
        column = QVBoxLayout(self)
        column.setContentsMargins(edge * 2, edge, edge * 2, edge)
        column.setSpacing(edge)
        head = QHBoxLayout()
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(label(look, about, wrap=True))
        self._question = label(look, question_words(self.owed), wrap=True, colour=look.scheme.quiet)
        words.addWidget(self._question)
        head.addLayout(words, 1)
        head.addWidget(self.line, 0, Qt.AlignmentFlag.AlignVCenter)
        column.addLayout(head)
        inside = QVBoxLayout(self._inside)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(edge)
        inside.addWidget(self.scale)
        if self.place is not None:
            where = QHBoxLayout()
            where.addWidget(self.place, 1)
            for button in self._sides.values():
                where.addWidget(button)
            inside.addLayout(where)
        acts = FlowLayout(None, edge)
        acts.addWidget(quiet_button(look, tr("Keep it  (Enter)"), self.keep))
        acts.addWidget(quiet_button(look, tr("Ask me later  (Esc)"), self.close_again))
        acts.addWidget(quiet_button(look, tr("Do not ask again"), lambda: self.unasked.emit(self.owed)))
        inside.addLayout(acts)
        column.addWidget(self._inside)

    def _place_line(self) -> QLineEdit:
        line = QLineEdit()
        scheme = self._look.scheme
        line.setFont(self._look.font(self._look.sizes.body))
        line.setMaxLength(200)
        line.setPlaceholderText(tr("Where?"))
        line.setAccessibleName(tr("Where does it hurt?"))
        line.setStyleSheet(
            f"color: {scheme.ink}; background: {scheme.ground}; border: 1px solid {scheme.quiet};"
            " border-radius: 6px; padding: 4px 8px"
        )
        line.returnPressed.connect(self.keep)
        return line

    def _side_button(self, side: Side) -> QPushButton:
        words = tr("Left") if side is Side.LEFT else tr("Right")
        button = quiet_button(self._look, words, lambda: self._choose_side(side))
        button.setCheckable(True)
        scheme = self._look.scheme
        button.setStyleSheet(
            button.styleSheet()
            + f"QPushButton:checked {{ background: {scheme.ink}; color: {scheme.ground}; }}"
        )
        return button

    def _choose_side(self, side: Side) -> None:
        self._sides[side.other].setChecked(False)
