"""Reads the chosen rows of a record, table by table, as they are handed on."""

from base64 import b64encode
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, RowMapping, func, select

from app.domain.correctable import Subject
from app.domain.errors import PackError
from app.domain.fact_rows import fact_row
from app.domain.table import Table
from app.domain.tables_beside_runs import CORRECTIONS, DEVICES, NOTES, RATINGS, READINESS, RESULTS
from app.domain.tables_of_groups import GROUP_MEMBERS, GROUP_SESSIONS
from app.domain.tables_of_planning import PLANNED, PLANNED_CHANGES
from app.domain.tables_of_runs import ATHLETES, BRANCHES, FACTS, PLANS, PRESCRIBED, RUNS
from app.domain.values import Row
from app.store.chosen import Choice
from app.store.correction_rows import NAMES_AN_ATHLETE, as_correction
from app.store.drawing import all_facts
from app.store.exchange_rows import BranchRow, ImportedRow
from app.store.later_rows import CorrectionRow, RatingRow
from app.store.plain import HELD, LEFT_OUT, is_stand_in, plain_row
from app.store.rows import RunCourseRow, RunRow

_NAMES_OF_PEOPLE = {(Subject.ATHLETE.value, "name"), (Subject.ATHLETE.value, "short_name")}


@dataclass(frozen=True, slots=True)
class _Run:
    """A chosen run, and of whom it is as it was written down and as corrected."""

    id: str
    plan: bytes
    prescription: bytes
    athletes: frozenset[str]


