"""Looking into a database file of any schema without changing what is in it."""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from app.store.schema import APPLICATION_ID, SCHEMA_VERSION
from app.store.troubles import in_plain_words, is_folder, missing, newer, not_ours

WAIT_S = 5.0
"""How long a file that another program is writing to is waited for."""

_PRAGMAS = (
    "PRAGMA query_only = ON",
    "PRAGMA cell_size_check = ON",
    "PRAGMA trusted_schema = OFF",
    "PRAGMA temp_store = MEMORY",
)


@contextmanager
def looking_at(path: Path, *, wait_s: float = WAIT_S) -> Iterator[sqlite3.Connection]:
    """A connection within a transaction that sees a database as it is at its first query.

    An unfinished write is taken back first, as on every opening. Raises NewerStoreError, and StoreError
    where the file is none of ours or cannot be read.
    """
    with in_plain_words(path):
        if path.is_dir():
            raise is_folder(path)
        if not path.exists():
            raise missing(path)
        with closing(_connected(path, wait_s)) as connection:
            connection.execute("BEGIN")
            connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()
            if number(connection, "PRAGMA application_id") != APPLICATION_ID:
                raise not_ours(path)
            version = number(connection, "PRAGMA user_version")
            if version > SCHEMA_VERSION:
                raise newer(path, version)
            yield connection


def _connected(path: Path, wait_s: float) -> sqlite3.Connection:
    mode = "rw" if os.access(path, os.W_OK) and os.access(path.parent, os.W_OK) else "ro"
    uri = f"{path.absolute().as_uri()}?mode={mode}"
    connection = sqlite3.connect(uri, uri=True, timeout=wait_s, isolation_level=None)
    try:
        for pragma in _PRAGMAS:
            connection.execute(pragma)
    except sqlite3.Error:
        connection.close()
        raise
    return connection


def number(connection: sqlite3.Connection, query: str) -> int:
    """The one number that a query gives, 0 where it gives nothing."""
    found = connection.execute(query).fetchone()
    return 0 if found is None or found[0] is None else int(found[0])


def tables_of(connection: sqlite3.Connection) -> frozenset[str]:
    """The names of the tables that a database has."""
    return frozenset(
        name for (name,) in connection.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")
    )
