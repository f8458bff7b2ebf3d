"""`verify`: whether the record is sound, in sentences."""

import argparse
import sys
from pathlib import Path

from app import wiring

SUMMARY = "check that the record is sound and agrees with itself"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument(
        "--database", type=Path, metavar="FILE", help="the record (else your own), or a backup"
    )
    parser.add_argument(
        "--thorough", action="store_true", help="draw the figures of every run again, not of the newest alone"
    )


def run(arguments: argparse.Namespace) -> int:
    """Say what was found; 1 when anything was."""
    from app.cli.record_words import counted
    from app.store.verify import MOST_FINDINGS, verify

    database = wiring.database_file(arguments.database)
    verdict = verify(database, thorough=arguments.thorough)
    for sentence in verdict.findings:
        sys.stderr.write(f"{sentence}\n")
    if not verdict.sound:
        if len(verdict.findings) >= MOST_FINDINGS:
            sys.stderr.write("There may be more; these are the first.\n")
        sys.stderr.write(
            f"{database} is not as it should be. Do not delete it: `pacewright recover` saves what can be "
            "saved, and `pacewright restore` lists the backups.\n"
        )
        return 1
    held = f"{counted(verdict.runs, 'run')}, {counted(verdict.facts, 'entry', 'entries')}"
    print(f"{database} is sound: {held}.")
    if verdict.runs:
        print(_how_far(verdict.folded, verdict.runs))
    return 0


def _how_far(drawn: int, runs: int) -> str:
    if drawn == runs:
        return "The figures of all runs were drawn again from their entries, and are the same."
    if drawn:
        return (
            f"The figures of the newest {drawn} runs were drawn again from their entries, and are the same; "
            "--thorough does that for all."
        )
    return "It has an older schema. Open it once, then its figures can be drawn again and compared too."
