"""The chart kit: what is known is drawn where it belongs, the unknown is a gap, and all of it can be read."""

import re
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from app.views.charts.data_card import COPIED, DataCard
from app.views.charts.export import NO_KIND, NOT_WRITTEN
from app.views.lettering import desk_scale, load_fonts
from app.views.theme import DARK, LIGHT, Look, palette
from tests import chart_data

FONTS = Path(__file__).parents[2] / "resources" / "fonts"


class Shown:
    """A card in sight."""

    def __init__(self, qtbot: QtBot, panels: int) -> None:
        self.card = DataCard("Hold, left and right", panels)
        qtbot.addWidget(self.card)
        self.card.setPalette(palette(LIGHT))
        self.card.set_look(Look(LIGHT, load_fonts(FONTS), desk_scale(1366)))
        self.card.resize(660, 380)
        self.card.show()
        self.card.activateWindow()
        qtbot.waitUntil(self.card.isActiveWindow)

    def press(self, key: Qt.Key, keys: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        QTest.keyClick(self.card.chart, key, keys)


@pytest.fixture
def shown(qtbot: QtBot, qapp: QGuiApplication) -> Iterator[Shown]:
    made = Shown(qtbot, 1)
    yield made
    made.card.close_plots()


@pytest.fixture
def double(qtbot: QtBot, qapp: QGuiApplication) -> Iterator[Shown]:
    made = Shown(qtbot, 2)
    yield made
    made.card.close_plots()


def test_dots_and_intervals_stand_at_what_is_known_and_a_gap_has_its_word(shown: Shown) -> None:
    shown.card.show_data(chart_data.weeks(0.6, None, None, 0.9))
    (dots,) = shown.card.chart.drawn[0].drawn("dots")
    assert list(dots.getData()[0]) == [0, 3]
    assert list(dots.getData()[1]) == [0.6, 0.9]
    (interval,) = shown.card.chart.drawn[0].drawn("interval")
    assert list(interval.opts["y0"]) == pytest.approx([0.5, 0.8])
    (gap,) = [item for item in shown.card.chart._gaps if item.isVisible()]
    assert (gap.toPlainText(), gap.pos().x()) == ("off", 1.5)


def test_what_is_still_to_come_is_no_gap(shown: Shown) -> None:
    shown.card.show_data(replace(chart_data.weeks(0.6, None, 0.9, None), gaps_up_to=3))
    named = [item.pos().x() for item in shown.card.chart._gaps if item.isVisible()]
    assert named == [1.0]
    assert shown.card.chart.place == 2


def test_lines_break_where_a_value_is_unknown(shown: Shown) -> None:
    shown.card.show_data(chart_data.sides((1.0, None, 3.0), (2.0, 3.0, 4.0)))
    left, right = shown.card.chart.drawn[0].drawn("curve")
    assert [str(value) for value in left.getData()[1]] == ["1.0", "nan", "3.0"]
    assert list(right.getData()[1]) == [2.0, 3.0, 4.0]
    assert all(curve.opts["connect"] == "finite" for curve in (left, right))


def test_each_side_has_its_shape_and_its_word_at_the_end_of_its_line(shown: Shown) -> None:
    shown.card.show_data(chart_data.sides((1.0, 2.0, None), (2.0, 3.0, 4.0)))
    symbols = [dots.opts["symbol"] for dots in shown.card.chart.drawn[0].drawn("dots")]
    ends = shown.card.chart.drawn[0].drawn("end")
    assert symbols == ["s", "o"]
    assert [(end.toPlainText(), end.pos().x(), end.pos().y()) for end in ends] == [
        ("left", 1.0, 2.0),
        ("right", 2.0, 4.0),
    ]


def test_lines_of_a_chart_are_one_pixel_wide(shown: Shown) -> None:
    shown.card.show_data(chart_data.sides((1.0, 2.0), (2.0, 3.0)))
    items = shown.card.chart.drawn[0]
    pens = [curve.opts["pen"] for curve in (*items.drawn("curve"), *items.drawn("slope"))]
    assert len(pens) == 3
    assert {pen.width() for pen in pens} == {1}
    assert all(pen.isCosmetic() for pen in pens)


def test_an_unknown_bar_is_a_dash_at_the_ground_line_and_no_bar(double: Shown) -> None:
    data = chart_data.loads(9)
    double.card.show_data(data)
    (bars,) = double.card.chart.drawn[1].drawn("bars")
    (dash,) = double.card.chart.drawn[1].drawn("dash")
    assert list(dash.getData()[0]) == [3]
    assert list(dash.getData()[1]) == [0]
    assert list(bars.opts["x"]) == [0, 1, 2, 4, 5, 6, 7, 8]


def test_items_are_used_again_when_other_data_come(shown: Shown) -> None:
    shown.card.show_data(chart_data.sides((1.0, 2.0), (2.0, 3.0)))
    before = len(shown.card.chart.plots[0].items)
    shown.card.show_data(chart_data.weeks(0.5, 0.6, 0.7))
    shown.card.show_data(chart_data.sides((1.0, 2.0, 3.0, 1.0), (2.0, 3.0, 4.0, 5.0)))
    assert len(shown.card.chart.drawn[0].drawn("curve")) == 2
    assert len(shown.card.chart.plots[0].items) <= before + 1
    shown.card.show_data(chart_data.weeks(0.5))
    assert shown.card.chart.drawn[0].drawn("curve") == []
    assert not any(item.isVisible() for item in shown.card.chart.drawn[0]._pools["curve"])


def test_pointing_finds_the_nearest_of_uneven_places(shown: Shown) -> None:
    at = (0.0, 0.5, 6.0, 9.0)
    shown.card.show_data(chart_data.sides((1.0, 2.0, 3.0, 4.0), (2.0, 3.0, 4.0, 5.0), at))
    chart = shown.card.chart
    for position, place in ((-3.0, 0), (0.2, 0), (0.4, 1), (3.2, 1), (3.4, 2), (7.4, 2), (50.0, 3)):
        assert chart.nearest(position) == place
    spot = QPointF(chart.plots[0].vb.mapViewToScene(QPointF(6.1, 20.0)))
    chart.graphics.scene().sigMouseMoved.emit(spot)
    assert shown.card.readout.text() == "2 Nov · left 3 s · right 4 s"
    assert list(chart.drawn[0]._ring.getData()[0]) == [6.0, 6.0]


def test_the_table_has_a_row_a_place_with_dashes_for_the_unknown(shown: Shown) -> None:
    shown.card.show_data(chart_data.sides((1.0, None), (2.0, 3.0)))
    titles = [column.title for column in shown.card.model.columns]
    cells = [[column.text(row) for column in shown.card.model.columns] for row in shown.card.model.rows]
    assert titles == ["Day", "left", "right"]
    assert cells == [["0 Nov", "1 s", "2 s"], ["1 Nov", "–", "3 s"]]


def test_t_turns_chart_and_table_and_the_keys_go_along(shown: Shown) -> None:
    shown.card.show_data(chart_data.weeks(0.5, 0.6))
    shown.card.chart.setFocus()
    shown.press(Qt.Key.Key_T)
    assert shown.card.table.isVisible()
    assert shown.card.table.hasFocus()
    QTest.keyClick(shown.card.table, Qt.Key.Key_T)
    assert shown.card.chart.isVisible()


def test_why_is_asked_of_the_place_pointed_at_by_key_button_and_return(shown: Shown, qtbot: QtBot) -> None:
    shown.card.show_data(chart_data.weeks(0.5, 0.6, 0.7))
    asked: list[int] = []
    shown.card.why.connect(asked.append)
    shown.card.chart.setFocus()
    shown.press(Qt.Key.Key_Left)
    shown.press(Qt.Key.Key_W)
    shown.press(Qt.Key.Key_Home)
    shown.press(Qt.Key.Key_Return)
    qtbot.mouseClick(shown.card.ask_why, Qt.MouseButton.LeftButton)
    shown.card.turn()
    shown.card.table.selectRow(2)
    shown.card._want_why()
    assert asked == [1, 0, 0, 2]


def test_the_figures_are_copied_as_a_table(shown: Shown) -> None:
    shown.card.show_data(chart_data.weeks(0.5, None))
    shown.card.chart.setFocus()
    shown.press(Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text() == "Week\tReps done\n36\t50%\n37\t–"
    assert shown.card.readout.text() == COPIED


def test_a_chart_is_kept_as_svg_with_its_words_and_in_colours_of_print(shown: Shown, tmp_path: Path) -> None:
    shown.card.set_look(Look(DARK, "Inter", desk_scale(1366)))
    shown.card.show_data(chart_data.sides((1.0, 2.0), (2.0, 3.0)))
    shown.card.save_as(tmp_path / "hold")
    text = (tmp_path / "hold.svg").read_text(encoding="utf-8")
    words = {word.strip() for word in re.findall(r"<text[^>]*>([^<]*)</text>", text)}
    assert QSvgRenderer(str(tmp_path / "hold.svg")).isValid()
    assert {"Hold, left and right", "left", "right", "0 Nov", "day"} <= words
    assert DARK.panel.lower() not in text.lower()
    assert shown.card.chart.look is not None
    assert shown.card.chart.look.scheme is DARK
    assert str(tmp_path / "hold.svg") in shown.card.readout.text()


def test_a_chart_is_kept_as_png_of_twice_its_size_on_white(shown: Shown, tmp_path: Path) -> None:
    shown.card.set_look(Look(DARK, "Inter", desk_scale(1366)))
    shown.card.show_data(chart_data.weeks(0.5, 0.6))
    shown.card.save_as(tmp_path / "weeks.png")
    image = QImage(str(tmp_path / "weeks.png"))
    assert image.width() > 2 * shown.card.chart.width()
    assert image.pixelColor(2, 2).name() == "#ffffff"
    seen = {
        image.pixelColor(x, y).name() for x in range(0, image.width(), 3) for y in range(0, image.height(), 3)
    }
    assert DARK.panel.lower() not in seen
    assert LIGHT.accent.lower() in seen


@pytest.mark.parametrize(
    ("name", "sentence"), [("no/where.svg", NOT_WRITTEN), ("a.gif", NO_KIND), ("no/x.png", NOT_WRITTEN)]
)
def test_what_cannot_be_kept_is_said(shown: Shown, tmp_path: Path, name: str, sentence: str) -> None:
    shown.card.show_data(chart_data.weeks(0.5, 0.6))
    shown.card.save_as(tmp_path / name)
    assert shown.card.readout.text() == sentence.format(path=tmp_path / name)
    assert list(tmp_path.iterdir()) == []


def test_nothing_to_draw_is_a_sentence_and_comes_back_with_data(shown: Shown) -> None:
    shown.card.show_data(chart_data.weeks())
    assert shown.card.empty.isVisible()
    assert shown.card.empty.text() == "No session in this time."
    assert not shown.card.switch.isEnabled()
    shown.card.show_data(chart_data.weeks(None, None))
    assert shown.card.empty.isVisible()
    shown.card.show_data(chart_data.weeks(0.5))
    assert shown.card.chart.isVisible()
    assert shown.card.switch.isEnabled()


def test_a_chart_follows_another_look(shown: Shown) -> None:
    shown.card.show_data(chart_data.sides((1.0, 2.0), (2.0, 3.0)))
    shown.card.set_look(Look(DARK, "Inter", desk_scale(1366)))
    colours = [dots.opts["brush"].color().name().upper() for dots in shown.card.chart.drawn[0].drawn("dots")]
    assert colours == [DARK.left.upper(), DARK.right.upper()]
