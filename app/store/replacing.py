"""Another file in a database's place: the one that stood there is set aside, never deleted."""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from datetime import datetime
from pathlib import Path

from app.domain.errors import StoreError
from app.store.durable import journal_of, make_private_folder, put_in_place, sync_folder
from app.store.looking import WAIT_S
from app.store.places import aside_folder, free_place, moment_name
from app.store.troubles import in_use


def set_aside(database: Path, at: datetime) -> Path | None:
    """Move a database, and the journal of a write it did not finish, out of its place; gives the new path.

    None where there was none. Raises StoreError when it is in use or cannot be moved.
    """
    let_it_settle(database)
    with _saying_what_stays(database):
        aside = _keep_aside(database, at)
        database.unlink(missing_ok=True)
        _drop_journal(database)
    return aside


def put_instead(part: Path, database: Path, at: datetime) -> Path | None:
    """Put a finished file in a database's place, in one step; gives the path of the one set aside.

    None where there was none. Raises StoreError when it is in use or cannot be moved.
    """
    let_it_settle(database)
    with _saying_what_stays(database):
        aside = _keep_aside(database, at)
        _drop_journal(database)
        put_in_place(part, database)
    return aside


def let_it_settle(database: Path) -> None:
    """Take back an unfinished write, and see that nobody is at work on the database.

    Its journal would otherwise be played back into the file that comes in its place. A file too damaged to be
    opened stays as it is; its journal goes with it.
    """
    if not database.is_file():
        return
    uri = f"{database.absolute().as_uri()}?mode=rw"
    try:
        with closing(sqlite3.connect(uri, uri=True, timeout=WAIT_S, isolation_level=None)) as connection:
            connection.execute("BEGIN EXCLUSIVE")
            connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()
            connection.execute("ROLLBACK")
    except sqlite3.Error as error:
        if error.sqlite_errorcode & 0xFF in {sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED}:
            raise in_use(database) from error


def _keep_aside(database: Path, at: datetime) -> Path | None:
    """Give a database and its journal a second name out of the way, so that neither is ever without one."""
    if not database.exists():
        return None
    folder = aside_folder(database)
    make_private_folder(folder)
    aside = free_place(folder, moment_name(at), ".db")
    _name_too(database, aside)
    if journal_of(database).exists():
        _name_too(journal_of(database), journal_of(aside))
    sync_folder(folder)
    return aside


def _name_too(path: Path, other: Path) -> None:
    try:
        os.link(path, other)
    except OSError:
        path.rename(other)


def _drop_journal(database: Path) -> None:
    journal_of(database).unlink(missing_ok=True)
    sync_folder(database.parent)


@contextmanager
def _saying_what_stays(database: Path) -> Iterator[None]:
    try:
        yield
    except OSError as error:
        raise StoreError(
            f"{database} could not be set aside ({error.strerror}). See whether its folder may be written "
            "and has room, then try again."
        ) from error
