"""Review in words: how dates, shares, outcomes and the unknown are written."""

from collections.abc import Iterable
from datetime import date, datetime, timedelta

from PySide6.QtCore import QDate, QLocale

from app.analysis.adherence import WeekReps
from app.analysis.load import SessionLoad, elapsed_minutes
from app.analysis.local_time import local_start
from app.domain.readiness import PAIN_LIMIT
from app.domain.records import RunOutcome, RunSummary
from app.views.translation import tr

DASH = "–"
DOT = " · "
THIN = "\u202f"


def whole(value: float | None) -> str:
    """A figure to whole numbers, thousands set apart; a dash where it is unknown."""
    return DASH if value is None else f"{value:,.0f}".replace(",", THIN)


def percent(share: float | None) -> str:
    """A share in whole percent; 0 and 100 stand only for none and all; a dash where it is unknown."""
    if share is None:
        return DASH
    nearest = round(share * 100)
    if 0.0 < share < 1.0:
        nearest = min(max(nearest, 1), 99)
    return f"{nearest}{THIN}%"


def of(done: int, asked: int) -> str:
    """So many of so many."""
    return tr("{n} of {m}").format(n=whole(done), m=whole(asked))


def day(value: date) -> str:
    """A day without its year: `21 Nov`."""
    return _written(value, tr("d MMM"))


def dated(value: date) -> str:
    """A day with its year: `21 Nov 2026`."""
    return _written(value, tr("d MMM yyyy"))


def span(first: date, last: date) -> str:
    """From one day to another: `16 – 22 Nov 2026`, naming month and year once where they are the same."""
    if first == last:
        return dated(first)
    if first.year != last.year:
        return f"{dated(first)} {DASH} {dated(last)}"
    begin = _written(first, tr("d")) if first.month == last.month else day(first)
    return f"{begin} {DASH} {dated(last)}"


def moment(value: datetime, *, offset: bool = False) -> str:
    """A moment by the clock on the wall: `Sat 21 Nov 2026, 18:05`, with its distance from UTC where asked."""
    text = f"{_weekday(value)}, {value:%H:%M}"
    return f"{text} UTC{value.isoformat(timespec='minutes')[16:]}" if offset else text


def when(value: datetime, *, offset: bool = False, day_alone: bool = False) -> str:
    """A moment as `moment` writes it, or its day where nothing more is known: `Sat 21 Nov 2026`."""
    return _weekday(value) if day_alone else moment(value, offset=offset)


def _weekday(value: date) -> str:
    return _written(value, tr("ddd d MMM yyyy"))


def _written(value: date, form: str) -> str:
    return QLocale().toString(QDate(value.year, value.month, value.day), form)


def zones_differ(summaries: Iterable[RunSummary]) -> bool:
    """Whether the runs were done by different clocks, so that an hour alone says too little."""
    return len({summary.zone for summary in summaries}) > 1


def outcome(summary: RunSummary) -> str:
    """How a run ended, in a word."""
    if summary.outcome is None:
        return tr("unknown") if summary.imported else tr("not ended")
    return tr("finished") if summary.outcome is RunOutcome.FINISHED else tr("abandoned")


def reps(summary: RunSummary) -> str:
    """Reps met of those prescribed; a dash where nothing is known of them."""
    if summary.imported:
        return DASH
    return of(summary.reps_met, summary.reps_prescribed)


def minutes(summary: RunSummary) -> str:
    """Minutes from beginning to end, rests included."""
    return whole(elapsed_minutes(summary.elapsed_ms))


def pain(value: int | None) -> str:
    """Pain 0 to 10; a triangle goes before what is above the limit at which an exercise ends."""
    return f"▲ {value}" if value is not None and value > PAIN_LIMIT else whole(value)


def week_line(week: WeekReps) -> str:
    """One week with all its figures."""
    parts = [tr("Week {n}").format(n=week.week), span(week.monday, week.monday + timedelta(days=6))]
    if week.reps_met is None or week.reps_prescribed is None:
        parts.append(tr("no session ended") if week.not_ended else tr("no session"))
    else:
        parts.append(f"{percent(week.share)} ({bounds(week)})" if week.interval else percent(None))
        done = tr("{n} of {m} reps, {k} beyond") if week.reps_extra else tr("{n} of {m} reps")
        met, asked, extra = whole(week.reps_met), whole(week.reps_prescribed), whole(week.reps_extra)
        parts.append(done.format(n=met, m=asked, k=extra))
        parts.append(tr("%n session(s)", "", week.sessions))
    if week.corrected:
        parts.append(tr("{n} of them corrected").format(n=whole(week.corrected)))
    if week.not_ended:
        parts.append(tr("%n run(s) not ended", "", week.not_ended))
    return DOT.join(parts)


def load_line(session: SessionLoad) -> str:
    """One session with how its load came about."""
    parts = [when(session.started, day_alone=session.imported)]
    if session.load is not None:
        product = tr("RPE {rpe} × {minutes} min = {load} AU")
        known = {"rpe": session.rpe, "minutes": whole(session.minutes), "load": whole(session.load)}
        parts.append(product.format(**known))
    elif session.rpe is None:
        parts.append(tr("RPE not rated, load unknown"))
    else:
        told = tr("RPE {n}, not ended, load unknown")
        if session.imported:
            told = tr("RPE {n}, length unknown, load unknown")
        parts.append(told.format(n=session.rpe))
    parts += [tr("rating corrected")] if session.corrected else []
    return DOT.join([*parts, session.athlete])


def heading_line(summaries: Iterable[RunSummary]) -> str:
    """What a set of runs holds: how many sessions, of how many athletes, from when to when, whether real."""
    runs = tuple(summaries)
    days = sorted(local_start(run).date() for run in runs)
    parts = [tr("%n session(s)", "", len(runs))]
    athletes = len({run.athlete for run in runs})
    parts += [tr("%n athlete(s)", "", athletes)] if athletes > 1 else []
    parts += [span(days[0], days[-1])] if days else []
    invented = sum(run.invented for run in runs)
    if invented:
        some = tr("{n} of them invented").format(n=whole(invented))
        parts.append(tr("invented data") if invented == len(runs) else some)
    imported = sum(run.imported for run in runs)
    parts += [tr("{n} of them imported").format(n=whole(imported))] if imported else []
    return DOT.join(parts)


def bounds(week: WeekReps) -> str:
    """The bounds of a week's interval: `55 to 69 %`."""
    found = week.interval
    if not found:
        return DASH
    return tr("{low} to {high}").format(low=percent(found.low).rstrip("%").rstrip(), high=percent(found.high))
