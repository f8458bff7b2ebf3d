"""The squad's page: who is shown by choice and by search, and why in one click."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app.analysis.reason_figures import PAINFUL_RULES
from app.views.lettering import desk_scale, load_fonts
from app.views.review.room import Asks, ReviewRoom
from app.views.review.squad.columns import WHY_FIRST
from app.views.review.squad.filtering import WITHOUT_PAIN, Shown
from app.views.review.squad.line import squad_lines
from app.views.review.squad.page import NONE_SUCH
from app.views.review.squad.table import REASON_LETTERS
from app.views.theme import LIGHT, Look
from tests.squads import members, squad

FONTS = Path(__file__).parents[2] / "resources" / "fonts"


@pytest.fixture
def room(qtbot: QtBot) -> Iterator[ReviewRoom]:
    made = ReviewRoom(Look(LIGHT, load_fonts(FONTS), desk_scale(1366)), Asks())
    qtbot.addWidget(made)
    made.resize(1366, 768)
    made.show()
    made.show_squad(squad_lines(members(squad(weeks=9))))
    yield made
    made.close()


def choose(room: ReviewRoom, shown: Shown) -> None:
    """Choose who is shown, as by the mouse or by keys."""
    box = room.squad.shown
    place = next(place for place in range(box.count()) if box.itemData(place) is shown)
    box.setCurrentIndex(place)
    box.activated.emit(place)


def test_a_choice_leaves_those_it_names_and_everybody_comes_back(room: ReviewRoom) -> None:
    everybody = {line.athlete for line in room.squad.lines}
    choose(room, Shown.NEED_A_LOOK)
    shown = room.squad.lines
    assert shown
    assert len(shown) < len(everybody)
    assert all(line.attention.reasons for line in shown)
    choose(room, Shown.EVERYBODY)
    assert {line.athlete for line in room.squad.lines} == everybody


def test_a_choice_and_a_search_hold_together(room: ReviewRoom) -> None:
    choose(room, Shown.NEED_A_LOOK)
    name = room.squad.lines[-1].athlete
    room.squad.search.setText(name)
    assert [line.athlete for line in room.squad.lines] == [name]
    choose(room, Shown.OWED)
    assert room.squad.lines == ()


def test_a_choice_that_leaves_nobody_stays_in_sight_and_says_so(room: ReviewRoom) -> None:
    choose(room, Shown.OWED)
    assert room.squad.lines == ()
    assert room.squad.shown.isVisible()
    assert room.squad.card.aside.text() == NONE_SUCH


def test_why_is_asked_by_a_click_and_tells_the_rule_first(room: ReviewRoom, qtbot: QtBot) -> None:
    qtbot.mouseClick(room.squad.why_first, Qt.MouseButton.LeftButton)
    first = room.squad.lines[0]
    assert first.attention.reasons
    assert room.why.isVisible()
    heading, *_ = room.why.text().splitlines()
    assert any(heading.startswith(name) for name in PAINFUL_RULES)


def test_before_others_no_choice_and_no_answer_tells_of_pain(room: ReviewRoom, qtbot: QtBot) -> None:
    choose(room, Shown.PAIN)
    room.present(on=True)
    box = room.squad.shown
    assert [box.itemData(place) for place in range(box.count())] == list(WITHOUT_PAIN)
    assert box.currentData() is Shown.EVERYBODY
    qtbot.mouseClick(room.squad.why_first, Qt.MouseButton.LeftButton)
    assert not any(name in room.why.text() for name in PAINFUL_RULES)


def test_a_reason_keeps_room_to_be_read_beside_the_answer_to_why(room: ReviewRoom, qtbot: QtBot) -> None:
    qtbot.mouseClick(room.squad.why_first, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: room.squad.table.viewport().width() < 950)
    table = room.squad.table
    least = table.fontMetrics().averageCharWidth() * REASON_LETTERS
    assert table.horizontalHeader().sectionSize(WHY_FIRST) >= least
