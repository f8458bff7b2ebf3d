"""`restore`: go back to a backup, after seeing what that would change."""

import argparse
import sys
from pathlib import Path

from app import wiring

SUMMARY = "go back to a backup, after showing what that would change"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument(
        "backup", nargs="?", metavar="BACKUP", help="a file, or the name of one that is listed without it"
    )
    parser.add_argument("--database", type=Path, metavar="FILE", help="the record (else your own)")
    parser.add_argument("--yes", action="store_true", help="do it")


def run(arguments: argparse.Namespace) -> int:
    """List the backups, show the difference, or go back; 1 where nothing was done."""
    from app.cli.record_words import difference_lines
    from app.store.places import backup_folder
    from app.store.restore import restore, restore_plan

    database = wiring.database_file(arguments.database)
    if arguments.backup is None:
        return _list(database)
    backup = Path(arguments.backup)
    listed = backup_folder(database) / arguments.backup
    if not backup.exists() and listed.is_file():
        backup = listed
    difference = restore_plan(database, backup)
    for line in difference_lines(difference):
        print(line)
    if difference.nothing:
        print("\nBoth hold the same: there is nothing to go back for.")
        return 0
    if not arguments.yes:
        sys.stderr.write(
            "\nNothing was changed. To go back, close the program and say the same again with --yes; the "
            "file in place now is then set aside, not deleted.\n"
        )
        return 1
    aside = restore(database, backup, wiring.now())
    print(f"\n{database} is now as in {backup}.")
    if aside is not None:
        print(f"What stood there before is {aside}.")
    return 0


def _list(database: Path) -> int:
    """The backups beside a record, the newest first."""
    from app.cli.record_words import contents_words, size_words
    from app.domain.errors import StoreError
    from app.store.backup import backups_in
    from app.store.contents import contents_of
    from app.store.places import backup_folder

    folder = backup_folder(database)
    backups = backups_in(folder)
    if not backups:
        sys.stderr.write(f"There is no backup of {database} in {folder}.\n")
        return 1
    print(f"The backups in {folder}, the newest first:")
    for backup in backups:
        try:
            held = contents_words(contents_of(backup.path))
        except StoreError:
            held = "cannot be read"
        print(f"  {backup.path.name}  {held}, {size_words(backup.path.stat().st_size)}")
    sys.stderr.write("Name one of them to see what going back to it would change.\n")
    return 1
