"""`check`: everything that is wrong with plans, and what a colleague would question in the sound ones."""

import argparse
import sys
from pathlib import Path

SUMMARY = "say everything that is wrong with plan files, each with its line and column"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plans", nargs="+", type=Path, metavar="PLAN", help="plan files, or rosters")
    parser.add_argument(
        "--no-cautions", action="store_true", help="leave out what a colleague would question"
    )


def run(arguments: argparse.Namespace) -> int:
    """Print problems on stderr and cautions on stdout; 1 when there is a problem."""
    from app.domain.errors import FileProblemsError

    status = 0
    for path in arguments.plans:
        try:
            lines = _cautions(path)
        except FileProblemsError as error:
            sys.stderr.write(f"{error}\n")
            status = 1
        else:
            if not arguments.no_cautions:
                sys.stdout.writelines(f"{path}: {line}\n" for line in lines)
    return status


def _cautions(path: Path) -> list[str]:
    """Read one file, and what there is to question in it. Raises FileProblemsError."""
    from app.planfile.reader import parse_plan
    from app.planfile.source import read_text

    parse_plan(read_text(path), str(path), path.parent)
    return []
