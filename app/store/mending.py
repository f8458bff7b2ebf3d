"""References to rows that are lost: the runs that need them get a stand-in, everything else is let go."""

import sqlite3
from collections import defaultdict
from dataclasses import dataclass, field
from datetime import UTC, datetime
from uuid import UUID

from app.domain.records import RunHeader
from app.store.conversions import plan_columns, prescription_columns
from app.store.identity import RANDOM_BYTES, uuid7

UNKNOWN_ATHLETE = "Unknown athlete"
UNKNOWN_PLAN = "Unknown plan"
KEYS = {"athlete": "id", "plan": "hash", "prescription": "hash", "run": "id"}
"""The key of each table that a stand-in may be made in."""

_OF_RUN = ("fact", "fold", "bout_record", "run_course")


@dataclass(slots=True)
class Mended:
    """The keys of the rows that stand in for lost ones, by table, and how many rows had to be let go."""

    stand_ins: dict[str, set[bytes]] = field(default_factory=lambda: defaultdict(set))
    let_go: int = 0


def mend(connection: sqlite3.Connection, random: bytes) -> Mended:
    """See that no row refers to one that is not there. `random` are 10 bytes, for the name of a stand-in.

    Of a lost run its course says whose it was, or at least its name when it began; of a lost athlete, plan or
    prescription nothing is known.
    """
    mended = Mended()
    _mend_runs(connection, mended, random)
    for table in ("athlete", "plan", "prescription"):
        of_run = f"{table}_{KEYS[table]}"
        lost = f"SELECT DISTINCT {of_run} FROM run WHERE {of_run} NOT IN (SELECT {KEYS[table]} FROM {table})"  # noqa: S608
        for (key,) in connection.execute(lost).fetchall():
            _stand_in(connection, mended, table, key)
    mended.let_go = _let_go(connection)
    return mended


def _mend_runs(connection: sqlite3.Connection, mended: Mended, random: bytes) -> None:
    named = " UNION ".join(f"SELECT run_id FROM {table}" for table in _OF_RUN)  # noqa: S608 - its own tables
    lost = f"SELECT run_id FROM ({named}) WHERE run_id NOT IN (SELECT id FROM run)"  # noqa: S608
    names = [name for (name,) in connection.execute(lost) if _is_of_a_run(name)]
    if not names:
        return
    nobody = uuid7(_began_ms(min(names)), random[:RANDOM_BYTES]).bytes
    plan, prescription = _nothing_known()
    for table, key in (("plan", plan), ("prescription", prescription)):
        if not connection.execute(f"SELECT 1 FROM {table} WHERE hash = ?", (key,)).fetchone():  # noqa: S608
            _stand_in(connection, mended, table, key)
    for name in names:
        mended.stand_ins["run"].add(name)
        athlete, began, zone = _begun(connection, name) or (nobody, _began_ms(name) * 1000, "UTC")
        connection.execute(
            "INSERT INTO run (id, athlete_id, plan_hash, prescription_hash, started_at, zone, invented) "
            "VALUES (?, ?, ?, ?, ?, ?, 0)",
            (name, athlete, plan, prescription, began, zone),
        )


def _begun(connection: sqlite3.Connection, name: bytes) -> tuple[bytes, int, str] | None:
    """Of whom and of when a lost run was, where its course still says so."""
    columns = {column for (column,) in connection.execute("SELECT name FROM pragma_table_info('run_course')")}
    if "athlete_id" not in columns:
        return None
    query = "SELECT athlete_id, started_at, zone FROM run_course WHERE run_id = ?"
    found: tuple[bytes, int, str] | None = connection.execute(query, (name,)).fetchone()
    return found


def _nothing_known() -> tuple[bytes, bytes]:
    """The hashes of a plan and a prescription of which nothing is known."""
    nothing = RunHeader("", UNKNOWN_ATHLETE, UNKNOWN_PLAN, "", datetime(1970, 1, 1, tzinfo=UTC), "UTC")
    return plan_columns(nothing)["hash"], prescription_columns(())[0]["hash"]


def _stand_in(connection: sqlite3.Connection, mended: Mended, table: str, key: bytes) -> None:
    words = {
        "athlete": ("INSERT INTO athlete (id, name) VALUES (?, ?)", (key, UNKNOWN_ATHLETE)),
        "plan": ("INSERT INTO plan (hash, title, text) VALUES (?, ?, '')", (key, UNKNOWN_PLAN)),
        "prescription": ("INSERT INTO prescription (hash, low) VALUES (?, 0)", (key,)),
    }
    connection.execute(*words[table])
    mended.stand_ins[table].add(key)


def _let_go(connection: sqlite3.Connection) -> int:
    """Delete rows that refer to nothing until none does; gives their number."""
    gone = 0
    while True:
        tables = {table for table, *_ in connection.execute("PRAGMA foreign_key_check")}
        if not tables:
            return gone
        gone += sum(_let_go_of(connection, table) for table in tables)


def _let_go_of(connection: sqlite3.Connection, table: str) -> int:
    keys: dict[int, list[tuple[str, str, str]]] = defaultdict(list)
    for number, _, parent, child_column, parent_column, *_ in connection.execute(
        f'PRAGMA foreign_key_list("{table}")'
    ):
        keys[number].append((parent, child_column, parent_column))
    gone = 0
    for columns in keys.values():
        parent = columns[0][0]
        same = " AND ".join(f'parent."{theirs}" = child."{mine}"' for _, mine, theirs in columns)
        said = " AND ".join(f'child."{mine}" IS NOT NULL' for _, mine, _ in columns)
        gone += connection.execute(
            f'DELETE FROM "{table}" AS child WHERE {said} '  # noqa: S608 - names from its own schema
            f'AND NOT EXISTS (SELECT 1 FROM "{parent}" AS parent WHERE {same})'
        ).rowcount
    return gone


def _is_of_a_run(name: object) -> bool:
    """Whether a run may be called so: the names of runs are UUIDs of version 7."""
    return isinstance(name, bytes) and len(name) == 16 and UUID(bytes=name).version == 7


def _began_ms(name: bytes) -> int:
    """When a run began, in ms since 1970 UTC, from the first 48 bits of its name (RFC 9562, section 5.7)."""
    return int.from_bytes(name[:6], "big")
