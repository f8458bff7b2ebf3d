"""Charts of the athlete's page are worked out when they come into sight, and hold nothing until then."""

from collections.abc import Iterator

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.reviewing import Room
from tests.squads import season


@pytest.fixture
def room(qtbot: QtBot, qapp: QGuiApplication) -> Iterator[Room]:
    made = Room(qtbot, (season("Hugo"), season("Ines")))
    yield made
    made.close()


def filled(room: Room) -> list[str]:
    board = room.widget.athlete.board
    return [card.heading.text() for card in board.data_cards if card.chart.data is not None]


def test_what_is_in_sight_at_first_is_there_and_the_rest_is_not(room: Room) -> None:
    room.open("Hugo")
    assert filled(room) == [
        "Reps done of prescribed",
        "Session load",
        "Effort and pain by session",
        "Left against right",
    ]


def test_rolling_fills_what_comes_into_sight(room: Room) -> None:
    board = room.open("Hugo").widget.athlete.board
    board.verticalScrollBar().setValue(board.pain_card.y())
    QApplication.processEvents()
    assert {"Test results", "Pain by day", "Reps and tempo", "Tempo kept"} <= set(filled(room))
    assert board.pain_card.model.rows


def test_a_card_that_is_given_the_keys_is_filled(room: Room) -> None:
    board = room.open("Hugo").widget.athlete.board
    board.cards[7].chart.setFocus()
    assert board.cards[7].chart.data is not None


def test_out_of_sight_nothing_of_the_athlete_before_is_left(room: Room) -> None:
    board = room.open("Hugo").widget.athlete.board
    board.show_all()
    room.open("Ines")
    card = board.pain_card
    assert (len(card.model.rows), card.readout.text(), card.aside.text()) == (0, "", "")
    assert card.chart.data is None
    assert not any(item.isVisible() for items in card.chart.drawn for item in items.drawn("dots"))
    assert card.chart.accessibleDescription() == ""


def test_a_card_turned_into_its_table_stays_so_for_another_athlete(room: Room) -> None:
    board = room.open("Hugo").widget.athlete.board
    board.show_all()
    turned = board.cards[0], board.pain_card
    for card in turned:
        card.turn()
    room.open("Ines")
    board.verticalScrollBar().setValue(board.pain_card.y())
    QApplication.processEvents()
    assert all(card.table.isVisible() and card.model.rows for card in turned)


def test_turned_before_it_was_ever_in_sight_it_comes_as_a_table(room: Room) -> None:
    board = room.open("Hugo").widget.athlete.board
    board.pain_card.turn()
    board.verticalScrollBar().setValue(board.pain_card.y())
    QApplication.processEvents()
    assert board.pain_card.model.rows
