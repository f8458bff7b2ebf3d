"""The kinds of numbers a file may hold: counts, lengths of time, loads, tempi, and ranges of them.

Files say seconds with at most three decimals, so that every length is a whole number of ms as written.
"""

from dataclasses import dataclass
from decimal import Decimal

from app.domain.dose import Band
from app.domain.plan import LONGEST_SESSION_MS
from app.domain.tempo import Tempo, parse_tempo
from app.domain.units import milliseconds, seconds_text
from app.planfile.kinds import Refuse, Schema, Text, below
from app.planfile.shown import shown

SHORTEST_PHASE_MS = 100
LONGEST_PHASE_MS = 600_000
LONGEST_GAP_MS = LONGEST_SESSION_MS
"""A gap has no limit but that of the session."""
HEAVIEST_KG = 1000

_SECOND_MS = 1000
_THOUSANDTH = Decimal("0.001")
_OUT_OF_ALL_RANGES = 10**9
_FIELD = r"(?:[0-9]{1,4}(?:\.[0-9])?|[Xx])"
_HOLD = r"[0-9]{1,4}(?:\.[0-9])?"
TEMPO_PATTERN = (
    r"^\s*(?:[0-9Xx][0-9][0-9Xx][0-9]?|"
    + "|".join(f"{_FIELD}{s}{_HOLD}{s}{_FIELD}(?:{s}{_HOLD})?" for s in "-/:")
    + r")\s*$"
)

ALL_ZERO_PATTERN = r"^[-/:.0\s]*$"


def _numeric(value: object) -> bool:
    return isinstance(value, int | float | Decimal) and not isinstance(value, bool)


def _exact(value: object) -> Decimal:
    """A numeric value as a decimal; infinity stands for anything beyond all limits, not-a-number included."""
    if isinstance(value, int):
        return Decimal(value) if abs(value) < _OUT_OF_ALL_RANGES else Decimal("Infinity")
    number = Decimal(str(value)) if isinstance(value, float) else value
    return number if isinstance(number, Decimal) and number.is_finite() else Decimal("Infinity")


def _not_a_number(value: object) -> str:
    right = "write a number, without quotes" if isinstance(value, str) else "write a number"
    return f"this must be a number, not {shown(value)}; {right}"


def tidy(number: Decimal) -> Decimal:
    """The same number without trailing zeros and without an exponent, for at most three decimals."""
    return Decimal(int(number)) if number == int(number) else number.normalize()


@dataclass(frozen=True, slots=True)
class Seconds:
    """A length of time within limits; `or_none` lets 0 stand for leaving it out. Limits and result in ms."""

    least_ms: int = SHORTEST_PHASE_MS
    most_ms: int = LONGEST_PHASE_MS
    or_none: bool = False

    def read(self, value: object, refuse: Refuse) -> int | None:
        """The length in ms."""
        if not _numeric(value):
            refuse(_not_a_number(value))
            return None
        number = _exact(value)
        least, most = Decimal(self.least_ms) / _SECOND_MS, Decimal(self.most_ms) / _SECOND_MS
        if not (least <= number <= most or (self.or_none and number == 0)):
            refuse(f"{shown(value)} is out of range; write {self._limits()}")
        elif number.quantize(_THOUSANDTH) != number:
            refuse(f"{shown(value)} is finer than a millisecond; write three decimals at most")
        else:
            return milliseconds(number)
        return None

    def _limits(self) -> str:
        lowest = "0 or " if self.or_none else ""
        return f"{lowest}{seconds_text(self.least_ms)} to {seconds_text(self.most_ms)} seconds"

    def schema(self) -> Schema:
        """A number of seconds."""
        limits = {"minimum": _plain(self.least_ms), "maximum": _plain(self.most_ms)}
        return (
            {"type": "number", "anyOf": [{"const": 0}, limits]}
            if self.or_none
            else {"type": "number", **limits}
        )


def _plain(ms: int) -> int | float:
    return ms // _SECOND_MS if ms % _SECOND_MS == 0 else ms / _SECOND_MS


