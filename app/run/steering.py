"""Intents that move a run: begin, pause, go on, end, redo, skip, rest longer or shorter, stop."""

from dataclasses import dataclass, replace

from app.domain.records import (
    BoutChosen,
    BoutEnded,
    BoutOutcome,
    Fact,
    RestExtended,
    Resumed,
    RunBegan,
    RunOutcome,
    SkipReason,
)
from app.domain.timeline import Timeline
from app.run.intents import ExtendRest, GoToStage, Pause, SkipExercise, SkipStage
from app.run.order import left_of, open_stages
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
    met = state.passed - state.not_done >= timeline.bouts[state.bout].low
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
    """Leave out, with the reason, what remains of the exercise meant.

    Where nothing of it remains, that it is left out is written as a further attempt at the bout meant.
    """
    meant = state.bout if intent.bout is None else intent.bout
    if not 0 <= meant < len(timeline.bouts):
        return state, ()
    exercise = (timeline.bouts[meant].stage, timeline.bouts[meant].exercise)
    return _leave_out(
        timeline, state, _Leaving(frozenset({exercise}), meant, intent.reason, intent.note), now_ms
    )


def skip_stage(timeline: Timeline, state: RunState, intent: SkipStage, now_ms: int) -> Step:
    """Leave out, with the reason, what remains of every exercise of the stage under way."""
    here = timeline.bouts[state.bout]
    left = {(bout.stage, bout.exercise) for bout in left_of(timeline, state) if bout.stage == here.stage}
    exercises = frozenset(left | {(here.stage, here.exercise)})
    return _leave_out(timeline, state, _Leaving(exercises, here.index, intent.reason, intent.note), now_ms)


@dataclass(frozen=True, slots=True)
class _Leaving:
    """The exercises that are left out, the bout that gave rise to it, and why."""

    exercises: frozenset[tuple[int, int]]
    meant: int
    reason: SkipReason
    note: str | None


def _leave_out(timeline: Timeline, state: RunState, leaving: _Leaving, now_ms: int) -> Step:
    exercises = leaving.exercises - state.skipped
    if state.stand not in (Stand.RUNNING, Stand.PAUSED) or not exercises:
        return state, ()
    bouts = [
        bout.index
        for bout in timeline.bouts
        if (bout.stage, bout.exercise) in exercises
        and (bout.index not in state.over or bout.index == state.bout)
    ]
    at = now_ms - state.began_ms
    facts: list[BoutEnded] = []
    attempts = list(state.attempts)
    for bout in bouts or [leaving.meant]:
        attempts[bout] = state.attempt if bout == state.bout else attempts[bout] + 1
        ended = BoutEnded(at, bout, attempts[bout], BoutOutcome.SKIPPED, leaving.reason, leaving.note)
        facts.append(ended)
    last = state.bout if state.begun and state.bout in bouts else state.last_bout
    if last is not None and last != state.bout and any(fact.bout == last for fact in facts):
        last = None
    skipped = state.skipped | exercises
    left = replace(state, skipped=skipped, attempts=tuple(attempts), last_bout=last)
    if state.bout not in bouts:
        return left, tuple(facts)
    left, ended_run = go_on(timeline, replace(left, begun=False), now_ms)
    return left, (*facts, *ended_run)


def go_to_stage(timeline: Timeline, state: RunState, intent: GoToStage, now_ms: int) -> Step:
    """Go on with another stage, where the plan leaves their order free; a bout under way is broken off."""
    chosen = intent.stage in open_stages(timeline, state)
    if state.stand not in (Stand.RUNNING, Stand.PAUSED) or not chosen:
        return state, ()
    at = now_ms - state.began_ms
    bout = next(bout for bout in left_of(timeline, state) if bout.stage == intent.stage)
    facts: tuple[Fact, ...] = (BoutChosen(at, bout.index),)
    if state.begun:
        broken = BoutEnded(at, state.bout, state.attempt, BoutOutcome.BROKEN_OFF)
        state, facts = replace(state, last_bout=None), (broken, *facts)
    return enter(state, bout, now_ms, -bout.before_ms), facts


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
