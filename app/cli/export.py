"""`export`: the record as tables for a spreadsheet or any other program."""

import argparse
from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from app.cli.kept import kept_record
from app.domain.errors import UsageError

if TYPE_CHECKING:
    from app.reports.drawn import Drawn
    from app.store.database import Database
    from app.store.exchange import Wanted

SUMMARY = "write the record as tables with a data dictionary: CSV, a spreadsheet, or Parquet"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--to", type=Path, required=True, metavar="FOLDER", help="where to write the tables")
    parser.add_argument(
        "--athlete",
        action="append",
        default=[],
        metavar="NAME",
        help="of whom, by name or id; may be repeated",
    )
    parser.add_argument(
        "--from", dest="since", type=date.fromisoformat, metavar="DATE", help="the first day, as YYYY-MM-DD"
    )
    parser.add_argument(
        "--until", type=date.fromisoformat, metavar="DATE", help="the last day, as YYYY-MM-DD"
    )
    parser.add_argument(
        "--format", choices=("csv", "xlsx", "parquet"), default="csv", help="of the files (default csv)"
    )
    parser.add_argument("--without-names", action="store_true", help="leave out what people are called")
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")


def run(arguments: argparse.Namespace) -> int:
    """Write the tables and say how many rows each has."""
    from app.cli.record_words import counted
    from app.domain.tables import TABLES
    from app.domain.values import moment_text
    from app.reports.drawn import DRAWN, drawn_rows
    from app.reports.table_folder import Told, write_folder
    from app.store.exchange import Wanted

    if arguments.since and arguments.until and arguments.until < arguments.since:
        raise UsageError("--until is a day before that of --from.")
    wanted = Wanted(
        tuple(arguments.athlete), arguments.since, arguments.until, names=not arguments.without_names
    )
    with kept_record(arguments.database) as database:
        drawn = tuple(_drawn(database, wanted))
        with database.exchange.handing_on(wanted) as rows:
            told: list[Told] = [(table, rows.rows(table), False) for table in TABLES]
            told += [(table, drawn_rows(table, drawn), True) for table in DRAWN]
            counts = write_folder(arguments.to, arguments.format, told, moment_text(datetime.now(UTC)))
    for name, count in counts.items():
        print(f"{name}: {counted(count, 'row')}")
    print(f"Written to {arguments.to}. It holds health data and is not encrypted.")
    return 0


def _drawn(database: "Database", wanted: "Wanted") -> "Iterator[Drawn]":
    """The wanted runs as they are drawn."""
    from app.reports.drawn import Drawn

    with database.exchange.handing_on(wanted) as rows:
        chosen = frozenset(rows.run_ids)
    for summary in database.queries.run_summaries():
        if summary.run_id in chosen:
            name = summary.athlete if wanted.names else None
            yield Drawn(summary, name, database.queries.bouts_of(summary.run_id))
