"""Review in words: how dates, shares, outcomes and the unknown are written."""

from collections.abc import Iterable
from datetime import date, datetime, timedelta

from app.analysis.adherence import WeekReps
from app.analysis.load import SessionLoad, elapsed_minutes
from app.analysis.local_time import local_start
from app.domain.records import RunOutcome, RunSummary

DASH = "–"
DOT = " · "
THIN = "\u202f"
PAIN_LIMIT = 5
DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


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


def count(number: int, one: str, many: str) -> str:
    """A number with its noun."""
    return f"{whole(number)} {one if number == 1 else many}"


def day(value: date) -> str:
    """A day without its year: `21 Nov`."""
    return f"{value.day} {MONTHS[value.month - 1]}"


def span(first: date, last: date) -> str:
    """From one day to another: `16 – 22 Nov 2026`, naming month and year once where they are the same."""
    if first == last:
        return f"{day(first)} {first.year}"
    if first.year != last.year:
        return f"{day(first)} {first.year} {DASH} {day(last)} {last.year}"
    begin = str(first.day) if first.month == last.month else day(first)
    return f"{begin} {DASH} {day(last)} {last.year}"


def moment(value: datetime, *, offset: bool = False) -> str:
    """A moment by the clock on the wall: `Sat 21 Nov 2026, 18:05`, with its distance from UTC where asked."""
    text = f"{DAYS[value.weekday()]} {day(value)} {value.year}, {value:%H:%M}"
    return f"{text} UTC{value.isoformat(timespec='minutes')[16:]}" if offset else text


def when(value: datetime, *, offset: bool = False, day_alone: bool = False) -> str:
    """A moment as `moment` writes it, or its day where nothing more is known: `Sat 21 Nov 2026`."""
    return f"{DAYS[value.weekday()]} {day(value)} {value.year}" if day_alone else moment(value, offset=offset)


def zones_differ(summaries: Iterable[RunSummary]) -> bool:
    """Whether the runs were done by different clocks, so that an hour alone says too little."""
    return len({summary.zone for summary in summaries}) > 1


def outcome(summary: RunSummary) -> str:
    """How a run ended, in a word."""
    if summary.outcome is None:
        return "unknown" if summary.imported else "not ended"
    return {RunOutcome.FINISHED: "finished", RunOutcome.ABANDONED: "abandoned"}[summary.outcome]


def reps(summary: RunSummary) -> str:
    """Reps met of those prescribed; a dash where nothing is known of them."""
    if summary.imported:
        return DASH
    return f"{whole(summary.reps_met)} of {whole(summary.reps_prescribed)}"


def minutes(summary: RunSummary) -> str:
    """Minutes from beginning to end, rests included."""
    return whole(elapsed_minutes(summary.elapsed_ms))


def pain(value: int | None) -> str:
    """Pain 0 to 10; a triangle goes before what is above the limit at which an exercise ends."""
    return f"▲ {value}" if value is not None and value > PAIN_LIMIT else whole(value)


def week_line(week: WeekReps) -> str:
    """One week with all its figures."""
    parts = [f"Week {week.week}", span(week.monday, week.monday + timedelta(days=6))]
    if week.reps_met is None or week.reps_prescribed is None:
        parts.append("no session ended" if week.not_ended else "no session")
    else:
        beyond = f", {whole(week.reps_extra)} beyond" if week.reps_extra else ""
        parts.append(f"{percent(week.share)} ({bounds(week)})" if week.interval else percent(None))
        parts.append(f"{whole(week.reps_met)} of {whole(week.reps_prescribed)} reps{beyond}")
        parts.append(count(week.sessions, "session", "sessions"))
    if week.corrected:
        parts.append(f"{whole(week.corrected)} of them corrected")
    if week.not_ended:
        parts.append(count(week.not_ended, "run not ended", "runs not ended"))
    return DOT.join(parts)


def load_line(session: SessionLoad) -> str:
    """One session with how its load came about."""
    parts = [when(session.started, day_alone=session.imported)]
    if session.load is not None:
        parts.append(f"RPE {session.rpe} × {whole(session.minutes)} min = {whole(session.load)} AU")
    elif session.rpe is None:
        parts.append("RPE not rated, load unknown")
    else:
        why = "length unknown" if session.imported else "not ended"
        parts.append(f"RPE {session.rpe}, {why}, load unknown")
    parts += ["rating corrected"] if session.corrected else []
    return DOT.join([*parts, session.athlete])


def heading_line(summaries: Iterable[RunSummary]) -> str:
    """What a set of runs holds: how many sessions, of how many athletes, from when to when, whether real."""
    runs = tuple(summaries)
    days = sorted(local_start(run).date() for run in runs)
    parts = [count(len(runs), "session", "sessions")]
    athletes = len({run.athlete for run in runs})
    parts += [count(athletes, "athlete", "athletes")] if athletes > 1 else []
    parts += [span(days[0], days[-1])] if days else []
    invented = sum(run.invented for run in runs)
    if invented:
        parts.append("invented data" if invented == len(runs) else f"{whole(invented)} of them invented")
    imported = sum(run.imported for run in runs)
    parts += [f"{whole(imported)} of them imported"] if imported else []
    return DOT.join(parts)


def bounds(week: WeekReps) -> str:
    """The bounds of a week's interval: `55 to 69 %`."""
    found = week.interval
    return f"{percent(found.low).rstrip('%').rstrip()} to {percent(found.high)}" if found else DASH
