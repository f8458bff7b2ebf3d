"""Steps of a room: how long until a slot, a run taken to a bout, where in a window somebody is. Pure."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from app.domain.dose import WorkTime
from app.domain.group import Part
from app.domain.records import BoutChosen, BoutEnded, BoutOutcome, Fact, PauseReason
from app.domain.timeline import Timeline, rep_windows
from app.run.passing import Step, enter
from app.run.state import RunState, Stand

HELD_MS = 36_000_000
"""Stands for a wait whose length nobody knows: work before it ends by count."""


def until_slot(leader: Timeline, state: RunState, slot: int, now_ms: int) -> int:
    """Time in ms until the work of a slot begins, from where the leading clock stands.

    HELD_MS and more when work that ends by count lies between. The slot is not before the leader's.
    """
    if slot == state.bout:
        return -state.local_ms(now_ms)
    work = [bout.work_ms for bout in leader.bouts[state.bout : slot]]
    gaps_ms = sum(bout.before_ms for bout in leader.bouts[state.bout + 1 : slot + 1])
    if None in work:
        return HELD_MS + gaps_ms
    return sum(length or 0 for length in work) - state.local_ms(now_ms) + gaps_ms


def go_to(timeline: Timeline, state: RunState, bout: int, now_ms: int, before_ms: int | None = None) -> Step:
    """A run at the beginning of a bout, what was under way broken off; exercises left out are passed over."""
    facts: tuple[Fact, ...] = ()
    if state.begun:
        at = now_ms - state.began_ms
        facts = (BoutEnded(at, state.bout, state.attempt, BoutOutcome.BROKEN_OFF),)
    meant = next(
        (each for each in timeline.bouts[bout:] if (each.stage, each.exercise) not in state.skipped), None
    )
    if meant is None:
        return state, ()
    cursor_ms = -meant.before_ms if before_ms is None or meant.index != bout else -before_ms
    chosen = BoutChosen(now_ms - state.began_ms, meant.index)
    return enter(replace(state, last_bout=None), meant, now_ms, cursor_ms), (*facts, chosen)


def within_slot(part: Part, bout: int) -> bool:
    """Whether a bout is not the first of its slot for the athlete: the second side of a window."""
    return bout > 0 and part.slots[bout - 1] == part.slots[bout]


def offset_in_slot(part: Part, bout: int) -> int:
    """Time in ms from the beginning of a window's work to that of a bout of it."""
    bouts = [each for each in part.bouts_in(part.slots[bout]) if each.index <= bout]
    return sum((one.work_ms or 0) + other.before_ms for one, other in pairwise(bouts))


def lived_ms(before: RunState, after: RunState, now_ms: int) -> int:
    """Where on the axis of its bout a run stood still that was going before, in ms."""
    at_ms = before.seen_ms if after.pause is PauseReason.INTERRUPTED else now_ms
    return before.local_ms(at_ms)


def kept_in_window(timeline: Timeline, state: RunState, local_ms: int) -> RunState:
    """A run that stands still in timed work goes on from there: its window is not longer for a pause."""
    bout = timeline.bouts[state.bout]
    timed = isinstance(timeline.exercise_of(bout).dose, WorkTime)
    if not timed or not state.begun or local_ms <= state.work_from_ms:
        return state
    return replace(state, work_from_ms=local_ms, cursor_ms=local_ms - bout.lead_in_ms)


def back_to(timeline: Timeline, state: RunState, local_ms: int) -> RunState:
    """A leading clock that stands still in mid-work, taken back to the beat at a position of its window."""
    bout = timeline.bouts[state.bout]
    windows = rep_windows(bout)
    passed = sum(window.end_ms <= local_ms for window in windows)
    work_from_ms = windows[min(passed, len(windows) - 1)].start_ms
    if work_from_ms >= state.work_from_ms:
        return state
    cursor_ms = work_from_ms - bout.lead_in_ms
    return replace(state, passed=passed, work_from_ms=work_from_ms, cursor_ms=cursor_ms)


def longest_rest_ms(parts: Sequence[Part], states: Sequence[RunState], slot: int) -> int:
    """The longest gap that the plan has before the bouts of a slot for those who wait for it, in ms."""
    waiting = [
        part.timeline.bouts[state.bout].before_ms
        for part, state in zip(parts, states, strict=True)
        if state.stand in (Stand.RUNNING, Stand.PAUSED) and part.slots[state.bout] == slot
    ]
    return max(waiting, default=0)
