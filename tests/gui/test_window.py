"""The window with a real record behind it: nothing that was done is lost, and trouble is said in words."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.compiler import compile_timeline
from app.domain.errors import StoreError
from app.domain.prescription import prescriptions
from app.domain.records import RunOutcome
from app.run.controller import Controller
from app.run.intents import Begin, Tick
from app.store.database import Database
from app.views.review.room import ReviewRoom
from tests.rig import Rig


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Iterator[Rig]:
    made = Rig(qtbot, tmp_path, wiring.open_record)
    yield made
    made.window.close()


def test_closing_the_window_in_mid_bout_keeps_every_finished_rep_and_abandons_the_run(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    rig.wait(10_000)
    rig.window.close()
    (run,) = rig.runs()
    assert (run.athlete, run.outcome, run.reps_done, run.reps_prescribed) == (
        "Hugo",
        RunOutcome.ABANDONED,
        1,
        4,
    )


def test_a_whole_session_is_in_the_record_with_its_ratings(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    rig.wait(15_000)
    rig.press(Qt.Key.Key_4)
    rig.press(Qt.Key.Key_2)
    rig.wait(40_000)
    for key in (Qt.Key.Key_6, Qt.Key.Key_3, Qt.Key.Key_5):
        rig.press(key)
    rig.press(Qt.Key.Key_Space)
    assert "Who is training?" in rig.texts()
    rig.window.close()
    (run,) = rig.runs()
    assert (run.outcome, run.reps_met, run.session_rpe, run.pain) == (RunOutcome.FINISHED, 4, 5, 3)
    assert not run.invented


def test_a_session_that_is_left_before_it_began_leaves_no_trace(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.window.close()
    assert rig.runs() == ()


def test_a_plan_is_chosen_on_the_start_page_for_the_athlete_typed_there(rig: Rig) -> None:
    rig.open()
    rig.window.choose_plan(rig.plan)
    assert "For Guest" in rig.texts()


def test_a_missing_plan_is_said_on_the_start_page(rig: Rig) -> None:
    rig.open()
    rig.window.choose_plan(rig.house.plans[1])
    assert "there is no such file" in rig.texts()


def test_another_size_builds_the_page_anew_and_the_run_goes_on(rig: Rig, qtbot: QtBot) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    rig.wait(7_000)
    before = rig.page
    rig.window.resize(1000, 560)
    qtbot.waitUntil(lambda: rig.page is not before, timeout=3_000)
    rig.wait(7_000)
    assert "after Heel raise, set 1" in rig.texts()


def test_the_review_shows_what_was_done_and_lets_one_back(rig: Rig, qtbot: QtBot) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    rig.wait(55_000)
    rig.press(Qt.Key.Key_Space)
    rig.window.open_review()
    (room,) = rig.window.findChildren(ReviewRoom)

    def shows_the_athlete() -> None:
        assert [line.athlete for line in room.squad.lines] == ["Hugo"]

    qtbot.waitUntil(shows_the_athlete, timeout=5_000)
    qtbot.keyClick(room.squad.table, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: room.athlete.board.view is not None, timeout=5_000)
    qtbot.keyClick(room.athlete.board.cards[0].chart, Qt.Key.Key_Escape)
    assert room.squad.isVisible()
    qtbot.keyClick(room.squad.table, Qt.Key.Key_Escape)
    assert "Who is training?" in rig.texts()


def test_a_record_that_cannot_be_opened_is_said_in_its_own_words(qtbot: QtBot, tmp_path: Path) -> None:
    def refuse(_path: Path) -> Database:
        raise StoreError("The record is in a folder that cannot be written to.")

    rig = Rig(qtbot, tmp_path, refuse)
    sentences: list[str] = []
    window = rig.open(broken=sentences.append)
    qtbot.waitUntil(lambda: bool(sentences), timeout=3_000)
    window.close()
    assert sentences == ["The record is in a folder that cannot be written to."]


class CutShort:
    """A run of which the program died after its first rep, as it stands in the record."""

    def __init__(self, rig: Rig) -> None:
        written = wiring.read_plan(rig.plan)
        timeline = compile_timeline(written.plan)
        self.header = wiring.new_header("Hugo", written)
        controller = Controller(timeline)
        with wiring.open_record(rig.database) as database:
            database.journal.open_run(self.header, prescriptions(timeline))
            for now in (0, *range(500, 10_000, 500)):
                first, facts = controller.handle(Begin() if now == 0 else Tick(), now)
                if facts:
                    database.journal.append(self.header.run_id, first, facts)


def test_a_run_that_was_cut_short_is_offered_and_led_on_from_its_bout(rig: Rig, qtbot: QtBot) -> None:
    run = CutShort(rig)
    rig.open()
    qtbot.waitUntil(lambda: "cut short after 1 rep" in rig.texts(), timeout=3_000)
    rig.click("Take it up again")
    assert "Goes on with rep 2 of 2" in rig.texts()
    rig.press(Qt.Key.Key_Space)
    rig.wait(60_000)
    rig.press(Qt.Key.Key_Space)
    assert "cut short" not in rig.texts()
    rig.window.close()
    (summary,) = rig.runs()
    assert (summary.run_id, summary.outcome) == (run.header.run_id, RunOutcome.FINISHED)
    assert (summary.reps_done, summary.reps_prescribed) == (4, 4)


def test_a_run_that_was_cut_short_can_be_laid_down(rig: Rig, qtbot: QtBot) -> None:
    CutShort(rig)
    rig.open()
    qtbot.waitUntil(lambda: "cut short" in rig.texts(), timeout=3_000)
    rig.click("Lay it down")
    qtbot.waitUntil(lambda: "cut short" not in rig.texts(), timeout=3_000)
    rig.window.close()
    (summary,) = rig.runs()
    assert (summary.outcome, summary.reps_done) == (RunOutcome.ABANDONED, 1)


def test_a_run_whose_plan_can_no_longer_be_read_is_said_and_can_be_laid_down(rig: Rig, qtbot: QtBot) -> None:
    CutShort(rig)
    rig.house = replace(rig.house, parse_plan=lambda text: wiring.parse_plan(text.replace("format = 1", "")))
    rig.open()
    qtbot.waitUntil(lambda: "cut short" in rig.texts(), timeout=3_000)
    rig.click("Take it up again")
    assert "cannot be led on" in rig.texts()
