"""A damaged database read as far as it goes, into a new file, and filled up from a backup."""

import os
import sqlite3
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from uuid import UUID

from app.domain.errors import StoreError
from app.domain.records import Fact, RunEnded, RunOutcome
from app.store.agreement import agrees
from app.store.contents import Contents, contents_of
from app.store.copying import is_sound, saying_which_copy
from app.store.durable import make_private_file, remove_with_journal
from app.store.erasing import rewrite
from app.store.filling import fill_up
from app.store.identity import RANDOM_BYTES
from app.store.marks import keep_erased
from app.store.mending import Mended, mend
from app.store.pages import PagedFile
from app.store.redrawing import draw_all
from app.store.refold import facts_by_number, write_facts
from app.store.replacing import let_it_settle
from app.store.salvage import Row, Salvaged, salvage, shapes_of
from app.store.schema import APPLICATION_ID, SCHEMA_VERSION
from app.store.troubles import in_plain_words, newer
from app.store.verify import NOT_IN_ORDER
from app.store.workshop import bring_up, writing

_HELP = "Go back to a backup instead: `pacewright restore` lists them. The damaged file was left as it is."
_OWN = frozenset({"alembic_version"})


@dataclass(frozen=True, slots=True)
class Recovered:
    """What could be saved of a damaged database, and what not. Lost rows are never counted as none lost.

    `contents` is what the new file holds. `missing_facts` counts, by run, facts that are known to have been
    there; `closed` are the runs without an end that cannot be led on because of that, and were ended. Of the
    runs in `beyond` facts are lost too, as the figures drawn from them show, which were kept.
    `stand_ins` counts, by table, rows of which no more than the key is known, `lost_pages` pages that held
    rows, `bad_rows` rows on other pages that could not be read or be true, `unplaced_pages` pages whose rows
    may belong to several tables, `unread_bytes` what the disk did not give back. `from_backup` counts rows
    and facts that the backup added.
    """

    contents: Contents
    missing_facts: dict[str, int]
    closed: tuple[str, ...]
    beyond: tuple[str, ...]
    stand_ins: dict[str, int]
    lost_pages: int
    bad_rows: int
    unplaced_pages: int
    unread_bytes: int
    from_backup: int

    @property
    def whole(self) -> bool:
        """Whether nothing is known to be missing."""
        of_runs = self.missing_facts or self.beyond or self.stand_ins
        return not (of_runs or self.lost_pages or self.bad_rows or self.unplaced_pages or self.unread_bytes)


@dataclass(slots=True)
class _Tally:
    bad_rows: int = 0
    from_backup: int = 0
    missing: dict[str, int] = field(default_factory=dict)
    closed: list[str] = field(default_factory=list)
    beyond: tuple[str, ...] = ()


def recover(
    database: Path,
    into: Path,
    backup: Path | None = None,
    *,
    at: datetime,
    random_bytes: Callable[[int], bytes] = os.urandom,
) -> Recovered:
    """Save what can be read of a damaged database into a new file of today's schema, and say how far it went.

    What a sound `backup` holds beside that is added, except of those who were erased since; `at` is now. The
    damaged file is only read. Raises StoreError, and NewerStoreError where a newer version made it; then
    there is no new file.
    """
    let_it_settle(database)
    with in_plain_words(database):
        file = PagedFile(database)
    version = _version_of(file, database)
    try:
        found, mended, tally = _saved(file, version, into, backup, random_bytes)
        keep_erased(into, (into,), at)
        rewrite(into)
        if not is_sound(into):
            raise StoreError(f"What could be read of the database does not fit together. {_HELP}")
        return _report(into, found, mended, tally)
    except BaseException:
        remove_with_journal(into)
        raise


def _version_of(file: PagedFile, database: Path) -> int:
    """The schema of a file by its header, today's where that cannot be believed."""
    if file.application_id != APPLICATION_ID or file.version < 1:
        return SCHEMA_VERSION
    if file.version > SCHEMA_VERSION:
        raise newer(database, file.version)
    return file.version


def _saved(
    file: PagedFile, version: int, into: Path, backup: Path | None, random_bytes: Callable[[int], bytes]
) -> tuple[Salvaged, Mended, _Tally]:
    tally = _Tally()
    with saying_which_copy(into.parent):
        make_private_file(into)
    bring_up(into, version)
    with writing(into) as connection:
        found = salvage(file, shapes_of(connection), agrees)
        for table, rows in found.rows.items():
            if table not in _OWN:
                tally.bad_rows += _insert(connection, table, rows)
        if not found.rows.keys() - _OWN:
            raise StoreError(f"Nothing of the database could be read. {_HELP}")
        mended = mend(connection, random_bytes(RANDOM_BYTES))
    bring_up(into, SCHEMA_VERSION)
    if backup is not None:
        tally.from_backup = fill_up(into, backup, mended)
    with writing(into) as connection:
        _tidy_runs(connection, tally)
        tally.bad_rows += mended.let_go + mend(connection, random_bytes(RANDOM_BYTES)).let_go
    drawn = draw_all(into)
    tally.bad_rows += drawn.bad_corrections
    tally.beyond = drawn.beyond
    return found, mended, tally


def _insert(connection: sqlite3.Connection, table: str, rows: Iterable[Row]) -> int:
    """Insert the rows that can be true, the first of each key; gives the number of the others."""
    bad = 0
    for row in rows:
        if agrees(table, row) is False:
            bad += 1
            continue
        names, marks = ", ".join(f'"{name}"' for name in row), ", ".join("?" * len(row))
        words = f'INSERT OR IGNORE INTO "{table}" ({names}) VALUES ({marks})'  # noqa: S608 - its own table
        connection.execute(words, tuple(row.values()))
    return bad


def _tidy_runs(connection: sqlite3.Connection, tally: _Tally) -> None:
    """See that the facts of every run lie in order, and note which runs lack some."""
    for (run_id,) in connection.execute(NOT_IN_ORDER).fetchall():
        facts = facts_by_number(connection, run_id)
        missing = max(facts) + 1 - len(facts)
        if missing:
            name = str(UUID(bytes=run_id))
            tally.missing[name] = missing
            if not _has_end(connection, run_id, facts):
                tally.closed.append(name)
                facts[max(facts) + 1] = _end_of(facts)
        write_facts(connection, run_id, facts)


def _has_end(connection: sqlite3.Connection, run_id: bytes, facts: Mapping[int, Fact]) -> bool:
    ended = "SELECT 1 FROM run_course WHERE run_id = ? AND outcome IS NOT NULL"
    told = any(isinstance(fact, RunEnded) for fact in facts.values())
    return told or connection.execute(ended, (run_id,)).fetchone() is not None


def _end_of(facts: Mapping[int, Fact]) -> RunEnded:
    """The end of a run that cannot be led on: facts written from here would take the numbers of lost ones."""
    return RunEnded(max(fact.at_ms for fact in facts.values()), RunOutcome.ABANDONED)


def _report(into: Path, found: Salvaged, mended: Mended, tally: _Tally) -> Recovered:
    return Recovered(
        contents=contents_of(into),
        missing_facts=tally.missing,
        closed=tuple(tally.closed),
        beyond=tuple(run_id for run_id in tally.beyond if run_id not in tally.missing),
        stand_ins={table: len(keys) for table, keys in mended.stand_ins.items() if keys},
        lost_pages=found.lost_pages,
        bad_rows=found.bad_cells + tally.bad_rows,
        unplaced_pages=found.unplaced,
        unread_bytes=found.unread,
        from_backup=tally.from_backup,
    )
