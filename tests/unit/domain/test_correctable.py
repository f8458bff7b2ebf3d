"""Which fields can be corrected, and to what."""

from datetime import UTC, date, datetime, timedelta, timezone

import pytest

from app.domain.correctable import FIELDS, Subject, Value, as_native, as_value, check_value, utc_text
from app.domain.plan import Side
from app.domain.readiness import Decision

LISBON_IN_SUMMER = timezone(timedelta(hours=1))


@pytest.mark.parametrize(
    ("subject", "field", "value"),
    [
        (Subject.RUN, "athlete", "Ines"),
        (Subject.RUN, "started_at", "2026-03-02T17:30:00+00:00"),
        (Subject.RUN, "session_rpe", None),
        (Subject.BOUT, "reps_stated", 0),
        (Subject.BOUT, "pain", 10),
        (Subject.BOUT, "load_kg", "12.5"),
        (Subject.BOUT, "load_kg", "1000"),
        (Subject.BOUT, "load_kg", None),
        (Subject.READINESS, "decision", "spoken"),
        (Subject.READINESS, "decision", None),
        (Subject.REP, "missed", True),
        (Subject.REP, "faults", ("trunk rolls", "")),
        (Subject.READINESS, "pain_side", "left"),
        (Subject.READINESS, "red_flag", None),
        (Subject.RATING, "side", None),
        (Subject.RESULT, "value", "31.5"),
        (Subject.ATHLETE, "consent_on", "2026-02-28"),
        (Subject.ATHLETE, "consent_on", None),
        (Subject.ATHLETE, "reference_side", "left"),
        (Subject.ATHLETE, "reference_side", None),
    ],
)
def test_a_field_may_have_these_values(subject: Subject, field: str, value: Value) -> None:
    check_value(subject, field, value)


@pytest.mark.parametrize(
    ("subject", "field", "value"),
    [
        (Subject.RUN, "athlete", ""),
        (Subject.RUN, "athlete", None),
        (Subject.RUN, "started_at", "2026-03-02T17:30:00"),
        (Subject.RUN, "started_at", "2026-03-02T18:30:00+01:00"),
        (Subject.RUN, "started_at", "yesterday"),
        (Subject.RUN, "elapsed_ms", 5),
        (Subject.BOUT, "reps_stated", -1),
        (Subject.BOUT, "rpe", 11),
        (Subject.BOUT, "rpe", True),
        (Subject.BOUT, "rpe", "7"),
        (Subject.BOUT, "load_kg", 12.5),
        (Subject.BOUT, "load_kg", "1000.5"),
        (Subject.BOUT, "load_kg", "-1"),
        (Subject.BOUT, "load_kg", "1e2"),
        (Subject.BOUT, "load_kg", "NaN"),
        (Subject.READINESS, "decision", "perhaps"),
        (Subject.REP, "missed", 1),
        (Subject.REP, "faults", "trunk rolls"),
        (Subject.REP, "faults", ("trunk rolls", "trunk rolls")),
        (Subject.REP, "faults", tuple(map(str, range(21)))),
        (Subject.READINESS, "sleep", 0),
        (Subject.READINESS, "changed", "no"),
        (Subject.RESULT, "side", None),
        (Subject.RESULT, "value", "nan"),
        (Subject.ATHLETE, "consent_on", "2026-02-30"),
        (Subject.ATHLETE, "consent_on", "20260228"),
        (Subject.ATHLETE, "reference_side", "both"),
        (Subject.ATHLETE, "reference_side", 1),
    ],
)
def test_a_field_may_not_have_these(subject: Subject, field: str, value: Value) -> None:
    with pytest.raises(ValueError, match=field):
        check_value(subject, field, value)


def test_a_moment_is_corrected_in_utc() -> None:
    at = datetime(2026, 7, 2, 18, 30, tzinfo=LISBON_IN_SUMMER)
    assert utc_text(at) == "2026-07-02T17:30:00+00:00"
    with pytest.raises(ValueError, match="time zone"):
        utc_text(at.replace(tzinfo=None))


@pytest.mark.parametrize(
    ("field", "native"),
    [
        ("started_at", datetime(2026, 7, 2, 17, 30, tzinfo=UTC)),
        ("consent_on", date(2026, 7, 2)),
        ("pain_side", Side.RIGHT),
        ("reference_side", Side.LEFT),
        ("decision", Decision.SKIPPED),
        ("side", None),
        ("rpe", 7),
        ("faults", ("trunk rolls",)),
        ("missed", False),
    ],
)
def test_a_value_of_a_record_is_the_same_after_it_was_a_corrected_one(field: str, native: object) -> None:
    assert as_native(field, as_value(native)) == native


def test_everything_asked_for_can_be_corrected() -> None:
    assert {"athlete", "started_at", "session_rpe", "note"} <= set(FIELDS[Subject.RUN])
    assert {"reps_stated", "rpe", "pain", "note", "load_kg"} == set(FIELDS[Subject.BOUT])
    assert {"missed", "faults"} == set(FIELDS[Subject.REP])
    assert {"consent_on", "consent_scope", "reference_side"} <= set(FIELDS[Subject.ATHLETE])
