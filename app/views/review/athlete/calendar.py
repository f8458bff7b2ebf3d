"""The weeks of an athlete as a grid of days: what was planned, done, missed, excused."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum

from app.analysis.adherence_parts import monday_of
from app.domain.planned import DueState
from app.domain.reviewed import AthleteRecord
from app.views.review import words
from app.views.review.figure_words import weekday_words
from app.views.translation import message, tr
from app.views.widgets.rows_model import Column, Tone

DAYS = (
    message("Mon"),
    message("Tue"),
    message("Wed"),
    message("Thu"),
    message("Fri"),
    message("Sat"),
    message("Sun"),
)


class Standing(Enum):
    """How a session stands: its shape and its word."""

    DONE = ("●", message("done"))
    EXTRA = ("●", message("not planned"))
    MISSED = ("✕", message("missed"))
    EXCUSED = ("–", message("excused"))
    PLANNED = ("○", message("planned"))

    @property
    def shown(self) -> str:
        """Shape and word."""
        return f"{self.value[0]} {tr(self.value[1])}"


STANDINGS = {
    DueState.DONE: Standing.DONE,
    DueState.MISSED: Standing.MISSED,
    DueState.EXCUSED: Standing.EXCUSED,
    DueState.NOT_DUE: Standing.PLANNED,
}


@dataclass(frozen=True, slots=True)
class Mark:
    """One session of a day. `run_id` is the run it was done in."""

    standing: Standing
    plan_title: str
    run_id: str | None = None
    reason: str | None = None


@dataclass(frozen=True, slots=True)
class Week:
    """Seven days from a Monday, each with its sessions."""

    monday: date
    days: tuple[tuple[Mark, ...], ...]


def weeks_of(record: AthleteRecord) -> tuple[Week, ...]:
    """The weeks of a record's days, the latest first."""
    marks: dict[date, list[Mark]] = {}
    planned = {each.run_id for each in record.due if each.run_id is not None}
    for each in record.due:
        title, reason = each.occurrence.planned.plan_title, each.occurrence.excused
        marks.setdefault(each.occurrence.day, []).append(
            Mark(STANDINGS[each.state], title, each.run_id, reason)
        )
    for session in record.sessions:
        if session.run_id not in planned:
            marks.setdefault(session.day, []).append(Mark(Standing.EXTRA, session.plan_title, session.run_id))
    first, last = monday_of(record.first), monday_of(record.last)
    mondays = [first + timedelta(weeks=number) for number in range((last - first).days // 7 + 1)]
    return tuple(_week(monday, marks) for monday in reversed(mondays))


def calendar_columns() -> tuple[Column[Week], ...]:
    """The Monday, then the seven days."""
    return (
        Column(tr("Week from"), lambda week: words.day(week.monday), lambda week: week.monday),
        *(_day_column(number, name) for number, name in enumerate(DAYS)),
    )


def day_words(marks: Iterable[Mark]) -> str:
    """What a day held, in a cell."""
    return ", ".join(mark.standing.shown for mark in marks)


def _week(monday: date, marks: dict[date, list[Mark]]) -> Week:
    days = (monday + timedelta(days=number) for number in range(7))
    return Week(monday, tuple(tuple(marks.get(day, ())) for day in days))


def _day_column(number: int, name: str) -> Column[Week]:
    return Column(
        tr(name),
        lambda week: day_words(week.days[number]),
        lambda week: week.monday,
        wide=True,
        tone=lambda week: _tone(week.days[number]),
        spoken=lambda week: _told(week, number),
        tip=lambda week: _told(week, number),
    )


def _told(week: Week, number: int) -> str:
    day = weekday_words(week.monday + timedelta(days=number))
    lines = [
        words.DOT.join(filter(None, (mark.standing.shown, mark.plan_title, mark.reason)))
        for mark in week.days[number]
    ]
    return "\n".join((day, *lines)) if lines else words.DOT.join((day, tr("nothing planned, nothing done")))


def _tone(marks: Iterable[Mark]) -> Tone:
    if any(mark.standing is Standing.MISSED for mark in marks):
        return Tone.ATTENTION
    quiet = (Standing.EXCUSED, Standing.PLANNED)
    return Tone.QUIET if all(mark.standing in quiet for mark in marks) else Tone.INK
