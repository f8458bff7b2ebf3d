"""`recover`: what can still be read of a damaged record, in a new file."""

import argparse
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring

if TYPE_CHECKING:
    from app.store.backup import Backup
    from app.store.recovery import Recovered

SUMMARY = "save what can be read of a damaged record, and fill it up from the newest backup"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--database", type=Path, metavar="FILE", help="the record (else your own)")
    parser.add_argument("--without-backup", action="store_true", help="take nothing from the newest backup")
    parser.add_argument("--yes", action="store_true", help="put the new file in the place of the damaged one")


def run(arguments: argparse.Namespace) -> int:
    """Show what can be saved, and put it in place where that is wanted; 1 where nothing was done."""
    from app.store.backup import newest_sound
    from app.store.durable import part_beside
    from app.store.places import backup_folder
    from app.store.recovery import recover
    from app.store.replacing import put_instead

    database = wiring.database_file(arguments.database)
    if _is_sound(database):
        print(f"{database} is sound: there is nothing to recover.")
        return 0
    newest = newest_sound(backup_folder(database))
    source = None if newest is None or arguments.without_backup else newest.path
    with part_beside(database) as part:
        recovered = recover(database, part, source, at=wiring.now())
        for line in _lines(recovered, newest, filled=source is not None):
            print(line)
        if not arguments.yes:
            sys.stderr.write(_how_to_go_on(newest))
            return 1
        aside = put_instead(part, database, wiring.now())
    print(f"\n{database} is now what could be saved. The damaged file is {aside}.")
    return 0


def _is_sound(database: Path) -> bool:
    """Whether nothing is wrong with the record. Raises StoreError where it is not there, newer or in use."""
    from app.domain.errors import NewerStoreError, StoreError
    from app.store.replacing import let_it_settle
    from app.store.troubles import missing
    from app.store.verify import verify

    if not database.is_file():
        raise missing(database)
    let_it_settle(database)
    try:
        return verify(database, thorough=True).sound
    except NewerStoreError:
        raise
    except StoreError:
        return False


def _lines(recovered: "Recovered", newest: "Backup | None", *, filled: bool) -> Iterator[str]:
    from app.cli.record_words import contents_words, counted, difference_lines
    from app.store.contents import contents_of
    from app.store.restore import compared

    yield f"Saved: {contents_words(recovered.contents)}."
    if filled:
        added = counted(recovered.from_backup, "entry", "entries")
        yield f"Of this the newest backup added {added} that could not be read any more."
    yield from _what_is_lost(recovered)
    if newest is None:
        yield "There is no backup that passes its check."
    else:
        yield f"\nBeside it the newest good backup, {newest.path}:"
        yield from difference_lines(
            compared(recovered.contents, contents_of(newest.path)), "saved", "in the backup"
        )


def _what_is_lost(recovered: "Recovered") -> Iterator[str]:
    from app.cli.record_words import counted

    if recovered.whole:
        yield "Nothing is known to be missing."
        return
    yield from _holes(recovered)
    for table, count in recovered.stand_ins.items():
        yield f"Unknown: {counted(count, table)} of which no more than a number is left."
    if recovered.lost_pages:
        yield f"Lost: {counted(recovered.lost_pages, 'page')} of the file; what stood there is not all known."
    if recovered.bad_rows:
        yield f"Unreadable: {counted(recovered.bad_rows, 'row')}."
    if recovered.unplaced_pages:
        yield f"Left out: {counted(recovered.unplaced_pages, 'page')} that cannot be told to belong anywhere."
    if recovered.unread_bytes:
        yield f"Not given back by the disk: {counted(recovered.unread_bytes, 'byte')}."


def _holes(recovered: "Recovered") -> Iterator[str]:
    """The runs that lack entries, the newest first."""
    from app.cli.record_words import MOST_RUNS, counted, run_words

    holes, cut = recovered.missing_facts, recovered.beyond
    runs = [run for run in recovered.contents.runs if run.run_id in holes or run.run_id in cut]
    if runs:
        missing = counted(sum(holes.values()), "entry", "entries")
        more = " and some whose number nobody knows" if cut else ""
        yield f"Missing in {counted(len(runs), 'run')}: {missing}{more}. Figures are kept as far as known."
    for run in runs[-MOST_RUNS:][::-1]:
        closed = "; ended, because it cannot be led on" if run.run_id in recovered.closed else ""
        lacks = "at the end" if run.run_id in cut else counted(holes[run.run_id], "entry", "entries")
        yield f"  {run_words(run)}: {lacks}{closed}"
    if len(runs) > MOST_RUNS:
        yield f"  and {len(runs) - MOST_RUNS} before"


def _how_to_go_on(newest: "Backup | None") -> str:
    other = "" if newest is None else f" To go back to the backup instead: restore {newest.path.name}."
    return (
        "\nNothing was changed. To put what was saved in place, close the program and say the same again "
        f"with --yes; the damaged file is then set aside, not deleted.{other}\n"
    )
