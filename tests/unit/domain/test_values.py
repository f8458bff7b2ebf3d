"""What may stand in a cell of a record that is handed on, and how a text of it is read."""

from datetime import UTC, datetime, timedelta, timezone

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.checks import LONGEST_TEXT as SHORT_TEXT
from app.domain.values import (
    Choice,
    Day,
    Decimals,
    Digest,
    Flag,
    Kind,
    Moment,
    Name,
    Number,
    Plain,
    Text,
    Whole,
    Words,
    day_of,
    moment_of,
    moment_text,
)

UUID = "0190163d-8694-739b-aea5-966c26f8ad91"
ALLOWED: list[tuple[Kind, Plain, str]] = [
    (Whole(0, 10), 0, "0"),
    (Whole(-5, 5), -5, "-5"),
    (Number(0, 100), 31.5, "31.5"),
    (Number(0, 100), 0.0, "0"),
    (Text(5), "läufe", "läufe"),
    (Text(5), "", ""),
    (Words(), "a\nb", "a\nb"),
    (Words(empty=True), "", ""),
    (Decimals(), "141.50", "141.50"),
    (Decimals(), "-3e2", "-3e2"),
    (Choice(("left", "right")), "left", "left"),
    (Flag(), True, "true"),
    (Flag(), False, "false"),
    (Name(), UUID, UUID),
    (Digest(), "0a" * 32, "0a" * 32),
    (Day(), "2024-02-29", "2024-02-29"),
    (Moment(), "2026-03-02T17:30:00Z", "2026-03-02T17:30:00Z"),
    (Moment(), "2026-03-02T17:30:00.000001Z", "2026-03-02T17:30:00.000001Z"),
]
REFUSED: list[tuple[Kind, list[Plain], list[str]]] = [
    (Whole(0, 10), [-1, 11, 3.0, "3", True, 10**30, float("nan")], ["", "x", "11", "3.0", " 3", "9" * 5_000]),
    (Number(0, 10), [-1, 11, "3", True, float("nan"), float("inf")], ["", "nan", "inf", "1e999", "0x1"]),
    (Text(5), [3, "longer", "\ud800"], ["longer"]),
    (Words(), [3, "", "  ", "a\x00b", "x" * (SHORT_TEXT + 1)], [""]),
    (Decimals(), [3, "", "nan", "1,5", "0x1", "9" * 40], ["", "inf"]),
    (Choice(("left",)), ["Left", 3, True], ["", "up"]),
    (Flag(), [0, 1, "true"], ["", "True", "1"]),
    (Name(), [UUID.upper(), UUID.replace("-", ""), "x", 3, "{" + UUID + "}"], ["", "x"]),
    (Digest(), ["0A" * 32, "0a" * 31, 3], ["", "x"]),
    (Day(), ["2026-02-30", "20260302", "2026-3-2", "1066-10-14", 3], ["", "today"]),
    (
        Moment(),
        [
            "2026-03-02T17:30:00",
            "2026-03-02T17:30:00+01:00",
            "2026-03-02T25:30:00Z",
            "3026-03-02T17:30:00Z",
            3,
        ],
        ["", "now"],
    ),
]


@pytest.mark.parametrize(("kind", "value", "text"), ALLOWED, ids=repr)
def test_an_allowed_value_is_itself_and_its_text_says_it(kind: Kind, value: Plain, text: str) -> None:
    checked = kind.check(value)
    assert (checked, type(checked)) == (value, type(value))
    assert kind.read(text) == value


@pytest.mark.parametrize(("kind", "values", "texts"), REFUSED, ids=lambda value: repr(value)[:40])
def test_what_is_not_allowed_is_refused_with_what_would_be_right(
    kind: Kind, values: list[Plain], texts: list[str]
) -> None:
    for value in values:
        with pytest.raises(ValueError, match=r"^must be "):
            kind.check(value)
    for text in texts:
        with pytest.raises(ValueError, match=r"^must be "):
            kind.read(text)


def test_a_whole_number_is_a_number_too() -> None:
    checked = Number(0, 10).check(3)
    assert (checked, type(checked)) == (3.0, float)


@given(
    st.datetimes(
        datetime(1900, 1, 1),  # noqa: DTZ001 - the strategy takes them so
        datetime(2200, 12, 31),  # noqa: DTZ001
        timezones=st.sampled_from((UTC, timezone(timedelta(hours=5, minutes=45)))),
    )
)
def test_a_moment_of_any_zone_reads_back_as_the_same_moment(at: datetime) -> None:
    if at.astimezone(UTC).year in range(1900, 2201):
        assert moment_of(str(Moment().check(moment_text(at)))) == at


def test_a_moment_that_has_no_zone_has_no_text() -> None:
    with pytest.raises(ValueError, match="which time zone"):
        moment_text(datetime(2026, 3, 2))  # noqa: DTZ001 - what is refused


def test_a_day_reads_back() -> None:
    assert day_of("2026-03-02").isoformat() == "2026-03-02"
