"""Words begin where the layout begins, and run as their own letters do."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QColor, QGuiApplication, QImage, QPainter
from pytestqt.qtbot import QtBot

from app.views.widgets.lines import END, ISOLATE, in_order, paint_words

PLACE = QRect(0, 0, 300, 40)
BEGIN = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
LEFT, RIGHT = Qt.LayoutDirection.LeftToRight, Qt.LayoutDirection.RightToLeft


@pytest.fixture
def mirrored(qtbot: QtBot) -> Iterator[None]:
    QGuiApplication.setLayoutDirection(RIGHT)
    yield
    QGuiApplication.setLayoutDirection(LEFT)


def inked(text: str, direction: Qt.LayoutDirection) -> tuple[int, int, QImage]:
    """The first and the last column of ink, and the picture."""
    image = QImage(PLACE.size(), QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    painter.setLayoutDirection(direction)
    paint_words(painter, PLACE, BEGIN, text)
    painter.end()
    columns = [
        x
        for x in range(image.width())
        if any(image.pixelColor(x, y) != QColor("white") for y in range(image.height()))
    ]
    return columns[0], columns[-1], image


def test_words_begin_at_the_side_where_the_layout_begins(qtbot: QtBot) -> None:
    assert inked("Heel raise.", LEFT)[0] < 10
    assert inked("Heel raise.", RIGHT)[1] > 290


@pytest.mark.parametrize("direction", [LEFT, RIGHT])
def test_the_full_stop_stays_at_the_end_of_its_sentence(direction: Qt.LayoutDirection, qtbot: QtBot) -> None:
    begin, end, image = inked("12 reps.", direction)
    white = QColor("white")
    heights = {
        x: [y for y in range(image.height()) if image.pixelColor(x, y) != white] for x in (begin + 1, end)
    }
    assert min(heights[end]) > image.height() // 2, "a stop is low"
    assert min(heights[begin + 1]) <= image.height() // 2, "a figure is not"


def test_a_text_is_held_together_only_where_it_would_be_turned(mirrored: None) -> None:
    assert in_order("+15 s  (T)") == f"{ISOLATE}+15 s  (T){END}"
    assert in_order("تمرين") == "تمرين"
    assert in_order("") == ""


def test_where_lines_run_from_the_left_a_text_stays_as_it_is(qtbot: QtBot) -> None:
    assert in_order("+15 s  (T)") == "+15 s  (T)"
