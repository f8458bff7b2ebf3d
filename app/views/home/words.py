"""What the first page says of plans, of days gone by and of answers that are owed."""

from datetime import date, datetime
from pathlib import Path

from app.domain.errors import FileProblemsError
from app.domain.squad import OwedKind, OwedRating
from app.views.home.plans import PlanFigures
from app.views.translation import message, tr

WEEKS_FROM = 14
"""From so many days on they are told as weeks."""
MOST_PROBLEMS = 3

QUESTIONS = {
    OwedKind.SESSION_RPE: message("How hard was the session?"),
    OwedKind.NEXT_MORNING_PAIN: message("How much does it hurt this morning?"),
}


def ago(last: datetime | None, today: date) -> str:
    """When somebody trained last, in days or weeks."""
    if last is None:
        return tr("not yet", "a session")
    days = (today - last.date()).days
    if days <= 0:
        return tr("today")
    if days == 1:
        return tr("yesterday")
    if days < WEEKS_FROM:
        return tr("%n day(s) ago", "", days)
    return tr("%n week(s) ago", "", days // 7)


def figures_words(figures: PlanFigures) -> str:
    """How much a plan is, in a line."""
    parts = [
        tr("%n stage(s)", "", len(figures.stages)),
        tr("%n exercise(s)", "", figures.exercises),
    ]
    minutes = max(round(figures.length_ms / 60_000), 1)
    if figures.own_pace:
        parts.append(tr("about %n min, and work at your own pace", "", minutes))
    else:
        parts.append(tr("about %n min", "", minutes))
    return " · ".join(parts)


def problem_words(error: FileProblemsError) -> str:
    """Why a plan cannot be used: the first of its problems, and how many more there are."""
    name = Path(error.file).name
    shown = [problem.located(name) for problem in error.problems[:MOST_PROBLEMS]]
    if len(error.problems) > MOST_PROBLEMS:
        shown.append(tr("And %n more.", "", len(error.problems) - MOST_PROBLEMS))
    return "\n".join([tr("This plan cannot be led:"), *shown])


def question_words(owed: OwedRating) -> str:
    """What is asked."""
    return tr(QUESTIONS[owed.kind])


def about_words(owed: OwedRating, today: date) -> str:
    """Whom it is asked, and about which session."""
    when = ago(datetime.combine(owed.day, datetime.min.time()), today)
    return tr("{athlete}: {plan}, {when}").format(athlete=owed.athlete, plan=owed.plan_title, when=when)
