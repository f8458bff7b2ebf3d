"""The review where there is little, much, or something odd: sensible screens and no exception."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.views.review.run.columns import STRIP
from app.views.review.run.page import NOTHING
from app.views.review.squad.page import EMPTY
from app.views.theme import DARK_HIGH, SCHEMES
from tests.reviewed import record, session
from tests.reviewing import Room, asked, done, run_view
from tests.squads import TODAY, nothing, season, squad, unknown

LONG = (
    "Maximiliane-Theodora Featherstonehaugh-Cholmondeley von und zu Hohenlohe-Langenburg-Schillingsfürst II."
)
NAMES = (
    LONG,
    "Ἀλέξανδρος",
    "محمد عبد الله",
    "山田 太郎",
    "Ngũgĩ wa Thiong’o",
    "O\u2019Brien\n& Co",
    "👩‍🚀",
    "a",
)
Rooms = list[Room]


@pytest.fixture
def rooms(qapp: QGuiApplication) -> Iterator[Rooms]:
    made: Rooms = []
    yield made
    for each in made:
        each.close()


def walk(room: Room, name: str) -> None:
    """See every page of one athlete, and press what can be pressed on the way."""
    room.open(name)
    assert room.widget.athlete.board.view is not None
    for card in room.widget.athlete.board.data_cards:
        if card.isVisible():
            card.chart.setFocus()
            room.press(Qt.Key.Key_Home, Qt.Key.Key_Left, Qt.Key.Key_End, Qt.Key.Key_W)
            card.turn()
            room.widget.grab()
            card.turn()
    room.press(Qt.Key.Key_F8, Qt.Key.Key_F8)
    room.widget.grab()


def test_an_empty_record_says_when_there_will_be_something(qtbot: QtBot, rooms: Rooms) -> None:
    room = Room(qtbot, ())
    rooms.append(room)
    assert room.widget.squad.message.isVisible()
    assert room.widget.squad.message.text() == EMPTY
    room.press(Qt.Key.Key_W, Qt.Key.Key_Return, Qt.Key.Key_F8, Qt.Key.Key_Escape)
    assert room.left == 1


@pytest.mark.parametrize(
    "of",
    [nothing(), unknown(), record(sessions=(session(),)), season(weeks=1), season(weeks=60)],
    ids=["nothing", "unknown", "one session", "one week", "sixty weeks"],
)
def test_whatever_is_known_of_somebody_can_be_looked_at(
    qtbot: QtBot, rooms: Rooms, of: AthleteRecord
) -> None:
    room = Room(qtbot, (of,))
    rooms.append(room)
    walk(room, of.athlete)


def test_of_somebody_unknown_nothing_is_shown_as_nought(qtbot: QtBot, rooms: Rooms) -> None:
    room = Room(qtbot, (nothing(),))
    rooms.append(room)
    line = room.widget.squad.lines[0]
    told = [column.text(line) for column in room.widget.squad.model.columns][2:]
    assert told == ["–", "– · –", "– · –", "– · –", ", ".join("–" * 8), "–", "", "–"]
    room.open("Greta")
    tiles = [tile.figure for tile in room.widget.athlete.tiles.tiles if tile.isVisible()]
    assert all(figure is not None and figure.value is None for figure in tiles)


def test_names_of_any_length_and_script_are_shown_whole_in_the_tooltip(qtbot: QtBot, rooms: Rooms) -> None:
    room = Room(qtbot, squad(NAMES, 3))
    rooms.append(room)
    table = room.widget.squad.table
    shown = {str(room.widget.squad.model.index(row, 0).data()) for row in range(len(NAMES))}
    assert shown == set(NAMES)
    assert table.horizontalHeader().length() <= table.viewport().width() + 2
    for name in NAMES:
        walk(room, name)
        assert room.widget.athlete.title.toolTip() == name
    assert room.widget.width() == 1366


def test_four_hundred_athletes_are_sorted_and_searched(qtbot: QtBot, rooms: Rooms) -> None:
    few = squad(weeks=4)
    many = tuple(replace(few[number % 12], athlete=f"Athlete {number:03d}") for number in range(400))
    room = Room(qtbot, many)
    rooms.append(room)
    assert len(room.widget.squad.lines) == 400
    room.widget.squad.search.setText("399")
    assert [line.athlete for line in room.widget.squad.lines] == ["Athlete 399"]
    room.press(Qt.Key.Key_Return)
    room.widget.squad.search.clear()
    room.press(Qt.Key.Key_F8)
    assert len({line.called for line in room.widget.squad.lines}) == 400


@pytest.mark.parametrize(
    "last",
    [date(2026, 10, 25), date(2026, 3, 29), date(2026, 12, 31), date(2027, 1, 3), date(2028, 2, 29)],
    ids=["clocks back", "clocks on", "new year's eve", "week 53", "leap day"],
)
def test_weeks_around_changed_clocks_and_the_year_s_end_are_whole(
    qtbot: QtBot, rooms: Rooms, last: date
) -> None:
    runs = tuple(session(last - timedelta(days=number)) for number in range(10))
    of = record(first=last - timedelta(days=20), last=last, today=last + timedelta(days=1), sessions=runs)
    room = Room(qtbot, (of,))
    rooms.append(room)
    walk(room, "Hugo")
    view = room.widget.athlete.board.view
    assert view is not None
    days = view.charts[7].data.all_series[0]
    assert len(days.values) == 21
    assert days.values[-10:] == (200.0,) * 10
    assert sum(mark.run_id is not None for week in view.weeks for day in week.days for mark in day) == 10


def test_a_run_without_reps_and_one_without_bouts_can_be_looked_at(qtbot: QtBot, rooms: Rooms) -> None:
    room = Room(qtbot, (season(),))
    rooms.append(room)
    room.widget.open_run("any")
    page = room.widget.run
    page.show_view(
        run_view(((asked(0), done(0, 0)), (asked(1, low=0, high=0), None))), pain=True, correcting=True
    )
    QApplication.processEvents()
    room.widget.grab()
    assert [page.model.columns[4].text(line) for line in page.model.rows] == ["0 of 8", "– of 0"]
    page.show_view(run_view(()), pain=True, correcting=False)
    assert page.message.text() == NOTHING
    assert page.message.isVisible()


def test_long_words_of_a_run_give_way_to_its_strips(qtbot: QtBot, rooms: Rooms) -> None:
    room = Room(qtbot, (season(),))
    rooms.append(room)
    room.widget.open_run("any")
    page = room.widget.run
    long = done(0, note=LONG * 5)
    page.show_view(run_view(((asked(0, exercise=LONG), long),)), pain=True, correcting=True)
    QApplication.processEvents()
    header = page.table.horizontalHeader()
    assert header.length() <= page.table.viewport().width() + 2
    assert header.sectionSize(STRIP) >= 150
    assert LONG in str(page.model.index(0, 1).data(Qt.ItemDataRole.ToolTipRole))
    faulty = done(0, note="Pinches at the front when the arm goes up.", pain=6)
    named = asked(0, exercise="Stand on one leg, ball round the waist", side=Side.RIGHT, low=10, high=12)
    page.show_view(run_view(((named, faulty),)), pain=True, correcting=True)
    QApplication.processEvents()
    assert header.length() <= page.table.viewport().width() + 2


@pytest.mark.parametrize("scheme", SCHEMES, ids=lambda scheme: scheme.name)
def test_every_page_can_be_drawn_in_every_scheme(qtbot: QtBot, rooms: Rooms, scheme: object) -> None:
    chosen = next(each for each in SCHEMES if each is scheme)
    room = Room(qtbot, squad(weeks=4), scheme=chosen, size=(1920, 1080))
    rooms.append(room)
    room.widget.grab()
    walk(room, "Hugo")
    room.widget.open_run("any")
    ground = room.widget.grab().toImage().pixelColor(4, room.widget.height() - 4).name().upper()
    assert ground == chosen.ground.upper()


def test_another_look_reaches_what_is_seen_already(qtbot: QtBot, rooms: Rooms) -> None:
    room = Room(qtbot, squad(weeks=4))
    rooms.append(room)
    room.open("Hugo")
    room.widget.set_look(replace(room.widget._look, scheme=DARK_HIGH))
    QApplication.processEvents()
    image = room.widget.athlete.board.cards[0].chart.grab().toImage()
    colours = {image.pixelColor(x, 6).name().upper() for x in range(0, image.width(), 20)}
    assert DARK_HIGH.panel.upper() in colours
    assert TODAY.year == 2026
