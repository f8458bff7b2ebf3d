"""Readiness is compared with the athlete's own days, and with too few of them it is not compared."""

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.readiness_course import (
    ReadinessPoint,
    against_own,
    latest_known,
    latest_readiness,
    local_day,
    readiness_course,
)
from app.domain.readiness import Readiness
from tests.answered import answers

LAST = datetime(2026, 11, 21, 9, tzinfo=UTC)


def days(count: int, **changes: object) -> list[Readiness]:
    """Answers on as many days before the last one, their sum 12 and 13 by turns."""
    return [
        answers(at=LAST - timedelta(days=number), zone="UTC", **({"sleep": 3 + number % 2} | changes))
        for number in range(1, count + 1)
    ]


@pytest.mark.parametrize(("count", "known"), [(13, False), (14, True)])
def test_fourteen_days_are_wanted_to_compare_with(count: int, *, known: bool) -> None:
    last = readiness_course([*days(count), answers(at=LAST, zone="UTC", fatigue=7)])[-1]
    assert (last.z is not None) is known
    assert (last.reason is None) is known
    assert last.days == count


def test_only_the_28_days_before_count() -> None:
    last = readiness_course([*days(40), answers(at=LAST, zone="UTC")])[-1]
    assert last.days == 28


def test_a_day_with_a_missing_answer_is_unknown_and_compared_with_by_none() -> None:
    last = readiness_course([*days(20, stress=None), answers(at=LAST, zone="UTC")])[-1]
    assert (last.z, last.days) == (None, 0)
    missing = readiness_course([*days(20), answers(at=LAST, zone="UTC", sleep=None)])[-1]
    assert (missing.total, missing.z) == (None, None)
    assert missing.reason == "One of the four questions is not answered."


def test_days_that_were_all_the_same_give_nothing_to_compare_with() -> None:
    assert against_own(20, [12.0] * 28) == (
        None,
        "All days before were the same, so that there is no spread to compare with.",
    )


def test_of_two_answers_of_a_day_the_later_stands() -> None:
    (point,) = readiness_course(
        [answers(at=LAST, zone="UTC", sleep=7), answers(at=LAST - timedelta(hours=2), zone="UTC")]
    )
    assert point.total == 16


def test_the_day_is_that_of_the_clock_on_the_wall() -> None:
    late = datetime(2026, 11, 21, 23, 30, tzinfo=UTC)
    assert local_day(answers(at=late, zone="Pacific/Auckland")).day == 22
    assert local_day(answers(at=late, zone="UTC")).day == 21


def test_the_latest_is_the_last_of_the_course() -> None:
    given = [*days(20), answers(at=LAST, zone="UTC", fatigue=7)]
    assert latest_readiness(given) == readiness_course(given)[-1]
    assert latest_readiness([]) is None


TOTALS = st.lists(st.one_of(st.none(), st.integers(1, 7)), max_size=45)


@given(TOTALS, st.integers(0, 45), st.integers(0, 45))
def test_what_is_known_last_is_what_the_whole_course_knows_last(
    sleep: list[int | None], start: int, length: int
) -> None:
    """A day has no sum where sleep is not answered."""
    given_answers = [
        answers(at=LAST - timedelta(days=number), zone="UTC", sleep=each) for number, each in enumerate(sleep)
    ]
    first = (LAST - timedelta(days=start + length)).date()
    last = (LAST - timedelta(days=start)).date()
    points = readiness_course(given_answers, first, last)
    found = latest_known(given_answers, first, last)
    assert found == ((last_with("total", points), last_with("z", points)) if points else None)


def last_with(what: str, points: tuple[ReadinessPoint, ...]) -> ReadinessPoint:
    """The last point of which this is known, else the last of all."""
    return next((point for point in reversed(points) if getattr(point, what) is not None), points[-1])


@pytest.mark.parametrize(("known", "days_known"), [(13, 13), (14, 14)])
def test_the_day_that_is_compared_is_the_last_with_fourteen_before(known: int, days_known: int) -> None:
    given_answers = [*days(known), answers(at=LAST, zone="UTC", fatigue=7)]
    found = latest_known(given_answers, LAST.date() - timedelta(days=40), LAST.date())
    assert found is not None
    assert (found[1].z is not None, found[1].days) == (known >= 14, days_known)
    assert found[0].day == LAST.date()


def test_a_day_without_a_sum_or_with_nothing_to_compare_with_is_looked_past() -> None:
    sums = [*days(14), answers(at=LAST, zone="UTC", fatigue=7)]
    later = answers(at=LAST + timedelta(days=1), zone="UTC", sleep=None)
    found = latest_known([*sums, later], LAST.date() - timedelta(days=40), LAST.date() + timedelta(days=1))
    assert found == (readiness_course(sums)[-1],) * 2
    after_a_break = answers(at=LAST + timedelta(days=27), zone="UTC")
    found = latest_known([*sums, later, after_a_break], LAST.date(), LAST.date() + timedelta(days=27))
    assert found is not None
    assert (found[0].day, found[0].z) == (LAST.date() + timedelta(days=27), None)
    assert found[1] == readiness_course(sums)[-1]


def test_the_first_and_the_last_day_asked_for_belong_to_the_course() -> None:
    points = readiness_course(days(5), LAST.date() - timedelta(days=4), LAST.date() - timedelta(days=2))
    assert [(LAST.date() - point.day).days for point in points] == [4, 3, 2]


def test_two_days_have_a_spread_already() -> None:
    last = readiness_course([*days(2), answers(at=LAST, zone="UTC")])[-1]
    assert last.sd == pytest.approx(0.5**0.5)
