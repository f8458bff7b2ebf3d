"""`calendar`: the planned sessions of an athlete as a file that any calendar program reads."""

import argparse
from pathlib import Path

from app.cli.kept import kept_record
from app.domain.errors import PacewrightError, UsageError

SUMMARY = "write an athlete's planned sessions as a calendar file"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--athlete", required=True, metavar="NAME", help="whose sessions")
    parser.add_argument("-o", "--output", type=Path, required=True, metavar="FILE", help="an .ics file")
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")


def run(arguments: argparse.Namespace) -> int:
    """Write the file, and say how many sessions were planned."""
    from app.cli.record_words import counted
    from app.reports.session_calendar import calendar_bytes

    with kept_record(arguments.database) as database:
        planned, changes = database.planned.of(arguments.athlete)
        known = {person.name for person in database.answers.people()}
    if arguments.athlete not in known:
        raise UsageError(
            f"There is nobody called {arguments.athlete} in the record. See whether the name is right."
        )
    try:
        arguments.output.write_bytes(calendar_bytes(planned, changes))
    except OSError as error:
        raise PacewrightError(f"{arguments.output} cannot be written: {error.strerror}.") from error
    print(f"{arguments.output}: {counted(len(planned), 'planned session')}")
    return 0
