"""The database thread: what could not be written is kept, and written with the next that comes."""

from collections.abc import Iterator, Sequence
from datetime import UTC, datetime
from typing import cast

import pytest
from pytestqt.qtbot import QtBot

from app.domain.errors import PacewrightError, StoreError
from app.domain.records import BoutBegan, BoutPrescribed, Fact, RunBegan, RunHeader
from app.store.database import Database
from app.views.worker import RecordKeeper
from tests.fakes import MemoryJournal

HEADER = RunHeader("run", "Ines", "Try-out", "text", datetime(2026, 3, 2, tzinfo=UTC), "UTC")


class FullDisk(MemoryJournal):
    """A journal whose disk can be full, and that knows a slip of the program when it sees one."""

    full = False

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        self._refuse()
        super().open_run(header, prescribed)

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        self._refuse()
        if not facts:
            raise ValueError("nothing to write is a slip")
        super().append(run_id, first_number, facts)

    def _refuse(self) -> None:
        if self.full:
            raise StoreError("The disk is full.")


class Record:
    """A database of which only the journal is wanted."""

    def __init__(self, journal: FullDisk) -> None:
        self.journal, self.closed = journal, False

    def close(self) -> None:
        self.closed = True


class Desk:
    """A keeper over such a record, and what it said."""

    def __init__(self) -> None:
        self.journal = FullDisk()
        self.record = Record(self.journal)
        self.keeper = RecordKeeper(lambda: cast("Database", self.record))
        self.said: list[str] = []
        self.keeper.failed.connect(self.said.append)
        self.keeper.caught_up.connect(lambda: self.said.append("caught up"))
        self.keeper.open()

    def answered(self, qtbot: QtBot) -> None:
        """Wait until all that was asked before has been done, and said."""
        answers: list[int] = []
        self.keeper.ask(lambda _database: 1, answers.append)
        qtbot.waitUntil(lambda: bool(answers), timeout=3_000)


@pytest.fixture
def desk() -> Iterator[Desk]:
    made = Desk()
    yield made
    made.keeper.close()


def test_what_could_not_be_written_is_written_with_the_next(desk: Desk, qtbot: QtBot) -> None:
    desk.journal.full = True
    desk.keeper.open_run(HEADER, ())
    desk.keeper.append("run", 0, [RunBegan()])
    desk.answered(qtbot)
    assert desk.said == ["The disk is full."] * 2
    desk.journal.full = False
    desk.keeper.append("run", 1, [BoutBegan(5_000, 0, 1)])
    desk.answered(qtbot)
    assert desk.journal.facts == {"run": [RunBegan(), BoutBegan(5_000, 0, 1)]}
    assert desk.said[2:] == ["caught up"]


def test_what_is_left_at_the_end_is_tried_once_more_and_said(desk: Desk, qtbot: QtBot) -> None:
    desk.keeper.open_run(HEADER, ())
    desk.answered(qtbot)
    desk.journal.full = True
    desk.keeper.append("run", 0, [RunBegan()])
    assert desk.keeper.finish() == "The disk is full."
    desk.journal.full = False
    assert desk.keeper.finish() is None
    assert desk.journal.facts == {"run": [RunBegan()]}


def test_there_is_nothing_to_finish_where_nothing_was_left() -> None:
    def refuse() -> Database:
        raise PacewrightError("It cannot be had.")

    keeper = RecordKeeper(refuse)
    keeper.open()
    assert keeper.finish() is None
    keeper.close()


def test_a_slip_of_the_program_does_not_hold_up_what_comes_after_it(desk: Desk, qtbot: QtBot) -> None:
    with qtbot.captureExceptions() as slips:
        desk.keeper.open_run(HEADER, ())
        desk.keeper.append("run", 0, [])
        desk.keeper.append("run", 0, [RunBegan()])
        desk.answered(qtbot)
    assert [str(slip[1]) for slip in slips] == ["nothing to write is a slip"]
    assert desk.journal.facts == {"run": [RunBegan()]}


def test_a_closed_record_answers_no_more(desk: Desk) -> None:
    desk.keeper.close()
    assert desk.record.closed
    answers: list[int] = []
    desk.keeper.ask(lambda _database: 1, answers.append)
    desk.keeper.close()
    assert answers == []
