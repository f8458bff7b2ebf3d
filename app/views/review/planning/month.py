"""A month as weeks from Monday, and planned sessions in it by shape and word."""

from datetime import date, time, timedelta

from app.domain.planned import DueSession, DueState
from app.views.translation import message, tr

DAYS_A_WEEK = 7
FIRST_YEAR, LAST_YEAR = 1990, 2100
SHAPES = {DueState.DONE: "●", DueState.MISSED: "▲", DueState.EXCUSED: "◇", DueState.NOT_DUE: "○"}
STATES = {
    DueState.DONE: message("done"),
    DueState.MISSED: message("missed"),
    DueState.EXCUSED: message("excused"),
    DueState.NOT_DUE: message("to come"),
}
NO_TIME = message("“{typed}” is no time of day. Enter one such as 18:30, or leave it empty.")


def month_weeks(day: date) -> tuple[tuple[date, ...], ...]:
    """The weeks that the month of a day touches, each of seven days from Monday (ISO 8601)."""
    first = day.replace(day=1)
    monday = first - timedelta(days=first.weekday())
    weeks = []
    while monday < next_month(day):
        weeks.append(tuple(monday + timedelta(days=number) for number in range(DAYS_A_WEEK)))
        monday += timedelta(days=DAYS_A_WEEK)
    return tuple(weeks)


def next_month(day: date, step: int = 1) -> date:
    """The first day of the month so many months on, within the years of the calendar."""
    months = day.year * 12 + day.month - 1 + step
    months = min(max(months, FIRST_YEAR * 12), LAST_YEAR * 12 + 11)
    return date(months // 12, months % 12 + 1, 1)


def session_words(due: DueSession) -> str:
    """One planned session: shape, time, title, and how it stands."""
    occurrence = due.occurrence
    clock = occurrence.planned.clock
    at = "" if clock is None else f"{clock:%H:%M} "
    told = tr(STATES[due.state])
    if occurrence.excused:
        told = tr("{state}: {reason}").format(state=told, reason=occurrence.excused)
    return f"{SHAPES[due.state]} {at}{occurrence.planned.plan_title} ({told})"


def short_words(due: DueSession) -> str:
    """The same where there is little room: shape and title."""
    return f"{SHAPES[due.state]} {due.occurrence.planned.plan_title}"


def clock_of(typed: str) -> time | None:
    """A time of day as typed; None for nothing. Raises ValueError for what is none."""
    text = typed.strip()
    if not text:
        return None
    hours, separator, minutes = text.partition(":")
    if not separator or not (hours.isdecimal() and minutes.isdecimal() and len(minutes) == 2):
        raise ValueError(f"{text} is no time of day")
    try:
        return time(int(hours), int(minutes))
    except ValueError:
        raise ValueError(f"{text} is no time of day") from None
