"""What a database holds, by counts and by run, read from a file of any schema."""

import sqlite3
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from hashlib import sha256
from pathlib import Path
from typing import Protocol
from uuid import UUID

from app.store.looking import looking_at, number, tables_of

DRAWN = frozenset({"bout_record", "run_course"})
"""Tables that are drawn from the facts and can be made anew."""

_APART = frozenset({"run", "athlete"})
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_RUNS = """
    SELECT run.id, athlete.name, plan.title, run.started_at, run.zone,
        coalesce((SELECT sum(reps_counted) FROM bout_record WHERE run_id = run.id), 0),
        1 + max(
            coalesce((SELECT max(last_number) FROM fold WHERE run_id = run.id), -1),
            coalesce((SELECT max(number) FROM fact WHERE run_id = run.id), -1)
        )
    FROM run JOIN athlete ON athlete.id = run.athlete_id JOIN plan ON plan.hash = run.plan_hash
    ORDER BY run.started_at, run.id
"""
_RATINGS = """
    SELECT (SELECT count(*) FROM bout_record WHERE rpe IS NOT NULL OR pain IS NOT NULL)
        + (SELECT count(*) FROM run_course WHERE session_rpe IS NOT NULL)
"""


_FACTS = (
    "SELECT run_id, first_number, last_number, body FROM fold ORDER BY run_id, first_number",
    "SELECT run_id, number, number, body FROM fact ORDER BY run_id, number",
)


class Hash(Protocol):
    """A hash in the making."""

    def update(self, data: bytes, /) -> None:
        """Take in more."""

    def digest(self) -> bytes:
        """What it comes to."""


@dataclass(frozen=True, slots=True)
class HeldRun:
    """One run in a database: whose, which, since when, how many reps and facts are written down.

    `print` tells two states of one run apart: it is the hash of all that is written of it.
    """

    run_id: str
    athlete: str
    plan_title: str
    started_at: datetime
    zone: str
    reps: int
    facts: int
    print: bytes = field(repr=False)


@dataclass(frozen=True, slots=True)
class Contents:
    """What a database holds. `ratings` counts bouts with effort or pain stated, and sessions rated.

    `beside` has the keys of what is kept beside the runs, by table, where there is any.
    """

    athletes: int
    ratings: int
    runs: tuple[HeldRun, ...]
    beside: Mapping[str, frozenset[bytes]] = field(repr=False)

    @property
    def reps(self) -> int:
        """Reps done, in every attempt."""
        return sum(run.reps for run in self.runs)

    @property
    def newest(self) -> HeldRun | None:
        """The run that began last."""
        return self.runs[-1] if self.runs else None


def contents_of(path: Path) -> Contents:
    """What a database holds. Raises StoreError where it cannot be read."""
    with looking_at(path) as connection:
        prints = _prints(connection)
        nothing = sha256().digest()
        return Contents(
            number(connection, "SELECT count(*) FROM athlete"),
            number(connection, _RATINGS),
            tuple(_run(row, prints.get(row[0], nothing)) for row in connection.execute(_RUNS)),
            _beside(connection),
        )


def _run(row: tuple[bytes, str, str, int, str, int, int], print_of_it: bytes) -> HeldRun:
    name, athlete, title, started_at, zone, reps, facts = row
    began = _EPOCH + timedelta(microseconds=started_at)
    return HeldRun(str(UUID(bytes=name)), athlete, title, began, zone, reps, facts, print_of_it)


def _prints(connection: sqlite3.Connection) -> dict[bytes, bytes]:
    """By run the hash of its facts and of the number of its other rows, which are only ever added to."""
    hashes: dict[bytes, Hash] = {}
    for query in _FACTS:
        for run_id, *values in connection.execute(query):
            hashes.setdefault(run_id, sha256()).update(repr(values).encode())
    for table in sorted(tables_of(connection) - DRAWN - {"fact", "fold"}):
        for column in _columns(connection, table) & {"run_id", "subject_id"}:
            rows = f'SELECT {column}, count(*) FROM "{table}" GROUP BY 1'  # noqa: S608 - its own table
            for run_id, count in connection.execute(rows):
                hashes.setdefault(run_id, sha256()).update(repr((table, count)).encode())
    return {run_id: found.digest() for run_id, found in hashes.items()}


def _beside(connection: sqlite3.Connection) -> dict[str, frozenset[bytes]]:
    found = {}
    for table in sorted(tables_of(connection) - _APART):
        if "id" in _columns(connection, table):
            keys = connection.execute(f'SELECT id FROM "{table}"')  # noqa: S608 - its own table
            found[table] = frozenset(key for (key,) in keys)
    return {table: keys for table, keys in found.items() if keys}


def _columns(connection: sqlite3.Connection, table: str) -> frozenset[str]:
    names = connection.execute("SELECT name FROM pragma_table_info(?)", (table,))
    return frozenset(name for (name,) in names)