class HandingOn:
    """The chosen rows of a record, read within one transaction; with `names` or without those of people."""

    def __init__(self, connection: Connection, path: Path, choice: Choice, *, names: bool = True) -> None:
        self._connection, self._path = connection, path
        self._choice, self._names = choice, names
        self._runs = {run.id: run for run in self._chosen_runs()}
        self._beside = {
            table.name: [row for row in self._stored(table) if self._is_chosen(table, row)]
            for table in (READINESS, RATINGS, RESULTS, NOTES, PLANNED, PLANNED_CHANGES, GROUP_MEMBERS)
        }
        self._corrections = self._chosen_corrections()

    @property
    def run_ids(self) -> tuple[str, ...]:
        """The names of the chosen runs in order."""
        return tuple(sorted(self._runs))

    def rows(self, table: Table) -> Iterator[Row]:
        """The chosen rows of a table, in the order of its key.

        Raises PackError at one that nobody could take in.
        """
        return (_checked(table, row) for row in self._read(table))

    def _read(self, table: Table) -> Iterable[Row]:
        if table is FACTS:
            return self._facts()
        if table is BRANCHES:
            return self._branches()
        rows = map(self._without_names, self._rows(table))
        return sorted(rows, key=table.key_of)

    def _rows(self, table: Table) -> Iterable[Row]:
        if table is RUNS:
            imported = set(self._connection.execute(select(ImportedRow.run_id)).scalars())
            stored = (row for row in self._stored(RUNS) if row["id"] in self._runs)
            return ({**plain_row(RUNS, row), "imported": row["id"] in imported} for row in stored)
        return (plain_row(table, row) for row in self._needed(table))

    def _needed(self, table: Table) -> Iterable[RowMapping]:
        """The rows of a table that the chosen runs and answers name, or that were chosen themselves."""
        if table.name in self._beside:
            return self._beside[table.name]
        if table is CORRECTIONS:
            return self._corrections
        named: dict[str, tuple[str, set[Any]]] = {
            ATHLETES.name: ("id", self._people()),
            PLANS.name: ("hash", {run.plan for run in self._runs.values()}),
            PRESCRIBED.name: ("prescription_hash", {run.prescription for run in self._runs.values()}),
            GROUP_SESSIONS.name: ("id", {row["group_id"] for row in self._beside[GROUP_MEMBERS.name]}),
            DEVICES.name: ("id", {row["device_id"] for row in self._beside[RESULTS.name]}),
        }
        column, wanted = named[table.name]
        return (row for row in self._stored(table) if row[column] in wanted)

    def _stored(self, table: Table) -> Iterable[RowMapping]:
        return self._connection.execute(select(HELD[table.name].__table__)).mappings()

    def _facts(self) -> Iterator[Row]:
        for run_id in self.run_ids:
            for number, fact in enumerate(all_facts(self._connection, self._path, run_id)):
                yield {"run": run_id, "number": number, **fact_row(fact)}

    def _branches(self) -> Iterator[Row]:
        query = select(BranchRow.run_id, BranchRow.hash, BranchRow.body).order_by(
            BranchRow.run_id, BranchRow.hash
        )
        for run_id, name, body in self._connection.execute(query):
            if run_id in self._runs:
                yield {"run": run_id, "hash": name.hex(), "facts": b64encode(body).decode()}

    def _chosen_runs(self) -> Iterator[_Run]:
        """Runs of the chosen that began on a chosen day, or of which something was said since."""
        said = self._last_said()
        query = select(
            RunRow.id,
            RunRow.plan_hash,
            RunRow.prescription_hash,
            RunRow.athlete_id,
            func.coalesce(RunCourseRow.athlete_id, RunRow.athlete_id),
            func.coalesce(RunCourseRow.started_at, RunRow.started_at),
            func.coalesce(RunCourseRow.zone, RunRow.zone),
        ).outerjoin(RunCourseRow, RunCourseRow.run_id == RunRow.id)
        for name, plan, prescription, written, whose, began, zone in self._connection.execute(query):
            moments = [began] if self._choice.until is not None else [began, *said.get(name, ())]
            if self._choice.of(whose) and any(self._choice.when(at, zone) for at in moments):
                yield _Run(name, plan, prescription, frozenset({written, whose}))

    def _last_said(self) -> dict[str, list[datetime]]:
        """When something was last said of each run."""
        found: dict[str, list[datetime]] = {}
        for column, at in ((CorrectionRow.subject_id, CorrectionRow.at), (RatingRow.run_id, RatingRow.at)):
            for name, moment in self._connection.execute(select(column, func.max(at)).group_by(column)):
                found.setdefault(name, []).append(moment)
        return found

    def _is_chosen(self, table: Table, row: RowMapping) -> bool:
        """What belongs to a run goes with it; else it goes by whose and of when it is; plans by whose.

        A member of a group goes by both, because who was absent has no run.
        """
        if table in (PLANNED, PLANNED_CHANGES):
            return self._choice.of(row["athlete_id"])
        if row.get("run_id") in self._runs:
            return True
        if table is RATINGS or (row.get("run_id") is not None and table is not GROUP_MEMBERS):
            return False
        return self._choice.of(row["athlete_id"]) and self._choice.when(row["at"], row["zone"])

    def _chosen_corrections(self) -> list[RowMapping]:
        subjects = set(self._runs) | {row["id"] for rows in self._beside.values() for row in rows}
        return [
            row
            for row in self._stored(CORRECTIONS)
            if row["subject_id"] in subjects or self._is_of_a_person_chosen(row)
        ]

    def _is_of_a_person_chosen(self, correction: RowMapping) -> bool:
        if correction["subject"] != Subject.ATHLETE or not self._choice.of(correction["subject_id"]):
            return False
        return self._names or (correction["subject"], correction["field"]) not in _NAMES_OF_PEOPLE

    def _people(self) -> set[str]:
        """Whoever a chosen row names, by the names of their rows."""
        people = {athlete for run in self._runs.values() for athlete in run.athletes}
        people |= {row["athlete_id"] for rows in self._beside.values() for row in rows if "athlete_id" in row}
        for row in self._corrections:
            if row["subject"] == Subject.ATHLETE:
                people.add(row["subject_id"])
            if (row["subject"], row["field"]) == NAMES_AN_ATHLETE:
                correction = as_correction(row)
                people |= {str(value) for value in (correction.before, correction.after) if value is not None}
        return people

    def _without_names(self, row: Row) -> Row:
        """A row of the people without what must not be said of them; every row where no name is wanted."""
        changed: dict[str, Any] = {}
        if "consent_on" in row:
            hidden = not self._names or not self._choice.of(str(row["id"]))
            if hidden or is_stand_in(str(row["name"])):
                changed["name"] = None
            if hidden:
                changed["short_name"] = None
            if not self._choice.of(str(row["id"])):
                changed |= {"consent_on": None, "consent_scope": None, "reference_side": None}
        if "who" in row and not self._names:
            changed["who"] = LEFT_OUT
        return {**row, **changed}


def _checked(table: Table, row: Row) -> Row:
    try:
        return table.check(row)
    except ValueError as error:
        raise PackError(
            f"The record has something in {table.name} that cannot be handed on: {error}. "
            "`pacewright verify` says what is wrong with it."
        ) from error
