"""Plain values as the cells of a CSV file, and back: nothing is lost, and unknown stays unknown."""

from app.domain.table import Column
from app.domain.values import Plain, Text, Words
from app.reports.guard import GUARD, guarded, unguarded

UNKNOWN = ""
"""An empty cell."""


def cell_of(column: Column, value: Plain) -> str:
    """The text of a cell. Text is guarded; an empty text that might be unknown is one apostrophe."""
    if value is None:
        return UNKNOWN
    if isinstance(value, bool):
        return "true" if value else "false"
    if not isinstance(column.kind, Text | Words):
        return str(value)
    text = str(value)
    if column.unknown and not text.strip(GUARD):
        return f"{GUARD}{text}"
    return guarded(text)


def value_of(column: Column, cell: str) -> Plain:
    """The value that `cell_of` was given. Raises ValueError with what would be right."""
    if isinstance(column.kind, Text | Words):
        if cell == UNKNOWN:
            return None if column.unknown else ""
        if column.unknown and not cell.strip(GUARD):
            return column.kind.read(cell.removeprefix(GUARD))
        return column.kind.read(unguarded(cell))
    if cell == UNKNOWN:
        if column.unknown:
            return None
        raise ValueError("must not be empty")
    return column.kind.read(cell)
