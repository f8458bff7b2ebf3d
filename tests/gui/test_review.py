"""The page of Review: its states, its list, its filter, and what a screen reader finds on it."""

import subprocess
import sys
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible, QFontMetrics, QGuiApplication, QImage, QPainter, QPixmap
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QApplication, QComboBox, QMenu, QWidget
from pytestqt.qtbot import QtBot

from app.domain.records import RunOutcome, RunSummary
from app.views.lettering import desk_scale, load_fonts
from app.views.review.content import ReviewContent
from app.views.review.page import ALL, EMPTY, READING, TITLE, ReviewPage
from app.views.theme import DARK, LIGHT, Look
from app.views.widgets.rows_table import RowsTable
from tests.summaries import SQUAD, season, summary

FONTS = Path(__file__).parents[2] / "resources" / "fonts"
LONG = "Wilhelmina Alexandrine-Josephine Hohenfels-Sonnenbergdamm auf Nordstrandischmoor, die Dritte, Kapitän"
ACROSS = Qt.Orientation.Horizontal
SCRIPTS = ("Ζωή Παπαδοπούλου", "李小龙", "محمد الأمين", "Þórdís Ævarsdóttir", "🏐 Åse", " ")

Opened = Callable[[tuple[RunSummary, ...]], ReviewPage]


def columns(page: ReviewPage) -> dict[str, list[str]]:
    """The list as it is shown, by title."""
    model = content(page).model
    return {column.title: [column.text(run) for run in model.rows] for column in model.columns}


def content(page: ReviewPage) -> ReviewContent:
    assert page.content is not None
    return page.content


@pytest.fixture
def look(qapp: QGuiApplication) -> Look:
    return Look(LIGHT, load_fonts(FONTS), desk_scale(1366))


@pytest.fixture
def opened(qtbot: QtBot, look: Look) -> Iterator[Opened]:
    pages: list[ReviewPage] = []

    def open_with(runs: tuple[RunSummary, ...]) -> ReviewPage:
        page = ReviewPage(look, lambda: None)
        qtbot.addWidget(page)
        page.resize(1366, 768)
        page.show()
        page.show_summaries(runs)
        pages.append(page)
        return page

    yield open_with
    for page in pages:
        page.close()


def test_the_page_does_not_load_charts_before_there_is_a_run_to_show() -> None:
    asked = (
        "import sys; from PySide6.QtWidgets import QApplication; application = QApplication([]);"
        "from app.views.review.page import ReviewPage; from app.views.theme import LIGHT, Look;"
        "from app.views.lettering import desk_scale;"
        "page = ReviewPage(Look(LIGHT, 'Inter', desk_scale(1366)), lambda: None); page.show();"
        "page.show_summaries(()); print(sorted({'numpy', 'pyqtgraph'} & set(sys.modules)))"
    )
    ran = subprocess.run([sys.executable, "-c", asked], capture_output=True, text=True, check=True)
    assert ran.stdout.strip() == "[]"


def test_the_page_asks_for_the_runs_each_time_it_comes_into_sight(qtbot: QtBot, look: Look) -> None:
    asked: list[int] = []
    page = ReviewPage(look, lambda: asked.append(1))
    qtbot.addWidget(page)
    assert (asked, page.message.text()) == ([], READING)
    page.show()
    page.hide()
    page.show()
    assert len(asked) == 2


def test_no_run_at_all_is_said_in_words(opened: Opened) -> None:
    page = opened(())
    assert page.message.isVisible()
    assert page.message.text() == EMPTY
    assert page.content is None
    assert not page.athlete.isEnabled()


def test_a_problem_is_said_in_words_and_a_later_answer_takes_its_place(opened: Opened) -> None:
    page = opened((summary(),))
    page.show_problem("The database cannot be read. Close the other program and try again.")
    assert page.message.isVisible()
    assert not content(page).isVisible()
    page.show_summaries((summary(),))
    assert content(page).isVisible()


def test_the_list_shows_what_was_done_newest_first(opened: Opened) -> None:
    early = summary(run_id="a", started_at=datetime(2026, 7, 1, 17, tzinfo=UTC), outcome=RunOutcome.ABANDONED)
    late = summary(run_id="b", pain=6, invented=False)
    shown = columns(opened((early, late)))
    assert shown["Date and time"] == ["Sat 21 Nov 2026, 18:05", "Wed 1 Jul 2026, 19:00"]
    assert shown["Athlete"] == ["Hugo", "Hugo"]
    assert shown["Plan"] == ["Landing control, week 3"] * 2
    assert shown["Outcome"] == ["finished", "abandoned"]
    assert shown["Reps met"] == ["90 of 100"] * 2
    assert shown["RPE"] == ["5", "5"]
    assert shown["Minutes"] == ["40", "40"]
    assert shown["Load, AU"] == ["200", "200"]
    assert shown["Pain"] == ["▲ 6", "1"]
    assert shown["Data"] == ["", "invented"]


