"""`picture`: a screen drawn into a file, for a look without a display."""

import argparse
import re
import sys
from pathlib import Path

from app import wiring
from app.analysis.local_time import known_zone
from app.domain.errors import UsageError

SUMMARY = "draw the athlete's screen, the first page or the review into a PNG file without a display"
DEFAULT_AT_S = 42.0


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plan", type=Path, nargs="?", metavar="PLAN", help="the session (else the demo's)")
    parser.add_argument("-o", "--output", type=Path, required=True, metavar="FILE.png")
    parser.add_argument("--at", type=float, metavar="SECONDS", help="how long after 'ready'; -1 before it")
    parser.add_argument("--athlete", metavar="NAME")
    parser.add_argument("--size", default="1920x1080", metavar="WIDTHxHEIGHT")
    parser.add_argument(
        "--review", type=Path, metavar="DATABASE", help="draw the squad of this record, or its --athlete"
    )
    parser.add_argument("--home", action="store_true", help="draw the first page with the demo club")


def run(arguments: argparse.Namespace) -> int:
    """Draw, and say where the picture is."""
    size = _size(arguments.size)
    fonts = wiring.resources_folder() / "fonts"
    if arguments.review is not None:
        _draw_review(arguments, size, fonts)
    elif arguments.home:
        _draw_home(arguments, size, fonts)
    else:
        _draw_athlete(arguments, size, fonts)
    sys.stdout.write(f"{arguments.output}\n")
    return 0


def _draw_athlete(arguments: argparse.Namespace, size: tuple[int, int], fonts: Path) -> None:
    from app.domain.compiler import compile_timeline
    from app.views.picture import draw_athlete

    plan = wiring.read_plan(arguments.plan or wiring.demo_folder() / "shoulder_rotators.toml").plan
    at_s = DEFAULT_AT_S if arguments.at is None else arguments.at
    if not -1 <= at_s <= 6 * 3600:
        raise UsageError("--at is a time in the session in seconds, at most six hours; -1 is before it.")
    at_ms = None if at_s < 0 else round(at_s * 1000)
    draw_athlete(compile_timeline(plan), arguments.athlete or "Guest", at_ms, size, fonts, arguments.output)


def _draw_home(arguments: argparse.Namespace, size: tuple[int, int], fonts: Path) -> None:
    from app.views.picture import Club, draw_home

    demo = wiring.demo_folder()
    names = [athlete.name for athlete in wiring.read_athletes(demo / "roster.toml")]
    plans = (demo / "shoulder_rotators.toml", demo / "landing_control.toml")
    shown = plans if arguments.plan is None else (arguments.plan, *plans)
    club = Club(names, arguments.athlete, shown, wiring.read_plan)
    draw_home(club, wiring.now().date(), size, fonts, arguments.output)


def _draw_review(arguments: argparse.Namespace, size: tuple[int, int], fonts: Path) -> None:
    from app.views.picture import draw_review

    moment, zone = wiring.stamp()
    moment = moment.astimezone(known_zone(zone))
    with wiring.open_record(arguments.review, read_only=True) as database:
        draw_review(database, arguments.athlete, moment, size, fonts, arguments.output)


def _size(text: str) -> tuple[int, int]:
    parts = re.fullmatch(r"([0-9]{3,4})x([0-9]{3,4})", text)
    if parts is None:
        raise UsageError("--size is two numbers of pixels such as 1920x1080.")
    return int(parts[1]), int(parts[2])
