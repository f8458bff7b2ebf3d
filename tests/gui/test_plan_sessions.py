"""Planning sessions in Review, into a real record."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from typing import cast

import pytest
from icalendar import Calendar
from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QApplication, QCheckBox, QFileDialog, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.keeping import Note
from app.domain.planned import DueSession, DueState
from app.store.database import Database, open_database
from app.views.lettering import desk_scale, load_fonts
from app.views.review.planning.dialog import NO_REASON, NOBODY, NOTHING_CHOSEN, UNTIL, PlanDialog
from app.views.review.planning.planner import Planner
from app.views.theme import LIGHT, Look
from app.views.worker import RecordKeeper
from tests.entering import AtOnce
from tests.filled import fill, invented_runs

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)
FONTS = Path(__file__).parents[2] / "resources" / "fonts"
PLANS = tuple(wiring.demo_folder() / name for name in ("shoulder_rotators.toml", "landing_control.toml"))


class Planning:
    """The dialog over a window, and the record behind it."""

    def __init__(self, qtbot: QtBot, database: Database) -> None:
        self.qtbot, self.database, self.kept, self.now = qtbot, database, 0, NOW
        self.window = QWidget()
        self.window.resize(1366, 768)
        qtbot.addWidget(self.window)
        self.window.show()
        plans = PLANS, lambda path: wiring.read_plan(path).plan.title
        keeper = cast("RecordKeeper", AtOnce(database))
        self.planner = Planner(keeper, self._stamp, wiring.new_run_id, plans, self._count)
        self.planner.open("Ines", Look(LIGHT, load_fonts(FONTS), desk_scale(1366)), self.window)
        (self.dialog,) = self.window.findChildren(PlanDialog)

    def _stamp(self) -> tuple[datetime, str]:
        """A second later each time."""
        self.now += timedelta(seconds=1)
        return self.now, "Europe/Berlin"

    def _count(self) -> None:
        self.kept += 1

    def due(self, athlete: str = "Ines") -> list[DueSession]:
        days = date(2026, 11, 1), date(2027, 3, 31)
        return list(self.database.reviewing.athlete(athlete, *days, NOW.date()).due)

    def days(self, athlete: str = "Ines") -> list[date]:
        return [each.occurrence.day for each in self.due(athlete)]

    def press(self, told: str) -> str:
        (button,) = [b for b in self.dialog.findChildren(QPushButton) if b.text() == told]
        button.click()
        return self.dialog.message.text()


@pytest.fixture
def planning(qtbot: QtBot, tmp_path: Path) -> Iterator[Planning]:
    with open_database(tmp_path / "record.db") as database:
        for number, name in enumerate(("Ines", "Hugo")):
            of = f"0190163d-8694-739b-aea5-966c26f8ad9{number}"
            database.answers.keep(Note(of, name, "here", "Ruben", NOW, "UTC"))
        made = Planning(qtbot, database)
        yield made
        made.dialog.close()
        QApplication.processEvents()


def test_a_plan_is_put_on_the_day_meant_with_its_time_and_file(planning: Planning) -> None:
    grid = planning.dialog.grid
    for key in (Qt.Key.Key_Right, Qt.Key.Key_Down):
        planning.qtbot.keyClick(grid, key)
    planning.dialog.clock.setText("18:30")
    planning.dialog.plan.setCurrentIndex(0)
    title = planning.dialog.plan.currentText()
    assert planning.press("Plan it") == f"Planned: {title}, from 3 Dec 2026, for Ines."
    (due,) = planning.due()
    session = due.occurrence.planned
    assert (due.occurrence.day, session.clock, session.plan_title) == (date(2026, 12, 3), time(18, 30), title)
    assert session.plan_file in {str(path) for path in PLANS}
    assert planning.dialog.sessions.item(0).text() == f"○ 18:30 {title} (to come)"
    assert planning.kept == 1


def test_a_session_comes_weekly_for_everybody_who_is_ticked(planning: Planning) -> None:
    dialog = planning.dialog
    assert dialog.ticked == ("Ines",)
    dialog.people.item(1).setCheckState(Qt.CheckState.Checked)
    dialog.weekly.setChecked(True)
    dialog.until.setDate(QDate(2026, 12, 9))
    planning.press("Plan it")
    days = [date(2026, 11, 25), date(2026, 12, 2), date(2026, 12, 9)]
    assert planning.days("Ines") == planning.days("Hugo") == days


def test_a_session_comes_on_further_days_of_the_week_too(planning: Planning) -> None:
    dialog = planning.dialog
    monday, friday = (box for box in dialog.findChildren(QCheckBox) if box.text() in ("Mon", "Fri"))
    assert not friday.isEnabled()
    dialog.weekly.setChecked(True)
    assert friday.isEnabled()
    for box in (monday, friday):
        box.setChecked(True)
    dialog.until.setDate(QDate(2026, 12, 2))
    planning.press("Plan it")
    # From Wednesday 25 Nov to Wednesday 2 Dec: Wed, Fri, Mon, Wed.
    assert planning.days() == [date(2026, 11, 25), date(2026, 11, 27), date(2026, 11, 30), date(2026, 12, 2)]


def test_further_days_count_for_nothing_where_it_comes_once(planning: Planning) -> None:
    dialog = planning.dialog
    dialog.weekly.setChecked(True)
    for box in dialog.findChildren(QCheckBox):
        box.setChecked(True)
    dialog.weekly.setChecked(False)
    planning.press("Plan it")
    assert planning.days() == [date(2026, 11, 25)]


def test_plans_carried_out_lately_are_on_offer_by_their_title_once_each(qtbot: QtBot, tmp_path: Path) -> None:
    path = tmp_path / "record.db"
    fill(path, invented_runs(4, unfinished=False))
    with open_database(path) as database:
        titles = [plan.title for plan in database.reviewing.recent_plans()]
        planning = Planning(qtbot, database)
        plan = planning.dialog.plan
        offered = [plan.itemText(place) for place in range(plan.count())]
        assert len(offered) == len(set(offered))
        assert set(titles) <= set(offered)
        assert offered[-1] == "Another file …"
        by_title = next(title for title in titles if title not in offered[: len(PLANS)])
        plan.setCurrentIndex(offered.index(by_title))
        planning.press("Plan it")
        (due,) = planning.due()
        assert (due.occurrence.planned.plan_title, due.occurrence.planned.plan_file) == (by_title, None)
        planning.dialog.go_to(date(2026, 12, 24))
        assert [plan.itemText(place) for place in range(plan.count())] == offered
        planning.dialog.close()
        QApplication.processEvents()


def test_everybody_is_ticked_at_once(planning: Planning) -> None:
    planning.press("Tick everybody")
    planning.press("Plan it")
    assert planning.days("Ines") == planning.days("Hugo") == [date(2026, 11, 25)]


def test_a_day_is_excused_with_a_reason_and_made_due_again(planning: Planning) -> None:
    planning.press("Plan it")
    assert planning.press("Excuse") == NO_REASON
    planning.dialog.reason.setText("fever")
    planning.press("Excuse")
    assert planning.due()[0].state is DueState.EXCUSED
    assert planning.dialog.sessions.item(0).text().endswith("(excused: fever)")
    planning.press("Make due")
    assert planning.due()[0].state is DueState.NOT_DUE


def test_one_day_is_moved_and_the_rest_stays(planning: Planning) -> None:
    planning.dialog.weekly.setChecked(True)
    planning.dialog.until.setDate(QDate(2026, 12, 2))
    planning.press("Plan it")
    planning.dialog.to_day.setDate(QDate(2026, 11, 27))
    assert planning.press("Move") == "Moved to 27 Nov 2026."
    assert planning.days() == [date(2026, 11, 27), date(2026, 12, 2)]


def test_a_day_that_was_moved_is_still_the_same_session(planning: Planning) -> None:
    planning.press("Plan it")
    planning.dialog.to_day.setDate(QDate(2026, 11, 27))
    planning.press("Move")
    planning.dialog.go_to(date(2026, 11, 27))
    planning.dialog.reason.setText("fever")
    planning.press("Excuse")
    (due,) = planning.due()
    assert (due.occurrence.day, due.state) == (date(2026, 11, 27), DueState.EXCUSED)


def test_an_ended_session_comes_no_more_from_that_day_on(planning: Planning) -> None:
    planning.dialog.weekly.setChecked(True)
    planning.press("Plan it")
    planning.dialog.go_to(date(2026, 12, 9))
    planning.press("End from here")
    assert planning.days() == [date(2026, 11, 25), date(2026, 12, 2)]


def test_what_cannot_be_planned_is_said_and_nothing_is_kept(planning: Planning) -> None:
    dialog = planning.dialog
    assert planning.press("Move") == NOTHING_CHOSEN
    dialog.clock.setText("25:00")
    assert planning.press("Plan it").startswith("“25:00” is no time of day.")
    dialog.clock.clear()
    dialog.weekly.setChecked(True)
    dialog.until.setDate(QDate(2026, 11, 25))
    assert planning.press("Plan it") == UNTIL
    dialog.weekly.setChecked(False)
    dialog.people.item(0).setCheckState(Qt.CheckState.Unchecked)
    assert planning.press("Plan it") == NOBODY
    assert planning.due() == []
    assert planning.kept == 0


def test_page_down_goes_to_the_next_month_and_shows_its_sessions(planning: Planning) -> None:
    planning.dialog.go_to(date(2026, 12, 30))
    planning.press("Plan it")
    planning.dialog.go_to(date(2026, 11, 2))
    planning.qtbot.keyClick(planning.dialog.grid, Qt.Key.Key_PageDown)
    grid = planning.dialog.grid
    assert grid.day == date(2026, 12, 1)
    assert grid.span == (date(2026, 11, 30), date(2027, 1, 3))
    cell = grid.item(4, 2)
    assert cell is not None
    assert "○" in cell.text()


def test_a_file_that_is_no_plan_is_told_of(
    planning: Planning, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    broken = tmp_path / "broken.toml"
    broken.write_text("what", encoding="utf-8")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_words: (str(broken), ""))
    before = planning.dialog.plan.count()
    planning.dialog.plan.setCurrentIndex(before - 1)
    planning.dialog.plan.activated.emit(before - 1)
    assert "broken.toml" in planning.dialog.message.text()
    assert planning.dialog.plan.count() == before
    assert planning.dialog.plan.currentData() in {str(path) for path in PLANS}


def test_the_sessions_go_into_a_calendar_file(
    planning: Planning, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "ines.ics"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_words: (str(file), ""))
    planning.press("Plan it")
    assert planning.press("Calendar file …") == f"Written to {file}."
    assert len(Calendar.from_ical(file.read_bytes()).walk("VEVENT")) == 1
