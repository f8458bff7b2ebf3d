"""Calendar files are read back by a library for RFC 5545, and their rules reckoned out by another.

Outside: icalendar (a reader of RFC 5545) and dateutil.rrule (recurrence rules of the same standard).
"""

from collections.abc import Iterable
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from dateutil.rrule import rrulestr
from icalendar import Calendar

from app.domain.planned import ChangeKind, PlannedChange, PlannedSession
from app.reports.session_calendar import calendar_bytes

AT = datetime(2026, 9, 1, 9, tzinfo=UTC)
LISBON = ZoneInfo("Europe/Lisbon")
# The clocks of Lisbon went back on 2026-10-25 and go forward on 2027-03-28 (IANA time zone database).
TUESDAY = date(2026, 10, 13)
SESSION = PlannedSession(
    "01", "Ines", "Landing, control; and more", TUESDAY, AT, "Europe/Lisbon", time(18, 30), date(2027, 4, 6)
)


def changed(kind: ChangeKind, day: date, **more: object) -> PlannedChange:
    return PlannedChange(f"c{day}", "01", "Ines", kind, day, AT, "Europe/Lisbon", **more)  # type: ignore[arg-type]


def events(data: bytes) -> list[Any]:
    """The events of a calendar file, as its reader gives them."""
    calendar: Any = Calendar.from_ical(data)
    return list(calendar.walk("VEVENT"))


def starts(data: bytes) -> list[datetime]:
    """Every beginning in a calendar file, in UTC and in order, reckoned out from its rules."""
    found: set[datetime] = set()
    moved: dict[datetime, datetime] = {}
    for event in events(data):
        begin = event["DTSTART"].dt
        if "RECURRENCE-ID" in event:
            moved[event["RECURRENCE-ID"].dt.astimezone(UTC)] = begin.astimezone(UTC)
        elif "RRULE" in event:
            rule = rrulestr(event["RRULE"].to_ical().decode(), dtstart=begin)
            found |= {each.astimezone(UTC) for each in rule} - set(_left_out(event))
        else:
            found.add(begin.astimezone(UTC))
    return sorted((found - moved.keys()) | set(moved.values()))


def _left_out(event: Any) -> Iterable[datetime]:  # noqa: ANN401 - its reader has many
    said = event.get("EXDATE", [])
    for group in said if isinstance(said, list) else [said]:
        for each in group.dts:
            yield each.dt.astimezone(UTC)


def at(day: date, clock: time = time(18, 30)) -> datetime:
    return datetime.combine(day, clock, LISBON).astimezone(UTC)


def weeks(first: date, last: date) -> list[date]:
    return [first + timedelta(weeks=week) for week in range((last - first).days // 7 + 1)]


def test_a_weekly_session_stays_at_its_time_of_day_over_both_changes_of_the_clock() -> None:
    found = starts(calendar_bytes([SESSION], []))
    assert found == [at(day) for day in weeks(TUESDAY, date(2027, 4, 6))]
    assert {each.astimezone(LISBON).time() for each in found} == {time(18, 30)}
    assert {each.hour for each in found} == {17, 18}


def test_the_file_is_of_the_form_that_the_standard_wants() -> None:
    data = calendar_bytes([SESSION], [])
    assert data.startswith(b"BEGIN:VCALENDAR\r\n")
    assert data.endswith(b"END:VCALENDAR\r\n")
    assert data.count(b"\n") == data.count(b"\r\n")
    assert all(len(line) <= 75 for line in data.split(b"\r\n"))
    assert b"DTSTART;TZID=Europe/Lisbon:20261013T183000" in data
    assert b"RRULE:FREQ=WEEKLY;UNTIL=20270406T173000Z" in data, "UNTIL is in UTC, in summer time an hour less"
    assert b"BEGIN:VTIMEZONE\r\nTZID:Europe/Lisbon" in data
    (event,) = events(data)
    assert str(event["SUMMARY"]) == SESSION.plan_title
    assert event["DTSTAMP"].dt == AT


def test_what_was_excused_is_left_out_and_what_was_moved_stands_on_its_new_day() -> None:
    excused = changed(ChangeKind.EXCUSED, TUESDAY, reason="fever")
    moved = changed(ChangeKind.MOVED, date(2026, 10, 27), to_day=date(2026, 10, 29))
    ended = changed(ChangeKind.ENDED, date(2026, 11, 10))
    found = starts(calendar_bytes([SESSION], [excused, moved, ended]))
    assert found == [at(date(2026, 10, 20)), at(date(2026, 10, 29)), at(date(2026, 11, 3))]


def test_a_session_at_any_time_of_its_day_is_a_day_of_the_calendar() -> None:
    session = replace(SESSION, clock=None, until=TUESDAY + timedelta(weeks=1))
    excused = changed(ChangeKind.EXCUSED, TUESDAY, reason="fever")
    (event,) = events(calendar_bytes([session], [excused]))
    assert event["DTSTART"].dt == TUESDAY
    assert event["EXDATE"].dts[0].dt == TUESDAY
    rule = rrulestr(event["RRULE"].to_ical().decode(), dtstart=datetime(2026, 10, 13))  # noqa: DTZ001 - a day
    assert [each.date() for each in rule] == [TUESDAY, TUESDAY + timedelta(weeks=1)]


def test_a_session_that_was_called_off_is_no_event() -> None:
    assert events(calendar_bytes([SESSION], [changed(ChangeKind.ENDED, TUESDAY)])) == []
    assert events(calendar_bytes([], [])) == []


def test_one_that_comes_once_and_was_moved_or_excused_needs_no_rule() -> None:
    once = replace(SESSION, until=None)
    moved = changed(ChangeKind.MOVED, TUESDAY, to_day=date(2026, 10, 15))
    assert starts(calendar_bytes([once], [moved])) == [at(date(2026, 10, 15))]
    assert events(calendar_bytes([once], [changed(ChangeKind.EXCUSED, TUESDAY, reason="exam")])) == []
