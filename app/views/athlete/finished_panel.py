"""The screen after a run: done against planned, the card about the last bout, the rating of the session."""

from collections.abc import Callable, Sequence

from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from app.domain.dose import Band
from app.domain.fold import fold_bout, fold_closing, fold_run
from app.domain.plan import Side
from app.domain.records import BoutBegan, Fact, RunOutcome
from app.domain.timeline import Timeline
from app.domain.words import band_text, side_word
from app.run.intents import Intent, RateSession
from app.views.athlete.bout_card import BoutCard
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.plain import card, label, quiet_button, say, scrolling, strong_button
from app.views.widgets.scale import EFFORT_WORDS, Scale

Tally = tuple[tuple[str, Side, int, Band], ...]
"""Name, side, reps done and reps asked for, a row each."""

TITLES: dict[RunOutcome | None, str] = {
    RunOutcome.FINISHED: "Session finished",
    RunOutcome.ABANDONED: "Session stopped",
    None: "Session not begun",
}


class FinishedPanel(QWidget):
    """Shows what was done by exercise and side, asks about the last bout, then how hard the session was."""

    def __init__(
        self, look: Look, timeline: Timeline, act: Callable[[Intent], object], leave: Callable[[], object]
    ) -> None:
        super().__init__()
        self._look, self._timeline = look, timeline
        self._known = 0
        self._tally: Tally = ()
        self._cells: list[QWidget] = []
        self._answers_card = False
        self._card = BoutCard(look, timeline, brief=True)
        self._card.rated.connect(act)
        self._card.hide()
        self._title = label(look, pixels=look.sizes.display, weight=Weight.SEMIBOLD)
        self._effort = Scale(look, "How hard was the session?", EFFORT_WORDS)
        self._effort.answered.connect(lambda value: act(RateSession(value)))
        self._rows = QGridLayout()
        layout = QHBoxLayout(self)
        side = round(look.sizes.body * 3.2)
        layout.setContentsMargins(side, look.sizes.body, side, round(side * 0.5))
        layout.setSpacing(side)
        layout.addLayout(self._done_column(), 6)
        layout.addLayout(self._rating_column(leave), 6)

    def answer_number(self, number: int) -> None:
        """Answer the question that is being asked with a number key."""
        self._answers_card = not (self._card.isHidden() or self._card.complete)
        if self._answers_card:
            self._card.answer_number(number)
        else:
            self._effort.answer(number)

    def make_ten(self) -> None:
        """Turn a 1 that was just answered by a key into a 10."""
        if self._answers_card:
            self._card.make_ten()
        else:
            self._effort.answer(10)

    def show_run(self, outcome: RunOutcome | None, facts: Sequence[Fact]) -> None:
        """Show the sum of a run that is over, and what has been answered so far."""
        if len(facts) == self._known:
            return
        self._known = len(facts)
        say(self._title, TITLES[outcome])
        self._show_card(facts)
        self._effort.show_value(fold_closing(facts).session_rpe)
        self._effort.show_asked(asked=self._card.isHidden() or self._card.complete)
        rows = tally(self._timeline, facts)
        if rows != self._tally:
            self._tally = rows
            self._show_rows()

    def _show_card(self, facts: Sequence[Fact]) -> None:
        begun = [fact for fact in facts if isinstance(fact, BoutBegan)]
        self._card.setVisible(bool(begun))
        if begun:
            record = fold_bout(facts, begun[-1].bout, begun[-1].attempt)
            self._card.show_bout(self._timeline.bouts[record.bout], record)

    def _show_rows(self) -> None:
        scheme = self._look.scheme
        for old in self._cells:
            self._rows.removeWidget(old)
            old.hide()
            old.deleteLater()
        self._cells.clear()
        for row, (name, side, done, asked) in enumerate(self._tally):
            side_text = "" if side is Side.BOTH else side_word(side).lower()
            colour = scheme.ink if done >= asked.low else scheme.notice
            text = f"{done} of {band_text(asked)}"
            self._cell(row, 0, label(self._look, name, wrap=True))
            self._cell(row, 1, label(self._look, side_text, colour=scheme.quiet))
            self._cell(row, 2, label(self._look, text, weight=Weight.SEMIBOLD, colour=colour))
        self._rows.setColumnStretch(0, 1)
        self._rows.setRowStretch(len(self._tally), 1)

    def _cell(self, row: int, column: int, widget: QWidget) -> None:
        self._rows.addWidget(widget, row, column)
        self._cells.append(widget)

    def _done_column(self) -> QVBoxLayout:
        look = self._look
        self._rows.setHorizontalSpacing(look.sizes.title)
        inside = QWidget()
        inside.setLayout(self._rows)
        scroll = scrolling(inside, "What was done")
        column = QVBoxLayout()
        column.setSpacing(round(look.sizes.body * 0.6))
        column.addWidget(self._title)
        about = "Reps done of those asked for"
        column.addWidget(label(look, about, pixels=look.sizes.heading, colour=look.scheme.quiet))
        column.addSpacing(look.sizes.body)
        column.addWidget(scroll, 1)
        return column

    def _rating_column(self, leave: Callable[[], object]) -> QVBoxLayout:
        look = self._look
        frame = card(look)
        inner = QVBoxLayout(frame)
        edge = round(look.sizes.body * 1.8)
        inner.setContentsMargins(edge, edge // 2, edge, edge // 2)
        inner.addWidget(self._effort)
        column = QVBoxLayout()
        column.setSpacing(round(look.sizes.body * 0.6))
        column.addWidget(self._card)
        column.addWidget(frame)
        column.addStretch(1)
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(quiet_button(look, "Not now", leave))
        row.addWidget(strong_button(look, "Done  (Space)", leave))
        column.addLayout(row)
        return column


def tally(timeline: Timeline, facts: Sequence[Fact]) -> Tally:
    """Reps done and asked for by exercise and side, last attempt of each bout, in the order of the plan."""
    done: dict[int, int] = {}
    for record in fold_run(facts):
        done[record.bout] = record.reps_done
    rows: dict[tuple[int, int, Side], list[int]] = {}
    for bout in timeline.bouts:
        side = Side.BOTH if bout.alternating else bout.side
        row = rows.setdefault((bout.stage, bout.exercise, side), [0, 0, 0])
        for place, more in enumerate((done.get(bout.index, 0), bout.low, bout.high)):
            row[place] += more
    return tuple(
        (timeline.plan.stages[stage].exercises[exercise].name, side, reps, Band(low, high))
        for (stage, exercise, side), (reps, low, high) in rows.items()
    )
