"""`pack`: runs and all that belongs to them in one file, for another computer."""

import argparse
from datetime import UTC, date, datetime
from pathlib import Path

from app.cli.kept import kept_record

SUMMARY = "put runs, answers and corrections into one file, to hand them to another computer"
_NAMES = "leave out what people are called; notes and plans stay as they were written"
_NAMED = "It holds names and health data and is not encrypted: mind who gets it."
_NAMELESS = "It holds health data and is not encrypted. Notes and plans may still name somebody."


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("-o", "--output", type=Path, required=True, metavar="FILE.pwpack", help="the pack")
    parser.add_argument(
        "--athlete",
        action="append",
        default=[],
        metavar="NAME",
        help="of whom, by name or id; may be repeated",
    )
    parser.add_argument(
        "--since",
        type=date.fromisoformat,
        metavar="DATE",
        help="from this day on, as YYYY-MM-DD: what was done or said since",
    )
    parser.add_argument("--without-names", action="store_true", help=_NAMES)
    parser.add_argument("--database", type=Path, metavar="FILE", help="where the record is kept")


def run(arguments: argparse.Namespace) -> int:
    """Write the pack and say what is in it."""
    from app.cli.record_words import counted
    from app.store.exchange import Wanted

    wanted = Wanted(tuple(arguments.athlete), arguments.since, names=not arguments.without_names)
    with kept_record(arguments.database) as database:
        counts = database.exchange.pack(arguments.output, wanted, datetime.now(UTC))
    beside = sum(counts[name] for name in ("readiness", "ratings", "results", "notes"))
    who, what = counted(counts["athletes"], "athlete"), counted(counts["runs"], "run")
    said = counted(beside, "answer, result or note", "answers, results and notes")
    print(f"{arguments.output}: {what} of {who}, {said}, {counted(counts['corrections'], 'correction')}")
    print(_NAMELESS if arguments.without_names else _NAMED)
    return 0
