"""What of a run can be corrected, and how it is said."""

from datetime import UTC, datetime, timedelta

import pytest

from app.domain.correctable import FIELDS, Subject, Value
from app.domain.corrections import Change, Correction, History, Target, history
from app.domain.fold import Closing
from app.domain.plan import Side, StageKind
from app.domain.records import BoutOutcome, BoutPrescribed, BoutRecord, RepRecord, RunHeader
from app.views.review.correct_fields import (
    fault_words,
    faults_from,
    parts_of,
    value_words,
    what_words,
)
from app.views.review.details import RunDetails
from app.views.review.history import conflict_words, history_columns, lines_of
from app.views.widgets.rows_model import Tone

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
STARTED = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
HEADER = RunHeader(RUN, "Ines", "Landing control", "text", STARTED, "Asia/Kathmandu")
ASKED = BoutPrescribed(1, "Catch", StageKind.STABILITY, "Step-down", 2, Side.LEFT, 2, 3, 24_000, 1, None)
REPS = (
    RepRecord(1, Side.LEFT, 0, 4_000, 0),
    RepRecord(2, Side.LEFT, 4_000, 8_000, 0, faults=("", "hurried")),
)
RECORD = BoutRecord(1, 2, REPS, BoutOutcome.DONE, 0, 8_000, rpe=5, note="warm", corrected=frozenset({"rpe"}))
BOUT = Target(Subject.BOUT, RUN, 1, 2)
REP = Target(Subject.REP, RUN, 1, 2, 2, Side.LEFT)
WHOLE = Target(Subject.RUN, RUN)


def details(*corrections: Correction) -> RunDetails:
    known: History = history(corrections)
    return RunDetails(HEADER, Closing(session_rpe=6), ((ASKED, RECORD),), known, ("Ines", "Tomas"))


def corrected(
    number: int, target: Target, field: str, before: Value, after: Value, who: str = "Tomas"
) -> Correction:
    at = STARTED + timedelta(days=1, minutes=number)
    return Correction(f"{number}", Change(target, field, after, who, "misheard", at, "UTC"), before)


def test_the_session_and_each_attempt_are_parts_with_what_can_be_corrected_of_them() -> None:
    whole, bout = parts_of(details())
    assert [field.name for field in whole.fields] == ["athlete", "started_at", "session_rpe", "note"]
    assert (bout.title, bout.reps, bout.rpe, bout.pain, bout.note) == (
        "2  Step-down, set 2, left, attempt 2",
        "2",
        "5",
        "–",
        "warm",
    )
    assert [field.title for field in bout.fields] == [
        "Reps",
        "RPE",
        "Pain",
        "Note",
        "Load in kg",
        "Rep 1, left: done or missed",
        "Rep 1, left: faults",
        "Rep 2, left: done or missed",
        "Rep 2, left: faults",
    ]
    assert bout.corrected == {"rpe"}


def test_every_field_that_is_offered_can_be_corrected_to_the_value_it_has() -> None:
    for part in parts_of(details()):
        for field in part.fields:
            FIELDS[field.target.subject][field.name](field.name, field.value)


def test_the_session_says_which_of_its_fields_differ_from_what_was_written() -> None:
    there = corrected(1, WHOLE, "session_rpe", 4, 6)
    assert parts_of(details(there))[0].corrected == {"session_rpe"}
    back = Correction("2", Change(WHOLE, "session_rpe", 4, "Ines", "was right", STARTED, "UTC"), 6, ("1",))
    assert parts_of(details(there, back))[0].corrected == frozenset()


@pytest.mark.parametrize(
    ("field", "value", "said"),
    [
        ("rpe", None, "–"),
        ("rpe", 0, "0"),
        ("note", "", "–"),
        ("reps_stated", None, "as counted"),
        ("reps_stated", 0, "0"),
        ("missed", True, "missed"),
        ("missed", False, "done"),
        ("faults", (), "none"),
        ("faults", ("", "hurried"), "unnamed fault, hurried"),
        ("started_at", "2026-03-02T17:30:00+00:00", "Mon 2 Mar 2026, 23:15"),  # UTC+05:45
    ],
)
def test_a_value_is_said_as_a_person_reads_it(field: str, value: Value, said: str) -> None:
    assert value_words(field, value, "Asia/Kathmandu") == said


@pytest.mark.parametrize("faults", [(), ("",), ("hurried", ""), ("trunk rolls", "hurried")])
def test_faults_written_in_a_line_are_read_back(faults: tuple[str, ...]) -> None:
    assert faults_from(fault_words(faults)) == faults


def test_faults_named_twice_are_one() -> None:
    assert faults_from(" hurried ,, hurried, trunk rolls ") == ("hurried", "trunk rolls")


def test_a_correction_names_what_it_is_about() -> None:
    bouts = details().bouts
    assert what_words(corrected(1, WHOLE, "session_rpe", 4, 6), bouts) == "Session RPE"
    assert what_words(corrected(1, BOUT, "rpe", 4, 6), bouts) == "2  Step-down, set 2, left, attempt 2: RPE"
    assert what_words(corrected(1, REP, "faults", (), ("hurried",)), bouts) == (
        "2  Step-down, set 2, left, attempt 2: Rep 2, left, faults"
    )
    assert what_words(corrected(1, BOUT, "rpe", 4, 6), ()) == "Bout 2: RPE"


def test_the_history_stands_latest_first_with_what_holds_and_what_disagrees() -> None:
    ours, theirs = corrected(1, BOUT, "rpe", 4, 6), corrected(2, BOUT, "rpe", 4, 7, "Bea")
    old = corrected(0, BOUT, "pain", 4, 6)
    new = Correction(
        "9", Change(BOUT, "pain", 2, "Ines", "asked", STARTED + timedelta(days=2), "UTC"), 6, ("0",)
    )
    shown = details(ours, theirs, old, new)
    lines = lines_of(shown)
    assert [line.state for line in lines] == ["holds", "holds", "disagrees", "replaced"]
    assert [(line.before, line.after) for line in lines] == [("6", "2"), ("4", "7"), ("4", "6"), ("4", "6")]
    assert lines[1].when == "Tue 3 Mar 2026, 17:32"
    sentence = conflict_words(shown)
    assert "7 (Bea) holds, and 6 (Tomas) was said elsewhere" in sentence
    assert conflict_words(details(old, new)) == ""
    tones = [column.tone for column in history_columns() if column.tone is not None]
    assert [tone(line) for tone in tones for line in lines] == [
        Tone.INK,
        Tone.INK,
        Tone.ATTENTION,
        Tone.QUIET,
    ]
