"""The first page with a real record behind it: what is owed is asked in time, kept right, asked no more."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import cast

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.compiler import compile_timeline
from app.domain.errors import StoreError
from app.domain.planned import PlannedSession
from app.domain.prescription import prescriptions
from app.domain.records import RunHeader, RunOutcome
from app.run.controller import Controller
from app.run.intents import Begin, Tick
from app.store.answers import Answers
from app.views.home.page import HomePage
from tests.rig import Rig

NOW = datetime(2026, 3, 4, 17, 0, tzinfo=UTC)
RUN_MS = 60_000
NO_FRONT = "This plugin does not support raise"


class Evening(Rig):
    """A window whose wall clock is moved by hand, and runs that were done before."""

    def __init__(self, qtbot: QtBot, folder: Path) -> None:
        super().__init__(qtbot, folder, wiring.open_record)
        self.now = NOW
        self.house = replace(self.house, stamp=lambda: (self.now, "UTC"), state=folder / "state")

    @property
    def home(self) -> HomePage:
        page = self.page
        assert isinstance(page, HomePage)
        return page

    def done(self, athlete: str, ago: timedelta) -> str:
        """A run that was finished so long ago, and its id."""
        written = wiring.read_plan(self.plan)
        timeline, ended = compile_timeline(written.plan), self.now - ago
        began = ended - timedelta(milliseconds=RUN_MS)
        header = RunHeader(wiring.new_run_id(began), athlete, written.plan.title, written.text, began, "UTC")
        controller = Controller(timeline)
        with wiring.open_record(self.database) as database:
            database.journal.open_run(header, prescriptions(timeline))
            for now in range(0, RUN_MS + 500, 500):
                first, facts = controller.handle(Begin() if now == 0 else Tick(), now)
                if facts:
                    database.journal.append(header.run_id, first, facts)
            (run,) = [run for run in database.queries.run_summaries() if run.run_id == header.run_id]
        assert run.outcome is RunOutcome.FINISHED
        return header.run_id

    def owed(self) -> list[tuple[str, str]]:
        return [(each.athlete, each.kind.value) for each in self.home.owed.cards]

    def wait_for_owed(self, *owed: tuple[str, str]) -> None:
        self.qtbot.waitUntil(lambda: self.owed() == list(owed), timeout=3_000)

    def press_there(self, *keys: Qt.Key) -> None:
        for key in keys:
            focused = cast("QWidget | None", self.page.focusWidget())
            self.qtbot.keyClick(self.page if focused is None else focused, key)


@pytest.fixture
def evening(qtbot: QtBot, tmp_path: Path) -> Iterator[Evening]:
    made = Evening(qtbot, tmp_path)
    yield made
    made.window.close()


def test_session_rpe_is_asked_once_thirty_minutes_are_over_while_the_page_stands_open(
    evening: Evening,
) -> None:
    evening.done("Hugo", timedelta(minutes=25))
    evening.open()
    evening.qtbot.waitUntil(lambda: evening.home.athlete == "Hugo", timeout=3_000)
    assert evening.owed() == []
    evening.now += timedelta(minutes=6)
    evening.window._homing.look_again()
    evening.wait_for_owed(("Hugo", "session_rpe"))


def test_a_late_rating_goes_to_its_run_with_the_lag(evening: Evening) -> None:
    evening.done("Ines", timedelta(days=3))
    run_id = evening.done("Hugo", timedelta(minutes=25))
    evening.open()
    evening.now += timedelta(minutes=20)
    evening.window._homing.look_again()
    evening.wait_for_owed(("Hugo", "session_rpe"))
    evening.press_there(Qt.Key.Key_F2, Qt.Key.Key_7, Qt.Key.Key_Return)
    evening.wait_for_owed()
    evening.window.close()
    with wiring.open_record(evening.database) as database:
        rated = database.queries.closing_of(run_id)
        ends = {run.run_id: run.elapsed_ms for run in database.queries.run_summaries()}
    ended = NOW - timedelta(minutes=25) - timedelta(milliseconds=RUN_MS - (ends[run_id] or 0))
    assert (rated.session_rpe, rated.outcome) == (7, RunOutcome.FINISHED)
    assert rated.lag_ms == (evening.now - ended) // timedelta(milliseconds=1)


def test_the_morning_after_pain_is_asked_of_everybody_the_chosen_one_first(evening: Evening) -> None:
    evening.done("Ines", timedelta(hours=22))
    run_id = evening.done("Hugo", timedelta(hours=20))
    evening.open(athlete="Hugo")
    evening.wait_for_owed(
        ("Hugo", "session_rpe"),
        ("Hugo", "next_morning_pain"),
        ("Ines", "session_rpe"),
        ("Ines", "next_morning_pain"),
    )
    card = next(
        card for each, card in evening.home.owed.cards.items() if each.kind.value == "next_morning_pain"
    )
    card.open()
    evening.press_there(Qt.Key.Key_3, Qt.Key.Key_Return)
    evening.qtbot.waitUntil(lambda: len(evening.owed()) == 3, timeout=3_000)
    evening.window.close()
    with wiring.open_record(evening.database) as database:
        (held,) = database.answers.ratings_of(run_id)
    assert (held.thing.value, held.thing.place, held.thing.at) == (3, None, NOW)


def test_what_is_not_to_be_asked_again_is_not_and_stays_unknown(evening: Evening) -> None:
    run_id = evening.done("Hugo", timedelta(hours=20))
    evening.open()
    evening.wait_for_owed(("Hugo", "session_rpe"), ("Hugo", "next_morning_pain"))
    for _ in range(2):
        evening.home.owed.open_first()
        card = evening.home.owed.open_card
        assert card is not None
        (never,) = [each for each in card.findChildren(QPushButton) if each.text() == "Do not ask again"]
        evening.qtbot.mouseClick(never, Qt.MouseButton.LeftButton)
    evening.wait_for_owed()
    evening.window.close()
    with wiring.open_record(evening.database) as database:
        assert database.queries.closing_of(run_id).session_rpe is None
        (held,) = database.answers.ratings_of(run_id)
    assert held.thing.value is None
    evening.open()
    evening.qtbot.waitUntil(lambda: evening.home.athlete == "Hugo", timeout=3_000)
    assert evening.owed() == []


def test_an_answer_that_cannot_be_kept_is_asked_again(
    evening: Evening, monkeypatch: pytest.MonkeyPatch
) -> None:
    evening.done("Hugo", timedelta(hours=20))
    evening.open()
    evening.wait_for_owed(("Hugo", "session_rpe"), ("Hugo", "next_morning_pain"))

    def refuse(_answers: Answers, _thing: object) -> None:
        raise StoreError("The disk is full.")

    monkeypatch.setattr(Answers, "keep", refuse)
    card = list(evening.home.owed.cards.values())[1]
    card.open()
    evening.press_there(Qt.Key.Key_3, Qt.Key.Key_Return)
    evening.qtbot.waitUntil(lambda: "could not be kept" in evening.texts(), timeout=3_000)
    evening.wait_for_owed(("Hugo", "session_rpe"), ("Hugo", "next_morning_pain"))


def planned(athlete: str, file: Path | None, day: date) -> PlannedSession:
    return PlannedSession(
        wiring.new_run_id(NOW),
        athlete,
        "Try-out",
        day,
        NOW,
        "UTC",
        plan_file=None if file is None else str(file),
    )


def test_what_is_planned_for_today_is_chosen_and_begun_by_one_key(evening: Evening, tmp_path: Path) -> None:
    other = tmp_path / "other.toml"
    other.write_text(evening.plan.read_text(encoding="utf-8").replace("Try-out", "Other"), encoding="utf-8")
    with wiring.open_record(evening.database) as database:
        for day in (NOW.date() - timedelta(days=1), NOW.date()):
            file = evening.plan if day == NOW.date() else other
            database.planned.keep(planned("Ines", file, day))
    evening.house = replace(evening.house, plans=(other,))
    evening.open(athlete="Ines")
    evening.qtbot.waitUntil(lambda: "Planned for today" in evening.texts(), timeout=3_000)
    evening.press_there(Qt.Key.Key_Space)
    assert "For Ines" in evening.texts()
    assert "Try-out" in evening.texts()


def test_the_last_plan_of_who_trained_last_is_begun_by_one_key_at_the_next_start(
    evening: Evening, tmp_path: Path
) -> None:
    mine = tmp_path / "mine.toml"
    mine.write_text(evening.plan.read_text(encoding="utf-8").replace("Try-out", "Mine"), encoding="utf-8")
    evening.open(athlete="Hugo")
    evening.window.choose_plan(mine)
    evening.press(Qt.Key.Key_Space)
    evening.wait(60_000)
    evening.window.close()
    evening.open()
    evening.qtbot.waitUntil(lambda: evening.home.athlete == "Hugo", timeout=3_000)
    evening.qtbot.waitUntil(lambda: "Led last time" in evening.texts(), timeout=3_000)
    evening.press_there(Qt.Key.Key_Return)
    assert "Mine" in evening.texts()
    assert "For Hugo" in evening.texts()


def test_a_plan_led_lately_whose_file_is_gone_drops_out_with_a_word(evening: Evening, tmp_path: Path) -> None:
    gone = tmp_path / "gone.toml"
    gone.write_text(evening.plan.read_text(encoding="utf-8").replace("Try-out", "Gone"), encoding="utf-8")
    evening.open()
    evening.window.choose_plan(gone)
    evening.window.close()
    gone.unlink()
    evening.open()
    assert "1 plan led lately cannot be found any more" in evening.texts()
    assert "Gone" not in evening.texts()


@pytest.mark.qt_log_ignore(NO_FRONT, extend=True)
def test_a_plan_handed_over_is_chosen_and_begins_nothing(evening: Evening, tmp_path: Path) -> None:
    handed = tmp_path / "handed.toml"
    handed.write_text(evening.plan.read_text(encoding="utf-8").replace("Try-out", "Handed"), encoding="utf-8")
    evening.open()
    evening.window.take_over(handed, "Ines")
    assert (evening.home.athlete, evening.home.plans.plan and evening.home.plans.plan.path) == (
        "Ines",
        handed,
    )
    evening.press_there(Qt.Key.Key_Space)
    assert "For Ines" in evening.texts()
    assert "Handed" in evening.texts()


@pytest.mark.qt_log_ignore(NO_FRONT, extend=True)
def test_a_plan_handed_over_in_mid_run_waits_until_the_run_is_left(evening: Evening, tmp_path: Path) -> None:
    handed = tmp_path / "handed.toml"
    handed.write_text(evening.plan.read_text(encoding="utf-8").replace("Try-out", "Handed"), encoding="utf-8")
    evening.open(wiring.read_plan(evening.plan))
    evening.press(Qt.Key.Key_Space)
    evening.wait(7_000)
    under_way = evening.page
    evening.window.take_over(handed, "Ines")
    assert evening.page is under_way
    evening.wait(5_000)
    evening.window.leave_session()
    assert (evening.home.athlete, evening.home.plans.plan and evening.home.plans.plan.path) == (
        "Ines",
        handed,
    )
    evening.window.close()
    (run,) = evening.runs()
    assert (run.athlete, run.reps_done) == ("Hugo", 1)


@pytest.mark.qt_log_ignore(NO_FRONT, extend=True)
def test_another_size_keeps_who_and_what_is_chosen(evening: Evening, tmp_path: Path) -> None:
    handed = tmp_path / "handed.toml"
    handed.write_text(evening.plan.read_text(encoding="utf-8"), encoding="utf-8")
    evening.open()
    evening.window.take_over(handed, "Ines")
    before = evening.page
    evening.window.resize(1000, 560)
    evening.qtbot.waitUntil(lambda: evening.page is not before, timeout=3_000)
    assert (evening.home.athlete, evening.home.plans.plan and evening.home.plans.plan.path) == (
        "Ines",
        handed,
    )
