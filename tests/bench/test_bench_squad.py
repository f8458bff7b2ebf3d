"""How long the squad and an athlete's page take, from the answer of the record to the painted screen."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from statistics import median
from time import perf_counter

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.views.lettering import desk_scale, load_fonts
from app.views.review.athlete.view import athlete_view
from app.views.review.room import Asks, ReviewRoom
from app.views.review.squad.line import squad_lines
from app.views.theme import LIGHT, Look
from tests.squads import members, season, squad

FONTS = Path(__file__).parents[2] / "resources" / "fonts"
ROUNDS = 7
SIZE = (1920, 1080)


def room_of(qtbot: QtBot) -> ReviewRoom:
    """A room in sight that asks nothing."""
    made = ReviewRoom(Look(LIGHT, load_fonts(FONTS), desk_scale(SIZE[0])), Asks())
    qtbot.addWidget(made)
    made.resize(*SIZE)
    made.show()
    QApplication.processEvents()
    return made


def took(act: Callable[[], object], room: ReviewRoom) -> str:
    """Median and worst of some rounds in ms, each painted to the end."""
    times = []
    for _ in range(ROUNDS):
        began = perf_counter()
        act()
        QApplication.processEvents()
        room.repaint()
        times.append(1000 * (perf_counter() - began))
    return f"median {median(times):.0f} ms, worst {max(times):.0f} ms"


@pytest.mark.bench
@pytest.mark.parametrize("athletes", [12, 400])
def test_showing_sorting_and_searching_a_squad(qtbot: QtBot, qapp: QGuiApplication, athletes: int) -> None:
    few = members(squad(weeks=9))
    many = [
        replace(each, record=replace(each.record, athlete=f"{each.record.athlete} {number}"))
        for number, each in ((number, few[number % len(few)]) for number in range(athletes))
    ]
    began = perf_counter()
    lines = squad_lines(many)
    worked = 1000 * (perf_counter() - began)
    room = room_of(qtbot)
    page = room.squad
    print(f"\n{athletes} athletes: worked out in the record's thread {worked:.0f} ms;")
    print(f"  shown {took(lambda: page.show_lines(lines), room)};")
    print(f"  sorted {took(lambda: page.table.sortByColumn(3, Qt.SortOrder.AscendingOrder), room)};")
    letters = iter("hugoina" * ROUNDS)
    print(f"  searched {took(lambda: page.search.setText(next(letters)), room)}")
    room.close_charts()


@pytest.mark.bench
@pytest.mark.parametrize("weeks", [12, 52, 520])
def test_showing_an_athlete(qtbot: QtBot, qapp: QGuiApplication, weeks: int) -> None:
    record = season(weeks=weeks)
    began = perf_counter()
    view = athlete_view(record)
    worked = 1000 * (perf_counter() - began)
    room = room_of(qtbot)
    room.open_athlete("Hugo")
    print(f"\n{weeks} weeks: worked out in the record's thread {worked:.0f} ms;")
    print(f"  shown {took(lambda: room.show_athlete(view), room)}")
    room.close_charts()
