"""The live session: a state, and what each intent makes of it. Pure: time is handed in."""

from app.domain.records import Fact
from app.domain.timeline import Timeline
from app.run import answers, steering
from app.run.intents import (
    Begin,
    BeginNow,
    CountRep,
    EndBout,
    ExtendRest,
    GoToStage,
    Intent,
    MarkFault,
    MarkMissed,
    Pause,
    RateBout,
    RateSession,
    RedoBout,
    Resume,
    SkipExercise,
    SkipStage,
    Stop,
    TakeBack,
    Tick,
)
from app.run.passing import Step, pass_time
from app.run.state import RunState, Stand, ready


def handle(timeline: Timeline, state: RunState, intent: Intent, now_ms: int) -> Step:
    """The state after time has passed to `now_ms` and the intent was followed, and the facts that came of it.

    An intent that makes no sense where the run stands changes nothing. Clock times may repeat; a step back
    counts as standing still.
    """
    state, due = pass_time(timeline, state, now_ms)
    state, caused = _follow(timeline, state, intent, state.seen_ms)
    return state, (*due, *caused)


def _follow(timeline: Timeline, state: RunState, intent: Intent, now_ms: int) -> Step:  # noqa: PLR0911, PLR0912, C901
    match intent:
        case Tick():
            return state, ()
        case Begin():
            return steering.begin(timeline, state, now_ms)
        case Pause():
            return steering.pause_run(timeline, state, intent, now_ms)
        case Resume():
            return steering.resume(state, now_ms)
        case EndBout():
            return steering.end_bout_now(timeline, state, now_ms)
        case RedoBout():
            return steering.redo(timeline, state, now_ms)
        case SkipExercise():
            return steering.skip_exercise(timeline, state, intent, now_ms)
        case SkipStage():
            return steering.skip_stage(timeline, state, intent, now_ms)
        case GoToStage():
            return steering.go_to_stage(timeline, state, intent, now_ms)
        case ExtendRest():
            return steering.extend_rest(timeline, state, intent, now_ms)
        case BeginNow():
            return steering.begin_now(timeline, state, now_ms)
        case Stop():
            return steering.stop(state, now_ms)
        case CountRep():
            return answers.count_rep(timeline, state, now_ms)
        case MarkFault():
            return answers.mark_fault(timeline, state, intent, now_ms)
        case MarkMissed():
            return answers.mark_missed(timeline, state, now_ms)
        case TakeBack():
            return answers.take_back(state, now_ms)
        case RateBout():
            return answers.rate_bout(state, intent, now_ms)
        case RateSession():
            return answers.rate_session(state, intent, now_ms)


class Controller:
    """Holds the state of one run and numbers its facts, so that a journal can be told what it already has."""

    def __init__(self, timeline: Timeline, state: RunState | None = None, facts_so_far: int = 0) -> None:
        self.timeline = timeline
        self.state = ready(timeline) if state is None else state
        self.facts_so_far = facts_so_far

    def handle(self, intent: Intent, now_ms: int) -> tuple[int, tuple[Fact, ...]]:
        """Follow an intent; gives the number of the first new fact and the new facts, often none."""
        self.state, facts = handle(self.timeline, self.state, intent, now_ms)
        first = self.facts_so_far
        self.facts_so_far += len(facts)
        return first, facts

    @property
    def over(self) -> bool:
        """Whether the run has ended."""
        return self.state.stand is Stand.ENDED
