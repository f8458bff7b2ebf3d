"""Results of tests as they are kept, shown and corrected."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime, time
from typing import TYPE_CHECKING

from app.analysis.local_time import known_zone
from app.analysis.tests_kinds import FieldTest
from app.domain.correctable import Subject, Value, as_value, utc_text
from app.domain.corrected import Held
from app.domain.corrections import Change, Target
from app.domain.keeping import Device, DeviceKind, Result
from app.domain.plan import Side

if TYPE_CHECKING:
    from app.store.database import Database

MIDDAY = time(12)
NewId = Callable[[datetime], str]


@dataclass(frozen=True, slots=True)
class Entered:
    """What was entered: tries of one test on a day on one side, as decimals, each with its note."""

    athlete: str
    test: FieldTest
    day: date
    side: Side
    values: tuple[str, ...]
    notes: tuple[str | None, ...]
    device: str = ""


@dataclass(frozen=True, slots=True)
class Known:
    """What the form shows: the athlete's results, the earliest first, and the instruments by name."""

    results: tuple[Held[Result], ...]
    devices: tuple[Device, ...]


def read_known(database: "Database", athlete: str) -> Known:
    """What is known before anything is entered. Raises StoreError."""
    instruments = (each for each in database.answers.devices() if each.kind is DeviceKind.INSTRUMENT)
    return Known(database.answers.results_of(athlete), tuple(instruments))


def keep_entered(database: "Database", entered: Entered, stamp: tuple[datetime, str], new_id: NewId) -> Known:
    """Write down what was entered, and give what is known since. Raises StoreError.

    Tries go on counting from those of the same day and side. A device of a new name is made.
    """
    now, zone = stamp
    at = moment_of(entered.day, now, zone)
    device = _device(database, entered.device.strip(), now, zone, new_id)
    before = [
        held.thing.attempt
        for held in database.answers.results_of(entered.athlete, entered.test.key)
        if held.thing.side is entered.side and local_day(held.thing) == entered.day
    ]
    first = max(before, default=0) + 1
    for number, (value, note) in enumerate(zip(entered.values, entered.notes, strict=True)):
        test = entered.test
        database.answers.keep(
            Result(
                new_id(now),
                entered.athlete,
                test.key,
                value,
                test.unit,
                at,
                zone,
                entered.side,
                first + number,
                device,
                note,
            )
        )
    return read_known(database, entered.athlete)


def moment_of(day: date, now: datetime, zone: str) -> datetime:
    """When a test of a day was: now for today, else midday by the clock of the place, in UTC."""
    place = known_zone(zone)
    if now.astimezone(place).date() == day:
        return now
    return datetime.combine(day, MIDDAY, place).astimezone(UTC)


def change_of(
    held: Held[Result], field: str, value: Value, who: str, why: str, stamp: tuple[datetime, str]
) -> Change:
    """The correction of one field of a result. Raises ValueError for what it cannot be."""
    return Change(Target(Subject.RESULT, held.thing.id), field, value, who, why, *stamp)


def on_day(result: Result, day: date) -> str:
    """The moment of a result moved to another day, at its time of day, as it is corrected."""
    place = known_zone(result.zone)
    clock = result.at.astimezone(place).time()
    return utc_text(datetime.combine(day, clock, place))


def local_day(result: Result) -> date:
    """The day of a result by the clock of its place."""
    return result.at.astimezone(known_zone(result.zone)).date()


def value_of(result: Result, field: str) -> Value:
    """The value of a field as it is corrected."""
    return as_value(getattr(result, field))


def _device(database: "Database", name: str, now: datetime, zone: str, new_id: NewId) -> str | None:
    if not name:
        return None
    known = [
        each
        for each in database.answers.devices()
        if each.kind is DeviceKind.INSTRUMENT and each.name.casefold() == name.casefold()
    ]
    if known:
        return known[0].id
    device = Device(new_id(now), DeviceKind.INSTRUMENT, name, now, zone)
    database.answers.keep(device)
    return device.id
