"""Taking a run up again from what was written down of it, after the program that led it is gone."""

from collections.abc import Sequence
from dataclasses import replace

from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    Fact,
    FaultMarked,
    PauseReason,
    RepDone,
    RepMissed,
    RunEnded,
)
from app.domain.timeline import Timeline, rep_windows
from app.run.state import RepMark, RunState, Stand, ready


def restore(timeline: Timeline, facts: Sequence[Fact], now_ms: int) -> RunState:
    """The state in which a run stands still at the bout it was in, as if interrupted at its last fact.

    `facts` are all that was written of it, in order; the run's own time goes on from the last of them at
    clock time `now_ms`. A run that was over is over. A rest that was going on is cut to the lead-in.
    """
    state = replace(ready(timeline), stand=Stand.PAUSED, pause=PauseReason.INTERRUPTED)
    for fact in facts:
        state = _after(timeline, state, fact)
    gone_ms = max((fact.at_ms for fact in facts), default=0)
    state = replace(state, began_ms=now_ms - gone_ms, seen_ms=now_ms, anchor_ms=now_ms)
    if state.stand is Stand.ENDED:
        return replace(state, pause=None)
    return _at_lead_in(timeline, state)


def _after(timeline: Timeline, state: RunState, fact: Fact) -> RunState:
    match fact:
        case BoutBegan(bout=bout, attempt=attempt):
            attempts = state.with_attempt(bout, attempt)
            last_bout = None if bout == state.last_bout else state.last_bout
            state = replace(state, bout=bout, attempts=attempts, begun=True, passed=0, last_bout=last_bout)
        case RepDone() | RepMissed():
            mark = RepMark(fact.bout, fact.attempt, fact.rep, fact.side)
            state = replace(state, passed=state.passed + 1, last_rep=mark)
        case FaultMarked():
            mark = RepMark(fact.bout, fact.attempt, fact.rep, fact.side)
            state = replace(state, faults=state.faults | {(mark, fact.fault)})
        case BoutEnded():
            state = _after_bout(timeline, state, fact)
        case RunEnded(at_ms=at, outcome=outcome):
            state = replace(state, stand=Stand.ENDED, ended_ms=at, outcome=outcome)
    return state


def _after_bout(timeline: Timeline, state: RunState, fact: BoutEnded) -> RunState:
    ended = timeline.bouts[fact.bout]
    state = replace(state, attempts=state.with_attempt(fact.bout, fact.attempt))
    if fact.outcome is BoutOutcome.SKIPPED:
        exercise = (ended.stage, ended.exercise)
        state = replace(state, skipped=state.skipped | {exercise})
        if fact.bout != state.bout:
            return replace(state, last_bout=None) if fact.bout == state.last_bout else state
        state = replace(state, last_bout=fact.bout if state.begun else state.last_bout)
    elif fact.outcome is not BoutOutcome.BROKEN_OFF:
        state = replace(state, last_bout=fact.bout)
    else:
        return replace(state, begun=False, passed=0, last_bout=None)
    return replace(state, bout=_next(timeline, state, fact.bout), begun=False, passed=0)


def _next(timeline: Timeline, state: RunState, bout: int) -> int:
    later = (
        other.index
        for other in timeline.bouts[bout + 1 :]
        if (other.stage, other.exercise) not in state.skipped
    )
    return next(later, bout)


def _at_lead_in(timeline: Timeline, state: RunState) -> RunState:
    bout = timeline.bouts[state.bout]
    windows = rep_windows(bout)
    reached = state.begun and bool(windows)
    work_from = windows[min(state.passed, len(windows) - 1)].start_ms if reached else 0
    return replace(state, work_from_ms=work_from, cursor_ms=work_from - bout.lead_in_ms, rest_ms=0)
