"""Where a run stands: one frozen value."""

from dataclasses import dataclass
from enum import StrEnum

from app.domain.plan import Side
from app.domain.records import BoutRated, FaultMarked, LoadUsed, PauseReason, RunOutcome
from app.domain.timeline import Timeline


class Stand(StrEnum):
    """Whether a run is waiting, going, standing still or over."""

    READY = "ready"
    RUNNING = "running"
    PAUSED = "paused"
    ENDED = "ended"


class Doing(StrEnum):
    """Which part of a bout's stretch of time it is."""

    GAP = "gap"
    LEAD_IN = "lead_in"
    WORK = "work"


@dataclass(frozen=True, slots=True)
class RepMark:
    """Names one rep of one attempt at a bout."""

    bout: int
    attempt: int
    rep: int
    side: Side


Said = FaultMarked | BoutRated | LoadUsed | None
"""What can be taken back: a mark or an answer that was written, None for a mark on the rep under way."""


@dataclass(frozen=True, slots=True)
class RunState:
    """A run at one moment. All times in whole ms.

    Position is kept on the local axis of the current bout: 0 is the start of its first phase, the lead-in
    ends at `work_from_ms` (the start of the rep it resumes at, else 0), the gap lies before the lead-in.
    While running, position at clock time t is `cursor_ms + t - anchor_ms`; otherwise it is `cursor_ms`.
    `rest_ms` is the length of this gap with what was added to it; `passed` counts the reps of this attempt
    that are behind, `not_done` those of them that were marked missed; `attempts` holds, by bout, how often it
    was begun or skipped; `over` are the bouts that were done or ended early; `seen_ms` is the last clock time
    handed in; `unnamed` is the last fault marked without a name, and when; `said` is what was marked and
    answered since the work last began, the latest last.
    """

    stand: Stand
    attempts: tuple[int, ...]
    bout: int = 0
    anchor_ms: int = 0
    cursor_ms: int = 0
    work_from_ms: int = 0
    rest_ms: int = 0
    passed: int = 0
    not_done: int = 0
    begun: bool = False
    missed: bool = False
    counted_ms: int | None = None
    last_rep: RepMark | None = None
    last_bout: int | None = None
    faults: frozenset[tuple[RepMark, str | None]] = frozenset()
    unnamed: tuple[RepMark, int] | None = None
    skipped: frozenset[tuple[int, int]] = frozenset()
    over: frozenset[int] = frozenset()
    said: tuple[Said, ...] = ()
    began_ms: int = 0
    seen_ms: int = 0
    ended_ms: int | None = None
    pause: PauseReason | None = None
    outcome: RunOutcome | None = None

    @property
    def attempt(self) -> int:
        """Number of the current attempt at the current bout, from 1."""
        return self.attempts[self.bout] + (0 if self.begun else 1)

    @property
    def stretch(self) -> tuple[int, int, int, int]:
        """Names an unbroken stretch of time: it changes exactly when the sound has to be started anew."""
        return (self.bout, self.attempt, self.anchor_ms, self.cursor_ms)

    def with_attempt(self, bout: int, attempt: int) -> tuple[int, ...]:
        """The attempts with the number of one bout's set."""
        return (*self.attempts[:bout], attempt, *self.attempts[bout + 1 :])

    def local_ms(self, now_ms: int) -> int:
        """Position on the local axis of the current bout."""
        if self.stand is not Stand.RUNNING:
            return self.cursor_ms
        return self.cursor_ms + max(now_ms, self.anchor_ms) - self.anchor_ms

    def doing(self, timeline: Timeline, now_ms: int) -> Doing:
        """Which part of the current bout's stretch it is."""
        local = self.local_ms(now_ms)
        if local >= self.work_from_ms:
            return Doing.WORK
        in_lead_in = local >= self.work_from_ms - timeline.bouts[self.bout].lead_in_ms
        return Doing.LEAD_IN if in_lead_in else Doing.GAP


def ready(timeline: Timeline) -> RunState:
    """The state before the athlete says they are ready. Raises ValueError for a timeline without bouts."""
    if not timeline.bouts:
        raise ValueError("a timeline needs at least one bout")
    first = timeline.bouts[0]
    return RunState(Stand.READY, (0,) * len(timeline.bouts), cursor_ms=-first.before_ms)
