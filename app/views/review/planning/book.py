"""What planning asks of the record and writes into it; all of it for the record's thread."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, time
from pathlib import Path
from typing import TYPE_CHECKING

from app.domain.errors import PacewrightError
from app.domain.planned import DueSession, PlannedSession
from app.reports.session_calendar import calendar_bytes
from app.views.translation import message

if TYPE_CHECKING:
    from app.store.database import Database

Stamp = tuple[datetime, str]
NOT_WRITTEN = message("{path} cannot be written. Choose a folder that exists and is yours.")


@dataclass(frozen=True, slots=True)
class NewSession:
    """A plan for some athletes on a day, and weekly up to `until` where that is given."""

    athletes: tuple[str, ...]
    plan_title: str
    plan_file: str | None
    day: date
    clock: time | None = None
    until: date | None = None


@dataclass(frozen=True, slots=True)
class Shown:
    """What the calendar shows of one athlete, and everybody a session can be planned for."""

    due: tuple[DueSession, ...]
    people: tuple[str, ...]


def read_days(database: "Database", athlete: str, first: date, last: date, today: date) -> Shown:
    """The planned sessions of some days. Raises StoreError."""
    record = database.reviewing.athlete(athlete, first, last, today)
    people = dict.fromkeys(person.name for person in database.answers.people())
    return Shown(record.due, tuple(people))


def plan_session(
    database: "Database", new: NewSession, stamp: Stamp, new_id: Callable[[datetime], str]
) -> None:
    """Write one planned session down for each athlete. Raises StoreError."""
    at, zone = stamp
    for athlete in new.athletes:
        database.planned.keep(
            PlannedSession(
                new_id(at), athlete, new.plan_title, new.day, at, zone, new.clock, new.until, new.plan_file
            )
        )


def write_calendar(database: "Database", athlete: str, path: Path) -> int:
    """Write an athlete's planned sessions as a calendar file; gives how many. Raises PacewrightError."""
    planned, changes = database.planned.of(athlete)
    try:
        path.write_bytes(calendar_bytes(planned, changes))
    except OSError as error:
        raise PacewrightError(NOT_WRITTEN.format(path=path)) from error
    return len(planned)
