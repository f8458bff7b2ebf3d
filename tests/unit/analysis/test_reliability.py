"""How far a test can be trusted is told by the first two tries of each day, athlete and side of everybody."""

from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.reliability import Trust, detectable_changes, trusts_of
from app.domain.plan import Side
from app.domain.tried import Tried

DAY = date(2026, 11, 2)


def tried(
    value: float,
    attempt: int = 1,
    *,
    whose: bytes = b"1",
    test: str = "single_hop",
    side: Side = Side.LEFT,
    day: date = DAY,
    unit: str = "cm",
) -> Tried:
    return Tried(whose, test, side, day, attempt, value, unit)


def hops(tries: list[Tried]) -> Trust:
    """What is known of the hop."""
    return trusts_of(tries)["single_hop"]


def by_days(pairs: list[tuple[float, float]]) -> list[Tried]:
    """Two tries a day of one athlete."""
    return [
        tried(value, attempt, day=DAY + timedelta(days=place))
        for place, pair in enumerate(pairs)
        for attempt, value in enumerate(pair, 1)
    ]


def test_the_first_two_tries_of_a_day_and_side_are_a_pair() -> None:
    tries = [
        tried(140),
        tried(150, whose=b"2"),
        tried(142, 2),
        tried(139, 3),
        tried(130, side=Side.RIGHT),
        tried(131, 2, side=Side.RIGHT),
        tried(151, day=DAY + timedelta(days=1)),
    ]
    assert (hops(tries).pairs, hops(tries).athletes) == (2, 2)


def test_another_unit_and_tests_of_which_nothing_is_known_are_left_out() -> None:
    strange = [tried(1.4, unit="m"), tried(1.5, 2, unit="m"), tried(3, test="unheard")]
    assert set(trusts_of(strange)) == {"single_hop"}
    assert hops(strange) == Trust()


@given(st.lists(st.tuples(st.integers(50, 300), st.integers(50, 300)), min_size=10, max_size=40))
def test_errors_are_those_worked_with_numpy(pairs: list[tuple[int, int]]) -> None:
    found = hops(by_days([(float(one), float(other)) for one, other in pairs]))
    first, second = np.array(pairs, float).T
    apart = first - second
    # Hopkins 2000 (secondary: course notes) and Bland and Altman 1986, by numpy.
    assert found.error == pytest.approx(apart.std(ddof=1) / 2**0.5, abs=1e-9)
    assert found.detectable == pytest.approx(1.959964 * apart.std(ddof=1), rel=1e-6)
    assert found.repeatability == pytest.approx(np.sqrt((apart**2).mean()), abs=1e-9)
    assert found.agreement is not None
    assert found.agreement.bias == pytest.approx(apart.mean(), abs=1e-9)
    assert found.variation == pytest.approx(100 * apart.std(ddof=1) / 2**0.5 / np.mean(pairs), abs=1e-9)
    assert (found.worthwhile, found.shows_small) == (None, None)


def test_under_ten_pairs_nothing_is_said_of_the_error() -> None:
    found = hops(by_days([(140, 141)] * 9))
    assert found == Trust(9, 1)
    assert detectable_changes({"single_hop": found}) == {}


def test_tries_of_two_athletes_are_no_pair() -> None:
    assert hops([tried(140, whose=b"1"), tried(141, 2, whose=b"2")]).pairs == 0


def test_the_worthwhile_change_is_of_each_athletes_last_day_freed_of_the_error() -> None:
    # Values 1 to 10 on the left and 5 more on the right, tried twice alike: means 3.5 to 12.5, whose SD
    # (n - 1) is sqrt(82.5 / 9), and no error; a day before counts nothing.
    tries = [
        tried(value, attempt, whose=bytes([number]), side=side, day=day)
        for number in range(1, 11)
        for day, times in ((DAY - timedelta(days=7), 50), (DAY, 1))
        for side, more in ((Side.LEFT, 0), (Side.RIGHT, 5))
        for attempt in (1, 2)
        for value in (number * times + more,)
    ]
    found = hops(tries)
    assert found.athletes == 10
    assert found.worthwhile == pytest.approx(0.2 * (82.5 / 9) ** 0.5)
    assert found.shows_small is True
    assert hops([each for each in tries if each.whose != b"\x01"]).worthwhile is None


@given(
    st.lists(
        st.lists(st.integers(100, 200), min_size=4, max_size=4),
        min_size=10,
        max_size=14,
    )
)
def test_the_spread_is_freed_of_as_much_error_as_a_mean_of_tries_holds(people: list[list[int]]) -> None:
    # Reference: numpy. Two tries of two sides are averaged, so that a quarter of a try's variance is left.
    tries = [
        tried(value, 1 + place % 2, whose=bytes([number]), side=(Side.LEFT, Side.RIGHT)[place // 2])
        for number, values in enumerate(people)
        for place, value in enumerate(values)
    ]
    table = np.array(people, float)
    apart = np.concatenate([table[:, 1] - table[:, 0], table[:, 3] - table[:, 2]])
    error = apart.var(ddof=1) / 2
    left = max(table.mean(axis=1).var(ddof=1) - error / 4, 0.0)
    assert hops(tries).worthwhile == pytest.approx(0.2 * left**0.5, abs=1e-6)


def test_tries_made_of_parts_are_trusted_by_the_value_they_come_to() -> None:
    tries = [
        tried(
            value,
            attempt,
            test=f"drop_jump.{part}",
            unit="ms",
            side=Side.BOTH,
            day=DAY + timedelta(days=place),
        )
        for place in range(10)
        for attempt in (1, 2)
        for part, value in (("contact", 200.0), ("flight", 500.0 if attempt == 1 else 460.0))
    ]
    found = trusts_of(tries)
    assert set(found) == {"drop_jump_flight", "drop_jump_height"}
    agreed = found["drop_jump_flight"].agreement
    assert agreed is not None
    assert agreed.bias == pytest.approx(2.5 - 2.3)


def test_each_lift_is_trusted_for_itself() -> None:
    tries = [
        tried(90.0 + attempt, attempt, test=f"one_rep_max:{lift}", unit="kg", side=Side.BOTH)
        for lift in ("Front squat", "Bench press")
        for attempt in (1, 2)
    ]
    assert {key: trust.pairs for key, trust in trusts_of(tries).items()} == {
        "one_rep_max:Bench press": 1,
        "one_rep_max:Front squat": 1,
    }
