"""What is said beside a run: kept as it was given, read as corrected."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from app.domain.correctable import Subject, Value
from app.domain.corrected import Held
from app.domain.corrections import Change, Target
from app.domain.errors import StoreError
from app.domain.keeping import Device, DeviceKind, Note, Person, Rating, RatingKind, Result, Setting
from app.domain.plan import Side
from app.domain.readiness import Readiness
from app.domain.records import RunBegan, RunHeader
from app.store.answers import Kept
from app.store.database import Database

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
AT = datetime(2026, 3, 2, 17, 20, tzinfo=UTC)
LISBON = "Europe/Lisbon"


def name(number: int) -> str:
    return f"0190163d-8694-7000-8000-{number:012d}"


READY = Readiness(
    name(1), "Ines", AT, LISBON, 3, 2, 4, 3, 1, "shoulder", Side.LEFT, False, False, "fine", RUN
)
MORNING = Rating(
    name(2),
    RUN,
    RatingKind.NEXT_MORNING_PAIN,
    2,
    AT + timedelta(hours=14),
    LISBON,
    "shoulder",
    Side.LEFT,
    "stiff",
)
NOTED = Note(name(3), "Ines", "Landed softer than last week", "Tomas", AT, LISBON, RUN)
SCALE = Device(name(4), DeviceKind.INSTRUMENT, "Jump mat of the hall", AT, LISBON)
HOP = Result(name(5), "Ines", "Single-leg hop", "141.50", "cm", AT, LISBON, Side.LEFT, 2, SCALE.id, "calm")
CHOICE = Setting(name(6), "presentation", "on", AT, LISBON)
ALL: tuple[Kept, ...] = (SCALE, READY, MORNING, NOTED, HOP, CHOICE)


@pytest.fixture
def written(database: Database) -> Database:
    database.journal.open_run(RunHeader(RUN, "Ines", "Landing", "text", AT, LISBON), ())
    database.journal.append(RUN, 0, [RunBegan()])
    for thing in ALL:
        database.answers.keep(thing)
    return database


def set_right(database: Database, subject: Subject, of: str, field: str, after: Value) -> None:
    change = Change(Target(subject, of), field, after, "Tomas", "misread", AT + timedelta(days=1), LISBON)
    assert database.corrections.correct(change) is not None


def test_everything_is_read_as_it_was_given(written: Database) -> None:
    answers = written.answers
    assert answers.readiness_of("Ines") == (Held(READY),)
    assert answers.ratings_of(RUN) == (Held(MORNING),)
    assert answers.notes_of("Ines") == (Held(NOTED),)
    assert answers.results_of("Ines") == (Held(HOP),)
    assert answers.devices() == (SCALE,)
    assert answers.setting("presentation") == "on"


def test_what_was_said_of_a_run_is_found_by_it_even_when_it_was_somebody_elses(written: Database) -> None:
    written.answers.keep(replace(READY, id=name(10), run_id=None), replace(NOTED, id=name(11), run_id=None))
    written.answers.keep(Readiness(name(12), "Bea", AT, LISBON))
    set_right(written, Subject.RUN, RUN, "athlete", "Bea")
    assert written.answers.readiness_before(RUN) == (Held(READY),)
    assert written.answers.notes_about(RUN) == (Held(NOTED),)
    assert written.answers.notes_about(name(10)) == ()


def test_what_was_not_answered_stays_unknown(database: Database) -> None:
    database.answers.keep(Readiness(name(9), "Bea", AT, LISBON))
    ((found, _),) = [(held.thing, held.corrected) for held in database.answers.readiness_of("Bea")]
    assert found == Readiness(name(9), "Bea", AT, LISBON)
    assert found.total is None


def test_the_same_again_changes_nothing_and_another_of_its_name_is_refused(written: Database) -> None:
    for thing in ALL:
        written.answers.keep(thing)
        written.answers.keep(replace(thing, at=thing.at.astimezone(ZoneInfo("Asia/Kathmandu"))))
        with pytest.raises(ValueError, match="is another"):
            written.answers.keep(replace(thing, zone="UTC"))
    assert written.answers.readiness_of("Ines") == (Held(READY),)


@pytest.mark.parametrize(
    "thing",
    [
        replace(MORNING, id=name(8), run_id=name(77)),
        replace(READY, id=name(8), run_id=name(77)),
        replace(HOP, id=name(8), device_id=name(77)),
    ],
)
def test_what_names_a_run_or_a_device_that_is_not_there_is_refused(written: Database, thing: Kept) -> None:
    with pytest.raises(StoreError):
        written.answers.keep(thing)


def test_readiness_is_read_as_corrected_and_says_so(written: Database) -> None:
    set_right(written, Subject.READINESS, READY.id, "sleep", 5)
    set_right(written, Subject.READINESS, READY.id, "pain_side", "right")
    (held,) = written.answers.readiness_of("Ines")
    assert held.thing == replace(READY, sleep=5, pain_side=Side.RIGHT)
    assert held.thing.total == 14
    assert held.corrected == {"sleep", "pain_side"}


def test_the_next_morning_is_read_as_corrected(written: Database) -> None:
    set_right(written, Subject.RATING, MORNING.id, "value", None)
    assert written.answers.ratings_of(RUN) == (Held(replace(MORNING, value=None), frozenset({"value"})),)


def test_notes_and_results_are_read_as_corrected_in_the_order_of_their_days(written: Database) -> None:
    earlier = replace(HOP, id=name(7), at=AT - timedelta(days=7), value="139")
    written.answers.keep(earlier)
    set_right(written, Subject.RESULT, earlier.id, "at", "2026-03-09T08:00:00+00:00")
    set_right(written, Subject.NOTE, NOTED.id, "text", "Landed softer than on Friday")
    assert [held.thing.value for held in written.answers.results_of("Ines", "Single-leg hop")] == [
        "141.50",
        "139",
    ]
    assert written.answers.results_of("Ines", "Side hop") == ()
    assert written.answers.notes_of("Ines")[0].thing.text.endswith("Friday")


def test_a_correction_of_what_was_never_said_is_refused(written: Database) -> None:
    with pytest.raises(StoreError, match="is not in the record"):
        set_right(written, Subject.READINESS, name(99), "sleep", 5)


def test_the_latest_choice_of_a_name_holds_and_the_earlier_ones_stay(written: Database) -> None:
    written.answers.keep(Setting(name(7), "presentation", None, AT + timedelta(days=1), LISBON))
    written.answers.keep(Setting(name(8), "presentation", "old", AT - timedelta(days=1), LISBON))
    assert written.answers.setting("presentation") is None
    assert written.answers.setting("other") is None


def test_people_are_those_of_whom_anything_is_known(written: Database) -> None:
    written.answers.keep(Readiness(name(9), "bea", AT, LISBON))
    written.answers.keep(replace(NOTED, id=name(10), athlete="Ada", run_id=None))
    written.answers.keep(replace(HOP, id=name(11), athlete="Caro", device_id=None))
    people = written.answers.people()
    assert [person.name for person in people] == ["Ada", "bea", "Caro", "Ines"]
    ines = people[-1]
    set_right(written, Subject.ATHLETE, ines.id, "consent_on", "2026-02-28")
    set_right(written, Subject.ATHLETE, ines.id, "short_name", "In")
    assert written.answers.people()[-1] == Person(ines.id, "Ines", "In", date(2026, 2, 28), None)
