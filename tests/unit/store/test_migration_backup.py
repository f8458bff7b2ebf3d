"""A record is backed up before its schema is brought up to date, or it is not brought up to date."""

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from app.domain.errors import DamagedStoreError, NewerStoreError, StoreError
from app.store import database as opening
from app.store.backup import backups_in
from app.store.database import open_database
from app.store.link import Link
from app.store.migration import migrate
from app.store.places import backup_folder
from app.store.schema import SCHEMA_VERSION
from tests.filled import change, spoil
from tests.schemas import AT, record_of

OLDEST = 1


@pytest.fixture
def record(tmp_path: Path) -> Path:
    return Path(shutil.copyfile(record_of(OLDEST), tmp_path / "pacewright.db"))


def version(path: Path) -> int:
    with closing(sqlite3.connect(path)) as raw:
        return int(raw.execute("PRAGMA user_version").fetchone()[0])


def test_the_backup_is_there_before_the_first_step(record: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    seen: list[int] = []

    def look(link: Link) -> None:
        seen.extend(backup.schema for backup in backups_in(backup_folder(record)))
        migrate(link)

    monkeypatch.setattr(opening, "migrate", look)
    open_database(record, now=lambda: AT).close()
    assert seen == [OLDEST]
    assert version(record) == SCHEMA_VERSION


def test_without_a_backup_nothing_is_brought_up_to_date(record: Path) -> None:
    backup_folder(record).write_text("a file where the folder should be")
    before = record.read_bytes()
    with pytest.raises(StoreError, match="No copy of the database could be written"):
        open_database(record)
    assert record.read_bytes() == before


def test_a_damaged_record_is_not_brought_up_to_date(record: Path) -> None:
    spoil(record, 18, seed=1)
    before = record.read_bytes()
    with pytest.raises(DamagedStoreError):
        open_database(record)
    assert record.read_bytes() == before


def test_a_step_that_fails_leaves_the_record_and_its_backup(
    record: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(_link: Link) -> None:
        raise StoreError("The plug was pulled.")

    monkeypatch.setattr(opening, "migrate", fail)
    before = record.read_bytes()
    with pytest.raises(StoreError, match="plug"):
        open_database(record, now=lambda: AT)
    assert record.read_bytes() == before
    assert len(backups_in(backup_folder(record))) == 1


def test_opening_a_record_of_today_or_a_new_one_makes_no_backup(record: Path) -> None:
    open_database(record).close()
    shutil.rmtree(backup_folder(record))
    open_database(record).close()
    open_database(record.with_name("new.db")).close()
    assert not backup_folder(record).exists()
    assert not backup_folder(record.with_name("new.db")).exists()


def test_an_older_record_is_not_brought_up_to_date_by_reading(record: Path) -> None:
    before = record.read_bytes()
    with pytest.raises(StoreError, match="must be brought up to date"):
        open_database(record, read_only=True)
    assert record.read_bytes() == before
    assert not backup_folder(record).exists()


def test_a_newer_record_is_not_backed_up_either(record: Path) -> None:
    change(record, f"PRAGMA user_version = {SCHEMA_VERSION + 1}")
    with pytest.raises(NewerStoreError):
        open_database(record)
    assert not backup_folder(record).exists()
