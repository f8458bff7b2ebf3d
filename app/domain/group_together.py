"""Together: everybody does the same bout at the same time, each with their own reps, load and first side."""

from collections.abc import Sequence
from dataclasses import replace

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline, suit
from app.domain.dose import Band, WorkTime
from app.domain.group import GroupSession, Part, checked, common_first, own_part, sat_out
from app.domain.grouping import Form
from app.domain.plan import Exercise, Plan, StageOrder
from app.domain.timeline import Timeline


def together(plan: Plan, athletes: Sequence[Athlete]) -> GroupSession:
    """One row of slots for all: the plan's bouts, each as long as the longest of them.

    Raises GroupError for nobody or too many, SessionTooLongError when somebody's reps make it too long.
    """
    members = checked(athletes)
    leader = leading_timeline(plan, members)
    every_slot = tuple(range(len(leader.bouts)))
    parts = tuple(
        Part(member, own_part(compile_timeline(plan, member), member), every_slot, sat_out(plan, member))
        for member in members
    )
    return GroupSession(Form.TOGETHER, leader, parts)


def leading_timeline(plan: Plan, members: Sequence[Athlete]) -> Timeline:
    """The timeline of a plan with the most reps that anybody of the group does of each exercise."""
    suited = [suit(plan, member) for member in members]
    stages = tuple(
        replace(
            stage,
            exercises=tuple(
                _longest(exercise, [own.stages[number].exercises[place] for own in suited])
                for place, exercise in enumerate(stage.exercises)
            ),
        )
        for number, stage in enumerate(plan.stages)
    )
    longest = replace(plan, stages=stages, order=StageOrder.LOCKED)
    return compile_timeline(longest, Athlete("", first=common_first(members)))


def _longest(written: Exercise, own: Sequence[Exercise]) -> Exercise:
    if isinstance(written.dose, WorkTime):
        return written
    bands = [each.dose.reps for each in own if not isinstance(each.dose, WorkTime)]
    longest = max(bands, key=lambda band: (band.high, band.low))
    return replace(written, dose=replace(written.dose, reps=Band(longest.low, longest.high)))
