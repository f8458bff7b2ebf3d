"""The review on a real record: what was led is in the squad, on the athlete's page and on the run's."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app.domain.keeping import Note
from app.domain.planned import PlannedSession
from app.store.database import open_database
from app.views.review.room import Place, ReviewRoom
from tests.filled import FIRST, fill, invented_runs
from tests.rig import Rig

NOW = FIRST + timedelta(days=20)


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Iterator[Rig]:
    made = Rig(qtbot, tmp_path, open_database)
    fill(made.database, invented_runs(12, unfinished=False))
    with open_database(made.database) as database:
        day = (FIRST + timedelta(days=1)).date()
        planned = PlannedSession(
            "0190b5a0-0000-7000-8000-00000000a001", "Hugo", "Landing control", day, FIRST, "Europe/Lisbon"
        )
        database.planned.keep(planned)
        note = Note(
            "0190b5a0-0000-7000-8000-00000000a002", "Hugo", "Steadier.", "Tomas", FIRST, "Europe/Lisbon"
        )
        database.answers.keep(note)
    made.house = replace(made.house, stamp=lambda: (NOW, "Europe/Lisbon"))
    yield made
    made.window.close()


def entered(rig: Rig, qtbot: QtBot) -> ReviewRoom:
    """The room, once the squad is there."""
    rig.open()
    rig.window.open_review()
    (room,) = rig.window.findChildren(ReviewRoom)
    qtbot.waitUntil(lambda: bool(room.squad.lines), timeout=5_000)
    return room


def test_from_the_squad_to_a_rep_and_back_by_keys(rig: Rig, qtbot: QtBot) -> None:
    room = entered(rig, qtbot)
    assert sorted(line.athlete for line in room.squad.lines) == ["Bram", "Hugo", "Ines", "Kaya"]
    room.squad.search.setText("Hugo")
    qtbot.keyClick(room.squad.table, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: room.athlete.board.view is not None, timeout=5_000)
    view = room.athlete.board.view
    assert view is not None
    assert len(view.runs) == len(view.record.sessions) == 3
    assert [note.text for note in view.notes] == ["Steadier."]
    marks = [mark.standing.value[1] for week in view.weeks for day in week.days for mark in day]
    assert sorted(marks) == ["missed", "not planned", "not planned", "not planned"]
    room.athlete.board.runs.table.selectRow(0)
    qtbot.keyClick(room.athlete.board.runs.table, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: room.run.view is not None, timeout=5_000)
    assert room.run.view is not None
    assert [line.asked.bout for line in room.run.view.lines] == [0, 1, 2, 3]
    assert [column.text(room.run.model.rows[3]) for column in room.run.model.columns][6:] == [
        "left out: equipment",
        "–",
        "–",
        "no towel left",
    ]
    qtbot.keyClick(room.run.table, Qt.Key.Key_Escape)
    assert room.place is Place.ATHLETE


def test_a_run_is_opened_from_all_sessions_and_esc_leads_back_there(rig: Rig, qtbot: QtBot) -> None:
    room = entered(rig, qtbot)
    qtbot.mouseClick(room.squad.all_sessions, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: room.sessions.content is not None, timeout=5_000)
    assert room.sessions.content is not None
    room.sessions.content.list.selectRow(0)
    qtbot.keyClick(room.sessions.content.list, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: room.run.view is not None, timeout=5_000)
    qtbot.keyClick(room.run.table, Qt.Key.Key_Escape)
    assert room.sessions.isVisible()


def test_all_there_is_reaches_back_to_the_first_day(rig: Rig, qtbot: QtBot) -> None:
    late = datetime(2029, 3, 1, 9, tzinfo=UTC)
    rig.house = replace(rig.house, stamp=lambda: (late, "Europe/Lisbon"))
    room = entered(rig, qtbot)
    room.open_athlete("Hugo")
    qtbot.waitUntil(lambda: room.athlete.board.view is not None, timeout=5_000)
    assert room.athlete.board.view is not None
    assert room.athlete.board.view.record.sessions == ()
    choice = room.athlete.range.choice
    choice.setCurrentIndex(3)
    choice.activated.emit(3)
    qtbot.waitUntil(lambda: bool(room.athlete.board.view and room.athlete.board.view.runs), timeout=5_000)
    assert room.athlete.board.view.charts[0].data.unit == "month"


def test_another_look_shows_the_same_page_again(rig: Rig, qtbot: QtBot) -> None:
    room = entered(rig, qtbot)
    room.open_athlete("Hugo")
    qtbot.waitUntil(lambda: room.athlete.board.view is not None, timeout=5_000)
    rig.window._renew()
    anew = rig.window.findChildren(ReviewRoom)[-1]
    assert anew is not room
    qtbot.waitUntil(lambda: anew.athlete.board.view is not None, timeout=5_000)
    assert (anew.place, anew.athlete.athlete) == (Place.ATHLETE, "Hugo")
