"""The one place that builds the object graph: which folder, which store, which speaker."""

import os
from collections.abc import Mapping
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import app
from app.domain.errors import PacewrightError, UsageError

if TYPE_CHECKING:
    from app.domain.athlete import Athlete
    from app.domain.records import RunHeader
    from app.store.database import Database

DATA_VARIABLE = "PACEWRIGHT_DATA"
DATABASE_NAME = "pacewright.db"


def resources_folder() -> Path:
    """Where fonts, icons and licences lie: beside the package in a checkout, inside it when installed."""
    return _carried("resources")


def demo_folder() -> Path:
    """Where the invented club's plans and roster lie."""
    return _carried("demo_data")


def _carried(name: str) -> Path:
    package = Path(app.__file__).resolve().parent
    inside = package / f"_{name}"
    return inside if inside.is_dir() else package.parent / name


def data_folder(asked: Path | None = None, environment: Mapping[str, str] | None = None) -> Path:
    """Where the record is kept: as asked, else PACEWRIGHT_DATA says, else the user's data folder."""
    if asked is not None:
        return asked
    named = (os.environ if environment is None else environment).get(DATA_VARIABLE)
    if named:
        return Path(named)
    import platformdirs

    return Path(platformdirs.user_data_dir("pacewright", appauthor=False))


def database_file(asked: Path | None = None) -> Path:
    """The database: as asked, else in the data folder."""
    return asked if asked is not None else data_folder() / DATABASE_NAME


def open_record(path: Path, *, read_only: bool = False) -> "Database":
    """The record in a file, made when it is not there. Raises StoreError when it cannot be had."""
    from app.store.database import open_database

    return open_database(path, read_only=read_only)


def find_athlete(name: str, roster: Path | None) -> "Athlete":
    """An athlete of a roster by name; without a roster a person of that name with nothing of their own.

    Raises UsageError when the roster does not have the name.
    """
    from app.domain.athlete import Athlete
    from app.planfile.roster import read_roster

    if roster is None:
        return Athlete(name)
    athletes = {athlete.name: athlete for athlete in read_roster(roster)}
    if name not in athletes:
        raise UsageError(f"{name} is not in {roster}; it has {', '.join(athletes)}.")
    return athletes[name]


def new_run_id(at: datetime) -> str:
    """A fresh UUIDv7 for a run that begins at a time."""
    from app.store.identity import uuid7

    return str(uuid7(int(at.timestamp() * 1000), os.urandom(10)))


def local_zone_name() -> str:
    """The name of this machine's time zone, `UTC` when it cannot be told."""
    link = Path("/etc/localtime")
    for candidate in (os.environ.get("TZ", ""), _zone_of(link)):
        if candidate and _known_zone(candidate):
            return candidate
    return "UTC"


def _zone_of(link: Path) -> str:
    try:
        target = str(link.resolve())
    except OSError:
        return ""
    return target.partition("/zoneinfo/")[2]


def _known_zone(name: str) -> bool:
    try:
        ZoneInfo(name)
    except (ValueError, OSError, KeyError):
        return False
    return True


def new_header(athlete: str, plan_title: str, plan_text: str, *, invented: bool = False) -> "RunHeader":
    """The header of a run that begins now."""
    from app.domain.records import RunHeader

    now = datetime.now(UTC)
    return RunHeader(new_run_id(now), athlete, plan_title, plan_text, now, local_zone_name(), invented)


def read_text(path: Path) -> str:
    """The text of a plan file that has been read before. Raises PacewrightError when it has gone."""
    try:
        return path.read_text(encoding="utf-8-sig")
    except OSError as error:
        raise PacewrightError(f"{path} cannot be read: {error.strerror}.") from error
