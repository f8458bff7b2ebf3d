"""`calendar` as a person uses it."""

from datetime import UTC, date, datetime, time
from pathlib import Path

import pytest
from icalendar import Calendar

from app.__main__ import main
from app.domain.planned import PlannedSession
from app.store.database import open_database

AT = datetime(2026, 9, 1, 9, tzinfo=UTC)
SESSION = PlannedSession(
    "0190163d-8694-739b-aea5-966c26f8ad91",
    "Ines",
    "Landing control",
    date(2026, 10, 13),
    AT,
    "Europe/Lisbon",
    time(18, 30),
    date(2026, 12, 15),
)


@pytest.fixture
def record(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    with open_database(path) as database:
        database.planned.keep(SESSION)
        database.planned.excuse(SESSION.id, SESSION.day, "fever", AT, "Europe/Lisbon")
    return path


def say(record: Path, *words: object) -> int:
    return main(["calendar", *map(str, words), "--database", str(record)])


def test_what_is_planned_is_written_with_what_became_of_it(
    record: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "ines.ics"
    assert say(record, "--athlete", "Ines", "-o", file) == 0
    assert capsys.readouterr().out == f"{file}: 1 planned session\n"
    (event,) = Calendar.from_ical(file.read_bytes()).walk("VEVENT")
    assert event["UID"] == f"{SESSION.id}@pacewright"
    assert "EXDATE" in event


def test_nobody_of_that_name_and_a_place_that_cannot_be_written_are_said_plainly(
    record: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert say(record, "--athlete", "Nobody", "-o", tmp_path / "a.ics") == 1
    assert "There is nobody called Nobody in the record." in capsys.readouterr().err
    assert not (tmp_path / "a.ics").exists()
    assert say(record, "--athlete", "Ines", "-o", tmp_path / "no" / "a.ics") == 1
    assert "cannot be written: No such file or directory." in capsys.readouterr().err
