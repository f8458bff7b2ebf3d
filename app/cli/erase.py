"""`erase`: forgets an athlete, on request and for good."""

import argparse
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring
from app.domain.errors import UsageError

if TYPE_CHECKING:
    from app.store.erasure import Found

SUMMARY = "forget an athlete for good: runs, answers, notes, in the record and in all its backups"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--athlete", required=True, metavar="NAME", help="whom, by name or id")
    parser.add_argument("--database", type=Path, metavar="FILE", help="the record (else your own)")
    parser.add_argument("--yes", action="store_true", help="do it; it cannot be undone")


def run(arguments: argparse.Namespace) -> int:
    """Say what would go, and let it go where that is wanted; 1 where nothing was done."""
    from app.store.erasure import erase, find, still_naming

    database = wiring.database_file(arguments.database)
    _take_in(database)
    found = find(database, wiring.state_folder(), {arguments.athlete})
    if not found.theirs.athletes:
        raise UsageError(
            f"There is nobody called {arguments.athlete} in {database} or its backups. See whether the name "
            "is right."
        )
    for line in _plan(found):
        print(line)
    if not arguments.yes:
        sys.stderr.write(
            "\nNothing was changed. This cannot be undone. To do it, close the program and say the same "
            "again with --yes.\n"
        )
        return 1
    erase(found, wiring.now())
    print("\nIt is done. Packs, exports, rosters and plans that lie elsewhere are yours to delete.")
    for path in still_naming(found):
        print(f"The name still stands in {path}: in the words of others, which were left as they are.")
    return 0


def _take_in(database: Path) -> None:
    """Put what lies in side files into the record first, and see that the record is of today's schema."""
    if database.is_file():
        with wiring.open_record(database) as opened:
            opened.take_in()


def _plan(found: "Found") -> Iterator[str]:
    from app.cli.record_words import counted

    people = len(found.theirs.athletes)
    whose = "" if people == 1 else f", of {people} athletes of that name"
    yield f"To be erased: {counted(len(found.theirs.runs), 'run')} and all that belongs to them{whose}."
    yield f"From {found.database}, written anew."
    if found.copies:
        copies = counted(len(found.copies), "backup or file set aside", "backups and files set aside")
        yield f"From {copies}, written anew."
    for path in found.side_files:
        yield f"From {path}, where something waits to be saved."
    for path in found.damaged:
        yield f"{path} is damaged, so that nobody knows what it holds: it is deleted whole."
    for path in found.parts:
        yield f"{path} was left by a copy that was cut short: it is deleted."
