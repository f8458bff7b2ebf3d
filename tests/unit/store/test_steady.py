"""The journal that goes on: nothing it took is lost, whatever the disk says meanwhile."""

import os
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.records import BoutBegan, Fact, RunBegan, RunHeader
from app.run.journal import Journal
from app.store.side_file import side_files
from app.store.side_lines import read_lines
from app.store.steady import IMPATIENCE_S, PATIENCE_S, SteadyJournal
from tests.weak_disk import FULL, WeakRecord

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
HEADER = RunHeader(RUN, "Ines", "Try-out", "text", datetime(2026, 3, 2, tzinfo=UTC), "UTC")
FACTS: tuple[Fact, ...] = (RunBegan(), *(BoutBegan(number, number, 1) for number in range(1, 7)))
DATABASE = Path("/data/record.db")


class Desk:
    """A steady journal over such a record, and what it told."""

    def __init__(self, folder: Path | None) -> None:
        self.record = WeakRecord(folder)
        self.folder = folder
        self.said: list[str | None] = []
        self.journal: SteadyJournal = self.record.steadily(self.said.append)

    def write(self, first: int, last: int) -> None:
        for number in range(first, last):
            self.journal.append(RUN, number, [FACTS[number]])

    def beside(self) -> tuple[Fact, ...]:
        """What a reader of the side files finds of the run."""
        assert self.folder is not None
        found = [read_lines(path.read_bytes())[0] for path in side_files(self.folder, DATABASE)]
        (run,) = [runs[RUN] for runs in found if RUN in runs]
        ((first, facts),) = run.stretches()
        assert (first, run.header) == (0, HEADER)
        return tuple(facts)


@pytest.fixture
def desk(tmp_path: Path) -> Desk:
    made = Desk(tmp_path / "state")
    made.journal.open_run(HEADER, ())
    made.write(0, 2)
    return made


def test_it_is_a_journal_and_in_good_days_says_nothing(desk: Desk) -> None:
    port: Journal = desk.journal
    port.append(RUN, 2, FACTS[2:4])
    assert desk.record.journal.facts[RUN] == list(FACTS[:4])
    assert desk.said == []
    assert not (desk.folder or Path()).exists()
    assert desk.record.waits == [PATIENCE_S]


def test_in_trouble_all_of_the_run_stands_beside_and_it_is_said_once(desk: Desk) -> None:
    desk.record.journal.trouble = FULL
    desk.write(2, 5)
    assert desk.beside() == FACTS[:5]
    (sentence,) = desk.said
    assert sentence is not None
    assert sentence.startswith(FULL)
    assert "kept in a file beside" in sentence
    assert desk.journal.unsaved


def test_what_waited_is_saved_in_order_with_the_next_and_the_side_file_goes(desk: Desk) -> None:
    desk.record.journal.trouble = FULL
    desk.write(2, 5)
    desk.record.journal.trouble = None
    desk.write(5, 6)
    assert desk.record.journal.facts[RUN] == list(FACTS[:6])
    assert desk.said[1:] == [None]
    assert side_files(desk.folder or Path(), DATABASE) == ()
    assert desk.record.waits[-2:] == [IMPATIENCE_S, PATIENCE_S]


def test_what_waits_is_saved_without_a_next_when_asked(desk: Desk) -> None:
    assert desk.journal.mend()
    assert desk.record.renewed == 0
    desk.record.journal.trouble = FULL
    desk.write(2, 3)
    assert not desk.journal.mend()
    desk.record.journal.trouble = None
    assert desk.journal.mend()
    assert desk.record.journal.facts[RUN] == list(FACTS[:3])


def test_another_trouble_is_said_anew(desk: Desk) -> None:
    desk.record.journal.trouble = FULL
    desk.write(2, 4)
    desk.record.journal.trouble = "The file is in use."
    desk.write(4, 5)
    assert [str(sentence).split(".")[0] for sentence in desk.said] == [
        "The disk is full",
        "The file is in use",
    ]


