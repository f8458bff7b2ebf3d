"""Takes athletes and all of theirs out of one database file, of any schema, so that their bytes are gone.

A run belongs to whoever it is of as corrected. What belongs to a run or an athlete is told by the columns
`run_id` and `athlete_id`, whatever the table; what no run or result names any more goes too.
"""

import json
import sqlite3
from collections.abc import Collection, Iterable, Mapping
from contextlib import closing
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from uuid import UUID

from app.store.arrivals import mark_of
from app.store.drawing import draw_run
from app.store.link import Link
from app.store.looking import WAIT_S, number, tables_of
from app.store.plain import LEFT_OUT
from app.store.schema import SCHEMA_VERSION
from app.store.troubles import damaged, in_plain_words
from app.store.workshop import writing

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_THEIRS = "SELECT id FROM temp.gone"
_RUNS = "SELECT id FROM temp.gone_run"
_RUN_AND_COURSE = "FROM run LEFT JOIN run_course ON run_course.run_id = run.id"
_KEPT_APART = frozenset({"run", "run_course"})


@dataclass(frozen=True, slots=True)
class Theirs:
    """What belongs to some people: the names of their rows and of their runs, and what they are called.

    `handed` are runs that were written down as theirs but are corrected to be another's: whose they are.
    """

    athletes: frozenset[str] = frozenset()
    runs: frozenset[str] = frozenset()
    names: frozenset[str] = frozenset()
    handed: Mapping[str, str] = field(default_factory=dict)

    def with_copy(self, copy: "Theirs") -> "Theirs":
        """With what an older copy has of them; whose a run is, is said here."""
        runs = self.runs | (copy.runs - self.handed.keys())
        return replace(self, athletes=self.athletes | copy.athletes, runs=runs, names=self.names | copy.names)


def erase_from(path: Path, theirs: Theirs, at: datetime, marks: Collection[bytes] = frozenset()) -> None:
    """Erase people from a file that nobody else is writing to.

    Those whom `marks` name are erased with them. A mark of each stays, where the schema has room for it.
    Raises StoreError, and then nothing is erased.
    """
    with writing(path) as connection:
        today = number(connection, "PRAGMA user_version") == SCHEMA_VERSION
        marked = _with_mark(connection, "athlete", marks)
        runs = theirs.runs.union(_with_mark(connection, "run", marks))
        everybody = replace(theirs, athletes=theirs.athletes.union(marked), runs=runs)
        changed = _erase(connection, everybody, at)
        mark(connection, marks, at)
        if connection.execute("PRAGMA foreign_key_check").fetchone() is not None:
            raise damaged(path)
    if today and changed:
        _draw(path, changed)
    rewrite(path)


def rewrite(path: Path) -> None:
    """Write a file anew, so that nothing is left in it of what was taken out. Raises StoreError."""
    with in_plain_words(path), closing(_connected(path)) as connection:
        connection.execute("VACUUM")


def theirs_in(path: Path, words: Collection[str]) -> Theirs:
    """What a file has of those who are called so, or have such an id. Raises StoreError."""
    with in_plain_words(path), closing(_connected(path)) as connection:
        rows = connection.execute("SELECT id, name FROM athlete").fetchall()
        found = {row: name for row, name in rows if name in words or str(UUID(bytes=row)) in words}
        whose = f"SELECT run.id, run.athlete_id, {_whose(_tables(connection))} {_RUN_AND_COURSE}"
        runs = connection.execute(whose).fetchall()
    return Theirs(
        frozenset(map(_text, found)),
        frozenset(_text(run) for run, _, whose in runs if whose in found),
        frozenset(found.values()),
        {_text(run): _text(whose) for run, first, whose in runs if first in found and whose not in found},
    )


def mark(connection: sqlite3.Connection, marks: Iterable[bytes], at: datetime) -> None:
    """Leave marks of those who were erased, where the schema has room for them."""
    if "erased" in tables_of(connection):
        moment = (at - _EPOCH) // timedelta(microseconds=1)
        rows = [(each, moment) for each in marks]
        connection.executemany("INSERT OR IGNORE INTO erased (hash, at) VALUES (?, ?)", rows)


