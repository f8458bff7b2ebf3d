"""What a backup holds beside what a database holds, added to it."""

import sqlite3
from pathlib import Path

from app.store.contents import DRAWN
from app.store.copying import copy_verified
from app.store.durable import remove_with_journal
from app.store.looking import tables_of
from app.store.mending import KEYS, Mended
from app.store.refold import facts_by_number, write_facts
from app.store.schema import SCHEMA_VERSION
from app.store.workshop import bring_up, writing

_OTHERWISE = frozenset({"fact", "fold", "alembic_version"})


def fill_up(into: Path, backup: Path, mended: Mended) -> int:
    """Add the rows and facts that only a sound backup has, and give their number; what is there stays.

    Stand-ins for rows that the backup has make way for them. Raises StoreError.
    """
    added = 0
    copy = into.with_name(f"{into.name}.backup")
    try:
        copy_verified(backup, copy)
        bring_up(copy, SCHEMA_VERSION)
        with writing(into, copy) as connection:
            _take_back_stand_ins(connection, mended)
            for table in sorted(tables_of(connection) - _OTHERWISE):
                added += _add_rows(connection, table)
            _drop_needless_stand_ins(connection, mended)
            for run_id in _differing_runs(connection):
                added += _add_facts(connection, run_id)
    finally:
        remove_with_journal(copy)
    return added


def _take_back_stand_ins(connection: sqlite3.Connection, mended: Mended) -> None:
    """Let go of the stand-ins for rows that the backup has."""
    for table, keys in mended.stand_ins.items():
        name = KEYS[table]
        for key in tuple(keys):
            if connection.execute(f"SELECT 1 FROM backup.{table} WHERE {name} = ?", (key,)).fetchone():  # noqa: S608
                connection.execute(f"DELETE FROM main.{table} WHERE {name} = ?", (key,))  # noqa: S608
                keys.remove(key)


def _drop_needless_stand_ins(connection: sqlite3.Connection, mended: Mended) -> None:
    """Let go of the stand-ins that no run needs any more."""
    for table in ("athlete", "plan", "prescription"):
        name = KEYS[table]
        for key in tuple(mended.stand_ins[table]):
            needed = f"SELECT 1 FROM run WHERE {table}_{name} = ?"  # noqa: S608
            if not connection.execute(needed, (key,)).fetchone():
                connection.execute(f"DELETE FROM main.{table} WHERE {name} = ?", (key,))  # noqa: S608
                mended.stand_ins[table].remove(key)


def _add_rows(connection: sqlite3.Connection, table: str) -> int:
    columns = connection.execute("SELECT name FROM pragma_table_info(?)", (table,))
    names = ", ".join(f'"{name}"' for (name,) in columns.fetchall())
    words = f'INSERT OR IGNORE INTO main."{table}" ({names}) SELECT {names} FROM backup."{table}"'  # noqa: S608
    added = connection.execute(words).rowcount
    return 0 if table in DRAWN else added


def _differing_runs(connection: sqlite3.Connection) -> list[bytes]:
    """The runs of which the backup has rows of facts that are not the same here."""
    query = """
        SELECT run_id FROM (
            SELECT run_id, first_number, last_number, body FROM backup.fold
            EXCEPT SELECT run_id, first_number, last_number, body FROM main.fold
        ) UNION SELECT run_id FROM (
            SELECT run_id, number, body FROM backup.fact EXCEPT SELECT run_id, number, body FROM main.fact
        )
    """
    return [run_id for (run_id,) in connection.execute(query).fetchall()]


def _add_facts(connection: sqlite3.Connection, run_id: bytes) -> int:
    """Give a run the facts that only the backup has; gives their number."""
    ours = facts_by_number(connection, run_id)
    both = facts_by_number(connection, run_id, "backup") | ours
    if len(both) > len(ours):
        write_facts(connection, run_id, both)
    return len(both) - len(ours)
