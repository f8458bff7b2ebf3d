"""The group session: several athletes led by one clock, each with a timeline of their own.

The work of the room is a row of slots. A slot is one bout of the leading timeline; each athlete's bouts
belong to slots, in order, and an athlete who is done earlier waits for the next slot of theirs.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from app.domain.athlete import Athlete
from app.domain.errors import PacewrightError
from app.domain.grouping import MOST_MEMBERS, Form
from app.domain.plan import Exercise, Plan, Side, Stage, StageOrder
from app.domain.timeline import Bout, Timeline

Place = tuple[int, int]
"""An exercise of a plan by its stage and its place in it, both from 0."""


class GroupError(PacewrightError):
    """A group that cannot go through a plan in the form asked for."""


@dataclass(frozen=True, slots=True)
class Part:
    """What one athlete does in a group session.

    `slots` holds for each bout of `timeline` the slot it belongs to, never falling; `sits_out` are the
    exercises that are left out from the start; `team` is the number of the athlete's group or wave, from 0.
    """

    athlete: Athlete
    timeline: Timeline
    slots: tuple[int, ...]
    sits_out: frozenset[Place] = frozenset()
    team: int = 0

    def bouts_in(self, slot: int) -> tuple[Bout, ...]:
        """The athlete's bouts of a slot in order, none where they rest."""
        return tuple(
            bout for bout, theirs in zip(self.timeline.bouts, self.slots, strict=True) if theirs == slot
        )

    def first_from(self, slot: int) -> int | None:
        """Index of the athlete's first bout in that slot or a later one; None when there is none left."""
        return next((index for index, theirs in enumerate(self.slots) if theirs >= slot), None)


@dataclass(frozen=True, slots=True)
class GroupSession:
    """A plan for a room: the leading timeline, whose bouts are the slots, and each athlete's part.

    `stations` are the exercises done side by side, in order, none but for stations; `places` holds for each
    slot and team the number of its station, None where the team rests.
    """

    form: Form
    leader: Timeline
    parts: tuple[Part, ...]
    stations: tuple[Place, ...] = ()
    places: tuple[tuple[int | None, ...], ...] = ()

    @property
    def teams(self) -> int:
        """How many groups or waves there are."""
        return max((part.team for part in self.parts), default=0) + 1

    def members(self, team: int) -> tuple[Part, ...]:
        """The parts of a group or wave."""
        return tuple(part for part in self.parts if part.team == team)

    def sides_differ(self, slot: int) -> bool:
        """Whether people work on different sides in a slot that all of them do together."""
        return len({part.bouts_in(slot)[0].side for part in self.parts if part.bouts_in(slot)}) > 1


def checked(athletes: Sequence[Athlete]) -> tuple[Athlete, ...]:
    """The athletes of a group. Raises GroupError when there is nobody, or more than a room holds."""
    if not athletes:
        raise GroupError("A group needs at least one athlete; name a roster that has some.")
    if len(athletes) > MOST_MEMBERS:
        raise GroupError(f"A group has at most {MOST_MEMBERS} athletes, and the roster has {len(athletes)}.")
    return tuple(athletes)


def teams_of(athletes: Sequence[Athlete], count: int) -> tuple[int, ...]:
    """The team of each athlete, from 0: by the letter written for them, the others so that teams are even.

    A letter beyond the last team is put with the others. The sizes of teams differ by at most one where
    nobody has a letter.
    """
    letters = [None if athlete.team is None else ord(athlete.team) - ord("A") for athlete in athletes]
    teams = [letter if letter is not None and letter < count else None for letter in letters]
    sizes = [teams.count(number) for number in range(count)]
    given: list[int] = []
    for team in teams:
        chosen = sizes.index(min(sizes)) if team is None else team
        sizes[chosen] += team is None
        given.append(chosen)
    return tuple(given)


def own_part(timeline: Timeline, athlete: Athlete) -> Timeline:
    """The timeline as part of a group's: its order fixed, with the names of the variants an athlete does."""
    plan = replace(timeline.plan, order=StageOrder.LOCKED)
    return replace(timeline, plan=_renamed(plan, athlete.variants))


def _renamed(plan: Plan, variants: Mapping[str, str]) -> Plan:
    def exercise_named(exercise: Exercise) -> Exercise:
        names = {"easier": exercise.easier, "harder": exercise.harder}
        name = names.get(variants.get(exercise.name, ""))
        return exercise if name is None else replace(exercise, name=name)

    def stage_named(stage: Stage) -> Stage:
        return replace(stage, exercises=tuple(map(exercise_named, stage.exercises)))

    return replace(plan, stages=tuple(map(stage_named, plan.stages)))


def sat_out(plan: Plan, athlete: Athlete) -> frozenset[Place]:
    """The exercises of a plan that an athlete sits out."""
    return frozenset(
        (stage_index, exercise_index)
        for stage_index, stage in enumerate(plan.stages)
        for exercise_index, exercise in enumerate(stage.exercises)
        if exercise.name in athlete.sits_out
    )


def common_first(athletes: Sequence[Athlete]) -> Side | None:
    """The side that everybody begins on, None where that differs or is left to the plan."""
    firsts = {athlete.first for athlete in athletes}
    return firsts.pop() if len(firsts) == 1 else None
