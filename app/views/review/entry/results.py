"""Results of tests as they are kept, shown and corrected."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time
from typing import TYPE_CHECKING

from app.analysis.local_time import known_zone
from app.analysis.tests_catalog import CATALOGUE, keys_of
from app.analysis.tests_kinds import OF_LIFT, FieldTest
from app.domain.correctable import Subject, Value, as_value, utc_text
from app.domain.corrected import Held
from app.domain.corrections import Change, History, Target
from app.domain.keeping import Device, DeviceKind, Result
from app.domain.plan import Side
from app.views.review.entry.tries import Written
from app.views.translation import tr

if TYPE_CHECKING:
    from app.store.database import Database

MIDDAY = time(12)
NewId = Callable[[datetime], str]


@dataclass(frozen=True, slots=True)
class Entered:
    """What was entered: tries of one test on a day on one side, as they are written down, and notes."""

    athlete: str
    test: FieldTest
    day: date
    side: Side
    tries: tuple[tuple[Written, ...], ...]
    notes: tuple[str | None, ...]
    device: str = ""


@dataclass(frozen=True, slots=True)
class Known:
    """What the form shows: the athlete's results, the earliest first, instruments, and what was corrected.

    `history` has the corrections of a result by its name.
    """

    results: tuple[Held[Result], ...]
    devices: tuple[Device, ...]
    history: Mapping[str, History] = field(default_factory=dict)

    @property
    def lifts(self) -> tuple[str, ...]:
        """The lifts that tests were done with, by the alphabet."""
        found = {held.thing.test.partition(OF_LIFT)[2] for held in self.results}
        return tuple(sorted(filter(None, found), key=str.casefold))


def read_known(database: "Database", athlete: str) -> Known:
    """What is known before anything is entered. Raises StoreError."""
    instruments = (each for each in database.answers.devices() if each.kind is DeviceKind.INSTRUMENT)
    results = database.answers.results_of(athlete)
    corrected = database.corrections.corrected_ever(Subject.RESULT) & {held.thing.id for held in results}
    history = {name: database.corrections.history_about(name) for name in sorted(corrected)}
    return Known(results, tuple(instruments), history)


def keep_entered(database: "Database", entered: Entered, stamp: tuple[datetime, str], new_id: NewId) -> Known:
    """Write down what was entered, and give what is known since. Raises StoreError.

    Tries go on counting from those of the same day and side. A device of a new name is made.
    """
    now, zone = stamp
    at = moment_of(entered.day, now, zone)
    device = _device(database, entered.device.strip(), now, zone, new_id)
    keys = keys_of(entered.test)
    before = [
        held.thing.attempt
        for held in database.answers.results_of(entered.athlete)
        if held.thing.test in keys
        and held.thing.side is entered.side
        and local_day(held.thing) == entered.day
    ]
    first = max(before, default=0) + 1
    made = [
        Result(
            new_id(now),
            entered.athlete,
            written.key,
            written.value,
            written.unit,
            at,
            zone,
            entered.side,
            first + number,
            device,
            note,
        )
        for number, (tried, note) in enumerate(zip(entered.tries, entered.notes, strict=True))
        for written in tried
    ]
    database.answers.keep(*made)
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


def what_words(result: Result) -> str:
    """What of a test a result is: a part by its name, a lift by its own, both; nothing where neither is."""
    key, _, lift = result.test.partition(OF_LIFT)
    names = [tr(part.name) for test in CATALOGUE for part in test.parts if part.key == key]
    return ", ".join(filter(None, (lift, names[0] if names else "")))


def moment_day(text: str, zone: str) -> date:
    """The day of a moment in UTC, as it is corrected, by the clock of a place."""
    return datetime.fromisoformat(text).astimezone(known_zone(zone)).date()


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
