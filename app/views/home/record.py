"""What the first page asks of the record and writes into it; for the database's thread."""

from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from app.domain.errors import PacewrightError
from app.domain.keeping import Rating, RatingKind
from app.domain.planned import DoneRun, DueState, occurrences, settle
from app.domain.records import RunEnded, SessionRated
from app.domain.squad import LastTrained, OwedKind, OwedRating
from app.views.home.owed_card import LateAnswer
from app.views.home.plans import Today

if TYPE_CHECKING:
    from app.store.database import Database

RPE_AFTER = timedelta(minutes=30)
"""So long after a session it is asked how hard it was (Foster 2001, J Strength Cond Res 15:109)."""
_MS = timedelta(milliseconds=1)


@dataclass(frozen=True, slots=True)
class HomeRecord:
    """What the record says to the first page: who trained when, today's sessions, and what is owed."""

    trained: tuple[LastTrained, ...]
    today: tuple[Today, ...]
    owed: tuple[OwedRating, ...]


def read_home(database: "Database", now: datetime, here: datetime) -> HomeRecord:
    """Read what the first page shows; `here` is the moment `now` by the clock on the wall."""
    reviewing = database.reviewing
    return HomeRecord(reviewing.last_trained(), _today(database, now, here), reviewing.owed(now))


def due_now(
    owed: Collection[OwedRating], now: datetime, unasked: Collection[str], athlete: str
) -> tuple[OwedRating, ...]:
    """What is asked for now: session RPE from 30 minutes after the end on; the athlete chosen comes first."""
    due = [
        each
        for each in owed
        if unasked_name(each) not in unasked
        and (each.kind is not OwedKind.SESSION_RPE or now >= each.ended_at + RPE_AFTER)
    ]
    return tuple(sorted(due, key=lambda each: each.athlete != athlete))


def unasked_name(owed: OwedRating) -> str:
    """What an answer that is owed is called in the list of what is not asked again."""
    return f"{owed.kind.value}:{owed.run_id}"


def keep_pain(
    database: "Database", answer: LateAnswer | OwedRating, name: str, at: datetime, zone: str
) -> bool:
    """Write down the pain of the morning after; of an OwedRating, that it was asked and not answered.

    Tells whether it could be kept.
    """
    if isinstance(answer, OwedRating):
        rating = Rating(name, answer.run_id, RatingKind.NEXT_MORNING_PAIN, None, at, zone)
    else:
        rating = Rating(
            name,
            answer.owed.run_id,
            RatingKind.NEXT_MORNING_PAIN,
            answer.value,
            at,
            zone,
            answer.place,
            answer.side,
        )
    try:
        database.answers.keep(rating)
    except PacewrightError:
        return False
    return True


def keep_rpe(database: "Database", answer: LateAnswer, now: datetime) -> bool:
    """Write down a late session RPE as a further fact of its run, with the lag; whether it could be kept."""
    run_id = answer.owed.run_id
    lag_ms = max((now - answer.owed.ended_at) // _MS, 0)
    try:
        facts = database.queries.facts_of(run_id)
        ended_ms = next((fact.at_ms for fact in reversed(facts) if isinstance(fact, RunEnded)), None)
        if ended_ms is None:
            return False
        database.journal.append(run_id, len(facts), (SessionRated(ended_ms + lag_ms, answer.value, lag_ms),))
    except PacewrightError:
        return False
    return True


def _today(database: "Database", now: datetime, here: datetime) -> tuple[Today, ...]:
    day = here.date()
    due = occurrences(*database.planned.of(), day, day)
    if not due:
        return ()
    runs = [
        DoneRun(
            run.run_id,
            run.athlete,
            run.plan_title,
            run.started_at,
            run.started_at.astimezone(here.tzinfo).date(),
        )
        for run in database.queries.run_summaries(since=now - timedelta(days=2))
    ]
    settled, _ = settle(due, runs, day)
    return tuple(
        Today(
            session.occurrence.planned.athlete,
            session.occurrence.planned.plan_title,
            None if (file := session.occurrence.planned.plan_file) is None else Path(file),
            session.occurrence.planned.clock,
            session.state is DueState.DONE,
        )
        for session in settled
        if session.state in (DueState.DONE, DueState.NOT_DUE)
    )
