"""All figures of a database drawn again, where some of what they were drawn from may be lost."""

from collections.abc import Sequence
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

_Rows = Sequence[dict[str, Any]]
_OF_THE_END = ("outcome", "elapsed_ms", "session_rpe", "lag_ms")


def draw_all(path: Path) -> int:
    """Draw every run again; gives the number of corrections that cannot be read and were let go.

    Figures stay where the facts that they were drawn from are lost. Raises StoreError.
    """
    link = Link(path, read_only=False, wait_s=WAIT_S)
    try:
        with link.writing() as connection:
            bad = _drop_bad_corrections(connection)
            for run_id in connection.execute(select(RunRow.id)).scalars().all():
                _draw(connection, path, run_id)
    finally:
        link.close()
    return bad


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


def _draw(connection: Connection, path: Path, run_id: str) -> None:
    records = select(BoutRecordRow.__table__).where(BoutRecordRow.run_id == run_id)
    course = select(RunCourseRow.__table__).where(RunCourseRow.run_id == run_id)
    before = [dict(row) for row in connection.execute(records).mappings()]
    ended = [dict(row) for row in connection.execute(course).mappings()]
    drawn = draw_run(connection, path, run_id)
    _keep_records(connection, drawn, before)
    _keep_course(connection, drawn, ended)


def _keep_records(connection: Connection, drawn: CorrectedRun | None, before: _Rows) -> None:
    known = set() if drawn is None else {(record.bout, record.attempt) for record in drawn.records}
    lost = [row for row in before if (row["bout"], row["attempt"]) not in known]
    if lost:
        connection.execute(insert(BoutRecordRow), lost)


def _keep_course(connection: Connection, drawn: CorrectedRun | None, before: _Rows) -> None:
    for row in before:
        if drawn is None:
            connection.execute(insert(RunCourseRow), row)
        elif drawn.closing.outcome is None and row["outcome"] is not None:
            end = {name: row[name] for name in _OF_THE_END}
            here = RunCourseRow.run_id == row["run_id"]
            connection.execute(update(RunCourseRow).where(here).values(end))
