"""Checks of a whole database: that the file is sound, and that what it says agrees with itself."""

import sqlite3
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from hashlib import sha256
from itertools import chain, islice
from pathlib import Path
from typing import Any, cast
from uuid import UUID

from sqlalchemy import Connection, RowMapping, select

from app.domain.corrected import CorrectedRun
from app.domain.errors import DamagedStoreError
from app.store.conversions import as_prescribed, course_columns, prescription_columns, record_columns
from app.store.drawing import asked_of, begun_columns, figures_text, run_as_corrected
from app.store.link import Link
from app.store.looking import WAIT_S, looking_at, number
from app.store.rows import BoutRecordRow, RunCourseRow
from app.store.schema import SCHEMA_VERSION, revision_of
from app.store.sums import sums_of
from app.store.tolerance import tolerance_of

QUICK_RUNS = 100
"""So many of the newest runs are folded again by a quick check."""
MOST_FINDINGS = 20
"""So many findings of a kind are given."""

_Rows = list[dict[str, Any]]
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_SPANS = """
    SELECT run_id, first_number AS first, last_number AS last FROM fold
    UNION ALL SELECT run_id, number, number FROM fact
"""
_GAPS = f"""
    SELECT DISTINCT run_id FROM (
        SELECT run_id, first, last, lag(last, 1, -1) OVER (PARTITION BY run_id ORDER BY first) AS before
        FROM ({_SPANS})
    ) WHERE first <> before + 1 OR last < first
"""  # noqa: S608 - its own words
_OUT_OF_ORDER = """
    SELECT run_id FROM (SELECT run_id, min(number) AS loose FROM fact GROUP BY run_id)
    JOIN (SELECT run_id, max(last_number) AS folded FROM fold GROUP BY run_id) USING (run_id)
    WHERE loose < folded
"""
NOT_IN_ORDER = f"{_GAPS} UNION {_OUT_OF_ORDER}"
"""The runs whose facts are not numbered without a gap, or lie in another order than their numbers."""

