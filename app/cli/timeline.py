"""`timeline`: a plan laid out in time, as a sheet for reading or row by row."""

import argparse
import io
import sys
from pathlib import Path

from app.cli.whose import athlete_for, configure_whose

SUMMARY = "print a plan laid out in time, with its figures"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plan", type=Path, metavar="PLAN")
    configure_whose(parser)
    parser.add_argument("--format", choices=("text", "csv", "json"), default="text", help="text if not given")


def run(arguments: argparse.Namespace) -> int:
    """Print the timeline. Side `weaker` is the left here: no record is read."""
    from app.domain.compiler import compile_timeline
    from app.planfile.reader import read_plan
    from app.reports.timeline_rows import timeline_csv, timeline_json
    from app.reports.timeline_sheet import timeline_text

    plan = read_plan(arguments.plan)
    timeline = compile_timeline(plan, athlete_for(plan, arguments))
    if arguments.format == "csv":
        _write(timeline_csv(timeline))
    elif arguments.format == "json":
        _write(timeline_json(timeline))
    else:
        _write(timeline_text(timeline, arguments.athlete))
    return 0


def _write(text: str) -> None:
    """Put text out with its line ends as they are: those of CSV are the same on every system."""
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(newline="")
    sys.stdout.write(text)
