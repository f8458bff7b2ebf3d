"""What can go wrong with a database file, in sentences that say what to do."""

import errno
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy.exc import DBAPIError

from app.domain.errors import DamagedStoreError, NewerStoreError, StoreError
from app.store.schema import SCHEMA_VERSION

_IN_USE = (
    "The database {path} is in use by another program. Close the other window or program that has it open, "
    "then try again."
)
_READ_ONLY = (
    "The database {path} cannot be written: the file or its folder is read-only. Allow writing there, or "
    "choose another place with --database."
)
_NO_ACCESS = (
    "The database {path} cannot be opened. See whether its folder is there and may be read and written, or "
    "choose another place with --database."
)
_DAMAGED = (
    "The database {path} is damaged. Do not delete it: `pacewright recover` saves what can still be read of "
    "it and of its newest backup, and `pacewright restore` lists the backups."
)
_NOT_OURS = (
    "{path} is not a database of this program, and was left as it is. Choose another file with --database; "
    "if it was one, `pacewright recover` saves what can still be read of it."
)
_FULL = (
    "The disk that holds the database {path} is full. Free some room, then try again; what was saved before "
    "is safe."
)
_DISK = (
    "The disk that holds the database {path} did not read or write as asked. See whether it is still "
    "connected, then try again."
)
_GONE = (
    "The database {path} was moved or deleted while it was open. Put it back, or close the program and open "
    "it anew."
)
_NEWER = (
    "The database {path} was made by a newer version of Pacewright: its schema is {version}, this version "
    "knows {known}. Install the newer version, or choose another file with --database. Nothing was changed."
)
_RUN_GONE = "The run being recorded is not in the database {path}. Begin a new run."
_FOLDER = "{path} is a folder. Name a file in it, such as {path}/pacewright.db."
_MISSING = "There is no database {path}. See whether the name is right."

_BY_EXTENDED_CODE = {
    sqlite3.SQLITE_READONLY_DBMOVED: _GONE,
    sqlite3.SQLITE_CONSTRAINT_FOREIGNKEY: _RUN_GONE,
}
_BY_CODE = {
    sqlite3.SQLITE_BUSY: _IN_USE,
    sqlite3.SQLITE_LOCKED: _IN_USE,
    sqlite3.SQLITE_READONLY: _READ_ONLY,
    sqlite3.SQLITE_PERM: _NO_ACCESS,
    sqlite3.SQLITE_CANTOPEN: _NO_ACCESS,
    sqlite3.SQLITE_CORRUPT: _DAMAGED,
    sqlite3.SQLITE_NOTADB: _NOT_OURS,
    sqlite3.SQLITE_FULL: _FULL,
    sqlite3.SQLITE_IOERR: _DISK,
}
_BY_ERRNO = {
    errno.EACCES: _READ_ONLY,
    errno.EPERM: _READ_ONLY,
    errno.EROFS: _READ_ONLY,
    errno.ENOSPC: _FULL,
    errno.EDQUOT: _FULL,
    errno.EIO: _DISK,
}


@contextmanager
def in_plain_words(path: Path) -> Iterator[None]:
    """Turn what the disk or SQLite says about a file into a StoreError; bugs pass through as they are."""
    try:
        yield
    except DBAPIError as error:
        sentence = _of_sqlite(error.orig)
        if sentence is None:
            raise
        raise _said(sentence, path) from error
    except sqlite3.Error as error:
        sentence = _of_sqlite(error)
        if sentence is None:
            raise
        raise _said(sentence, path) from error
    except OSError as error:
        raise StoreError(_BY_ERRNO.get(error.errno or 0, _NO_ACCESS).format(path=path)) from error


def damaged(path: Path) -> DamagedStoreError:
    """What the file holds cannot be read."""
    return DamagedStoreError(_DAMAGED.format(path=path))


def gone(path: Path) -> StoreError:
    """The file that was open is not there any more."""
    return StoreError(_GONE.format(path=path))


def in_use(path: Path) -> StoreError:
    """Another program holds the file."""
    return StoreError(_IN_USE.format(path=path))


def not_ours(path: Path) -> StoreError:
    """The file is a database, of another program."""
    return StoreError(_NOT_OURS.format(path=path))


def newer(path: Path, version: int) -> NewerStoreError:
    """The file has a schema of the future."""
    return NewerStoreError(_NEWER.format(path=path, version=version, known=SCHEMA_VERSION))


def is_folder(path: Path) -> StoreError:
    """The path names a folder."""
    return StoreError(_FOLDER.format(path=path))


def missing(path: Path) -> StoreError:
    """There is no such file."""
    return StoreError(_MISSING.format(path=path))


def _said(sentence: str, path: Path) -> StoreError:
    kind = DamagedStoreError if sentence is _DAMAGED else StoreError
    return kind(sentence.format(path=path))


def _of_sqlite(error: BaseException | None) -> str | None:
    code = getattr(error, "sqlite_errorcode", None)
    if code is None:
        return None
    return _BY_EXTENDED_CODE.get(code) or _BY_CODE.get(code & 0xFF)
