"""The record where it may not be written, and the record that several programs want at once."""

import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from app.domain.errors import StoreError
from app.store.database import open_database

ROOT = Path(__file__).parents[2]
SOMEBODY = 12_345


@contextmanager
def without_privileges(*owned: Path) -> Iterator[None]:
    """Be nobody special for a while, the owner of some files: an administrator may write everywhere."""
    if os.geteuid() != 0:
        yield
        return
    for path in owned:
        os.chown(path, SOMEBODY, SOMEBODY)
    os.seteuid(SOMEBODY)
    try:
        yield
    finally:
        os.seteuid(0)


@pytest.fixture
def record() -> Iterator[Path]:
    """A database in a folder that anybody may enter."""
    folder = Path(tempfile.mkdtemp())
    folder.chmod(0o755)
    path = folder / "record.db"
    open_database(path).close()
    yield path
    folder.chmod(0o755)
    shutil.rmtree(folder)


def test_a_file_in_a_read_only_folder_cannot_be_opened_to_be_written(record: Path) -> None:
    record.parent.chmod(0o555)
    with (
        without_privileges(record.parent, record),
        pytest.raises(StoreError, match="file or its folder is read-only"),
    ):
        open_database(record)


def test_a_file_in_a_read_only_folder_can_be_read(record: Path) -> None:
    record.parent.chmod(0o555)
    with without_privileges(record.parent, record), open_database(record, read_only=True) as database:
        assert database.queries.athletes() == ()


def test_a_read_only_file_cannot_be_opened_to_be_written(record: Path) -> None:
    record.chmod(0o400)
    before = record.read_bytes()
    with (
        without_privileges(record.parent, record),
        pytest.raises(StoreError, match="file or its folder is read-only"),
    ):
        open_database(record)
    assert record.read_bytes() == before


def test_no_file_is_made_in_a_read_only_folder(record: Path) -> None:
    record.parent.chmod(0o555)
    with without_privileges(record.parent), pytest.raises(StoreError, match="is read-only"):
        open_database(record.parent / "data" / "other.db")
    assert list(record.parent.iterdir()) == [record]


def test_a_folder_that_may_not_be_entered_is_said(record: Path) -> None:
    record.parent.chmod(0o000)
    with without_privileges(record.parent), pytest.raises(StoreError, match=r"read-only|cannot be opened"):
        open_database(record)


def test_programs_that_make_one_database_at_once_all_get_it(tmp_path: Path) -> None:
    path = tmp_path / "record.db"
    script = (
        "import sys; from pathlib import Path; from app.store.database import open_database; "
        "print('ready', flush=True); sys.stdin.readline(); "
        "database = open_database(Path(sys.argv[1])); print(database.queries.athletes()); database.close()"
    )
    programs = [
        subprocess.Popen(
            [sys.executable, "-c", script, str(path)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
            cwd=ROOT,
        )
        for _ in range(3)
    ]
    for program in programs:
        assert program.stdout is not None
        assert program.stdout.readline() == "ready\n"
    for program in programs:
        assert program.stdin is not None
        program.stdin.write("go\n")
        program.stdin.flush()
    said = [program.communicate(timeout=60) for program in programs]
    assert [(program.returncode, *words) for program, words in zip(programs, said, strict=True)] == [
        (0, "()\n", "")
    ] * 3
