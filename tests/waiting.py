"""Waiting for another process by what it shows or leaves on disk, with an end to the patience."""

import time
from collections.abc import Callable
from pathlib import Path

from app import wiring

PATIENCE_S = 30.0


def until(there: Callable[[], bool], missing: str) -> None:
    """Return once `there` is true. Raises AssertionError with what is `missing` when the patience ends."""
    deadline = time.monotonic() + PATIENCE_S
    while not there():
        assert time.monotonic() < deadline, missing
        time.sleep(0.1)


def wait_for_reps(path: Path, reps: int) -> None:
    """Return once a record holds so many reps. Raises AssertionError when they do not come."""
    until(
        lambda: path.exists() and path.stat().st_size > 0 and _reps(path) >= reps,
        "no reps were recorded in time",
    )


def _reps(path: Path) -> int:
    try:
        with wiring.open_record(path, read_only=True) as database:
            return sum(run.reps_done for run in database.queries.run_summaries())
    except Exception:  # the other process may be in the middle of making the file
        return 0
