"""What the review asks of the record, and what it makes of the answers; all of it for the record's thread."""

from collections.abc import Callable
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING

from app.analysis.local_time import known_zone, local_start
from app.analysis.reliability import detectable_changes, trusts_of
from app.domain.compiler import compile_timeline
from app.domain.errors import PacewrightError
from app.domain.keeping import Note
from app.domain.plan import WrittenPlan
from app.domain.timeline import Timeline
from app.views.review.athlete.spans import Stretch
from app.views.review.athlete.view import AthleteView, athlete_view
from app.views.review.run.view import RunView, bout_lines, pauses_of
from app.views.review.squad.line import SquadLine, squad_lines

if TYPE_CHECKING:
    from app.store.database import Database

MARGIN = timedelta(days=1)
"""Local days reach beyond those of UTC by less than this."""
Parse = Callable[[str], WrittenPlan]
"""Reads the text of a plan; raises FileProblemsError."""


def read_squad(database: "Database", now: datetime) -> tuple[SquadLine, ...]:
    """Everybody, those who need a look first at the top. Raises StoreError."""
    members = database.reviewing.squad(now, now.date())
    return squad_lines(members, detectable_changes(trusts_of(database.reviewing.first_two_tries(now.date()))))


def read_athlete(
    database: "Database", athlete: str, stretch: Stretch, today: date, *, pain: bool
) -> AthleteView:
    """One athlete over a stretch of time. Raises StoreError."""
    since = None
    if stretch.needs_since:
        since = database.reviewing.athlete(athlete, today, today, today).since
    first, last = stretch.days(today, since)
    record = database.reviewing.athlete(athlete, first, last, today)
    notes = [held.thing for held in database.answers.notes_of(athlete)]
    begin, end = (
        datetime.combine(first, time(), UTC) - MARGIN,
        datetime.combine(last, time(), UTC) + 2 * MARGIN,
    )
    runs = database.queries.run_summaries(begin, end, athlete)
    return athlete_view(
        record,
        [note for note in notes if first <= _day(note) <= last],
        [run for run in runs if first <= local_start(run).date() <= last],
        database.answers.people(),
        pain=pain,
    )


def read_run(database: "Database", run_id: str, parse: Parse) -> RunView:
    """One run with all its bouts. Raises StoreError when there is none."""
    header = database.queries.header_of(run_id)
    bouts = database.queries.bouts_of(run_id)
    facts = database.queries.facts_of(run_id)
    notes = [held.thing for held in database.answers.notes_of(header.athlete)]
    pauses, paused_ms = pauses_of(facts)
    return RunView(
        header,
        database.queries.closing_of(run_id),
        bout_lines(bouts, _laid_out(header.plan_text, parse)),
        tuple(note for note in notes if note.run_id == run_id),
        tuple(held.thing for held in database.answers.ratings_of(run_id)),
        pauses,
        paused_ms,
        not bouts,
        tuple(held.thing for held in database.answers.readiness_before(run_id)),
        database.tolerances.current(),
    )


def _laid_out(text: str, parse: Parse) -> Timeline | None:
    """The plan of a run laid out anew, for the shapes of its reps; None where it cannot be."""
    try:
        return compile_timeline(parse(text).plan)
    except PacewrightError:
        return None


def _day(note: Note) -> date:
    return note.at.astimezone(known_zone(note.zone)).date()
