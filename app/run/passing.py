"""What time does to a run: reps and bouts become due, in order, at their scheduled moments."""

from dataclasses import replace

from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    Fact,
    Paused,
    PauseReason,
    RepDone,
    RepMissed,
    RunEnded,
    RunOutcome,
)
from app.domain.timeline import Bout, RepWindow, Timeline, rep_windows
from app.run.order import next_bout
from app.run.state import RepMark, RunState, Stand

LONGEST_SILENCE_MS = 2_000
"""No news of the clock for longer than this means the machine slept: the run pauses where it last was."""

Step = tuple[RunState, tuple[Fact, ...]]


def pass_time(timeline: Timeline, state: RunState, now_ms: int) -> Step:
    """Bring a run up to `now_ms`: everything that became due, in order, stamped with its scheduled time."""
    now_ms = max(now_ms, state.seen_ms)
    if state.stand is not Stand.RUNNING:
        return replace(state, seen_ms=now_ms), ()
    if now_ms - state.seen_ms > LONGEST_SILENCE_MS:
        state, facts = pause(timeline, state, state.seen_ms, PauseReason.INTERRUPTED)
        return replace(state, seen_ms=now_ms), facts
    due: list[Fact] = []
    state = replace(state, seen_ms=now_ms)
    while state.stand is Stand.RUNNING:
        state, facts, more = _next_due(timeline, state, now_ms)
        due.extend(facts)
        if not more:
            break
    return state, tuple(due)


def _next_due(timeline: Timeline, state: RunState, now_ms: int) -> tuple[RunState, tuple[Fact, ...], bool]:
    bout = timeline.bouts[state.bout]
    local = state.local_ms(now_ms)
    if local < state.work_from_ms:
        return state, (), False
    state, began = begin_bout(state)
    windows = rep_windows(bout)
    facts = list(began)
    while state.passed < len(windows) and windows[state.passed].done_ms <= local:
        window = windows[state.passed]
        state, fact = _pass_rep(state, window, _clock(state, window.done_ms), now_ms)
        facts.append(fact)
    if bout.work_ms is None or local < bout.work_ms:
        return state, tuple(facts), False
    state, ended = end_bout(timeline, state, _clock(state, bout.work_ms), BoutOutcome.DONE)
    return state, (*facts, *ended), True


def _clock(state: RunState, local_ms: int) -> int:
    return state.anchor_ms + local_ms - state.cursor_ms


def begin_bout(state: RunState) -> Step:
    """The work of the current attempt begins, unless it has."""
    if state.begun:
        return state, ()
    attempt = state.attempt
    attempts = state.with_attempt(state.bout, attempt)
    at = _clock(state, state.work_from_ms) - state.began_ms
    return replace(state, begun=True, attempts=attempts, said=()), (BoutBegan(at, state.bout, attempt),)


def _pass_rep(state: RunState, window: RepWindow, due: int, now_ms: int) -> tuple[RunState, Fact]:
    mark = RepMark(state.bout, state.attempt, window.rep, window.side)
    at = due - state.began_ms
    fact: Fact
    if state.missed:
        fact = RepMissed(at, mark.bout, mark.attempt, mark.rep, mark.side)
    else:
        start = _clock(state, window.start_ms) - state.began_ms
        fact = RepDone(at, mark.bout, mark.attempt, mark.rep, mark.side, start, now_ms - due)
    not_done = state.not_done + state.missed
    said = tuple(each for each in state.said if each is not None)
    passed = state.passed + 1
    return replace(state, passed=passed, not_done=not_done, missed=False, last_rep=mark, said=said), fact


def close_rep(timeline: Timeline, state: RunState, now_ms: int) -> Step:
    """The rep under way ends here and counts where it has lasted its lower bound; else it is left out."""
    bout = timeline.bouts[state.bout]
    if bout.open_ended:
        return state, ()
    window, local = rep_windows(bout)[state.passed], state.local_ms(now_ms)
    if not any(span.mark_ms is not None and window.start_ms < span.mark_ms <= local for span in bout.work):
        return state, ()
    state, fact = _pass_rep(state, window, now_ms, now_ms)
    return state, (fact,)


def end_bout(timeline: Timeline, state: RunState, at_clock_ms: int, outcome: BoutOutcome) -> Step:
    """The current bout is over at a clock time, and the gap before the next begins there."""
    fact = BoutEnded(at_clock_ms - state.began_ms, state.bout, state.attempt, outcome)
    state = replace(state, last_bout=state.bout, over=state.over | {state.bout})
    state, facts = go_on(timeline, state, at_clock_ms)
    return state, (fact, *facts)


def go_on(timeline: Timeline, state: RunState, at_clock_ms: int) -> Step:
    """Go to the next bout that is not left out, or end the run when there is none."""
    bout = next_bout(timeline, state)
    if bout is not None:
        return enter(state, bout, at_clock_ms, -bout.before_ms), ()
    return end_run(state, at_clock_ms, RunOutcome.FINISHED)


def enter(state: RunState, bout: Bout, at_clock_ms: int, cursor_ms: int) -> RunState:
    """The state at the beginning of a fresh attempt at a bout, `cursor_ms` before its work."""
    return replace(
        state,
        bout=bout.index,
        anchor_ms=at_clock_ms,
        cursor_ms=cursor_ms,
        work_from_ms=0,
        rest_ms=max(-cursor_ms - bout.lead_in_ms, 0),
        passed=0,
        not_done=0,
        begun=False,
        missed=False,
        counted_ms=None,
    )


def end_run(state: RunState, at_clock_ms: int, outcome: RunOutcome) -> Step:
    """The run is over."""
    at = at_clock_ms - state.began_ms
    state = replace(
        state,
        stand=Stand.ENDED,
        cursor_ms=state.local_ms(at_clock_ms),
        ended_ms=at,
        pause=None,
        outcome=outcome,
    )
    return state, (RunEnded(at, outcome),)


def pause(timeline: Timeline, state: RunState, at_clock_ms: int, reason: PauseReason) -> Step:
    """Stand still; going on will be with a whole lead-in, at the start of the rep that was interrupted."""
    bout = timeline.bouts[state.bout]
    local = state.local_ms(at_clock_ms)
    work_from = state.work_from_ms
    if local >= work_from and not bout.open_ended:
        windows = rep_windows(bout)
        work_from = windows[min(state.passed, len(windows) - 1)].start_ms
    elif bout.open_ended:
        work_from = 0
    cursor = min(local, work_from - bout.lead_in_ms)
    state = replace(
        state,
        stand=Stand.PAUSED,
        cursor_ms=cursor,
        work_from_ms=work_from,
        missed=False,
        said=tuple(each for each in state.said if each is not None),
        counted_ms=None,
        pause=reason,
    )
    return state, (Paused(at_clock_ms - state.began_ms, reason),)
