"""How a piece of somebody's file is shown in a message: short, on one line, harmless to a terminal."""

import difflib
import re
from collections.abc import Iterable
from decimal import Decimal

LONGEST_SHOWN = 40
LONGEST_COMPARED = 40
ALIKE = 0.8
"""From this likeness on a name is taken for a misspelling."""
_LARGEST_SHOWN = 10**15

BIDI_MARKS = frozenset("\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
UNSEEN = re.compile(f"[\x00-\x1f\x7f-\x9f\u2028\u2029{''.join(BIDI_MARKS)}]")
"""A character that works unseen: a control, a line break, a mark of the reading direction."""


def code_point(character: str) -> str:
    """A character by its number, as Unicode writes it: `U+202E`."""
    return f"U+{ord(character):04X}"


def shown(value: object) -> str:
    """A value as its author would know it, text in quotes: at most 40 characters, nothing unseen in it."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, int) and abs(value) > _LARGEST_SHOWN:
        return "a number that large" if value > 0 else "a number that small"
    if isinstance(value, Decimal) and not value.is_finite():
        return "nan" if value.is_nan() else "inf" if value > 0 else "-inf"
    if isinstance(value, list):
        return "a list"
    if isinstance(value, dict):
        return "a table"
    text = str(value)
    text = text[:LONGEST_SHOWN] + "..." if len(text) > LONGEST_SHOWN else text
    text = "".join(
        character if character.isprintable() else f"<{code_point(character)}>" for character in text
    )
    return f'"{text}"' if isinstance(value, str) else text


def suggestion(word: str, known: Iterable[str]) -> str | None:
    """The known word a mistyped one was most likely meant to be, or None when nothing is near."""
    return next(iter(suggestions(word, known)), None)


def suggestions(word: str, known: Iterable[str]) -> list[str]:
    """The known words a mistyped one may have been meant to be, the nearest first, three at most."""
    if len(word) > LONGEST_COMPARED:
        return []
    plain = word.strip().casefold().replace("-", "_").replace(" ", "_")
    candidates = list(known)
    if plain in candidates:
        return [plain]
    near = difflib.get_close_matches(plain, candidates, n=3, cutoff=0.61)
    # Letters that only changed places say more than likeness does: "rset" is "rest" rather than "sets".
    return sorted(near, key=lambda candidate: sorted(candidate) != sorted(plain))


def near_name(name: str, known: Iterable[str]) -> str | None:
    """The known name so like another that it is taken for a misspelling of it, or None."""
    folded = {other.casefold(): other for other in sorted(known)}
    near = difflib.get_close_matches(name.casefold()[:LONGEST_COMPARED], folded, n=1, cutoff=ALIKE)
    return folded[near[0]] if near else None


def choices(words: Iterable[str]) -> str:
    """Words as a choice: `a`, `a or b`, `a, b or c`."""
    *others, last = words
    return f"{', '.join(others)} or {last}" if others else last
