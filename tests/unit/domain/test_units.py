"""Whole milliseconds from seconds, and seconds and clocks from them."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.units import clock_text, exact_clock_text, milliseconds, seconds_text


@pytest.mark.parametrize(
    ("seconds", "ms"),
    [
        (0, 0),
        (1, 1000),
        (0.1, 100),
        (1.005, 1005),
        (2.675, 2675),
        (Decimal("0.0005"), 1),
        (Decimal("0.0004"), 0),
    ],
)
def test_the_decimal_text_decides_and_halves_go_up(seconds: float | Decimal, ms: int) -> None:
    # 1.005 and 2.675 are stored below their text: 1.005 * 1000 is 1004.999... in binary.
    assert milliseconds(seconds) == ms


@pytest.mark.parametrize("seconds", [float("nan"), float("inf"), Decimal("-Infinity")])
def test_a_length_that_is_not_finite_is_refused(seconds: float | Decimal) -> None:
    with pytest.raises(ValueError, match="not a length of time"):
        milliseconds(seconds)


@given(st.integers(-(10**7), 10**7))
def test_seconds_as_text_lose_nothing(ms: int) -> None:
    assert milliseconds(Decimal(seconds_text(ms))) == ms


@pytest.mark.parametrize(
    ("ms", "text"), [(0, "0"), (3000, "3"), (1500, "1.5"), (50, "0.05"), (12_345, "12.345"), (-1500, "-1.5")]
)
def test_seconds_are_written_as_the_trade_writes_them(ms: int, text: str) -> None:
    assert seconds_text(ms) == text


@pytest.mark.parametrize(
    ("ms", "text"),
    [
        (0, "0:00"),
        (999, "0:00"),
        (59_999, "0:59"),
        (60_000, "1:00"),
        (3_599_000, "59:59"),
        (3_600_000, "1:00:00"),
    ],
)
def test_a_clock_counts_whole_seconds_and_has_hours_only_from_one_on(ms: int, text: str) -> None:
    assert clock_text(ms) == text


def test_a_clock_never_runs_below_zero() -> None:
    assert clock_text(-5) == "0:00"


@pytest.mark.parametrize(
    ("ms", "text"), [(21_600_000, "6:00:00"), (21_600_100, "6:00:00.1"), (59_050, "0:59.05"), (1, "0:00.001")]
)
def test_an_exact_clock_has_part_seconds_where_there_are_any(ms: int, text: str) -> None:
    assert exact_clock_text(ms) == text
