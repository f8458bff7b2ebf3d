"""What an athlete says before a session, and the sum of it."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.plan import Side
from app.domain.readiness import ITEMS, Readiness

ASKED = Readiness(
    "0190163d-8694-739b-aea5-966c26f8ad91",
    "Ines",
    datetime(2026, 3, 2, 17, 30, tzinfo=UTC),
    "Europe/Lisbon",
)


def test_the_sum_of_the_published_example_is_12() -> None:
    # Sleep 3, fatigue 2, stress 4, soreness 3 make 12: Hooper et al. 1995, Med Sci Sports Exerc 27:106-112.
    assert replace(ASKED, sleep=3, fatigue=2, stress=4, soreness=3).total == 12


@given(st.tuples(*[st.none() | st.integers(1, 7)] * 4))
def test_the_sum_lies_from_4_to_28_and_is_unknown_when_one_item_is(items: tuple[int | None, ...]) -> None:
    sleep, fatigue, stress, soreness = items
    total = replace(ASKED, sleep=sleep, fatigue=fatigue, stress=stress, soreness=soreness).total
    if None in items:
        assert total is None
    else:
        assert total is not None
        assert 4 <= total <= 28


@pytest.mark.parametrize("name", ITEMS)
@pytest.mark.parametrize("answer", [0, 8, True, 3.0, "3"])
def test_an_item_is_a_whole_number_from_1_to_7(name: str, answer: object) -> None:
    with pytest.raises(ValueError, match=f"{name} is a whole number from 1 to 7"):
        replace(ASKED, **{name: answer})  # type: ignore[arg-type]


def test_pain_is_0_to_10_and_keeps_its_side() -> None:
    assert replace(ASKED, pain=0, pain_place="shoulder", pain_side=Side.LEFT).pain_side is Side.LEFT
    with pytest.raises(ValueError, match="pain is a whole number from 0 to 10"):
        replace(ASKED, pain=11)


def test_a_moment_without_a_zone_is_refused() -> None:
    with pytest.raises(ValueError, match="with its time zone"):
        replace(ASKED, at=datetime(2026, 3, 2, 17, 30))  # noqa: DTZ001 - what is refused
