"""A group session on its way into the record: a run for each who is there, tied to the session."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime
from typing import TYPE_CHECKING

from app.domain.group import GroupSession
from app.domain.group_record import GroupMember, GroupRecord, grouping_text, member_text
from app.domain.grouping import Grouping
from app.domain.plan import WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import RunBegan, RunHeader
from app.views.group.room_session import Told

if TYPE_CHECKING:
    from app.views.worker import RecordKeeper

NewId = Callable[[datetime], str]
Stamp = Callable[[], tuple[datetime, str]]


def new_record(
    session: GroupSession, grouping: Grouping, written: WrittenPlan, stamp: Stamp, new_id: NewId
) -> tuple[GroupRecord, tuple[RunHeader, ...]]:
    """The record of a session that begins now, and a header for each who was to come."""
    at, zone = stamp()
    headers = tuple(
        RunHeader(new_id(at), part.athlete.name, written.plan.title, written.text, at, zone)
        for part in session.parts
    )
    members = tuple(
        GroupMember(new_id(at), place, part.athlete.name, header.run_id, member_text(part.athlete, part.team))
        for place, (part, header) in enumerate(zip(session.parts, headers, strict=True))
    )
    choices = grouping_text(grouping, session)
    return GroupRecord(new_id(at), session.form, choices, at, zone, members), headers


class GroupWriter:
    """Writes what is told of everybody. The record is made when the session begins: it says when that was."""

    def __init__(
        self,
        keeper: "RecordKeeper",
        session: GroupSession,
        make: Callable[[], tuple[GroupRecord, tuple[RunHeader, ...]]],
        stamp: Stamp,
    ) -> None:
        self._keeper, self._session, self._make, self._stamp = keeper, session, make, stamp
        self._made: tuple[GroupRecord, tuple[RunHeader, ...]] | None = None

    @property
    def headers(self) -> tuple[RunHeader, ...]:
        """The header of each athlete's run by their place; none before the session began."""
        return () if self._made is None else self._made[1]

    def __call__(self, told: Sequence[Told]) -> None:
        """Hand over what happened at one moment; before somebody's first fact, that their run exists."""
        if self._made is None:
            self._made = self._make()
        record, headers = self._made
        new = [member for member, _, facts in told if isinstance(facts[0], RunBegan)]
        if new:
            at = self._stamp()[0]
            opened = [
                (replace(headers[member], started_at=at), prescriptions(self._session.parts[member].timeline))
                for member in new
            ]
            self._keeper.open_group(record, opened)
        self._keeper.append_all([(headers[member].run_id, first, facts) for member, first, facts in told])
