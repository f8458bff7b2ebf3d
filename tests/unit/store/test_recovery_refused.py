"""What is not recovered: no record, a newer one, one in use, and a backup that is damaged too."""

import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from app.domain.errors import NewerStoreError, StoreError
from app.store.backup import write_backup
from app.store.recovery import recover
from app.store.schema import SCHEMA_VERSION
from tests.filled import change, fill, invented_runs, page_of, spoil

RUNS = invented_runs(60)
AT = datetime(2026, 6, 1, tzinfo=UTC)


@pytest.fixture
def record(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    fill(path, RUNS)
    return path


def saved(record: Path, backup: Path | None = None) -> None:
    recover(record, record.with_name("saved.db"), backup, at=AT)


def test_what_is_no_record_is_not_made_one(tmp_path: Path) -> None:
    path = tmp_path / "notes.txt"
    path.write_text("Step-down, three sets. " * 1_000)
    with pytest.raises(StoreError, match="Nothing of the database could be read"):
        saved(path)
    assert [each.name for each in tmp_path.iterdir()] == ["notes.txt"]


def test_another_programs_database_is_not_made_a_record(tmp_path: Path) -> None:
    path = tmp_path / "stock.db"
    change(path, "CREATE TABLE balls (size INTEGER)")
    change(path, "INSERT INTO balls VALUES (2)")
    with pytest.raises(StoreError, match="Nothing of the database could be read"):
        saved(path)


def test_a_newer_record_is_refused(record: Path) -> None:
    change(record, f"PRAGMA user_version = {SCHEMA_VERSION + 1}")
    with pytest.raises(NewerStoreError):
        saved(record)
    assert not record.with_name("saved.db").exists()


def test_a_backup_that_is_damaged_too_adds_nothing_and_is_said(record: Path, tmp_path: Path) -> None:
    backup = write_backup(record, tmp_path / "backups", AT).path
    spoil(backup, page_of(backup, "fold"), seed=3)
    with pytest.raises(StoreError, match=rf"{backup.name} is damaged"):
        saved(record, backup)
    assert sorted(path.name for path in record.parent.iterdir()) == ["backups", "record.db"]


def test_a_record_in_use_is_not_touched(record: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("app.store.replacing.WAIT_S", 0)
    with closing(sqlite3.connect(record, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(StoreError, match="in use by another program"):
            saved(record)
        other.execute("ROLLBACK")
