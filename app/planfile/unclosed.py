"""Finds the list that a mistake stands in, so that it can be set aside as a whole."""

import re
from dataclasses import dataclass

from app.planfile.bounds import blanked

_PAIR = re.compile(r"[ \t]*+[A-Za-z0-9_-]++[ \t]*+=")
_HEADING = re.compile(r"[ \t]*+\[{1,2}[ \t]*+[A-Za-z_]")


@dataclass(frozen=True, slots=True)
class OpenList:
    """A list over several lines, from the line of its key to its last, both counted from 1.

    `column` is where it is opened; `closed` is false where another key or heading comes before its end.
    """

    first: int
    last: int
    column: int
    closed: bool


def list_around(text: str, line: int) -> OpenList | None:
    """The list that is open when a line begins; None where there is none."""
    first = depth = 0
    lines = blanked(text).split("\n")
    for number, content in enumerate(lines, 1):
        begins = _PAIR.match(content)
        if depth and (begins or _HEADING.match(content)):
            if first < line <= number:
                return OpenList(first, number - 1, lines[first - 1].index("[") + 1, closed=False)
            depth = 0
        if begins:
            first = number
        if begins or depth:
            depth = max(depth + content.count("[") - content.count("]"), 0)
            if not depth and first < line <= number:
                return OpenList(first, number, lines[first - 1].index("[") + 1, closed=True)
        if not depth and number >= line:
            return None
    return OpenList(first, len(lines), lines[first - 1].index("[") + 1, closed=False) if depth else None
