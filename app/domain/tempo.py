"""Tempo: four digits for the four phases of a rep, eccentric first whatever is played first.

Order of the fields and the meaning of X: common practice, no source.
"""

import re
from dataclasses import dataclass
from enum import StrEnum

from app.domain.units import milliseconds, seconds_text


class Phase(StrEnum):
    """A stretch of work within a bout, by what the body does in it."""

    ECCENTRIC = "eccentric"
    HOLD_LENGTHENED = "hold_lengthened"
    CONCENTRIC = "concentric"
    HOLD_SHORTENED = "hold_shortened"
    HOLD = "hold"
    RELAX = "relax"
    MOVE = "move"
    STICK = "stick"
    RESET = "reset"
    GO = "go"
    OWN = "own"
    WORK = "work"


class Begins(StrEnum):
    """Which phase of a rep is played first."""

    ECCENTRIC = "eccentric"
    CONCENTRIC = "concentric"
    HOLD = "hold"


PLAYING_ORDER: dict[Begins, tuple[Phase, Phase, Phase, Phase]] = {
    Begins.ECCENTRIC: (Phase.ECCENTRIC, Phase.HOLD_LENGTHENED, Phase.CONCENTRIC, Phase.HOLD_SHORTENED),
    Begins.CONCENTRIC: (Phase.CONCENTRIC, Phase.HOLD_SHORTENED, Phase.ECCENTRIC, Phase.HOLD_LENGTHENED),
    Begins.HOLD: (Phase.HOLD_SHORTENED, Phase.ECCENTRIC, Phase.HOLD_LENGTHENED, Phase.CONCENTRIC),
}

_FIELD = re.compile(r"(?:[0-9]{1,4}(?:\.[0-9])?|[Xx])\Z")
_UNSEPARATED = re.compile(r"[0-9Xx]{3,4}\Z")
_SEPARATORS = "-/:"
_LONGEST_SHOWN = 20


@dataclass(frozen=True, slots=True)
class Tempo:
    """Lengths of the four phases in whole ms; None stands for X, as fast as control allows."""

    eccentric: int | None
    hold_lengthened: int
    concentric: int | None
    hold_shortened: int

    def length(self, phase: Phase) -> int | None:
        """Length of one of the four tempo phases in ms, None for X. Raises KeyError for any other phase."""
        return {
            Phase.ECCENTRIC: self.eccentric,
            Phase.HOLD_LENGTHENED: self.hold_lengthened,
            Phase.CONCENTRIC: self.concentric,
            Phase.HOLD_SHORTENED: self.hold_shortened,
        }[phase]

    @property
    def explosive(self) -> bool:
        """Whether a phase is X, so that any time under tension is nominal."""
        return self.eccentric is None or self.concentric is None

    def __str__(self) -> str:
        fields = (self.eccentric, self.hold_lengthened, self.concentric, self.hold_shortened)
        return "-".join("X" if field is None else seconds_text(field) for field in fields)


def parse_tempo(text: str) -> Tempo:
    """A tempo from any accepted spelling: `3-0-1-0`, `3/0/1/0`, `3:0:1:0`, `3010`, `3-0-X-0`, `3-0-1`.

    Raises ValueError on anything else, its message fit for a person: what is wrong; what would be right.
    """
    fields = _fields(text.strip())
    if len(fields) == 3:
        fields = [*fields, "0"]
    if len(fields) != 4:
        raise ValueError(f"a tempo has four fields (or three), not {len(fields)}; write it like 3-0-1-0")
    for position, field in enumerate(fields):
        if not _FIELD.match(field):
            raise ValueError(
                f"{_shown(field)} is no field of a tempo; write seconds with one decimal at most, or X, "
                "like 1.5-0-X-0"
            )
        if field in "Xx" and position in (1, 3):
            raise ValueError(
                "X does not stand for a hold; write it in the first field (eccentric) or third (concentric)"
            )
    lengths = [None if field in "Xx" else milliseconds(float(field)) for field in fields]
    if all(length == 0 for length in lengths):
        raise ValueError("all four fields of the tempo are 0; give at least one phase a length")
    return Tempo(lengths[0], lengths[1] or 0, lengths[2], lengths[3] or 0)


def _fields(text: str) -> list[str]:
    separators = {character for character in text if character in _SEPARATORS}
    if len(separators) > 1:
        raise ValueError("the tempo mixes separators; use one throughout, like 3-0-1-0")
    if separators:
        return text.split(separators.pop())
    if _UNSEPARATED.match(text):
        return list(text)
    raise ValueError(f"{_shown(text)} is no tempo; write four fields like 3-0-1-0, 3/0/1/0, 3:0:1:0 or 3010")


def _shown(text: str) -> str:
    """A piece of a tempo in quotes, short and without what cannot be seen."""
    short = text if len(text) <= _LONGEST_SHOWN else f"{text[:_LONGEST_SHOWN]}..."
    return '"' + "".join(character if character.isprintable() else "?" for character in short) + '"'
