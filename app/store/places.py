"""Where what belongs to a database lies: its backups, and the files that were set aside."""

import re
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

DATABASE_NAME = "pacewright.db"
"""The name of the database in the data folder."""

_MOMENT = "%Y-%m-%dT%H-%M-%SZ"
_MOMENT_PATTERN = re.compile(r"(\d{4}-\d{2}-\d{2}T\d{2}-\d{2}-\d{2}Z)")


def backup_folder(database: Path) -> Path:
    """Where the backups of a database are kept: `backups` beside it.

    A database of another name has a folder of its own, so that two in one folder do not put out each other's.
    """
    return _beside(database, "backups")


def aside_folder(database: Path) -> Path:
    """Where the files are put that stood in a database's place before, damaged or replaced."""
    return _beside(database, "set_aside")


def _beside(database: Path, name: str) -> Path:
    own = name if database.name == DATABASE_NAME else f"{database.name}-{name}"
    return database.parent / own


def moment_name(at: datetime) -> str:
    """A moment as part of a file's name, in UTC. It is all that a name says: nothing of who or what."""
    return at.astimezone(UTC).strftime(_MOMENT)


def moment_in(name: str) -> datetime | None:
    """The moment that a file's name begins with, None when it begins with none."""
    found = _MOMENT_PATTERN.match(name)
    if found is None:
        return None
    try:
        return datetime.strptime(found[1], _MOMENT).replace(tzinfo=UTC)
    except ValueError:
        return None


def free_place(folder: Path, stem: str, ending: str) -> Path:
    """A path in a folder that nothing has yet: `STEM.db`, else `STEM-2.db` and so on."""
    return next(place for place in _places(folder, stem, ending) if not place.exists())


def _places(folder: Path, stem: str, ending: str) -> Iterator[Path]:
    yield folder / f"{stem}{ending}"
    number = 2
    while True:
        yield folder / f"{stem}-{number}{ending}"
        number += 1