def _connected(path: Path) -> sqlite3.Connection:
    uri = f"{path.absolute().as_uri()}?mode=rw"
    connection = sqlite3.connect(uri, uri=True, timeout=WAIT_S, isolation_level=None)
    for pragma in ("secure_delete = ON", "temp_store = MEMORY", "fullfsync = ON"):
        connection.execute(f"PRAGMA {pragma}")
    return connection


def _with_mark(connection: sqlite3.Connection, table: str, marks: Collection[bytes]) -> list[str]:
    """The names of the rows of a table whose mark is among these."""
    rows = connection.execute(f"SELECT id FROM {table}") if marks else ()  # noqa: S608 - of two tables
    return [_text(row) for (row,) in rows if mark_of(_text(row)) in marks]


def _erase(connection: sqlite3.Connection, theirs: Theirs, at: datetime) -> list[str]:
    """Take them out; gives the runs that are somebody else's by their corrections alone, to be drawn anew."""
    tables = _tables(connection)
    connection.execute("CREATE TEMP TABLE gone (id BLOB PRIMARY KEY)")
    connection.executemany("INSERT INTO temp.gone VALUES (?)", _bytes_of(theirs.athletes))
    names = connection.execute(f"SELECT DISTINCT name FROM athlete WHERE id IN ({_THEIRS})").fetchall()  # noqa: S608
    others = _hand_over(connection, tables, theirs.handed)
    connection.executemany("INSERT INTO temp.gone_run VALUES (?)", _bytes_of(theirs.runs))
    elsewhere = connection.execute(
        f"SELECT id FROM run WHERE id IN ({_RUNS}) AND athlete_id NOT IN ({_THEIRS})"  # noqa: S608
    ).fetchall()
    devices = _devices(connection, tables)
    _drop_corrections(connection, tables, theirs.athletes)
    _drop_rows(connection, tables)
    for who, table in ((who, table) for who in names for table in tables if "who" in tables[table]):
        connection.execute(f'UPDATE "{table}" SET who = ? WHERE who = ?', (LEFT_OUT, *who))  # noqa: S608
    _drop_orphans(connection, tables, devices)
    gone = [*theirs.athletes, *(_text(run) for (run,) in elsewhere)]
    mark(connection, map(mark_of, gone), at)
    connection.execute("DROP TABLE temp.gone")
    connection.execute("DROP TABLE temp.gone_run")
    return others


def _tables(connection: sqlite3.Connection) -> dict[str, frozenset[str]]:
    """The columns of every table, by its name."""
    return {
        table: frozenset(name for _, name, *_ in connection.execute(f'PRAGMA table_info("{table}")'))
        for table in sorted(tables_of(connection))
    }


def _hand_over(
    connection: sqlite3.Connection, tables: dict[str, frozenset[str]], handed: Mapping[str, str]
) -> list[str]:
    """Settle whose each run is; one written down as theirs but corrected to be another's is made so.

    `handed` says so of runs whose corrections a copy does not know yet.
    """
    whose, joined = _whose(tables), _RUN_AND_COURSE
    to_others = [(UUID(other).bytes, UUID(run).bytes) for run, other in handed.items()]
    there = "?1 IN (SELECT id FROM athlete)"
    connection.executemany(f"UPDATE run SET athlete_id = ?1 WHERE id = ?2 AND {there}", to_others)  # noqa: S608
    if "athlete_id" in tables["run_course"]:
        connection.executemany(
            f"UPDATE run_course SET athlete_id = ?1 WHERE run_id = ?2 AND {there}",  # noqa: S608
            to_others,
        )
    connection.execute(
        f"CREATE TEMP TABLE gone_run AS SELECT run.id AS id {joined} WHERE {whose} IN ({_THEIRS})"
    )
    others = connection.execute(
        f"SELECT run.id, {whose} {joined} WHERE run.athlete_id IN ({_THEIRS}) AND {whose} NOT IN ({_THEIRS})"
    ).fetchall()
    connection.executemany("UPDATE run SET athlete_id = ?2 WHERE id = ?1", others)
    return [*handed, *(_text(run) for run, _ in others)]


