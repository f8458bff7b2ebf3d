"""The screen after a run: done against planned, the card about its bouts, the rating of the session."""

from collections.abc import Callable, Sequence

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.analysis.session_done import session_done
from app.domain.fold import fold_closing, fold_run
from app.domain.records import Fact, RunOutcome
from app.domain.timeline import Timeline
from app.run.intents import Intent, RateSession
from app.views.athlete.asked import asked_about
from app.views.athlete.bout_card import BoutCard
from app.views.athlete.done_table import DoneTable
from app.views.athlete.note_line import NoteLine
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.plain import card, label, quiet_button, say, scrolling, strong_button
from app.views.widgets.scale import EFFORT_WORDS, Scale

TITLES: dict[RunOutcome | None, str] = {
    RunOutcome.FINISHED: message("Session finished"),
    RunOutcome.ABANDONED: message("Session stopped"),
    None: message("Session not begun"),
}
SEEN = message(
    "Your practitioner sees this table, your faults, effort, pain, loads and notes, and what was left out "
    "and why. What you do not answer is shown as unknown."
)


class FinishedPanel(QWidget):
    """Shows what was done by exercise and side, asks about bouts, then how hard the session was."""

    def __init__(
        self,
        look: Look,
        timeline: Timeline,
        act: Callable[[Intent], object],
        leave: Callable[[], object],
        next_session: str | None = None,
    ) -> None:
        super().__init__()
        self._look, self._timeline, self._leave = look, timeline, leave
        self._known = 0
        self._answers_card = False
        self.card = BoutCard(look, timeline, brief=True)
        self.card.rated.connect(act)
        self.card.hide()
        self._title = label(look, pixels=look.sizes.display, weight=Weight.SEMIBOLD)
        self._table = DoneTable(look)
        self._next = label(look, wrap=True, pixels=look.sizes.heading, weight=Weight.SEMIBOLD)
        self.show_next(next_session or "")
        self._effort = Scale(look, tr("How hard was the session?"), EFFORT_WORDS)
        self._effort.answered.connect(lambda value: act(RateSession(value)))
        self._note = NoteLine(look, tr("Note about this session"))
        self._note.written.connect(lambda text: act(RateSession(None, text)))
        self._later = quiet_button(look, tr("Ask me later"), self._go)
        layout = QHBoxLayout(self)
        side = look.margin
        layout.setContentsMargins(side, look.sizes.body, side, round(side * 0.5))
        layout.setSpacing(round(side * 0.75))
        layout.addLayout(self._done_column(), 6)
        layout.addLayout(self._rating_column(), 6)

    @property
    def typing(self) -> bool:
        """Whether keys type a note or a load."""
        return self._note.typing or self.card.typing

    def open_note(self) -> None:
        """Let a note about the session be written."""
        self._note.open()

    def show_next(self, when: str) -> None:
        """Say when the next session is, or nothing where nobody knows."""
        say(self._next, tr("Next session: {when}").format(when=when) if when else "")
        self._next.setVisible(bool(when))

    def answer_number(self, number: int) -> None:
        """Answer the question that is being asked with a number key."""
        self._answers_card = not (self.card.isHidden() or self.card.complete)
        if self._answers_card:
            self.card.answer_number(number)
        else:
            self._effort.answer(number)

    def make_ten(self) -> None:
        """Turn a 1 that was just answered by a key into a 10."""
        if self._answers_card:
            self.card.make_ten()
        else:
            self._effort.answer(10)

    def show_run(self, outcome: RunOutcome | None, facts: Sequence[Fact]) -> None:
        """Show the sum of a run that is over, and what has been answered so far."""
        if len(facts) == self._known:
            self._show_asked()
            return
        self._known = len(facts)
        say(self._title, tr(TITLES[outcome]))
        records = asked_about(facts)
        self.card.setVisible(bool(records))
        self.card.show_bouts(records)
        closing = fold_closing(facts)
        self._effort.show_value(closing.session_rpe)
        self._note.show_note(closing.note)
        self._later.setVisible(closing.session_rpe is None and outcome is not None)
        self._table.show_done(session_done(self._timeline, fold_run(facts)))
        self._show_asked()

    def finish_typing(self) -> None:
        """Keep what is being typed."""
        self.card.finish_typing()
        self._note.finish()

    def _show_asked(self) -> None:
        self._effort.show_asked(asked=self.card.isHidden() or self.card.complete)

    def _go(self) -> None:
        self.finish_typing()
        self._leave()

    def _done_column(self) -> QVBoxLayout:
        look = self._look
        column = QVBoxLayout()
        column.setSpacing(round(look.sizes.body * 0.5))
        column.addWidget(self._title)
        column.addWidget(self._next)
        column.addWidget(scrolling(self._table, tr("What was done")), 1)
        column.addWidget(label(look, tr(SEEN), colour=look.scheme.quiet, wrap=True))
        return column

    def _rating_column(self) -> QVBoxLayout:
        look = self._look
        frame = card(look)
        inner = QVBoxLayout(frame)
        edge = round(look.sizes.body * 1.6)
        inner.setContentsMargins(edge, edge // 2, edge, edge // 2)
        inner.setSpacing(round(look.sizes.body * 0.5))
        inner.addWidget(self._effort)
        column = QVBoxLayout()
        column.setSpacing(round(look.sizes.body * 0.6))
        column.addWidget(self.card)
        column.addWidget(frame)
        column.addStretch(1)
        row = QHBoxLayout()
        row.addWidget(self._note, 1)
        row.addWidget(self._later)
        row.addWidget(strong_button(look, tr("Done  (Space)"), self._go))
        column.addLayout(row)
        return column
