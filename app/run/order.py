"""The order of a run: which bouts are left, which comes next, which stages can be chosen."""

from enum import StrEnum

from app.domain.plan import StageOrder
from app.domain.timeline import Bout, Timeline
from app.run.state import RunState


class Rung(StrEnum):
    """How a stage stands to the run: under way, behind, to come and open, or locked until its turn."""

    HERE = "here"
    BEHIND = "behind"
    OPEN = "open"
    LOCKED = "locked"


def left_of(timeline: Timeline, state: RunState) -> tuple[Bout, ...]:
    """The bouts that are neither over nor left out, in the order of the plan.

    That under way is one of them unless it is done again.
    """
    return tuple(
        bout
        for bout in timeline.bouts
        if bout.index not in state.over and (bout.stage, bout.exercise) not in state.skipped
    )


def coming(timeline: Timeline, state: RunState) -> tuple[Bout, ...]:
    """What comes after the current bout.

    In a locked order what follows in the timeline; else the rest of its stage first, then the lowest stages
    left.
    """
    here = timeline.bouts[state.bout]
    if timeline.plan.order is StageOrder.LOCKED:
        return tuple(bout for bout in left_of(timeline, state) if bout.index > here.index)

    def place(bout: Bout) -> tuple[bool, bool, int]:
        same = bout.stage == here.stage
        return not same, same and bout.index < here.index, bout.index

    others = (bout for bout in left_of(timeline, state) if bout.index != here.index)
    return tuple(sorted(others, key=place))


def next_bout(timeline: Timeline, state: RunState) -> Bout | None:
    """The bout that comes after the current one, None when nothing is left."""
    later = coming(timeline, state)
    return later[0] if later else None


def open_stages(timeline: Timeline, state: RunState) -> tuple[int, ...]:
    """The stages that can be chosen instead of the current one: none where the plan locks their order."""
    if timeline.plan.order is not StageOrder.FREE:
        return ()
    here = timeline.bouts[state.bout].stage
    return tuple(sorted({bout.stage for bout in left_of(timeline, state)} - {here}))


def ladder(timeline: Timeline, state: RunState) -> tuple[Rung, ...]:
    """How each stage of the plan stands to the run, in order."""
    here = timeline.bouts[state.bout].stage
    left = {bout.stage for bout in left_of(timeline, state)} - {here}
    to_come = Rung.OPEN if timeline.plan.order is StageOrder.FREE else Rung.LOCKED
    rungs = [to_come if stage in left else Rung.BEHIND for stage in range(len(timeline.plan.stages))]
    rungs[here] = Rung.HERE
    return tuple(rungs)
