"""The card between bouts: what was done of a bout, how hard it was, what hurt, and what went wrong."""

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout

from app.domain.readiness import PAIN_LIMIT
from app.domain.records import BoutRecord
from app.domain.timeline import Bout, Timeline
from app.run.intents import RateBout
from app.views.athlete.amount_row import LoadRow, StepRow
from app.views.athlete.asked import Turning
from app.views.athlete.fault_chips import FaultChips
from app.views.athlete.note_line import NoteLine
from app.views.athlete.wording import last_bout_title
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import card, label, quiet_button, say
from app.views.widgets.scale import EFFORT_WORDS, Scale

PAIN_WORDS: dict[int, str] = {0: message("none"), 10: message("the worst")}
OVER_LIMIT = message(
    "Sharp pain, giving way, chest pain, dizziness or numbness: stop, and see a licensed professional."
)


class BoutCard(QFrame):
    """Asks about one bout; an answer goes out as an intent at once. Number keys answer effort, then pain.

    It asks about the last that is over, and can be turned to earlier ones that are not answered. A `brief`
    one leaves out the faults.
    """

    rated = Signal(object)

    def __init__(self, look: Look, timeline: Timeline, *, brief: bool = False) -> None:
        super().__init__()
        self._look, self._timeline = look, timeline
        self._turning = Turning()
        self._bout: Bout | None = None
        self._record: BoutRecord | None = None
        self._answered: Scale | None = None
        size = look.sizes.heading if brief else look.sizes.title
        self._title = FittedLabel(look, pixels=look.sizes.heading * 1.1, weight=Weight.SEMIBOLD, lines=2)
        self._back = quiet_button(look, "", self.turn_back)
        self._on = quiet_button(look, tr("on  (→)"), self.turn_on)
        self._reps = StepRow(look, tr("Reps done"), tr("One rep fewer"), tr("One rep more"), size)
        self._load = LoadRow(look, size)
        self._effort = Scale(look, tr("Effort"), EFFORT_WORDS)
        self._pain = Scale(look, tr("Pain"), PAIN_WORDS)
        self._faults = FaultChips(look)
        self._note = NoteLine(look, tr("Note about this bout"), has_key=not brief)
        self._warning = label(look, wrap=True, colour=look.scheme.attention, weight=Weight.SEMIBOLD)
        self._connect()
        self._lay_out(brief=brief)

    @property
    def bout(self) -> int | None:
        """Index of the bout asked about."""
        return None if self._bout is None else self._bout.index

    @property
    def complete(self) -> bool:
        """Whether effort and pain are both answered."""
        return self._effort.value is not None and self._pain.value is not None

    @property
    def typing(self) -> bool:
        """Whether keys type a note or a load."""
        return self._note.typing or self._load.typing

    def show_bouts(self, records: Sequence[BoutRecord]) -> None:
        """Ask about one of these bouts, the last of them unless another was turned to."""
        self._turning.take(records)
        self._show()

    def turn_back(self) -> None:
        """Ask about the bout before that is not answered."""
        self.finish_typing()
        self._turning.turn_back()
        self._show()

    def turn_on(self) -> None:
        """Ask about the next that is not answered, else about the last."""
        self.finish_typing()
        self._turning.turn_on()
        self._show()

    def answer_number(self, number: int) -> None:
        """Answer the question that is being asked with a number key."""
        self._answered = self._pain if self._effort.value is not None else self._effort
        self._answered.answer(number)

    def make_ten(self) -> None:
        """Turn a 1 that was just answered by a key into a 10: the key 0 came right after it."""
        if self._answered is not None:
            self._answered.answer(10)

    def open_note(self) -> None:
        """Let a note be written."""
        if self._bout is not None:
            self._note.open()

    def open_load(self) -> None:
        """Let the load be typed, where the exercise has one."""
        self._load.open()

    def finish_typing(self) -> None:
        """Keep what is being typed, and give the keys back."""
        self._note.finish()
        self._load.finish()

    def _show(self) -> None:
        record = self._turning.record
        if record is None:
            return
        bout = self._timeline.bouts[record.bout]
        exercise = self._timeline.exercise_of(bout)
        if bout is not self._bout:
            self._answered = None
        self._bout, self._record = bout, record
        say(self._title, last_bout_title(self._timeline, bout))
        self._show_turning()
        say(self._reps.value, str(record.reps_done))
        say(self._reps.about, tr("of {high}").format(high=bout.high))
        spoken = tr("Reps done: {done} of {high}").format(done=record.reps_done, high=bout.high)
        self._reps.value.setAccessibleName(spoken)
        self._load.show_load(None if bout.alternating else bout.load_kg, record.load_kg)
        self._effort.show_value(record.rpe)
        self._pain.show_value(record.pain)
        self._faults.show_bout(exercise, record)
        self._note.show_note(record.note)
        hurts = (record.pain or 0) > PAIN_LIMIT
        say(self._warning, tr(OVER_LIMIT) if hurts else "")
        self._warning.setVisible(hurts)
        self._effort.show_asked(asked=self._effort.value is None)
        self._pain.show_asked(asked=self._effort.value is not None and self._pain.value is None)

    def _show_turning(self) -> None:
        earlier = self._turning.earlier
        words = tr("%n before it not answered  (←)", "", earlier) if earlier else ""
        if self._back.text() != words:
            self._back.setText(words)
            self._back.setAccessibleName(words or tr("Bouts before it"))
        self._back.setVisible(bool(earlier))
        self._on.setVisible(not self._turning.at_last)

    def _rate(self, answers: RateBout) -> None:
        if self._record is not None:
            self.rated.emit(replace(answers, bout=self._record.bout, attempt=self._record.attempt))

    def change_reps(self, by: int) -> None:
        """Put the number of reps right by one more or fewer."""
        if self._record is not None:
            self._rate(RateBout(0, reps=max(self._record.reps_done + by, 0)))

    def _connect(self) -> None:
        self._reps.stepped.connect(self.change_reps)
        self._effort.answered.connect(lambda value: self._rate(RateBout(0, rpe=value)))
        self._pain.answered.connect(lambda value: self._rate(RateBout(0, pain=value)))
        self._load.answered.connect(lambda text: self._rate(RateBout(0, load_kg=text)))
        self._note.written.connect(lambda text: self._rate(RateBout(0, note=text)))
        self._faults.marked.connect(self.rated)

    def _lay_out(self, *, brief: bool) -> None:
        look = self._look
        frame = card(look)
        inner = QVBoxLayout(frame)
        edge = round(look.sizes.body * 1.6)
        inner.setContentsMargins(edge, edge // 2 if brief else edge, edge, edge // 2)
        inner.setSpacing(round(look.sizes.body * (0.4 if brief else 0.7)))
        head = QHBoxLayout()
        head.addWidget(self._title, 1)
        head.addWidget(self._back)
        head.addWidget(self._on)
        inner.addLayout(head)
        for part in (
            self._reps,
            self._load,
            self._effort,
            self._pain,
            self._warning,
            self._faults,
            self._note,
        ):
            inner.addWidget(part)
        self._faults.setVisible(not brief)
        inner.addStretch(1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(frame)
