"""The guard against formulas in exported text."""

import pytest

from app.reports.guard import guarded


@pytest.mark.parametrize("sign", ["=", "+", "-", "@", "\t", "\r", "\0"])
def test_text_that_begins_like_a_formula_gets_an_apostrophe(sign: str) -> None:
    assert guarded(f"{sign}SUM(A1)") == f"'{sign}SUM(A1)"


@pytest.mark.parametrize("text", ["", "Squat", "'quoted", "2 - 1", " =1"])
def test_other_text_stays_as_it_is(text: str) -> None:
    assert guarded(text) == text
