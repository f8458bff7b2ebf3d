"""The side file: private, without a name in it, only ever added to, and found again by the next start."""

import os
import stat
from pathlib import Path

import pytest

from app.store.side_file import SideFile, left_over, put_aside, side_files

DATABASE = Path("/home/ines/club/record.db")


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return tmp_path / "state" / "pacewright"


def test_nothing_is_made_before_there_is_something_to_keep(folder: Path) -> None:
    SideFile(folder, DATABASE).close()
    assert not folder.exists()


def test_the_file_is_its_owners_alone_and_its_name_says_nothing_of_anybody(folder: Path) -> None:
    side = SideFile(folder, DATABASE)
    side.write([b"one\n"])
    assert stat.S_IMODE(side.path.stat().st_mode) == 0o600
    assert stat.S_IMODE(folder.stat().st_mode) == 0o700
    assert not any(word in side.path.name for word in ("ines", "club", "record"))
    side.close()


def test_lines_are_added_and_on_the_disk_when_the_call_returns(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    synced: list[int] = []
    sync = os.fsync

    def note(descriptor: int) -> None:
        synced.append(descriptor)
        sync(descriptor)

    monkeypatch.setattr(os, "fsync", note)
    side = SideFile(folder, DATABASE)
    side.write([b"one\n", b"two\n"])
    before = len(synced)
    side.write([b"three\n"])
    assert len(synced) == before + 1
    assert side.path.read_bytes() == b"one\ntwo\nthree\n"
    side.close()


def test_after_a_write_that_failed_half_way_a_new_line_begins(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    side = SideFile(folder, DATABASE)
    write = os.write
    left = [3]

    def run_full(descriptor: int, data: memoryview) -> int:
        if not left:
            raise OSError(28, "full")
        return write(descriptor, data[: left.pop()])

    monkeypatch.setattr(os, "write", run_full)
    with pytest.raises(OSError, match="full"):
        side.write([b"first\n"])
    monkeypatch.setattr(os, "write", write)
    side.write([b"second\n"])
    assert side.path.read_bytes() == b"fir\nsecond\n"
    side.close()


def test_a_file_that_was_taken_away_is_noticed_and_made_anew(folder: Path) -> None:
    side = SideFile(folder, DATABASE)
    side.write([b"one\n"])
    side.path.unlink()
    with pytest.raises(FileNotFoundError, match="taken away"):
        side.write([b"two\n"])
    side.write([b"three\n"])
    assert side.path.read_bytes() == b"three\n"
    side.remove()
    assert not side.path.exists()


def test_files_of_other_databases_and_of_writers_alive_are_left_alone(folder: Path) -> None:
    assert left_over(folder, DATABASE) == ()
    writing, other = SideFile(folder, DATABASE), SideFile(folder, Path("/other.db"))
    for side in (writing, other):
        side.write([b"one\n"])
    assert side_files(folder, DATABASE) == (writing.path,)
    assert left_over(folder, DATABASE) == ()
    writing.close()
    assert left_over(folder, DATABASE) == (writing.path,)
    aside = put_aside(writing.path)
    assert left_over(folder, DATABASE) == ()
    assert side_files(folder, DATABASE) == (aside,)
    other.close()