def _whose(tables: dict[str, frozenset[str]]) -> str:
    """The column that says whose a run is as corrected, as far as the schema knows corrections."""
    if "athlete_id" in tables["run_course"]:
        return "coalesce(run_course.athlete_id, run.athlete_id)"
    return "run.athlete_id"


def _drop_corrections(
    connection: sqlite3.Connection, tables: dict[str, frozenset[str]], athletes: Collection[str]
) -> None:
    """Let go of corrections of theirs, and of those that name them."""
    if "correction" not in tables:
        return
    subjects = [_THEIRS, _RUNS]
    for table, columns in tables.items():
        belongs = [f"{column} IN ({gone})" for column, gone in _belonging(columns)]
        if "id" in columns and belongs and table not in _KEPT_APART:
            subjects.append(f'SELECT id FROM "{table}" WHERE {" OR ".join(belongs)}')  # noqa: S608
    for subject in subjects:
        connection.execute(f"DELETE FROM correction WHERE subject_id IN ({subject})")  # noqa: S608
    said = [(json.dumps(athlete),) for athlete in athletes]
    for column in ("before", "after"):
        connection.executemany(
            f"DELETE FROM correction WHERE subject = 'run' AND field = 'athlete' AND {column} = ?",  # noqa: S608
            said,
        )


def _drop_rows(connection: sqlite3.Connection, tables: dict[str, frozenset[str]]) -> None:
    for table, columns in tables.items():
        if table in _KEPT_APART:
            continue
        for column, gone in _belonging(columns):
            connection.execute(f'DELETE FROM "{table}" WHERE {column} IN ({gone})')  # noqa: S608
    connection.execute(f"DELETE FROM run_course WHERE run_id IN ({_RUNS})")  # noqa: S608
    connection.execute(f"DELETE FROM run WHERE id IN ({_RUNS})")  # noqa: S608
    connection.execute(f"DELETE FROM athlete WHERE id IN ({_THEIRS})")  # noqa: S608


def _belonging(columns: frozenset[str]) -> list[tuple[str, str]]:
    """By which columns a row belongs to what is gone, and the query for what is."""
    return [
        (column, gone) for column, gone in (("run_id", _RUNS), ("athlete_id", _THEIRS)) if column in columns
    ]


def _devices(connection: sqlite3.Connection, tables: dict[str, frozenset[str]]) -> list[tuple[bytes]]:
    """What they were measured with."""
    if "result" not in tables:
        return []
    return connection.execute(
        f"SELECT DISTINCT device_id FROM result WHERE athlete_id IN ({_THEIRS}) AND device_id IS NOT NULL"  # noqa: S608
    ).fetchall()


def _drop_orphans(
    connection: sqlite3.Connection, tables: dict[str, frozenset[str]], devices: list[tuple[bytes]]
) -> None:
    """Let go of plans and prescriptions that no run has any more, and of what was theirs alone."""
    connection.execute("DELETE FROM plan WHERE hash NOT IN (SELECT plan_hash FROM run)")
    used = "SELECT prescription_hash FROM run"
    connection.execute(f"DELETE FROM prescribed_bout WHERE prescription_hash NOT IN ({used})")  # noqa: S608
    connection.execute(f"DELETE FROM prescription WHERE hash NOT IN ({used})")  # noqa: S608
    if "group_member" in tables:
        connection.execute("DELETE FROM group_session WHERE id NOT IN (SELECT group_id FROM group_member)")
    if "result" in tables:
        still = "SELECT device_id FROM result WHERE device_id IS NOT NULL"
        connection.executemany(f"DELETE FROM device WHERE id = ? AND id NOT IN ({still})", devices)  # noqa: S608


def _text(name: bytes) -> str:
    return str(UUID(bytes=name))


def _bytes_of(names: Iterable[str]) -> list[tuple[bytes]]:
    return [(UUID(name).bytes,) for name in names]


def _draw(path: Path, runs: Iterable[str]) -> None:
    link = Link(path, read_only=False, wait_s=WAIT_S)
    try:
        with link.writing() as connection:
            for run in runs:
                draw_run(connection, path, run)
    finally:
        link.close()
