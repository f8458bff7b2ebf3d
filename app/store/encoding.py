"""Facts as bytes: a version byte, then for each fact its tag and fields, times and counts as differences.

Whole numbers are base-128 with the lowest group first and the sign folded in (0, -1, 1, -2 become 0, 1, 2,
3), so that a rep costs about a dozen bytes. Tags and the order of the lists below are the format: they may
be added to, never changed.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any, Protocol

from app.domain.plan import Side
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutRated,
    Fact,
    FaultMarked,
    Paused,
    PauseReason,
    RepDone,
    RepMissed,
    RestExtended,
    Resumed,
    RunBegan,
    RunEnded,
    RunOutcome,
    SessionRated,
    SkipReason,
)

FORMAT = 1
_LONGEST_NUMBER = 10


@dataclass(slots=True)
class _Piece:
    """Bytes being written or read, and the numbers the next differences are taken from."""

    data: bytearray
    place: int = 0
    before: dict[str, int] = field(default_factory=dict)

    def put(self, value: int) -> None:
        """Write a whole number that is not negative."""
        while value > 0x7F:
            self.data.append(value & 0x7F | 0x80)
            value >>= 7
        self.data.append(value)

    def take(self) -> int:
        """Read a whole number. Raises ValueError where there is none."""
        value = 0
        for position, byte in enumerate(self.data[self.place : self.place + _LONGEST_NUMBER]):
            value |= (byte & 0x7F) << 7 * position
            if byte < 0x80:
                self.place += position + 1
                return value
        raise ValueError("a number has no end")

    def take_bytes(self, length: int) -> bytes:
        """Read so many bytes. Raises ValueError where there are fewer."""
        taken = bytes(self.data[self.place : self.place + length])
        if len(taken) < length:
            raise ValueError("a text has no end")
        self.place += length
        return taken


def _fold_sign(value: int) -> int:
    return value << 1 if value >= 0 else -value * 2 - 1


def _unfold_sign(value: int) -> int:
    return -(value + 1 >> 1) if value & 1 else value >> 1


class _Field(Protocol):
    def write(self, piece: _Piece, value: Any) -> None: ...  # noqa: ANN401 - each kind has its own

    def read(self, piece: _Piece) -> Any: ...  # noqa: ANN401


@dataclass(frozen=True, slots=True)
class _Difference:
    """A number near the last one of its kind."""

    kind: str

    def write(self, piece: _Piece, value: int) -> None:
        piece.put(_fold_sign(value - piece.before.get(self.kind, 0)))
        piece.before[self.kind] = value

    def read(self, piece: _Piece) -> int:
        value = piece.before.get(self.kind, 0) + _unfold_sign(piece.take())
        piece.before[self.kind] = value
        return value


class _Number:
    """A number that stands alone."""

    def write(self, piece: _Piece, value: int) -> None:
        piece.put(_fold_sign(value))

    def read(self, piece: _Piece) -> int:
        return _unfold_sign(piece.take())


class _Answer:
    """A number or nothing."""

    def write(self, piece: _Piece, value: int | None) -> None:
        piece.put(0 if value is None else 1 + _fold_sign(value))

    def read(self, piece: _Piece) -> int | None:
        stored = piece.take()
        return None if stored == 0 else _unfold_sign(stored - 1)


class _Text:
    """Text or nothing."""

    def write(self, piece: _Piece, value: str | None) -> None:
        if value is None:
            piece.put(0)
            return
        encoded = value.encode(errors="surrogatepass")
        piece.put(1 + len(encoded))
        piece.data += encoded

    def read(self, piece: _Piece) -> str | None:
        length = piece.take()
        return None if length == 0 else piece.take_bytes(length - 1).decode(errors="surrogatepass")


@dataclass(frozen=True, slots=True)
class _Choice:
    """One of a few, by its place in a list."""

    among: tuple[object, ...]

    def write(self, piece: _Piece, value: object) -> None:
        piece.put(self.among.index(value))

    def read(self, piece: _Piece) -> object:
        place = piece.take()
        if place >= len(self.among):
            raise ValueError(f"there is no choice {place}")
        return self.among[place]


_TIME, _BOUT, _ATTEMPT, _REP = map(_Difference, ("time", "bout", "attempt", "rep"))
_NUMBER, _ANSWER, _TEXT = _Number(), _Answer(), _Text()
_SIDE = _Choice((Side.LEFT, Side.RIGHT, Side.BOTH))
_BOUT_OUTCOME = _Choice(
    (BoutOutcome.DONE, BoutOutcome.ENDED_EARLY, BoutOutcome.SKIPPED, BoutOutcome.BROKEN_OFF)
)
_RUN_OUTCOME = _Choice((RunOutcome.FINISHED, RunOutcome.ABANDONED))
_PAUSE = _Choice((PauseReason.ASKED, PauseReason.INTERRUPTED))
_SKIP = _Choice((None, SkipReason.PAIN, SkipReason.EQUIPMENT, SkipReason.TIME, SkipReason.OTHER))

_Shape = tuple[type[Fact], tuple[tuple[str, _Field], ...]]
_AT: tuple[str, _Field] = ("at_ms", _TIME)
_OF_BOUT: tuple[tuple[str, _Field], ...] = (("bout", _BOUT), ("attempt", _ATTEMPT))
_OF_REP: tuple[tuple[str, _Field], ...] = (*_OF_BOUT, ("rep", _REP), ("side", _SIDE))

_SHAPES: dict[int, _Shape] = {
    1: (RunBegan, (_AT,)),
    2: (BoutBegan, (_AT, *_OF_BOUT)),
    3: (RepDone, (("start_ms", _TIME), _AT, *_OF_REP, ("late_ms", _NUMBER))),
    4: (RepMissed, (_AT, *_OF_REP)),
    5: (FaultMarked, (_AT, *_OF_REP, ("fault", _TEXT))),
    6: (BoutEnded, (_AT, *_OF_BOUT, ("outcome", _BOUT_OUTCOME), ("reason", _SKIP), ("note", _TEXT))),
    7: (
        BoutRated,
        (_AT, *_OF_BOUT, ("reps", _ANSWER), ("rpe", _ANSWER), ("pain", _ANSWER), ("note", _TEXT)),
    ),
    8: (Paused, (_AT, ("reason", _PAUSE))),
    9: (Resumed, (_AT,)),
    10: (RestExtended, (_AT, ("bout", _BOUT), ("by_ms", _NUMBER))),
    11: (RunEnded, (_AT, ("outcome", _RUN_OUTCOME))),
    12: (SessionRated, (_AT, ("rpe", _ANSWER), ("lag_ms", _ANSWER), ("note", _TEXT))),
}
_TAGS: dict[type[Fact], int] = {kind: tag for tag, (kind, _) in _SHAPES.items()}


def encode(facts: Sequence[Fact]) -> bytes:
    """The bytes of some facts, in order."""
    piece = _Piece(bytearray((FORMAT,)))
    for fact in facts:
        tag = _TAGS[type(fact)]
        piece.put(tag)
        for name, kind in _SHAPES[tag][1]:
            kind.write(piece, getattr(fact, name))
    return bytes(piece.data)


def decode(body: bytes) -> tuple[Fact, ...]:
    """The facts in some bytes. Raises ValueError when the bytes are not what `encode` gives."""
    if body[:1] != bytes((FORMAT,)):
        raise ValueError("facts of an unknown format")
    piece = _Piece(bytearray(body), 1)
    facts: list[Fact] = []
    while piece.place < len(piece.data):
        tag = piece.take()
        if tag not in _SHAPES:
            raise ValueError(f"there is no fact {tag}")
        kind, fields = _SHAPES[tag]
        facts.append(kind(**{name: shape.read(piece) for name, shape in fields}))
    return tuple(facts)
