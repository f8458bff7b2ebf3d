"""Planned sessions as a calendar file that any calendar program reads.

Source of the form: RFC 5545. A weekly session is one event with a rule, so that 18:30 stays 18:30 when the
clocks change; a day that was moved is an event of its own in its place, one that is excused is left out.
"""

from collections.abc import Iterable
from datetime import UTC, date, datetime, time
from typing import TYPE_CHECKING

from app.analysis.local_time import known_zone
from app.domain.planned import Occurrence, PlannedChange, PlannedSession, occurrences, rule_days

if TYPE_CHECKING:
    from icalendar import Calendar, Event

PRODUCT = "-//Pacewright//Planned sessions//EN"


def calendar_bytes(planned: Iterable[PlannedSession], changes: Iterable[PlannedChange]) -> bytes:
    """The calendar file: UTF-8, lines ended by CR LF, with the time zones that it names."""
    from icalendar import Calendar

    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    said = tuple(changes)
    for session in planned:
        _add(calendar, session, tuple(change for change in said if change.planned_id == session.id))
    calendar.add_missing_timezones()
    return bytes(calendar.to_ical())


def _add(calendar: "Calendar", session: PlannedSession, changes: tuple[PlannedChange, ...]) -> None:
    """The events of one planned session; none where it was called off."""
    there = {each.first_day: each for each in occurrences([session], changes, date.min, date.max)}
    if not there:
        return
    # What was ended has fewer days than its rule: the rule goes to the last day that is there.
    days = [day for day in rule_days(session) if day <= max(there)]
    master = _event(session, days[0])
    if len(days) > 1:
        until = _start(session, days[-1])
        ends = until.astimezone(UTC) if isinstance(until, datetime) else until
        master.add("rrule", {"freq": "weekly", "until": ends})
    excused = [_start(session, day) for day in days if there[day].excused is not None]
    if excused:
        master.add("exdate", excused, parameters=_kind(session))
    if len(excused) < len(days):
        calendar.add_component(master)
    for each in there.values():
        if each.day != each.first_day and each.excused is None:
            calendar.add_component(_moved(each))


def _moved(occurrence: Occurrence) -> "Event":
    session = occurrence.planned
    event = _event(session, occurrence.day)
    event.add("recurrence-id", _start(session, occurrence.first_day), parameters=_kind(session))
    return event


def _event(session: PlannedSession, day: date) -> "Event":
    from icalendar import Event

    event = Event()
    event.add("uid", f"{session.id}@pacewright")
    event.add("dtstamp", session.at.astimezone(UTC))
    event.add("summary", session.plan_title)
    event.add("dtstart", _start(session, day))
    return event


def _start(session: PlannedSession, day: date) -> datetime | date:
    """When it begins by the clock of its place; the day alone where any time will do."""
    return day if session.clock is None else _at(session, day, session.clock)


def _at(session: PlannedSession, day: date, clock: time) -> datetime:
    return datetime.combine(day, clock, known_zone(session.zone))


def _kind(session: PlannedSession) -> dict[str, str]:
    return {"VALUE": "DATE"} if session.clock is None else {}
