"""What is said beside a run or after it, in the database: kept as it was given, read as corrected."""

from collections.abc import Callable
from dataclasses import dataclass, fields
from enum import StrEnum
from typing import Any, TypeVar

from sqlalchemy import ColumnElement, Connection, RowMapping, insert, or_, select
from sqlalchemy.orm import InstrumentedAttribute

from app.domain.correctable import Subject
from app.domain.corrected import Held, corrected
from app.domain.corrections import Target, history
from app.domain.keeping import Device, DeviceKind, Note, Person, Rating, RatingKind, Result, Setting
from app.domain.plan import Side
from app.domain.readiness import Decision, Readiness
from app.store.correction_rows import corrections_about
from app.store.later_rows import DeviceRow, NoteRow, RatingRow, ReadinessRow, ResultRow, SettingRow
from app.store.link import Link
from app.store.people import RandomBytes, athlete_made
from app.store.planned_rows import PlannedRow
from app.store.rows import AthleteRow, Row, RunCourseRow, RunRow

Kept = Readiness | Rating | Note | Result | Device | Setting
Thing = TypeVar("Thing", bound=Kept)


@dataclass(frozen=True, slots=True)
class _Place:
    """Where things of a kind are kept: their rows, what they are to a correction, how to read their words."""

    rows: type[Row]
    subject: Subject | None = None
    words: tuple[tuple[str, Callable[[str], StrEnum]], ...] = ()


_PLACES: dict[type[Any], _Place] = {
    Readiness: _Place(ReadinessRow, Subject.READINESS, (("pain_side", Side), ("decision", Decision))),
    Rating: _Place(RatingRow, Subject.RATING, (("kind", RatingKind), ("side", Side))),
    Note: _Place(NoteRow, Subject.NOTE),
    Result: _Place(ResultRow, Subject.RESULT, (("side", Side),)),
    Device: _Place(DeviceRow, None, (("kind", DeviceKind),)),
    Setting: _Place(SettingRow),
}


