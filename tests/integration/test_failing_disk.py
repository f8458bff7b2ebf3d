"""The record is locked, moved away or replaced in mid-session: the session goes on and nothing is lost."""

import shutil
import sqlite3
from collections.abc import Iterator
from pathlib import Path

import pytest

from app.domain.errors import StoreError
from app.domain.prescription import prescriptions
from app.store.database import Database, open_database
from app.store.side_file import side_files
from app.store.steady import SteadyJournal
from tests.drills import HEADER, NAME, RUN, TIMELINE, facts_held, session


class Desk:
    """A session being written, and what was told of it."""

    def __init__(self, folder: Path) -> None:
        self.path, self.spare = folder / "data" / NAME, folder / "state"
        self.database: Database = open_database(self.path, spare=self.spare)
        self.said: list[str | None] = []
        self.journal: SteadyJournal = self.database.steadily(self.said.append)
        self.journal.open_run(HEADER, prescriptions(TIMELINE))
        self.written = 0

    def write(self, number: int) -> None:
        for fact in session()[self.written : self.written + number]:
            self.journal.append(RUN, self.written, [fact])
            self.written += 1

    @property
    def beside(self) -> int:
        return len(side_files(self.spare, self.path))


@pytest.fixture
def desk(tmp_path: Path) -> Iterator[Desk]:
    made = Desk(tmp_path)
    made.write(4)
    yield made
    made.journal.close()
    made.database.close()


def test_a_file_that_another_program_locks_gets_everything_once_it_is_free(desk: Desk) -> None:
    other = sqlite3.connect(desk.path, isolation_level=None)
    other.execute("BEGIN EXCLUSIVE")
    desk.write(3)
    assert "in use by another program" in str(desk.said[-1])
    assert desk.beside == 1
    other.execute("ROLLBACK")
    other.close()
    desk.write(1)
    assert desk.said[-1] is None
    assert (facts_held(desk.database), desk.beside) == (8, 0)


def test_a_drive_that_was_away_and_comes_back_gets_everything(desk: Desk, tmp_path: Path) -> None:
    shutil.move(desk.path.parent, tmp_path / "away")
    desk.write(3)
    assert desk.beside == 1
    assert not desk.path.parent.exists()
    desk.path.parent.mkdir()
    shutil.copy(tmp_path / "away" / NAME, desk.path)  # the same record, and not the file that was open
    desk.write(2)
    assert desk.said[-1] is None
    assert (facts_held(desk.database), desk.beside) == (9, 0)


@pytest.mark.parametrize("content", [b"", b"Step-down, three sets. " * 100], ids=["empty", "another file"])
def test_another_file_in_its_place_is_left_as_it_is(desk: Desk, tmp_path: Path, content: bytes) -> None:
    shutil.move(desk.path, tmp_path / NAME)
    desk.path.write_bytes(content)
    desk.write(3)
    desk.write(1)
    assert desk.path.read_bytes() == content
    assert "kept in a file beside" in str(desk.said[-1])
    shutil.copy(tmp_path / NAME, desk.path)
    assert desk.journal.mend()
    assert (facts_held(desk.database), desk.beside) == (8, 0)


def test_a_record_gone_for_good_gets_the_whole_run_anew(desk: Desk) -> None:
    desk.path.unlink()
    desk.write(3)
    desk.journal.close()
    desk.database.close()
    desk.database = open_database(desk.path, spare=desk.spare)
    assert desk.database.take_in().taken == 1
    assert (facts_held(desk.database), desk.beside) == (7, 0)
    desk.journal = desk.database.steadily(desk.said.append)


def test_a_question_asked_while_the_file_is_away_is_answered_in_words_and_again_later(
    desk: Desk, tmp_path: Path
) -> None:
    shutil.move(desk.path, tmp_path / NAME)
    desk.write(2)
    with pytest.raises(StoreError, match="cannot be opened"):
        desk.database.queries.run_summaries()
    shutil.copy(tmp_path / NAME, desk.path)
    assert desk.journal.mend()
    assert len(desk.database.queries.run_summaries()) == 1
