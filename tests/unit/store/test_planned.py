"""Planned sessions are kept as they were planned, and nothing of them is written over."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

import pytest

from app.domain.errors import StoreError
from app.domain.planned import ChangeKind, PlannedSession, occurrences
from app.store.database import Database, open_database

AT = datetime(2026, 9, 1, 9, tzinfo=UTC)
DAY = date(2026, 10, 20)
ID = "0190163d-8694-739b-aea5-966c26f8ad91"
SESSION = PlannedSession(
    ID, "Ines", "Landing control", DAY, AT, "Europe/Lisbon", time(18, 30), date(2026, 11, 10), "landing.toml"
)


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    with open_database(tmp_path / "record.db") as opened:
        yield opened


def days(database: Database) -> list[tuple[date, str | None]]:
    planned, changes = database.planned.of("Ines")
    found = occurrences(planned, changes, DAY, date(2027, 1, 1))
    return [(each.day, each.excused) for each in found]


def test_what_was_planned_is_read_back_as_it_was_and_once(database: Database) -> None:
    database.planned.keep(SESSION)
    database.planned.keep(SESSION)
    assert database.planned.of() == ((SESSION,), ())
    assert database.planned.of("Hugo") == ((), ())
    assert [person.name for person in database.answers.people()] == ["Ines"]


def test_another_session_of_the_same_name_is_refused(database: Database) -> None:
    database.planned.keep(SESSION)
    with pytest.raises(ValueError, match="is another"):
        database.planned.keep(replace(SESSION, clock=None))


def test_words_about_a_session_are_added_and_the_last_of_a_day_holds(database: Database) -> None:
    database.planned.keep(SESSION)
    database.planned.excuse(ID, DAY, "fever", AT, "Europe/Lisbon")
    database.planned.make_due(ID, DAY, AT + timedelta(hours=1), "Europe/Lisbon")
    database.planned.excuse(ID, date(2026, 10, 27), "exam", AT, "Europe/Lisbon")
    database.planned.move(ID, date(2026, 11, 3), date(2026, 11, 5), AT, "Europe/Lisbon")
    database.planned.end(ID, date(2026, 11, 10), AT, "Europe/Lisbon")
    assert days(database) == [(DAY, None), (date(2026, 10, 27), "exam"), (date(2026, 11, 5), None)]
    _, changes = database.planned.of("Ines")
    assert sorted(each.kind for each in changes) == sorted([*ChangeKind, ChangeKind.EXCUSED])
    assert all(each.athlete == "Ines" for each in changes)


def test_the_next_session_is_that_of_the_clock_where_it_is_planned(database: Database) -> None:
    assert database.planned.next_of("Ines", AT) is None
    database.planned.keep(SESSION)
    far = replace(SESSION, id=ID.replace("0190", "0191"), zone="Pacific/Auckland", until=None)
    database.planned.keep(far)
    # 18:30 in Auckland, on summer time, is 05:30 UTC; in Lisbon, on summer time, it is 17:30 UTC.
    for at, expected in (
        (datetime(2026, 10, 20, 5, 29, tzinfo=UTC), (far, DAY)),
        (datetime(2026, 10, 20, 5, 31, tzinfo=UTC), (SESSION, DAY)),
        (datetime(2026, 10, 20, 17, 29, tzinfo=UTC), (SESSION, DAY)),
        (datetime(2026, 10, 20, 17, 31, tzinfo=UTC), (SESSION, date(2026, 10, 27))),
    ):
        found = database.planned.next_of("Ines", at)
        assert found is not None
        assert (found.planned, found.day) == expected
    assert database.planned.next_of("Ines", datetime(2026, 11, 11, tzinfo=UTC)) is None


def test_what_is_not_planned_cannot_be_excused_and_a_blank_reason_is_none(database: Database) -> None:
    with pytest.raises(StoreError, match="not in the record any more"):
        database.planned.end(ID, DAY, AT, "UTC")
    database.planned.keep(SESSION)
    with pytest.raises(ValueError, match="reason"):
        database.planned.excuse(ID, DAY, " ", AT, "UTC")
    assert days(database)[0] == (DAY, None)
