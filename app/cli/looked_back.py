"""What the commands of the review share: whose days are looked back on, from the record of them."""

import argparse
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from app import wiring
from app.domain.errors import UsageError
from app.domain.plan import Side

if TYPE_CHECKING:
    from app.domain.reviewed import AthleteRecord
    from app.store.database import Database

WEEKS = 12
LONGEST = timedelta(days=366 * 30)


def configure_window(parser: argparse.ArgumentParser) -> None:
    """Declare `--athlete`, `--from`, `--to`, `--reference` and `--database`."""
    parser.add_argument("--athlete", required=True, metavar="NAME", help="who is looked back on")
    parser.add_argument(
        "--from",
        dest="first",
        type=date.fromisoformat,
        metavar="DATE",
        help=f"the first day, as YYYY-MM-DD (default: the Monday {WEEKS - 1} weeks before that of the last)",
    )
    parser.add_argument(
        "--to",
        dest="last",
        type=date.fromisoformat,
        metavar="DATE",
        help="the last day, included (default: today)",
    )
    parser.add_argument(
        "--reference",
        choices=("left", "right"),
        help="the reference side for this look, not kept (default: the one chosen in the record, if any)",
    )
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")


def local_today() -> date:
    """The day by the clock on the wall."""
    return wiring.now().astimezone(ZoneInfo(wiring.local_zone_name())).date()


def window(arguments: argparse.Namespace, today: date) -> tuple[date, date]:
    """First and last day as asked. Raises UsageError where they are the wrong way round or too far apart."""
    last: date = arguments.last or today
    monday = last - timedelta(days=last.weekday())
    first: date = arguments.first or monday - timedelta(weeks=WEEKS - 1)
    if last < first:
        raise UsageError("--to is a day before that of --from.")
    if last - first > LONGEST:
        raise UsageError("From --from to --to are more than thirty years. Choose a shorter time.")
    return first, last


def record_of(database: "Database", arguments: argparse.Namespace, today: date) -> "AthleteRecord":
    """The athlete's days. Raises UsageError when nobody of that name is in the record."""
    first, last = window(arguments, today)
    name: str = arguments.athlete
    if name not in {person.name for person in database.answers.people()}:
        raise UsageError(f"There is nobody called {name} in the record. See whether the name is right.")
    found = database.reviewing.athlete(name, first, last, today)
    return found if arguments.reference is None else replace(found, reference=Side(arguments.reference))