class Answers:
    """Keeps and reads what is no fact of a run. Methods raise StoreError when the record cannot be had."""

    def __init__(self, link: Link, random_bytes: RandomBytes) -> None:
        self._link = link
        self._random_bytes = random_bytes

    def keep(self, *things: Kept) -> None:
        """Write things down, all or none of them; the same again changes nothing.

        An athlete of a new name is made. Raises ValueError when another thing has its UUID, StoreError when
        the run or the device that it names is not there.
        """
        with self._link.writing() as connection:
            for thing in things:
                self._keep(connection, thing)

    def _keep(self, connection: Connection, thing: Kept) -> None:
        rows = _PLACES[type(thing)].rows
        table = rows.__table__
        columns = self._columns(connection, thing)
        known = connection.execute(select(table).where(table.c.id == thing.id)).mappings().first()
        if known is None:
            connection.execute(insert(rows), columns)
        elif dict(known) != columns:
            raise ValueError(f"{thing.id} is written down already, and is another")

    def readiness_of(self, athlete: str) -> tuple[Held[Readiness], ...]:
        """What an athlete said of themselves before sessions, the earliest first."""
        return self._of_athlete(Readiness, athlete)

    def notes_of(self, athlete: str) -> tuple[Held[Note], ...]:
        """What was noted of an athlete, the earliest first."""
        return self._of_athlete(Note, athlete)

    def results_of(self, athlete: str, test: str | None = None) -> tuple[Held[Result], ...]:
        """The tries of an athlete, at one test where it is named, the earliest first."""
        found = self._of_athlete(Result, athlete)
        return tuple(each for each in found if test is None or each.thing.test == test)

    def ratings_of(self, run_id: str) -> tuple[Held[Rating], ...]:
        """What an athlete said of a run after it, the earliest first."""
        return self._read(Rating, RatingRow.run_id == run_id)

    def readiness_before(self, run_id: str) -> tuple[Held[Readiness], ...]:
        """What an athlete said of themselves before a run, the earliest first."""
        return self._read(Readiness, ReadinessRow.run_id == run_id, _of_run(ReadinessRow.athlete_id, run_id))

    def notes_about(self, run_id: str) -> tuple[Held[Note], ...]:
        """What was noted about a run, the earliest first."""
        return self._read(Note, NoteRow.run_id == run_id, _of_run(NoteRow.athlete_id, run_id))

    def devices(self) -> tuple[Device, ...]:
        """Every device, the earliest first."""
        return tuple(each.thing for each in self._read(Device))

    def setting(self, name: str) -> str | None:
        """The latest choice of a name by (when, id), None when there is none."""
        found = self._read(Setting, SettingRow.name == name)
        return found[-1].thing.value if found else None

    def people(self) -> tuple[Person, ...]:
        """Everybody who has begun a run, said anything or has something planned, in alphabetical order."""
        known = (RunCourseRow, ReadinessRow, NoteRow, ResultRow, PlannedRow)
        spoken_of = [AthleteRow.id.in_(select(rows.athlete_id)) for rows in known]
        query = select(AthleteRow.__table__).where(or_(*spoken_of))
        with self._link.reading() as connection:
            people = [_person(row) for row in connection.execute(query).mappings()]
        return tuple(sorted(people, key=lambda person: (person.name.casefold(), person.name, person.id)))

    def _columns(self, connection: Connection, thing: Kept) -> dict[str, Any]:
        columns = {each.name: getattr(thing, each.name) for each in fields(thing)}
        if "athlete" in columns:
            name = columns.pop("athlete")
            columns["athlete_id"] = athlete_made(connection, name, thing.at, self._random_bytes)
        return {name: value.value if isinstance(value, StrEnum) else value for name, value in columns.items()}

    def _of_athlete(self, kind: type[Thing], athlete: str) -> tuple[Held[Thing], ...]:
        column: ColumnElement[str] = _PLACES[kind].rows.__table__.c.athlete_id
        return self._read(kind, column.in_(select(AthleteRow.id).where(AthleteRow.name == athlete)))

    def _read(self, kind: type[Thing], *narrow: ColumnElement[bool]) -> tuple[Held[Thing], ...]:
        table = _PLACES[kind].rows.__table__
        query = select(table).where(*narrow)
        if "athlete_id" in table.c:
            joined = table.join(AthleteRow.__table__, AthleteRow.id == table.c.athlete_id)
            query = select(table, AthleteRow.name.label("athlete")).select_from(joined).where(*narrow)
        with self._link.reading() as connection:
            rows = connection.execute(query).mappings().all()
            found = [self._held(connection, kind, row) for row in rows]
        return tuple(sorted(found, key=lambda each: (each.thing.at, each.thing.id)))

    def _held(self, connection: Connection, kind: type[Thing], row: RowMapping) -> Held[Thing]:
        place = _PLACES[kind]
        values = {name: value for name, value in row.items() if name != "athlete_id"}
        for name, words in place.words:
            values[name] = None if values[name] is None else words(values[name])
        thing: Thing = kind(**values)
        if place.subject is None:
            return Held(thing)
        known = history(corrections_about(connection, self._link.path, thing.id))
        return Held(*corrected(thing, Target(place.subject, thing.id), known))


def _person(row: RowMapping) -> Person:
    side: str | None = row["reference_side"]
    return Person(**{**row, "reference_side": None if side is None else Side(side)})


def _of_run(whose: InstrumentedAttribute[str], run_id: str) -> ColumnElement[bool]:
    """Whose a run is, as written down or as corrected; by them an index leads to what was said of it."""
    written = select(RunRow.athlete_id).where(RunRow.id == run_id)
    return whose.in_(written.union(select(RunCourseRow.athlete_id).where(RunCourseRow.run_id == run_id)))