def test_the_unknown_is_a_dash_in_every_figure(opened: Opened) -> None:
    shown = columns(opened((summary(outcome=None, elapsed_ms=None, session_rpe=None, pain=None),)))
    assert shown["Outcome"] == ["not ended"]
    for title in ("RPE", "Minutes", "Load, AU", "Pain"):
        assert shown[title] == ["–"], title


def test_hours_carry_their_distance_from_utc_where_runs_were_done_by_different_clocks(opened: Opened) -> None:
    shown = columns(opened((summary(run_id="a"), summary(run_id="b", zone="Pacific/Auckland"))))
    assert set(shown["Date and time"]) == {
        "Sat 21 Nov 2026, 18:05 UTC+01:00",
        "Sun 22 Nov 2026, 06:05 UTC+13:00",
    }


def test_choosing_an_athlete_leaves_their_runs_alone(opened: Opened) -> None:
    runs = season()
    page = opened(runs)
    names = [page.athlete.itemText(place) for place in range(page.athlete.count())]
    assert names == [ALL, *SQUAD]
    page.choose_athlete("Ines")
    mine = [run for run in runs if run.athlete == "Ines"]
    assert content(page).model.rowCount() == len(mine)
    assert content(page).loads.count == len(mine)
    assert page.title.text() == "Ines"
    page.choose_athlete(None)
    assert content(page).model.rowCount() == len(runs)
    page.choose_athlete("Nobody")
    assert content(page).model.rowCount() == len(runs)


def test_the_athlete_chosen_stays_chosen_when_new_runs_come(opened: Opened) -> None:
    page = opened(season())
    page.choose_athlete("Kaya")
    page.show_summaries((*season(), summary(run_id="new", athlete="Kaya")))
    assert page.athlete.currentText() == "Kaya"
    page.show_summaries((summary(athlete="Bram"),))
    assert page.athlete.currentText() == ALL


