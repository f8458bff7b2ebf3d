"""A group session that was cut short by the death of the program: found in the record, and laid out again."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from app.domain.errors import PacewrightError
from app.domain.group import GroupSession
from app.domain.group_record import GroupRecord, session_of
from app.domain.plan import WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import BoutPrescribed, Fact, RunEnded, RunHeader, RunOutcome
from app.run.controller import handle
from app.run.intents import Stop
from app.run.restore import restore

if TYPE_CHECKING:
    from app.store.database import Database


@dataclass(frozen=True, slots=True)
class UnfinishedGroup:
    """A group session of which a run has no end, and what was written of everybody, by their place.

    `headers` has one for each; of those who were never there it is only a name for a run that may come.
    """

    record: GroupRecord
    headers: tuple[RunHeader, ...]
    facts: tuple[tuple[Fact, ...], ...]
    prescribed: tuple[tuple[BoutPrescribed, ...], ...]

    @property
    def title(self) -> str:
        """The title of its plan."""
        return self.headers[0].plan_title

    @property
    def people(self) -> int:
        """How many were there."""
        return sum(bool(theirs) for theirs in self.facts)


def latest_unfinished_group(database: "Database") -> UnfinishedGroup | None:
    """The latest group session without an end, None when every one has one. For the database's thread."""
    groups = database.groups.unfinished()
    if not groups:
        return None
    record = groups[0]
    members = sorted(record.members, key=lambda member: member.place)
    known = database.queries.run_ids()
    led = {
        member.run_id: database.queries.header_of(member.run_id)
        for member in members
        if member.run_id in known
    }
    if not led:
        return None
    some = next(iter(led.values()))
    headers = tuple(
        led.get(member.run_id)
        or RunHeader(
            member.run_id, member.athlete, some.plan_title, some.plan_text, record.started_at, record.zone
        )
        for member in members
    )
    facts = tuple(
        database.queries.facts_of(member.run_id) if member.run_id in led else () for member in members
    )
    prescribed = tuple(
        tuple(dict.fromkeys(asked for asked, _ in database.queries.bouts_of(member.run_id)))
        if member.run_id in led
        else ()
        for member in members
    )
    return UnfinishedGroup(record, headers, facts, prescribed)


def laid_out(group: UnfinishedGroup, parse: Callable[[str], WrittenPlan]) -> GroupSession | None:
    """The session laid out as it was; None when it cannot be: the program reads its plan otherwise now."""
    try:
        session = session_of(parse(group.headers[0].plan_text).plan, group.record)
    except PacewrightError:
        return None
    fits = all(
        not facts or max((getattr(fact, "bout", 0) for fact in facts), default=0) < len(part.timeline.bouts)
        for part, facts in zip(session.parts, group.facts, strict=True)
    )
    return session if fits and all(prescriptions(part.timeline) for part in session.parts) else None


def ends_of(group: UnfinishedGroup, session: GroupSession | None) -> tuple[tuple[Fact, ...], ...]:
    """What closes each run without an end as it stands: abandoned, every rep kept. By their place."""
    ends: list[tuple[Fact, ...]] = []
    for place, facts in enumerate(group.facts):
        if not facts or any(isinstance(fact, RunEnded) for fact in facts):
            ends.append(())
            continue
        gone_ms = max(fact.at_ms for fact in facts)
        if session is None:
            ends.append((RunEnded(gone_ms, RunOutcome.ABANDONED),))
            continue
        timeline = session.parts[place].timeline
        ends.append(handle(timeline, restore(timeline, facts, gone_ms), Stop(), gone_ms)[1])
    return tuple(ends)
