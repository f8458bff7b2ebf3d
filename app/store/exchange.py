"""The record and other records: what is handed on from it, and what is taken in."""

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

from app.domain.past import PastSession
from app.store.chosen import Choice, athletes_named
from app.store.handing_on import HandingOn
from app.store.intake import Incoming
from app.store.link import Link
from app.store.pack import read_pack, write_pack
from app.store.past_runs import TakenPast, take_past
from app.store.people import RandomBytes
from app.store.taking_in import Taken, take_in


@dataclass(frozen=True, slots=True)
class Wanted:
    """What to hand on: of whom, by what they are called or by id (empty: everybody), and of which days."""

    athletes: tuple[str, ...] = ()
    since: date | None = None
    until: date | None = None
    names: bool = True


class Exchange:
    """Hands on and takes in. Methods raise StoreError when the record cannot be had."""

    def __init__(self, link: Link, random_bytes: RandomBytes) -> None:
        self._link = link
        self._random_bytes = random_bytes

    def athletes(self, words: Iterable[str]) -> frozenset[str]:
        """The ids of those called so, or of such an id. Raises UsageError with the first that is nobody's."""
        with self._link.reading() as connection:
            return athletes_named(connection, words)

    @contextmanager
    def handing_on(self, wanted: Wanted) -> Iterator[HandingOn]:
        """The rows that are wanted, as they are at one moment. Raises UsageError when a name is nobody's."""
        with self._link.reading() as connection:
            athletes = athletes_named(connection, wanted.athletes) if wanted.athletes else None
            choice = Choice(athletes, wanted.since, wanted.until)
            yield HandingOn(connection, self._link.path, choice, names=wanted.names)

    def pack(self, path: Path, wanted: Wanted, made_at: datetime) -> dict[str, int]:
        """Write a pack; gives how many rows each table has. Raises UsageError, PackError."""
        with self.handing_on(wanted) as rows:
            return write_pack(path, rows.rows, made_at, names=wanted.names)

    def unpack(self, path: Path) -> Taken:
        """Take in a pack, whole or not at all. Raises PackError."""
        return self.take_in(read_pack(path))

    def take_in(self, incoming: Incoming) -> Taken:
        """Take in what was checked, whole or not at all. Raises PackError."""
        return take_in(self._link, incoming)

    def take_past(self, sessions: Iterable[PastSession], athlete: str | None, zone: str) -> TakenPast:
        """Take in past training, whole or not at all, by days in a time zone; `athlete` is whose it is."""
        return take_past(self._link, sessions, athlete, zone, self._random_bytes)
