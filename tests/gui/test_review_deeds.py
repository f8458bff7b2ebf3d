"""What can be done from the squad and from an athlete's page, in the window with its record."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog
from pytestqt.qtbot import QtBot

from app.views.review.entry.dialog import TestDialog
from app.views.review.handout.dialog import ReportDialog
from app.views.review.planning.dialog import PlanDialog
from app.views.review.room import ReviewRoom
from tests.gui.test_review_record import entered, rig  # noqa: F401 - the fixture
from tests.rig import Rig


def dialog_of(made: Rig, qtbot: QtBot, kind: type[QDialog]) -> QDialog:
    qtbot.waitUntil(lambda: bool(made.window.findChildren(kind)), timeout=5_000)
    (dialog,) = made.window.findChildren(kind)
    return dialog


def gone(made: Rig, qtbot: QtBot, dialog: QDialog) -> None:
    kind = type(dialog)
    dialog.close()
    qtbot.waitUntil(lambda: not made.window.findChildren(kind), timeout=5_000)


def on_hugo(made: Rig, qtbot: QtBot) -> ReviewRoom:
    room = entered(made, qtbot)
    room.open_athlete("Hugo")
    qtbot.waitUntil(lambda: room.athlete.board.view is not None, timeout=5_000)
    return room


@pytest.mark.parametrize(("place", "kind"), [(0, ReportDialog), (1, TestDialog), (2, PlanDialog)])
def test_each_action_of_an_athletes_page_opens_its_dialog(
    rig: Rig,  # noqa: F811
    qtbot: QtBot,
    place: int,
    kind: type[QDialog],
) -> None:
    room = on_hugo(rig, qtbot)
    assert [door.text() for door in room.athlete.doors] == ["Report", "Enter a test", "Plan sessions"]
    qtbot.mouseClick(room.athlete.doors[place], Qt.MouseButton.LeftButton)
    gone(rig, qtbot, dialog_of(rig, qtbot, kind))


def test_what_was_planned_stands_in_the_athletes_calendar(rig: Rig, qtbot: QtBot) -> None:  # noqa: F811
    room = on_hugo(rig, qtbot)
    view = room.athlete.board.view
    assert view is not None
    before = len(view.record.due)
    qtbot.mouseClick(room.athlete.doors[2], Qt.MouseButton.LeftButton)
    dialog = dialog_of(rig, qtbot, PlanDialog)
    assert isinstance(dialog, PlanDialog)
    dialog.keep.click()
    qtbot.waitUntil(lambda: len(room.athlete.board.view.record.due) == before + 1, timeout=5_000)  # type: ignore[union-attr]
    gone(rig, qtbot, dialog)


def test_sessions_are_planned_from_the_squad_for_the_line_chosen(rig: Rig, qtbot: QtBot) -> None:  # noqa: F811
    room = entered(rig, qtbot)
    qtbot.waitUntil(lambda: bool(room.squad.lines), timeout=5_000)
    room.squad.table.selectRow(0)
    qtbot.mouseClick(room.squad.planning, Qt.MouseButton.LeftButton)
    dialog = dialog_of(rig, qtbot, PlanDialog)
    assert isinstance(dialog, PlanDialog)
    assert dialog.athlete == room.squad.lines[0].athlete
    gone(rig, qtbot, dialog)


def test_while_others_look_on_nothing_is_offered_that_shows_notes_or_names(rig: Rig, qtbot: QtBot) -> None:  # noqa: F811
    room = on_hugo(rig, qtbot)
    room.present(on=True)
    assert not any(door.isVisibleTo(room.athlete) for door in room.athlete.doors)
    assert not room.squad.planning.isVisibleTo(room.squad)
    room.present(on=False)
    assert all(door.isVisibleTo(room.athlete) for door in room.athlete.doors)
    assert room.squad.planning.isVisibleTo(room.squad)
