"""The answers that are owed after runs: how hard the session was, and whether it hurt the next morning."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta

from sqlalchemy import Connection

from app.domain.keeping import RatingKind
from app.domain.squad import OwedKind, OwedRating
from app.store.review_rows import local, text_of

RPE_WITHIN = timedelta(hours=48)
"""So long after a session it is asked how hard it was; later nobody remembers. Common practice, no source."""
_FAR_BACK = timedelta(days=4)
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)

_RUNS = f"""
    SELECT rc.run_id, athlete.name, plan.title, rc.started_at, rc.zone, rc.elapsed_ms, rc.session_rpe,
        EXISTS (SELECT 1 FROM rating WHERE run_id = rc.run_id AND kind = '{RatingKind.NEXT_MORNING_PAIN}')
    FROM run_course AS rc
    JOIN athlete ON athlete.id = rc.athlete_id
    JOIN run ON run.id = rc.run_id
    JOIN plan ON plan.hash = run.plan_hash
    WHERE rc.started_at BETWEEN ? AND ? AND rc.outcome = 'finished'
        AND rc.run_id NOT IN (SELECT run_id FROM imported)
    ORDER BY rc.started_at, rc.run_id
"""  # noqa: S608 - its own word


def owed_at(connection: Connection, now: datetime) -> Iterator[OwedRating]:
    """What is owed at a moment, the oldest run first.

    Of runs that were finished: the session RPE for 48 hours, and the next morning's pain on the day after by
    the clock of the place where it was done.
    """
    begin, end = ((at - _EPOCH) // timedelta(microseconds=1) for at in (now - _FAR_BACK, now))
    for run_id, name, title, at, zone, elapsed, rpe, asked in connection.exec_driver_sql(_RUNS, (begin, end)):
        began = local(at, zone)
        ended = began + timedelta(milliseconds=elapsed or 0)
        run = (text_of(run_id), name, title, began.date(), ended, zone)
        if rpe is None and ended <= now <= ended + RPE_WITHIN:
            yield OwedRating(OwedKind.SESSION_RPE, *run)
        if not asked and now.astimezone(began.tzinfo).date() == began.date() + timedelta(days=1):
            yield OwedRating(OwedKind.NEXT_MORNING_PAIN, *run)
