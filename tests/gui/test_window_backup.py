"""The backup at each start: made once the window is open, in the database's thread, and stopping nothing."""

import threading
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QMessageBox
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.errors import StoreError
from app.store.backup import backups_in
from app.store.places import backup_folder
from tests.filled import facts_in, fill, invented_runs, page_of, spoil
from tests.rig import Rig

RUNS = invented_runs(3)


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Rig:
    """A window on a record with runs in it; a message box would wait for ever."""

    def interrupt(*_words: object) -> None:
        raise AssertionError("nobody may be kept waiting")

    monkeypatch.setattr(QMessageBox, "warning", interrupt)
    rig = Rig(qtbot, tmp_path, wiring.open_record)
    fill(rig.database, RUNS)
    return rig


def open_with(rig: Rig, back_up: Callable[[], object]) -> None:
    rig.house = replace(rig.house, back_up_record=back_up)
    rig.open()


def close(rig: Rig) -> None:
    rig.window.close()


def test_a_start_backs_up_what_is_there(rig: Rig, qtbot: QtBot) -> None:
    folder = backup_folder(rig.database)
    open_with(rig, lambda: wiring.back_up_record(rig.database))
    qtbot.waitUntil(lambda: len(backups_in(folder)) > 0, timeout=10_000)
    close(rig)
    (backup,) = backups_in(folder)
    assert facts_in(backup.path) == {run.header.run_id: run.facts for run in RUNS}


def test_the_backup_waits_for_the_run_to_be_offered_and_does_not_hold_the_screen(
    rig: Rig, qtbot: QtBot
) -> None:
    go_on, threads = threading.Event(), []

    def slow() -> None:
        threads.append(threading.current_thread())
        assert go_on.wait(30)

    open_with(rig, slow)
    qtbot.waitUntil(lambda: "Kaya" in rig.texts(), timeout=10_000)
    assert threads != [threading.main_thread()]
    go_on.set()
    close(rig)
    assert len(threads) == 1


def test_a_backup_that_cannot_be_made_is_a_notice_and_the_program_goes_on(rig: Rig, qtbot: QtBot) -> None:
    def fail() -> None:
        raise StoreError("No copy of the database could be written in /stick.")

    open_with(rig, fail)
    qtbot.waitUntil(lambda: "could be written in /stick" in rig.texts(), timeout=10_000)
    asked: list[object] = []
    rig.window._keeper.ask(lambda database: database.queries.athletes(), asked.append)
    qtbot.waitUntil(lambda: bool(asked), timeout=10_000)
    assert asked == [("Hugo", "Ines", "Kaya")]
    close(rig)


def test_damage_that_opening_does_not_see_is_noticed_at_the_start(rig: Rig, qtbot: QtBot) -> None:
    spoil(rig.database, page_of(rig.database, "ix_athlete_name"), seed=1)
    open_with(rig, lambda: wiring.back_up_record(rig.database))
    qtbot.waitUntil(lambda: "is damaged. Do not delete it" in rig.texts(), timeout=10_000)
    assert "pacewright recover" in rig.texts()
    close(rig)
    assert backups_in(backup_folder(rig.database)) == ()


def test_a_record_that_cannot_be_opened_is_not_backed_up(rig: Rig, qtbot: QtBot) -> None:
    spoil(rig.database, 1)
    made: list[str] = []
    rig.house = replace(rig.house, back_up_record=lambda: made.append("backup"))
    broken: list[str] = []
    rig.open(broken=broken.append)
    qtbot.waitUntil(lambda: bool(broken), timeout=10_000)
    close(rig)
    assert made == []
