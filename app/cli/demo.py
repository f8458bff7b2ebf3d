"""`demo`: an invented season in a database, through the same controller, journal and store as a real one."""

import argparse
import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring
from app.domain.errors import UsageError

if TYPE_CHECKING:
    from app.cli.demo_season import Season
    from app.store.database import Database

SUMMARY = "fill a database with invented weeks of the demo club, marked as invented"
WEEKS = 12
MOST_WEEKS = 104
UNTIL = date(2026, 11, 22)
EARLIEST, LATEST = date(2000, 1, 1), date(2100, 1, 1)
PLANS = ("shoulder_rotators.toml", "landing_control.toml")


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--database", type=Path, required=True, metavar="FILE", help="where to write them")
    parser.add_argument("--weeks", type=int, default=WEEKS, metavar="N", help=f"how many (default {WEEKS})")
    parser.add_argument(
        "--until",
        type=date.fromisoformat,
        default=UNTIL,
        metavar="DATE",
        help=f"the last day, as YYYY-MM-DD (default {UNTIL}: the same runs each time)",
    )


def run(arguments: argparse.Namespace) -> int:
    """Write every run of the season that is not there yet, and say how many there are."""
    from random import Random

    from app.store.database import open_database

    if not 1 <= arguments.weeks <= MOST_WEEKS:
        raise UsageError(f"--weeks is a number from 1 to {MOST_WEEKS}.")
    if not EARLIEST <= arguments.until <= LATEST:
        raise UsageError(f"--until is a day from {EARLIEST} to {LATEST}.")
    season = _season(arguments.weeks, arguments.until)
    names = Random("names of invented athletes").randbytes  # noqa: S311 - an invention, no secret
    with open_database(arguments.database, random_bytes=names) as database:
        if database.queries.holds_real_runs():
            raise UsageError(
                f"{arguments.database} holds runs of real people: nothing invented is written among them. "
                "Name a new file with --database."
            )
        runs, new = _write(database, season)
    there = "" if new == runs else f", {runs - new} of them there before"
    length = "week" if arguments.weeks == 1 else f"{arguments.weeks} weeks"
    sys.stdout.write(
        f"{arguments.database}: {runs} invented runs of {len(season.athletes)} invented athletes "
        f"in the {length} to {arguments.until}{there}\n"
    )
    return 0


def _season(weeks: int, until: date) -> "Season":
    from app.cli.demo_season import Season

    folder = wiring.demo_folder()
    written = [wiring.read_plan(folder / name) for name in PLANS]
    athletes = wiring.read_athletes(folder / "roster.toml")
    return Season([(plan.plan, plan.text) for plan in written], athletes, weeks, until)


def _write(database: "Database", season: "Season") -> tuple[int, int]:
    """How many runs the season has, and how many of them are new."""
    from app.cli.demo_beside import before, excuses, morning_after, planned
    from app.cli.demo_tests import tests

    there = {summary.run_id for summary in database.queries.run_summaries()}
    runs = new = 0
    for run in season.runs():
        runs += 1
        if run.header.run_id in there:
            continue
        new += 1
        database.journal.open_run(run.header, run.prescribed())
        database.journal.append(run.header.run_id, 0, run.facts())
        beside = (before(run), morning_after(run, season.until))
        database.answers.keep(*(said for said in beside if said is not None))
    sessions = tuple(planned(season))
    database.planned.keep(*sessions)
    database.planned.keep_changes(*excuses(season, sessions))
    database.answers.keep(*tests(season))
    return runs, new
