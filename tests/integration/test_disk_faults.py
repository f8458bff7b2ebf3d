"""Calls to the disk fail during a session: it goes on, and all of it is in the record in the end."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from app.domain.errors import StoreError
from app.store.database import open_database
from tests.drills import NAME, calls_of_a_session, lead, lead_through
from tests.file_layer import FAULTS, Faults, faulty, reachable

ONCE, IN_A_ROW = 40, 8

pytestmark = pytest.mark.skipif(not reachable, reason="SQLite's file layer cannot be reached here")


@pytest.fixture(scope="module")
def faults() -> Iterator[Faults]:
    with faulty() as layer:
        yield layer


@pytest.fixture(scope="module")
def empty(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("empty") / NAME
    open_database(path).close()
    return path


def copied(empty: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(empty, tmp_path / NAME))


def test_whichever_call_fails_once_the_session_is_in_the_record_in_the_end(
    faults: Faults, empty: Path, tmp_path: Path
) -> None:
    calls = calls_of_a_session(copied(empty, tmp_path), faults)
    kinds = list(FAULTS.values())
    failed = set()
    for number in range(ONCE):
        at = 1 + number * calls // ONCE
        failed.add(lead_through(copied(empty, tmp_path), faults, at, kinds[number % len(kinds)]))
    assert {"pwrite64", "fcntl", "sync"} <= failed
    assert "" not in failed


def test_a_disk_that_fails_for_a_while_leaves_no_gap(faults: Faults, empty: Path, tmp_path: Path) -> None:
    calls = calls_of_a_session(copied(empty, tmp_path), faults)
    kinds = list(FAULTS.values())
    for number in range(IN_A_ROW):
        at = 1 + number * calls // IN_A_ROW
        path = copied(empty, tmp_path)
        assert lead_through(path, faults, at, kinds[number % len(kinds)], times=120)


def test_the_drill_finds_a_journal_that_gives_up(faults: Faults, empty: Path, tmp_path: Path) -> None:
    with open_database(copied(empty, tmp_path)) as database:
        faults.fail(60, FAULTS["full"])
        with pytest.raises(StoreError, match="is full"):
            lead(database.journal)
    faults.fail(0, 0)
