"""Figures in words: units, bounds, days and weeks; a dash for the unknown."""

import pytest

from app.analysis.figures_adherence import REPS
from app.analysis.figures_load import DAY, MONOTONY, WEEK
from app.analysis.figures_wellbeing import EFFORT, TOTAL
from app.views.review.figure_words import (
    as_text,
    input_words,
    number_words,
    of_words,
    title_words,
    value_words,
    with_bounds,
)


@pytest.mark.parametrize(
    ("value", "expected"),
    [
        (0.0, "0"),
        (0.074, "0.07"),
        (3.4, "3.40"),
        (12.34, "12.3"),
        (142.3, "142"),
        (1452.4, "1\u202f452"),
        (-3.0, "-3"),
    ],
)
def test_numbers_have_as_many_decimals_as_say_something(value: float, expected: str) -> None:
    assert number_words(value) == expected


def test_a_share_is_in_percent_with_its_bounds() -> None:
    figure = REPS.share(("reps met", 81), ("reps prescribed", 263), "None.")
    assert with_bounds(figure) == "31\u202f% (26 to 37\u202f%)"


def test_monotony_is_no_share_and_has_no_unit() -> None:
    assert value_words(MONOTONY.figure(0.79, 7, None, (), (), "2026-11-16")) == "0.79"


def test_what_is_unknown_is_a_dash_and_says_why() -> None:
    figure = WEEK.figure(
        None, 5, "A day of this week is unknown.", (("2026-11-16", 200.0), ("2026-11-17", None))
    )
    text = as_text(figure)
    assert value_words(figure) == "–"
    assert "A day of this week is unknown." in text
    assert "Mon 16 Nov 2026: 200" in text
    assert "Tue 17 Nov 2026: –" in text
    assert "Foster" in text


def test_ratings_say_of_how_much_they_are() -> None:
    assert value_words(EFFORT.figure(6, 1)) == "6 of 10"
    assert value_words(TOTAL.figure(12, 4)) == "12 (4 to 28)"


def test_a_week_a_day_a_month_and_a_side_are_named() -> None:
    assert (
        title_words(WEEK.figure(1.0, 7, None, (), (), "2026-11-16"))
        == "Load of the week · Week 47, 16 – 22 Nov 2026"
    )
    assert of_words(DAY.figure(1.0, 1, None, (), (), "2026-11-16")) == "Mon 16 Nov 2026"
    assert of_words(EFFORT.figure(1.0, 1, None, (), (), "2026-11-16 run-1")) == "Mon 16 Nov 2026"
    assert of_words(REPS.figure(1.0, 1, None, (), (), "2026-11")) == "Nov 2026"
    assert of_words(REPS.figure(1.0, 1, None, (), (), "side: left")) == "left"
    assert of_words(REPS.figure(1.0, 1)) == ""


def test_what_went_in_is_told_in_words() -> None:
    assert input_words(("against its error", "beyond_error")) == ("against its error", "beyond error")
    assert input_words(("reps", None)) == ("reps", "–")
