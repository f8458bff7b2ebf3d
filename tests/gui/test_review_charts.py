"""The charts of Review: they draw the figures, leave gaps for the unknown, and say what they show."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QGuiApplication, QPainter, QPixmap
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.analysis.adherence import reps_by_week
from app.analysis.load import loads_by_session
from app.domain.records import RunSummary
from app.views.charts.chart import Chart
from app.views.lettering import desk_scale, load_fonts
from app.views.review.content import ReviewContent, load_note
from app.views.review.week_chart import week_labels
from app.views.theme import LIGHT, Look
from tests.summaries import season, summary

FONTS = Path(__file__).parents[2] / "resources" / "fonts"
BEGINS = datetime(2026, 9, 2, 9, tzinfo=UTC)


def in_week(number: int, **changes: object) -> RunSummary:
    """A run in a week counted from 0."""
    return summary(
        run_id=f"week-{number}", started_at=BEGINS + timedelta(weeks=number), zone="UTC", **changes
    )


@pytest.fixture
def shown(qtbot: QtBot, qapp: QGuiApplication) -> Iterator[ReviewContent]:
    made = ReviewContent(Look(LIGHT, load_fonts(FONTS), desk_scale(1366)))
    qtbot.addWidget(made)
    made.resize(1300, 700)
    made.show()
    yield made
    made.close_charts()


def spot(chart: Chart, row: int, place: float, height: float) -> QPointF:
    """Where a place and a height lie in the drawing."""
    return QPointF(chart.plots[row].vb.mapViewToScene(QPointF(place, height)))


def test_each_week_with_a_session_has_a_dot_at_its_share_and_its_interval(shown: ReviewContent) -> None:
    runs = [in_week(0, reps_met=62), in_week(1, reps_met=80), in_week(3, reps_met=100)]
    shown.show_runs(runs)
    x, y = shown.weeks._dots.getData()
    assert list(x) == [0, 1, 3]
    assert list(y) == pytest.approx([0.62, 0.80, 1.0])
    intervals = [week.interval for week in reps_by_week(runs) if week.interval]
    assert list(shown.weeks._intervals.opts["y0"]) == pytest.approx([bound.low for bound in intervals])
    assert list(shown.weeks._intervals.opts["y1"]) == pytest.approx([bound.high for bound in intervals])


def test_weeks_off_are_named_once_a_stretch_and_never_drawn_as_zero(shown: ReviewContent) -> None:
    shown.show_runs([in_week(0), in_week(3), in_week(5)])
    named = [item for item in shown.weeks._gaps if item.isVisible()]
    assert [item.pos().x() for item in named] == [1.5, 4.0]
    assert all(item.toPlainText() == "off" for item in named)
    assert 0.0 not in list(shown.weeks._dots.getData()[1])
    shown.show_runs([in_week(0)])
    assert not any(item.isVisible() for item in shown.weeks._gaps)


def test_each_rated_session_has_a_diamond_and_a_bar_and_each_unknown_a_dash(shown: ReviewContent) -> None:
    shown.show_runs(
        [in_week(0, session_rpe=4), in_week(1, session_rpe=None), in_week(2, outcome=None, elapsed_ms=None)]
    )
    rated, efforts = shown.loads._marks.getData()
    assert (list(rated), list(efforts)) == ([0, 2], [4, 5])
    assert list(shown.loads._bars.opts["x"]) == [0]
    assert list(shown.loads._bars.opts["height"]) == pytest.approx([160])
    assert list(shown.loads._unknown.getData()[0]) == [1, 2]


def test_an_effort_of_nought_is_a_bar_of_nought_and_no_dash(shown: ReviewContent) -> None:
    shown.show_runs([in_week(0, session_rpe=0)])
    assert list(shown.loads._bars.opts["height"]) == [0]
    assert list(shown.loads._unknown.getData()[0]) == []


def test_items_are_used_again_and_not_added_when_other_runs_come(shown: ReviewContent) -> None:
    runs = season()
    shown.show_runs(runs)
    before = [len(plot.items) for chart in (shown.weeks, shown.loads) for plot in chart.plots]
    for _ in range(3):
        shown.show_runs(runs[:40])
        shown.show_runs(runs)
    assert [len(plot.items) for chart in (shown.weeks, shown.loads) for plot in chart.plots] == before


def test_pointing_with_the_mouse_gives_the_figures_in_words(shown: ReviewContent) -> None:
    shown.show_runs([in_week(0, reps_met=62), in_week(1, reps_met=80)])
    assert shown.week_card.readout.text().startswith("Week 37")
    shown.weeks.graphics.scene().sigMouseMoved.emit(spot(shown.weeks, 0, 0.2, 0.4))
    assert "62 of 100 reps" in shown.week_card.readout.text()
    shown.loads.graphics.scene().sigMouseMoved.emit(spot(shown.loads, 1, 0.1, 50.0))
    assert shown.load_card.readout.text() == "Wed 2 Sep 2026, 09:00 · RPE 5 × 40 min = 200 AU · Hugo"


def test_pointing_beside_the_plots_changes_nothing(shown: ReviewContent) -> None:
    shown.show_runs([in_week(0), in_week(1)])
    shown.weeks.graphics.scene().sigMouseMoved.emit(QPointF(-500.0, -500.0))
    assert shown.weeks.place == 1


def test_the_arrow_keys_move_along_the_places(shown: ReviewContent) -> None:
    shown.show_runs([in_week(number, reps_met=60 + number) for number in range(5)])
    chart = shown.weeks
    for key, place in (
        (Qt.Key.Key_Left, 3),
        (Qt.Key.Key_Home, 0),
        (Qt.Key.Key_Left, 0),
        (Qt.Key.Key_Right, 1),
        (Qt.Key.Key_End, 4),
        (Qt.Key.Key_Right, 4),
    ):
        QTest.keyClick(chart, key)
        assert chart.place == place
        assert f"{60 + place} of 100 reps" in chart.accessibleDescription()


def test_a_place_out_of_sight_is_brought_into_sight(shown: ReviewContent) -> None:
    shown.show_runs(season())
    chart = shown.loads
    assert chart.plots[1].vb.viewRange()[0][0] > 100
    QTest.keyClick(chart, Qt.Key.Key_Home)
    first, last = chart.plots[1].vb.viewRange()[0]
    assert first < 0 < last
    assert chart.plots[0].vb.viewRange()[0] == pytest.approx([first, last])


def test_a_run_chosen_in_the_list_is_pointed_at_in_the_chart_and_back(shown: ReviewContent) -> None:
    runs = [in_week(number, reps_met=60 + number) for number in range(5)]
    shown.show_runs(runs)
    shown.list.selectRow(3)
    assert shown.model.rows[3].run_id == "week-1"
    assert shown.loads.place == 1
    shown.loads.point_at(4)
    QTest.keyClick(shown.loads, Qt.Key.Key_Return)
    assert [index.row() for index in shown.list.selectionModel().selectedRows()] == [0]


def test_every_chart_is_also_a_table_of_the_same_figures(shown: ReviewContent) -> None:
    runs = [in_week(0, reps_met=62), in_week(2, reps_met=80, session_rpe=None)]
    shown.show_runs(runs)
    card = shown.week_card
    QTest.mouseClick(card.switch, Qt.MouseButton.LeftButton)
    assert card.table.isVisible()
    assert not card.chart.isVisible()
    cells = [[column.text(week) for column in card.model.columns] for week in card.model.rows]
    assert cells == [
        ["2026-W38", "1", "80", "100", "80\u202f%", "71 to 87\u202f%", "12"],
        ["2026-W37", "–", "–", "–", "–", "–", "–"],
        ["2026-W36", "1", "62", "100", "62\u202f%", "52 to 71\u202f%", "30"],
    ]
    loads = shown.load_card.model
    assert [[column.text(session) for column in loads.columns] for session in loads.rows] == [
        ["Wed 16 Sep 2026, 09:00", "Hugo", "–", "40", "–"],
        ["Wed 2 Sep 2026, 09:00", "Hugo", "5", "40", "200"],
    ]
    QTest.mouseClick(card.switch, Qt.MouseButton.LeftButton)
    assert card.chart.isVisible()


def test_the_numbers_of_the_weeks_carry_their_year_where_there_are_two() -> None:
    weeks = reps_by_week([summary(started_at=datetime(2026, 12, 30, tzinfo=UTC)), in_week(18)])
    assert week_labels(weeks) == ("53 ’26", "1 ’27")
    assert week_labels(weeks[:1]) == ("53",)


def test_the_load_says_its_unit_what_is_missing_and_how_to_see_the_rest() -> None:
    few = loads_by_session([in_week(0)])
    assert load_note(few) == "load in AU = RPE × minutes"
    many = loads_by_session([in_week(number, session_rpe=None) for number in range(41)])
    assert load_note(many).endswith("41 sessions without a load · drag for earlier ones")


def test_labels_of_both_ends_of_an_axis_are_painted(shown: ReviewContent) -> None:
    shown.show_runs(season())
    shown.grab()
    for row, wanted in ((0, {"0", "5", "RPE\u202f10"}), (1, {"0", "200", "400\u202fAU"})):
        assert painted(shown.loads, row) >= wanted
    assert painted(shown.weeks, 0) >= {"0\u202f%", "50\u202f%", "100\u202f%"}


def painted(chart: Chart, row: int) -> set[str]:
    """The labels an axis really paints."""
    pixmap = QPixmap(10, 10)
    painter = QPainter(pixmap)
    _, _, texts = chart.plots[row].getAxis("left").generateDrawSpecs(painter)
    painter.end()
    return {text for _, _, text in texts}


def test_a_day_of_several_sessions_is_labelled_once(shown: ReviewContent) -> None:
    shown.show_runs(
        [summary(run_id=f"{hour}", started_at=BEGINS + timedelta(hours=hour)) for hour in range(3)]
    )
    ticks = shown.loads.plots[1].getAxis("bottom")._tickLevels[0]
    assert [label for _, label in ticks] == ["2 Sep", "", ""]


def test_without_any_load_the_axis_keeps_a_likely_scale(shown: ReviewContent) -> None:
    shown.show_runs([in_week(0, session_rpe=None)])
    assert painted(shown.loads, 1) >= {"0", "100\u202fAU"}


def test_the_line_of_an_interval_is_as_wide_in_a_wide_chart_as_in_a_narrow_one(shown: ReviewContent) -> None:
    widths = []
    for weeks in (3, 30):
        shown.show_runs([in_week(number) for number in range(weeks)])
        for width in (1000, 1900):
            shown.resize(width, 700)
            QApplication.processEvents()
            box = shown.weeks.plots[0].vb
            widths.append(
                shown.weeks._intervals.opts["width"]
                * box.width()
                / (box.viewRange()[0][1] - box.viewRange()[0][0])
            )
    assert widths == pytest.approx([3.0] * 4)


def test_what_the_labels_below_are_does_not_run_into_the_first_of_them(shown: ReviewContent) -> None:
    shown.show_runs([in_week(number) for number in range(18)])
    for chart in (shown.weeks, shown.loads):
        unit = chart._unit.sceneBoundingRect()
        pixmap = QPixmap(10, 10)
        painter = QPainter(pixmap)
        _, _, texts = chart.plots[-1].getAxis("bottom").generateDrawSpecs(painter)
        painter.end()
        first = min(
            chart.plots[-1].getAxis("bottom").mapRectToScene(rect).left() for rect, _, text in texts if text
        )
        assert unit.right() < first
