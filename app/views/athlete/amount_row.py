"""A number on the card that is put right a step at a time, or typed."""

from decimal import Decimal, InvalidOperation
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import pointed, tr
from app.views.widgets.plain import label, quiet_button, say

LOAD_STEP = Decimal("0.5")
MOST_LOAD = Decimal(1_000)


class TypingLine(QLineEdit):
    """A line to type in that keeps its keys: Enter hands over, Esc gives up."""

    given_up = Signal()

    def __init__(self, look: Look, name: str) -> None:
        super().__init__()
        self.setFont(look.font(look.sizes.heading))
        self.setAccessibleName(name)
        scheme = look.scheme
        self.setStyleSheet(
            f"QLineEdit {{ background: {scheme.ground}; color: {scheme.ink};"
            f" border: 2px solid {scheme.accent}; border-radius: 6px; padding: 4px 8px; }}"
        )

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Type; what typing does not need stays here all the same."""
        if event.key() == Qt.Key.Key_Escape:
            self.given_up.emit()
        else:
            super().keyPressEvent(event)
        event.accept()


class StepRow(QWidget):
    """A title, two buttons to step with, and the number; `stepped` carries -1 or 1."""

    stepped = Signal(int)

    def __init__(self, look: Look, title: str, fewer: str, more: str, pixels: float | None = None) -> None:
        super().__init__()
        self._look = look
        size = look.sizes.title if pixels is None else pixels
        self.value = label(look, pixels=size, weight=Weight.BOLD)
        self.about = label(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        self.row = QHBoxLayout(self)
        self.row.setContentsMargins(0, 0, 0, 0)
        self.row.addWidget(label(look, title, pixels=look.sizes.heading, colour=look.scheme.quiet))
        self.row.addStretch(1)
        for text, by, name in (("−", -1, fewer), ("+", 1, more)):
            button = quiet_button(look, text, partial(self.stepped.emit, by), tip=name)
            button.setFont(look.font(size, Weight.SEMIBOLD))
            button.setAccessibleName(name)
            self.row.addWidget(button)
        self.row.addSpacing(look.sizes.body)
        self.row.addWidget(self.about)
        self.row.addWidget(self.value)


class LoadRow(StepRow):
    """The load that was used: that of the plan until it is answered, which stays unknown.

    `answered` carries kg as decimal text.
    """

    answered = Signal(str)

    def __init__(self, look: Look, pixels: float | None = None) -> None:
        less, more = tr("Half a kilogram less"), tr("Half a kilogram more")
        super().__init__(look, tr("Load used"), less, more, pixels)
        self._planned: Decimal | None = None
        self._said: Decimal | None = None
        self._line = TypingLine(look, tr("Load used, in kilograms"))
        self._line.setMaximumWidth(round(look.sizes.body * 6))
        self._line.returnPressed.connect(self._typed)
        self._line.given_up.connect(self._close)
        self._line.hide()
        self._keep = quiet_button(look, tr("as planned  (L, Enter)"), self._as_planned)
        self.row.addWidget(self._line)
        self.row.insertWidget(1, self._keep)
        self.stepped.connect(self._step)

    def show_load(self, planned: Decimal | None, said: str | None) -> None:
        """Show what the plan asks for and what was said; hidden where the exercise has no load."""
        self._planned, self._said = planned, None if said is None else Decimal(said)
        self.setVisible(planned is not None)
        shown = self._now
        say(self.value, "" if shown is None else tr("{kg} kg").format(kg=pointed(plain_kg(shown))))
        colour = self._look.scheme.quiet if self._said is None else self._look.scheme.ink
        _paint(self.value, colour)
        say(self.about, tr("planned") if self._said is None else tr("used"))
        self._keep.setVisible(self._said is None)

    @property
    def typing(self) -> bool:
        """Whether a load is being typed."""
        return not self._line.isHidden()

    def open(self) -> None:
        """Let the load be typed, that of the plan to begin with."""
        if self._now is None or not self.isVisible():
            return
        self._line.setText(plain_kg(self._now))
        self._line.show()
        self._line.selectAll()
        self._line.setFocus()

    def finish(self) -> None:
        """Close the line; what was changed in it is kept where it is a load."""
        if self.typing and self._now is not None and self._line.text() != plain_kg(self._now):
            self._typed()
        self._close()

    @property
    def _now(self) -> Decimal | None:
        return self._planned if self._said is None else self._said

    def _step(self, by: int) -> None:
        if self._now is not None:
            self._answer(min(max(self._now + by * LOAD_STEP, Decimal(0)), MOST_LOAD))

    def _as_planned(self) -> None:
        if self._planned is not None:
            self._answer(self._planned)

    def _typed(self) -> None:
        load = load_of(self._line.text())
        self._close()
        if load is not None:
            self._answer(load)

    def _answer(self, load: Decimal) -> None:
        self.answered.emit(plain_kg(load))

    def _close(self) -> None:
        had = self._line.hasFocus()
        self._line.hide()
        if had and (page := self.parentWidget()) is not None:
            page.setFocus()


def load_of(text: str) -> Decimal | None:
    """The kilograms that were typed, with a point or a comma; None where they are none, or too many."""
    try:
        load = Decimal(text.strip().replace(",", "."))
    except InvalidOperation:
        return None
    return load if load.is_finite() and 0 <= load <= MOST_LOAD and load == round(load, 3) else None


def plain_kg(load: Decimal) -> str:
    """Kilograms without needless zeros: `12.5`, `20`."""
    return f"{load.normalize():f}"


def _paint(where: QLabel, colour: str) -> None:
    style = f"color: {colour}"
    if where.styleSheet() != style:
        where.setStyleSheet(style)
