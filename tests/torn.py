"""A record as a power cut leaves it: half a transaction in the file, and the journal that takes it back."""

import os
import sqlite3
from contextlib import closing
from pathlib import Path

from app.store.durable import journal_of


def leave_unfinished_write(path: Path) -> None:
    """Write half of a transaction into a record, as if the program was gone before its end.

    The transaction deletes everything that a table holds and is larger than SQLite's cache, so that it
    reaches the file. Copies are put in the place of the originals, whose locks and rollback then hurt nobody.
    """
    half = path.with_name("half")
    with closing(sqlite3.connect(path, isolation_level=None)) as raw:
        raw.execute("PRAGMA cache_size = 1")
        raw.execute("PRAGMA cache_spill = 1")
        raw.execute("PRAGMA foreign_keys = OFF")
        raw.execute("BEGIN IMMEDIATE")
        for table in ("fold", "bout_record", "run"):
            raw.execute(f"DELETE FROM {table}")  # noqa: S608
        half.write_bytes(path.read_bytes())
        journal_of(half).write_bytes(journal_of(path).read_bytes())
        raw.execute("ROLLBACK")
    os.replace(half, path)  # noqa: PTH105
    os.replace(journal_of(half), journal_of(path))  # noqa: PTH105
