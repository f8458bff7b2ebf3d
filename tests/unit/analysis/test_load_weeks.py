"""Days of rest are nought, days that are unknown are not, and a week with one of these is no number."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from app.analysis.load_course import load_course, rolling_mean, weight
from app.analysis.load_weeks import DayLoad, loads_by_day, loads_by_week, monotony, spread, strain
from tests.reviewed import MONDAY, TODAY, record, session


def test_a_day_without_a_session_is_a_rest_day_once_it_is_over() -> None:
    found = [each.load for each in loads_by_day(record())]
    assert found == [200, 0, 200, 0, 200, 0, 0]


def test_a_day_is_unknown_as_soon_as_one_of_its_sessions_is() -> None:
    runs = (session(), session(rpe=None), session(MONDAY + timedelta(days=1), minutes=None))
    assert [each.load for each in loads_by_day(record(sessions=runs))][:3] == [None, None, 0]


def test_two_sessions_of_a_day_are_added_up() -> None:
    (day,) = loads_by_day(record(sessions=(session(), session(rpe=2))), MONDAY, MONDAY)
    assert day == DayLoad(MONDAY, 280.0, 2)


def test_an_effort_of_nought_is_known() -> None:
    (day,) = loads_by_day(record(sessions=(session(rpe=0),)), MONDAY, MONDAY)
    assert day.load == 0


@pytest.mark.parametrize(("since", "today"), [(None, TODAY), (TODAY, TODAY), (date(2026, 9, 1), MONDAY)])
def test_days_before_the_record_began_and_from_today_on_are_unknown(since: date | None, today: date) -> None:
    found = loads_by_day(record(sessions=(), since=since, today=today))
    assert {each.load for each in found} == {None}


def test_a_week_with_an_unknown_day_has_no_total_and_no_monotony() -> None:
    runs = (*record().sessions, session(MONDAY + timedelta(days=6), rpe=None))
    (week,) = loads_by_week(record(sessions=runs))
    assert (week.total, week.monotony, week.strain) == (None, None, None)
    assert (week.known, week.days_known) == (600, 6)
    assert week.reason == "A day of this week is unknown."


def test_the_week_under_way_is_incomplete() -> None:
    (week,) = loads_by_week(record(today=MONDAY + timedelta(days=6)))
    assert week.total is None
    assert week.days_known == 6


def test_a_range_within_weeks_touches_each_of_them() -> None:
    looked = record(
        first=MONDAY - timedelta(days=1), last=MONDAY + timedelta(days=7), today=date(2026, 12, 1)
    )
    assert [week.days_known for week in loads_by_week(looked)] == [1, 7, 1]


def test_monotony_needs_two_days() -> None:
    assert monotony([]) is None
    assert monotony([300.0]) is None
    assert strain([300.0, None]) is None
    with pytest.raises(ValueError, match="two values"):
        spread([1.0])


def test_a_course_begins_anew_after_an_unknown_day() -> None:
    days = [
        DayLoad(MONDAY + timedelta(days=number), load) for number, load in enumerate((100.0, None, 500.0))
    ]
    first, gap, anew = load_course(days)
    assert (first.acute, first.chronic, first.days) == (100, 100, 1)
    assert (gap.acute, gap.chronic, gap.days) == (None, None, 0)
    assert (anew.acute, anew.chronic, anew.days) == (500, 500, 1)


def test_a_mean_of_no_day_is_none() -> None:
    assert load_course([]) == ()
    with pytest.raises(ValueError, match="one day"):
        weight(0)


def test_a_plain_mean_needs_every_one_of_its_days() -> None:
    assert rolling_mean([], 7) is None
    assert rolling_mean([100.0] * 6, 7) is None
    assert rolling_mean([0.0, *[100.0] * 7], 7) == 100
    with pytest.raises(ValueError, match="one day"):
        rolling_mean([1.0], 0)


def test_plain_means_begin_anew_after_an_unknown_day_too() -> None:
    loads = [70.0] * 28 + [None] + [10.0] * 7
    course = load_course(DayLoad(MONDAY + timedelta(days=number), load) for number, load in enumerate(loads))
    assert (course[5].mean_acute, course[6].mean_acute, course[26].mean_chronic) == (None, 70, None)
    assert (course[27].mean_acute, course[27].mean_chronic) == (70, 70)
    assert (course[28].mean_acute, course[34].mean_acute) == (None, None)
    assert (course[35].mean_acute, course[35].mean_chronic) == (10, None)


def test_a_corrected_effort_changes_the_day() -> None:
    changed = record(sessions=(replace(session(), rpe=9),))
    assert loads_by_day(changed)[0].load == 360
