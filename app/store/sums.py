"""What the records of a run's bouts come to, kept with its course so that lists of runs need not add up."""

from typing import Any

from sqlalchemy import ColumnElement, Connection, and_, bindparam, case, func, select, update

from app.domain.records import BoutOutcome
from app.store.columns import UuidText
from app.store.rows import BoutRecordRow, PrescribedBoutRow, RunCourseRow, RunRow

Columns = dict[str, Any]


def sums_of(connection: Connection, run_id: str) -> Columns:
    """Columns of `run_course` drawn from the records of a run's bouts.

    `reps_done` counts every attempt; `reps_met`, up to what was asked for, and the tempo count the one at
    each bout that stands. `pain` is the highest stated. Where it is lost what a bout asked for, it counts
    nothing.
    """
    found = connection.execute(_SUMS, {"run": run_id}).mappings().one()
    return dict(found)


def sum_up(connection: Connection, run_id: str) -> None:
    """Bring the sums of a run up to its records; where it has no course yet nothing is done."""
    here = RunCourseRow.run_id == run_id
    connection.execute(update(RunCourseRow).where(here).values(sums_of(connection, run_id)))


def standing_first() -> tuple[ColumnElement[int], ...]:
    """The order of the attempts at a bout in which the one that stands comes first, as in `fold.standing`."""
    ended = BoutRecordRow.outcome.in_([BoutOutcome.DONE.value, BoutOutcome.ENDED_EARLY.value])
    done = func.coalesce(BoutRecordRow.reps_stated, BoutRecordRow.reps_counted)
    return (
        case((ended, 1), else_=0).desc(),
        case((ended, 0), else_=done).desc(),
        BoutRecordRow.attempt.desc(),
    )


def _attempts() -> Any:  # noqa: ANN401 - a subquery has no plainer type
    place = func.row_number().over(partition_by=BoutRecordRow.bout, order_by=standing_first())
    return (
        select(
            func.coalesce(BoutRecordRow.reps_stated, BoutRecordRow.reps_counted).label("done"),
            BoutRecordRow.tempo_known,
            BoutRecordRow.tempo_kept,
            BoutRecordRow.pain,
            PrescribedBoutRow.low,
            (place == 1).label("stands"),
        )
        .join(RunRow, RunRow.id == BoutRecordRow.run_id)
        .join(
            PrescribedBoutRow,
            and_(
                PrescribedBoutRow.prescription_hash == RunRow.prescription_hash,
                PrescribedBoutRow.bout == BoutRecordRow.bout,
            ),
        )
        .where(BoutRecordRow.run_id == bindparam("run", type_=UuidText))
        .subquery()
    )


def _sums() -> Any:  # noqa: ANN401
    each = _attempts()
    met = case((each.c.done < each.c.low, each.c.done), else_=each.c.low)
    return select(
        func.coalesce(func.sum(case((each.c.stands, met), else_=0)), 0).label("reps_met"),
        func.coalesce(func.sum(each.c.done), 0).label("reps_done"),
        *(
            func.coalesce(func.sum(case((each.c.stands, each.c[name]), else_=0)), 0).label(name)
            for name in ("tempo_known", "tempo_kept")
        ),
        func.max(each.c.pain).label("pain"),
    )


_SUMS = _sums()
