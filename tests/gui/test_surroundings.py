"""Beside the run in the window: pedals that were taught stay taught, and the last panel says what is next."""

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.planned import Occurrence, PlannedSession
from app.planfile.key_settings import PedalKeys
from app.store.database import open_database
from app.views.athlete.page import AthletePage
from app.views.surroundings import in_words
from tests.rig import Rig

TODAY = datetime.now(UTC).date()


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Rig:
    return Rig(qtbot, tmp_path, open_database)


def planned(rig: Rig, day: date, clock: time | None = None) -> PlannedSession:
    at = datetime.now(UTC)
    return PlannedSession(
        wiring.new_run_id(at), "Hugo", "Landing control", day, at, wiring.local_zone_name(), clock
    )


def test_the_next_session_after_today_is_said_when_the_session_is_over(rig: Rig) -> None:
    with wiring.open_record(rig.database) as database:
        database.planned.keep(
            planned(rig, TODAY, time(23, 58)), planned(rig, TODAY + timedelta(days=3), time(18))
        )
    rig.open(wiring.read_plan(rig.plan))
    page = rig.page
    assert isinstance(page, AthletePage)
    shown = page._finished._next
    rig.qtbot.waitUntil(lambda: bool(shown.text()))
    assert str((TODAY + timedelta(days=3)).day) in shown.text()
    assert "Landing control" in shown.text()
    rig.window.close()


def test_nothing_is_said_where_nothing_is_planned(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    page = rig.page
    assert isinstance(page, AthletePage)
    rig.press(Qt.Key.Key_Space)
    assert page._finished._next.isHidden()
    rig.window.close()


def test_pedals_that_were_taught_are_known_to_the_next_page(rig: Rig) -> None:
    rig.settings = replace(rig.settings, keys=PedalKeys(("F7",), ("F6",), False))
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Space)
    rig.wait(2_000)
    rig.press(Qt.Key.Key_F6)
    page = rig.page
    assert isinstance(page, AthletePage)
    assert page._panel(page._session.look()) is page._paused
    rig.window.close()


def test_a_day_and_an_hour_are_written_in_words() -> None:
    session = PlannedSession(
        wiring.new_run_id(datetime.now(UTC)),
        "Hugo",
        "Landing control",
        date(2026, 11, 26),
        datetime.now(UTC),
        "UTC",
    )
    assert in_words(Occurrence(session, date(2026, 11, 26), date(2026, 11, 26))) == (
        "Thursday 26 November, Landing control"
    )
    at = replace(session, clock=time(18, 30))
    assert in_words(Occurrence(at, date(2026, 11, 26), date(2026, 11, 26))).startswith(
        "Thursday 26 November, "
    )
