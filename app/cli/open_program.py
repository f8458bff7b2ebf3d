"""`open`: the program on the screen."""

import argparse
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring

if TYPE_CHECKING:
    from app.domain.plan import WrittenPlan
    from app.planfile.settings import Settings
    from app.views.house import House

SUMMARY = "open the program: lead a plan, or review what was done"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plan", type=Path, nargs="?", metavar="PLAN", help="the session to lead")
    parser.add_argument("--demo", action="store_true", help="the invented club's shoulder session")
    parser.add_argument("--athlete", metavar="NAME", help="who is training")
    parser.add_argument("--roster", type=Path, metavar="FILE", help="who may train here")
    configure_program(parser)


def configure_program(parser: argparse.ArgumentParser) -> None:
    """Declare what holds for the program however it is opened."""
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")
    parser.add_argument(
        "--sound", choices=("auto", "simpleaudio", "miniaudio", "silent"), help="what plays it"
    )
    parser.add_argument("--cues", choices=("full", "spare", "tones"), help="how much is said")
    parser.add_argument("--language", choices=("en", "de", "es", "fr"), help="of what is said")
    parser.add_argument("--full-screen", action="store_true")


def run(arguments: argparse.Namespace) -> int:
    """Open the window, and give the exit status when it is closed."""
    from app.views.application import run_application
    from app.views.display import require_display
    from app.views.house import Wish

    require_display()
    house = house_for(arguments)
    plan = house.plans[0] if arguments.demo else arguments.plan
    athlete = arguments.athlete or ("Hugo" if arguments.demo else None)
    session = None if plan is None else house.read_plan(plan)
    _refuse_too_long(house, session, athlete)
    house.read_settings()
    return run_application(house, Wish(session, athlete, arguments.full_screen, plan))


def _refuse_too_long(house: "House", session: "WrittenPlan | None", name: str | None) -> None:
    """Refuse, before there is a window, reps that make the session too long. Raises SessionTooLongError."""
    from app.domain.compiler import suit

    if session is not None and name is not None:
        for athlete in house.read_athletes():
            if athlete.name == name:
                suit(session.plan, athlete)


def house_for(arguments: argparse.Namespace, *, apart: bool = False) -> "House":
    """All that the program is made of, as the words of a command say; `apart` parts waves by speaker."""
    from app.views.house import House

    demo = wiring.demo_folder()
    database = wiring.database_file(arguments.database)
    roster = arguments.roster or demo / "roster.toml"
    return House(
        fonts=wiring.resources_folder() / "fonts",
        translations=wiring.resources_folder() / "translations",
        icon=wiring.resources_folder() / "pacewright.svg",
        plans=(demo / "shoulder_rotators.toml", demo / "landing_control.toml"),
        open_record=lambda: wiring.open_record(database),
        choose_speaker=lambda: wiring.choose_speaker(_settings(arguments)),
        make_clock=wiring.make_clock,
        make_sound=lambda timeline, speaker, clock: wiring.make_sound(
            timeline, speaker, clock, _settings(arguments)
        ),
        make_room_sound=lambda session, speaker, clock: wiring.make_room_sound(
            session, speaker, clock, _settings(arguments), apart=apart
        ),
        read_settings=wiring.read_settings,
        overrule=partial(_overruled, arguments),
        save_settings=wiring.save_settings,
        list_devices=wiring.list_devices,
        try_speaker=wiring.choose_speaker,
        make_trial=wiring.make_trial,
        read_plan=wiring.read_plan,
        parse_plan=wiring.parse_plan,
        read_athletes=lambda: wiring.read_athletes(roster),
        new_header=wiring.new_header,
        stamp=wiring.stamp,
        new_id=wiring.new_run_id,
        back_up_record=lambda: wiring.back_up_record(database),
        record=database,
        state=wiring.state_folder(),
    )


def _settings(arguments: argparse.Namespace) -> "Settings":
    return _overruled(arguments, wiring.read_settings())


def _overruled(arguments: argparse.Namespace, settings: "Settings") -> "Settings":
    """The settings, the words of the command before those of the file."""
    from app.domain.cue_values import CueLevel

    return replace(
        settings,
        speaker=arguments.sound or settings.speaker,
        cues=settings.cues if arguments.cues is None else CueLevel(arguments.cues),
        language=arguments.language or settings.language,
    )
