"""Whose session a command is about: the words for it, and what in a roster has no effect on the plan."""

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring
from app.domain.errors import UsageError

if TYPE_CHECKING:
    from app.domain.athlete import Athlete
    from app.domain.plan import Plan


def configure_whose(parser: argparse.ArgumentParser) -> None:
    """Declare `--athlete` and `--roster`."""
    parser.add_argument("--athlete", metavar="NAME", help="who it is for")
    parser.add_argument(
        "--roster", type=Path, metavar="FILE", help="where that athlete's loads and counts stand"
    )


def athlete_for(plan: "Plan", arguments: argparse.Namespace) -> "Athlete | None":
    """Who a plan is for, None for anybody. What of theirs changes nothing in it is said on stderr.

    Raises UsageError for a roster without a name, or a name that is not in it.
    """
    from app.planfile.roster_fit import without_effect

    if not arguments.athlete:
        if arguments.roster is not None:
            raise UsageError("--roster goes with --athlete NAME: say whose numbers of it are meant.")
        return None
    athlete = wiring.find_athlete(arguments.athlete, arguments.roster)
    sys.stderr.writelines(f"{sentence}\n" for sentence in without_effect(athlete, plan))
    return athlete
