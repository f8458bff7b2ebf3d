"""Who may train here: the roster and everybody of the record, who trained last first, found by typing."""

import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

from app.domain.squad import LastTrained

GUEST = "Guest"
"""The name under which somebody trains who gives none."""
LONGEST_NAME = 100
_UNMARKED = str.maketrans({"ø": "o", "ł": "l", "đ": "d", "ð": "d", "æ": "ae", "œ": "oe", "ı": "i", "þ": "th"})
"""Letters that Unicode does not take apart into a plain one and its mark."""


@dataclass(frozen=True, slots=True)
class Trainee:
    """Somebody who may train, and when their latest run began; None where there is none."""

    name: str
    last: datetime | None = None


def everybody(roster: Iterable[str], trained: Iterable[LastTrained]) -> tuple[Trainee, ...]:
    """Each name once: who trained last first, then the others in the order of the roster. No guest."""
    last = {each.athlete: each.at for each in trained}
    names = dict.fromkeys((*roster, *last))
    names.pop(GUEST, None)
    found = [Trainee(name, last.get(name)) for name in names]
    return tuple(sorted(found, key=lambda each: -_seconds(each)))


def matching(people: Sequence[Trainee], typed: str) -> tuple[Trainee, ...]:
    """Those whose names hold every word typed: first where each begins a word of the name, order kept."""
    words = plainly(typed).split()
    held = [(each, plainly(each.name)) for each in people]
    found = [(each, name) for each, name in held if all(word in name for word in words)]
    return tuple(
        each for each, _ in sorted(found, key=lambda one: not all(_begins(one[1], word) for word in words))
    )


def plainly(text: str) -> str:
    """A text without case and diacritics."""
    apart = unicodedata.normalize("NFKD", text.casefold().translate(_UNMARKED))
    return "".join(letter for letter in apart if not unicodedata.combining(letter))


def _begins(name: str, word: str) -> bool:
    return any(part.startswith(word) for part in name.replace("-", " ").split())


def _seconds(each: Trainee) -> float:
    return float("-inf") if each.last is None else each.last.timestamp()
