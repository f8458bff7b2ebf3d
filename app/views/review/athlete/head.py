"""The figures at the top of an athlete's page: of the whole time, or the last that is known."""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from datetime import timedelta

from app.analysis.adherence_parts import monday_of
from app.analysis.figure import Figure
from app.analysis.figures_adherence import REPS, SESSIONS, TEMPO, whole_adherence
from app.analysis.figures_load import MONOTONY, WEEK, load_figures
from app.analysis.figures_wellbeing import HIGHEST, OWN, TOTAL, highest_pain, wellbeing_figures
from app.analysis.readiness_course import WINDOW_DAYS
from app.domain.reviewed import AthleteRecord
from app.views.review.figure_words import PAINFUL

WHOLE = (SESSIONS.name, REPS.name, TEMPO.name, HIGHEST.name)
OF_WEEKS, OF_ANSWERS = (WEEK.name, MONOTONY.name), (TOTAL.name, OWN.name)
LATEST = (*OF_WEEKS, *OF_ANSWERS)
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
FIRST_WEEKS, TIMES = 6, 6
"""The last that is known is looked for in so many weeks, then in so many times more, until all were seen."""
MARGIN = timedelta(days=WINDOW_DAYS + 2)
Made = Callable[[AthleteRecord], tuple[Figure, ...]]


def head_of(record: AthleteRecord, *, pain: bool = True) -> tuple[Figure, ...]:
    """The figures at the top of a record's page; an unknown one says why. Without `pain` none of it."""
    within = [each for each in record.sessions if record.first <= each.day <= record.last]
    found = [*whole_adherence(record), highest_pain(within)]
    found += _latest(record, load_figures, OF_WEEKS)
    found += _latest(record, wellbeing_figures, OF_ANSWERS)
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


def _latest(record: AthleteRecord, make: Made, names: tuple[str, ...]) -> tuple[Figure, ...]:
    """The figures of these names out of the last weeks, of as many of them as have a value of each."""
    found: tuple[Figure, ...] = ()
    for recent in _ever_longer(record):
        found = tuple(each for each in make(recent) if each.name in names)
        if {each.name for each in found if each.value is not None} == set(names):
            break
    return found


def _ever_longer(record: AthleteRecord) -> Iterator[AthleteRecord]:
    """The record's last weeks, more of them each time, at last the whole of it."""
    weeks = FIRST_WEEKS
    while True:
        first = monday_of(record.last) - timedelta(weeks=weeks - 1)
        if first <= record.first:
            yield record
            return
        yield replace(
            record,
            first=first,
            sessions=tuple(each for each in record.sessions if each.day >= first),
            readiness=tuple(each for each in record.readiness if each.at.date() >= first - MARGIN),
        )
        weeks *= TIMES
