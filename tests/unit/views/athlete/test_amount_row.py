"""Loads as they are typed."""

from decimal import Decimal

import pytest

from app.views.athlete.amount_row import load_of, plain_kg


@pytest.mark.parametrize(
    ("text", "load"),
    [("12.5", "12.5"), (" 7,25 ", "7.25"), ("0", "0"), ("1000", "1000"), ("2e1", "20"), ("1.5000", "1.5")],
)
def test_a_load_is_understood_with_a_point_and_with_a_comma(text: str, load: str) -> None:
    assert load_of(text) == Decimal(load)


@pytest.mark.parametrize("text", ["", "heavy", "-1", "1000.5", "nan", "inf", "1.0005", "1,000,000", "12 kg"])
def test_what_is_no_load_is_left_unknown(text: str) -> None:
    assert load_of(text) is None


@pytest.mark.parametrize(("load", "text"), [("20", "20"), ("12.50", "12.5"), ("0", "0"), ("1E+2", "100")])
def test_kilograms_are_written_without_needless_zeros(load: str, text: str) -> None:
    assert plain_kg(Decimal(load)) == text
