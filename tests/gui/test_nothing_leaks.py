"""A session on the screen, with a name and notes to look for: they stand in the record, and nowhere else."""

import logging
import stat
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.athlete import Athlete
from app.views.review.room import ReviewRoom
from tests.no_network import no_network
from tests.rig import Rig

NAME, NOTE = "Wendelin Marker", "stabbing under the kneecap"


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Rig]:
    monkeypatch.setenv("PACEWRIGHT_DATA", str(tmp_path / "data"))
    monkeypatch.setenv("PACEWRIGHT_STATE", str(tmp_path / "state"))
    made = Rig(qtbot, tmp_path, wiring.open_record)
    made.database = wiring.database_file()
    made.house = replace(
        made.house,
        read_athletes=lambda: (Athlete(NAME),),
        save_settings=wiring.save_settings,
        back_up_record=lambda: wiring.back_up_record(made.database),
    )
    yield made
    made.window.close()


def lead(rig: Rig) -> None:
    """A session of two bouts: the first hurt, the second is left out for it, with a note."""
    rig.open(wiring.read_plan(rig.plan), athlete=NAME)
    rig.press(Qt.Key.Key_Space)
    rig.wait(15_000)
    rig.press(Qt.Key.Key_4)
    rig.press(Qt.Key.Key_7)
    rig.wait(1_000)
    (entry,) = rig.page.findChildren(QLineEdit, "note")
    entry.setText(NOTE)
    rig.click("Leave it out  (Enter)")


def files(folder: Path) -> list[Path]:
    return [path for path in folder.rglob("*") if path.is_file()]


def test_name_and_notes_stand_in_the_record_and_its_backups_and_nowhere_else(
    rig: Rig,
    qtbot: QtBot,
    tmp_path: Path,
    capfd: pytest.CaptureFixture[str],
    caplog: pytest.LogCaptureFixture,
) -> None:
    caplog.set_level(logging.DEBUG)
    with no_network():
        lead(rig)
        rig.window.leave_session()
        rig.window.open_review()
        (room,) = rig.window.findChildren(ReviewRoom)
        qtbot.waitUntil(lambda: bool(room.squad.lines))
        room.open_athlete(NAME)
        qtbot.waitUntil(lambda: room.athlete.board.view is not None)
        room.athlete.board.runs.table.selectRow(0)
        room.athlete.board.runs.open.click()
        qtbot.waitUntil(lambda: room.run.view is not None)
        assert any(
            column.text(line) == NOTE for line in room.run.model.rows for column in room.run.model.columns
        )
        rig.window.close()
    wiring.back_up_record(rig.database)
    with wiring.open_record(rig.database) as record:
        (run,) = record.queries.run_summaries()
        notes = {getattr(fact, "note", None) for fact in record.queries.facts_of(run.run_id)}
    assert (run.athlete, run.pain, notes) == (NAME, 7, {None, NOTE})
    holding = [
        path for path in files(tmp_path) if any(text.encode() in path.read_bytes() for text in (NAME, NOTE))
    ]
    assert holding
    assert all(path.suffix == ".db" and path.is_relative_to(tmp_path / "data") for path in holding)
    said = "".join(capfd.readouterr()) + caplog.text
    assert [text for text in (NAME, "Wendelin", NOTE) if text in said] == []
    names = [str(path.relative_to(tmp_path)) for path in tmp_path.rglob("*")]
    assert [name for name in names if "Wendelin" in name or "Marker" in name] == []


def test_every_file_and_folder_is_its_owner_s_alone(rig: Rig, tmp_path: Path) -> None:
    lead(rig)
    rig.window.close()
    wiring.back_up_record(rig.database)
    wiring.save_settings({("screen", "presentation"): True})
    data = tmp_path / "data"
    assert len(files(data)) >= 3
    assert {stat.S_IMODE(path.stat().st_mode) for path in files(data)} == {0o600}
    folders = [data, *(path for path in data.rglob("*") if path.is_dir())]
    assert {stat.S_IMODE(path.stat().st_mode) for path in folders} == {0o700}
