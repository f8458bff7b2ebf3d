"""The course of pain keeps apart what was asked before, stated during and answered the morning after."""

from datetime import timedelta

import pytest

from app.analysis.figures_wellbeing import pain_day_figures
from app.analysis.pain import Morning, PainDay, morning_after, pain_course, zone
from tests.answered import answers
from tests.reviewed import MONDAY, session


def test_each_day_has_what_was_said_of_it_and_the_highest_of_it() -> None:
    tuesday = MONDAY + timedelta(days=1)
    found = pain_course(
        [
            session(pain=2, pain_next_morning=1),
            session(pain=4, pain_next_morning=None),
            session(tuesday, pain=None),
        ],
        [
            (MONDAY, answers(pain=1)),
            (MONDAY, answers(pain=3)),
            (tuesday + timedelta(days=1), answers(pain=None)),
        ],
    )
    assert found == (
        PainDay(MONDAY, 1, 4, 1, trained=True, asked=True),
        PainDay(tuesday, None, None, 0, trained=True, asked=True),
        PainDay(tuesday + timedelta(days=1), None, None, None),
    )


@pytest.mark.parametrize(
    ("before", "after", "asked", "rule", "value"),
    [
        (2, 2, True, Morning.SETTLED, 1),
        (2, 3, True, Morning.NOT_SETTLED, 0),
        (2, None, True, Morning.NOT_ANSWERED, None),
        (2, None, False, Morning.UNKNOWN, None),
        (None, 2, True, Morning.SETTLED, 1),
        (None, 3, True, Morning.UNKNOWN, None),
    ],
)
def test_the_rule_of_the_next_morning_is_told_by_day(
    before: int | None, after: int | None, asked: bool, rule: Morning, value: int | None
) -> None:
    # Rule: Thomee 1997, from memory; above the pain before training is not settled.
    day = PainDay(MONDAY, before, 4, after, trained=True, asked=asked)
    _, _, settled = pain_day_figures(day)
    assert (day.morning, settled.value) == (rule, value)
    assert (settled.reason is None) is (value is not None)


def test_a_day_without_a_session_has_no_morning_after() -> None:
    (day,) = pain_course([], [(MONDAY, answers(pain=2))])
    assert day.morning is None
    before, during, settled = pain_day_figures(day)
    assert (before.value, during.value, settled.value) == (2, None, None)
    assert (during.reason, settled.reason) == ("There is no session.", "There is no session.")


def test_no_pain_is_known_and_not_unknown() -> None:
    (day,) = pain_course([session(pain=0)], [])
    assert (day.before, day.during) == (None, 0)


def test_what_was_not_asked_is_unknown_and_not_owed() -> None:
    assert morning_after(1, None, asked=False) is Morning.UNKNOWN
    assert morning_after(1, None, asked=True) is Morning.NOT_ANSWERED


@pytest.mark.parametrize("pain", [-1, 11])
def test_pain_lies_from_nought_to_ten(pain: int) -> None:
    with pytest.raises(ValueError, match="0 to 10"):
        zone(pain)
