"""What the disk says, as a sentence; what a bug says, as it is."""

import errno
import sqlite3
from pathlib import Path

import pytest
from sqlalchemy.exc import OperationalError

from app.domain.errors import StoreError
from app.store.troubles import in_plain_words

PATH = Path("/data/{odd}/record.db")


def of_sqlite(code: int) -> sqlite3.OperationalError:
    error = sqlite3.OperationalError("as SQLite says it")
    error.sqlite_errorcode = code
    return error


@pytest.mark.parametrize(
    ("code", "words"),
    [
        (sqlite3.SQLITE_BUSY, "in use by another program"),
        (sqlite3.SQLITE_BUSY_RECOVERY, "in use by another program"),
        (sqlite3.SQLITE_READONLY, "read-only"),
        (sqlite3.SQLITE_READONLY_DIRECTORY, "read-only"),
        (sqlite3.SQLITE_READONLY_DBMOVED, "moved or deleted"),
        (sqlite3.SQLITE_CANTOPEN, "cannot be opened"),
        (sqlite3.SQLITE_CORRUPT, "is damaged"),
        (sqlite3.SQLITE_CORRUPT_INDEX, "is damaged"),
        (sqlite3.SQLITE_NOTADB, "not a database of this program"),
        (sqlite3.SQLITE_FULL, "is full"),
        (sqlite3.SQLITE_IOERR_FSYNC, "did not read or write"),
        (sqlite3.SQLITE_CONSTRAINT_FOREIGNKEY, "run being recorded is not in"),
    ],
)
def test_what_sqlite_says_becomes_a_sentence_that_names_the_file(code: int, words: str) -> None:
    for error in (of_sqlite(code), OperationalError("INSERT", {}, of_sqlite(code))):
        with pytest.raises(StoreError, match=words) as caught, in_plain_words(PATH):
            raise error
        assert str(PATH) in str(caught.value)
        assert "as SQLite says it" not in str(caught.value)
        assert caught.value.__cause__ is error


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (errno.EACCES, "read-only"),
        (errno.EROFS, "read-only"),
        (errno.ENOSPC, "is full"),
        (errno.EIO, "did not read or write"),
        (errno.ENAMETOOLONG, "cannot be opened"),
    ],
)
def test_what_the_disk_says_becomes_a_sentence(number: int, words: str) -> None:
    with pytest.raises(StoreError, match=words), in_plain_words(PATH):
        raise OSError(number, "as the system says it")


@pytest.mark.parametrize("code", [sqlite3.SQLITE_ERROR, sqlite3.SQLITE_CONSTRAINT_UNIQUE])
def test_a_bug_passes_as_it_is(code: int) -> None:
    for error in (of_sqlite(code), OperationalError("INSERT", {}, of_sqlite(code))):
        with pytest.raises(type(error)), in_plain_words(PATH):
            raise error
    with pytest.raises(KeyError), in_plain_words(PATH):
        raise KeyError
