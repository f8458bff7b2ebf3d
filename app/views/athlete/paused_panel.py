"""The screen while a run stands still: why, where it goes on, and how to leave."""

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from functools import partial

from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from app.domain.records import PauseReason, SkipReason
from app.run.intents import (
    GoToStage,
    Intent,
    RateBout,
    RedoBout,
    Resume,
    SkipExercise,
    SkipStage,
    Stop,
    TakeBack,
)
from app.run.snapshot import Snapshot
from app.views.athlete.bout_card import OVER_LIMIT
from app.views.athlete.wording import paused_line
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import label, quiet_button, say, strong_button

REASONS: dict[PauseReason, str] = {
    PauseReason.ASKED: message("Paused"),
    PauseReason.INTERRUPTED: message("Interrupted"),
}
WHY: dict[PauseReason, str] = {
    PauseReason.ASKED: "",
    PauseReason.INTERRUPTED: message("The computer slept or was busy, so the session waited for you."),
}
SKIP_WORDS: tuple[tuple[str, SkipReason], ...] = (
    (message("1  pain"), SkipReason.PAIN),
    (message("2  equipment"), SkipReason.EQUIPMENT),
    (message("3  time"), SkipReason.TIME),
    (message("4  something else"), SkipReason.OTHER),
)


class Asking(StrEnum):
    """What the pause asks before the run goes on."""

    NOTHING = "nothing"
    STOP = "stop"
    WHY = "why"
    WHY_STAGE = "why_stage"
    STAGE = "stage"
    PAIN = "pain"


@dataclass(frozen=True, slots=True)
class Question:
    """What is asked, the answer that gave rise to it, and what has been written of it so far."""

    asking: Asking = Asking.NOTHING
    hurt: RateBout | None = None
    note: str = ""


