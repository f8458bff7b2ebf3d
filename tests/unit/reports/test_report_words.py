"""Numbers and days of a report, as each language writes them."""

from datetime import date

import pytest

from app.reports.report_words import Words

ENGLISH, GERMAN = Words("en"), Words("de")


def test_what_is_unknown_is_a_dash() -> None:
    for say in (ENGLISH, GERMAN):
        told = {say.percent(None), say.number(None), say.whole(None), say.bounds(0.1, None)}
        assert told == {"–"}


@pytest.mark.parametrize(
    ("share", "told"), [(0.0, "0"), (0.001, "1"), (0.5, "50"), (0.999, "99"), (1.0, "100")]
)
def test_none_and_all_are_said_only_of_none_and_all(share: float, told: str) -> None:
    assert ENGLISH.percent(share) == f"{told}\u202f%"


def test_decimals_follow_the_language() -> None:
    assert (ENGLISH.number(1234.5), GERMAN.number(1234.5)) == ("1\u202f234", "1\u202f234")
    assert (ENGLISH.number(12.34), GERMAN.number(12.34)) == ("12.3", "12,3")
    assert (ENGLISH.number(-0.456), GERMAN.number(-0.456)) == ("-0.46", "-0,46")


def test_days_follow_the_language() -> None:
    day = date(2026, 12, 28)
    assert (ENGLISH.day(day), GERMAN.day(day)) == ("28 Dec 2026", "28.12.2026")
    assert ENGLISH.week(day) == "28 Dec – 3 Jan 2027"


def test_a_text_without_german_is_no_german() -> None:
    with pytest.raises(KeyError):
        GERMAN("Nobody has translated this.")
    assert GERMAN.known("Sen 1968") == "Sen 1968"
