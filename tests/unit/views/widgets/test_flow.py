"""Parts side by side, line by line."""

import pytest
from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QSpacerItem, QWidget
from pytestqt.qtbot import QtBot

from app.views.widgets.flow import FlowLayout

GAP = 10


@pytest.fixture
def wall(qtbot: QtBot) -> QWidget:
    made = QWidget()
    qtbot.addWidget(made)
    flow = FlowLayout(made, GAP)
    for _ in range(3):
        brick = QWidget()
        brick.setObjectName("brick")
        inside = QHBoxLayout(brick)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.addSpacerItem(QSpacerItem(100, 20, QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed))
        flow.addWidget(brick)
    return made


def flow_of(wall: QWidget) -> FlowLayout:
    flow = wall.layout()
    assert isinstance(flow, FlowLayout)
    return flow


def places(wall: QWidget, width: int) -> list[QRect]:
    flow = flow_of(wall)
    flow.setGeometry(QRect(0, 0, width, 200))
    parts = (flow.itemAt(place) for place in range(flow.count()))
    return [part.geometry() for part in parts if part is not None and not part.isEmpty()]


def test_parts_go_on_in_the_next_line_where_there_is_no_room(wall: QWidget) -> None:
    assert [(each.x(), each.y()) for each in places(wall, 320)] == [(0, 0), (110, 0), (220, 0)]
    assert [(each.x(), each.y()) for each in places(wall, 319)] == [(0, 0), (110, 0), (0, 30)]
    assert {each.size() for each in places(wall, 319)} == {QSize(100, 20)}
    assert [flow_of(wall).heightForWidth(width) for width in (320, 319, 100)] == [20, 50, 80]


def test_a_part_is_never_wider_than_the_room(wall: QWidget) -> None:
    assert {each.width() for each in places(wall, 60)} == {60}


def test_hidden_parts_take_no_room(wall: QWidget) -> None:
    wall.findChildren(QWidget, "brick")[0].hide()
    assert [(each.x(), each.y()) for each in places(wall, 220)] == [(0, 0), (110, 0)]


def test_a_mirrored_layout_begins_at_the_right(wall: QWidget) -> None:
    wall.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    assert [each.x() for each in places(wall, 220)] == [120, 10, 120]


def test_a_part_can_be_taken_out(wall: QWidget) -> None:
    flow = flow_of(wall)
    first = flow.takeAt(0)
    assert first is not None
    assert (flow.count(), flow.takeAt(7), flow.itemAt(-1)) == (2, None, None)
