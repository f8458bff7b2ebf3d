"""`figures`: every number of the review of one athlete, as JSON or as a table."""

import argparse
import json
from typing import TYPE_CHECKING

from app.cli.kept import kept_record
from app.cli.looked_back import configure_window, local_today, record_of

if TYPE_CHECKING:
    from app.analysis.figure import Figure
    from app.domain.reviewed import AthleteRecord

SUMMARY = "print every number of an athlete's review, with its unit, its source and why it is unknown"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    configure_window(parser)
    parser.add_argument("--json", action="store_true", help="as JSON, with formulas and what went in")


def run(arguments: argparse.Namespace) -> int:
    """Print the figures."""
    from app.analysis.athlete_figures import athlete_figures

    today = local_today()
    with kept_record(arguments.database) as database:
        record = record_of(database, arguments, today)
    figures = athlete_figures(record, with_course=True)
    print(_as_json(record, figures) if arguments.json else _as_table(record, figures))
    return 0


def _as_json(record: "AthleteRecord", figures: "tuple[Figure, ...]") -> str:
    from app.analysis.figure import as_data

    told = {
        "athlete": record.athlete,
        "from": record.first.isoformat(),
        "to": record.last.isoformat(),
        "looked_at_on": record.today.isoformat(),
        "known_since": None if record.since is None else record.since.isoformat(),
        "reference_side": None if record.reference is None else record.reference.value,
        "figures": [as_data(figure) for figure in figures],
    }
    return json.dumps(told, ensure_ascii=False, indent=2, allow_nan=False)


def _as_table(record: "AthleteRecord", figures: "tuple[Figure, ...]") -> str:
    from app.reports.figure_rows import HEAD, figure_row

    rows = [HEAD, *(figure_row(figure) for figure in figures)]
    widths = [max(len(row[place]) for row in rows) for place in range(len(HEAD) - 1)]
    reference = "" if record.reference is None else f", reference side {record.reference.value}"
    lines = [f"{record.athlete}, from {record.first} to {record.last}{reference}", ""]
    for row in rows:
        cells = [cell.ljust(width) for cell, width in zip(row, widths, strict=False)]
        lines.append("  ".join((*cells, row[-1])).rstrip())
    return "\n".join(lines)
