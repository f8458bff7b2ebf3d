"""A group session in the window: set up, led, kept for each, and taken up again after the program's death."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.group_choice import GroupChoice
from app.domain.grouping import Form
from app.domain.records import RunOutcome
from app.run.state import Stand
from app.store.database import open_database
from app.views.group.group_room import GroupRoom
from tests.fitting import misfits, nameless
from tests.rig import Rig


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Rig:
    rig = Rig(qtbot, tmp_path, open_database)
    rig.open()
    rig.window.open_group()
    return rig


def room_of(rig: Rig) -> GroupRoom:
    page = rig.page
    assert isinstance(page, GroupRoom)
    return page


def set_up(rig: Rig, form: Form) -> GroupRoom:
    room = room_of(rig)
    button = room._setup._forms.button(list(Form).index(form))
    button.setChecked(True)
    click(rig, "See who is here")
    assert room._console is not None
    return room


def click(rig: Rig, words: str) -> None:
    room = room_of(rig)
    found = [part for part in room.findChildren(QPushButton) if part.text() == words and part.isVisible()]
    rig.qtbot.mouseClick(found[0], Qt.MouseButton.LeftButton)


def let_pass(rig: Rig, room: GroupRoom, ms: int) -> None:
    while ms > 0:
        rig.clock.at_ms += 500
        ms -= 500
        room._refresh()


@pytest.mark.parametrize("form", Form)
def test_a_group_session_leaves_a_run_for_each_tied_to_the_group(rig: Rig, form: Form) -> None:
    room = set_up(rig, form)
    assert room._room is not None
    rig.qtbot.keyClick(room._console, Qt.Key.Key_Space)
    while not room._room.over:
        let_pass(rig, room, 5_000)
    rig.qtbot.keyClicks(room._console._after, "5361")  # type: ignore[union-attr]
    click(rig, "Done")
    assert rig.page is not room
    rig.window.close()
    with wiring.open_record(rig.database) as database:
        runs = database.queries.run_summaries()
        assert sorted(run.athlete for run in runs) == ["Hugo", "Ines"]
        assert {run.outcome for run in runs} == {RunOutcome.FINISHED}
        assert {run.athlete: (run.session_rpe, run.pain) for run in runs} == {"Hugo": (5, 3), "Ines": (6, 1)}
        groups = {database.groups.of_run(run.run_id) for run in runs}
        assert len(groups) == 1
        record = database.groups.read(groups.pop() or "")
        assert record.form is form
        assert database.groups.unfinished() == ()


def test_a_window_opened_for_a_group_shows_the_console_at_once(qtbot: QtBot, tmp_path: Path) -> None:
    rig = Rig(qtbot, tmp_path, open_database)
    rig.open(wiring.read_plan(rig.plan), group=GroupChoice(Form.WAVES))
    room = room_of(rig)
    assert room._room is not None
    assert room._room.session.form is Form.WAVES
    rig.window.close()


def test_a_note_of_the_coach_is_kept_with_the_run(rig: Rig) -> None:
    room = set_up(rig, Form.TOGETHER)
    rig.qtbot.keyClick(room._console, Qt.Key.Key_Space)
    let_pass(rig, room, 6_000)
    rig.qtbot.keyClicks(room._console, "2y")
    writing = room._console._writing  # type: ignore[union-attr]
    rig.qtbot.keyClicks(writing, "left heel sore")
    rig.qtbot.keyClick(writing, Qt.Key.Key_Return)
    rig.window.close()
    with wiring.open_record(rig.database) as database:
        (note,) = database.answers.notes_of("Ines")
        assert note.thing.text == "left heel sore"
        assert note.thing.run_id in {run.run_id for run in database.queries.run_summaries()}


def test_closing_the_window_ends_everybodys_run_with_every_rep_kept(rig: Rig) -> None:
    room = set_up(rig, Form.TOGETHER)
    rig.qtbot.keyClick(room._console, Qt.Key.Key_Space)
    let_pass(rig, room, 12_000)
    rig.window.close()
    runs = rig.runs()
    assert {run.outcome for run in runs} == {RunOutcome.ABANDONED}
    assert [run.reps_done for run in runs] == [1, 1]


def test_a_session_cut_short_is_offered_and_goes_on_for_all(qtbot: QtBot, tmp_path: Path) -> None:
    first = Rig(qtbot, tmp_path, open_database)
    first.open()
    first.window.open_group()
    room = set_up(first, Form.TOGETHER)
    first.qtbot.keyClick(room._console, Qt.Key.Key_Space)
    let_pass(first, room, 12_000)
    assert room._room is not None
    before = [len(facts) for facts in room._room.facts]
    room._room = None  # the program dies: nobody says that the runs have ended
    first.window.close()
    second = Rig(qtbot, tmp_path, open_database)
    second.open()
    second.window.open_group()
    again = room_of(second)
    qtbot.waitUntil(lambda: again._unfinished is not None)
    assert "2 people" in again._setup._offer_words.text()
    click(second, "Take it up again")
    assert again._room is not None
    assert [len(facts) for facts in again._room.facts] == before
    assert again._room.state.leader.stand is Stand.PAUSED
    second.qtbot.keyClick(again._console, Qt.Key.Key_Space)
    while not again._room.over:
        let_pass(second, again, 5_000)
    second.window.close()
    runs = second.runs()
    assert [(run.reps_done, run.reps_prescribed) for run in runs] == [(4, 4), (4, 4)]
    assert {run.outcome for run in runs} == {RunOutcome.FINISHED}


@pytest.mark.parametrize("lost", [False, True])
def test_a_session_cut_short_is_laid_down_and_offered_no_more(
    qtbot: QtBot, tmp_path: Path, *, lost: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    first = Rig(qtbot, tmp_path, open_database)
    first.open()
    first.window.open_group()
    room = set_up(first, Form.TOGETHER)
    first.qtbot.keyClick(room._console, Qt.Key.Key_Space)
    let_pass(first, room, 12_000)
    room._room = None  # the program dies
    first.window.close()
    second = Rig(qtbot, tmp_path, open_database)
    second.open()
    second.window.open_group()
    again = room_of(second)
    qtbot.waitUntil(lambda: again._unfinished is not None)
    if lost:
        monkeypatch.setattr("app.views.group.group_room.laid_out", lambda _group, _parse: None)
        click(second, "Take it up again")
        assert again._setup._notice.text()
    click(second, "Lay it down")
    assert not again._setup._offer.isVisible()
    second.window.close()
    assert {(run.outcome, run.reps_done) for run in second.runs()} == {(RunOutcome.ABANDONED, 1)}
    with wiring.open_record(second.database) as database:
        assert database.groups.unfinished() == ()


def test_what_cannot_be_done_is_said_on_the_page(rig: Rig) -> None:
    room = room_of(rig)
    room._setup._plan.setCurrentIndex(1)
    click(rig, "See who is here")
    assert room._console is None
    assert "missing.toml" in room._setup._notice.text()


@pytest.mark.parametrize("form", Form)
def test_the_setting_up_fits_and_everything_has_a_name(rig: Rig, form: Form) -> None:
    room = room_of(rig)
    room._setup._forms.button(list(Form).index(form)).setChecked(True)
    room._setup.grab()
    assert misfits(room._setup) == []
    assert nameless(room._setup) == []


def test_the_gym_screen_comes_and_goes_and_the_session_goes_on(rig: Rig) -> None:
    room = set_up(rig, Form.TOGETHER)
    rig.qtbot.keyClick(room._console, Qt.Key.Key_Space)
    let_pass(rig, room, 4_000)
    rig.qtbot.keyClick(room._console, Qt.Key.Key_F9)
    gym = room._gym
    assert gym is not None
    assert gym.isVisible()
    let_pass(rig, room, 2_000)
    gym.close()
    let_pass(rig, room, 2_000)
    rig.qtbot.keyClick(room._console, Qt.Key.Key_F9)
    assert room._room is not None
    assert room._room.state.leader.stand is Stand.RUNNING
    rig.window.close()
