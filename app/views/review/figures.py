"""The figures behind the charts, as columns of a table."""

from datetime import timedelta

from app.analysis.adherence import WeekReps
from app.analysis.load import SessionLoad
from app.views.review import words
from app.views.review.marks import MARK
from app.views.translation import tr
from app.views.widgets.rows_model import Column

WEEK_END = timedelta(days=6)


def week_columns() -> tuple[Column[WeekReps], ...]:
    """One row a week; a week without a session shows dashes."""
    return (
        Column(
            tr("Week"),
            lambda week: f"{week.year}-W{week.week:02d}",
            lambda week: week.monday,
            wide=True,
            tip=lambda week: words.span(week.monday, week.monday + WEEK_END),
            hint=tr("By ISO 8601, from Monday"),
        ),
        Column(
            tr("Sessions"),
            lambda week: words.whole(week.sessions or None),
            lambda week: week.sessions or None,
            right=True,
            hint=tr("Sessions that ended"),
        ),
        Column(
            tr("Reps met"),
            lambda week: _mark(words.whole(week.reps_met), week.corrected),
            lambda week: week.reps_met,
            right=True,
        ),
        Column(
            tr("Prescribed"),
            lambda week: words.whole(week.reps_prescribed),
            lambda week: week.reps_prescribed,
            right=True,
        ),
        Column(
            tr("Share"),
            lambda week: _mark(words.percent(week.share), week.corrected),
            lambda week: week.share,
            right=True,
        ),
        Column(
            tr("95 % interval"),
            words.bounds,
            lambda week: week.interval.low if week.interval else None,
            right=True,
            hint=tr("Wilson, as if reps were independent"),
        ),
        Column(
            tr("Beyond"), lambda week: words.whole(week.reps_extra), lambda week: week.reps_extra, right=True
        ),
    )


def load_columns() -> tuple[Column[SessionLoad], ...]:
    """One row a session; what is unknown shows a dash."""
    return (
        Column(
            tr("Date and time"),
            lambda session: words.when(session.started, day_alone=session.imported),
            lambda session: session.started,
        ),
        Column(
            tr("Athlete"),
            lambda session: session.athlete,
            lambda session: session.athlete.casefold(),
            wide=True,
        ),
        Column(
            tr("RPE"),
            lambda session: _mark(words.whole(session.rpe), session.corrected),
            lambda session: session.rpe,
            right=True,
        ),
        Column(
            tr("Minutes"),
            lambda session: words.whole(session.minutes),
            lambda session: session.minutes,
            right=True,
        ),
        Column(
            tr("Load, AU"),
            lambda session: _mark(words.whole(session.load), session.corrected),
            lambda session: session.load,
            right=True,
        ),
    )


def _mark(text: str, corrected: int) -> str:
    return f"{MARK} {text}" if corrected else text
