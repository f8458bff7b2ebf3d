"""What is kept beside the runs: later ratings, notes, results of tests, devices, settings.

Each `id` is a UUIDv7 as text, each `at` a moment with a time zone, `zone` the name of the local one. Each
class raises ValueError for a value that its description does not allow.
"""

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum

from app.domain.checks import decimal_text, in_range, moment, short_text
from app.domain.plan import Side


class RatingKind(StrEnum):
    """What is rated after a run; the session's own RPE is a fact of the run."""

    NEXT_MORNING_PAIN = "next_morning_pain"


@dataclass(frozen=True, slots=True)
class Rating:
    """An athlete's answer 0-10 about a run, given after it; None says that it was asked and not answered."""

    id: str
    run_id: str
    kind: RatingKind
    value: int | None
    at: datetime
    zone: str
    place: str | None = None
    side: Side | None = None
    note: str | None = None

    def __post_init__(self) -> None:
        in_range("value", self.value, 0, 10)
        short_text("place", self.place)
        short_text("note", self.note)
        moment("at", self.at)


@dataclass(frozen=True, slots=True)
class Note:
    """Words about an athlete, about one run of theirs where `run_id` says which; `who` wrote them."""

    id: str
    athlete: str
    text: str
    who: str
    at: datetime
    zone: str
    run_id: str | None = None

    def __post_init__(self) -> None:
        short_text("text", self.text, wanted=True)
        short_text("who", self.who, wanted=True)
        moment("at", self.at)


@dataclass(frozen=True, slots=True)
class Result:
    """One try at a test: `value` in `unit`, as text so that no decimal is lost; `attempt` counts from 1."""

    id: str
    athlete: str
    test: str
    value: str
    unit: str
    at: datetime
    zone: str
    side: Side = Side.BOTH
    attempt: int = 1
    device_id: str | None = None
    note: str | None = None

    def __post_init__(self) -> None:
        short_text("test", self.test, wanted=True)
        decimal_text("value", self.value)
        short_text("unit", self.unit, wanted=True)
        in_range("attempt", self.attempt, 1, 1_000)
        short_text("note", self.note)
        moment("at", self.at)


class DeviceKind(StrEnum):
    """What a device is for."""

    COMPUTER = "computer"
    INSTRUMENT = "instrument"


@dataclass(frozen=True, slots=True)
class Device:
    """A computer that runs are led on, or an instrument that tests are measured with."""

    id: str
    kind: DeviceKind
    name: str
    at: datetime
    zone: str

    def __post_init__(self) -> None:
        short_text("name", self.name, wanted=True)
        moment("at", self.at)


@dataclass(frozen=True, slots=True)
class Setting:
    """A choice that belongs to the record and not to a machine; the latest of a name holds."""

    id: str
    name: str
    value: str | None
    at: datetime
    zone: str

    def __post_init__(self) -> None:
        short_text("name", self.name, wanted=True)
        moment("at", self.at)


@dataclass(frozen=True, slots=True)
class Person:
    """An athlete as the record knows them, and since when they agreed to what; None where not asked.

    `reference_side` is the side that the other is measured against, None where nobody chose one. Raises
    ValueError for both sides at once.
    """

    id: str
    name: str
    short_name: str | None = None
    consent_on: date | None = None
    consent_scope: str | None = None
    reference_side: Side | None = None

    def __post_init__(self) -> None:
        if self.reference_side is Side.BOTH:
            raise ValueError("reference_side is one side, not both")
