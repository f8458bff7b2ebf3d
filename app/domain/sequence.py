"""The sequence: in which order the sets of a plan come, and which gap stands before each."""

from collections.abc import Iterator
from dataclasses import dataclass

from app.domain.plan import Exercise, Plan, Stage
from app.domain.timeline import SpanKind


@dataclass(frozen=True, slots=True)
class Gap:
    """The time between two bouts, its lead-in included. Length in ms."""

    kind: SpanKind
    length_ms: int


@dataclass(frozen=True, slots=True)
class PlannedSet:
    """One set where it comes in the session: indices of stage and exercise from 0, set number from 1.

    `gap` is what stands before it, None before the first of the session.
    """

    stage: int
    exercise: int
    number: int
    gap: Gap | None


def planned_sets(plan: Plan) -> Iterator[PlannedSet]:
    """Every set of the plan in the order of the session, supersets going round by round."""
    changeover = Gap(SpanKind.CHANGEOVER, plan.changeover_ms)
    gap: Gap | None = None
    for stage_index, stage in enumerate(plan.stages):
        for group in superset_groups(stage):
            for rounds_left, members in _rounds(stage, group):
                for place, (exercise_index, number) in enumerate(members, 1):
                    yield PlannedSet(stage_index, exercise_index, number, gap)
                    round_over = place == len(members)
                    rest_ms = stage.exercises[exercise_index].rest_ms
                    gap = Gap(SpanKind.REST, rest_ms) if round_over and rounds_left else changeover


def superset_groups(stage: Stage) -> Iterator[tuple[int, ...]]:
    """Indices of exercises done together: neighbours with the same superset letter; any other is alone."""
    group: list[int] = []
    for index, exercise in enumerate(stage.exercises):
        if group and not _together(stage.exercises[group[-1]], exercise):
            yield tuple(group)
            group = []
        group.append(index)
    if group:
        yield tuple(group)


def _together(one: Exercise, other: Exercise) -> bool:
    return one.superset is not None and one.superset == other.superset


def _rounds(stage: Stage, group: tuple[int, ...]) -> Iterator[tuple[int, list[tuple[int, int]]]]:
    """Round by round: how many rounds are left after it, and its exercises with their set number."""
    count = max(stage.exercises[index].sets for index in group)
    for number in range(1, count + 1):
        yield count - number, [(index, number) for index in group if stage.exercises[index].sets >= number]
