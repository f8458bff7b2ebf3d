"""Figures drawn from what was written: the rows of `bout_record` and `run_course` of a run, made anew."""

from collections.abc import Iterable
from contextlib import suppress
from dataclasses import replace
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, delete, exists, insert, or_, select

from app.domain.corrected import Begun, CorrectedRun, corrected_run
from app.domain.corrections import history
from app.domain.errors import StoreError
from app.domain.fold import fold_closing, fold_run
from app.domain.records import BoutPrescribed, Fact
from app.store.conversions import as_prescribed, course_columns, record_columns
from app.store.correction_rows import corrections_about
from app.store.facts import folded_facts, loose_facts
from app.store.people import is_there
from app.store.rows import BoutRecordRow, FactRow, FoldRow, PrescribedBoutRow, RunCourseRow, RunRow
from app.store.sums import sum_up
from app.store.tolerance import tolerance_of


def draw_run(connection: Connection, path: Path, run_id: str) -> CorrectedRun | None:
    """Draw a run anew from all its facts and corrections; None, and nothing drawn, when it never began.

    Athletes are named by their rows. Raises StoreError, with nothing changed, when what was written cannot be
    read.
    """
    run = run_as_corrected(connection, path, run_id)
    asked = asked_of(connection, run_id)
    connection.execute(delete(BoutRecordRow).where(BoutRecordRow.run_id == run_id))
    connection.execute(delete(RunCourseRow).where(RunCourseRow.run_id == run_id))
    if run is None:
        return None
    tolerance = tolerance_of(connection)
    records = [
        {"run_id": run_id, **record_columns(record, asked.get(record.bout), tolerance)}
        for record in run.records
    ]
    if records:
        connection.execute(insert(BoutRecordRow), records)
    connection.execute(insert(RunCourseRow), _course(run_id, run))
    sum_up(connection, run_id)
    return run


def asked_of(connection: Connection, run_id: str) -> dict[int, BoutPrescribed]:
    """What the bouts of a run ask for, by their numbers."""
    query = (
        select(PrescribedBoutRow.__table__)
        .join(RunRow, RunRow.prescription_hash == PrescribedBoutRow.prescription_hash)
        .where(RunRow.id == run_id)
    )
    return {row["bout"]: as_prescribed(row) for row in connection.execute(query).mappings()}


def runs_with_facts(connection: Connection) -> tuple[str, ...]:
    """The runs of which facts are there, the earliest first."""
    facts = [exists().where(table.run_id == RunRow.id) for table in (FoldRow, FactRow)]
    query = select(RunRow.id).where(or_(*facts)).order_by(RunRow.started_at, RunRow.id)
    return tuple(connection.execute(query).scalars())


def draw_unsummed(connection: Connection, path: Path) -> None:
    """Draw those runs whose sums were never drawn; one that has lost its facts keeps what it has."""
    query = select(RunCourseRow.run_id).where(RunCourseRow.reps_done.is_(None))
    for run_id in connection.execute(query).scalars().all():
        facts = [exists().where(table.run_id == run_id) for table in (FoldRow, FactRow)]
        if connection.execute(select(or_(*facts))).scalar_one():
            with suppress(StoreError):
                draw_run(connection, path, run_id)
        else:
            sum_up(connection, run_id)


def run_as_corrected(connection: Connection, path: Path, run_id: str) -> CorrectedRun | None:
    """A run as it stands today, its athlete named by their row; None when there is none or it never began."""
    begun = begun_of(connection, run_id)
    facts = all_facts(connection, path, run_id)
    if begun is None or not facts:
        return None
    known = history(corrections_about(connection, path, run_id))
    run = corrected_run(run_id, begun, fold_run(facts), fold_closing(facts), known)
    if run.begun.athlete != begun.athlete and not is_there(connection, run.begun.athlete):
        # A correction may name an athlete whose row has not come yet, or is gone.
        return replace(run, begun=replace(run.begun, athlete=begun.athlete))
    return run


def begun_of(connection: Connection, run_id: str) -> Begun | None:
    """Of whom and of when a run was written down, the athlete named by their row."""
    query = select(RunRow.athlete_id, RunRow.started_at, RunRow.zone).where(RunRow.id == run_id)
    found = connection.execute(query).first()
    return None if found is None else Begun(*found)


def begun_columns(begun: Begun) -> dict[str, Any]:
    """Of whom and of when, as columns of `run_course`."""
    return {"athlete_id": begun.athlete, "started_at": begun.started_at, "zone": begun.zone}


def all_facts(connection: Connection, path: Path, run_id: str) -> tuple[Fact, ...]:
    """Everything that happened in a run, in order. Raises StoreError when it cannot be read."""
    folded, loose = folded_facts(connection, path, run_id), loose_facts(connection, path, run_id)
    return tuple(fact for _, fact in (*folded, *loose))


def _course(run_id: str, run: CorrectedRun) -> dict[str, Any]:
    return {
        "run_id": run_id,
        **begun_columns(run.begun),
        **course_columns(run.closing),
        "corrected": figures_text(run.figures),
    }


def figures_text(figures: Iterable[str]) -> str | None:
    """The names of corrected figures in one text, None for none."""
    return ",".join(sorted(figures)) or None