def test_a_run_that_begins_in_trouble_is_kept_and_saved_whole(desk: Desk) -> None:
    desk.record.journal.trouble = FULL
    desk.write(2, 3)
    other = RunHeader(RUN.replace("0190", "0191"), "Bea", "Try-out", "text", HEADER.started_at, "UTC")
    desk.journal.open_run(other, ())
    desk.journal.append(other.run_id, 0, FACTS[:3])
    desk.record.journal.trouble = None
    assert desk.journal.mend()
    assert desk.record.journal.facts[other.run_id] == list(FACTS[:3])
    assert desk.record.journal.headers == [HEADER, other]


def test_a_run_taken_up_again_stands_beside_with_what_was_written_of_it_before(tmp_path: Path) -> None:
    desk = Desk(tmp_path / "state")
    desk.record.journal.open_run(HEADER, ())
    desk.record.journal.append(RUN, 0, FACTS[:4])
    desk.journal.recall(HEADER, (), FACTS[:4])
    desk.record.journal.trouble = FULL
    desk.write(4, 6)
    assert desk.beside() == FACTS[:6]
    desk.record.journal.trouble = None
    assert desk.journal.mend()
    assert desk.record.journal.facts[RUN] == list(FACTS[:6])


def test_without_a_place_beside_it_is_kept_in_memory_and_that_is_said() -> None:
    desk = Desk(None)
    desk.journal.open_run(HEADER, ())
    desk.record.journal.trouble = FULL
    desk.write(0, 4)
    assert "in memory alone" in str(desk.said[-1])
    assert desk.journal.at_risk() == desk.said[-1]
    desk.record.journal.trouble = None
    assert desk.journal.at_risk() is None
    assert desk.record.journal.facts[RUN] == list(FACTS[:4])


def test_a_side_file_that_cannot_be_written_is_tried_again_and_then_holds_all(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    write = os.write

    def refuse(_descriptor: int, _data: bytes) -> int:
        raise OSError(28, "full")

    monkeypatch.setattr(os, "write", refuse)
    desk.record.journal.trouble = FULL
    desk.write(2, 4)
    assert "in memory alone" in str(desk.said[-1])
    monkeypatch.setattr(os, "write", write)
    desk.write(4, 5)
    assert "kept in a file beside" in str(desk.said[-1])
    assert desk.beside() == FACTS[:5]
    assert desk.journal.at_risk() is None
    desk.journal.close()
    assert desk.beside() == FACTS[:5]


def test_a_slip_of_the_program_is_not_taken_for_trouble(desk: Desk) -> None:
    with pytest.raises(ValueError, match="slip"):
        desk.journal.append(RUN, 9, [FACTS[6]])
    assert not desk.journal.unsaved


def test_a_side_file_that_cannot_be_removed_is_left_for_the_next_start(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    desk.record.journal.trouble = FULL
    desk.write(2, 3)
    desk.record.journal.trouble = None
    with monkeypatch.context() as patch:
        patch.setattr(Path, "unlink", _refuse_to_remove)
        assert desk.journal.mend()
    assert desk.said[-1] is None
    assert desk.beside() == FACTS[:3]


def _refuse_to_remove(_path: Path, *, missing_ok: bool = False) -> None:
    raise PermissionError(13, "no")


@settings(max_examples=60)
@given(st.lists(st.sampled_from(["write", "fail", "mend", "heal"]), max_size=30))
def test_whatever_fails_and_when_all_is_saved_in_the_end_once_and_in_order(steps: list[str]) -> None:
    desk = Desk(None)
    desk.journal.open_run(HEADER, ())
    written: list[Fact] = []
    for step in steps:
        if step == "write":
            fact: Fact = BoutBegan(len(written), len(written), 1) if written else RunBegan()
            desk.journal.append(RUN, len(written), [fact])
            written.append(fact)
        elif step == "mend":
            desk.journal.mend()
        else:
            desk.record.journal.trouble = FULL if step == "fail" else None
    desk.record.journal.trouble = None
    assert desk.journal.mend()
    assert desk.record.journal.facts[RUN] == written
    assert (desk.said[-1] if desk.said else None) is None
