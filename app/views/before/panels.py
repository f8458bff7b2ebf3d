"""One panel a question: the items of readiness, pain and its place, yes or no, and the note."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from app.domain.readiness import Decision
from app.run.readiness_form import ReadinessForm, Step
from app.views.before.body_map import BodyMap, spot_words
from app.views.before.choices import Choices
from app.views.before.words import (
    CHANGES,
    ITEM_WORDS,
    NO,
    PAIN_ENDS,
    QUESTIONS,
    SIGNS,
    TITLES,
    YES,
    care_words,
)
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import label, say, strong_button
from app.views.widgets.scale import Scale

NOTE_LETTERS = 500


class Panel(QWidget):
    """A question with its answers below. `numbered` carries the number of an answer that was pressed."""

    numbered = Signal(int)

    def __init__(self, look: Look, step: Step) -> None:
        super().__init__()
        self._look = look
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(0, 0, round(look.sizes.body * 0.5), 0)
        self.column.setSpacing(round(look.sizes.body * 0.8))
        question = tr(QUESTIONS[step])
        self.column.addWidget(
            label(look, question, pixels=look.sizes.title, weight=Weight.SEMIBOLD, wrap=True)
        )

    def show_form(self, form: ReadinessForm) -> None:
        """Show the answers as they are."""


class ItemPanel(Panel):
    """One of the four items, 1 to 7."""

    def __init__(self, look: Look, step: Step) -> None:
        super().__init__(look, step)
        self._step = step
        self._choices = Choices(look, tr(TITLES[step]), [tr(word) for word in ITEM_WORDS[step]])
        self._choices.answered.connect(self.numbered)
        self.column.addWidget(self._choices)
        self.column.addStretch(1)

    def show_form(self, form: ReadinessForm) -> None:
        """Show which number was chosen."""
        value = form.value(self._step)
        self._choices.show_number(value if isinstance(value, int) else None)


class YesNoPanel(Panel):
    """A question with yes and no, and what it is about in a list."""

    def __init__(self, look: Look, step: Step) -> None:
        super().__init__(look, step)
        self._step = step
        for line in SIGNS if step is Step.RED_FLAG else CHANGES:
            words = tr("–  {line}").format(line=tr(line))
            self.column.addWidget(label(look, words, pixels=look.sizes.heading, wrap=True))
        self.column.addSpacing(look.sizes.body)
        self._choices = Choices(look, tr(TITLES[step]), (tr(YES), tr(NO)))
        self._choices.answered.connect(self.numbered)
        self.column.addWidget(self._choices)
        self.column.addStretch(1)

    def show_form(self, form: ReadinessForm) -> None:
        """Show what was said."""
        known = {True: 1, False: 2}
        value = form.value(self._step)
        self._choices.show_number(known[value] if isinstance(value, bool) else None)


class PainPanel(Panel):
    """Pain from 0 to 10, and, where there is some, its place on a body. `pointed` carries the spot."""

    pointed = Signal(object)

    def __init__(self, look: Look) -> None:
        super().__init__(look, Step.PAIN)
        self._scale = Scale(look, tr("Pain"), {number: tr(word) for number, word in PAIN_ENDS.items()})
        self._scale.answered.connect(self.numbered.emit)
        self._where = label(look, pixels=look.sizes.heading, weight=Weight.SEMIBOLD, wrap=True)
        self.body = BodyMap(look)
        self.body.pointed.connect(self.pointed)
        self.column.addWidget(self._scale)
        self.column.addWidget(self._where)
        self.column.addWidget(self.body, 1)
        self.column.addStretch(0)

    def show_form(self, form: ReadinessForm) -> None:
        """Show the number, and the body where there is pain."""
        self._scale.show_value(form.pain)
        self._scale.show_asked(asked=form.step is Step.PAIN)
        for part in (self._where, self.body):
            part.setVisible(bool(form.pain))
        say(self._where, tr(QUESTIONS[Step.PLACE]) if form.spot is None else spot_words(form.spot))
        self.body.show_spot(form.spot)


class CarePanel(Panel):
    """Why a note is asked for, the note, and what was decided.

    `wrote` carries the note as it grows, `decided` the decision, `went_on` that none is due.
    """

    wrote = Signal(str)
    decided = Signal(object)
    went_on = Signal()

    def __init__(self, look: Look) -> None:
        super().__init__(look, Step.CARE)
        self._why = label(look, pixels=look.sizes.heading, wrap=True)
        self.note = self._field()
        self._hint = label(look, colour=look.scheme.quiet, wrap=True)
        self._spoken = strong_button(
            look, tr("I have spoken to my practitioner  (1)"), self._decide(Decision.SPOKEN)
        )
        self._skip = strong_button(look, tr("Skip today  (2)"), self._decide(Decision.SKIPPED))
        self._go_on = strong_button(look, tr("Go on  (Enter)"), self.went_on.emit)
        self.column.insertWidget(0, self._why)
        self.column.addWidget(self.note)
        self.column.addWidget(self._hint)
        row = FlowLayout(None, look.sizes.body)
        for button in (self._spoken, self._skip, self._go_on):
            row.addWidget(button)
        self.column.addLayout(row)
        self.column.addStretch(1)

    def show_form(self, form: ReadinessForm) -> None:
        """Show why it is asked, and let be pressed what may be."""
        say(self._why, "\n".join(care_words(form)))
        if self.note.text() != form.note:
            self.note.setText(form.note)
        say(self._hint, _hint(form))
        for button in (self._spoken, self._skip):
            button.setVisible(form.held)
            button.setEnabled(form.may_decide)
        self._go_on.setVisible(not form.held)

    def _field(self) -> QLineEdit:
        note = QLineEdit()
        note.setFont(self._look.font(self._look.sizes.heading))
        note.setObjectName("note")
        note.setMaxLength(NOTE_LETTERS)
        note.setPlaceholderText(tr("For your practitioner"))
        note.setAccessibleName(tr("Note for your practitioner"))
        note.textEdited.connect(self.wrote)
        return note

    def _decide(self, decision: Decision) -> Callable[[], None]:
        return lambda: self.decided.emit(decision)


def _hint(form: ReadinessForm) -> str:
    if not form.held:
        return tr("You may leave it empty.")
    if not form.note.strip():
        return tr("A few words are enough.")
    return tr("Enter ends the note; then press 1 or 2.")


def panels(look: Look) -> dict[Step, Panel]:
    """A panel for each question, in their order; pain and its place share one."""
    items: Sequence[Step] = tuple(ITEM_WORDS)
    made: dict[Step, Panel] = {step: ItemPanel(look, step) for step in items}
    made[Step.PAIN] = made[Step.PLACE] = PainPanel(look)
    made[Step.CHANGED] = YesNoPanel(look, Step.CHANGED)
    made[Step.RED_FLAG] = YesNoPanel(look, Step.RED_FLAG)
    made[Step.CARE] = CarePanel(look)
    return made