class PausedPanel(QWidget):
    """Shows a pause; asks back before it stops the session, and why before it leaves out an exercise."""

    def __init__(self, look: Look, act: Callable[[Intent], object]) -> None:
        super().__init__()
        self._look, self._act = look, act
        self._asking = Asking.NOTHING
        self._hurt: RateBout | None = None
        self._note_is_due = False
        self._offered: tuple[int, ...] = ()
        self._stages: list[QWidget] = []
        self._title = label(look, pixels=look.sizes.display / look.text * 1.6, weight=Weight.BOLD)
        self._why = label(look, pixels=look.sizes.heading, wrap=True)
        self._where = FittedLabel(look, pixels=look.sizes.title, colour=look.scheme.quiet, lines=3)
        self._question = FittedLabel(look, pixels=look.sizes.title, weight=Weight.SEMIBOLD, lines=4)
        self._note = QLineEdit()
        self._note.setFont(look.font(look.sizes.heading))
        self._note.setObjectName("note")
        self._note.setMaxLength(500)
        self._note.setPlaceholderText(tr("What happened, for your practitioner"))
        self._note.setAccessibleName(tr("Note for your practitioner"))
        self._note.returnPressed.connect(self._leave_for_pain)
        self._choices = {
            Asking.NOTHING: self._pause_row(),
            Asking.STOP: self._stop_row(),
            Asking.WHY: self._skip_row(),
            Asking.WHY_STAGE: self._skip_row(),
            Asking.STAGE: self._stage_row(),
            Asking.PAIN: self._pain_row(),
        }
        self._lay_out()

    @property
    def asking(self) -> Asking:
        """What is asked now."""
        return self._asking

    @property
    def question(self) -> Question:
        """All of what is asked now, to be asked again by another panel."""
        return Question(self._asking, self._hurt, self._note.text())

    def ask(self, asking: Asking, hurt: RateBout | None = None, note: str = "") -> None:
        """Ask something, or nothing; a question about pain comes with the answer that gave rise to it."""
        self._asking, self._hurt = asking, hurt
        self._note_is_due = asking is Asking.PAIN
        if asking is Asking.PAIN:
            self._note.setText(note)

    def show_snapshot(self, shown: Snapshot) -> None:
        """Show where the run stands."""
        reason = shown.pause or PauseReason.ASKED
        say(self._title, tr(REASONS[reason]))
        say(self._why, tr(WHY[reason]) if WHY[reason] else "")
        say(self._where, paused_line(shown))
        say(self._question, self._question_text(shown))
        self._offer(shown)
        for asking, row in self._choices.items():
            row.setVisible(asking is self._asking)

    def take_focus(self) -> None:
        """Put the keys into the note, once, when it is asked for and in sight."""
        if self._note_is_due and self._note.isVisible():
            self._note_is_due = False
            self._note.setFocus()

    def choose(self, number: int) -> bool:
        """Answer what is asked with a number key; tells whether it was one of the answers."""
        if self._asking in (Asking.WHY, Asking.WHY_STAGE) and 1 <= number <= len(SKIP_WORDS):
            self._skip(SKIP_WORDS[number - 1][1])
            return True
        if self._asking is Asking.STAGE and number - 1 in self._offered:
            self._go(number - 1)
            return True
        return False

    def _question_text(self, shown: Snapshot) -> str:
        if self._asking is Asking.PAIN and self._hurt is not None:
            bout = shown.timeline.bouts[self._hurt.bout]
            name = shown.timeline.exercise_of(bout).name
            words = tr("Pain {pain}: {name} ends here. {caution}")
            return words.format(pain=self._hurt.pain, name=name, caution=tr(OVER_LIMIT))
        return {
            Asking.STOP: tr("Stop the session here? Everything done so far is kept."),
            Asking.WHY: tr("Leave out what remains of {name}. Why?").format(name=shown.exercise.name),
            Asking.WHY_STAGE: tr("Leave out what remains of the stage {name}. Why?").format(
                name=shown.stage.name
            ),
            Asking.STAGE: tr("Go on with which stage? The one left comes again."),
        }.get(self._asking, "")

    def _skip(self, reason: SkipReason) -> None:
        whole_stage = self._asking is Asking.WHY_STAGE
        self.ask(Asking.NOTHING)
        self._act(SkipStage(reason) if whole_stage else SkipExercise(reason))

    def _go(self, stage: int) -> None:
        self.ask(Asking.NOTHING)
        self._act(GoToStage(stage))

    def _offer(self, shown: Snapshot) -> None:
        """Offer the stages that can be gone to, a button each under the number of the stage."""
        if shown.choices == self._offered:
            return
        self._offered = shown.choices
        for old in self._stages:
            self._choose.removeWidget(old)
            old.hide()
            old.deleteLater()
        stages = shown.timeline.plan.stages
        self._stages = [
            quiet_button(self._look, f"{stage + 1}  {stages[stage].name}", partial(self._go, stage))
            for stage in self._offered
        ]
        for button in self._stages:
            self._choose.addWidget(button)
        self._choose.removeWidget(self._stay)
        self._choose.addWidget(self._stay)
        self._another.setVisible(bool(self._offered))

    def _leave_for_pain(self) -> None:
        hurt, note = self._hurt, self._note.text().strip() or None
        self.ask(Asking.NOTHING)
        if hurt is not None:
            if note:
                self._act(RateBout(hurt.bout, note=note, attempt=hurt.attempt))
            self._act(SkipExercise(SkipReason.PAIN, note, hurt.bout))

    def _pause_row(self) -> QWidget:
        look = self._look
        self._another = quiet_button(look, tr("Another stage  (G)"), partial(self.ask, Asking.STAGE))
        self._another.hide()
        return _row(
            look,
            strong_button(look, tr("Go on  (Space)"), partial(self._act, Resume())),
            quiet_button(look, tr("Do this bout again  (A)"), partial(self._act, RedoBout())),
            quiet_button(look, tr("Leave out this exercise  (K)"), partial(self.ask, Asking.WHY)),
            quiet_button(
                look, tr("Leave out the rest of this stage  (X)"), partial(self.ask, Asking.WHY_STAGE)
            ),
            self._another,
            quiet_button(look, tr("Stop here  (S)"), partial(self.ask, Asking.STOP)),
        )

    def _stage_row(self) -> QWidget:
        self._choose = FlowLayout(None, self._look.sizes.body)
        inside = QWidget()
        inside.setLayout(self._choose)
        self._stay = quiet_button(self._look, tr("stay with this one"), partial(self.ask, Asking.NOTHING))
        self._choose.addWidget(self._stay)
        return inside

    def _stop_row(self) -> QWidget:
        look = self._look
        return _row(
            look,
            strong_button(look, tr("Go on  (Space)"), partial(self._act, Resume())),
            quiet_button(look, tr("Yes, stop here  (S)"), partial(self._act, Stop())),
        )

    def _skip_row(self) -> QWidget:
        look = self._look
        reasons = [quiet_button(look, tr(text), partial(self._skip, reason)) for text, reason in SKIP_WORDS]
        return _row(look, *reasons, quiet_button(look, tr("keep it"), partial(self.ask, Asking.NOTHING)))

    def _pain_row(self) -> QWidget:
        look = self._look
        inside = QWidget()
        row = QHBoxLayout(inside)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._note, 1)
        row.addWidget(strong_button(look, tr("Leave it out  (Enter)"), self._leave_for_pain))
        row.addWidget(quiet_button(look, tr("The number was wrong"), self._take_back_pain))
        return inside

    def _take_back_pain(self) -> None:
        self._act(TakeBack())
        self._act(Resume())

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        side = self._look.margin
        layout.setContentsMargins(side, side, side, side)
        layout.setSpacing(self._look.sizes.body)
        for part in (self._title, self._why, self._where):
            layout.addWidget(part)
        layout.addStretch(1)
        layout.addWidget(self._question)
        for row in self._choices.values():
            layout.addWidget(row)
            row.hide()
        layout.addStretch(2)


def _row(look: Look, *parts: QWidget) -> QWidget:
    inside = QWidget()
    row = FlowLayout(inside, look.sizes.body)
    for part in parts:
        row.addWidget(part)
    return inside
