"""Stretches of time: ISO weeks across the year's end, months, days; nothing lost, nothing twice."""

from datetime import date, timedelta
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from app.views.review.athlete.buckets import Step, buckets, gathered, step_of

DAYS = st.dates(date(2019, 1, 1), date(2031, 12, 31))


@given(DAYS, st.integers(0, 800), st.sampled_from(Step))
def test_buckets_follow_one_another_without_a_gap_and_hold_both_days(
    first: date, more: int, step: Step
) -> None:
    last = first + timedelta(days=more)
    found = buckets(first, last, step)
    assert found[0].first <= first <= found[0].last
    assert found[-1].first <= last <= found[-1].last
    for before, after in pairwise(found):
        assert after.first == before.last + timedelta(days=1)


@given(DAYS, st.integers(0, 400), st.sampled_from(Step))
def test_every_day_falls_into_the_one_bucket_that_holds_it(first: date, more: int, step: Step) -> None:
    days = [first + timedelta(days=number) for number in range(more + 1)]
    found = buckets(days[0], days[-1], step)
    parts = gathered(days, days, found)
    assert [day for part in parts for day in part] == days
    assert all(
        bucket.first <= day <= bucket.last for bucket, part in zip(found, parts, strict=True) for day in part
    )


def test_days_outside_are_left_out() -> None:
    week = buckets(date(2026, 11, 16), date(2026, 11, 16), Step.WEEK)
    days = [date(2026, 11, 15), date(2026, 11, 22), date(2026, 11, 23)]
    assert gathered(days, days, week) == ((date(2026, 11, 22),),)


def test_weeks_are_those_of_iso_8601_across_the_year_s_end() -> None:
    """ISO 8601: 31 December 2024 lies in week 1 of 2025, 1 January 2027 in week 53 of 2026."""
    (week,) = buckets(date(2024, 12, 31), date(2024, 12, 31), Step.WEEK)
    assert (week.label, week.of) == ("1", "2024-12-30")
    labels = [bucket.label for bucket in buckets(date(2026, 12, 30), date(2027, 1, 5), Step.WEEK)]
    assert labels == ["53 ’26", "1 ’27"]


def test_months_have_their_own_length() -> None:
    found = buckets(date(2028, 1, 31), date(2028, 3, 1), Step.MONTH)
    assert [(bucket.last.day, bucket.label, bucket.of) for bucket in found] == [
        (31, "Jan ’28", "2028-01"),
        (29, "Feb ’28", "2028-02"),
        (31, "Mar ’28", "2028-03"),
    ]


def test_a_stretch_of_years_is_shown_by_month() -> None:
    assert step_of(date(2026, 1, 1), date(2026, 12, 31)) is Step.WEEK
    assert step_of(date(2016, 1, 1), date(2026, 12, 31)) is Step.MONTH
