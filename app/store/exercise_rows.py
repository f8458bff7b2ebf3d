"""The last sessions of each exercise and side of an athlete, set by set, read in one statement.

It looks at the latest sessions of a span of time and no more of them than a fixed number, so that its cost
grows neither with the span nor with the history.
"""

from collections.abc import Iterable
from datetime import date
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection

from app.domain.dose import DoseKind
from app.domain.plan import Side
from app.domain.records import BoutOutcome
from app.domain.reviewed import ExerciseDone, SetDone
from app.store.review_rows import PLACE, local, marks, span, text_of

SESSIONS_LOOKED_AT, SESSIONS_KEPT = 40, 3

_SETS = """
    WITH chosen AS (
        SELECT rc.run_id, rc.started_at, rc.zone, run.prescription_hash
        FROM run_course AS rc JOIN run ON run.id = rc.run_id
        WHERE rc.started_at BETWEEN ? AND ? AND rc.athlete_id IN ({athletes})
        ORDER BY rc.started_at DESC, rc.run_id DESC LIMIT ?
    ), asked AS (
        SELECT chosen.run_id, chosen.started_at, chosen.zone, each.*,
            dense_rank() OVER (
                PARTITION BY each.exercise, each.side ORDER BY chosen.started_at DESC, chosen.run_id DESC
            ) AS back
        FROM chosen JOIN prescribed_bout AS each ON each.prescription_hash = chosen.prescription_hash
    ), attempts AS (
        SELECT asked.exercise, asked.side, asked.run_id, asked.started_at, asked.zone, asked.dose, asked.bout,
            asked.low, asked.high, coalesce(bout_record.load_kg, asked.load_kg) AS load_kg,
            outcome, coalesce(reps_stated, reps_counted) AS done,
            reps_stated IS NULL AND NOT reps_counted AND NOT reps_missed AS uncounted,
            {place} AS place
        FROM asked LEFT JOIN bout_record
            ON bout_record.run_id = asked.run_id AND bout_record.bout = asked.bout
        WHERE asked.back <= ?
    )
    SELECT * FROM attempts WHERE place = 1 ORDER BY exercise, side, started_at DESC, run_id DESC, bout
"""


def last_exercises(
    connection: Connection, first: date, last: date, athletes: Iterable[bytes]
) -> tuple[ExerciseDone, ...]:
    """The last three sessions of each exercise and side of these rows of people, the latest first.

    Of the last 40 sessions between two local days, both included; by the names of the exercises.
    """
    ids = tuple(athletes)
    query = _SETS.format(athletes=marks(len(ids)), place=PLACE.format(run="asked.run_id", bout="asked.bout"))
    values = (*span(first, last), *ids, SESSIONS_LOOKED_AT, SESSIONS_KEPT)
    found: dict[tuple[Any, ...], list[SetDone]] = {}
    for row in connection.exec_driver_sql(query, values):
        exercise, side, run, at, zone, dose, _bout, *what = tuple(row)[:-1]
        found.setdefault((run, at, zone, exercise, side, dose), []).append(_set(*what))
    sessions = (_session(key, sets) for key, sets in found.items())
    return tuple(each for each in sessions if first <= each.day <= last)


def _session(key: tuple[Any, ...], sets: Iterable[SetDone]) -> ExerciseDone:
    run, at, zone, exercise, side, dose = key
    kind = None if dose is None else DoseKind(dose)
    return ExerciseDone(text_of(run), local(at, zone).date(), exercise, Side(side), kind, tuple(sets))


def _set(
    low: int, high: int, load: str | None, outcome: str | None, done: int | None, uncounted: int | None
) -> SetDone:
    unknown = bool(uncounted) and outcome != BoutOutcome.SKIPPED
    return SetDone(low, high, None if unknown else done, None if load is None else Decimal(load))
