"""The card of signs on an athlete's page: why in one click or by Return, whatever there is to show."""

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.views.review.athlete.progression_card import CAUTION, CAUTION_SHOWN, ProgressionCard
from app.views.review.athlete.progression_words import NO_WEEKS
from tests.exercised import season_of_sets
from tests.reviewing import Room
from tests.squads import TODAY, nothing, season

LONG = "Single-leg landing from a low box with a turn in the air, held until the whistle, arms over the head"


@pytest.fixture
def rooms(qtbot: QtBot) -> Iterator[list[Room]]:
    made: list[Room] = [Room(qtbot, (season("Hugo"), nothing()))]
    yield made
    for room in made:
        room.close()


def card_of(room: Room, name: str) -> ProgressionCard:
    room.open(name)
    card = room.widget.athlete.board.signs
    room.widget.athlete.board.ensureWidgetVisible(card)
    QApplication.processEvents()
    return card


def test_a_click_on_a_row_says_why(rooms: list[Room]) -> None:
    card = card_of(rooms[0], "Hugo")
    place = card.table.visualRect(card.model.index(0, 0)).center()
    QTest.mouseClick(card.table.viewport(), Qt.MouseButton.LeftButton, pos=place)
    why = rooms[0].widget.why
    assert why.isVisible()
    assert why.heading.text() == "External rotation in side lying, left"
    for told in ("Two for two · External rotation in side lying, left: not yet", "NSCA, from memory."):
        assert told in why.text()


def test_the_card_stays_in_sight_when_the_answer_takes_its_room(rooms: list[Room]) -> None:
    card = card_of(rooms[0], "Hugo")
    board = rooms[0].widget.athlete.board
    QTest.mouseClick(card.changes[0], Qt.MouseButton.LeftButton)
    for _ in range(3):
        QApplication.processEvents()
    assert abs(card.y() - board.verticalScrollBar().value()) <= 1
    rooms[0].press(Qt.Key.Key_Escape)
    for _ in range(3):
        QApplication.processEvents()
    assert not rooms[0].widget.why.isVisible()
    assert card.visibleRegion().boundingRect().height() > card.height() // 2


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_W])
def test_a_key_says_why_of_the_chosen_row(rooms: list[Room], key: Qt.Key) -> None:
    card = card_of(rooms[0], "Hugo")
    card.table.setFocus()
    card.table.selectRow(1)
    QTest.keyClick(card.table, key)
    assert rooms[0].widget.why.heading.text() == "External rotation in side lying, right"


def test_a_change_of_the_week_says_why(rooms: list[Room]) -> None:
    card = card_of(rooms[0], "Hugo")
    QTest.mouseClick(card.changes[0], Qt.MouseButton.LeftButton)
    told = rooms[0].widget.why.text()
    assert rooms[0].widget.why.heading.text() == "Load"
    assert "Load, change in percent · Week 47, 16 – 22 Nov 2026" in told
    assert "A soft prompt, no limit" in told


def test_the_caution_tells_nothing_of_pain_in_presentation(rooms: list[Room]) -> None:
    card = card_of(rooms[0], "Hugo")
    assert card.aside.text() == CAUTION
    rooms[0].press(Qt.Key.Key_F8)
    assert card.aside.text() == CAUTION_SHOWN
    assert "pain" not in CAUTION_SHOWN


def test_without_a_session_it_says_that_there_is_none(rooms: list[Room]) -> None:
    card = card_of(rooms[0], "Greta")
    assert card.empty.isVisible()
    assert not card.table.isVisible()
    assert [button.text() for button in card.changes] == [
        "Load: unknown",
        "Contacts: unknown",
        "Volume: unknown",
    ]
    card.show_signs((), (), pain=True)
    assert card.week.text() == NO_WEEKS
    assert not any(button.isVisible() for button in card.changes)


def test_forty_exercises_with_names_of_a_hundred_letters_are_all_there(qtbot: QtBot) -> None:
    sessions = tuple(
        replace(each, exercise=f"{each.exercise} {LONG}"[:100]) if number % 5 == 0 else each
        for number, each in enumerate(season_of_sets(TODAY, 40))
    )
    room = Room(qtbot, (replace(season("Hugo"), exercises=sessions),))
    card = card_of(room, "Hugo")
    assert card.model.rowCount() > 70
    table = card.table
    across = sum(table.columnWidth(column) for column in range(card.model.columnCount()))
    assert across <= table.viewport().width() + 1
    assert card.geometry().right() <= room.widget.athlete.board.viewport().width()
    room.close()
