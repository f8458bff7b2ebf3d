"""`unpack`: takes in what another computer handed on."""

import argparse
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring

if TYPE_CHECKING:
    from app.domain.corrections import Conflict, Correction
    from app.store.taking_in import Taken

SUMMARY = "take in a pack from another computer; twice, or in another order, makes no difference"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("pack", type=Path, metavar="FILE", help="the pack")
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")


def run(arguments: argparse.Namespace) -> int:
    """Take it in, whole or not at all, and say what came of it."""
    from app.store.pack import read_pack

    incoming = read_pack(arguments.pack)
    with wiring.open_record(wiring.database_file(arguments.database)) as database:
        taken = database.exchange.take_in(incoming)
    sys.stdout.write("".join(f"{line}\n" for line in told(str(arguments.pack), taken)))
    return 0


def told(source: str, taken: "Taken") -> Iterator[str]:
    """What came of taking something in, in lines."""
    from app.cli.record_words import counted

    yield (
        f"{source}: {counted(taken.new, 'run')} new, {taken.completed} completed, {taken.known} there "
        f"before; new beside them: {taken.beside}"
    )
    if taken.erased:
        yield f"Left out, because the athlete was erased here: {counted(taken.erased, 'run')}."
    if taken.parted:
        yield (
            f"Led on in two places: {counted(taken.parted, 'run')}. What has most facts stands; the other is "
            "kept with it."
        )
    for name in taken.namesakes:
        yield (
            f"More than one athlete is called {name}. They are kept apart and shown under one name; if they "
            "are two people, give one of them another name."
        )
    yield from map(_conflict, taken.conflicts)


def _conflict(conflict: "Conflict") -> str:
    change = conflict.holds.change
    others = "; ".join(map(_said, conflict.others))
    return (
        f"Corrections of the {change.field} of a {change.target.subject} disagree. It holds: "
        f"{_said(conflict.holds)}. Kept beside it: {others}."
    )


def _said(correction: "Correction") -> str:
    value = "unknown" if correction.after is None else correction.after
    return f"{value} ({correction.change.who}, {correction.change.at:%Y-%m-%d})"
