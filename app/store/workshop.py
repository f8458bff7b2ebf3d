"""A new database file in the making, which nobody else has open yet."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from app.store.link import Link
from app.store.looking import WAIT_S
from app.store.migration import migrate
from app.store.troubles import in_plain_words


def bring_up(path: Path, version: int) -> None:
    """Apply the steps that a file lacks up to a schema. Raises StoreError."""
    link = Link(path, read_only=False, wait_s=WAIT_S)
    try:
        migrate(link, version)
    finally:
        link.close()


@contextmanager
def writing(path: Path, beside: Path | None = None) -> Iterator[sqlite3.Connection]:
    """One transaction that checks no references; the database `beside` is attached to it as `backup`."""
    uri = f"{path.absolute().as_uri()}?mode=rw"
    with (
        in_plain_words(path),
        closing(sqlite3.connect(uri, uri=True, timeout=WAIT_S, isolation_level=None)) as connection,
    ):
        for pragma in ("foreign_keys = OFF", "secure_delete = ON", "temp_store = MEMORY", "fullfsync = ON"):
            connection.execute(f"PRAGMA {pragma}")
        if beside is not None:
            connection.execute("ATTACH ? AS backup", (f"{beside.absolute().as_uri()}?mode=ro",))
        connection.execute("BEGIN IMMEDIATE")
        yield connection
        connection.execute("COMMIT")
