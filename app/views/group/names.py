"""Names for a screen that everybody sees: the chosen short one, else the first, told apart where alike."""

from collections import Counter
from collections.abc import Sequence

from app.domain.athlete import Athlete


def screen_names(athletes: Sequence[Athlete]) -> tuple[str, ...]:
    """A name for each athlete, no two alike as far as their full names differ."""
    first = [athlete.short or _first(athlete.name) for athlete in athletes]
    return tuple(
        name if count == 1 or athlete.short else _longer(athlete.name, first, athletes)
        for athlete, name, count in zip(athletes, first, _counts(first), strict=True)
    )


def _counts(names: Sequence[str]) -> list[int]:
    known = Counter(names)
    return [known[name] for name in names]


def _first(name: str) -> str:
    words = name.split(maxsplit=1)
    return words[0] if words else name


def _longer(name: str, first: Sequence[str], athletes: Sequence[Athlete]) -> str:
    """The first name with as much of the last as tells it from those who share the first; else the whole."""
    words = name.split()
    if len(words) < 2:
        return name
    rivals = [
        athlete.name.rsplit(maxsplit=1)[-1]
        for athlete, short in zip(athletes, first, strict=True)
        if short == words[0] and athlete.name != name and len(athlete.name.split()) > 1
    ]
    for length in range(1, len(words[-1])):
        start = words[-1][:length]
        if not any(rival.startswith(start) for rival in rivals):
            return f"{words[0]} {start}."
    return name
