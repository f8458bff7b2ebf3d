"""Zones of pain, the morning after and readiness at the limits that their sources set."""

import pytest

from app.analysis.pain import Morning, Zone, morning_after, rising_two_weeks, zone
from app.analysis.readiness_course import against_own
from tests.answered import answers


@pytest.mark.parametrize(
    ("pain", "expected"),
    [
        # Thomee 1997 and Silbernagel et al. 2007: allowed up to 5 of 10; the bound 2 is from memory. Sources
        # print 0-2, 2-5, 5-10, which overlap; on whole numbers 2 and 5 belong below.
        (0, Zone.SAFE),
        (2, Zone.SAFE),
        (3, Zone.CAUTION),
        (5, Zone.CAUTION),
        (6, Zone.STOP),
        (10, Zone.STOP),
        (None, None),
    ],
)
def test_zones_of_pain(pain: int | None, expected: Zone | None) -> None:
    assert zone(pain) is expected


@pytest.mark.parametrize(
    ("before", "after", "expected"),
    [
        # Thomee 1997, from memory: pain must have subsided by the next morning; unknown is not settled.
        (2, 2, Morning.SETTLED),
        (2, 1, Morning.SETTLED),
        (2, 3, Morning.NOT_SETTLED),
        (0, 1, Morning.NOT_SETTLED),
        (2, None, Morning.NOT_ANSWERED),
        (None, 2, Morning.SETTLED),
        (None, 3, Morning.UNKNOWN),
    ],
)
def test_the_morning_after(before: int | None, after: int | None, expected: Morning) -> None:
    assert morning_after(before, after) is expected


@pytest.mark.parametrize(
    ("weeks", "rising"),
    [
        ([1, 2, 3], True),
        ([1, 2, 2], False),
        ([3, 2, 4], False),
        ([9, 1, 2, 3], True),
        ([1, None, 3], None),
        ([1, 2], None),
    ],
)
def test_two_rising_weeks(weeks: list[float | None], *, rising: bool | None) -> None:
    # Thomee 1997, from memory: pain must not rise from week to week.
    assert rising_two_weeks(weeks) is rising


def test_the_sum_of_four_answers() -> None:
    # Hooper et al. 1995, Med Sci Sports Exerc 27:106: 1 to 7 each, 4 to 28 in all; 3 + 2 + 4 + 3 = 12.
    assert answers(sleep=3, fatigue=2, stress=4, soreness=3).total == 12
    assert answers(sleep=3, fatigue=2, stress=4, soreness=None).total is None


def test_readiness_is_compared_with_the_own_days() -> None:
    # The definition of a z score: 14 days of 10 and 14 have mean 12 and SD (n - 1) 2.0755; 16 is 1.9272
    # above.
    z, reason = against_own(16, [10.0, 14.0] * 7)
    assert z == pytest.approx(4 / 2.0755, abs=5e-4)
    assert reason is None
