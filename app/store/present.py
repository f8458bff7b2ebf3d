"""What holds at present: the value of one field of one thing, with the corrections it has had."""

from pathlib import Path

from sqlalchemy import Connection, select

from app.domain.correctable import Subject, Value, as_value
from app.domain.corrected import CorrectedRun
from app.domain.corrections import Target, history
from app.domain.errors import StoreError
from app.store.correction_rows import corrections_about
from app.store.drawing import run_as_corrected
from app.store.later_rows import NoteRow, RatingRow, ReadinessRow, ResultRow
from app.store.rows import AthleteRow, Row

ROWS: dict[Subject, type[Row]] = {
    Subject.READINESS: ReadinessRow,
    Subject.RATING: RatingRow,
    Subject.RESULT: ResultRow,
    Subject.NOTE: NoteRow,
    Subject.ATHLETE: AthleteRow,
}
"""Where things stand that are no part of a run."""


def value_held(connection: Connection, path: Path, target: Target, field: str) -> Value:
    """The value that a field has today, an athlete named by their row.

    Raises StoreError when there is no such thing.
    """
    if target.subject in ROWS:
        return _value_in_row(connection, path, target, field)
    run = run_as_corrected(connection, path, target.of)
    if run is None:
        raise _not_there(target)
    return as_value(getattr(_part(run, target, field), field))


def _value_in_row(connection: Connection, path: Path, target: Target, field: str) -> Value:
    table = ROWS[target.subject].__table__
    found = connection.execute(select(table).where(table.c.id == target.of)).mappings().first()
    if found is None:
        raise _not_there(target)
    known = history(corrections_about(connection, path, target.of)).holding
    return known[target, field].after if (target, field) in known else as_value(found[field])


def _part(run: CorrectedRun, target: Target, field: str) -> object:
    if target.subject is Subject.RUN:
        return run.begun if hasattr(run.begun, field) else run.closing
    records = [each for each in run.records if (each.bout, each.attempt) == (target.bout, target.attempt)]
    if not records:
        raise _not_there(target)
    if target.subject is Subject.BOUT:
        return records[0]
    reps = [each for each in records[0].reps if (each.rep, each.side) == (target.rep, target.side)]
    if not reps:
        raise _not_there(target)
    return reps[0]


def _not_there(target: Target) -> StoreError:
    return StoreError(
        f"The {target.subject} to be corrected is not in the record any more. Open the list anew."
    )
