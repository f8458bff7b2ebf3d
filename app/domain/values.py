"""Plain values: what stands in one cell of a record that is handed on, and which are allowed there.

A plain value is a text, a whole number, a decimal number, true or false, or None for unknown. Times are text,
so that any program can read them.
"""

import math
import re
from dataclasses import dataclass
from datetime import UTC, date, datetime
from typing import Protocol
from uuid import UUID

from app.domain.checks import HEAVIEST_KG, load_text, short_text
from app.domain.checks import LONGEST_TEXT as SHORT_TEXT

Plain = str | int | float | bool | None
Row = dict[str, Plain]
"""The cells of one row by the names of their columns."""

MOST_MS = 1 << 42
"""139 years: no time within a run, and none between a run and an answer, is longer."""
EARLIEST_YEAR, LATEST_YEAR = 1900, 2200
LONGEST_TEXT = 1 << 20
LONGEST_NAME = 500

_WHOLE = re.compile(r"-?[0-9]{1,18}")
_DECIMAL = re.compile(r"-?[0-9]{1,18}(\.[0-9]{1,18})?([eE][-+]?[0-9]{1,3})?")
_MOMENT = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]{6})?Z")
_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_DIGEST = re.compile(r"[0-9a-f]{64}")
_CLOCK = re.compile(r"([01][0-9]|2[0-3]):[0-5][0-9]")
_NO_LOAD = f"must be a load from 0 to {HEAVIEST_KG} kg such as 12.5"
_SURROGATE = re.compile("[\ud800-\udfff]")


class Kind(Protocol):
    """What a column holds. Both methods raise ValueError with what would be right, as `must be ...`."""

    def check(self, value: Plain) -> Plain:
        """The value itself when it is allowed."""

    def read(self, text: str) -> Plain:
        """The value that a text which is not empty writes."""


@dataclass(frozen=True, slots=True)
class Whole:
    """A whole number, both bounds included."""

    least: int = 0
    most: int = MOST_MS

    def check(self, value: Plain) -> int:
        """The number."""
        if isinstance(value, bool) or not isinstance(value, int) or not self.least <= value <= self.most:
            raise ValueError(f"must be a whole number from {self.least} to {self.most}")
        return value

    def read(self, text: str) -> int:
        """The number."""
        return self.check(int(text) if _WHOLE.fullmatch(text) else None)


@dataclass(frozen=True, slots=True)
class Number:
    """A number with or without decimals, both bounds included; never infinite, never `not a number`."""

    least: float
    most: float

    def check(self, value: Plain) -> float:
        """The number."""
        fits = isinstance(value, int | float) and not isinstance(value, bool)
        if not fits or not math.isfinite(value) or not self.least <= value <= self.most:  # type: ignore[arg-type, operator]
            raise ValueError(f"must be a number from {self.least:g} to {self.most:g}")
        return float(value)  # type: ignore[arg-type]

    def read(self, text: str) -> float:
        """The number."""
        return self.check(float(text) if _DECIMAL.fullmatch(text) else None)


