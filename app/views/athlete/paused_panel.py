"""The screen while a run stands still: why, where it goes on, and how to leave."""

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from functools import partial

from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from app.domain.records import PauseReason, SkipReason
from app.run.intents import Intent, RateBout, RedoBout, Resume, SkipExercise, Stop
from app.run.snapshot import Snapshot
from app.views.athlete.bout_card import OVER_LIMIT
from app.views.athlete.wording import paused_line
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import label, quiet_button, say, strong_button

REASONS: dict[PauseReason, str] = {
    PauseReason.ASKED: "Paused",
    PauseReason.INTERRUPTED: "Interrupted",
}
WHY: dict[PauseReason, str] = {
    PauseReason.ASKED: "",
    PauseReason.INTERRUPTED: "The computer slept or was busy, so the session waited for you.",
}
SKIP_WORDS: tuple[tuple[str, SkipReason], ...] = (
    ("1  pain", SkipReason.PAIN),
    ("2  equipment", SkipReason.EQUIPMENT),
    ("3  time", SkipReason.TIME),
    ("4  something else", SkipReason.OTHER),
)


class Asking(StrEnum):
    """What the pause asks before the run goes on."""

    NOTHING = "nothing"
    STOP = "stop"
    WHY = "why"
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
        self._title = label(look, pixels=look.sizes.display * 1.6, weight=Weight.BOLD)
        self._why = label(look, pixels=look.sizes.heading, wrap=True)
        self._where = FittedLabel(look, pixels=look.sizes.title, colour=look.scheme.quiet, lines=3)
        self._question = FittedLabel(look, pixels=look.sizes.title, weight=Weight.SEMIBOLD, lines=4)
        self._note = QLineEdit()
        self._note.setFont(look.font(look.sizes.heading))
        self._note.setObjectName("note")
        self._note.setMaxLength(500)
        self._note.setPlaceholderText("What happened, for your practitioner")
        self._note.setAccessibleName("Note for your practitioner")
        self._note.returnPressed.connect(self._leave_for_pain)
        self._choices = {
            Asking.NOTHING: self._pause_row(),
            Asking.STOP: self._stop_row(),
            Asking.WHY: self._skip_row(),
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
        say(self._title, REASONS[reason])
        say(self._why, WHY[reason])
        say(self._where, paused_line(shown))
        say(self._question, self._question_text(shown))
        for asking, row in self._choices.items():
            row.setVisible(asking is self._asking)

    def take_focus(self) -> None:
        """Put the keys into the note, once, when it is asked for and in sight."""
        if self._note_is_due and self._note.isVisible():
            self._note_is_due = False
            self._note.setFocus()

    def choose(self, number: int) -> bool:
        """Answer the question why with a number key; tells whether it was one of the answers."""
        if self._asking is not Asking.WHY or not 1 <= number <= len(SKIP_WORDS):
            return False
        self._skip(SKIP_WORDS[number - 1][1])
        return True

    def _question_text(self, shown: Snapshot) -> str:
        if self._asking is Asking.PAIN and self._hurt is not None:
            bout = shown.timeline.bouts[self._hurt.bout]
            name = shown.timeline.exercise_of(bout).name
            return f"Pain {self._hurt.pain}: {name} ends here. {OVER_LIMIT}"
        return {
            Asking.STOP: "Stop the session here? Everything done so far is kept.",
            Asking.WHY: f"Leave out what remains of {shown.exercise.name}. Why?",
        }.get(self._asking, "")

    def _skip(self, reason: SkipReason) -> None:
        self.ask(Asking.NOTHING)
        self._act(SkipExercise(reason))

    def _leave_for_pain(self) -> None:
        hurt, note = self._hurt, self._note.text().strip() or None
        self.ask(Asking.NOTHING)
        if hurt is not None:
            if note:
                self._act(RateBout(hurt.bout, note=note))
            self._act(SkipExercise(SkipReason.PAIN, note, hurt.bout))

    def _pause_row(self) -> QWidget:
        look = self._look
        return _row(
            strong_button(look, "Go on  (Space)", partial(self._act, Resume())),
            quiet_button(look, "Do this bout again  (A)", partial(self._act, RedoBout())),
            quiet_button(look, "Leave out this exercise  (K)", partial(self.ask, Asking.WHY)),
            quiet_button(look, "Stop here  (S)", partial(self.ask, Asking.STOP)),
        )

    def _stop_row(self) -> QWidget:
        look = self._look
        return _row(
            strong_button(look, "Go on  (Space)", partial(self._act, Resume())),
            quiet_button(look, "Yes, stop here  (S)", partial(self._act, Stop())),
        )

    def _skip_row(self) -> QWidget:
        look = self._look
        reasons = [quiet_button(look, text, partial(self._skip, reason)) for text, reason in SKIP_WORDS]
        return _row(*reasons, quiet_button(look, "keep it", partial(self.ask, Asking.NOTHING)))

    def _pain_row(self) -> QWidget:
        look = self._look
        return _row(
            self._note,
            strong_button(look, "Leave it out  (Enter)", self._leave_for_pain),
            quiet_button(look, "The number was wrong", partial(self._act, Resume())),
            stretch=True,
        )

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        side = round(self._look.sizes.body * 3.2)
        layout.setContentsMargins(side, side, side, side)
        layout.setSpacing(self._look.sizes.body)
        for part in (self._title, self._why, self._where):
            layout.addWidget(part)
        layout.addStretch(1)
        layout.addWidget(self._question)
        for row in self._choices.values():
            layout.addWidget(row)
        layout.addStretch(2)


def _row(*parts: QWidget, stretch: bool = False) -> QWidget:
    inside = QWidget()
    row = QHBoxLayout(inside)
    row.setContentsMargins(0, 0, 0, 0)
    for part in parts:
        row.addWidget(part, 1 if stretch and part is parts[0] else 0)
    if not stretch:
        row.addStretch(1)
    return inside
