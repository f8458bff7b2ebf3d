"""A rehearsal: the same controller and journal as a real run, led by a simulated clock."""

from collections.abc import Callable
from dataclasses import dataclass

from app.domain.records import Fact
from app.run.controller import Controller
from app.run.intents import Begin, CountRep, Intent, Stop, Tick
from app.run.journal import Journal
from app.run.state import Doing, RunState, Stand

STEP_MS = 250
OWN_PACE_MS = 2_000


@dataclass(slots=True)
class SimulatedClock:
    """A clock that is moved on by hand; whole ms from 0."""

    now_ms: int = 0

    def advance(self, by_ms: int) -> int:
        """Move on and give the new time."""
        self.now_ms += by_ms
        return self.now_ms


def rehearse(
    controller: Controller,
    journal: Journal,
    run_id: str,
    wait: Callable[[int], None],
    own_pace_ms: int = OWN_PACE_MS,
) -> int:
    """Lead a whole run and write it down as it happens; gives the simulated length in ms.

    `wait` is called with each step's simulated milliseconds and may sleep or not. Reps at the
    athlete's own pace are counted one every `own_pace_ms`. Nothing is answered that only a person can know:
    effort and pain stay unknown. A KeyboardInterrupt out of `wait` stops the run and
    goes on upwards; what was done is kept.
    """
    clock = SimulatedClock()
    pen = _Pen(controller, journal, run_id)
    pen.follow(Begin(), clock.now_ms)
    try:
        while not controller.over:
            step = _step(controller, clock.now_ms, own_pace_ms)
            wait(step)
            pen.follow(_next(controller, clock.advance(step), own_pace_ms), clock.now_ms)
    except KeyboardInterrupt:
        pen.follow(Stop(), clock.now_ms)
        raise
    return clock.now_ms


@dataclass(frozen=True, slots=True)
class _Pen:
    controller: Controller
    journal: Journal
    run_id: str

    def follow(self, intent: Intent, now_ms: int) -> tuple[Fact, ...]:
        first, facts = self.controller.handle(intent, now_ms)
        if facts:
            self.journal.append(self.run_id, first, facts)
        return facts


def _step(controller: Controller, now_ms: int, own_pace_ms: int) -> int:
    if not _own_pace(controller, now_ms):
        return STEP_MS
    since = _since_count(controller, now_ms)
    return min(max(own_pace_ms - since, 1), STEP_MS)


def _next(controller: Controller, now_ms: int, own_pace_ms: int) -> Intent:
    if _own_pace(controller, now_ms) and _since_count(controller, now_ms) >= own_pace_ms:
        return CountRep()
    return Tick()


def _own_pace(controller: Controller, now_ms: int) -> bool:
    state, timeline = controller.state, controller.timeline
    working = state.stand is Stand.RUNNING and state.doing(timeline, now_ms) is Doing.WORK
    return working and timeline.bouts[state.bout].open_ended


def _since_count(controller: Controller, now_ms: int) -> int:
    return since_count(controller.state, now_ms)


def since_count(state: RunState, now_ms: int) -> int:
    """Time in ms since a rep at one's own pace was last counted, else since the work began."""
    if state.counted_ms is not None:
        return now_ms - state.counted_ms
    return state.local_ms(now_ms) - state.work_from_ms
