"""Every reason to stand first says by which rule and limit, with the numbers it rests on."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from app.analysis.attention import RULES as ORDER
from app.analysis.attention import attention
from app.analysis.reason_figures import PAINFUL_RULES, RULES, reason_figures
from app.analysis.reasons import Level, Limits, Reason
from app.domain.squad import OwedKind, OwedRating, SquadMember
from tests.answered import answers
from tests.reviewed import MONDAY, TODAY, record, session

SATURDAY = MONDAY + timedelta(days=5)


def test_every_rule_has_its_figure_and_no_figure_is_without_its_rule() -> None:
    assert set(RULES) == set(ORDER)
    assert len(PAINFUL_RULES) == len(RULES)
    assert all(rule.formula and rule.source for rule, _ in RULES.values())


def test_pain_above_the_limit_says_the_limit_and_how_far_it_looks_back() -> None:
    looked = record(sessions=(session(SATURDAY, pain=6, pain_next_morning=3),))
    found = attention(SquadMember(looked, SATURDAY), limits=Limits(pain=4, days_back=9)).reasons
    (figure,) = reason_figures(found, Limits(pain=4, days_back=9))
    assert (figure.value, figure.unit) == (6.0, "0-10")
    assert dict(figure.inputs) == {
        "day": "2026-11-21",
        "after": 3,
        "limit": 4,
        "days looked back on": 9,
    }


def test_readiness_says_how_many_spreads_it_is_off() -> None:
    reason = Reason("readiness", Level.SQUARE, "", (("day", TODAY), ("z", 2.4), ("days", 20)))
    (figure,) = reason_figures([reason])
    assert (figure.value, figure.unit) == (2.4, "SD")
    assert ("limit", 2.0) in figure.inputs


def test_somebody_without_any_session_has_no_number_of_days_and_says_so() -> None:
    reason = Reason("no_session", Level.SQUARE, "", (("missed", 2), ("due", 2)))
    (figure,) = reason_figures([reason])
    assert figure.value is None
    assert figure.reason == "There was no session yet."


@pytest.mark.parametrize("red_flag", [True, False])
def test_a_warning_sign_is_one(*, red_flag: bool) -> None:
    at = datetime(SATURDAY.year, SATURDAY.month, SATURDAY.day, 9, tzinfo=UTC)
    looked = record(readiness=(answers(at=at, zone="UTC", red_flag=red_flag),))
    found = reason_figures(attention(SquadMember(looked, SATURDAY)).reasons)
    assert [figure.value for figure in found] == ([1.0] if red_flag else [])


def test_the_most_urgent_comes_first() -> None:
    looked = record(sessions=(session(SATURDAY, pain=7, pain_next_morning=None, next_morning_asked=True),))
    owed = OwedRating(OwedKind.NEXT_MORNING_PAIN, "1", looked.athlete, "", SATURDAY, datetime.now(UTC), "UTC")
    found = reason_figures(attention(replace(SquadMember(looked, SATURDAY), owed=(owed,))).reasons)
    assert [figure.name for figure in found] == [
        "First by pain in a session",
        "First by mornings not answered",
    ]
