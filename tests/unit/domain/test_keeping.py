"""What is kept beside the runs holds only what it may."""

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from app.domain.keeping import Device, DeviceKind, Note, Rating, RatingKind, Result, Setting
from app.domain.plan import Side

AT = datetime(2026, 3, 3, 7, 10, tzinfo=UTC)
ID = "0190163d-8694-739b-aea5-966c26f8ad91"


def rating(value: int | None) -> Rating:
    return Rating(ID, ID, RatingKind.NEXT_MORNING_PAIN, value, AT, "UTC", "knee", Side.RIGHT)


def result(value: str, attempt: int = 1) -> Result:
    return Result(ID, "Ines", "Single-leg hop", value, "cm", AT, "UTC", Side.LEFT, attempt)


@pytest.mark.parametrize("value", [None, 0, 10])
def test_next_morning_pain_is_0_to_10_or_not_answered(value: int | None) -> None:
    assert rating(value).value == value


@pytest.mark.parametrize("value", ["141.5", "0", "-3", "1e2"])
def test_a_result_is_a_number_in_decimals(value: str) -> None:
    assert result(value).value == value


@pytest.mark.parametrize(
    ("make", "words"),
    [
        (lambda: rating(11), "value is a whole number from 0 to 10"),
        (lambda: result("nan"), "written in decimals"),
        (lambda: result("Infinity"), "written in decimals"),
        (lambda: result("far"), "written in decimals"),
        (lambda: result("1", attempt=0), "attempt is a whole number from 1"),
        (lambda: Note(ID, "Ines", "  ", "Tomas", AT, "UTC"), "text is a text"),
        (lambda: Note(ID, "Ines", "x" * 4_001, "Tomas", AT, "UTC"), "at most 4000"),
        (lambda: Note(ID, "Ines", "bell \x07", "Tomas", AT, "UTC"), "cannot be shown"),
        (lambda: Note(ID, "Ines", "Well", "", AT, "UTC"), "who is a text"),
        (lambda: Device(ID, DeviceKind.COMPUTER, "", AT, "UTC"), "name is a text"),
        (lambda: Setting(ID, "", "x", AT, "UTC"), "name is a text"),
        (lambda: Setting(ID, "x", "x", AT.replace(tzinfo=None), "UTC"), "with its time zone"),
    ],
)
def test_what_is_no_answer_is_refused_with_what_would_be(make: Callable[[], object], words: str) -> None:
    with pytest.raises(ValueError, match=words):
        make()
