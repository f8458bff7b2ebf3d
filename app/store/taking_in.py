"""Puts what came from outside into the record: once, in whatever order it comes, the record is the same.

What is there already stays. A run of which more is known is completed; where it was led on in two places, the
course with the most facts stands and the other is kept beside it. Corrections are added, and what follows
from them is drawn anew. What a row without names does not say is added to it by the same row with names.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, insert, select, update

from app.domain.correctable import Subject
from app.domain.corrections import Conflict, history
from app.domain.errors import PackError
from app.domain.table import Table
from app.domain.tables_beside_runs import CORRECTIONS, DEVICES, NOTES, RATINGS, READINESS, RESULTS
from app.domain.tables_of_groups import GROUP_MEMBERS, GROUP_SESSIONS
from app.domain.tables_of_planning import PLANNED, PLANNED_CHANGES
from app.domain.tables_of_runs import ATHLETES, PLANS, RUNS
from app.domain.values import Row
from app.store.arrivals import leave_out_erased
from app.store.conversions import prescription_columns
from app.store.correction_rows import corrections_about, with_names
from app.store.corrections import draw_subject
from app.store.exchange_rows import ErasedRow, ImportedRow
from app.store.intake import Incoming
from app.store.link import Link
from app.store.plain import HELD, LEFT_OUT, is_stand_in, stand_in, stored_columns
from app.store.rows import AthleteRow, PrescribedBoutRow, PrescriptionRow
from app.store.taking_courses import take_courses

_BESIDE = (
    DEVICES,
    READINESS,
    RATINGS,
    RESULTS,
    NOTES,
    PLANNED,
    PLANNED_CHANGES,
    GROUP_SESSIONS,
    GROUP_MEMBERS,
    CORRECTIONS,
)
_OF_A_PERSON = ("short_name", "consent_on", "consent_scope", "reference_side")


@dataclass(frozen=True, slots=True)
class Taken:
    """What came of it: how many runs were new, were completed, were there as they are, belong to the erased.

    `parted` of them were led on in two places. `beside` counts new rows beside the runs. `namesakes` are the
    names that more than one athlete has now, `conflicts` the corrections that know nothing of each other.
    """

    new: int = 0
    completed: int = 0
    known: int = 0
    erased: int = 0
    parted: int = 0
    beside: int = 0
    namesakes: tuple[str, ...] = ()
    conflicts: tuple[Conflict, ...] = ()


def take_in(link: Link, incoming: Incoming) -> Taken:
    """Put all of it into the record, or, when this raises, nothing.

    Raises PackError where a row says something else than the row of that name here, StoreError.
    """
    with link.writing() as connection:
        return put_in(connection, link.path, incoming)


def put_in(connection: Connection, path: Path, incoming: Incoming) -> Taken:
    """The same, within a transaction that writes."""
    marks = frozenset(connection.execute(select(ErasedRow.hash)).scalars())
    erased = leave_out_erased(incoming, marks)
    _take_people(connection, incoming)
    _take_plans(connection, incoming)
    _take_prescriptions(connection, incoming)
    new_runs = _take_runs(connection, incoming)
    beside = sum(_take_beside(connection, table, incoming) for table in _BESIDE)
    changed, parted = take_courses(connection, path, incoming.courses)
    _draw(connection, path, incoming, changed)
    runs = {str(row["id"]) for row in incoming.of(RUNS)}
    return Taken(
        new=len(new_runs),
        completed=len(changed - new_runs),
        known=len(runs - new_runs - changed),
        erased=erased,
        parted=len(parted),
        beside=beside,
        namesakes=_namesakes(connection, incoming),
        conflicts=_conflicts(connection, path, incoming),
    )


def _take_people(connection: Connection, incoming: Incoming) -> None:
    """Of two names for one person the first in the order of letters is kept, so that no order matters."""
    there = _by_id(connection, ATHLETES)
    for row in incoming.of(ATHLETES):
        columns = stored_columns(ATHLETES, row)
        columns["name"] = columns["name"] or stand_in(columns["id"])
        known = there.get(columns["id"])
        if known is None:
            connection.execute(insert(AthleteRow), columns)
            continue
        joined = {name: _joined(known[name], columns[name]) for name in _OF_A_PERSON}
        joined["name"] = min(known["name"], columns["name"], key=lambda name: (is_stand_in(name), name))
        if any(known[name] != value for name, value in joined.items()):
            connection.execute(update(AthleteRow).where(AthleteRow.id == columns["id"]).values(joined))


def _joined(one: Any, other: Any) -> Any:  # noqa: ANN401 - texts and dates
    """What two rows of one person say: a value goes before none, and the lesser of two."""
    return min((value for value in (one, other) if value is not None), default=None)


def _take_plans(connection: Connection, incoming: Incoming) -> None:
    used = {row["plan"] for row in incoming.of(RUNS)}
    there = set(connection.execute(select(HELD[PLANS.name].__table__.c.hash)).scalars())
    new = [stored_columns(PLANS, row) for row in incoming.of(PLANS) if row["hash"] in used]
    _insert(connection, PLANS, [columns for columns in new if columns["hash"] not in there])


def _take_prescriptions(connection: Connection, incoming: Incoming) -> None:
    asked = incoming.prescriptions()
    there = set(connection.execute(select(PrescriptionRow.hash)).scalars())
    for name in sorted({str(row["prescription"]) for row in incoming.of(RUNS)}):
        parent, bouts = prescription_columns(asked.get(name, []))
        if parent["hash"] in there:
            continue
        connection.execute(insert(PrescriptionRow), parent)
        if bouts:
            connection.execute(insert(PrescribedBoutRow), bouts)


def _take_runs(connection: Connection, incoming: Incoming) -> set[str]:
    there = _by_id(connection, RUNS)
    imported = set(connection.execute(select(ImportedRow.run_id)).scalars())
    new: set[str] = set()
    for row in incoming.of(RUNS):
        columns = stored_columns(RUNS, row)
        known = there.get(columns["id"])
        if known is None:
            connection.execute(insert(HELD[RUNS.name]), columns)
            if row["imported"]:
                connection.execute(insert(ImportedRow), {"run_id": columns["id"]})
            new.add(columns["id"])
        elif known != columns or row["imported"] != (columns["id"] in imported):
            raise _says_something_else(RUNS)
    return new


def _take_beside(connection: Connection, table: Table, incoming: Incoming) -> int:
    there = _by_id(connection, table)
    rows = list(_needed(table, incoming))
    new = []
    for columns in (stored_columns(table, row) for row in rows):
        known = there.get(columns["id"])
        if known is None:
            new.append(columns)
        elif known != columns:
            _add_who(connection, table, known, columns)
    _insert(connection, table, new)
    return len(new)


def _needed(table: Table, incoming: Incoming) -> Iterable[Row]:
    if table is not DEVICES:
        return incoming.of(table)
    used = {row["device"] for row in incoming.of(RESULTS)}
    return (row for row in incoming.of(DEVICES) if row["id"] in used)


def _add_who(connection: Connection, table: Table, known: dict[str, Any], columns: dict[str, Any]) -> None:
    """Say who wrote a row that came without names before; nothing else of it may differ."""
    whos = {known.get("who"), columns.get("who")}
    if {**known, "who": None} != {**columns, "who": None} or LEFT_OUT not in whos:
        raise _says_something_else(table)
    if known["who"] == LEFT_OUT:
        rows = HELD[table.name]
        here = rows.__table__.c.id == columns["id"]
        connection.execute(update(rows).where(here).values(who=columns["who"]))


def _draw(connection: Connection, path: Path, incoming: Incoming, changed: set[str]) -> None:
    """Draw whatever new facts or corrections bear on."""
    drawn = {(Subject.RUN, run) for run in changed}
    drawn |= {(Subject.ATHLETE, str(row["id"])) for row in incoming.of(ATHLETES)}
    for correction in incoming.corrections.values():
        target = correction.change.target
        of_run = target.subject in (Subject.BOUT, Subject.REP)
        drawn.add((Subject.RUN if of_run else target.subject, target.of))
    for subject, of in sorted(drawn):
        draw_subject(connection, path, subject, of)


def _namesakes(connection: Connection, incoming: Incoming) -> tuple[str, ...]:
    here = {str(row["id"]) for row in incoming.of(ATHLETES)}
    names: dict[str, set[str]] = {}
    for row, name in connection.execute(select(AthleteRow.id, AthleteRow.name)):
        names.setdefault(name, set()).add(row)
    return tuple(sorted(name for name, rows in names.items() if len(rows) > 1 and rows & here))


def _conflicts(connection: Connection, path: Path, incoming: Incoming) -> tuple[Conflict, ...]:
    subjects = dict.fromkeys(each.change.target.of for each in incoming.corrections.values())
    found: list[Conflict] = []
    for subject in subjects:
        known = with_names(connection, corrections_about(connection, path, subject))
        found += history(known).conflicts
    return tuple(found)


def _by_id(connection: Connection, table: Table) -> dict[str, dict[str, Any]]:
    rows = connection.execute(select(HELD[table.name].__table__)).mappings()
    return {row["id"]: dict(row) for row in rows}


def _insert(connection: Connection, table: Table, columns: list[dict[str, Any]]) -> None:
    if columns:
        connection.execute(insert(HELD[table.name]), columns)


def _says_something_else(table: Table) -> PackError:
    return PackError(
        f"It says something else in {table.name} than the record here does of the same thing, so nothing was "
        "taken from it. One of the two was changed by other means than this program."
    )
