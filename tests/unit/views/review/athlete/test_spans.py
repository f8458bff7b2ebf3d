"""Stretches of time: whole weeks that end with the present one, all there is, or two dates."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.views.review.athlete.spans import LONGEST, Span, Stretch

DAYS = st.dates(date(2000, 1, 1), date(2060, 12, 31))


@given(DAYS, st.sampled_from((Span.MONTH, Span.QUARTER, Span.YEAR)))
def test_the_last_weeks_are_whole_and_end_with_the_present_one(today: date, span: Span) -> None:
    first, last = Stretch(span).days(today, None)
    assert first.weekday() == 0
    assert last.weekday() == 6
    assert last - timedelta(days=6) <= today <= last
    assert (last - first).days + 1 == {Span.MONTH: 28, Span.QUARTER: 84, Span.YEAR: 371}[span]


@given(DAYS, st.none() | DAYS)
def test_all_begins_in_the_week_of_the_first_day_known_and_holds_today(
    today: date, since: date | None
) -> None:
    first, last = Stretch(Span.ALL).days(today, since)
    assert first <= today <= last
    assert last - first <= LONGEST
    if since is not None and today - LONGEST < since <= today:
        assert since - timedelta(days=6) <= first <= since


@given(DAYS, DAYS)
def test_two_dates_hold_in_whichever_order(one: date, other: date) -> None:
    first, last = Stretch(Span.DATES, one, other).days(date(2026, 11, 23), None)
    assert last == max(one, other)
    assert first == max(min(one, other), last - LONGEST)


def test_two_dates_of_which_one_is_missing_are_the_usual_twelve_weeks() -> None:
    today = date(2026, 11, 23)
    assert Stretch(Span.DATES, today, None).days(today, None) == Stretch().days(today, None)


@pytest.mark.parametrize("span", Span)
def test_only_all_needs_to_know_since_when(span: Span) -> None:
    assert Stretch(span).needs_since is (span is Span.ALL)
