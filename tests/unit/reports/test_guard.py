"""The guard against formulas in exported text."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.reports.guard import FORMULA_SIGNS, guarded, unguarded


@pytest.mark.parametrize("sign", ["=", "+", "-", "@", "\t", "\r", "\0"])
def test_text_that_begins_like_a_formula_gets_an_apostrophe(sign: str) -> None:
    assert guarded(f"{sign}SUM(A1)") == f"'{sign}SUM(A1)"


@pytest.mark.parametrize("text", ["", "Squat", "'quoted", "2 - 1", " =1", "'", "''"])
def test_other_text_stays_as_it_is(text: str) -> None:
    assert guarded(text) == text


def test_text_that_looks_guarded_gets_one_more() -> None:
    assert guarded("'=1") == "''=1"


@given(st.text("'=+-@\t\r\0ab", max_size=5))
def test_every_text_is_given_back_as_it_was_and_none_begins_a_formula(text: str) -> None:
    assert unguarded(guarded(text)) == text
    assert guarded(text)[:1] not in FORMULA_SIGNS