@dataclass(frozen=True, slots=True)
class Text:
    """A text of at most so many characters, in any script."""

    longest: int = LONGEST_TEXT

    def check(self, value: Plain) -> str:
        """The text."""
        if not isinstance(value, str) or len(value) > self.longest or _SURROGATE.search(value):
            raise ValueError(f"must be text of at most {self.longest} characters")
        return value

    def read(self, text: str) -> str:
        """The text."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Words:
    """A short text that can be shown, by the rule for every answer; one that says nothing where `empty`."""

    empty: bool = False

    def check(self, value: Plain) -> str:
        """The text."""
        try:
            short_text("it", value, wanted=not self.empty)
        except ValueError as error:
            raise ValueError(
                f"must be text of {0 if self.empty else 1} to {SHORT_TEXT} characters that can be shown"
            ) from error
        return Text(SHORT_TEXT).check(value)

    def read(self, text: str) -> str:
        """The text."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Decimals:
    """A number as text, with every decimal that was written."""

    def check(self, value: Plain) -> str:
        """The number as it was written."""
        if not isinstance(value, str) or not _DECIMAL.fullmatch(value):
            raise ValueError("must be a number such as 31.5")
        return value

    def read(self, text: str) -> str:
        """The number as it was written."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Load:
    """A load in kg as text, with every decimal that was written."""

    def check(self, value: Plain) -> str:
        """The load as it was written."""
        try:
            load_text("it", value)
        except ValueError as error:
            raise ValueError(_NO_LOAD) from error
        if value is None:
            raise ValueError(_NO_LOAD)
        return str(value)

    def read(self, text: str) -> str:
        """The load as it was written."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Choice:
    """One of a few words."""

    among: tuple[str, ...]

    def check(self, value: Plain) -> str:
        """The word."""
        if not isinstance(value, str) or value not in self.among:
            raise ValueError(f"must be one of {', '.join(self.among)}")
        return value

    def read(self, text: str) -> str:
        """The word."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Flag:
    """True or false."""

    def check(self, value: Plain) -> bool:
        """The flag."""
        if not isinstance(value, bool):
            raise ValueError("must be true or false")
        return value

    def read(self, text: str) -> bool:
        """The flag."""
        return self.check({"true": True, "false": False}.get(text))


@dataclass(frozen=True, slots=True)
class Name:
    """The name of a row that no two machines give twice: a UUID in its canonical text."""

    def check(self, value: Plain) -> str:
        """The UUID."""
        try:
            right = isinstance(value, str) and str(UUID(value)) == value
        except ValueError:
            right = False
        if not right:
            raise ValueError("must be a UUID such as 0190163d-8694-739b-aea5-966c26f8ad91")
        return str(value)

    def read(self, text: str) -> str:
        """The UUID."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Digest:
    """The SHA-256 of something, in 64 hexadecimal digits."""

    def check(self, value: Plain) -> str:
        """The digits."""
        if not isinstance(value, str) or not _DIGEST.fullmatch(value):
            raise ValueError("must be 64 hexadecimal digits")
        return value

    def read(self, text: str) -> str:
        """The digits."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Clock:
    """A time of day, `18:30`."""

    def check(self, value: Plain) -> str:
        """The time of day."""
        if not isinstance(value, str) or not _CLOCK.fullmatch(value):
            raise ValueError("must be a time of day such as 18:30")
        return value

    def read(self, text: str) -> str:
        """The time of day."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Day:
    """A day of the calendar, `2026-03-02`."""

    def check(self, value: Plain) -> str:
        """The day."""
        if not isinstance(value, str) or not _DAY.fullmatch(value) or _parsed(value) is None:
            raise ValueError("must be a day such as 2026-03-02")
        return value

    def read(self, text: str) -> str:
        """The day."""
        return self.check(text)


@dataclass(frozen=True, slots=True)
class Moment:
    """A moment in UTC, `2026-03-02T17:30:00Z`, with six decimals of the second or none."""

    def check(self, value: Plain) -> str:
        """The moment."""
        if not isinstance(value, str) or not _MOMENT.fullmatch(value) or _parsed(value) is None:
            raise ValueError("must be a moment in UTC such as 2026-03-02T17:30:00Z")
        return value

    def read(self, text: str) -> str:
        """The moment."""
        return self.check(text)


def moment_text(at: datetime) -> str:
    """A moment as a plain value. Raises ValueError for one that has no zone."""
    if at.utcoffset() is None:
        raise ValueError(f"{at.isoformat()} does not say in which time zone")
    return at.astimezone(UTC).isoformat().replace("+00:00", "Z")


def moment_of(text: str) -> datetime:
    """The moment that `moment_text` wrote."""
    return datetime.fromisoformat(text)


def day_of(text: str) -> date:
    """The day of a plain value."""
    return date.fromisoformat(text)


def _parsed(text: str) -> datetime | None:
    """The time a text says, None where it is none or lies outside the years that can be reckoned with."""
    try:
        parsed = datetime.fromisoformat(text)
    except ValueError:
        return None
    return parsed if EARLIEST_YEAR <= parsed.year <= LATEST_YEAR else None
