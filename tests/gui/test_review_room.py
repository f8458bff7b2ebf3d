"""The room of the review: from the squad to an athlete to a run and back by keys alone, and why by one."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QApplication,
    QComboBox,
    QLineEdit,
    QWidget,
)
from pytestqt.qtbot import QtBot

from app.domain.keeping import Rating, RatingKind
from app.domain.plan import Side
from app.domain.readiness import Decision
from app.views.review.athlete.spans import Span, Stretch
from app.views.review.room import Place
from app.views.review.squad.page import NOBODY
from tests.answered import answers
from tests.reviewing import NOTE, Room, run_view

KEY = Qt.Key


@pytest.fixture
def room(qtbot: QtBot, qapp: QGuiApplication) -> Iterator[Room]:
    made = Room(qtbot)
    yield made
    made.close()


def test_the_squad_comes_first_with_those_who_need_a_look_on_top(room: Room) -> None:
    lines = room.widget.squad.lines
    assert room.widget.place is Place.SQUAD
    assert [line.place for line in lines] == list(range(12))
    assert lines[0].attention.reasons
    assert room.widget.squad.table.currentIndex().row() == 0


def test_return_opens_the_athlete_and_esc_and_backspace_lead_back(room: Room) -> None:
    first = room.widget.squad.lines[0].athlete
    room.press(KEY.Key_Return)
    assert (room.widget.place, room.widget.athlete.athlete) == (Place.ATHLETE, first)
    room.press(KEY.Key_Escape)
    assert room.widget.place is Place.SQUAD
    room.press(KEY.Key_Down, KEY.Key_Return)
    assert room.widget.athlete.athlete == room.widget.squad.lines[1].athlete
    room.press(KEY.Key_Backspace)
    assert room.widget.place is Place.SQUAD
    assert room.left == 0
    room.press(KEY.Key_Escape)
    assert room.left == 1


def test_who_was_chosen_is_still_chosen_on_the_way_back(room: Room) -> None:
    room.press(KEY.Key_Down, KEY.Key_Down, KEY.Key_Return, KEY.Key_Escape)
    assert room.widget.squad.table.currentIndex().row() == 2
    assert room.widget.squad.table.hasFocus()


def test_a_slash_searches_names_and_reasons_and_esc_ends_the_search(room: Room) -> None:
    room.press(KEY.Key_Slash)
    assert room.widget.squad.search.hasFocus()
    QTest.keyClicks(room.widget.squad.search, "hug")
    assert [line.athlete for line in room.widget.squad.lines] == ["Hugo"]
    room.press(KEY.Key_Return, KEY.Key_Return)
    assert room.widget.athlete.athlete == "Hugo"
    room.press(KEY.Key_Escape, KEY.Key_Escape)
    assert (len(room.widget.squad.lines), room.left) == (12, 0)
    QTest.keyClicks(room.widget.squad.search, "nobody of that name")
    assert room.widget.squad.message.text() == NOBODY
    assert room.widget.squad.message.isVisible()


def test_backspace_in_the_search_takes_a_letter_and_leads_nowhere(room: Room) -> None:
    room.press(KEY.Key_Slash)
    QTest.keyClicks(room.widget.squad.search, "hx")
    room.press(KEY.Key_Backspace)
    assert (room.widget.squad.search.text(), room.widget.place) == ("h", Place.SQUAD)
    room.press(KEY.Key_Backspace, KEY.Key_Backspace)
    assert room.left == 0


@pytest.mark.parametrize("column", range(10))
def test_the_squad_is_sorted_by_any_column_with_the_unknown_last(room: Room, column: int) -> None:
    table, model = room.widget.squad.table, room.widget.squad.model
    for order in (Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder):
        table.sortByColumn(column, order)
        keys = [model.columns[column].key(line) for line in model.rows]
        known = [key for key in keys if key is not None]
        assert known == sorted(known, reverse=order is Qt.SortOrder.DescendingOrder)
        assert keys[len(known) :] == [None] * (len(keys) - len(known))


def test_w_in_the_squad_gives_the_figures_of_the_line(room: Room) -> None:
    room.press(KEY.Key_W)
    assert room.widget.why.isVisible()
    text = room.widget.why.text()
    assert "Rep adherence · Week 47" in text
    assert "reps prescribed:" in text
    assert "Wilson 1927" in text
    room.press(KEY.Key_Escape)
    assert not room.widget.why.isVisible()
    assert room.left == 0
    assert room.widget.squad.table.hasFocus()


def test_every_figure_at_the_top_answers_why_by_a_key(room: Room) -> None:
    room.open("Hugo")
    tiles = [tile for tile in room.widget.athlete.tiles.tiles if tile.isVisible()]
    assert len(tiles) == 8
    for tile in tiles:
        tile.setFocus()
        QTest.keyClick(tile, KEY.Key_Space)
        assert tile.figure is not None
        text = room.widget.why.text()
        assert text.startswith(tile.figure.name)
        assert tile.figure.formula in text
        assert tile.figure.source in text


def test_every_chart_answers_why_by_a_key_at_the_place_pointed_at(room: Room) -> None:
    room.open("Hugo")
    for card in room.widget.athlete.board.data_cards:
        if not card.isVisible():
            continue
        card.chart.setFocus()
        QTest.keyClick(card.chart, KEY.Key_W)
        assert room.widget.why.isVisible(), card.heading.text()
        assert room.widget.why.heading.text() == card.heading.text()
        room.press(KEY.Key_Escape)


def test_what_is_unknown_says_why_it_is(room: Room) -> None:
    room.open("Hugo")
    card = room.widget.athlete.board.cards[0]
    card.chart.setFocus()
    QTest.keyClick(card.chart, KEY.Key_End)
    QTest.keyClick(card.chart, KEY.Key_W)
    assert "No reps were prescribed, or none of them are known." in room.widget.why.text()
    assert "–" in room.widget.why.text()
    room.widget.why.copy()
    assert QGuiApplication.clipboard().text() == room.widget.why.text()


def test_another_stretch_of_time_is_asked_for_by_the_list_or_by_two_dates(room: Room) -> None:
    room.open("Hugo")
    bar = room.widget.athlete.range
    assert [each.span for each in room.stretches] == [Span.QUARTER]
    bar.choice.setFocus()
    room.press(KEY.Key_Down)
    assert [each.span for each in room.stretches][1:] == [Span.YEAR]
    bar.choice.setCurrentIndex(list(Span).index(Span.DATES))
    bar.choice.activated.emit(bar.choice.currentIndex())
    assert bar.first.isVisible()
    bar.first.setDate(QDate(2026, 10, 1))
    bar.last.setDate(QDate(2026, 9, 1))
    bar.last.editingFinished.emit()
    assert room.stretches[-1].days(date(2026, 11, 23), None) == (date(2026, 9, 1), date(2026, 10, 1))


def test_a_run_is_opened_from_the_list_and_from_the_calendar(room: Room) -> None:
    room.open("Hugo")
    board = room.widget.athlete.board
    board.runs.table.selectRow(0)
    board.runs.table.setFocus()
    room.press(KEY.Key_Return)
    assert len(room.runs) == 1
    room.press(KEY.Key_Escape)
    assert room.widget.place is Place.ATHLETE
    week = next(
        place
        for place, week in enumerate(board.calendar.model.rows)
        if week.days[0] and week.days[0][0].run_id
    )
    board.calendar.table.setCurrentIndex(board.calendar.model.index(week, 1))
    board.calendar.table.setFocus()
    room.press(KEY.Key_Return)
    assert len(room.runs) == 2
    assert room.widget.run.isVisible()


def test_the_run_page_says_each_bout_with_its_faults_and_what_was_left_out_and_why(room: Room) -> None:
    room.open("Hugo")
    room.widget.open_run("run-1")
    page = room.widget.run
    cells = {column.title: [column.text(line) for line in page.model.rows] for column in page.model.columns}
    assert cells["Reps"] == ["7 of 8", "0 of 8", "– of 5–8"]
    assert cells["Faults"] == ["knee falls in", "", ""]
    assert cells["Outcome"] == ["done", "left out: pain", "not begun"]
    assert cells["RPE"] == ["4", "–", "–"]
    assert cells["Pain"] == ["▲ 6", "–", "–"]
    assert cells["Planned above, done below"][0] == (
        "planned 8 reps · in 40 s · done 7 · rep 5 left missed · rep 3 left: knee falls in"
    )
    assert "finished · 40 min · RPE 5 · load 200 AU · pauses: 1, 80 s · pain 6" in page.figures.text()
    assert NOTE in page.notes.text()


def test_the_run_page_says_what_was_answered_before_and_every_figure_says_why(
    room: Room, qtbot: QtBot
) -> None:
    room.open("Hugo")
    room.widget.open_run("run-1")
    page = room.widget.run
    said = answers(
        sleep=5, pain=4, pain_place="knee", pain_side=Side.LEFT, changed=True, decision=Decision.SPOKEN
    )
    after = Rating("1", "run-1", RatingKind.NEXT_MORNING_PAIN, 5, said.at, "UTC", "knee", Side.LEFT)
    view = replace(run_view(), before=(said,), ratings=(after,))
    room.widget.show_run(view)
    assert page.before.text() == (
        "Before: sleep 5 · fatigue 3 · stress 3 · soreness 3 · sum 14 of 28 · pain 4, left knee · "
        "something changed in their health · spoke to the practitioner first"
    )
    assert "next morning 5 (left knee, Sat 21 Nov 2026, 16:50)" in page.figures.text()
    qtbot.mouseClick(page.want_why, Qt.MouseButton.LeftButton)
    assert room.widget.why.isVisible()
    told = room.widget.why.text()
    assert "Load of the session: 200" in told
    assert "Readiness: 14 (4 to 28)" in told
    room.widget.present(on=True)
    assert not page.before.isVisible()
    page.want_why.click()
    assert "Pain" not in room.widget.why.text()


def test_a_run_is_corrected_from_its_page_and_from_the_list(room: Room, qtbot: QtBot) -> None:
    room.open("Hugo")
    room.widget.open_run("run-1")
    qtbot.mouseClick(room.widget.run.want_correction, Qt.MouseButton.LeftButton)
    room.press(KEY.Key_Escape)
    room.widget.athlete.board.runs.table.selectRow(0)
    room.widget.athlete.board.runs.correct.click()
    assert room.corrected[0] == "run-1"
    assert len(room.corrected) == 2


def test_presentation_hides_pain_notes_and_the_names_of_others(room: Room) -> None:
    names = [line.athlete for line in room.widget.squad.lines]
    room.press(KEY.Key_F8)
    told = room.texts()
    assert [name for name in names if name in told] == []
    assert "Athlete 1" in told
    assert "ain" not in told.replace("presentation: pain, notes and the names of others", "").replace(
        "again", ""
    )
    room.press(KEY.Key_Return)
    told = room.texts().replace("presentation: pain, notes and the names of others", "")
    assert "Pain" not in told
    assert "pain " not in told
    assert NOTE not in told
    room.widget.open_run("run-1")
    told = room.texts().replace("presentation: pain, notes and the names of others", "")
    assert "pain" not in told.lower()
    assert NOTE not in told
    room.press(KEY.Key_F8)
    assert NOTE in room.texts()


def test_why_tells_nothing_of_pain_in_presentation(room: Room) -> None:
    room.press(KEY.Key_W)
    assert "Highest pain" in room.widget.why.text()
    room.press(KEY.Key_Escape, KEY.Key_F8, KEY.Key_W)
    assert room.widget.why.isVisible()
    assert "Rep adherence" in room.widget.why.text()
    assert "pain" not in room.widget.why.text().lower()


def test_what_was_asked_for_with_pain_is_not_shown_once_presentation_began(room: Room) -> None:
    room.open("Hugo")
    with_pain = room.widget.athlete.board.view
    assert with_pain is not None
    room.widget.present(on=True)
    room.widget.show_athlete(with_pain)
    assert room.widget.athlete.board.view is not with_pain


def test_another_room_follows_to_the_same_page_over_the_same_time(qtbot: QtBot, room: Room) -> None:
    room.widget.athlete.range.show_stretch(Stretch(Span.DATES, date(2026, 9, 1), date(2026, 10, 1)))
    room.open("Hugo")
    room.widget.open_run("run-1")
    other = Room(qtbot)
    other.widget.follow(room.widget)
    assert other.widget.place is Place.RUN
    assert other.runs == ["run-1"]
    assert other.stretches[-1].days(date(2026, 11, 23), None) == (date(2026, 9, 1), date(2026, 10, 1))
    other.press(KEY.Key_Escape)
    assert other.widget.athlete.athlete == "Hugo"
    other.close()


def test_the_actions_beside_the_range_are_given_the_athlete(room: Room, qtbot: QtBot) -> None:
    room.open("Hugo")
    qtbot.mouseClick(room.widget.athlete.doors[0], Qt.MouseButton.LeftButton)
    assert room.done == ["Hugo"]


def test_everything_one_can_reach_has_a_name(room: Room) -> None:
    for go in (
        lambda: None,
        lambda: room.open("Hugo"),
        lambda: room.widget.open_run("run-1"),
        lambda: room.press(KEY.Key_Escape, KEY.Key_W),
    ):
        go()
        kinds = (QAbstractButton, QAbstractItemView, QComboBox, QLineEdit, QAbstractScrollArea)
        reached = [
            part
            for part in room.widget.findChildren(QWidget)
            if isinstance(part, kinds) and part.isVisible() and part.focusPolicy() & Qt.FocusPolicy.TabFocus
        ]
        nameless = [
            part
            for part in reached
            if not part.accessibleName()
            and not (isinstance(part, QAbstractButton) and part.text())
            and part.objectName() != "qt_spinbox_lineedit"
        ]
        assert reached
        assert nameless == []


def test_tab_goes_through_the_athlete_page_and_comes_round(room: Room) -> None:
    room.open("Hugo")
    seen: list[QWidget] = []
    for _ in range(120):
        QTest.keyClick(room.widget.window(), KEY.Key_Tab)
        focused = QApplication.focusWidget()
        if focused is None or focused in seen:
            break
        seen.append(focused)
    charts = [card.chart for card in room.widget.athlete.board.data_cards if card.isVisible()]
    assert [chart for chart in charts if chart not in seen] == []
    assert room.widget.athlete.board.calendar.table in seen
    assert room.widget.athlete.board.runs.table in seen


def test_the_load_by_day_turns_into_its_two_courses_and_back(room: Room) -> None:
    room.open("Hugo")
    board = room.widget.athlete.board
    card = board.cards[7]
    board.show_all()
    assert not board.course.isChecked()
    before = card.chart.data
    board.course.click()
    assert card.heading.text() == "Load lately and usually"
    assert card.chart.data is not None
    assert [series.name for series in card.chart.data.panels[0].series] == ["lately", "usually"]
    board.course.click()
    assert card.heading.text() == "Session load by day"
    assert card.chart.data == before
