"""Planned sessions in the database: kept as they were planned, and what became of them since."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, fields
from datetime import date, datetime, time
from typing import Any

from sqlalchemy import ColumnElement, Connection, RowMapping, Select, and_, func, insert, or_, select

from app.analysis.local_time import known_zone
from app.domain.errors import StoreError
from app.domain.planned import ChangeKind, Occurrence, PlannedChange, PlannedSession, next_after
from app.store.link import Link
from app.store.people import RandomBytes, athlete_made, new_name
from app.store.planned_rows import PlannedChangeRow, PlannedRow
from app.store.rows import AthleteRow, Row

Planning = tuple[tuple[PlannedSession, ...], tuple[PlannedChange, ...]]
"""Planned sessions, the first day first, and what became of them, the earliest word first."""


@dataclass(frozen=True, slots=True)
class _Word:
    """What is to be said of a planned session."""

    kind: ChangeKind
    day: date
    to_day: date | None = None
    reason: str | None = None


class Planned:
    """Keeps and reads planned sessions. Methods raise StoreError when the record cannot be had."""

    def __init__(self, link: Link, random_bytes: RandomBytes) -> None:
        self._link = link
        self._random_bytes = random_bytes

    def keep(self, *sessions: PlannedSession) -> None:
        """Write planned sessions down, all or none of them; the same again changes nothing.

        An athlete of a new name is made. Raises ValueError when another session has the UUID of one.
        """
        with self._link.writing() as connection:
            for session in sessions:
                columns = _columns(session)
                name = columns.pop("athlete")
                columns["clock"] = None if session.clock is None else f"{session.clock:%H:%M}"
                columns["athlete_id"] = athlete_made(connection, name, session.at, self._random_bytes)
                _insert_new(connection, PlannedRow, columns)

    def keep_changes(self, *changes: PlannedChange) -> None:
        """Write down what became of planned sessions, all or none of it; the same again changes nothing.

        Raises StoreError when a session is not there, ValueError when another change has the UUID of one.
        """
        with self._link.writing() as connection:
            for change in changes:
                _keep_change(connection, change)

    def excuse(self, planned_id: str, day: date, reason: str, at: datetime, zone: str) -> PlannedChange:
        """Excuse one day of a planned session, named as it was first planned, and give what was written.

        This and the next three raise StoreError when there is no such session, ValueError for a blank reason.
        """
        return self._change(planned_id, _Word(ChangeKind.EXCUSED, day, reason=reason), at, zone)

    def make_due(self, planned_id: str, day: date, at: datetime, zone: str) -> PlannedChange:
        """Take the excuse of one day back."""
        return self._change(planned_id, _Word(ChangeKind.DUE, day), at, zone)

    def move(self, planned_id: str, day: date, to_day: date, at: datetime, zone: str) -> PlannedChange:
        """Move one day of a planned session to another."""
        return self._change(planned_id, _Word(ChangeKind.MOVED, day, to_day=to_day), at, zone)

    def end(self, planned_id: str, day: date, at: datetime, zone: str) -> PlannedChange:
        """Let a planned session come no more from a day on; from its first day on it is called off."""
        return self._change(planned_id, _Word(ChangeKind.ENDED, day), at, zone)

    def of(self, athlete: str | None = None) -> Planning:
        """What is planned for an athlete, for everybody where none is named, and what became of it."""
        with self._link.reading() as connection:
            return read_planning(connection, athlete)

    def next_of(self, athlete: str, now: datetime) -> Occurrence | None:
        """The next planned session of an athlete at a moment, by the clock of the place it is planned for.

        None where nothing is planned; what is excused is passed over.
        """
        planned, changes = self.of(athlete)
        found = []
        for zone in {session.zone for session in planned}:
            here = now.astimezone(known_zone(zone))
            there = [session for session in planned if session.zone == zone]
            occurrence = next_after(there, changes, here.date(), here.time())
            if occurrence is not None:
                clock = occurrence.planned.clock or time.max
                at = datetime.combine(occurrence.day, clock, known_zone(zone))
                found.append((at.timestamp(), occurrence.planned.id, occurrence))
        return min(found)[-1] if found else None

    def _change(self, planned_id: str, word: "_Word", at: datetime, zone: str) -> PlannedChange:
        with self._link.writing() as connection:
            name = new_name(at, self._random_bytes)
            _, whose = _whose(connection, planned_id)
            change = PlannedChange(
                name, planned_id, whose, word.kind, word.day, at, zone, word.to_day, word.reason
            )
            _keep_change(connection, change)
        return change


def _keep_change(connection: Connection, change: PlannedChange) -> None:
    athlete_id, _ = _whose(connection, change.planned_id)
    columns = _columns(change)
    columns.pop("athlete")
    _insert_new(connection, PlannedChangeRow, {**columns, "athlete_id": athlete_id})


def _whose(connection: Connection, planned_id: str) -> tuple[str, str]:
    """The row and the name of the athlete of a planned session. Raises StoreError when it is not there."""
    query = (
        select(PlannedRow.athlete_id, AthleteRow.name)
        .join(AthleteRow, AthleteRow.id == PlannedRow.athlete_id)
        .where(PlannedRow.id == planned_id)
    )
    found = connection.execute(query).first()
    if found is None:
        raise StoreError("The planned session is not in the record any more. Open the list anew.")
    return found.athlete_id, found.name


def read_planning(
    connection: Connection, athlete: str | None = None, days: tuple[date, date] | None = None
) -> Planning:
    """What is planned, within a transaction; of `days`, both included, what can bear on one of them."""
    chosen = _chosen(athlete, days)
    ids = select(PlannedRow.id).where(*chosen)
    sessions = _rows(connection, PlannedRow, _session, chosen)
    changes = _rows(connection, PlannedChangeRow, _change_of, [PlannedChangeRow.planned_id.in_(ids)])
    return (
        tuple(sorted(sessions, key=lambda each: (each.day, each.clock or time.min, each.id))),
        tuple(sorted(changes, key=lambda each: (each.at, each.id))),
    )


def _chosen(athlete: str | None, days: tuple[date, date] | None) -> list[ColumnElement[bool]]:
    chosen: list[ColumnElement[bool]] = []
    if athlete is not None:
        named = select(AthleteRow.id).where(AthleteRow.name == athlete)
        chosen.append(PlannedRow.athlete_id.in_(named))
    if days is not None:
        first, last = days
        moved_there = select(PlannedChangeRow.planned_id).where(PlannedChangeRow.to_day.between(first, last))
        within = and_(PlannedRow.day <= last, func.coalesce(PlannedRow.until, PlannedRow.day) >= first)
        chosen.append(or_(within, PlannedRow.id.in_(moved_there)))
    return chosen


def _rows(
    connection: Connection,
    rows: type[Row],
    made: Callable[[RowMapping], Any],
    chosen: Iterable[ColumnElement[bool]],
) -> list[Any]:
    table = rows.__table__
    query: Select[Any] = select(table, AthleteRow.name.label("athlete")).join(
        AthleteRow, AthleteRow.id == table.c.athlete_id
    )
    return [made(row) for row in connection.execute(query.where(*chosen)).mappings()]


def _session(row: RowMapping) -> PlannedSession:
    said = {name: value for name, value in row.items() if name != "athlete_id"}
    clock = None if row["clock"] is None else time.fromisoformat(row["clock"])
    return PlannedSession(**{**said, "clock": clock})


def _change_of(row: RowMapping) -> PlannedChange:
    said = {name: value for name, value in row.items() if name != "athlete_id"}
    return PlannedChange(**{**said, "kind": ChangeKind(row["kind"])})


def _columns(thing: PlannedSession | PlannedChange) -> dict[str, Any]:
    return {each.name: getattr(thing, each.name) for each in fields(thing)}


def _insert_new(connection: Connection, rows: type[Row], columns: dict[str, Any]) -> None:
    table = rows.__table__
    known = connection.execute(select(table).where(table.c.id == columns["id"])).mappings().first()
    if known is None:
        connection.execute(insert(rows), columns)
    elif dict(known) != columns:
        raise ValueError(f"{columns['id']} is written down already, and is another")
