"""What planning asks of the record and writes into it; all of it for the record's thread."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
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
    """A plan for some athletes on a day, and weekly up to `until` where that is given.

    `weekdays` are further days of the week, 0 for Monday, on which it comes weekly too.
    """

    athletes: tuple[str, ...]
    plan_title: str
    plan_file: str | None
    day: date
    clock: time | None = None
    until: date | None = None
    weekdays: tuple[int, ...] = ()

    @property
    def days(self) -> tuple[date, ...]:
        """The first day of each weekly session: the day itself, and the further weekdays after it."""
        if self.until is None:
            return (self.day,)
        later = {self.day + timedelta(days=(weekday - self.day.weekday()) % 7) for weekday in self.weekdays}
        return tuple(sorted({self.day, *(day for day in later if day <= self.until)}))


@dataclass(frozen=True, slots=True)
class Shown:
    """What the calendar shows of one athlete, everybody a session can be planned for, and recent plans."""

    due: tuple[DueSession, ...]
    people: tuple[str, ...]
    recent: tuple[str, ...] = ()


def read_days(database: "Database", athlete: str, first: date, last: date, today: date) -> Shown:
    """The planned sessions of some days. Raises StoreError."""
    record = database.reviewing.athlete(athlete, first, last, today)
    people = dict.fromkeys(person.name for person in database.answers.people())
    recent = tuple(plan.title for plan in database.reviewing.recent_plans())
    return Shown(record.due, tuple(people), recent)


def plan_session(
    database: "Database", new: NewSession, stamp: Stamp, new_id: Callable[[datetime], str]
) -> None:
    """Write one planned session down for each athlete and weekday, all or none. Raises StoreError."""
    at, zone = stamp
    database.planned.keep(
        *(
            PlannedSession(
                new_id(at), athlete, new.plan_title, day, at, zone, new.clock, new.until, new.plan_file
            )
            for athlete in new.athletes
            for day in new.days
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
