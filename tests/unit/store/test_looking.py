"""Looking into a database changes nothing in it and says plainly why it cannot."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from app.domain.errors import DamagedStoreError, NewerStoreError, StoreError
from app.store.looking import looking_at, number, tables_of
from app.store.schema import SCHEMA_VERSION
from tests.filled import change, fill, invented_runs, spoil
from tests.torn import leave_unfinished_write


@pytest.fixture
def record(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    fill(path, invented_runs(2))
    return path


def runs(path: Path) -> int:
    with looking_at(path) as connection:
        return number(connection, "SELECT count(*) FROM run")


def test_what_is_there_is_seen_and_cannot_be_changed(record: Path) -> None:
    with looking_at(record) as connection:
        assert "run" in tables_of(connection)
        with pytest.raises(sqlite3.OperationalError, match="readonly"):
            connection.execute("DELETE FROM fold")
    assert runs(record) == 2


def test_an_unfinished_write_is_taken_back_first(record: Path) -> None:
    whole = record.read_bytes()
    leave_unfinished_write(record)
    assert record.read_bytes() != whole
    assert runs(record) == 2
    assert record.read_bytes() == whole
    assert [path.name for path in record.parent.iterdir()] == ["record.db"]


def test_a_file_of_an_older_schema_is_looked_into_as_it_is(record: Path) -> None:
    change(record, "PRAGMA user_version = 1")
    assert runs(record) == 2


def test_a_newer_file_is_refused(record: Path) -> None:
    change(record, f"PRAGMA user_version = {SCHEMA_VERSION + 1}")
    with pytest.raises(NewerStoreError, match="newer version of Pacewright"):
        runs(record)


def test_another_programs_file_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "stock.db"
    change(path, "CREATE TABLE balls (size INTEGER)")
    with pytest.raises(StoreError, match="is not a database of this program"):
        runs(path)


def test_a_damaged_file_is_said_to_be_damaged(record: Path) -> None:
    with record.open("r+b") as file:
        file.seek(100)
        file.write(b"\xff" * 300)
    with pytest.raises(DamagedStoreError, match="pacewright recover"):
        runs(record)


def test_a_file_whose_header_is_gone_may_have_been_one(record: Path) -> None:
    spoil(record, 1)
    with pytest.raises(StoreError, match="if it was one, `pacewright recover`"):
        runs(record)


def test_a_folder_and_nothing_are_refused(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="is a folder"):
        runs(tmp_path)
    with pytest.raises(StoreError, match="There is no database"):
        runs(tmp_path / "nothing.db")


def test_a_file_in_use_is_refused_in_plain_words(record: Path) -> None:
    with closing(sqlite3.connect(record, isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(StoreError, match="in use by another program"), looking_at(record, wait_s=0):
            pass
        other.execute("ROLLBACK")
