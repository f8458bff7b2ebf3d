"""Whether a row that was found says something that can be true."""

from collections.abc import Mapping
from hashlib import sha256
from typing import Any

from app.store.refold import span_facts

_LONG_AGO = 1 << 40
"""A moment in microseconds since 1970 before which nobody can have been erased; no file has so many rows."""


def agrees(table: str, row: Mapping[str, Any]) -> bool | None:
    """Whether a row agrees with itself; None where rows of its table cannot be asked that.

    Facts must be readable, a plan the one its hash names, and a moment one that can be.
    """
    try:
        if table == "fact":
            return len(span_facts(row["number"], row["number"], row["body"])) == 1
        if table == "fold":
            return len(span_facts(row["first_number"], row["last_number"], row["body"])) > 0
    except ValueError:
        return False
    if table == "erased":
        return bool(row["at"] > _LONG_AGO)
    if table == "plan":
        return bool(sha256(f"{row['title']}\n{row['text']}".encode()).digest() == row["hash"])
    return None
