"""Backups: verified copies of a database beside it, the latest days and months of them.

A file is named by its moment in UTC and the schema it has, and by nothing else.
"""

import os
import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from app.domain.errors import StoreError
from app.store.copying import copy_verified, is_sound, saying_which_copy
from app.store.durable import make_private_folder, put_in_place, remove_with_journal
from app.store.looking import looking_at, number, tables_of
from app.store.places import free_place, moment_in, moment_name

DAYS = 7
MONTHS = 12
PART = ".part"
_STALE = timedelta(days=1)
_NAME = re.compile(r"[\dT-]+Z-schema(?P<schema>\d+)(?:-(?P<again>\d+))?\.db")
_COUNTERS = (range(24, 28), range(40, 44), range(92, 100))
"""Where a header counts changes of the file and names the library that made them; copies differ in it.

Source: https://www.sqlite.org/fileformat2.html, section 1.3.
"""
_CHUNK = 1 << 20


@dataclass(frozen=True, slots=True)
class Backup:
    """A copy that was verified when it was made: where it lies, of when it is, and of which schema."""

    path: Path
    at: datetime
    schema: int


@dataclass(frozen=True, slots=True)
class BackedUp:
    """The backup that holds what the database holds; `made` now, or one that did so already.

    `backup` is None where the database holds nothing yet.
    """

    backup: Backup | None
    made: bool


def backups_in(folder: Path) -> tuple[Backup, ...]:
    """The backups in a folder, the newest first. Raises StoreError where it cannot be read."""
    if not folder.is_dir():
        return ()
    with saying_which_copy(folder):
        paths = list(folder.iterdir())
    found = [(backup, _again(path)) for path in paths if (backup := _named(path)) is not None]
    return tuple(backup for backup, _ in sorted(found, key=lambda one: (one[0].at, one[1]), reverse=True))


def newest_sound(folder: Path) -> Backup | None:
    """The newest backup that still passes the check, None where there is none."""
    return next((backup for backup in backups_in(folder) if _readable(backup.path)), None)


def back_up(database: Path, folder: Path, at: datetime) -> BackedUp:
    """Make a backup unless the newest says the same already; then take away those no longer to be kept.

    Raises StoreError when none could be made, and then nothing is taken away.
    """
    if _holds_nothing(database):
        return BackedUp(None, made=False)
    before = backups_in(folder)
    new = write_backup(database, folder, at)
    with saying_which_copy(folder):
        if before and _say_the_same(new.path, before[0].path):
            new.path.unlink()
            return BackedUp(before[0], made=False)
    prune(folder, at)
    return BackedUp(new, made=True)


def write_backup(database: Path, folder: Path, at: datetime) -> Backup:
    """Make a verified copy in a folder, whatever else is there. Raises StoreError."""
    with looking_at(database) as connection:
        schema = number(connection, "PRAGMA user_version")
    with saying_which_copy(folder):
        make_private_folder(folder)
        path = free_place(folder, f"{moment_name(at)}-schema{schema}", ".db")
    part = path.with_name(f"{path.name}.{os.getpid()}{PART}")
    copy_verified(database, part)
    with saying_which_copy(folder):
        put_in_place(part, path)
    return Backup(path, at.replace(microsecond=0), schema)


def prune(folder: Path, now: datetime) -> tuple[Backup, ...]:
    """Take away the backups that are not to be kept, and give them back as they were named.

    Kept are the newest, the newest of each of the 7 latest days and 12 latest months that have one, and the
    newest of each schema; beside these any that holds a run the newest does not. Raises StoreError.
    """
    there = backups_in(folder)
    kept = set(_to_keep(there))
    superfluous = [backup for backup in there if backup not in kept]
    if superfluous:
        runs = _runs_in(there[0].path)
        superfluous = [backup for backup in superfluous if _covered(backup.path, runs)]
    with saying_which_copy(folder):
        for backup in superfluous:
            backup.path.unlink(missing_ok=True)
        _sweep(folder, now)
    return tuple(superfluous)


def _to_keep(newest_first: Sequence[Backup]) -> list[Backup]:
    days = _newest_of_each(newest_first, lambda backup: backup.at.date())[:DAYS]
    months = _newest_of_each(newest_first, lambda backup: (backup.at.year, backup.at.month))[:MONTHS]
    schemas = _newest_of_each(newest_first, lambda backup: backup.schema)
    return [*newest_first[:1], *days, *months, *schemas]


def _newest_of_each(newest_first: Sequence[Backup], kind: Callable[[Backup], object]) -> list[Backup]:
    found: dict[object, Backup] = {}
    for backup in newest_first:
        found.setdefault(kind(backup), backup)
    return list(found.values())


def _runs_in(path: Path) -> frozenset[bytes]:
    with looking_at(path) as connection:
        return frozenset(name for (name,) in connection.execute("SELECT id FROM run"))


def _covered(path: Path, runs: frozenset[bytes]) -> bool:
    """Whether all runs of a backup are among others. One that cannot be read is not known to be."""
    try:
        return _runs_in(path) <= runs
    except StoreError:
        return False


def _readable(path: Path) -> bool:
    try:
        return is_sound(path)
    except StoreError:
        return False


def _holds_nothing(database: Path) -> bool:
    with looking_at(database) as connection:
        tables = tables_of(connection) - {"alembic_version"}
        return not any(number(connection, f'SELECT EXISTS (SELECT 1 FROM "{table}")') for table in tables)  # noqa: S608


def _say_the_same(one: Path, other: Path) -> bool:
    if one.stat().st_size != other.stat().st_size:
        return False
    with one.open("rb") as first, other.open("rb") as second:
        if _without_counters(first.read(100)) != _without_counters(second.read(100)):
            return False
        while True:
            chunk = first.read(_CHUNK)
            if chunk != second.read(_CHUNK):
                return False
            if not chunk:
                return True


def _without_counters(header: bytes) -> bytes:
    return bytes(byte for place, byte in enumerate(header) if not any(place in span for span in _COUNTERS))


def _sweep(folder: Path, now: datetime) -> None:
    """Take away what a copy that was cut short left behind, once it cannot be under way any more."""
    for part in folder.glob(f"*.db.*{PART}"):
        begun = moment_in(part.name)
        if begun is not None and now - begun > _STALE:
            remove_with_journal(part)


def _named(path: Path) -> Backup | None:
    found, at = _NAME.fullmatch(path.name), moment_in(path.name)
    return None if found is None or at is None else Backup(path, at, int(found["schema"]))


def _again(path: Path) -> int:
    found = _NAME.fullmatch(path.name)
    return 1 if found is None or found["again"] is None else int(found["again"])
