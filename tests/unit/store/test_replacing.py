"""Another file in a database's place: in one step, the old one kept, no journal played into the new."""

import os
import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from app.domain.errors import StoreError
from app.store import replacing
from app.store.durable import journal_of
from app.store.replacing import put_instead, set_aside
from tests.filled import facts_in, fill, invented_runs, spoil
from tests.torn import leave_unfinished_write

RUNS = invented_runs(3)
AT = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
ASIDE = "record.db-set_aside/2026-03-02T17-30-00Z.db"


@pytest.fixture
def record(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    fill(path, RUNS)
    return path


@pytest.fixture
def part(tmp_path: Path) -> Path:
    path = tmp_path / "part"
    fill(path, RUNS[:1])
    return path


def files(folder: Path) -> list[str]:
    return sorted(path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file())


def count(path: Path) -> int:
    return len(facts_in(path))


def test_the_new_file_is_in_place_and_the_old_one_aside(record: Path, part: Path) -> None:
    aside = put_instead(part, record, AT)
    assert aside == record.parent / ASIDE
    assert (count(record), count(aside)) == (1, 3)
    assert files(record.parent) == ["record.db", ASIDE]
    assert aside.parent.stat().st_mode & 0o777 == 0o700


def test_setting_aside_leaves_the_place_empty(record: Path) -> None:
    assert set_aside(record, AT) == record.parent / ASIDE
    assert files(record.parent) == [ASIDE]


def test_a_second_one_of_the_same_moment_does_not_take_the_place_of_the_first(
    record: Path, part: Path
) -> None:
    put_instead(part, record, AT)
    fill(part, RUNS[:2])
    put_instead(part, record, AT)
    assert files(record.parent) == ["record.db", ASIDE.replace("Z.db", "Z-2.db"), ASIDE]
    assert count(record.parent / ASIDE) == 3


def test_where_nothing_stood_nothing_is_set_aside(record: Path, part: Path) -> None:
    record.unlink()
    assert put_instead(part, record, AT) is None
    assert set_aside(record.with_name("none.db"), AT) is None
    assert files(record.parent) == ["record.db"]


def test_an_unfinished_write_is_not_played_into_the_new_file(record: Path, part: Path) -> None:
    leave_unfinished_write(record)
    expected = facts_in_copy(part)
    put_instead(part, record, AT)
    assert facts_in(record) == expected
    assert count(record.parent / ASIDE) == 3


def facts_in_copy(path: Path) -> dict[str, object]:
    return dict(facts_in(path))


def test_the_journal_of_a_file_that_cannot_be_opened_goes_with_it(record: Path, part: Path) -> None:
    leave_unfinished_write(record)
    spoil(record, 1, seed=1)
    journal = journal_of(record).read_bytes()
    journal_of(record).write_bytes(b"\0" * 8 + journal[8:])
    put_instead(part, record, AT)
    assert not journal_of(record).exists()
    assert count(record) == 1
    assert files(record.parent) == ["record.db", ASIDE, f"{ASIDE}-journal"]


def test_a_journal_without_its_database_is_not_played_into_the_new_file(record: Path, part: Path) -> None:
    leave_unfinished_write(record)
    record.unlink()
    put_instead(part, record, AT)
    assert not journal_of(record).exists()
    assert count(record) == 1


def test_a_database_in_use_stays_in_place(record: Path, part: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(replacing, "WAIT_S", 0)
    with closing(sqlite3.connect(record, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        for change in (lambda: put_instead(part, record, AT), lambda: set_aside(record, AT)):
            with pytest.raises(StoreError, match="in use by another program"):
                change()
        other.execute("ROLLBACK")
    assert files(record.parent) == ["part", "record.db"]
    assert count(record) == 3


def test_there_is_a_database_in_place_at_every_moment(
    record: Path, part: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    seen: list[bool] = []
    for owner, name in ((os, "link"), (os, "fsync"), (Path, "replace"), (Path, "unlink")):
        monkeypatch.setattr(owner, name, _watched(getattr(owner, name), record, seen))
    put_instead(part, record, AT)
    assert len(seen) >= 4
    assert all(seen)


def _watched(done: object, record: Path, seen: list[bool]) -> object:
    def watched(*arguments: object, **named: object) -> object:
        seen.append(record.exists())
        result = done(*arguments, **named)  # type: ignore[operator]
        seen.append(record.exists())
        return result

    return watched


def test_a_disk_without_second_names_serves_too(
    record: Path, part: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def cannot(*_names: object) -> None:
        raise OSError(95, "Operation not supported")

    monkeypatch.setattr(os, "link", cannot)
    put_instead(part, record, AT)
    assert (count(record), count(record.parent / ASIDE)) == (1, 3)


def test_a_folder_that_cannot_be_made_leaves_the_database_in_place(record: Path, part: Path) -> None:
    (record.parent / "record.db-set_aside").write_text("mine")
    with pytest.raises(StoreError, match=r"could not be set aside"):
        put_instead(part, record, AT)
    assert count(record) == 3
