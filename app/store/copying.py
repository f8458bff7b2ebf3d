"""A verified copy of a database, made while it may be in use."""

import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from app.domain.errors import DamagedStoreError, StoreError
from app.store.durable import make_private_file, remove_with_journal
from app.store.looking import looking_at, number
from app.store.troubles import damaged

SPARE_BYTES = 16 << 20
"""Left free on the disk, so that a copy never takes the room that the next rep needs."""


def copy_verified(database: Path, part: Path) -> None:
    """Copy a database, whole as it is at one moment, into a new file, and check the copy.

    What stood at `part` is written over; nothing stands there when this fails. Raises StoreError:
    DamagedStoreError where the copy fails the check, because the original then does too.
    """
    try:
        with looking_at(database) as source:
            _see_to_room(source, part.parent)
            with saying_which_copy(part.parent):
                make_private_file(part)
                _copy(source, part)
        if not is_sound(part):
            raise damaged(database)
    except BaseException:
        remove_with_journal(part)
        raise


def is_sound(path: Path) -> bool:
    """Whether a database holds together and refers to nothing that is not there. Raises StoreError."""
    try:
        with looking_at(path) as connection:
            whole = connection.execute("PRAGMA integrity_check(1)").fetchone()
            stray = connection.execute("PRAGMA foreign_key_check").fetchone()
    except DamagedStoreError:
        return False
    return whole == ("ok",) and stray is None


@contextmanager
def saying_which_copy(folder: Path) -> Iterator[None]:
    """Turn what the disk says while a copy is written into a StoreError that names its folder."""
    try:
        yield
    except (OSError, sqlite3.Error) as error:
        said = getattr(error, "strerror", None) or str(error)
        raise StoreError(
            f"No copy of the database could be written in {folder} ({said}). See whether the folder may be "
            "written and has room. The database itself is as it was."
        ) from error


def _copy(source: sqlite3.Connection, part: Path) -> None:
    uri = f"{part.absolute().as_uri()}?mode=rw"
    with closing(sqlite3.connect(uri, uri=True, timeout=0, isolation_level=None)) as target:
        target.execute("PRAGMA fullfsync = ON")
        source.backup(target)


def _see_to_room(source: sqlite3.Connection, folder: Path) -> None:
    size = number(source, "PRAGMA page_count") * number(source, "PRAGMA page_size")
    with saying_which_copy(folder):
        free = shutil.disk_usage(folder).free
    if free < size + SPARE_BYTES:
        raise StoreError(
            f"There is too little room in {folder} for a copy of the database: {_mib(size + SPARE_BYTES)} "
            f"MiB are wanted and {_mib(free)} MiB are free. Free some room, then try again."
        )


def _mib(size: int) -> int:
    return -(-size // (1 << 20))
