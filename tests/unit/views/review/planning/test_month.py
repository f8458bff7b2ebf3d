"""The month of the calendar of planned sessions."""

import calendar
from datetime import date, time, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.views.review.planning.month import clock_of, month_weeks, next_month

DAYS = st.dates(date(1990, 2, 1), date(2100, 11, 30))


@given(DAYS)
def test_weeks_are_those_of_the_calendar_from_monday(day: date) -> None:
    # Reference: the standard library's calendar, weeks from Monday as in ISO 8601.
    wanted = calendar.Calendar(firstweekday=0).monthdatescalendar(day.year, day.month)
    assert [list(week) for week in month_weeks(day)] == wanted


@given(DAYS)
def test_the_next_month_and_back_is_the_same(day: date) -> None:
    assert next_month(next_month(day), -1) == day.replace(day=1)
    assert next_month(day) == (day.replace(day=28) + timedelta(days=4)).replace(day=1)


def test_the_calendar_has_an_end() -> None:
    assert next_month(date(2100, 12, 5)) == date(2100, 12, 1)
    assert next_month(date(1990, 1, 5), -1) == date(1990, 1, 1)


@pytest.mark.parametrize(
    ("typed", "clock"), [("", None), (" ", None), ("18:30", time(18, 30)), ("7:05", time(7, 5))]
)
def test_a_time_of_day_is_typed_or_left_out(typed: str, clock: time | None) -> None:
    assert clock_of(typed) == clock


@pytest.mark.parametrize("typed", ["18", "18:3", "24:00", "7:61", "six", "18:30:00", "-1:30"])
def test_what_is_no_time_of_day_is_refused(typed: str) -> None:
    with pytest.raises(ValueError, match="is no time of day"):
        clock_of(typed)
