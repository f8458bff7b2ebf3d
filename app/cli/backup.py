"""`backup`: a verified copy of the record."""

import argparse
from pathlib import Path

from app import wiring

SUMMARY = "make a verified copy of the record, while it may be in use"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--database", type=Path, metavar="FILE", help="the record (else your own)")
    parser.add_argument(
        "--to",
        type=Path,
        metavar="FOLDER",
        help="put it here and leave what is there (else beside the record)",
    )


def run(arguments: argparse.Namespace) -> int:
    """Make the copy and say where it is."""
    from app.cli.record_words import contents_words, size_words
    from app.store.backup import write_backup
    from app.store.contents import contents_of

    database = wiring.database_file(arguments.database)
    if arguments.to is not None:
        path = write_backup(database, arguments.to, wiring.now()).path
    else:
        kept = wiring.back_up_record(database)
        if kept.backup is None:
            print(f"{database} holds nothing yet, so there is nothing to back up.")
            return 0
        path = kept.backup.path
        if not kept.made:
            print(f"Nothing has changed since the backup {path}.")
            return 0
    print(f"{path}: {contents_words(contents_of(path))}, {size_words(path.stat().st_size)}, checked.")
    return 0
