"""Group sessions in the database: read back with who was to come, and which of them have no end yet."""

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, exists, insert, select

from app.domain.errors import StoreError
from app.domain.group_record import GroupMember, GroupRecord
from app.domain.grouping import Form
from app.store.exchange_rows import ImportedRow
from app.store.group_rows import GroupMemberRow, GroupSessionRow
from app.store.link import Link
from app.store.people import RandomBytes, athlete_made
from app.store.rows import AthleteRow, Row, RunCourseRow

OF_A_GROUP = exists().where(GroupMemberRow.run_id == RunCourseRow.run_id)
"""Whether a run belongs to a group session."""


class Groups:
    """Reads group sessions. Methods raise StoreError when the record cannot be had."""

    def __init__(self, link: Link) -> None:
        self._link = link

    def read(self, group_id: str) -> GroupRecord:
        """A group session. Raises StoreError when there is no such one."""
        with self._link.reading() as connection:
            found = _read(connection, [group_id])
        if not found:
            raise StoreError(f"There is no group session {group_id} in {self._link.path}.")
        return found[0]

    def of_run(self, run_id: str) -> str | None:
        """The UUID of the group session that a run belongs to, None where it was led alone."""
        query = select(GroupMemberRow.group_id).where(GroupMemberRow.run_id == run_id).limit(1)
        with self._link.reading() as connection:
            found: str | None = connection.execute(query).scalar_one_or_none()
        return found

    def unfinished(self) -> tuple[GroupRecord, ...]:
        """The group sessions of which a run began and has no end, the latest first."""
        query = (
            select(GroupMemberRow.group_id)
            .join(RunCourseRow, RunCourseRow.run_id == GroupMemberRow.run_id)
            .where(RunCourseRow.outcome.is_(None), ~exists().where(ImportedRow.run_id == RunCourseRow.run_id))
            .distinct()
        )
        with self._link.reading() as connection:
            return _read(connection, list(connection.execute(query).scalars()))


def write_group(connection: Connection, group: GroupRecord, random_bytes: RandomBytes) -> None:
    """Write a group session down within a transaction; the same again changes nothing.

    Athletes of a new name are made. Raises ValueError when another session has that name.
    """
    columns = {
        "id": group.group_id,
        "form": group.form.value,
        "choices": group.choices,
        "started_at": group.started_at,
        "zone": group.zone,
    }
    _insert_new(connection, GroupSessionRow, columns)
    for member in group.members:
        whose = athlete_made(connection, member.athlete, group.started_at, random_bytes)
        row = {"group_id": group.group_id, "athlete_id": whose, "at": group.started_at, "zone": group.zone}
        said = {name: getattr(member, name) for name in ("id", "run_id", "place", "choices")}
        _insert_new(connection, GroupMemberRow, {**row, **said})


def _insert_new(connection: Connection, rows: type[Row], columns: dict[str, Any]) -> None:
    table = rows.__table__
    known = connection.execute(select(table).where(table.c.id == columns["id"])).mappings().first()
    if known is None:
        connection.execute(insert(rows), columns)
    elif dict(known) != columns:
        raise ValueError(f"{columns['id']} is written down already, and is another")


def _read(connection: Connection, groups: Sequence[str]) -> tuple[GroupRecord, ...]:
    """Group sessions of these names, the latest first."""
    asked = select(GroupSessionRow).where(GroupSessionRow.id.in_(groups))
    members: dict[str, list[GroupMember]] = {}
    named = (
        select(GroupMemberRow, AthleteRow.name)
        .join(AthleteRow, AthleteRow.id == GroupMemberRow.athlete_id)
        .where(GroupMemberRow.group_id.in_(groups))
        .order_by(GroupMemberRow.place)
    )
    for row in connection.execute(named.with_only_columns(*GroupMemberRow.__table__.c, AthleteRow.name)):
        member = GroupMember(row.id, row.place, row.name, row.run_id, row.choices)
        members.setdefault(row.group_id, []).append(member)
    found = [
        GroupRecord(row.id, Form(row.form), row.choices, row.started_at, row.zone, tuple(members[row.id]))
        for row in connection.execute(asked.with_only_columns(*GroupSessionRow.__table__.c))
        if row.id in members
    ]
    return tuple(sorted(found, key=_began, reverse=True))


def _began(group: GroupRecord) -> tuple[datetime, str]:
    return group.started_at, group.group_id
