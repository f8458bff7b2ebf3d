"""`tolerance`: how far a rep may be from its planned length and still have kept its tempo."""

import argparse
import sys
from pathlib import Path

from app import wiring
from app.cli.kept import kept_record
from app.domain.errors import UsageError

SUMMARY = "say or set how far a rep may be from its planned length and still have kept its tempo"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--percent", type=int, metavar="N", help="of the rep's planned length, 1 to 50")
    parser.add_argument("--ms", type=int, metavar="MS", help="or so many milliseconds, 0 to 2000")
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")


def run(arguments: argparse.Namespace) -> int:
    """Say which holds; with a number given set it, and judge everything that was recorded by it anew."""
    from app.domain.tolerance import Tolerance

    with kept_record(arguments.database) as database:
        held = database.tolerances.current()
        wanted = held
        if arguments.percent is not None or arguments.ms is not None:
            try:
                wanted = Tolerance(
                    held.percent if arguments.percent is None else arguments.percent,
                    held.ms if arguments.ms is None else arguments.ms,
                )
            except ValueError as error:
                raise UsageError(f"Nothing was changed: {error}.") from error
        runs, kept = database.tolerances.choose(wanted, *wiring.stamp()) if wanted != held else (0, 0)
    sys.stdout.write(
        f"A rep keeps its tempo within {wanted.percent} % of its planned length or {wanted.ms} ms, "
        "whichever is more.\n"
    )
    if wanted != held:
        told = "One run was" if runs == 1 else f"{runs} runs were"
        sys.stdout.write(f"{told} judged by it anew.\n")
        if kept:
            sys.stdout.write(
                f"Runs that keep what was counted before, since of their reps nothing can be read: {kept}.\n"
            )
    return 0
