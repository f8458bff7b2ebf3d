"""The card between bouts: what was done of a bout, how hard it was, what hurt."""

from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout

from app.domain.records import BoutRecord
from app.domain.timeline import Bout, Timeline
from app.run.intents import RateBout
from app.views.athlete.wording import last_bout_title
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import card, label, quiet_button, say
from app.views.widgets.scale import EFFORT_WORDS, Scale

PAIN_WORDS: dict[int, str] = {0: "none", 10: "the worst"}
PAIN_LIMIT = 5
OVER_LIMIT = (
    "Sharp pain, giving way, chest pain, dizziness or numbness: stop, and see a licensed professional."
)


class BoutCard(QFrame):
    """Asks about one bout; an answer goes out as an intent at once. Number keys answer effort, then pain.

    A `brief` one leaves out the faults that were marked.
    """

    rated = Signal(object)

    def __init__(self, look: Look, timeline: Timeline, *, brief: bool = False) -> None:
        super().__init__()
        self._look, self._timeline = look, timeline
        self._bout: Bout | None = None
        self._reps = 0
        self._answered: Scale | None = None
        self._title = FittedLabel(look, pixels=look.sizes.heading * 1.1, weight=Weight.SEMIBOLD, lines=2)
        self._done = label(look, pixels=look.sizes.title, weight=Weight.BOLD)
        self._of = label(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        self._effort = Scale(look, "Effort", EFFORT_WORDS)
        self._pain = Scale(look, "Pain", PAIN_WORDS)
        self._faults = FittedLabel(look, pixels=look.sizes.body, lines=3)
        self._warning = label(look, wrap=True, colour=look.scheme.attention, weight=Weight.SEMIBOLD)
        self._effort.answered.connect(lambda value: self._rate(rpe=value))
        self._pain.answered.connect(lambda value: self._rate(pain=value))
        self._lay_out(brief=brief)

    @property
    def bout(self) -> int | None:
        """Index of the bout asked about."""
        return None if self._bout is None else self._bout.index

    @property
    def complete(self) -> bool:
        """Whether effort and pain are both answered."""
        return self._effort.value is not None and self._pain.value is not None

    def show_bout(self, bout: Bout, record: BoutRecord) -> None:
        """Ask about a bout of which this much is known."""
        if bout is not self._bout:
            self._answered = None
        self._bout = bout
        self._reps = record.reps_done
        say(self._title, last_bout_title(self._timeline, bout))
        say(self._done, str(self._reps))
        say(self._of, f"of {bout.high}")
        self._done.setAccessibleName(f"Reps done: {self._reps} of {bout.high}")
        self._effort.show_value(record.rpe)
        self._pain.show_value(record.pain)
        faults = [f"rep {rep.rep} · {fault or 'a fault'}" for rep in record.reps for fault in rep.faults]
        say(self._faults, "   ".join(faults) if faults else "none")
        say(self._warning, OVER_LIMIT if (record.pain or 0) > PAIN_LIMIT else "")
        self._warning.setVisible((record.pain or 0) > PAIN_LIMIT)
        self._ask_next()

    def answer_number(self, number: int) -> None:
        """Answer the question that is being asked with a number key."""
        self._answered = self._pain if self._effort.value is not None else self._effort
        self._answered.answer(number)

    def make_ten(self) -> None:
        """Turn a 1 that was just answered by a key into a 10: the key 0 came right after it."""
        if self._answered is not None:
            self._answered.answer(10)

    def _ask_next(self) -> None:
        self._effort.show_asked(asked=self._effort.value is None)
        self._pain.show_asked(asked=self._effort.value is not None and self._pain.value is None)

    def _rate(self, *, reps: int | None = None, rpe: int | None = None, pain: int | None = None) -> None:
        if self._bout is not None:
            self.rated.emit(RateBout(self._bout.index, reps, rpe, pain))

    def _change_reps(self, by: int) -> None:
        self._rate(reps=max(self._reps + by, 0))

    def _lay_out(self, *, brief: bool) -> None:
        look = self._look
        frame = card(look)
        inner = QVBoxLayout(frame)
        edge = round(look.sizes.body * 1.8)
        inner.setContentsMargins(edge, edge, edge, edge)
        inner.setSpacing(round(look.sizes.body * 0.9))
        inner.addWidget(self._title)
        inner.addLayout(self._reps_row())
        inner.addWidget(self._effort)
        inner.addWidget(self._pain)
        inner.addWidget(self._warning)
        heading = label(look, "Faults marked", pixels=look.sizes.heading, colour=look.scheme.quiet)
        for part in (heading, self._faults):
            inner.addWidget(part)
            if brief:
                part.hide()
        inner.addStretch(1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(frame)

    def _reps_row(self) -> QHBoxLayout:
        look = self._look
        row = QHBoxLayout()
        row.addWidget(label(look, "Reps done", pixels=look.sizes.heading, colour=look.scheme.quiet))
        row.addStretch(1)
        for text, by, name in (("−", -1, "One rep fewer"), ("+", 1, "One rep more")):
            button = quiet_button(look, text, partial(self._change_reps, by), tip=name)
            button.setFont(look.font(look.sizes.title, Weight.SEMIBOLD))
            button.setAccessibleName(name)
            row.addWidget(button)
        row.addSpacing(look.sizes.body)
        row.addWidget(self._of)
        row.addWidget(self._done)
        return row
