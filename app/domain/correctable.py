"""What can be corrected: of each thing the fields, and which values each may have."""

from collections.abc import Callable
from datetime import UTC, date, datetime
from enum import StrEnum
from typing import Any

from app.domain.checks import decimal_text, in_range, load_text, moment, short_text
from app.domain.plan import Side
from app.domain.readiness import Decision

Value = int | str | bool | tuple[str, ...] | None
"""A value as it is corrected: moments and dates as ISO 8601 text, the moments in UTC."""

MOST_REPS = 10_000
_MOST_FAULTS = 20

_Check = Callable[[str, Value], None]


class Subject(StrEnum):
    """What kind of thing is corrected."""

    RUN = "run"
    BOUT = "bout"
    REP = "rep"
    READINESS = "readiness"
    RATING = "rating"
    RESULT = "result"
    NOTE = "note"
    ATHLETE = "athlete"


PARTS: dict[Subject, frozenset[str]] = {
    Subject.BOUT: frozenset({"bout", "attempt"}),
    Subject.REP: frozenset({"bout", "attempt", "rep", "side"}),
}
"""By what, beside the run, a thing within a run is named."""


def utc_text(at: datetime) -> str:
    """A moment as the text it is corrected by: ISO 8601 in UTC. Raises ValueError where it has no zone."""
    moment("at", at)
    return at.astimezone(UTC).isoformat()


def as_native(field: str, value: Value) -> object:
    """A corrected value as records have it: a moment, a date, a side instead of its text."""
    return value if value is None or field not in _NATIVE else _NATIVE[field](value)


def as_value(native: object) -> Value:
    """A value of a record as it is corrected. Raises ValueError for a moment that has no zone."""
    if isinstance(native, datetime):
        return utc_text(native)
    if isinstance(native, date):
        return native.isoformat()
    if isinstance(native, Side | Decision):
        return native.value
    return native  # type: ignore[return-value]


def check_value(subject: Subject, field: str, value: Value) -> None:
    """Raise ValueError unless a thing of that kind has the field and the field may have the value."""
    if field not in FIELDS[subject]:
        raise ValueError(f"a {subject} has no {field} that can be corrected")
    FIELDS[subject][field](field, value)


def _number(least: int, most: int) -> _Check:
    return lambda name, value: in_range(name, value, least, most)


def _words(name: str, value: Value) -> None:
    short_text(name, value)


def _some_words(name: str, value: Value) -> None:
    short_text(name, value, wanted=True)


def _yes_or_no(name: str, value: Value) -> None:
    if not isinstance(value, bool):
        raise ValueError(f"{name} is yes or no, not {value!r}")


def _maybe(name: str, value: Value) -> None:
    if value is not None:
        _yes_or_no(name, value)


def _side(name: str, value: Value) -> None:
    if value not in [side.value for side in Side]:
        raise ValueError(f"{name} is left, right or both, not {value!r}")


def _maybe_side(name: str, value: Value) -> None:
    if value is not None:
        _side(name, value)


def _maybe_one_side(name: str, value: Value) -> None:
    if value not in (None, Side.LEFT.value, Side.RIGHT.value):
        raise ValueError(f"{name} is left, right or nothing, not {value!r}")


def _maybe_decision(name: str, value: Value) -> None:
    if value is not None and value not in [decision.value for decision in Decision]:
        raise ValueError(f"{name} is spoken or skipped, not {value!r}")


def _moment(name: str, value: Value) -> None:
    try:
        canonical = isinstance(value, str) and utc_text(datetime.fromisoformat(value)) == value
    except (ValueError, OverflowError):
        canonical = False
    if not canonical:
        raise ValueError(f"{name} is a moment in UTC such as 2026-03-02T17:30:00+00:00, not {value!r}")


def _date(name: str, value: Value) -> None:
    try:
        canonical = value is None or (
            isinstance(value, str) and date.fromisoformat(value).isoformat() == value
        )
    except ValueError:
        canonical = False
    if not canonical:
        raise ValueError(f"{name} is a date such as 2026-03-02, not {value!r}")


def _faults(name: str, value: Value) -> None:
    if not isinstance(value, tuple) or len(value) > _MOST_FAULTS or len(set(value)) < len(value):
        raise ValueError(f"{name} is at most {_MOST_FAULTS} faults, none of them twice, not {value!r}")
    for fault in value:
        if not isinstance(fault, str):
            raise ValueError(f"{name} are named in words")
        short_text(name, fault)


_NATIVE: dict[str, Callable[[Any], object]] = {
    "at": datetime.fromisoformat,
    "started_at": datetime.fromisoformat,
    "consent_on": date.fromisoformat,
    "side": Side,
    "pain_side": Side,
    "reference_side": Side,
    "decision": Decision,
}

_ITEM, _TEN = _number(1, 7), _number(0, 10)

FIELDS: dict[Subject, dict[str, _Check]] = {
    Subject.RUN: {
        "athlete": _some_words,
        "started_at": _moment,
        "zone": _some_words,
        "session_rpe": _TEN,
        "note": _words,
    },
    Subject.BOUT: {
        "reps_stated": _number(0, MOST_REPS),
        "rpe": _TEN,
        "pain": _TEN,
        "note": _words,
        "load_kg": load_text,
    },
    Subject.REP: {"missed": _yes_or_no, "faults": _faults},
    Subject.READINESS: {
        "at": _moment,
        "sleep": _ITEM,
        "fatigue": _ITEM,
        "stress": _ITEM,
        "soreness": _ITEM,
        "pain": _TEN,
        "pain_place": _words,
        "pain_side": _maybe_side,
        "changed": _maybe,
        "red_flag": _maybe,
        "decision": _maybe_decision,
        "note": _words,
    },
    Subject.RATING: {"at": _moment, "value": _TEN, "place": _words, "side": _maybe_side, "note": _words},
    Subject.RESULT: {"at": _moment, "value": decimal_text, "side": _side, "note": _words},
    Subject.NOTE: {"at": _moment, "text": _some_words},
    Subject.ATHLETE: {
        "name": _some_words,
        "short_name": _words,
        "consent_on": _date,
        "consent_scope": _words,
        "reference_side": _maybe_one_side,
    },
}
"""The fields that can be corrected, by subject, with what their values may be."""
