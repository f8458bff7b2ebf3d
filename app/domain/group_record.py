"""A group session as it is kept: who was to come, in which form, each with a run of their own.

What of a plan was different for whom is kept with each member, so that the session can be laid out again
from the record alone. Names and notes of people are not in it: a member is tied to an athlete and a run.
"""

import json
from collections.abc import Sequence
from dataclasses import asdict, dataclass, replace
from datetime import datetime
from decimal import Decimal, InvalidOperation
from typing import Any

from app.domain.athlete import Athlete
from app.domain.dose import Band
from app.domain.errors import StoreError
from app.domain.group import GroupSession
from app.domain.group_choice import group_session
from app.domain.grouping import Form, Grouping
from app.domain.plan import Plan, Side

_FIRST_TEAM = ord("A")


@dataclass(frozen=True, slots=True)
class GroupMember:
    """One athlete of a group session: the row's UUID, the place in the order of the roster, the run's UUID.

    There is such a run once they are there. `choices` is JSON: what of the plan is different for them.
    """

    id: str
    place: int
    athlete: str
    run_id: str
    choices: str


@dataclass(frozen=True, slots=True)
class GroupRecord:
    """A group session: a UUIDv7, its form, the numbers of the form as JSON, and who was to come."""

    group_id: str
    form: Form
    choices: str
    started_at: datetime
    zone: str
    members: tuple[GroupMember, ...]


def grouping_text(grouping: Grouping, session: GroupSession) -> str:
    """What was chosen for a session as JSON, with the number of teams there were."""
    teams = len(session.places[0]) if session.places else grouping.teams
    return _text(asdict(replace(grouping, teams=teams)))


def grouping_of(text: str) -> Grouping:
    """The same read back. Raises StoreError when it is none."""
    try:
        said = json.loads(text)
        return Grouping(**{**said, "form": Form(said["form"]), "stations": tuple(said["stations"])})
    except (ValueError, TypeError, KeyError, RecursionError) as error:
        raise _unreadable() from error


def member_text(athlete: Athlete, team: int) -> str:
    """What of a plan is different for an athlete, and the number of their team, as JSON."""
    return _text(
        {
            "team": team,
            "first": None if athlete.first is None else athlete.first.value,
            "reps": {name: [band.low, band.high] for name, band in athlete.reps.items()},
            "loads_kg": [[name, side.value, str(load)] for (name, side), load in athlete.loads_kg.items()],
            "sits_out": sorted(athlete.sits_out),
            "variants": dict(athlete.variants),
        }
    )


def athlete_of(member: GroupMember) -> Athlete:
    """The athlete a member was, as far as a plan needs to know. Raises StoreError when that is unreadable."""
    try:
        said = json.loads(member.choices)
        return Athlete(
            member.athlete,
            None if said["first"] is None else Side(said["first"]),
            {(name, Side(side)): Decimal(load) for name, side, load in said["loads_kg"]},
            {name: Band(*band) for name, band in said["reps"].items()},
            team=chr(_FIRST_TEAM + int(said["team"])),
            sits_out=frozenset(said["sits_out"]),
            variants=said["variants"],
        )
    except (ValueError, TypeError, KeyError, AttributeError, InvalidOperation, RecursionError) as error:
        raise _unreadable() from error


def session_of(plan: Plan, record: GroupRecord) -> GroupSession:
    """The session laid out again from what was kept of it. Raises StoreError, GroupError."""
    members: Sequence[GroupMember] = sorted(record.members, key=lambda member: member.place)
    return group_session(plan, [athlete_of(member) for member in members], grouping_of(record.choices))


def _text(said: dict[str, Any]) -> str:
    return json.dumps(said, sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def _unreadable() -> StoreError:
    return StoreError(
        "What was kept of the group session cannot be read. The runs of its athletes are not touched by that."
    )
