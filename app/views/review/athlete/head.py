"""The figures at the top of an athlete's page: of the whole time, or the last that is known."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import timedelta

from app.analysis.adherence_parts import monday_of
from app.analysis.figure import Figure
from app.analysis.figures_adherence import REPS, SESSIONS, TEMPO, whole_adherence
from app.analysis.figures_load import MONOTONY, WEEK, load_figures
from app.analysis.figures_wellbeing import HIGHEST, OWN, TOTAL, highest_pain, latest_readiness_figures
from app.analysis.load_weeks import WeekLoad, loads_by_week
from app.domain.reviewed import AthleteRecord
from app.views.review.figure_words import PAINFUL

WHOLE = (SESSIONS.name, REPS.name, TEMPO.name, HIGHEST.name)
LATEST = (WEEK.name, MONOTONY.name, TOTAL.name, OWN.name)
ORDER = (
    SESSIONS.name,
    REPS.name,
    TEMPO.name,
    WEEK.name,
    MONOTONY.name,
    HIGHEST.name,
    TOTAL.name,
    OWN.name,
)
"""The figures at the top, in this order; WHOLE are of the whole time, LATEST the last that is known."""
FIRST_WEEKS = 6
"""The last week that is known is looked for in so many, then in all."""


def head_of(record: AthleteRecord, *, pain: bool = True) -> tuple[Figure, ...]:
    """The figures at the top of a record's page; an unknown one says why. Without `pain` none of it."""
    found = [*whole_adherence(record), highest_pain(record.sessions_within)]
    found += _latest_loads(record)
    found += latest_readiness_figures(record)
    return head_figures(found, pain=pain)


def head_figures(found: Iterable[Figure], *, pain: bool = True) -> tuple[Figure, ...]:
    """Those of all figures that stand at the top of the page; an unknown one among them says why."""
    chosen: dict[str, Figure] = {}
    for figure in found:
        before = chosen.get(figure.name)
        unknown = before is None or before.value is None
        latest = figure.name in LATEST and (figure.value is not None or unknown)
        if latest or (figure.name in WHOLE and not figure.of):
            chosen[figure.name] = figure
    return tuple(chosen[name] for name in ORDER if name in chosen and (pain or name not in PAINFUL))


def _latest_loads(record: AthleteRecord) -> tuple[Figure, ...]:
    """The load of the last week that has one, and the monotony of the last that has one; else the last."""
    total, alike = None, None
    weeks: tuple[WeekLoad, ...] = ()
    for recent in (_recent(record), record):
        weeks = loads_by_week(recent)
        total = next((week for week in reversed(weeks) if week.total is not None), None)
        alike = next((week for week in reversed(weeks) if week.monotony is not None), None)
        if total is not None and alike is not None:
            break
    if not weeks:
        return ()
    chosen = ((WEEK.name, total or weeks[-1]), (MONOTONY.name, alike or weeks[-1]))
    return tuple(
        each for name, week in chosen for each in load_figures(_one_week(record, week)) if each.name == name
    )


def _recent(record: AthleteRecord) -> AthleteRecord:
    """The record's last weeks, where the last that is known mostly is."""
    first = max(monday_of(record.last) - timedelta(weeks=FIRST_WEEKS - 1), record.first)
    return replace(record, first=first, sessions=tuple(each for each in record.sessions if each.day >= first))


def _one_week(record: AthleteRecord, week: WeekLoad) -> AthleteRecord:
    first = max(week.monday, record.first)
    last = min(week.monday + timedelta(days=6), record.last)
    within = tuple(each for each in record.sessions if first <= each.day <= last)
    return replace(record, first=first, last=last, sessions=within)
