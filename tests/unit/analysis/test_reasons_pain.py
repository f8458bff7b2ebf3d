"""Reasons from pain and readiness at the limits of their rules; the latest of its kind is told."""

import math
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

import pytest

from app.analysis.readiness_course import against_own
from app.analysis.reasons import Limits, Reason
from app.analysis.reasons_pain import open_mornings, pain_reasons, recent_sessions
from app.domain.readiness import Readiness
from app.domain.reviewed import AthleteRecord
from tests.answered import answers
from tests.reviewed import record, session

TODAY = date(2026, 11, 26)
LIMITS = Limits()


def answered(back: int, **changes: Any) -> Readiness:  # noqa: ANN401 - whatever an answer holds
    """An answer at nine o'clock, so many days ago."""
    at = datetime.combine(TODAY - timedelta(days=back), time(9), UTC)
    return answers(at=at, zone="UTC", **changes)


def looked(**changes: Any) -> AthleteRecord:  # noqa: ANN401 - whatever a record holds
    """The record on a Thursday, without sessions where none are given."""
    return record(**({"today": TODAY, "sessions": ()} | changes))


def reasons(limits: Limits = LIMITS, **changes: Any) -> dict[str, Reason]:  # noqa: ANN401 - see above
    """The reasons by their rule; there is one of each."""
    found = list(pain_reasons(looked(**changes), limits))
    assert len({each.rule for each in found}) == len(found)
    return {each.rule: each for each in found}


def ago(days: int, **changes: Any) -> Any:  # noqa: ANN401 - a session
    """A session so many days ago, pain 0 and 0 on the morning after."""
    return session(TODAY - timedelta(days=days), **({"pain": 0, "pain_next_morning": 0} | changes))


def test_of_two_sessions_with_pain_above_the_limit_the_later_is_told() -> None:
    found = reasons(sessions=(ago(5, pain=9), ago(2, pain=7), ago(4, pain=8)))
    assert dict(found["pain_above"].numbers) == {"pain": 7, "day": TODAY - timedelta(days=2)}


@pytest.mark.parametrize(("back", "told"), [(7, True), (8, False)])
def test_seven_days_are_looked_back_on(back: int, *, told: bool) -> None:
    assert ("pain_above" in reasons(sessions=(ago(back, pain=6),))) is told
    assert ("pain_before" in reasons(readiness=(answered(back, pain=6),))) is told
    assert ("warning_sign" in reasons(readiness=(answered(back, red_flag=True),))) is told
    assert (len(recent_sessions(looked(sessions=(ago(back),)), 7)) == 1) is told


def test_pain_before_training_is_told_above_the_limit_and_of_the_latest_day() -> None:
    assert "pain_before" not in reasons(readiness=(answered(1, pain=5),))
    found = reasons(readiness=(answered(4, pain=8), answered(2, pain=6), answered(3, pain=7)))
    assert dict(found["pain_before"].numbers) == {"pain": 6, "day": TODAY - timedelta(days=2)}


def test_the_latest_warning_sign_is_told() -> None:
    found = reasons(readiness=(answered(6, red_flag=True), answered(3, red_flag=True), answered(1)))
    assert dict(found["warning_sign"].numbers) == {"day": TODAY - timedelta(days=3)}


@pytest.mark.parametrize(
    ("pain", "after", "told"), [(5, 5, False), (5, 6, True), (6, 7, False), (None, 5, False), (None, 6, True)]
)
def test_a_morning_above_the_limit_is_told_unless_the_day_was_already(
    pain: int | None, after: int, *, told: bool
) -> None:
    assert ("morning_above" in reasons(sessions=(ago(2, pain=pain, pain_next_morning=after),))) is told


def test_pain_that_was_not_said_is_not_taken_for_pain_above() -> None:
    found = reasons(Limits(pain=0), sessions=(ago(2, pain=None, pain_next_morning=1),))
    assert "morning_above" in found


def test_weeks_are_the_three_whole_ones_before_this_and_of_each_the_highest_counts() -> None:
    # Before a Thursday 5 and 9 days lie in the last whole week, 11 and 14 in the one before, 19 and 22 in the
    # first.
    rising = (
        ago(22, pain=0),
        ago(19, pain=0),
        ago(14, pain=2),
        ago(11, pain=0),
        ago(9, pain=1),
        ago(5, pain=3),
    )
    found = reasons(sessions=(*rising, ago(1, pain=0)))
    assert dict(found["pain_rising"].numbers) == {"first": 0, "second": 2, "third": 3}
    assert "pain_rising" not in reasons(sessions=(*rising[2:], ago(1, pain=5)))


def test_readiness_is_told_from_its_limit_on() -> None:
    before = [answered(number + 1, sleep=1 + 4 * (number % 2), fatigue=4, stress=4) for number in range(14)]
    given = (*before, answered(0, sleep=7, fatigue=6, stress=2, soreness=4))
    z, _ = against_own(19, [12.0, 16.0] * 7)
    assert z is not None
    found = reasons(Limits(readiness_z=z), readiness=given)
    assert dict(found["readiness"].numbers) == {"day": TODAY, "z": 2.4, "days": 14}
    assert "readiness" not in reasons(Limits(readiness_z=math.nextafter(z, 9)), readiness=given)


@pytest.mark.parametrize(("back", "told"), [(7, True), (8, False)])
def test_readiness_of_longer_ago_is_not_told(back: int, *, told: bool) -> None:
    before = [answered(number + back + 1, sleep=3 + number % 2) for number in range(14)]
    assert ("readiness" in reasons(readiness=(*before, answered(back, sleep=7)))) is told


def test_open_mornings_have_come_and_were_asked_after() -> None:
    sessions = (
        ago(0, pain_next_morning=None),
        ago(1, pain_next_morning=None),
        ago(2, pain_next_morning=None, next_morning_asked=False),
        ago(3, pain_next_morning=0),
        ago(4, pain_next_morning=None),
    )
    found = open_mornings(looked(sessions=sessions), 7)
    assert [(TODAY - each.day).days for each in found] == [1, 4]
