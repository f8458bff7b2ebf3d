"""The course of pain keeps apart what was asked before, stated during and answered the morning after."""

from datetime import timedelta

import pytest

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
        [(MONDAY, answers(pain=1)), (tuesday + timedelta(days=1), answers(pain=None))],
    )
    assert found == (
        PainDay(MONDAY, 1, 4, 1),
        PainDay(tuesday, None, None, 0),
        PainDay(tuesday + timedelta(days=1), None, None, None),
    )


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
