"""`schema`: the plan format for editors."""

import argparse
import sys

SUMMARY = "print the plan format as a JSON Schema, so that an editor can complete and check plans"


def configure(_parser: argparse.ArgumentParser) -> None:
    """There is nothing to choose."""


def run(_arguments: argparse.Namespace) -> int:
    """Print the schema."""
    from app.planfile.schema import schema_text

    sys.stdout.write(schema_text())
    return 0
