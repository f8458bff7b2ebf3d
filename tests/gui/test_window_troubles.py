"""The window when things go wrong beside it, or are closed and resized at the worst of moments."""

import gc
from collections.abc import Iterator, Sequence
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QLineEdit, QListView, QMessageBox
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.athlete import Athlete
from app.domain.errors import FileProblemsError, Problem, StoreError
from app.domain.plan import WrittenPlan
from app.domain.records import RunHeader, RunOutcome
from app.run.group_journal import Written
from app.run.sounding import NoSound
from app.store.journal import StoreJournal
from app.views.athlete.page import AthletePage
from app.views.worker import LOOKS_A_TRY
from tests.rig import Rig

FULL = "The disk is full."


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Iterator[Rig]:
    made = Rig(qtbot, tmp_path, wiring.open_record)
    yield made
    made.window.close()


class Disk:
    """Whether the journal finds room; it is asked at each writing."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.full = False
        append = StoreJournal.append_all

        def write(journal: StoreJournal, written: Sequence[Written]) -> None:
            if self.full:
                raise StoreError(FULL)
            append(journal, written)

        monkeypatch.setattr(StoreJournal, "append_all", write)


@pytest.fixture
def disk(monkeypatch: pytest.MonkeyPatch) -> Disk:
    return Disk(monkeypatch)


def resized(rig: Rig, qtbot: QtBot) -> None:
    """Make the window smaller, and wait for its pages to be built anew."""
    before = rig.page
    rig.window.resize(1000, 560)
    qtbot.waitUntil(lambda: rig.page is not before, timeout=3_000)


def test_a_rep_that_could_not_be_kept_is_said_and_kept_once_there_is_room(
    rig: Rig, disk: Disk, qtbot: QtBot
) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    disk.full = True
    rig.wait(9_500)
    qtbot.waitUntil(lambda: _tells(rig, FULL), timeout=3_000)
    resized(rig, qtbot)
    assert FULL in rig.texts()
    disk.full = False
    rig.wait(5_000)
    qtbot.waitUntil(lambda: not _tells(rig, FULL), timeout=3_000)
    rig.window.close()
    (run,) = rig.runs()
    assert (run.reps_done, run.outcome) == (2, RunOutcome.ABANDONED)


def _tells(rig: Rig, sentence: str) -> bool:
    page = rig.page
    assert isinstance(page, AthletePage)
    page.refresh()
    return sentence in rig.texts()


def test_what_waits_beside_when_the_window_closes_is_read_in_by_the_next(
    rig: Rig, disk: Disk, qtbot: QtBot
) -> None:
    rig.open(wiring.read_plan(rig.plan))
    disk.full = True
    rig.press(Qt.Key.Key_Space)
    rig.wait(9_500)
    rig.window.close()
    assert [run.reps_done for run in rig.runs()] == []
    disk.full = False
    rig.open()
    qtbot.waitUntil(lambda: any(run.outcome for run in rig.runs()), timeout=3_000)
    (run,) = rig.runs()
    assert (run.reps_done, run.outcome) == (1, RunOutcome.ABANDONED)


def test_a_trouble_that_outlasts_the_session_is_said_on_the_start_page_and_goes(
    rig: Rig, disk: Disk, qtbot: QtBot
) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    disk.full = True
    rig.wait(9_500)
    qtbot.waitUntil(lambda: _tells(rig, FULL), timeout=3_000)
    rig.window.leave_session()
    assert FULL in rig.texts()
    disk.full = False
    for _ in range(LOOKS_A_TRY):
        rig.window._keeper.look()
    qtbot.waitUntil(lambda: FULL not in rig.texts(), timeout=3_000)
    assert sum(run.reps_done for run in rig.runs()) == 1


@pytest.mark.parametrize(("answers", "kept"), [(("Retry",), 1), (("Discard",), 0)])
def test_closing_with_something_kept_nowhere_but_in_memory_asks_whether_to_try_again(
    answers: tuple[str, ...],
    kept: int,
    rig: Rig,
    disk: Disk,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    said: list[str] = []
    left = list(answers)
    (tmp_path / "no folder").touch()
    monkeypatch.setenv("PACEWRIGHT_STATE", str(tmp_path / "no folder"))

    def answer(_parent: object, _title: str, text: str, _choices: object) -> QMessageBox.StandardButton:
        said.append(text)
        disk.full = left[0] == "Discard"
        return QMessageBox.StandardButton[left.pop(0)]

    monkeypatch.setattr(QMessageBox, "warning", answer)
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    disk.full = True
    rig.wait(9_500)
    rig.window.close()
    assert len(said) == 1
    assert FULL in said[0]
    disk.full = False
    assert sum(run.reps_done for run in rig.runs()) == kept


def test_a_run_is_dated_by_its_beginning_and_not_by_the_opening_of_its_plan(rig: Rig) -> None:
    asked: list[RunHeader] = []

    def new_header(name: str, session: WrittenPlan) -> RunHeader:
        asked.append(wiring.new_header(name, session))
        return asked[-1]

    rig.house = replace(rig.house, new_header=new_header)
    rig.open(wiring.read_plan(rig.plan))
    rig.wait(60_000)
    assert asked == []
    rig.press(Qt.Key.Key_Space)
    rig.wait(10_000)
    assert len(asked) == 1
    rig.window.close()
    (run,) = rig.runs()
    assert (run.run_id, run.started_at) == (asked[0].run_id, asked[0].started_at)


def test_a_roster_that_is_not_in_order_is_said_and_ends_it(rig: Rig) -> None:
    def refuse() -> tuple[Athlete, ...]:
        raise FileProblemsError("roster.toml", (Problem(3, 1, "unknown key"),))

    rig.house = replace(rig.house, read_athletes=refuse)
    said: list[str] = []
    rig.open(broken=said.append)
    assert said == ["roster.toml:3:1: unknown key"]


def test_a_roster_broken_meanwhile_is_said_on_the_start_page_and_stops_no_resizing(
    rig: Rig, qtbot: QtBot
) -> None:
    rig.open()
    broken = [FileProblemsError("roster.toml", (Problem(3, 1, "unknown key"),))]

    def refuse() -> tuple[Athlete, ...]:
        raise broken[0]

    object.__setattr__(rig.house, "read_athletes", refuse)
    rig.window.choose_plan(rig.plan)
    assert "roster.toml:3:1" in rig.texts()
    resized(rig, qtbot)
    assert "roster.toml:3:1" in rig.texts()
    names = rig.page.findChild(QListView)
    assert isinstance(names, QListView)
    model = names.model()
    assert "Ines" in [model.index(row, 0).data() for row in range(model.rowCount())]


def test_the_athlete_named_on_opening_is_chosen_and_stays_so_in_another_size(rig: Rig, qtbot: QtBot) -> None:
    rig.open(athlete="Ines")
    resized(rig, qtbot)
    rig.window.choose_plan(rig.plan)
    assert "For Ines" in rig.texts()


def test_another_size_keeps_the_question_about_pain_and_what_was_written(rig: Rig, qtbot: QtBot) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    rig.wait(15_000)
    rig.press(Qt.Key.Key_4)
    rig.press(Qt.Key.Key_8)
    note = rig.page.findChild(QLineEdit, "note")
    assert isinstance(note, QLineEdit)
    qtbot.keyClicks(note, "front of the knee")
    resized(rig, qtbot)
    assert "Pain 8: Heel raise ends here." in rig.texts()
    again = rig.page.findChild(QLineEdit, "note")
    assert isinstance(again, QLineEdit)
    assert again.text() == "front of the knee"


def test_another_size_keeps_the_rating_of_the_session(rig: Rig, qtbot: QtBot) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    rig.wait(55_000)
    for key in (Qt.Key.Key_4, Qt.Key.Key_2, Qt.Key.Key_5):
        rig.press(key)
    assert "5 · hard" in rig.texts()
    resized(rig, qtbot)
    assert "5 · hard" in rig.texts()


class Stuck(NoSound):
    """A sound that cannot be let go."""

    def close(self) -> None:
        raise RuntimeError("stuck")


def test_a_sound_that_cannot_be_let_go_leaves_memory_tidied_and_the_record_whole(rig: Rig) -> None:
    rig.house = replace(rig.house, make_sound=lambda _timeline, _speaker, _clock: Stuck())
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    rig.wait(9_500)
    assert not gc.isenabled()
    with pytest.raises(RuntimeError, match="stuck"):
        rig.window.close()
    assert gc.isenabled()
    (run,) = rig.runs()
    assert (run.reps_done, run.outcome) == (1, RunOutcome.ABANDONED)


def test_a_window_closed_before_it_settled_opens_no_record(rig: Rig) -> None:
    rig.open()
    rig.window.close()
    other = type(rig.window)(rig.house, rig.window._wish, "Inter")
    rig.qtbot.addWidget(other)
    other.close()
    other.settle()
    QApplication.processEvents()


def test_a_file_is_chosen_in_front_of_the_window_and_not_of_a_page_that_may_go(
    rig: Rig, monkeypatch: pytest.MonkeyPatch
) -> None:
    parents: list[object] = []

    def pick(parent: object, *_words: str) -> tuple[str, str]:
        parents.append(parent)
        return "", ""

    monkeypatch.setattr(QFileDialog, "getOpenFileName", pick)
    rig.open()
    rig.click("Open a plan…")
    assert parents == [rig.window]
