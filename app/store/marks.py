"""The marks of those who were erased, carried into a file that may still hold them."""

from collections.abc import Iterable
from datetime import datetime
from pathlib import Path

from app.domain.errors import StoreError
from app.store.erasing import Theirs, erase_from
from app.store.looking import looking_at, tables_of
from app.store.schema import SCHEMA_VERSION
from app.store.workshop import bring_up


def keep_erased(part: Path, others: Iterable[Path], at: datetime) -> None:
    """Erase from a file in the making whoever was erased from one of the others. Raises StoreError."""
    marks = frozenset().union(*map(_marks_in, others))
    if marks:
        bring_up(part, SCHEMA_VERSION)
        erase_from(part, Theirs(), at, marks)


def _marks_in(path: Path) -> frozenset[bytes]:
    """The marks in a file, none where it cannot be read or is of a schema before them."""
    try:
        with looking_at(path) as connection:
            if "erased" not in tables_of(connection):
                return frozenset()
            return frozenset(name for (name,) in connection.execute("SELECT hash FROM erased"))
    except StoreError:
        return frozenset()
