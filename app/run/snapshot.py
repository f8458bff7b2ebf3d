"""What a screen needs to know of a run at one moment: one frozen value, painted as it is."""

from dataclasses import dataclass

from app.domain.cue_speech import coaching_cue
from app.domain.plan import Exercise, Side, Stage
from app.domain.records import PauseReason, RunOutcome
from app.domain.tempo import Phase
from app.domain.timeline import Bout, RepWindow, SpanKind, Timeline, WorkSpan, rep_windows
from app.run.order import Rung, coming, ladder, open_stages
from app.run.state import Doing, RunState, Stand


@dataclass(frozen=True, slots=True)
class Snapshot:
    """A run at one moment. Times in whole ms; None where there is nothing to say.

    `local_ms` is the position on the bout's own axis (0 = its first phase); `rep` is the rep under way, or
    the count at the athlete's own pace; `phase_left_ms` is None in open-ended work; `gap_left_ms` counts
    down to the work, the lead-in included, and `gap_all_ms` is its whole length; `left_ms` is what is left
    of the session as far as it has a length, and `left_open` says that open-ended work comes on top.
    `begun` says that the work of the bout began and is not over. `following` is the bout after this one, what
    is left out passed over. `rungs` says of each stage how it stands to the run, `choices` which of them can
    be gone to instead.
    """

    stand: Stand
    doing: Doing
    timeline: Timeline
    bout: Bout
    exercise: Exercise
    stage: Stage
    attempt: int
    begun: bool
    local_ms: int
    work_from_ms: int
    side: Side
    phase: Phase | None
    phase_left_ms: int | None
    rep: int
    reps: int
    passed: int
    gap_kind: SpanKind | None
    gap_left_ms: int | None
    gap_all_ms: int | None
    left_ms: int
    left_open: bool
    following: Bout | None
    cue: str | None
    rungs: tuple[Rung, ...]
    choices: tuple[int, ...]
    last_bout: int | None
    missed: bool
    marked: tuple[str | None, ...]
    pause: PauseReason | None
    outcome: RunOutcome | None


def snapshot(timeline: Timeline, state: RunState, now_ms: int) -> Snapshot:
    """The run as it stands at a clock time; the state is one that was brought up to that time."""
    bout = timeline.bouts[state.bout]
    exercise = timeline.exercise_of(bout)
    local = state.local_ms(now_ms)
    doing = state.doing(timeline, now_ms)
    span = span_at(bout, local) if doing is Doing.WORK else None
    rep, side = _rep_and_side(bout, state)
    waiting = doing is not Doing.WORK
    to_come = coming(timeline, state)
    return Snapshot(
        stand=state.stand,
        doing=doing,
        timeline=timeline,
        bout=bout,
        exercise=exercise,
        stage=timeline.stage_of(bout),
        attempt=state.attempt,
        begun=state.begun,
        local_ms=local,
        work_from_ms=state.work_from_ms,
        side=side if span is None else span.side,
        phase=None if span is None else span.phase,
        phase_left_ms=None if span is None or span.end_ms is None else span.end_ms - local,
        rep=rep,
        reps=reps_to_a_side(bout),
        passed=state.passed,
        gap_kind=bout.gap_kind if waiting and doing is Doing.GAP else None,
        gap_left_ms=state.work_from_ms - local if waiting else None,
        gap_all_ms=state.rest_ms + bout.lead_in_ms if waiting else None,
        left_ms=_left(state, bout, local, to_come),
        left_open=any(each.open_ended for each in (bout, *to_come)),
        following=to_come[0] if to_come else None,
        cue=coaching_cue(exercise, bout, rep, local),
        rungs=ladder(timeline, state),
        choices=open_stages(timeline, state),
        last_bout=state.last_bout,
        missed=state.missed,
        marked=_marked(bout, state, rep, side),
        pause=state.pause,
        outcome=state.outcome,
    )


def span_at(bout: Bout, local_ms: int) -> WorkSpan:
    """The phase at a position of the bout's axis; the first before the work, the last after it."""
    low, high = 0, len(bout.work) - 1
    while low < high:
        middle = (low + high + 1) // 2
        if bout.work[middle].start_ms <= local_ms:
            low = middle
        else:
            high = middle - 1
    return bout.work[low]


def reps_to_a_side(bout: Bout) -> int:
    """The count to lead to, to one side where sides alternate."""
    return bout.high // 2 if bout.alternating else bout.high


def _rep_and_side(bout: Bout, state: RunState) -> tuple[int, Side]:
    if bout.open_ended:
        return state.passed, bout.side
    window = _window(bout, state.passed)
    return window.rep, window.side


def _window(bout: Bout, passed: int) -> RepWindow:
    windows = rep_windows(bout)
    return windows[min(passed, len(windows) - 1)]


def _left(state: RunState, bout: Bout, local_ms: int, to_come: tuple[Bout, ...]) -> int:
    here = 0 if bout.work_ms is None else max(bout.work_ms - max(local_ms, state.work_from_ms), 0)
    before = max(state.work_from_ms - local_ms, 0)
    later = sum(bout.before_ms + (bout.work_ms or 0) for bout in to_come)
    return 0 if state.stand is Stand.ENDED else before + here + later


def _marked(bout: Bout, state: RunState, rep: int, side: Side) -> tuple[str | None, ...]:
    return tuple(
        fault
        for mark, fault in state.faults
        if (mark.bout, mark.attempt, mark.rep, mark.side) == (bout.index, state.attempt, rep, side)
    )
