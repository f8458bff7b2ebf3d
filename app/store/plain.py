"""Between the rows of the database and plain rows: which table holds which, and how each value is written."""

import re
from datetime import date, datetime
from typing import Any

from sqlalchemy import RowMapping

from app.domain.table import Table
from app.domain.tables_beside_runs import CORRECTIONS, DEVICES, NOTES, RATINGS, READINESS, RESULTS
from app.domain.tables_of_groups import GROUP_MEMBERS, GROUP_SESSIONS
from app.domain.tables_of_planning import PLANNED, PLANNED_CHANGES
from app.domain.tables_of_runs import ATHLETES, PLANS, PRESCRIBED, RUNS
from app.domain.values import Day, Digest, Moment, Plain, Row, day_of, moment_of, moment_text
from app.store.group_rows import GroupMemberRow, GroupSessionRow
from app.store.later_rows import CorrectionRow, DeviceRow, NoteRow, RatingRow, ReadinessRow, ResultRow
from app.store.planned_rows import PlannedChangeRow, PlannedRow
from app.store.rows import AthleteRow, PlanRow, PrescribedBoutRow, RunRow
from app.store.rows import Row as StoredRow

LEFT_OUT = "left out"
"""Stands for the name of somebody who wrote something, in a pack without names."""

HELD: dict[str, type[StoredRow]] = {
    ATHLETES.name: AthleteRow,
    PLANS.name: PlanRow,
    PRESCRIBED.name: PrescribedBoutRow,
    RUNS.name: RunRow,
    DEVICES.name: DeviceRow,
    READINESS.name: ReadinessRow,
    RATINGS.name: RatingRow,
    RESULTS.name: ResultRow,
    NOTES.name: NoteRow,
    PLANNED.name: PlannedRow,
    PLANNED_CHANGES.name: PlannedChangeRow,
    GROUP_SESSIONS.name: GroupSessionRow,
    GROUP_MEMBERS.name: GroupMemberRow,
    CORRECTIONS.name: CorrectionRow,
}
"""The rows that stand as they are in a table of the database."""

_STORED_AS = {
    "athlete": "athlete_id",
    "run": "run_id",
    "device": "device_id",
    "plan": "plan_hash",
    "prescription": "prescription_hash",
    "planned": "planned_id",
    "group": "group_id",
}
_DRAWN_ELSEWHERE = {(RUNS.name, "imported")}
_STAND_IN = re.compile(r"Athlete [0-9a-f]{6}")


def plain_row(table: Table, stored: RowMapping) -> Row:
    """A row of the database as a plain row, without what another table says."""
    return {
        name: _plain(stored[_STORED_AS.get(name, name)])
        for name in table.column_names
        if (table.name, name) not in _DRAWN_ELSEWHERE
    }


def stored_columns(table: Table, row: Row) -> dict[str, Any]:
    """A plain row as columns of the database, without what another table says."""
    return {
        _STORED_AS.get(column.name, column.name): _stored(column.kind, row[column.name])
        for column in table.columns
        if (table.name, column.name) not in _DRAWN_ELSEWHERE
    }


def stand_in(athlete_id: str) -> str:
    """What an athlete is called whose name is not known here."""
    return f"Athlete {athlete_id[-6:]}"


def is_stand_in(name: str) -> bool:
    """Whether a name says only that it is not known."""
    return _STAND_IN.fullmatch(name) is not None


def _plain(value: object) -> Plain:
    if isinstance(value, datetime):
        return moment_text(value)
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, bytes):
        return value.hex()
    return value  # type: ignore[return-value]


def _stored(kind: object, value: Plain) -> object:
    if not isinstance(value, str):
        return value
    match kind:
        case Moment():
            return moment_of(value)
        case Day():
            return day_of(value)
        case Digest():
            return bytes.fromhex(value)
        case _:
            return value
