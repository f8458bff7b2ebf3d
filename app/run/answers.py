"""Intents that say how it goes: counts, faults, missed reps, and the ratings of a bout or of the session."""

from dataclasses import replace

from app.domain.records import BoutOutcome, BoutRated, FaultMarked, LoadUsed, RepDone, SessionRated, TakenBack
from app.domain.timeline import Timeline, rep_windows
from app.run.intents import MarkFault, RateBout, RateSession
from app.run.passing import Step, end_bout
from app.run.state import RepMark, RunState, Stand

NAMING_MS = 5_000
"""For this long a fault that was marked without a name can be given one."""
SHORTEST_OWN_REP_MS = 250
"""Two counts closer than this are one press that bounced."""


def count_rep(timeline: Timeline, state: RunState, now_ms: int) -> Step:
    """One more rep at the athlete's own pace; the upper count ends the bout."""
    bout = timeline.bouts[state.bout]
    if state.stand is not Stand.RUNNING or not state.begun or not bout.open_ended:
        return state, ()
    local = state.local_ms(now_ms)
    if local < state.work_from_ms:
        return state, ()
    if state.counted_ms is not None and now_ms - state.counted_ms < SHORTEST_OWN_REP_MS:
        return state, ()
    began_ms = now_ms - (local - state.work_from_ms) if state.counted_ms is None else state.counted_ms
    mark = RepMark(state.bout, state.attempt, state.passed + 1, bout.side)
    run_began = state.began_ms
    fact = RepDone(now_ms - run_began, mark.bout, mark.attempt, mark.rep, mark.side, began_ms - run_began, 0)
    state = replace(state, passed=mark.rep, counted_ms=now_ms, last_rep=mark)
    if mark.rep < bout.high:
        return state, (fact,)
    state, ended = end_bout(timeline, state, now_ms, BoutOutcome.DONE)
    return state, (fact, *ended)


def mark_fault(timeline: Timeline, state: RunState, intent: MarkFault, now_ms: int) -> Step:
    """Mark a fault on the rep that is under way or has just passed; the same mark twice is one mark.

    A name given soon after a mark without one names that mark, on the rep it was made on.
    """
    if intent.on is None:
        mark = _waiting_for_name(state, intent, now_ms) or _rep_meant(timeline, state, now_ms)
    else:
        mark = intent.on if _known_rep(timeline, state, intent.on) else None
    if mark is None or (mark, intent.fault) in state.faults:
        return state, ()
    fact = FaultMarked(now_ms - state.began_ms, mark.bout, mark.attempt, mark.rep, mark.side, intent.fault)
    unnamed = (mark, now_ms) if intent.fault is None else None
    faults, said = state.faults | {(mark, intent.fault)}, (*state.said, fact)
    return replace(state, faults=faults, unnamed=unnamed, said=said), (fact,)


def _known_rep(timeline: Timeline, state: RunState, mark: RepMark) -> bool:
    """Whether a rep is one of an attempt that was made; whether it was done is for its record to say."""
    if not 0 <= mark.bout < len(timeline.bouts):
        return False
    bout = timeline.bouts[mark.bout]
    sides = {bout.side, bout.side.other} if bout.alternating else {bout.side}
    return (
        1 <= mark.attempt <= state.attempts[mark.bout] and 1 <= mark.rep <= bout.high and mark.side in sides
    )


def _waiting_for_name(state: RunState, intent: MarkFault, now_ms: int) -> RepMark | None:
    if intent.fault is None or state.unnamed is None or state.stand is Stand.ENDED:
        return None
    mark, at_ms = state.unnamed
    return mark if now_ms - at_ms <= NAMING_MS else None


def mark_missed(timeline: Timeline, state: RunState, now_ms: int) -> Step:
    """The rep under way will pass as not done."""
    bout = timeline.bouts[state.bout]
    under_way = state.stand is Stand.RUNNING and state.begun and not bout.open_ended
    if not under_way or state.local_ms(now_ms) < rep_windows(bout)[state.passed].start_ms:
        return state, ()
    said = state.said if state.missed else (*state.said, None)
    return replace(state, missed=True, said=said), ()


def take_back(state: RunState, now_ms: int) -> Step:
    """The last mark or answer counts no more: one that was written by a further fact, one to come at once."""
    if not state.said or state.stand is Stand.READY:
        return state, ()
    *before, last = state.said
    state = replace(state, said=tuple(before), unnamed=None)
    if last is None:
        return replace(state, missed=False), ()
    if isinstance(last, FaultMarked):
        mark = RepMark(last.bout, last.attempt, last.rep, last.side)
        state = replace(state, faults=state.faults - {(mark, last.fault)})
    return state, (TakenBack(now_ms - state.began_ms, last.bout, last.attempt),)


def _rep_meant(timeline: Timeline, state: RunState, now_ms: int) -> RepMark | None:
    if state.stand not in (Stand.RUNNING, Stand.PAUSED):
        return None
    bout = timeline.bouts[state.bout]
    if state.begun and not bout.open_ended:
        window = rep_windows(bout)[state.passed]
        if state.local_ms(now_ms) >= window.start_ms or state.passed == 0:
            return RepMark(state.bout, state.attempt, window.rep, window.side)
    if state.begun and state.passed == 0:
        return RepMark(state.bout, state.attempt, 1, bout.side)
    return state.last_rep


def rate_bout(state: RunState, intent: RateBout, now_ms: int) -> Step:
    """Answers about a bout that is over; they are taken late too, after the run as well."""
    attempt = _attempt_meant(state, intent)
    if attempt is None:
        return state, ()
    at = now_ms - state.began_ms
    said: list[BoutRated | LoadUsed] = []
    questions = (intent.reps, intent.rpe, intent.pain, intent.note)
    if intent.load_kg is None or any(answer is not None for answer in questions):
        said.append(BoutRated(at, intent.bout, attempt, *questions))
    if intent.load_kg is not None:
        said.append(LoadUsed(at, intent.bout, attempt, intent.load_kg))
    return replace(state, said=(*state.said, *said)), tuple(said)


def _attempt_meant(state: RunState, intent: RateBout) -> int | None:
    """The attempt that answers are about, None where there is none that is over."""
    if not 0 <= intent.bout < len(state.attempts):
        return None
    last = state.attempts[intent.bout]
    attempt = last if intent.attempt is None else intent.attempt
    under_way = intent.bout == state.bout and state.begun and state.stand is not Stand.ENDED
    if not 1 <= attempt <= last or (under_way and attempt == last):
        return None
    return attempt


def rate_session(state: RunState, intent: RateSession, now_ms: int) -> Step:
    """The rating of the whole session, while it goes on or afterwards."""
    if state.stand is Stand.READY or (state.stand is Stand.ENDED and state.outcome is None):
        return state, ()
    at = now_ms - state.began_ms
    lag = None if state.ended_ms is None else at - state.ended_ms
    return replace(state, said=()), (SessionRated(at, intent.rpe, lag, intent.note),)
