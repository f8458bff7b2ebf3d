"""The database thread: what could not be written is kept, and written with the next that comes."""

from collections.abc import Iterator
from datetime import UTC, datetime
from threading import Event
from typing import cast

import pytest
from pytestqt.qtbot import QtBot

from app.domain.errors import PacewrightError
from app.domain.records import BoutBegan, RunBegan, RunHeader
from app.store.database import Database
from app.store.side_intake import TakenIn
from app.views.worker import LONGEST_WAIT_S, LOOKS_A_TRY, MOST_WAITING, RecordKeeper
from tests.weak_disk import FULL, WeakRecord

HEADER = RunHeader("run", "Ines", "Try-out", "text", datetime(2026, 3, 2, tzinfo=UTC), "UTC")


class Desk:
    """A keeper over a record in memory, and what it said."""

    def __init__(self) -> None:
        self.record, self.at_s = WeakRecord(), 100.0
        self.journal = self.record.journal
        self.keeper = RecordKeeper(lambda: cast("Database", self.record), now_s=lambda: self.at_s)
        self.said: list[str] = []
        self.keeper.failed.connect(self.said.append)
        self.keeper.troubled.connect(self.said.append)
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


def test_what_could_not_be_written_is_said_and_written_with_the_next(desk: Desk, qtbot: QtBot) -> None:
    desk.journal.trouble = FULL
    desk.keeper.open_run(HEADER, ())
    desk.keeper.append("run", 0, [RunBegan()])
    desk.answered(qtbot)
    (sentence,) = desk.said
    assert sentence.startswith(FULL)
    desk.journal.trouble = None
    desk.keeper.append("run", 1, [BoutBegan(5_000, 0, 1)])
    desk.answered(qtbot)
    assert desk.journal.facts == {"run": [RunBegan(), BoutBegan(5_000, 0, 1)]}
    assert desk.said[1:] == [""]


def test_what_could_not_be_written_is_tried_again_every_few_looks(desk: Desk, qtbot: QtBot) -> None:
    desk.journal.trouble = FULL
    desk.keeper.open_run(HEADER, ())
    desk.answered(qtbot)
    before = desk.record.renewed
    for _ in range(LOOKS_A_TRY):
        desk.keeper.look()
    desk.answered(qtbot)
    assert desk.record.renewed == before + 1
    desk.journal.trouble = None
    for _ in range(LOOKS_A_TRY):
        desk.keeper.look()
    desk.answered(qtbot)
    assert desk.journal.headers == [HEADER]
    assert desk.said[-1] == ""


def test_what_is_in_memory_alone_at_the_end_is_tried_once_more_and_said(desk: Desk, qtbot: QtBot) -> None:
    desk.keeper.open_run(HEADER, ())
    desk.answered(qtbot)
    desk.journal.trouble = FULL
    desk.keeper.append("run", 0, [RunBegan()])
    assert str(desk.keeper.finish()).startswith(FULL)
    desk.journal.trouble = None
    assert desk.keeper.finish() is None
    assert desk.journal.facts == {"run": [RunBegan()]}


class Held:
    """Holds the database thread up until it is let go."""

    def __init__(self, keeper: RecordKeeper) -> None:
        self._let_go = Event()
        keeper.ask(lambda _database: self._let_go.wait(10), lambda _done: None)

    def let_go(self) -> None:
        self._let_go.set()


def test_a_write_that_takes_longer_than_two_seconds_is_said_and_that_goes_away(
    desk: Desk, qtbot: QtBot
) -> None:
    held = Held(desk.keeper)
    desk.keeper.open_run(HEADER, ())
    desk.at_s += LONGEST_WAIT_S
    desk.keeper.look()
    assert desk.said == []
    desk.at_s += 1
    desk.keeper.look()
    assert desk.said == ["Saving is slow: 1 entries wait for it, the oldest for 3 s. The session goes on."]
    held.let_go()
    desk.answered(qtbot)
    desk.keeper.look()
    assert desk.said[1:] == [""]


def test_more_than_a_thousand_writes_that_wait_are_said(desk: Desk, qtbot: QtBot) -> None:
    held = Held(desk.keeper)
    desk.keeper.open_run(HEADER, ())
    for number in range(MOST_WAITING - 1):
        desk.keeper.append("run", number, [RunBegan()])
    desk.keeper.look()
    assert desk.said == []
    desk.keeper.append("run", MOST_WAITING - 1, [RunBegan()])
    desk.keeper.look()
    assert desk.said == ["Saving is slow: 1001 entries wait for it, the oldest for 0 s. The session goes on."]
    held.let_go()
    desk.answered(qtbot)
    assert len(desk.journal.facts["run"]) == MOST_WAITING


def test_what_an_earlier_session_left_and_cannot_be_read_in_is_said_once_it_is_open(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(_record: WeakRecord) -> TakenIn:
        raise PacewrightError("It cannot be read in.")

    monkeypatch.setattr(WeakRecord, "take_in", refuse)
    said: list[str] = []
    keeper = RecordKeeper(lambda: cast("Database", WeakRecord()))
    keeper.opened.connect(lambda: said.append("opened"))
    keeper.failed.connect(said.append)
    keeper.open()
    qtbot.waitUntil(lambda: len(said) == 2, timeout=3_000)
    keeper.close()
    assert said == ["opened", "It cannot be read in."]


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
    assert [str(slip[1]) for slip in slips] == ["nothing to write, or a gap before it, is a slip"]
    assert desk.journal.facts == {"run": [RunBegan()]}


def test_a_closed_record_answers_no_more(desk: Desk) -> None:
    desk.keeper.close()
    assert desk.record.closed
    answers: list[int] = []
    desk.keeper.ask(lambda _database: 1, answers.append)
    desk.keeper.close()
    assert answers == []
