"""`check`: everything that is wrong with plans, and what a colleague would question in the sound ones."""

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from app.domain.plan import Plan

SUMMARY = "say everything that is wrong with plan files, each with its line and column"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plans", nargs="+", type=Path, metavar="PLAN", help="a plan, or a roster")
    parser.add_argument(
        "--no-cautions", action="store_true", help="leave out what a colleague would question"
    )


def run(arguments: argparse.Namespace) -> int:
    """Print the problems of all files on stderr, then the cautions of the sound plans; 1 for a problem."""
    from app.domain.errors import FileProblemsError

    status = 0
    sound: dict[Path, Plan] = {}
    for path in arguments.plans:
        try:
            plan = _read(path)
        except FileProblemsError as error:
            sys.stderr.write(f"{error}\n")
            status = 1
        else:
            if plan is not None:
                sound[path] = plan
    if sound and not arguments.no_cautions:
        _question(sound)
    return status


def _read(path: Path) -> "Plan | None":
    """The plan in a file, None where it is a sound roster. Raises FileProblemsError."""
    from app.planfile.reader import parse_plan
    from app.planfile.roster import is_roster, read_roster
    from app.planfile.source import read_text

    text = read_text(path)
    if path.suffix.lower() == ".csv" or is_roster(text):
        read_roster(path)
        return None
    return parse_plan(text, str(path), path.parent)


def _question(plans: "dict[Path, Plan]") -> None:
    """Print the cautions of plans by the person's own thresholds. Raises FileProblemsError for these."""
    from app import wiring
    from app.domain.caution import cautions
    from app.domain.compiler import compile_timeline

    thresholds = wiring.read_settings().thresholds
    for path, plan in plans.items():
        sys.stdout.writelines(f"{path}: {found}\n" for found in cautions(compile_timeline(plan), thresholds))
