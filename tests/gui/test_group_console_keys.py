"""The console under a coach's hand: what is said back, what is asked before it is done, any keys at all."""

import random
from pathlib import Path

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.domain.fold import fold_run
from app.domain.grouping import Form
from app.domain.records import BoutOutcome, FaultMarked, RunEnded
from app.run.state import Stand
from app.store.database import open_database
from app.views.group.coach_keys import Wait
from app.views.group.group_room import GroupRoom
from app.views.widgets.key_table import KeyTable
from tests.fitting import misfits, nameless
from tests.gui.test_group_console import Coach
from tests.gui.test_group_window import let_pass, room_of, set_up
from tests.rig import Rig

OFTEN = tuple(Qt.Key(ord(sign)) for sign in "12FFM")
KEYS = (
    *(Qt.Key(ord(sign)) for sign in "1234567890ABCDEFGHIJKLMNOPQRTUVWXYZ/+-"),
    Qt.Key.Key_Space,
    Qt.Key.Key_Return,
    Qt.Key.Key_Left,
    Qt.Key.Key_Right,
    Qt.Key.Key_Up,
    Qt.Key.Key_Down,
    Qt.Key.Key_Backspace,
    Qt.Key.Key_Tab,
    Qt.Key.Key_F1,
)


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Rig:
    rig = Rig(qtbot, tmp_path, open_database)
    rig.open()
    rig.window.open_group()
    return rig


def echo(coach: Coach) -> tuple[str, str]:
    return coach.console._now.echo


