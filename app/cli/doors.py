"""The table of commands. A command is a module with SUMMARY, configure(parser) and run(arguments)."""

import argparse
from collections.abc import Sequence
from typing import Protocol, cast

from app import __version__
from app.cli import (
    backup,
    check,
    consent,
    demo,
    erase,
    export,
    figures,
    group,
    guide,
    import_record,
    open_program,
    pack,
    passphrase,
    picture,
    recover,
    rehearse,
    report,
    restore,
    schema,
    session_calendar,
    speakers,
    timeline,
    tolerance,
    unpack,
    verify,
)


class Door(Protocol):
    """What a command's module offers; its heavy imports wait until `run`."""

    SUMMARY: str

    def configure(self, parser: argparse.ArgumentParser) -> None:
        """Declare the command's words."""

    def run(self, arguments: argparse.Namespace) -> int:
        """Do it and return the exit status."""


DOORS: dict[str, Door] = {
    "backup": cast("Door", backup),
    "calendar": cast("Door", session_calendar),
    "check": cast("Door", check),
    "consent": cast("Door", consent),
    "demo": cast("Door", demo),
    "erase": cast("Door", erase),
    "export": cast("Door", export),
    "figures": cast("Door", figures),
    "group": cast("Door", group),
    "guide": cast("Door", guide),
    "import": cast("Door", import_record),
    "open": cast("Door", open_program),
    "pack": cast("Door", pack),
    "passphrase": cast("Door", passphrase),
    "picture": cast("Door", picture),
    "recover": cast("Door", recover),
    "rehearse": cast("Door", rehearse),
    "report": cast("Door", report),
    "restore": cast("Door", restore),
    "schema": cast("Door", schema),
    "speakers": cast("Door", speakers),
    "timeline": cast("Door", timeline),
    "tolerance": cast("Door", tolerance),
    "unpack": cast("Door", unpack),
    "verify": cast("Door", verify),
}
DEFAULT = "open"


def build_parser() -> argparse.ArgumentParser:
    """The parser of the whole command line."""
    parser = argparse.ArgumentParser(
        prog="pacewright",
        description="Leads a planned movement session rep by rep and records what was done.",
    )
    parser.add_argument("--version", action="version", version=f"pacewright {__version__}")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND")
    for name, door in DOORS.items():
        command = commands.add_parser(name, help=door.SUMMARY, description=door.SUMMARY)
        door.configure(command)
    return parser


def run(words: Sequence[str]) -> int:
    """Run the command named by the first word, or open the program when there is none."""
    arguments = build_parser().parse_args(list(words) or [DEFAULT])
    if arguments.command is None:
        arguments = build_parser().parse_args([*words, DEFAULT])
    return DOORS[arguments.command].run(arguments)
