"""`import`: tables that this program exported, or a list of past training."""

import argparse
import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring
from app.cli.unpack import told
from app.domain.errors import UsageError

if TYPE_CHECKING:
    from app.store.intake import Incoming

SUMMARY = "take in a folder that was exported, or past training from a CSV file; twice makes no difference"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument(
        "source",
        type=Path,
        metavar="FOLDER|FILE.csv",
        help="a folder of tables, or a file with the columns date, session, minutes, RPE",
    )
    parser.add_argument(
        "--athlete", metavar="NAME", help="whose past training it is, where the file does not say"
    )
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")


def run(arguments: argparse.Namespace) -> int:
    """Take it in, whole or not at all, and say what came of it."""
    if arguments.source.is_dir():
        if arguments.athlete:
            raise UsageError("--athlete goes with a file of past training; a folder says itself whose it is.")
        return _import_folder(arguments)
    return _import_past(arguments)


def _import_folder(arguments: argparse.Namespace) -> int:
    incoming = _read(arguments.source)
    with wiring.open_record(wiring.database_file(arguments.database)) as database:
        taken = database.exchange.take_in(incoming)
    sys.stdout.write("".join(f"{line}\n" for line in told(str(arguments.source), taken)))
    return 0


def _read(folder: Path) -> "Incoming":
    from app.domain.errors import PackError
    from app.domain.tables import TABLES
    from app.reports.table_folder import read_folder, wrong_row
    from app.store.intake import Intake

    intake = Intake()
    for table, path, line, row in read_folder(folder, TABLES):
        try:
            intake.take(table, row)
        except ValueError as error:
            raise wrong_row(path, line, error) from error
    try:
        return intake.finish()
    except ValueError as error:
        raise PackError(f"{folder} is refused, and nothing was taken from it: {error}.") from error


def _import_past(arguments: argparse.Namespace) -> int:
    from app.cli.record_words import counted
    from app.planfile.past_csv import read_past

    sessions = read_past(arguments.source, _today(), athlete=arguments.athlete is None)
    with wiring.open_record(wiring.database_file(arguments.database)) as database:
        taken = database.exchange.take_past(sessions, arguments.athlete, wiring.local_zone_name())
    sys.stdout.write(
        f"{arguments.source}: {counted(taken.new, 'past session')} new, {taken.known} there before. They are "
        "marked as imported; what the file leaves open stays unknown.\n"
    )
    for session in taken.otherwise:
        sys.stdout.write(
            f"{session.day} {session.title} is in the record with other figures, and stays as it is there.\n"
        )
    return 0


def _today() -> date:
    return wiring.now().astimezone().date()
