"""`report`: the review of an athlete as a PDF to print or to hand on, or a sheet for the athlete."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring
from app.cli.kept import kept_record
from app.cli.looked_back import configure_window, local_today, record_of
from app.domain.errors import PacewrightError, UsageError

if TYPE_CHECKING:
    from app.domain.keeping import Note
    from app.domain.reviewed import AthleteRecord
    from app.store.database import Database

SUMMARY = "write an athlete's review as a PDF of a few pages, or as a sheet for the athlete"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    configure_window(parser)
    parser.add_argument("-o", "--output", type=Path, required=True, metavar="FILE", help="a .pdf file")
    parser.add_argument("--sheet", action="store_true", help="one page in plain words, for the athlete")
    parser.add_argument("--language", choices=("en", "de"), default="en", help="of its words (default en)")
    parser.add_argument(
        "--note",
        action="append",
        default=[],
        metavar="ID",
        help="a note that stands in it, by its id as exported; may be repeated (default: none)",
    )
    parser.add_argument("--notes", action="store_true", help="all notes of this time stand in it")


def run(arguments: argparse.Namespace) -> int:
    """Write the file; what could not be done stands on the screen."""
    from app.reports.reporting import Report, made_report

    today = local_today()
    with kept_record(arguments.database) as database:
        record = record_of(database, arguments, today)
        notes = _chosen(database, record, arguments)
    report = Report(record, today, notes, arguments.language, sheet=arguments.sheet)
    rendered = made_report(report, wiring.resources_folder() / "fonts")
    try:
        arguments.output.write_bytes(rendered.pdf)
    except OSError as error:
        raise PacewrightError(f"{arguments.output} cannot be written: {error.strerror}.") from error
    if rendered.notice is not None:
        print(rendered.notice)
    print(f"Written to {arguments.output}. It holds health data and is not encrypted.")
    return 0


def _chosen(
    database: "Database", record: "AthleteRecord", arguments: argparse.Namespace
) -> "tuple[Note, ...]":
    """The notes asked for. Raises UsageError for one that is not the athlete's."""
    from app.reports.reporting import notes_within

    every = [held.thing for held in database.answers.notes_of(record.athlete)]
    strange = set(arguments.note) - {note.id for note in every}
    if strange:
        raise UsageError(f"There is no note {min(strange)} about {record.athlete}. See the exported notes.")
    named = tuple(note for note in every if note.id in arguments.note)
    if not arguments.notes:
        return named
    return tuple({note.id: note for note in (*notes_within(every, record), *named)}.values())