@dataclass(frozen=True, slots=True)
class Count:
    """A whole number within limits."""

    least: int
    most: int

    def read(self, value: object, refuse: Refuse) -> int | None:
        """The number."""
        if not _numeric(value):
            refuse(_not_a_number(value))
        elif not isinstance(value, int):
            refuse(f"{shown(value)} is not a whole number; write one from {self.least} to {self.most}")
        elif not self.least <= value <= self.most:
            refuse(f"{shown(value)} is out of range; write a whole number from {self.least} to {self.most}")
        else:
            return value
        return None

    def schema(self) -> Schema:
        """An integer."""
        return {"type": "integer", "minimum": self.least, "maximum": self.most}


@dataclass(frozen=True, slots=True)
class Format:
    """The number of the file format, of which this program knows one."""

    number: int

    def read(self, value: object, refuse: Refuse) -> int | None:
        """The number."""
        if not isinstance(value, int) or isinstance(value, bool):
            refuse(f"{shown(value)} is no format; write format = {self.number}")
        elif value > self.number:
            refuse(f"format {shown(value)} is newer than this program; update it, it reads {self.number}")
        elif value < self.number:
            refuse(f"there is no format {shown(value)}; write format = {self.number}")
        else:
            return value
        return None

    def schema(self) -> Schema:
        """A constant."""
        return {"const": self.number}


@dataclass(frozen=True, slots=True)
class Ranged:
    """One amount, or a range [lower, upper] of two of the same kind."""

    amount: Seconds | Count

    def read(self, value: object, refuse: Refuse) -> Band | None:
        """The amount as a band."""
        if not isinstance(value, list):
            single = self.amount.read(value, refuse)
            return None if single is None else Band.exactly(single)
        if len(value) != 2:
            refuse(f"a range has two numbers, not {len(value)}; write it like [lower, upper]")
            return None
        low, high = (self.amount.read(bound, below(refuse, index)) for index, bound in enumerate(value))
        if low is None or high is None:
            return None
        if low > high:
            refuse(f"the range runs downwards; write the lower number first: [{value[1]}, {value[0]}]")
            return None
        return Band(low, high)

    def schema(self) -> Schema:
        """The amount, or an array of two."""
        one = self.amount.schema()
        return {"anyOf": [one, {"type": "array", "items": one, "minItems": 2, "maxItems": 2}]}


@dataclass(frozen=True, slots=True)
class Load:
    """A load in kg, 0 to 1000, with at most three decimals."""

    def read(self, value: object, refuse: Refuse) -> Decimal | None:
        """The load, without trailing zeros."""
        if not _numeric(value):
            refuse(_not_a_number(value))
            return None
        number = _exact(value)
        if not 0 <= number <= HEAVIEST_KG:
            refuse(f"{shown(value)} is out of range; write 0 to {HEAVIEST_KG} kg")
        elif number.quantize(_THOUSANDTH) != number:
            refuse(f"{shown(value)} is finer than a gram; write three decimals at most")
        else:
            return tidy(abs(number))
        return None

    def schema(self) -> Schema:
        """A number of kg."""
        return {"type": "number", "minimum": 0, "maximum": HEAVIEST_KG}


@dataclass(frozen=True, slots=True)
class TempoText:
    """A tempo in any accepted spelling."""

    def read(self, value: object, refuse: Refuse) -> Tempo | None:
        """The tempo, no phase of it longer than 600 s."""
        if not isinstance(value, str):
            refuse(f'a tempo is text, not {shown(value)}; put it in quotes, like "3-0-1-0"')
            return None
        if Text().read(value, refuse) is None:
            return None
        try:
            tempo = parse_tempo(value)
        except ValueError as error:
            refuse(str(error))
            return None
        fields = (tempo.eccentric, tempo.hold_lengthened, tempo.concentric, tempo.hold_shortened)
        if any(field is not None and field > LONGEST_PHASE_MS for field in fields):
            refuse(
                f"a phase of the tempo is too long; write {LONGEST_PHASE_MS // _SECOND_MS} seconds at most"
            )
            return None
        return tempo

    def schema(self) -> Schema:
        """A pattern of the accepted spellings."""
        return {"type": "string", "pattern": TEMPO_PATTERN, "not": {"pattern": ALL_ZERO_PATTERN}}
