"""Files and folders that stay: private to their owner, and on the disk when a call returns."""

import os
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path


def make_private_folder(folder: Path) -> None:
    """See that a folder is there; one that is made is its owner's alone. Raises OSError."""
    if not folder.exists():
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        sync_folder(folder.parent)


def make_private_file(path: Path) -> None:
    """Make an empty file that is its owner's alone, in the place of any that was there. Raises OSError."""
    path.unlink(missing_ok=True)
    os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))


def put_in_place(part: Path, target: Path) -> None:
    """Give a finished file its name, in one step and for good. Raises OSError.

    Only for a file that no connection holds open: closing it here would take that one's locks away.
    """
    _sync(part, os.O_RDWR)
    part.replace(target)
    sync_folder(target.parent)


@contextmanager
def part_beside(database: Path) -> Iterator[Path]:
    """A path beside a database for a file in the making; what is left there in the end is taken away."""
    part = database.with_name(f"{database.name}.{os.getpid()}.part")
    try:
        yield part
    finally:
        remove_with_journal(part)


def sync_folder(folder: Path) -> None:
    """See that the names in a folder are on the disk, where the system can do that. Raises OSError."""
    if os.name == "nt":
        return
    _sync(folder, os.O_RDONLY)


def remove_with_journal(path: Path) -> None:
    """Take away a file that SQLite may have been writing, with what it left beside it."""
    for leftover in (path, journal_of(path)):
        with suppress(OSError):
            leftover.unlink()


def journal_of(database: Path) -> Path:
    """Where SQLite writes down how to take back an unfinished transaction."""
    return database.with_name(f"{database.name}-journal")


def _sync(path: Path, flags: int) -> None:
    descriptor = os.open(path, flags)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)
