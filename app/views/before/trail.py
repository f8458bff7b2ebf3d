"""Beside the question: every question with its answer, each a way back to it."""

from functools import partial

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QFrame, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.run.readiness_form import ITEM_STEPS, ReadinessForm, Step
from app.views.before.words import TITLES, answer_words
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import card, label, say


class TrailRow(QPushButton):
    """A question's name and its answer; the one that is asked stands out by its weight and a bar."""

    def __init__(self, look: Look, step: Step) -> None:
        super().__init__()
        self._look, self._name = look, tr(TITLES[step])
        self._title = label(look, self._name, colour=look.scheme.quiet)
        self._answer = label(look, wrap=True)
        column = QVBoxLayout(self)
        edge = round(look.sizes.body * 0.35)
        column.setContentsMargins(edge * 2, edge, edge, edge)
        column.setSpacing(0)
        for part in (self._title, self._answer):
            part.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
            column.addWidget(part)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def show_answer(self, words: str, *, asked: bool) -> None:
        """Show an answer, and whether this is the question now."""
        look, scheme = self._look, self._look.scheme
        say(self._answer, words)
        self._answer.setFont(look.font(look.sizes.body, Weight.SEMIBOLD if asked else Weight.REGULAR))
        bar = scheme.ink if asked else "transparent"
        beginning = "right" if self.layoutDirection() is Qt.LayoutDirection.RightToLeft else "left"
        self.setStyleSheet(
            "QPushButton { background: transparent; border: 2px solid transparent;"
            f" border-{beginning}: 4px solid {bar}; }}"
            f"QPushButton:focus {{ border-color: {scheme.quiet}; }}"
        )
        self.setAccessibleName(tr("{question}: {answer}").format(question=self._name, answer=words))
        self.updateGeometry()

    def hasHeightForWidth(self) -> bool:
        """Long answers take more lines."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Room for the words."""
        inside = self.layout()
        return super().sizeHint().height() if inside is None else inside.totalHeightForWidth(width)

    def sizeHint(self) -> QSize:
        """Room for the words on as few lines as they like."""
        inside = self.layout()
        return super().sizeHint() if inside is None else inside.totalSizeHint()


class Trail(QFrame):
    """The questions that the answers lead through. `wanted` carries the one that is to be asked again."""

    wanted = Signal(object)

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._rows = {step: TrailRow(look, step) for step in TITLES}
        self._sum = label(look, weight=Weight.SEMIBOLD, wrap=True)
        frame = card(look)
        inner = QVBoxLayout(frame)
        edge = round(look.sizes.body * 0.9)
        inner.setContentsMargins(edge, edge, edge, edge)
        inner.setSpacing(round(look.sizes.body * 0.15))
        for step, row in self._rows.items():
            row.clicked.connect(partial(self._want, step))
            inner.addWidget(row)
            if step is ITEM_STEPS[-1]:
                self._sum.setContentsMargins(edge, 0, 0, round(edge * 0.4))
                inner.addWidget(self._sum)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(frame)
        outer.addStretch(1)

    def show_form(self, form: ReadinessForm) -> None:
        """Show every answer, and the sum once all four items have one."""
        for step, row in self._rows.items():
            row.setVisible(step in form.steps)
            row.show_answer(answer_words(form, step), asked=step is form.step)
        total = form.total
        say(self._sum, "" if total is None else tr("Sum {n}, of 4 (well) to 28").format(n=total))
        self._sum.setVisible(total is not None)

    def row(self, step: Step) -> QWidget:
        """The row of a question."""
        return self._rows[step]

    def _want(self, step: Step, _checked: bool = False) -> None:
        self.wanted.emit(step)
