"""Intents that move a run: begin, pause, go on, end, redo, skip, rest longer or shorter, stop."""

from dataclasses import replace

from app.domain.records import BoutEnded, BoutOutcome, Fact, RestExtended, Resumed, RunBegan, RunOutcome
from app.domain.timeline import Timeline
from app.run.intents import ExtendRest, Pause, SkipExercise
from app.run.passing import Step, close_rep, end_bout, end_run, enter, go_on, pause
from app.run.state import Doing, RunState, Stand


def begin(timeline: Timeline, state: RunState, now_ms: int) -> Step:
    """The athlete is ready: the first lead-in runs from now."""
    if state.stand is not Stand.READY:
        return state, ()
    first = timeline.bouts[0]
    running = replace(state, stand=Stand.RUNNING, began_ms=now_ms)
    return enter(running, first, now_ms, -first.before_ms), (RunBegan(),)


def pause_run(timeline: Timeline, state: RunState, intent: Pause, now_ms: int) -> Step:
    """Stand still, when running."""
    if state.stand is not Stand.RUNNING:
        return state, ()
    return pause(timeline, state, now_ms, intent.reason)


def resume(state: RunState, now_ms: int) -> Step:
    """Go on, when paused."""
    if state.stand is not Stand.PAUSED:
        return state, ()
    going = replace(state, stand=Stand.RUNNING, anchor_ms=now_ms, pause=None)
    return going, (Resumed(now_ms - state.began_ms),)


def end_bout_now(timeline: Timeline, state: RunState, now_ms: int) -> Step:
    """The work under way ends here: done when the lower count is met, early otherwise."""
    if state.stand is not Stand.RUNNING or not state.begun:
        return state, ()
    state, closed = close_rep(timeline, state, now_ms)
    met = state.passed >= timeline.bouts[state.bout].low
    outcome = BoutOutcome.DONE if met else BoutOutcome.ENDED_EARLY
    state, ended = end_bout(timeline, state, now_ms, outcome)
    return state, (*closed, *ended)


def redo(timeline: Timeline, state: RunState, now_ms: int) -> Step:
    """Begin again the bout under way, or the last one when in the gap after it; both attempts are kept."""
    if state.stand not in (Stand.RUNNING, Stand.PAUSED):
        return state, ()
    facts: tuple[Fact, ...] = ()
    if state.begun:
        again = state.bout
        facts = (BoutEnded(now_ms - state.began_ms, again, state.attempt, BoutOutcome.BROKEN_OFF),)
    elif state.last_bout is not None:
        again = state.last_bout
    else:
        return state, ()
    bout = timeline.bouts[again]
    if (bout.stage, bout.exercise) in state.skipped:
        return state, ()
    return enter(replace(state, last_bout=None), bout, now_ms, -bout.lead_in_ms), facts


def skip_exercise(timeline: Timeline, state: RunState, intent: SkipExercise, now_ms: int) -> Step:
    """Leave out, with the reason, what remains of the exercise meant."""
    meant = state.bout if intent.bout is None else intent.bout
    if state.stand not in (Stand.RUNNING, Stand.PAUSED) or not 0 <= meant < len(timeline.bouts):
        return state, ()
    exercise = (timeline.bouts[meant].stage, timeline.bouts[meant].exercise)
    if exercise in state.skipped:
        return state, ()
    left_out = [bout for bout in timeline.bouts[state.bout :] if (bout.stage, bout.exercise) == exercise]
    at = now_ms - state.began_ms
    facts: list[Fact] = []
    attempts = list(state.attempts)
    for bout in left_out:
        attempt = state.attempt if bout.index == state.bout else attempts[bout.index] + 1
        attempts[bout.index] = attempt
        facts.append(BoutEnded(at, bout.index, attempt, BoutOutcome.SKIPPED, intent.reason, intent.note))
    state = replace(state, skipped=state.skipped | {exercise})
    if not left_out or left_out[0].index != state.bout:
        return replace(state, attempts=tuple(attempts)), tuple(facts)
    last_bout = state.bout if state.begun else state.last_bout
    state = replace(state, attempts=tuple(attempts), begun=False, last_bout=last_bout)
    state, ended = go_on(timeline, state, now_ms)
    return state, (*facts, *ended)


def extend_rest(timeline: Timeline, state: RunState, intent: ExtendRest, now_ms: int) -> Step:
    """A longer gap before the bout to come."""
    waiting = state.stand in (Stand.RUNNING, Stand.PAUSED) and state.doing(timeline, now_ms) is not Doing.WORK
    if not waiting:
        return state, ()
    longer = replace(
        state,
        anchor_ms=now_ms,
        cursor_ms=state.local_ms(now_ms) - intent.by_ms,
        rest_ms=state.rest_ms + intent.by_ms,
    )
    return longer, (RestExtended(now_ms - state.began_ms, state.bout, intent.by_ms),)


def begin_now(timeline: Timeline, state: RunState, now_ms: int) -> Step:
    """Cut the gap short: its lead-in runs from now."""
    if state.stand is not Stand.RUNNING or state.doing(timeline, now_ms) is not Doing.GAP:
        return state, ()
    lead_in = timeline.bouts[state.bout].lead_in_ms
    return replace(state, anchor_ms=now_ms, cursor_ms=state.work_from_ms - lead_in), ()


def stop(state: RunState, now_ms: int) -> Step:
    """End the run here, for good; before it began, nothing has happened and nothing is recorded."""
    if state.stand is Stand.ENDED:
        return state, ()
    if state.stand is Stand.READY:
        return replace(state, stand=Stand.ENDED), ()
    facts: tuple[Fact, ...] = ()
    if state.begun:
        facts = (BoutEnded(now_ms - state.began_ms, state.bout, state.attempt, BoutOutcome.BROKEN_OFF),)
    state, ended = end_run(state, now_ms, RunOutcome.ABANDONED)
    return state, (*facts, *ended)
