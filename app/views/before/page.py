"""The page before a run: one question after the other, each answered with a key or left open."""

from collections.abc import Callable
from functools import partial
from time import monotonic

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractButton, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from app.domain.readiness import Decision
from app.run.readiness_form import ReadinessForm, Step
from app.views.athlete.keys import meant
from app.views.before.panels import CarePanel, PainPanel, panels
from app.views.before.trail import Trail
from app.views.before.words import NO, QUESTIONS, YES
from app.views.lettering import Weight
from app.views.theme import Look, palette
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import label, quiet_button, say, scrolling

TEN_WITHIN_S = 0.8
"""A 0 pressed this soon after a 1 means 10."""
ON_KEYS = (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter)


class BeforePage(QWidget):
    """Asks, and tells of each answer.

    `changed` carries the form after each answer; `answered` says that nothing is asked any more and the
    session may begin, and whether a key that begins it too had been the last; `skipped` that it is left out
    today, `left` that the person goes back to the start.
    """

    changed = Signal(object)
    answered = Signal(bool)
    skipped = Signal()
    left = Signal()

    def __init__(
        self,
        look: Look,
        form: ReadinessForm,
        whom: str,
        title: str,
        now_s: Callable[[], float] = monotonic,
    ) -> None:
        super().__init__()
        self._look, self._form, self._now_s = look, form, now_s
        self._one_at_s: float | None = None
        self._by_key = False
        self._panels = panels(look)
        self._trail = Trail(look)
        self._trouble = label(look, colour=look.scheme.notice, wrap=True)
        self._stack = QStackedWidget()
        self._places = {}
        for panel in dict.fromkeys(self._panels.values()):
            self._places[panel] = scrolling(panel, tr("The question"))
            self._stack.addWidget(self._places[panel])
        self._connect()
        self._lay_out(whom, title)
        self._trouble.hide()
        self.setPalette(palette(look.scheme))
        self.setAutoFillBackground(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._show()

    @property
    def form(self) -> ReadinessForm:
        """The answers so far."""
        return self._form

    def show_trouble(self, sentence: str) -> None:
        """Say in words that something outside the session went wrong, until told ""."""
        say(self._trouble, sentence)
        self._trouble.setVisible(bool(sentence))

    def take_focus(self) -> None:
        """Put the keys where they are wanted: into the note where one is asked for, else to the page."""
        panel = self._panels[self._form.step]
        if isinstance(panel, CarePanel):
            panel.note.setFocus()
            QTimer.singleShot(0, self, self._show_note)
        else:
            self.setFocus()

    def _show_note(self) -> None:
        """Scroll to the note, once it has its place."""
        panel = self._panels[Step.CARE]
        if isinstance(panel, CarePanel):
            self._places[panel].ensureWidgetVisible(panel.note)

    def back(self) -> None:
        """Ask the question before again."""
        self._take(self._form.back())

    def pass_over(self) -> None:
        """Go on to the next question."""
        self._take(self._form.pass_over())

    def skip_all(self) -> None:
        """Ask nothing more."""
        self._take(self._form.skip_all())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Follow a key; a key held down counts once."""
        if event.isAutoRepeat():
            return
        key = meant(event)
        acts: dict[Qt.Key, Callable[[], object]] = {
            Qt.Key.Key_Backspace: self.back,
            Qt.Key.Key_S: self.skip_all,
            _letter(tr(YES), Qt.Key.Key_Y): lambda: self._take(self._form.say(yes=True)),
            _letter(tr(NO), Qt.Key.Key_N): lambda: self._take(self._form.say(yes=False)),
        }
        if key is Qt.Key.Key_Escape and not self.window().isFullScreen():
            self.left.emit()
        elif key in ON_KEYS:
            self._by_key = True
            self._go_on(enter=key is not Qt.Key.Key_Space)
            self._by_key = False
        elif Qt.Key.Key_0 <= key <= Qt.Key.Key_9:
            self._number(key - Qt.Key.Key_0)
        elif key in acts:
            acts[key]()
        elif not (self._form.step is Step.PLACE and self._pain.body.step(key)):
            super().keyPressEvent(event)

    @property
    def _pain(self) -> PainPanel:
        panel = self._panels[Step.PAIN]
        assert isinstance(panel, PainPanel)  # noqa: S101 - told to the type checker
        return panel

    def _go_on(self, *, enter: bool) -> None:
        reached = self.focusWidget()
        if enter and isinstance(reached, QAbstractButton):
            reached.click()
        elif self._form.may_decide:
            self.setFocus()
        else:
            self.pass_over()

    def _number(self, number: int) -> None:
        soon = self._one_at_s is not None and self._now_s() - self._one_at_s <= TEN_WITHIN_S
        self._one_at_s = self._now_s() if number == 1 and self._form.step is Step.PAIN else None
        if number == 0 and soon:
            self._take(self._form.make_ten())
        elif self._form.step is Step.CARE:
            decisions = {1: Decision.SPOKEN, 2: Decision.SKIPPED}
            if number in decisions:
                self._take(self._form.decide(decisions[number]))
        else:
            self._take(self._form.number(number))

    def _answer(self, step: Step, number: int) -> None:
        self._take(self._form.go_to(step).number(number))

    def _take(self, form: ReadinessForm) -> None:
        if form == self._form:
            return
        moved = form.step is not self._form.step
        self._form = form
        self.changed.emit(form)
        if form.step is Step.DONE:
            if form.decision is Decision.SKIPPED:
                self.skipped.emit()
            else:
                self.answered.emit(self._by_key)
            return
        self._show(moved=moved)

    def _show(self, *, moved: bool = True) -> None:
        step = self._form.step
        panel = self._panels[step]
        panel.show_form(self._form)
        self._trail.show_form(self._form)
        self._stack.setCurrentWidget(self._places[panel])
        self._back.setEnabled(self._form.back() != self._form)
        self._over.setVisible(self._form.pass_over() != self._form)
        self._skip.setVisible(step is not Step.CARE)
        if not moved:
            return
        self.take_focus()
        if QAccessible.isActive():
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, tr(QUESTIONS[step])))

    def _connect(self) -> None:
        for step, panel in self._panels.items():
            if step is not Step.PLACE:
                panel.numbered.connect(partial(self._answer, step))
        care = self._panels[Step.CARE]
        assert isinstance(care, CarePanel)  # noqa: S101 - told to the type checker
        care.wrote.connect(lambda note: self._take(self._form.write(note)))
        care.decided.connect(lambda decision: self._take(self._form.decide(decision)))
        care.went_on.connect(self.pass_over)
        self._pain.pointed.connect(lambda spot: self._take(self._form.go_to(Step.PLACE).point(spot)))
        self._trail.wanted.connect(lambda step: self._take(self._form.go_to(step)))

    def _lay_out(self, whom: str, title: str) -> None:
        look = self._look
        side = round(look.sizes.body / look.text * 3.2)
        column = QVBoxLayout(self)
        column.setContentsMargins(side, look.sizes.body, side, round(side * 0.4))
        column.setSpacing(look.sizes.body)
        about = FittedLabel(look, pixels=look.sizes.heading, weight=Weight.SEMIBOLD)
        about.setText(tr("{athlete}, before {plan}").format(athlete=whom, plan=title))
        column.addWidget(about)
        column.addWidget(self._trouble)
        row = QHBoxLayout()
        row.setSpacing(side)
        row.addWidget(self._stack, 7)
        row.addWidget(scrolling(self._trail, tr("Your answers")), 3)
        column.addLayout(row, 1)
        column.addLayout(self._foot())

    def _foot(self) -> FlowLayout:
        look = self._look
        self._back = quiet_button(look, tr("Back  (Backspace)"), self.back)
        self._skip = quiet_button(look, tr("Ask me nothing more  (S)"), self.skip_all)
        self._over = quiet_button(look, tr("Leave it open  (Space)"), self.pass_over)
        row = FlowLayout(None, look.sizes.body // 2)
        for button in (self._over, self._skip, self._back):
            row.addWidget(button)
        row.addWidget(quiet_button(look, tr("← Start  (Esc)"), self.left.emit))
        return row


def _letter(word: str, otherwise: Qt.Key) -> Qt.Key:
    """The key of the first letter of a word, where it is a Latin one."""
    first = word[:1].upper()
    return Qt.Key[f"Key_{first}"] if "A" <= first <= "Z" else otherwise
