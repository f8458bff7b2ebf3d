"""`check`: everything that is wrong with plans, and what a colleague would question in the sound ones."""

import argparse
import sys
from collections.abc import Iterator
from pathlib import Path

SUMMARY = "say everything that is wrong with plan files, each with its line and column"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plans", nargs="+", type=Path, metavar="PLAN", help="a plan, or a roster")
    parser.add_argument(
        "--no-cautions", action="store_true", help="leave out what a colleague would question"
    )


def run(arguments: argparse.Namespace) -> int:
    """Print the problems of all files on stderr, then the cautions of the sound ones; 1 for a problem."""
    from app.domain.errors import FileProblemsError

    status = 0
    questions: list[str] = []
    for path in arguments.plans:
        try:
            questions += [f"{path}: {question}\n" for question in _read(path)]
        except FileProblemsError as error:
            sys.stderr.write(f"{error}\n")
            status = 1
    if not arguments.no_cautions:
        sys.stdout.writelines(questions)
    return status


def _read(path: Path) -> Iterator[object]:
    """Read one file and give the cautions of it. Raises FileProblemsError."""
    from app.domain.caution import cautions
    from app.domain.compiler import compile_timeline
    from app.planfile.reader import parse_plan
    from app.planfile.roster import is_roster, read_roster
    from app.planfile.source import read_text

    text = read_text(path)
    if path.suffix.lower() == ".csv" or is_roster(text):
        read_roster(path)
        return
    plan = parse_plan(text, str(path), path.parent)
    yield from cautions(compile_timeline(plan))
