"""A plan file cut into pieces that can be moved: the head, and each [[heading]] with all that belongs to it.

Cut pieces joined in their order give the text again, to the character.
"""

from dataclasses import dataclass
from itertools import pairwise

from app.planfile.positions import Place, Positions


@dataclass(frozen=True, slots=True)
class Piece:
    """A heading and all up to the next one; `place` is () for the head, what stands above the first heading.

    Headings are those in double brackets and a table at the top such as [group].

    Remarks right above a heading, with no blank line between, belong to it.
    """

    place: Place
    text: str


def cut(text: str) -> list[Piece]:
    """The pieces of a valid TOML text: the head, then one each heading."""
    headings = Positions(text).headings
    places: list[Place] = [(), *(place for place, _ in headings)]
    ends = [0, *(_with_remarks(text, offset) for _, offset in headings), len(text)]
    return [Piece(place, text[start:end]) for place, (start, end) in zip(places, pairwise(ends), strict=True)]


def _with_remarks(text: str, offset: int) -> int:
    """Where the remarks right above a heading begin, else its line."""
    start = text.rfind("\n", 0, offset) + 1
    while start:
        above = text.rfind("\n", 0, start - 1) + 1
        if not text[above:start].lstrip().startswith("#"):
            break
        start = above
    return start


def lay(pieces: list[Piece]) -> str:
    """The text of pieces in their order, a blank line at least before each heading."""
    text = ""
    for piece in pieces:
        if text and not text.endswith("\n\n"):
            text = text.rstrip(" \t\n") + "\n\n"
        text += piece.text
    return text.rstrip(" \t\n") + "\n"
