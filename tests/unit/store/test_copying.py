"""A copy counts once it was checked, holds the database as it was at one moment, and harms nothing."""

import shutil
import sqlite3
import stat
from collections import namedtuple
from contextlib import closing
from functools import partial
from pathlib import Path

import pytest

from app.domain.errors import DamagedStoreError, StoreError
from app.store import copying
from app.store.copying import copy_verified, is_sound
from app.store.looking import looking_at
from tests.filled import change, facts_in, fill, invented_runs, page_of, spoil
from tests.torn import leave_unfinished_write

RUNS = invented_runs(12)


@pytest.fixture(scope="module")
def _filled(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("filled") / "record.db"
    fill(path, RUNS)
    return path


@pytest.fixture
def record(_filled: Path, tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    shutil.copy(_filled, path)
    return path


@pytest.fixture
def part(tmp_path: Path) -> Path:
    folder = tmp_path / "copies"
    folder.mkdir()
    return folder / "copy.part"


def dumped(path: Path) -> list[str]:
    """Everything in a database, by SQLite's own listing of it."""
    with closing(sqlite3.connect(path)) as raw:
        return list(raw.iterdump())


def test_a_copy_holds_what_the_database_holds(record: Path, part: Path) -> None:
    copy_verified(record, part)
    assert dumped(part) == dumped(record)
    with closing(sqlite3.connect(part)) as raw:
        marks = [raw.execute(f"PRAGMA {name}").fetchone() for name in ("application_id", "user_version")]
        assert raw.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
    with closing(sqlite3.connect(record)) as raw:
        assert marks == [
            raw.execute(f"PRAGMA {name}").fetchone() for name in ("application_id", "user_version")
        ]


def test_a_copy_is_its_owners_alone(record: Path, part: Path) -> None:
    record.chmod(0o644)
    copy_verified(record, part)
    assert stat.S_IMODE(part.stat().st_mode) == 0o600


def test_copying_leaves_the_database_as_it_was(record: Path, part: Path) -> None:
    before = record.read_bytes()
    copy_verified(record, part)
    assert record.read_bytes() == before


def test_a_copy_has_nothing_of_a_write_under_way(record: Path, part: Path) -> None:
    with closing(sqlite3.connect(record, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        other.execute("INSERT INTO plan VALUES (x'00', 'half', 'half')")
        copy_verified(record, part)
        other.execute("COMMIT")
    with closing(sqlite3.connect(part)) as raw:
        assert raw.execute("SELECT count(*) FROM plan WHERE title = 'half'").fetchone() == (0,)


def test_a_copy_of_a_torn_record_is_of_the_record_before_it_was_torn(record: Path, part: Path) -> None:
    before = dumped(record)
    leave_unfinished_write(record)
    copy_verified(record, part)
    assert dumped(part) == before


def test_what_stood_in_the_place_of_the_copy_is_no_part_of_it(record: Path, part: Path) -> None:
    part.write_bytes(b"left from before" * 100_000)
    copy_verified(record, part)
    assert dumped(part) == dumped(record)


@pytest.mark.parametrize("table", ["fold", "run", "bout_record", "sqlite_autoindex_plan_1"])
def test_a_damaged_database_has_no_copy_that_counts(record: Path, part: Path, table: str) -> None:
    spoil(record, page_of(record, table), seed=1)
    with pytest.raises(DamagedStoreError, match=rf"{record.name} is damaged"):
        copy_verified(record, part)
    assert list(part.parent.iterdir()) == []


def test_a_database_with_references_to_nothing_has_no_copy_that_counts(record: Path, part: Path) -> None:
    change(record, "DELETE FROM athlete WHERE name = 'Kaya'")
    with pytest.raises(DamagedStoreError):
        copy_verified(record, part)
    assert list(part.parent.iterdir()) == []


def test_a_copy_that_was_spoiled_while_it_was_written_does_not_count(
    record: Path, part: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    copy = copying._copy

    def spoiling(source: sqlite3.Connection, target: Path) -> None:
        copy(source, target)
        spoil(target, page_of(target, "fold"), seed=2)

    monkeypatch.setattr(copying, "_copy", spoiling)
    with pytest.raises(DamagedStoreError):
        copy_verified(record, part)
    assert list(part.parent.iterdir()) == []


def test_a_copy_leaves_room_for_the_reps_to_come(
    record: Path, part: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    usage = namedtuple("usage", "total used free")
    monkeypatch.setattr(shutil, "disk_usage", lambda _folder: usage(1 << 30, 1 << 30, 16 << 20))
    with pytest.raises(StoreError, match=r"too little room in .*: 17 MiB are wanted and 16 MiB are free"):
        copy_verified(record, part)
    assert list(part.parent.iterdir()) == []


def test_a_disk_that_fails_in_mid_copy_leaves_nothing_behind(
    record: Path, part: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(_source: sqlite3.Connection, target: Path) -> None:
        target.write_bytes(b"half")
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(copying, "_copy", fail)
    with pytest.raises(StoreError, match=r"No copy .* in .*copies \(No space left on device\)"):
        copy_verified(record, part)
    assert list(part.parent.iterdir()) == []


def test_a_folder_that_is_not_there_is_said(record: Path, tmp_path: Path) -> None:
    with pytest.raises(StoreError, match=r"No copy of the database could be written in .*nowhere"):
        copy_verified(record, tmp_path / "nowhere" / "copy")


def test_a_database_in_use_has_no_copy(record: Path, part: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(copying, "looking_at", partial(looking_at, wait_s=0))
    with closing(sqlite3.connect(record, isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(StoreError, match="in use by another program"):
            copy_verified(record, part)
        other.execute("ROLLBACK")
    assert list(part.parent.iterdir()) == []


def test_soundness_is_told_from_damage(record: Path) -> None:
    assert is_sound(record)
    spoil(record, page_of(record, "fold"), seed=3)
    assert not is_sound(record)


def test_every_fact_is_in_the_copy(record: Path, part: Path) -> None:
    copy_verified(record, part)
    assert facts_in(part) == {run.header.run_id: run.facts for run in RUNS}
