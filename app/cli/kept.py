"""The record that a command hands on from: one that is there, or a sentence that it is not."""

from pathlib import Path
from typing import TYPE_CHECKING

from app import wiring

if TYPE_CHECKING:
    from app.store.database import Database


def kept_record(asked: Path | None) -> "Database":
    """The record in a file, which must be there. Raises StoreError."""
    from app.store.troubles import missing

    path = wiring.database_file(asked)
    if not path.exists():
        raise missing(path)
    return wiring.open_record(path)
