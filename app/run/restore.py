"""Taking a run up again from what was written down of it, after the program that led it is gone."""

from collections.abc import Sequence
from dataclasses import replace

from app.domain.fold import as_meant
from app.domain.records import (
    BoutBegan,
    BoutChosen,
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
from app.run.order import next_bout
from app.run.state import RepMark, RunState, Stand, ready


def restore(timeline: Timeline, facts: Sequence[Fact], now_ms: int) -> RunState:
    """The state in which a run stands still at the bout it was in, as if interrupted at its last fact.

    `facts` are all that was written of it, in order; the run's own time goes on from the last of them at
    clock time `now_ms`. A run that was over is over. A rest that was going on is cut to the lead-in.
    """
    state = replace(ready(timeline), stand=Stand.PAUSED, pause=PauseReason.INTERRUPTED)
    for fact in as_meant(facts):
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
            begun = replace(state, bout=bout, attempts=attempts, begun=True, last_bout=last_bout)
            state = replace(begun, passed=0, not_done=0)
        case BoutChosen(bout=bout):
            state = replace(state, bout=bout, begun=False, passed=0, not_done=0)
        case RepDone() | RepMissed():
            mark = RepMark(fact.bout, fact.attempt, fact.rep, fact.side)
            not_done = state.not_done + isinstance(fact, RepMissed)
            state = replace(state, passed=state.passed + 1, not_done=not_done, last_rep=mark)
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
        state = replace(state, last_bout=fact.bout, over=state.over | {fact.bout})
    else:
        return replace(state, begun=False, passed=0, not_done=0, last_bout=None)
    state = replace(state, bout=fact.bout, begun=False, passed=0, not_done=0)
    following = next_bout(timeline, state)
    return state if following is None else replace(state, bout=following.index)


def _at_lead_in(timeline: Timeline, state: RunState) -> RunState:
    bout = timeline.bouts[state.bout]
    windows = rep_windows(bout)
    reached = state.begun and bool(windows)
    work_from = windows[min(state.passed, len(windows) - 1)].start_ms if reached else 0
    return replace(state, work_from_ms=work_from, cursor_ms=work_from - bout.lead_in_ms, rest_ms=0)
