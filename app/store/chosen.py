"""What of a record is chosen to be handed on: whose, from which day, to which day."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime

from sqlalchemy import Connection, select

from app.analysis.local_time import known_zone
from app.domain.errors import UsageError
from app.store.rows import AthleteRow


@dataclass(frozen=True, slots=True)
class Choice:
    """`athletes` are names of rows, None for everybody; both days are included, by the clock of the place."""

    athletes: frozenset[str] | None = None
    since: date | None = None
    until: date | None = None

    def of(self, athlete_id: str) -> bool:
        """Whether an athlete is chosen."""
        return self.athletes is None or athlete_id in self.athletes

    def when(self, at: datetime, zone: str) -> bool:
        """Whether a moment is."""
        day = at.astimezone(known_zone(zone)).date()
        return (self.since is None or self.since <= day) and (self.until is None or day <= self.until)


def athletes_named(connection: Connection, words: Iterable[str]) -> frozenset[str]:
    """The rows of athletes, named by what they are called, or by their ids; a name may be that of several.

    Raises UsageError with the first that nobody has.
    """
    found: set[str] = set()
    rows = connection.execute(select(AthleteRow.id, AthleteRow.name)).all()
    for word in words:
        named = {row for row, name in rows if word in (row, name)}
        if not named:
            raise UsageError(f"There is nobody called {word} in the record. See whether the name is right.")
        found |= named
    return frozenset(found)
