"""The people of the record, found by what they are called."""

from collections.abc import Callable, Iterable
from datetime import datetime

from sqlalchemy import Connection, exists, insert, select

from app.store.identity import RANDOM_BYTES, uuid7
from app.store.rows import AthleteRow

RandomBytes = Callable[[int], bytes]


def new_name(at: datetime, random_bytes: RandomBytes) -> str:
    """A fresh UUIDv7 of a moment, as text."""
    return str(uuid7(int(at.timestamp() * 1000), random_bytes(RANDOM_BYTES)))


def athlete_called(connection: Connection, name: str) -> str | None:
    """The row of the first athlete of a name, None when there is none."""
    query = select(AthleteRow.id).where(AthleteRow.name == name).order_by(AthleteRow.id).limit(1)
    found: str | None = connection.execute(query).scalar_one_or_none()
    return found


def athlete_made(connection: Connection, name: str, at: datetime, random_bytes: RandomBytes) -> str:
    """The row of the first athlete of a name, made at a moment when there is none."""
    found = athlete_called(connection, name)
    if found is not None:
        return found
    made = new_name(at, random_bytes)
    connection.execute(insert(AthleteRow), {"id": made, "name": name})
    return made


def called(connection: Connection, ids: Iterable[str]) -> dict[str, str]:
    """What the athletes of these rows are called; rows that are not there are left out."""
    query = select(AthleteRow.id, AthleteRow.name).where(AthleteRow.id.in_(list(ids)))
    return {row.id: row.name for row in connection.execute(query)}


def is_there(connection: Connection, athlete_id: str) -> bool:
    """Whether there is an athlete's row of that name."""
    query = select(exists().where(AthleteRow.id == athlete_id))
    return bool(connection.execute(query).scalar_one())