def test_who_is_chosen_and_what_was_marked_is_said_back_large(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(4_000).type("2")
    assert echo(coach) == ("Bram", "chosen")
    coach.type("1")
    assert echo(coach) == ("Bram", "rep 1: shoulder hikes")
    coach.type("2").type("1")
    assert echo(coach) == ("Bram", "marked already, or nothing to mark")
    coach.type("3m")
    assert echo(coach) == ("Chidi", "this rep is not done")
    coach.wait(9_000)
    assert echo(coach) == ("–", "")


def test_who_cannot_join_any_more_is_told_from_who_is_here_already(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type("3").press(Qt.Key.Key_Return).type(" ").wait(4_000).type("1ll")
    assert echo(coach) == ("Anouk", "has gone")
    coach.type("1").press(Qt.Key.Key_Return)
    assert echo(coach) == ("Anouk", "cannot join any more")
    coach.type("2").press(Qt.Key.Key_Return)
    assert echo(coach) == ("Bram", "is here already")
    coach.type("3").press(Qt.Key.Key_Return)
    assert echo(coach) == ("Chidi", "joins with the next bout")


def test_nobody_leaves_by_a_single_key(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(4_000).type("1l").wait(500).type("t")
    assert coach.hall.room.state.present == (True,) * 4
    assert not any(isinstance(fact, RunEnded) for fact in coach.hall.written[0])


def test_leaving_asks_once_while_the_session_goes_on_and_not_otherwise(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    left: list[bool] = []
    coach.console.left.connect(lambda: left.append(True))
    coach.type(" ").wait(4_000).press(Qt.Key.Key_Escape)
    assert echo(coach)[0] == "Leave, and stop for everybody?"
    coach.type("x")
    assert left == []
    assert coach.hall.room.state.leader.stand is Stand.RUNNING
    coach.press(Qt.Key.Key_Escape, Qt.Key.Key_Return)
    assert left == [True]
    before = Coach(qtbot)
    before.console.left.connect(lambda: left.append(False))
    before.press(Qt.Key.Key_Escape)
    assert left == [True, False]


def test_esc_gives_up_a_note_that_was_begun(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(4_000).type("2y")
    qtbot.keyClicks(coach.console._writing, "no")
    qtbot.keyClick(coach.console._writing, Qt.Key.Key_Escape)
    assert coach.notes == []
    assert not coach.console._writing.isVisible()
    coach.type(" ")
    assert coach.hall.room.state.leader.stand is Stand.PAUSED


def test_esc_leaves_full_screen_before_it_asks_anything(rig: Rig) -> None:
    room = set_up(rig, Form.TOGETHER)
    assert room._room is not None
    rig.qtbot.keyClick(room._console, Qt.Key.Key_Space)
    rig.qtbot.keyClick(room._console, Qt.Key.Key_F11)
    assert rig.window.isFullScreen()
    rig.qtbot.keyClick(room._console, Qt.Key.Key_Escape)
    assert not rig.window.isFullScreen()
    assert room._console is not None
    assert room._console._keys.wait is Wait.NOTHING
    rig.window.close()


def test_the_page_of_keys_fits_and_any_key_closes_it(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(4_000).press(Qt.Key.Key_F1)
    (page,) = coach.console.findChildren(KeyTable)
    assert misfits(page) == []
    assert nameless(page) == []
    qtbot.keyClick(page, Qt.Key.Key_T)
    assert not page.isVisible()


def test_who_did_only_a_part_and_who_never_came_is_said_afterwards(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type("4").press(Qt.Key.Key_Return).type("3").press(Qt.Key.Key_Return)
    coach.type(" ").wait(5_000).type("3").press(Qt.Key.Key_Return).wait(12_000).type("1ll").to_the_end()
    grid = coach.console._after
    did = {row.name: row.did for row in grid._rows}
    assert did["Anouk"].endswith("cut short")
    assert did["Bram"] == "8 of 8"
    assert did["Chidi"].endswith("came late")
    assert "Dagny" in grid._missing.text()
    assert grid._asked.text() == "Anouk: how hard was it?"
    qtbot.keyClicks(grid, "4")
    assert grid._asked.text() == "Anouk: how much did it hurt?"
    assert misfits(coach.console) == []


def test_a_bout_that_was_done_again_counts_once_afterwards(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(16_500).type("a").to_the_end()
    assert {row.did for row in coach.console._after._rows} == {"8 of 8"}


def test_pain_is_asked_of_the_last_work_and_not_of_what_was_left_out(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(34_000).type("1o4").to_the_end()
    qtbot.keyClicks(coach.console._after, "36")
    records = {record.bout: record for record in fold_run(coach.hall.written[0])}
    assert records[max(records)].outcome is BoutOutcome.SKIPPED
    worked = [record for record in records.values() if record.outcome is not BoutOutcome.SKIPPED]
    assert [record.pain for record in worked][-1] == 6
    assert records[max(records)].pain is None


def test_twenty_people_are_asked_by_forty_keys(qtbot: QtBot) -> None:
    coach = Coach(qtbot, count=20)
    coach.type(" ").to_the_end()
    qtbot.keyClicks(coach.console._after, "52" * 20)
    assert {(row.effort, row.pain) for row in coach.console._after._rows} == {(5, 2)}


def test_setting_up_goes_by_keys_alone(rig: Rig) -> None:
    room = room_of(rig)
    rig.qtbot.keyClick(room._setup, Qt.Key.Key_Return)
    assert room._console is not None
    rig.qtbot.keyClick(room._console, Qt.Key.Key_Escape)
    assert rig.page is not room


def test_another_look_and_another_size_leave_everything_where_it_was(rig: Rig) -> None:
    room = room_of(rig)
    room._setup._forms.button(list(Form).index(Form.WAVES)).setChecked(True)
    room._setup._numbers[3].setValue(25)
    room.renew()
    assert room._setup.choice.form is Form.WAVES
    assert room._setup.choice.swap_ms == 25_000
    room = set_up(rig, Form.TOGETHER)
    assert room._room is not None
    rig.qtbot.keyClick(room._console, Qt.Key.Key_Space)
    let_pass(rig, room, 6_000)
    rig.qtbot.keyClicks(room._console, "2y")
    rig.qtbot.keyClicks(room._console._writing, "sore he")  # type: ignore[union-attr]
    rig.window._appearance.changed.emit()
    console = room._console
    assert console is not None
    assert console._writing.text() == "sore he"
    assert console._keys.member == 1
    rig.window.resize(QSize(1600, 900))
    rig.qtbot.waitUntil(lambda: room._console is not console)
    let_pass(rig, room, 4_000)
    assert room._room.state.leader.stand is Stand.RUNNING
    assert room._console is not None
    assert misfits(room._console) == []
    rig.window.close()


def test_two_thousand_keys_at_random_lose_nothing_and_leave_no_run_open(rig: Rig) -> None:
    rng, marked, begun = random.Random(8), 0, 0
    room = _next_session(rig, rng)
    for _ in range(2_000):
        assert room._room is not None
        if room._room.over and rng.random() < 0.1:
            marked += sum(isinstance(fact, FaultMarked) for theirs in room._room.facts for fact in theirs)
            begun += sum(bool(theirs) for theirs in room._room.facts)
            while rig.page is room:
                rig.qtbot.keyClick(_asks(room), Qt.Key.Key_Escape)
            room = _next_session(rig, rng)
        rig.qtbot.keyClick(_asks(room), rng.choice(KEYS if rng.random() < 0.4 else OFTEN))
        if rng.random() < 0.5:
            let_pass(rig, room, rng.choice((500, 1_000)))
    assert room._room is not None
    begun += sum(bool(theirs) for theirs in room._room.facts)
    rig.window.close()
    assert marked > 5
    assert begun > 5
    assert len(rig.runs()) == begun
    assert all(run.outcome is not None for run in rig.runs())


def _next_session(rig: Rig, rng: random.Random) -> GroupRoom:
    if not isinstance(rig.page, GroupRoom):
        rig.window.open_group()
    return set_up(rig, rng.choice((Form.TOGETHER, Form.WAVES, Form.STATIONS)))


def _asks(room: GroupRoom) -> object:
    """What a key would go to."""
    console = room._console
    assert console is not None
    for page in console.findChildren(KeyTable):
        if page.isVisible():
            return page
    for line in (console._writing, console._find):
        if line.isVisible() and line.hasFocus():
            return line
    QApplication.processEvents()
    return console