_BEGUN = "SELECT run_id FROM fold UNION SELECT run_id FROM fact"
_WITHOUT_COURSE = f"SELECT run_id FROM ({_BEGUN}) EXCEPT SELECT run_id FROM run_course"  # noqa: S608
_COURSE_OF_NOTHING = f"SELECT run_id FROM run_course EXCEPT SELECT run_id FROM ({_BEGUN})"  # noqa: S608
_NEWEST = "SELECT id FROM run ORDER BY started_at DESC, id DESC LIMIT ?"


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a check of a database found: `findings` are sentences, none where all is well.

    `folded` of its `runs` were folded again from their facts and compared.
    """

    findings: tuple[str, ...]
    runs: int
    facts: int
    folded: int

    @property
    def sound(self) -> bool:
        """Whether nothing was found."""
        return not self.findings


def verify(path: Path, *, thorough: bool = False) -> Verdict:
    """Check the file, its references, the numbers of all facts and the hashes of all plans.

    The figures drawn from what was written are drawn again and compared: of the newest runs, or of all where
    `thorough`; of none in a file of an older schema. Raises StoreError where it is no database of ours or
    cannot be opened.
    """
    with looking_at(path) as connection:
        findings = _first(_of_the_file(connection))
        if findings:
            return Verdict(findings, 0, 0, 0)
        runs = number(connection, "SELECT count(*) FROM run")
        facts = number(connection, f"SELECT coalesce(sum(last - first + 1), 0) FROM ({_SPANS})")  # noqa: S608
        today = number(connection, "PRAGMA user_version") == SCHEMA_VERSION
        asked = (-1 if thorough else QUICK_RUNS) if today else 0
        again = [run_id for (run_id,) in connection.execute(_NEWEST, (asked,))]
        findings = _first(chain.from_iterable(check(connection) for check in _CHECKS))
    if again:
        findings += _first(_of_figures(path, again))
    return Verdict(findings, runs, facts, len(again))


def _first(found: Iterator[str]) -> tuple[str, ...]:
    return tuple(islice(found, MOST_FINDINGS))


def _of_the_file(connection: sqlite3.Connection) -> Iterator[str]:
    for (said,) in connection.execute(f"PRAGMA integrity_check({MOST_FINDINGS})"):
        if said != "ok":
            yield f"The file is damaged: {said}."
    for table, _, parent, _ in connection.execute("PRAGMA foreign_key_check"):
        yield f"A row of {table} belongs to a row of {parent} that is not there."


def _of_numbers(connection: sqlite3.Connection) -> Iterator[str]:
    for (run_id,) in connection.execute(_GAPS):
        yield f"The facts of {_run(connection, run_id)} are not numbered from 0 without a gap."
    for (run_id,) in connection.execute(_OUT_OF_ORDER):
        yield f"In {_run(connection, run_id)} later facts are folded than some that are not."
    for (run_id,) in connection.execute(_WITHOUT_COURSE):
        yield f"Nothing says how {_run(connection, run_id)} went on, which has facts."
    for (run_id,) in connection.execute(_COURSE_OF_NOTHING):
        yield f"It is said how {_run(connection, run_id)} went on, which has no facts."


def _of_hashes(connection: sqlite3.Connection) -> Iterator[str]:
    for name, title, text in connection.execute("SELECT hash, title, text FROM plan"):
        if sha256(f"{title}\n{text}".encode()).digest() != name:
            yield f"The plan {name.hex()[:12]} is not the one that its hash names."
    bouts: dict[bytes, _Rows] = {}
    for row in _rows(connection, "SELECT * FROM prescribed_bout ORDER BY prescription_hash, bout"):
        bouts.setdefault(row["prescription_hash"], []).append(row)
    for name, low in connection.execute("SELECT hash, low FROM prescription"):
        asked = [as_prescribed(cast("RowMapping", row)) for row in bouts.get(name, [])]
        if prescription_columns(asked)[0] != {"hash": name, "low": low}:
            yield f"The prescription {name.hex()[:12]} is not the one that its hash names."


def _of_the_schema(connection: sqlite3.Connection) -> Iterator[str]:
    version = revision_of(number(connection, "PRAGMA user_version"))
    if connection.execute("SELECT version_num FROM alembic_version").fetchall() != [(version,)]:
        yield f"The header of the file says that its schema is {version}, the table of versions another."


_CHECKS: Sequence[Callable[[sqlite3.Connection], Iterator[str]]] = (_of_the_schema, _of_numbers, _of_hashes)


def _of_figures(path: Path, runs: Sequence[bytes]) -> Iterator[str]:
    """Draw the figures of some runs again and compare them with those that are kept."""
    link = Link(path, read_only=True, wait_s=WAIT_S)
    try:
        with link.reading() as connection:
            for run_id in runs:
                yield from _of_run(connection, path, str(UUID(bytes=run_id)))
    finally:
        link.close()


def _of_run(connection: Connection, path: Path, run_id: str) -> Iterator[str]:
    try:
        drawn = run_as_corrected(connection, path, run_id)
        asked, tolerance = asked_of(connection, run_id), tolerance_of(connection)
    except (DamagedStoreError, ValueError):
        yield f"What was written of the run {run_id} cannot be read."
        return
    kept = connection.execute(
        select(BoutRecordRow.__table__).where(BoutRecordRow.run_id == run_id)
    ).mappings()
    there = [dict(row) for row in kept]
    records = (
        []
        if drawn is None
        else [
            {"run_id": run_id, **record_columns(each, asked.get(each.bout), tolerance)}
            for each in drawn.records
        ]
    )
    if sorted(there, key=_attempt) != sorted(records, key=_attempt):
        yield f"The figures of the bouts of the run {run_id} are not those that its facts give."
    course = connection.execute(
        select(RunCourseRow.__table__).where(RunCourseRow.run_id == run_id)
    ).mappings()
    if [dict(row) for row in course] != ([] if drawn is None else [_course(connection, run_id, drawn)]):
        yield f"What is said of the whole run {run_id} is not what its facts give."


def _course(connection: Connection, run_id: str, drawn: CorrectedRun) -> dict[str, Any]:
    """The row of a run's course that was drawn."""
    of_end = course_columns(drawn.closing)
    corrected = figures_text(drawn.figures)
    sums = sums_of(connection, run_id)
    return {"run_id": run_id, **begun_columns(drawn.begun), **of_end, "corrected": corrected, **sums}


def _attempt(row: Mapping[str, Any]) -> tuple[int, int]:
    return row["bout"], row["attempt"]


def _rows(connection: sqlite3.Connection, query: str, *of: object) -> _Rows:
    found = connection.execute(query, of)
    names = [column[0] for column in found.description]
    return [dict(zip(names, row, strict=True)) for row in found]


def _run(connection: sqlite3.Connection, run_id: bytes) -> str:
    """A run in words: by when it began, and nothing of who."""
    began = number(connection, f"SELECT started_at FROM run WHERE id = x'{run_id.hex()}'")  # noqa: S608
    return f"the run of {_EPOCH + timedelta(microseconds=began):%Y-%m-%d %H:%M:%S} UTC"
