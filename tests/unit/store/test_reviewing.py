"""What the review asks of the record, compared with what was written run by run."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

import pytest

from app.analysis.load import session_load
from app.domain.correctable import Subject
from app.domain.corrections import Change, Target
from app.domain.dose import DoseKind
from app.domain.keeping import Rating, RatingKind, Result
from app.domain.plan import Side, StageKind
from app.domain.planned import DueState, PlannedSession
from app.domain.readiness import Readiness
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    Fact,
    FaultMarked,
    LoadUsed,
    RepDone,
    RepMissed,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
    SessionRated,
)
from app.domain.squad import OwedKind
from app.store.database import Database, open_database
from app.store.identity import uuid7

ZONE = "Europe/Lisbon"
SUNDAY = date(2026, 10, 25)
"""On which the clocks went back an hour."""
EVENING = datetime(2026, 10, 25, 18, 30, tzinfo=UTC)
ASKED = (
    BoutPrescribed(
        0, "Wake", StageKind.ACTIVATION, "Row", 1, Side.LEFT, 2, 3, 12_000, 0, "10", DoseKind.TEMPO, 4_000
    ),
    BoutPrescribed(
        1, "Wake", StageKind.ACTIVATION, "Row", 1, Side.RIGHT, 2, 3, 12_000, 0, None, DoseKind.TEMPO, 4_000
    ),
    BoutPrescribed(
        2, "Catch", StageKind.STABILITY, "Hop", 1, Side.LEFT, 2, 2, 20_000, 1, None, DoseKind.STICK
    ),
)


def name(number: int) -> str:
    return str(uuid7(1_790_000_000_000 + number, bytes(10)))


def rep(bout: int, number: int, attempt: int = 1) -> RepDone:
    end = 10_000 + 60_000 * bout + 4_000 * number
    side = ASKED[bout].side
    return RepDone(end, bout, attempt, number, side, end - 4_000, 3)


FACTS: tuple[Fact, ...] = (
    RunBegan(),
    BoutBegan(10_000, 0, 1),
    rep(0, 1),
    RepMissed(18_000, 0, 1, 2, Side.LEFT),
    rep(0, 3),
    BoutEnded(22_000, 0, 1, BoutOutcome.DONE),
    LoadUsed(23_000, 0, 1, "12.5"),
    BoutBegan(70_000, 1, 1),
    replace(rep(1, 1), start_ms=70_000, at_ms=75_000),
    rep(1, 2),
    rep(1, 3),
    BoutEnded(82_000, 1, 1, BoutOutcome.DONE),
    BoutRated(83_000, 1, 1, rpe=4, pain=2),
    BoutBegan(130_000, 2, 1),
    FaultMarked(133_000, 2, 1, 1, Side.LEFT, "knee in"),
    rep(2, 1),
    BoutEnded(136_000, 2, 1, BoutOutcome.ENDED_EARLY),
    RunEnded(1_800_000, RunOutcome.FINISHED),
)


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    with open_database(tmp_path / "record.db") as opened:
        yield opened


def write(
    database: Database, number: int, at: datetime, athlete: str = "Ines", more: tuple[Fact, ...] = ()
) -> str:
    header = RunHeader(name(number), athlete, "Landing control", "text", at, ZONE)
    database.journal.open_run(header, ASKED)
    database.journal.append(header.run_id, 0, (*FACTS, *more))
    return header.run_id


def test_an_athletes_days_have_the_parts_of_every_session(database: Database) -> None:
    run = write(database, 1, EVENING, more=(SessionRated(1_900_000, 5, 100_000),))
    found = database.reviewing.athlete("Ines", SUNDAY, SUNDAY, SUNDAY)
    (session,) = found.sessions
    assert (session.run_id, session.day, session.started) == (run, SUNDAY, 18 * 60 + 30)
    assert (session.ended, session.minutes, session.rpe, session.pain) == (True, 30, 5, 2)
    left, right, hop = session.parts
    assert (left.exercise, left.side, left.totals.prescribed, left.totals.met) == ("Row", Side.LEFT, 2, 2)
    assert (left.totals.clean, left.totals.missed, left.totals.tut_ms) == (2, 1, 8_000)
    assert (left.totals.tempo_known, left.totals.tempo_kept) == (3, 2), "a missed rep kept no tempo"
    assert (right.totals.tempo_known, right.totals.tempo_kept) == (3, 2), "one took five seconds, not four"
    assert (left.totals.volume_kg, left.totals.volume_complete) == (25.0, True), "12.5 kg were used, not 10"
    assert (right.totals.volume_kg, right.totals.volume_complete) == (None, False)
    assert (hop.landings, hop.totals.met, hop.totals.clean, hop.totals.contacts) == (True, 1, 0, 1)
    whole = session.totals
    assert whole is not None
    assert (whole.prescribed, whole.met, whole.done, whole.extra) == (6, 5, 6, 1)
    assert (whole.tempo_known, whole.tempo_kept, whole.tut_ms) == (6, 4, 20_000)
    assert (whole.volume_kg, whole.volume_complete) == (25.0, False)


def test_a_bout_that_was_not_begun_was_asked_for_all_the_same(database: Database) -> None:
    header = RunHeader(name(1), "Ines", "Landing control", "text", EVENING, ZONE)
    database.journal.open_run(header, ASKED)
    database.journal.append(header.run_id, 0, (RunBegan(), RunEnded(5_000, RunOutcome.ABANDONED)))
    (session,) = database.reviewing.athlete("Ines", SUNDAY, SUNDAY, SUNDAY).sessions
    assert [part.totals.prescribed for part in session.parts] == [2, 2, 2]
    assert session.totals is not None
    assert (session.totals.prescribed, session.totals.met, session.totals.volume_kg) == (6, 0, None)


def test_days_are_those_of_the_clock_on_the_wall(database: Database) -> None:
    # Lisbon is one hour ahead of UTC up to 01:00 UTC of this Sunday, and not ahead afterwards.
    late = write(database, 1, datetime(2026, 10, 24, 23, 30, tzinfo=UTC))
    later = write(database, 2, datetime(2026, 10, 25, 23, 30, tzinfo=UTC))
    write(database, 3, datetime(2026, 10, 26, 0, 5, tzinfo=UTC))
    found = database.reviewing.athlete("Ines", SUNDAY, SUNDAY, SUNDAY)
    assert [each.run_id for each in found.sessions] == [late, later]
    assert found.since == SUNDAY


def test_the_attempt_that_stands_is_the_one_that_counts(database: Database) -> None:
    again = (BoutBegan(200_000, 0, 2), BoutEnded(201_000, 0, 2, BoutOutcome.BROKEN_OFF))
    write(database, 1, EVENING, more=again)
    (session,) = database.reviewing.athlete("Ines", SUNDAY, SUNDAY, SUNDAY).sessions
    assert session.parts[0].totals.met == 2


def test_the_squads_sums_are_those_of_the_parts(database: Database) -> None:
    write(database, 1, EVENING)
    (member,) = database.reviewing.squad(EVENING + timedelta(hours=1), SUNDAY)
    (of_squad,) = member.record.sessions
    (of_athlete,) = database.reviewing.athlete("Ines", SUNDAY, SUNDAY, SUNDAY).sessions
    whole = of_athlete.totals
    assert whole is not None
    assert of_squad.totals == replace(
        whole, clean=None, missed=None, contacts=None, tut_ms=None, volume_kg=None, volume_complete=False
    )
    assert replace(of_squad, totals=None) == replace(of_athlete, totals=None, parts=())


def test_the_squad_is_everybody_over_four_calendar_weeks_and_the_loads_of_four_before(
    database: Database,
) -> None:
    first, earlier = EVENING - timedelta(weeks=3, days=6), EVENING - timedelta(weeks=7, days=6)
    write(database, 1, first)
    write(database, 4, earlier)
    write(database, 5, earlier + timedelta(hours=2))
    database.corrections.correct(
        Change(Target(Subject.RUN, name(5)), "session_rpe", 3, "Coach", "asked again", EVENING, ZONE)
    )
    write(database, 2, EVENING - timedelta(weeks=8), "Hugo")
    database.planned.keep(PlannedSession(name(9), "Bram", "Landing control", SUNDAY, EVENING, ZONE))
    bram, hugo, ines = database.reviewing.squad(EVENING, SUNDAY)
    assert [each.record.athlete for each in (bram, hugo, ines)] == ["Bram", "Hugo", "Ines"]
    assert (len(ines.record.sessions), len(hugo.record.sessions)) == (1, 0)
    assert hugo.last_run == date(2026, 8, 30)
    assert (bram.last_run, bram.record.since) == (None, None)
    assert (ines.record.first, ines.record.last) == (date(2026, 9, 28), SUNDAY)
    assert (bram.before, hugo.before) == ((), ())
    told = {load for _, load in ines.before}
    every = database.reviewing.athlete("Ines", date(2026, 8, 31), SUNDAY, SUNDAY).sessions
    assert [day for day, _ in ines.before] == [date(2026, 8, 31)] * 2
    assert told == {session_load(each.rpe, each.minutes) for each in every[:2]}


def test_what_was_planned_is_settled_with_the_runs_of_its_day(database: Database) -> None:
    run = write(database, 1, EVENING)
    planned = PlannedSession(
        name(9), "Ines", "Landing control", SUNDAY, EVENING, ZONE, time(18), SUNDAY + timedelta(weeks=3)
    )
    database.planned.keep(planned)
    database.planned.excuse(planned.id, SUNDAY + timedelta(weeks=1), "fever", EVENING, ZONE)
    last = SUNDAY + timedelta(weeks=3)
    due = database.reviewing.athlete("Ines", SUNDAY, last, SUNDAY + timedelta(days=20)).due
    assert [(each.state, each.run_id) for each in due] == [
        (DueState.DONE, run),
        (DueState.EXCUSED, None),
        (DueState.MISSED, None),
        (DueState.NOT_DUE, None),
    ]


def test_answers_are_read_as_corrected(database: Database) -> None:
    run = write(database, 1, EVENING)
    morning = EVENING + timedelta(hours=13)
    database.answers.keep(Rating(name(2), run, RatingKind.NEXT_MORNING_PAIN, 6, morning, ZONE))
    database.answers.keep(Readiness(name(3), "Ines", EVENING, ZONE, 2, 3, 4, 5, 1))
    database.answers.keep(Result(name(4), "Ines", "Hop", "140", "cm", EVENING, ZONE, Side.LEFT))
    for subject, of, field, value in (
        (Subject.RATING, name(2), "value", 3),
        (Subject.READINESS, name(3), "sleep", 7),
        (Subject.RESULT, name(4), "value", "141"),
    ):
        change = Change(Target(subject, of), field, value, "Coach", "misheard", morning, ZONE)
        database.corrections.correct(change)
    found = database.reviewing.athlete("Ines", SUNDAY, SUNDAY, SUNDAY)
    assert (found.sessions[0].pain_next_morning, found.sessions[0].next_morning_asked) == (3, True)
    assert [each.sleep for each in found.readiness] == [7]
    assert [each.value for each in found.results] == ["141"]
    (member,) = database.reviewing.squad(morning, SUNDAY + timedelta(days=1))
    assert [each.sleep for each in member.record.readiness] == [7]


def test_the_session_rpe_is_owed_for_48_hours(database: Database) -> None:
    write(database, 1, EVENING)
    ended = EVENING + timedelta(minutes=30)
    for later, kinds in (
        (timedelta(0), {OwedKind.SESSION_RPE}),
        (timedelta(hours=48), {OwedKind.SESSION_RPE}),
        (timedelta(hours=48, seconds=1), set()),
    ):
        owed = database.reviewing.owed(ended + later)
        assert {each.kind for each in owed if each.kind is OwedKind.SESSION_RPE} == kinds
    write(database, 2, EVENING, "Hugo", (SessionRated(1_900_000, 5, 100_000),))
    assert [each.athlete for each in database.reviewing.owed(ended + timedelta(minutes=5))] == ["Ines"]


def test_the_next_mornings_pain_is_owed_on_the_day_after_until_it_was_asked(database: Database) -> None:
    run = write(database, 1, EVENING, more=(SessionRated(1_900_000, 5, 100_000),))
    midnight = datetime(2026, 10, 26, 0, 0, tzinfo=UTC)
    assert database.reviewing.owed(midnight - timedelta(seconds=1)) == ()
    (owed,) = database.reviewing.owed(midnight)
    assert (owed.kind, owed.run_id, owed.day) == (OwedKind.NEXT_MORNING_PAIN, run, SUNDAY)
    assert database.reviewing.owed(midnight + timedelta(hours=24)) == ()
    database.answers.keep(Rating(name(2), run, RatingKind.NEXT_MORNING_PAIN, None, midnight, ZONE))
    assert database.reviewing.owed(midnight) == ()


def test_who_trained_last_comes_first_and_plans_too(database: Database) -> None:
    write(database, 1, EVENING - timedelta(days=3))
    write(database, 2, EVENING, "Hugo")
    database.answers.keep(Readiness(name(3), "Bram", EVENING, ZONE))
    assert [(each.athlete, each.at) for each in database.reviewing.last_trained()] == [
        ("Hugo", EVENING),
        ("Ines", EVENING - timedelta(days=3)),
        ("Bram", None),
    ]
    (plan,) = database.reviewing.recent_plans()
    assert (plan.title, plan.text, plan.at) == ("Landing control", "text", EVENING)


def test_the_reference_side_is_the_one_that_was_chosen_and_none_until_then(database: Database) -> None:
    write(database, 1, EVENING)
    write(database, 2, EVENING, "Hugo")

    def sides() -> list[Side | None]:
        squad = {each.record.athlete: each.record for each in database.reviewing.squad(EVENING, SUNDAY)}
        alone = database.reviewing.athlete("Ines", SUNDAY, SUNDAY, SUNDAY)
        return [squad["Hugo"].reference, squad["Ines"].reference, alone.reference]

    assert sides() == [None, None, None]
    row = next(person.id for person in database.answers.people() if person.name == "Ines")
    target = Target(Subject.ATHLETE, row)
    database.corrections.correct(
        Change(target, "reference_side", "right", "Tomas", "the sound side", EVENING, ZONE)
    )
    assert sides() == [None, Side.RIGHT, Side.RIGHT]


def test_nobody_and_nothing_are_no_error(database: Database) -> None:
    assert database.reviewing.squad(EVENING, SUNDAY) == ()
    found = database.reviewing.athlete("Nobody", SUNDAY, SUNDAY, SUNDAY)
    assert (found.sessions, found.due, found.since) == ((), (), None)
    assert database.reviewing.last_trained() == ()
