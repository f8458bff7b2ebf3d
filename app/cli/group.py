"""`group`: the program on the screen, with a group session of a plan ready for the coach."""

import argparse
from dataclasses import replace
from pathlib import Path

from app.cli.group_words import athletes_of, choice_of, configure_form
from app.cli.open_program import configure_program, house_for

SUMMARY = "lead a group through a plan: the coach's console here, the gym screen on a second monitor"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plan", type=Path, metavar="PLAN", help="the session to lead")
    parser.add_argument("--roster", type=Path, metavar="FILE", required=True, help="who is to come")
    parser.add_argument(
        "--athlete", action="append", default=[], metavar="NAME", help="one of them; else everybody is"
    )
    configure_form(parser)
    parser.add_argument(
        "--apart", action="store_true", help="waves: A sounds in the left speaker alone, B in the right"
    )
    configure_program(parser)


def run(arguments: argparse.Namespace) -> int:
    """Open the window at the console, and give the exit status when it is closed."""
    from app.domain.group_choice import chosen_grouping, group_session
    from app.views.application import run_application
    from app.views.display import require_display
    from app.views.house import Wish

    house = house_for(arguments, apart=arguments.apart)
    written = house.read_plan(arguments.plan)
    athletes = athletes_of(written.plan, arguments.roster, arguments.athlete)
    choice = choice_of(arguments)
    group_session(written.plan, athletes, chosen_grouping(written.plan, choice))
    house.read_settings()
    require_display()
    wish = Wish(written, None, arguments.full_screen, arguments.plan, choice)
    return run_application(replace(house, read_athletes=lambda: athletes), wish)
