"""All figures of a database drawn again, where some of what they were drawn from may be lost."""

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, delete, insert, select, update

from app.domain.corrected import CorrectedRun
from app.store.correction_rows import as_correction
from app.store.drawing import draw_run
from app.store.later_rows import CorrectionRow
from app.store.link import Link
from app.store.looking import WAIT_S
from app.store.rows import BoutRecordRow, RunCourseRow, RunRow
from app.store.sums import sum_up

_Rows = Sequence[dict[str, Any]]
_OF_THE_END = ("outcome", "elapsed_ms", "session_rpe", "lag_ms")


@dataclass(frozen=True, slots=True)
class Redrawn:
    """How drawing again went: so many corrections cannot be read and were let go.

    Of the runs in `beyond` figures stayed that their facts do not give any more.
    """

    bad_corrections: int
    beyond: tuple[str, ...]


def draw_all(path: Path) -> Redrawn:
    """Draw every run again; figures stay where the facts they were drawn from are lost. Raises StoreError."""
    link = Link(path, read_only=False, wait_s=WAIT_S)
    try:
        with link.writing() as connection:
            bad = _drop_bad_corrections(connection)
            runs = (
                connection.execute(select(RunRow.id).order_by(RunRow.started_at, RunRow.id)).scalars().all()
            )
            beyond = tuple(run_id for run_id in runs if draw_again(connection, path, run_id))
    finally:
        link.close()
    return Redrawn(bad, beyond)


def _drop_bad_corrections(connection: Connection) -> int:
    bad = []
    for row in connection.execute(select(CorrectionRow.__table__)).mappings():
        try:
            as_correction(row)
        except (ValueError, TypeError):
            bad.append(row["id"])
    for name in bad:
        connection.execute(delete(CorrectionRow).where(CorrectionRow.id == name))
    return len(bad)


def draw_again(connection: Connection, path: Path, run_id: str) -> bool:
    """Draw a run; whether figures stayed that its facts do not give."""
    records = select(BoutRecordRow.__table__).where(BoutRecordRow.run_id == run_id)
    course = select(RunCourseRow.__table__).where(RunCourseRow.run_id == run_id)
    before = [dict(row) for row in connection.execute(records).mappings()]
    ended = [dict(row) for row in connection.execute(course).mappings()]
    drawn = draw_run(connection, path, run_id)
    of_bouts, of_end = _keep_records(connection, drawn, before), _keep_course(connection, drawn, ended)
    sum_up(connection, run_id)
    return of_bouts or of_end


def _keep_records(connection: Connection, drawn: CorrectedRun | None, before: _Rows) -> bool:
    known = set() if drawn is None else {(record.bout, record.attempt) for record in drawn.records}
    lost = [row for row in before if (row["bout"], row["attempt"]) not in known]
    if lost:
        connection.execute(insert(BoutRecordRow), lost)
    return bool(lost)


def _keep_course(connection: Connection, drawn: CorrectedRun | None, before: _Rows) -> bool:
    for row in before:
        if drawn is None:
            connection.execute(insert(RunCourseRow), row)
            return True
        if drawn.closing.outcome is None and row["outcome"] is not None:
            end = {name: row[name] for name in _OF_THE_END}
            here = RunCourseRow.run_id == row["run_id"]
            connection.execute(update(RunCourseRow).where(here).values(end))
            return True
    return False
