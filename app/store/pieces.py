"""Bytes in the making: whole numbers, times, answers, texts and choices, one after the other.

Whole numbers are base-128 with the lowest group first and the sign folded in: 0, -1, 1, -2 become 0, 1, 2, 3.
"""

from dataclasses import dataclass, field
from typing import Any, Protocol

_LONGEST_NUMBER = 10


@dataclass(slots=True)
class Piece:
    """Bytes being written or read, and what has been said in them so far."""

    data: bytearray
    at: int = 0
    time: int = 0
    place: dict[str, int] = field(default_factory=lambda: {"bout": 0, "attempt": 0, "side": 0, "rep": 0})
    texts: list[str] = field(default_factory=list)

    def put(self, value: int) -> None:
        """Write a whole number that is not negative."""
        while value > 0x7F:
            self.data.append(value & 0x7F | 0x80)
            value >>= 7
        self.data.append(value)

    def take(self) -> int:
        """Read a whole number. Raises ValueError where there is none."""
        value = 0
        for position, byte in enumerate(self.data[self.at : self.at + _LONGEST_NUMBER]):
            value |= (byte & 0x7F) << 7 * position
            if byte < 0x80:
                self.at += position + 1
                return value
        raise ValueError("a number has no end")

    def take_bytes(self, length: int) -> bytes:
        """Read so many bytes. Raises ValueError where there are fewer."""
        taken = bytes(self.data[self.at : self.at + length])
        if len(taken) < length:
            raise ValueError("a text has no end")
        self.at += length
        return taken


def fold_sign(value: int) -> int:
    """A whole number as one that is not negative."""
    return value << 1 if value >= 0 else -value * 2 - 1


def unfold_sign(value: int) -> int:
    """The number that `fold_sign` folded."""
    return -(value + 1 >> 1) if value & 1 else value >> 1


class Field(Protocol):
    """How one field of a fact is written and read; `read` raises ValueError where it cannot be."""

    def write(self, piece: Piece, value: Any) -> None:  # noqa: ANN401 - each kind has its own
        """Add it to a piece."""

    def read(self, piece: Piece) -> Any:  # noqa: ANN401
        """Take it from a piece."""


class Time:
    """A time, near the last one."""

    def write(self, piece: Piece, value: int) -> None:
        """Add it to a piece."""
        piece.put(fold_sign(value - piece.time))
        piece.time = value

    def read(self, piece: Piece) -> int:
        """Take it from a piece."""
        piece.time += unfold_sign(piece.take())
        return piece.time


class Number:
    """A number that stands alone."""

    def write(self, piece: Piece, value: int) -> None:
        """Add it to a piece."""
        piece.put(fold_sign(value))

    def read(self, piece: Piece) -> int:
        """Take it from a piece."""
        return unfold_sign(piece.take())


class Answer:
    """A number or nothing."""

    def write(self, piece: Piece, value: int | None) -> None:
        """Add it to a piece."""
        piece.put(0 if value is None else 1 + fold_sign(value))

    def read(self, piece: Piece) -> int | None:
        """Take it from a piece."""
        stored = piece.take()
        return None if stored == 0 else unfold_sign(stored - 1)


@dataclass(frozen=True, slots=True)
class Text:
    """Nothing (0) unless `wanted`, a text that is new (1), or one of those before it (from 2 on)."""

    wanted: bool = False

    def write(self, piece: Piece, value: str | None) -> None:
        """Add it to a piece."""
        if value is None:
            piece.put(0)
        elif value in piece.texts:
            piece.put(2 + piece.texts.index(value))
        else:
            encoded = value.encode(errors="surrogatepass")
            piece.texts.append(value)
            piece.put(1)
            piece.put(len(encoded))
            piece.data += encoded

    def read(self, piece: Piece) -> str | None:
        """Take it from a piece."""
        said = piece.take()
        if said == 0 and not self.wanted:
            return None
        if said == 0:
            raise ValueError("a text is missing")
        if said == 1:
            piece.texts.append(piece.take_bytes(piece.take()).decode(errors="surrogatepass"))
            return piece.texts[-1]
        if said - 2 >= len(piece.texts):
            raise ValueError(f"there is no text {said - 2}")
        return piece.texts[said - 2]


@dataclass(frozen=True, slots=True)
class Choice:
    """One of a few, by its place in a list."""

    among: tuple[object, ...]

    def write(self, piece: Piece, value: object) -> None:
        """Add it to a piece."""
        piece.put(self.among.index(value))

    def read(self, piece: Piece) -> object:
        """Take it from a piece."""
        place = piece.take()
        if place >= len(self.among):
            raise ValueError(f"there is no choice {place}")
        return self.among[place]
