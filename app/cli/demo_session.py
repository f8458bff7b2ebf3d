"""One invented session: a pretended athlete, the real controller, and a clock that is moved on by hand."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from random import Random

from app.domain.plan import StageKind
from app.domain.records import Fact, SkipReason
from app.domain.timeline import Bout, Timeline, rep_windows
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    CountRep,
    EndBout,
    ExtendRest,
    Intent,
    MarkFault,
    MarkMissed,
    Pause,
    RateBout,
    RateSession,
    RedoBout,
    Resume,
    SkipExercise,
    Stop,
    Tick,
)
from app.run.state import Stand

STRIDE_MS = 1_900
"""The longest step of the clock: a longer silence would count as an interruption."""

LATE_MS = (1, 17)
"""How long after a rep the program notices, when it looks once a frame."""

PAIN_THAT_ENDS_AN_EXERCISE = 6

HARDER = {
    StageKind.ACTIVATION: -1,
    StageKind.INTEGRATION: 0,
    StageKind.STABILITY: 0,
    StageKind.REACTIVE: 1,
    StageKind.POWER: 2,
    StageKind.OTHER: 0,
}
"""How much harder a stage feels than the session as a whole."""


@dataclass(frozen=True, slots=True)
class Day:
    """How an athlete is on one day. Chances are from 0 to 1.

    `fault` is the chance of a fault in a rep, `miss` of leaving one out, `answer` of answering a question;
    `effort` is how hard the session is, 0-10; `pain` how much it hurts by stage, 0-10, and 0 in stages it
    does not name; `breaks_off_after` is the bout after which the athlete leaves.
    """

    fault: float
    miss: float
    answer: float
    effort: float
    pain: Mapping[StageKind, int] = field(default_factory=dict)
    breaks_off_after: int | None = None


def invent_session(timeline: Timeline, day: Day, chance: Random) -> tuple[Fact, ...]:
    """The facts of a session as the controller gives them, from its beginning to the last answer."""
    session = _Session(timeline, day, chance)
    session.lead()
    return tuple(session.facts)


class _Session:
    def __init__(self, timeline: Timeline, day: Day, chance: Random) -> None:
        self.facts: list[Fact] = []
        self._timeline = timeline
        self._controller = Controller(timeline)
        self._day = day
        self._chance = chance
        self._now_ms = 0

    def lead(self) -> None:
        """Do it all."""
        self._do(Begin())
        while not self._controller.over:
            bout = self._timeline.bouts[self._controller.state.bout]
            self._wait_for(self._controller.state.work_from_ms)
            if bout.open_ended:
                self._at_own_pace(bout)
            else:
                self._in_time(bout)
            self._rate(bout)
            self._in_the_gap(bout)
        self._rate_session()

    def _do(self, intent: Intent) -> None:
        self.facts += self._controller.handle(intent, self._now_ms)[1]

    def _happens(self, chance: float) -> bool:
        return self._chance.random() < chance

    def _wait(self, ms: int) -> None:
        until = self._now_ms + ms
        while self._now_ms < until and not self._controller.over:
            self._now_ms = min(until, self._now_ms + STRIDE_MS)
            self._do(Tick())

    def _wait_for(self, local_ms: int) -> None:
        """Wait for a moment on the axis of the current bout, and for the next look after it."""
        state = self._controller.state
        due = state.anchor_ms + local_ms - state.cursor_ms
        self._wait(max(0, due - self._now_ms) + self._chance.randint(*LATE_MS))

    def _still_in(self, bout: Bout) -> bool:
        state = self._controller.state
        return state.stand is Stand.RUNNING and state.begun and state.bout == bout.index

    def _in_time(self, bout: Bout) -> None:
        windows = rep_windows(bout)
        ends_after = self._chance.randrange(bout.low) if self._happens(0.02) else None
        while self._still_in(bout):
            done = self._controller.state.passed
            if done == len(windows):
                self._wait_for(bout.work_ms or 0)
                continue
            window = windows[done]
            self._wait_for(window.start_ms + (window.done_ms - window.start_ms) // 2)
            if done == ends_after:
                self._do(EndBout())
                return
            self._in_a_rep(bout)
            if self._still_in(bout):
                self._wait_for(window.done_ms)

    def _in_a_rep(self, bout: Bout) -> None:
        if self._happens(self._day.fault):
            self._do(MarkFault(self._fault(bout)))
        elif self._happens(self._day.miss):
            self._do(MarkMissed())
        elif self._happens(0.001):
            self._do(Pause())
            self._now_ms += self._chance.randint(10_000, 60_000)
            self._do(Resume())
            self._wait_for(self._controller.state.work_from_ms)

    def _fault(self, bout: Bout) -> str | None:
        faults = self._timeline.exercise_of(bout).faults
        return self._chance.choice(faults) if faults and not self._happens(0.05) else None

    def _at_own_pace(self, bout: Bout) -> None:
        for _ in range(self._chance.randint(bout.low, bout.high)):
            self._wait(self._chance.randint(3_000, 6_000))
            self._do(CountRep())
            if self._happens(self._day.fault):
                self._do(MarkFault(self._fault(bout)))
        if self._still_in(bout):
            self._wait(2_000)
            self._do(EndBout())

    def _answer(self, value: float) -> int | None:
        """A whole number from 0 to 10 somewhere near, or nothing."""
        if not self._happens(self._day.answer):
            return None
        return min(10, max(0, round(self._chance.gauss(value, 0.6))))

    def _rate(self, bout: Bout) -> None:
        kind = self._timeline.stage_of(bout).kind
        self._wait(self._chance.randint(2_000, 5_000))
        rpe = self._answer(self._day.effort + HARDER[kind])
        pain = self._day.pain.get(kind, 0) if self._happens(self._day.answer) else None
        reps = bout.low - 1 if bout.low > 1 and self._happens(0.01) else None
        hurts = pain is not None and pain >= PAIN_THAT_ENDS_AN_EXERCISE
        note = "Pinches at the front when the arm goes up." if hurts else None
        if (rpe, pain, reps) != (None, None, None):
            self._do(RateBout(bout.index, reps, rpe, pain, note))
        if hurts:
            self._leave_out_the_rest_of(bout)

    def _leave_out_the_rest_of(self, bout: Bout) -> None:
        state = self._controller.state
        next_bout = self._timeline.bouts[state.bout]
        same = (next_bout.stage, next_bout.exercise) == (bout.stage, bout.exercise)
        if state.stand is Stand.RUNNING and same and next_bout.index != bout.index:
            self._do(SkipExercise(SkipReason.PAIN, "Stopped: it hurt."))

    def _in_the_gap(self, bout: Bout) -> None:
        if bout.index == self._day.breaks_off_after:
            self._do(Stop())
        elif self._happens(0.01):
            self._do(RedoBout())
        elif self._happens(0.02):
            self._do(ExtendRest())
        elif self._happens(0.004):
            self._do(SkipExercise(self._chance.choice((SkipReason.EQUIPMENT, SkipReason.TIME))))

    def _rate_session(self) -> None:
        self._now_ms += self._chance.choice((40_000, 300_000, 1_800_000)) + self._chance.randint(0, 60_000)
        rpe = self._answer(self._day.effort + 0.5)
        if rpe is not None:
            self._do(RateSession(rpe))
