"""Panels that fold where they are too wide and are scrolled where they are too high."""

from collections.abc import Callable
from dataclasses import dataclass

import pytest
from PySide6.QtWidgets import QApplication, QHBoxLayout, QLabel, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from app.views.lettering import type_scale
from app.views.theme import DARK, Look
from app.views.widgets.columns import Columns
from app.views.widgets.faces import Faces, Folding
from app.views.widgets.plain import scrolling

LOOK = Look(DARK, "Inter", type_scale(16))


def block(width: int, height: int) -> QWidget:
    made = QWidget()
    made.setMinimumSize(width, height)
    return made


class Panel(QWidget):
    """Two parts in a row, one of which scrolls a tall list."""

    def __init__(self) -> None:
        super().__init__()
        row = QHBoxLayout(self)
        self.words = QLabel("short")
        self.list = scrolling(block(200, 900), "a list")
        left = QVBoxLayout()
        left.addWidget(self.words)
        left.addWidget(self.list)
        row.addLayout(left)
        row.addWidget(block(300, 200))


@dataclass
class Shown:
    """A panel in faces of a width."""

    faces: Faces
    panel: Panel

    @property
    def place(self) -> Folding:
        place = self.faces.currentWidget()
        assert isinstance(place, Folding)
        return place

    def resize(self, width: int) -> None:
        self.faces.resize(width, 400)
        QApplication.processEvents()


Show = Callable[[int], Shown]


@pytest.fixture
def show(qtbot: QtBot) -> Show:
    def shown(width: int) -> Shown:
        made = Shown(Faces(LOOK), Panel())
        qtbot.addWidget(made.faces)
        made.faces.add(QWidget())
        made.faces.add(made.panel, "The panel")
        made.faces.show()
        made.resize(width)
        made.faces.show_face(made.panel)
        QApplication.processEvents()
        assert made.faces.face is made.panel
        return made

    return shown


def test_a_row_with_room_for_it_stays_a_row_and_scrolls_its_own_list(show: Show) -> None:
    made = show(800)
    place, panel = made.place, made.panel
    assert not place.folded
    assert panel.height() == place.viewport().height()
    assert panel.list.verticalScrollBar().maximum() > 0


def test_a_row_too_wide_becomes_a_column_that_is_scrolled_as_a_whole(show: Show) -> None:
    made = show(400)
    place, panel = made.place, made.panel
    assert place.folded
    assert panel.list.verticalScrollBar().maximum() == 0
    assert place.verticalScrollBar().maximum() > 0
    assert panel.width() <= place.viewport().width()


def test_it_unfolds_when_there_is_room_again(show: Show) -> None:
    made = show(400)
    place, panel = made.place, made.panel
    made.resize(800)
    assert not place.folded
    assert panel.list.minimumHeight() == 0


def test_longer_words_fold_it(show: Show) -> None:
    made = show(620)
    place, panel = made.place, made.panel
    assert not place.folded
    panel.words.setText("words that are a good deal longer than those before them were " * 2)
    QApplication.processEvents()
    assert place.folded


def test_a_face_without_a_name_takes_the_room_there_is(qtbot: QtBot) -> None:
    faces, panel = Faces(LOOK), Panel()
    qtbot.addWidget(faces)
    faces.add(panel)
    faces.show_face(panel)
    assert faces.currentWidget() is panel


def test_columns_stand_side_by_side_or_one_below_the_other(qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    columns = Columns(((block(200, 50), 1), (block(300, 50), 1)), 10)
    columns.setParent(window)
    window.show()
    for width, stacked in ((520, False), (505, True), (520, False)):
        columns.resize(width, 300)
        assert columns.stacked is stacked
    assert columns.minimumSizeHint().width() == 300
