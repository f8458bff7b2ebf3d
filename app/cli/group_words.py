"""How a group goes through a plan, as the words of a command say it, and who is in it."""

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring
from app.domain.errors import UsageError
from app.domain.grouping import Form
from app.domain.units import MS_PER_SECOND

if TYPE_CHECKING:
    from app.domain.athlete import Athlete
    from app.domain.group_choice import GroupChoice
    from app.domain.plan import Plan


def configure_form(parser: argparse.ArgumentParser) -> None:
    """Declare `--form` and the numbers of stations."""
    parser.add_argument(
        "--form", choices=tuple(map(str, Form)), help="how a group does it; else as the plan says"
    )
    parser.add_argument("--work", type=int, metavar="S", help="stations: seconds of work at one")
    parser.add_argument("--change", type=int, metavar="S", help="stations: seconds to move on to the next")
    parser.add_argument("--rounds", type=int, metavar="N", help="stations: how often all go round")


def choice_of(arguments: argparse.Namespace) -> "GroupChoice":
    """What the words choose; what they leave out is left to the plan."""
    from app.domain.group_choice import GroupChoice

    form = None if arguments.form is None else Form(arguments.form)
    return GroupChoice(form, _ms(arguments.work), _ms(arguments.change), arguments.rounds)


def speaks_of_a_group(arguments: argparse.Namespace) -> bool:
    """Whether any word says how a group does it."""
    said = (arguments.form, arguments.work, arguments.change, arguments.rounds)
    return any(word is not None for word in said)


def athletes_of(plan: "Plan", roster: Path, names: Sequence[str]) -> tuple["Athlete", ...]:
    """Those of a roster who are named, in its order; everybody where nobody is.

    What of theirs changes nothing in the plan is said on stderr. Raises UsageError for a name it lacks.
    """
    from app.planfile.roster_fit import without_effect

    everybody = wiring.read_athletes(roster)
    known = [athlete.name for athlete in everybody]
    for name in names:
        if name not in known:
            raise UsageError(f"{name} is not in {roster}; it has {', '.join(known)}.")
    athletes = tuple(athlete for athlete in everybody if not names or athlete.name in names)
    for athlete in athletes:
        sys.stderr.writelines(f"{sentence}\n" for sentence in without_effect(athlete, plan))
    return athletes


def _ms(seconds: int | None) -> int | None:
    return None if seconds is None else seconds * MS_PER_SECOND
