"""Files and folders that stay: private, and on the disk before their name is."""

import os
import stat
from collections.abc import Iterator
from pathlib import Path

import pytest

from app.store.durable import (
    journal_of,
    make_private_file,
    make_private_folder,
    part_beside,
    put_in_place,
    remove_with_journal,
)


def mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


@pytest.fixture
def _open_handed() -> Iterator[None]:
    """A mask that takes no right away."""
    before = os.umask(0)
    yield
    os.umask(before)


@pytest.mark.usefixtures("_open_handed")
def test_what_is_made_is_its_owners_alone(tmp_path: Path) -> None:
    folder = tmp_path / "one" / "two"
    make_private_folder(folder)
    make_private_file(folder / "file")
    assert (mode(folder), mode(folder / "file")) == (0o700, 0o600)


def test_a_folder_that_is_there_keeps_its_mode(tmp_path: Path) -> None:
    tmp_path.chmod(0o755)
    make_private_folder(tmp_path)
    assert mode(tmp_path) == 0o755


def test_a_new_file_takes_the_place_of_an_old_one_and_follows_no_link(tmp_path: Path) -> None:
    other, path = tmp_path / "other", tmp_path / "file"
    other.write_text("kept")
    path.symlink_to(other)
    make_private_file(path)
    assert (path.is_symlink(), path.read_bytes(), other.read_text()) == (False, b"", "kept")


def test_content_is_on_the_disk_before_the_name_and_the_name_before_the_call_returns(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    done: list[str] = []
    sync, replace = os.fsync, Path.replace

    def seen_sync(descriptor: int) -> None:
        done.append("folder" if stat.S_ISDIR(os.fstat(descriptor).st_mode) else "file")
        sync(descriptor)

    def seen_replace(path: Path, target: Path) -> Path:
        done.append("name")
        return replace(path, target)

    monkeypatch.setattr(os, "fsync", seen_sync)
    monkeypatch.setattr(Path, "replace", seen_replace)
    part = tmp_path / "part"
    part.write_text("new")
    put_in_place(part, tmp_path / "whole")
    assert done == ["file", "name", "folder"]
    assert [path.name for path in tmp_path.iterdir()] == ["whole"]


def test_a_part_left_unfinished_is_taken_away_with_its_journal(tmp_path: Path) -> None:
    with part_beside(tmp_path / "record.db") as part:
        assert part.parent == tmp_path
        part.touch()
        journal_of(part).touch()
    assert list(tmp_path.iterdir()) == []


def test_taking_away_what_is_not_there_is_no_trouble(tmp_path: Path) -> None:
    remove_with_journal(tmp_path / "nothing")
