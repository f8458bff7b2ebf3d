"""What the record knows of an athlete's reference side, and how it is chosen: by corrections alone."""

from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from app.domain.correctable import Subject
from app.domain.corrections import Change, Correction, History, Target
from app.domain.plan import Side

if TYPE_CHECKING:
    from app.store.database import Database

FIELD = "reference_side"
Stamp = tuple[datetime, str]
"""A moment, and the name of the time zone."""


@dataclass(frozen=True, slots=True)
class Chosen:
    """One choice: what was chosen instead of what, and whether it still holds."""

    correction: Correction
    holds: bool


@dataclass(frozen=True, slots=True)
class KnownReference:
    """The side that holds, None where nobody chose one, and every choice, the latest first.

    `rows` are those of the athletes of that name.
    """

    athlete: str
    rows: tuple[str, ...]
    side: Side | None
    choices: tuple[Chosen, ...]


def read_reference(database: "Database", athlete: str) -> KnownReference:
    """What is known of the athlete of a name. Raises StoreError."""
    people = [person for person in database.answers.people() if person.name == athlete]
    found = [each for person in people for each in _choices(database.corrections.history_about(person.id))]
    found.sort(key=lambda each: (each.correction.change.at, each.correction.id), reverse=True)
    sides = {person.reference_side for person in people if person.reference_side is not None}
    side = sides.pop() if len(sides) == 1 else None
    return KnownReference(athlete, tuple(person.id for person in people), side, tuple(found))


def choose_reference(
    database: "Database", known: KnownReference, side: Side | None, who: str, why: str, stamp: Stamp
) -> bool:
    """Write the choice down for everybody of the name; False where it holds already. Raises StoreError."""
    value = None if side is None else side.value
    written = [
        database.corrections.correct(Change(Target(Subject.ATHLETE, row), FIELD, value, who, why, *stamp))
        for row in known.rows
    ]
    return any(each is not None for each in written)


def _choices(history: History) -> list[Chosen]:
    return [Chosen(each, history.holds(each)) for each in history.corrections if each.change.field == FIELD]
