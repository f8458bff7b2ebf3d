"""`consent`: since when an athlete agrees to what is kept of them, and to what."""

import argparse
import sys
from datetime import date
from pathlib import Path

from app import wiring
from app.cli.kept import kept_record
from app.domain.errors import UsageError

SUMMARY = "write down since when an athlete agrees to what is kept of them, and to what"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--athlete", required=True, metavar="NAME", help="who agrees, by name or id")
    given = parser.add_mutually_exclusive_group(required=True)
    given.add_argument("--date", type=date.fromisoformat, metavar="DATE", help="since when, as YYYY-MM-DD")
    given.add_argument("--withdrawn", action="store_true", help="not any more: it is unknown again")
    parser.add_argument("--scope", metavar="TEXT", help="to what, such as: training data, seen by the staff")
    parser.add_argument("--who", default="command line", metavar="NAME", help="who writes it down")
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")


def run(arguments: argparse.Namespace) -> int:
    """Write it down as corrections, so that what was agreed before stays readable."""
    from app.domain.correctable import Subject
    from app.domain.corrections import Change, Target

    at, zone = wiring.stamp()
    if arguments.date is not None and arguments.date > at.astimezone().date():
        raise UsageError("--date is a day to come; consent is written down when it is given.")
    if arguments.withdrawn and arguments.scope:
        raise UsageError("--scope does not go with --withdrawn.")
    since = None if arguments.withdrawn else arguments.date.isoformat()
    why = "consent withdrawn" if arguments.withdrawn else "consent given"
    with kept_record(arguments.database) as database:
        people = sorted(database.exchange.athletes((arguments.athlete,)))
        try:
            changes = [
                Change(Target(Subject.ATHLETE, athlete), field, value, arguments.who, why, at, zone)
                for athlete in people
                for field, value in (("consent_on", since), ("consent_scope", arguments.scope))
            ]
        except ValueError as error:
            raise UsageError(f"Nothing was written down: {error}.") from error
        for change in changes:
            database.corrections.correct(change)
    if arguments.withdrawn:
        sys.stdout.write(
            f"{arguments.athlete}: consent is unknown again; what was agreed stays in the history.\n"
        )
        sys.stdout.write("To forget somebody for good: erase.\n")
        return 0
    scope = f", to: {arguments.scope}" if arguments.scope else ", to what is not said"
    sys.stdout.write(f"{arguments.athlete}: consent since {arguments.date}{scope}\n")
    return 0