def test_the_list_sorts_by_a_click_on_a_title_with_the_unknown_last(opened: Opened) -> None:
    page = opened((summary(run_id="a", pain=3), summary(run_id="b", pain=None), summary(run_id="c", pain=0)))
    header = content(page).list.horizontalHeader()
    section = [column.title for column in content(page).model.columns].index("Pain")
    spot = QPoint(header.sectionViewportPosition(section) + 20, header.height() // 2)
    QTest.mouseClick(header.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    first = columns(page)["Pain"]
    QTest.mouseClick(header.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    assert sorted([first, columns(page)["Pain"]]) == [["0", "3", "–"], ["3", "0", "–"]]


def test_names_of_a_hundred_letters_are_elided_and_whole_in_their_tooltips(opened: Opened) -> None:
    page = opened((summary(athlete=LONG, plan_title=LONG),))
    page.choose_athlete(LONG)
    table = content(page).list
    assert not table.horizontalScrollBar().isVisible()
    assert table.model().index(0, 1).data(Qt.ItemDataRole.ToolTipRole) == LONG
    assert page.title.toolTip() == LONG
    assert page.title.width() < page.title.sizeHint().width()
    assert page.width() == 1366


@pytest.mark.parametrize("size", [(1366, 768), (1600, 900), (1920, 1080)])
def test_nothing_is_cut_short_where_there_is_room(opened: Opened, size: tuple[int, int]) -> None:
    page = opened(season())
    page.resize(*size)
    QApplication.processEvents()
    charts = content(page)
    charts.week_card.switch.click()
    charts.load_card.switch.click()
    QApplication.processEvents()
    for table in (charts.list, charts.week_card.table, charts.load_card.table):
        assert cut_short(table) == []


@pytest.mark.parametrize("title", ["Pain", "Reps met", "Load, AU", "Athlete"])
def test_nothing_is_cut_short_after_sorting(opened: Opened, title: str) -> None:
    page = opened(tuple(replace(run, pain=None if run.athlete < "K" else 7) for run in season()))
    table = content(page).list
    titles = [column.title for column in content(page).model.columns]
    table.sortByColumn(titles.index(title), Qt.SortOrder.DescendingOrder)
    QApplication.processEvents()
    assert cut_short(table) == []
    header = table.horizontalHeader()
    for section in range(len(titles)):
        shown = QFontMetrics(header.font()).horizontalAdvance(str(header.model().headerData(section, ACROSS)))
        assert table.columnWidth(section) >= shown + 2 * (table.font().pixelSize() * 2 // 3)


def cut_short(table: RowsTable) -> list[str]:
    """What is elided in the cells in sight when the table is painted."""
    picture = QPixmap(table.size())
    painter = QPainter(picture)
    painter.setFont(table.font())
    short = []
    for row in range(min(table.model().rowCount(), 12)):
        for column in range(table.model().columnCount()):
            text = table.model().index(row, column).data()
            room = table.columnWidth(column) - 2 * (table.font().pixelSize() * 2 // 3)
            elided = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, room)
            short += [text] if elided != text else []
    painter.end()
    return short


@pytest.mark.parametrize("name", [LONG, *SCRIPTS])
def test_any_name_in_any_script_is_shown(opened: Opened, name: str) -> None:
    page = opened((summary(athlete=name),))
    assert columns(page)["Athlete"] == [name]
    assert not page.grab().isNull()


@pytest.mark.parametrize(
    "runs",
    [
        (summary(reps_prescribed=0, reps_met=0, reps_done=0, elapsed_ms=0, session_rpe=0),),
        (summary(outcome=None, elapsed_ms=None, session_rpe=None, pain=None),),
        tuple(summary(run_id=f"{number}", athlete=f"Athlete {number}") for number in range(400)),
        (summary(started_at=datetime(2016, 1, 1, tzinfo=UTC)), summary(run_id="late")),
        (summary(zone="Nowhere/Atall"),),
    ],
    ids=["no reps", "all unknown", "400 athletes", "ten years", "unknown zone"],
)
def test_whatever_the_runs_hold_the_page_paints(opened: Opened, runs: tuple[RunSummary, ...]) -> None:
    page = opened(runs)
    assert not page.grab().isNull()
    assert content(page).model.rowCount() == len(runs)


def test_letters_grow_with_the_window(opened: Opened, qtbot: QtBot) -> None:
    page = opened((summary(),))
    small = page.title.font().pixelSize()
    page.resize(1920, 1080)
    qtbot.waitUntil(lambda: page.title.font().pixelSize() > small)


def test_another_scheme_reaches_the_charts_too(opened: Opened, look: Look) -> None:
    page = opened((summary(),))
    page.set_look(replace(look, scheme=DARK))
    picture = QImage(page.size(), QImage.Format.Format_RGB32)
    page.render(picture)
    charts = content(page)
    for chart in (charts.weeks, charts.loads):
        spot = chart.mapTo(page, QPoint(chart.width() - 4, chart.height() // 2))
        assert picture.pixelColor(spot).name().upper() == DARK.panel
    assert picture.pixelColor(3, 3).name().upper() == DARK.ground


def within_menu(widget: QWidget) -> bool:
    """Whether a widget belongs to a menu; the charts' own menus are never opened."""
    parent = widget.parentWidget()
    return isinstance(widget, QMenu) or (parent is not None and within_menu(parent))


def reachable(page: QWidget) -> list[QWidget]:
    """Everything on a page that takes the focus or is a control."""
    kinds = (QAbstractButton, QComboBox, QAbstractItemView)
    return [
        widget
        for widget in page.findChildren(QWidget)
        if (isinstance(widget, kinds) or widget.focusPolicy() & Qt.FocusPolicy.TabFocus)
        and not (widget.inherits("QHeaderView") and widget.isHidden())
        and not widget.inherits("QTableCornerButton")
        and not within_menu(widget)
    ]


def test_everything_one_can_reach_has_a_name(opened: Opened) -> None:
    page = opened(season())
    reached = reachable(page)
    named = [QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name) for widget in reached]
    assert len(reached) >= 8
    # The name of a combo box is its choice on Linux; what it is for comes from its label.
    assert page.athlete_label.buddy() is page.athlete
    assert all(named), [widget for widget, name in zip(reached, named, strict=True) if not name]


def test_a_row_copied_carries_its_titles(opened: Opened) -> None:
    page = opened((summary(),))
    table = content(page).list
    table.selectRow(0)
    QTest.keyClick(table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    title, row = QGuiApplication.clipboard().text().split("\n")
    assert title.split("\t")[:3] == ["Date and time", "Athlete", "Plan"]
    assert row.split("\t")[4] == "90 of 100"


def test_the_charts_are_let_go_when_the_page_closes_and_made_anew_when_it_opens(opened: Opened) -> None:
    page = opened((summary(),))
    first = content(page)
    assert page.accessibleName() == TITLE
    page.close()
    assert page.content is None
    assert first.weeks.graphics.closed
    page.close_charts()
    page.show()
    page.show_summaries((summary(),))
    assert content(page) is not first
    assert content(page).weeks.count == 1
