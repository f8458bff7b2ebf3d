"""What is asked of the record: plain values, in few statements."""

from collections.abc import Callable
from datetime import datetime
from typing import Any

from sqlalchemy import Select, exists, func, select

from app.domain.corrected import corrected_bout
from app.domain.corrections import history
from app.domain.errors import StoreError
from app.domain.fold import Closing, fold_run
from app.domain.records import BoutPrescribed, BoutRecord, Fact, RunHeader, RunSummary
from app.store.conversions import as_header, as_prescribed, as_summary
from app.store.correction_rows import corrections_about
from app.store.drawing import all_facts, run_as_corrected
from app.store.exchange_rows import ImportedRow
from app.store.groups import OF_A_GROUP
from app.store.link import Link
from app.store.rows import (
    AthleteRow,
    PlanRow,
    PrescribedBoutRow,
    PrescriptionRow,
    RunCourseRow,
    RunRow,
)

_Query = Select[*tuple[Any, ...]]
_Narrow = Callable[[_Query], _Query]
_IMPORTED = exists().where(ImportedRow.run_id == RunRow.id)


class Queries:
    """Reads a database. Every method raises StoreError when it cannot be read."""

    def __init__(self, link: Link) -> None:
        self._link = link

    def run_summaries(
        self, since: datetime | None = None, until: datetime | None = None, athlete: str | None = None
    ) -> tuple[RunSummary, ...]:
        """The runs that began, oldest first: from `since` on, before `until`, of one athlete.

        `reps_done` counts every attempt, `reps_met` the one at each bout that stands, see `fold.standing`.
        """
        query = _summaries(lambda runs: _narrowed(runs, since, until, athlete))
        with self._link.reading() as connection:
            return tuple(map(as_summary, connection.execute(query).mappings()))

    def bouts_of(self, run_id: str) -> tuple[tuple[BoutPrescribed, BoutRecord | None], ...]:
        """Every bout of a run in order with its record as corrected.

        Once an attempt, with None where it was not begun.
        """
        asked = (
            select(PrescribedBoutRow.__table__)
            .join(RunRow, RunRow.prescription_hash == PrescribedBoutRow.prescription_hash)
            .where(RunRow.id == run_id)
            .order_by(PrescribedBoutRow.bout)
        )
        with self._link.reading() as connection:
            prescribed = [as_prescribed(found) for found in connection.execute(asked).mappings()]
            known = history(corrections_about(connection, self._link.path, run_id))
            facts = all_facts(connection, self._link.path, run_id)
        attempts: dict[int, list[BoutRecord]] = {}
        for written in fold_run(facts):
            record = corrected_bout(run_id, written, known)
            attempts.setdefault(record.bout, []).append(record)
        return tuple((bout, record) for bout in prescribed for record in attempts.get(bout.bout, [None]))

    def facts_of(self, run_id: str) -> tuple[Fact, ...]:
        """Everything that was written down of a run, in order; its number is its place, from 0."""
        with self._link.reading() as connection:
            return all_facts(connection, self._link.path, run_id)

    def closing_of(self, run_id: str) -> Closing:
        """How a run ended and was rated, as corrected; all of it unknown when there is no such run."""
        with self._link.reading() as connection:
            run = run_as_corrected(connection, self._link.path, run_id)
        return Closing() if run is None else run.closing

    def header_of(self, run_id: str) -> RunHeader:
        """Who carries out which plan, as corrected. Raises StoreError when there is no such run."""
        with self._link.reading() as connection:
            found = connection.execute(_headers().where(RunRow.id == run_id)).mappings().first()
        if found is None:
            raise StoreError(f"There is no run {run_id} in {self._link.path}.")
        return as_header(found)

    def unfinished_runs(self) -> tuple[RunHeader, ...]:
        """The runs that were led alone, began and have no end, the latest first."""
        query = (
            _headers()
            .where(RunCourseRow.run_id.is_not(None), RunCourseRow.outcome.is_(None), ~_IMPORTED, ~OF_A_GROUP)
            .order_by(RunCourseRow.started_at.desc(), RunRow.id.desc())
        )
        with self._link.reading() as connection:
            return tuple(map(as_header, connection.execute(query).mappings()))

    def athletes(self) -> tuple[str, ...]:
        """The names of all who have a run that began, in the order of the alphabet."""
        runs = exists().where(RunCourseRow.athlete_id == AthleteRow.id)
        query = select(AthleteRow.name).distinct().where(runs)
        with self._link.reading() as connection:
            return tuple(
                sorted(connection.execute(query).scalars(), key=lambda name: (name.casefold(), name))
            )

    def run_ids(self) -> frozenset[str]:
        """The names of all runs, begun or not."""
        with self._link.reading() as connection:
            return frozenset(connection.execute(select(RunRow.id)).scalars())

    def holds_real_runs(self) -> bool:
        """Whether any run was not invented."""
        with self._link.reading() as connection:
            return bool(connection.execute(select(exists().where(~RunRow.invented))).scalar_one())


def _headers() -> _Query:
    return (
        select(
            RunRow.id.label("run_id"),
            AthleteRow.name.label("athlete"),
            PlanRow.title.label("plan_title"),
            PlanRow.text.label("plan_text"),
            func.coalesce(RunCourseRow.started_at, RunRow.started_at).label("started_at"),
            func.coalesce(RunCourseRow.zone, RunRow.zone).label("zone"),
            RunRow.invented,
        )
        .outerjoin(RunCourseRow, RunCourseRow.run_id == RunRow.id)
        .join(AthleteRow, AthleteRow.id == func.coalesce(RunCourseRow.athlete_id, RunRow.athlete_id))
        .join(PlanRow, PlanRow.hash == RunRow.plan_hash)
    )


def _narrowed(runs: _Query, since: datetime | None, until: datetime | None, athlete: str | None) -> _Query:
    if since is not None:
        runs = runs.where(RunCourseRow.started_at >= since)
    if until is not None:
        runs = runs.where(RunCourseRow.started_at < until)
    if athlete is not None:
        runs = runs.where(
            RunCourseRow.athlete_id.in_(select(AthleteRow.id).where(AthleteRow.name == athlete))
        )
    return runs


def _summaries(narrow: _Narrow) -> _Query:
    return narrow(
        select(
            RunRow.id.label("run_id"),
            AthleteRow.name.label("athlete"),
            PlanRow.title.label("plan_title"),
            RunCourseRow.started_at,
            RunCourseRow.zone,
            RunRow.invented,
            RunCourseRow.outcome,
            RunCourseRow.elapsed_ms,
            PrescriptionRow.low.label("reps_prescribed"),
            func.coalesce(RunCourseRow.reps_met, 0).label("reps_met"),
            func.coalesce(RunCourseRow.reps_done, 0).label("reps_done"),
            RunCourseRow.session_rpe,
            RunCourseRow.pain,
            RunCourseRow.corrected,
            _IMPORTED.label("imported"),
        )
        .join(RunCourseRow, RunCourseRow.run_id == RunRow.id)
        .join(AthleteRow, AthleteRow.id == RunCourseRow.athlete_id)
        .join(PlanRow, PlanRow.hash == RunRow.plan_hash)
        .join(PrescriptionRow, PrescriptionRow.hash == RunRow.prescription_hash)
        .order_by(RunCourseRow.started_at, RunRow.id)
    )
