"""The last sessions of each exercise and side: their sets as they stand, no more sessions than are kept."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from pathlib import Path

import pytest

from app.domain.dose import DoseKind
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    Fact,
    LoadUsed,
    RepDone,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
    SkipReason,
)
from app.domain.reviewed import ExerciseDone, SetDone
from app.store.database import Database, open_database
from app.store.exercise_rows import SESSIONS_KEPT, SESSIONS_LOOKED_AT
from app.store.identity import uuid7

MONDAY = date(2026, 6, 1)


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    with open_database(tmp_path / "record.db") as opened:
        yield opened


def asked(bout: int, exercise: str = "Row", *, load: str | None = "10") -> BoutPrescribed:
    """The set of a bout at the athlete's own pace, 8 to 12 reps."""
    return BoutPrescribed(
        bout,
        "Lift",
        StageKind.STABILITY,
        exercise,
        bout + 1,
        Side.LEFT,
        8,
        12,
        None,
        0,
        load,
        DoseKind.OWN_PACE,
    )


def bout(number: int, *after: Fact, outcome: BoutOutcome = BoutOutcome.DONE, attempt: int = 1) -> list[Fact]:
    """A bout of ten seconds with what was said after it."""
    begin = 20_000 * (number + 1) + 200_000 * (attempt - 1)
    return [BoutBegan(begin, number, attempt), BoutEnded(begin + 10_000, number, attempt, outcome), *after]


def write(
    database: Database, day: date, facts: list[Fact], *bouts: BoutPrescribed, athlete: str = "Ines"
) -> str:
    at = datetime(day.year, day.month, day.day, 18, tzinfo=UTC)
    run = str(uuid7(int(at.timestamp() * 1000), athlete.encode().ljust(10)))
    database.journal.open_run(RunHeader(run, athlete, "Pulls", "text", at, "Europe/Lisbon"), bouts)
    database.journal.append(run, 0, [RunBegan(), *facts, RunEnded(900_000, RunOutcome.FINISHED)])
    return run


def read(database: Database, first: date = MONDAY, last: date = MONDAY) -> tuple[ExerciseDone, ...]:
    return database.reviewing.athlete("Ines", first, last, last).exercises


def test_each_set_has_its_reps_its_range_and_the_load_used(database: Database) -> None:
    facts = [
        *bout(0, BoutRated(31_000, 0, 1, reps=12)),
        *bout(1, BoutRated(51_000, 1, 1, reps=11), LoadUsed(52_000, 1, 1, "12.5")),
    ]
    run = write(database, MONDAY, facts, asked(0), asked(1))
    sets = SetDone(8, 12, 12, Decimal(10)), SetDone(8, 12, 11, Decimal("12.5"))
    assert read(database) == (ExerciseDone(run, MONDAY, "Row", Side.LEFT, DoseKind.OWN_PACE, sets),)


def test_a_set_left_out_is_none_done_and_one_not_begun_or_not_counted_is_unknown(database: Database) -> None:
    skipped = BoutEnded(45_000, 1, 1, BoutOutcome.SKIPPED, SkipReason.TIME)
    write(database, MONDAY, [*bout(0), skipped], asked(0), asked(1), asked(2, load=None))
    (done,) = read(database)
    assert [each.reps for each in done.sets] == [None, 0, None]
    assert [each.load_kg for each in done.sets] == [Decimal(10), Decimal(10), None]


def test_missed_and_counted_reps_are_known(database: Database) -> None:
    rep = RepDone(25_000, 0, 1, 1, Side.LEFT, 21_000, 0)
    write(database, MONDAY, [BoutBegan(20_000, 0, 1), rep, *bout(0)[1:]], asked(0))
    assert read(database)[0].sets[0].reps == 1


def test_the_attempt_that_stands_is_the_one_that_is_read(database: Database) -> None:
    again = bout(0, BoutRated(240_000, 0, 2, reps=3), outcome=BoutOutcome.BROKEN_OFF, attempt=2)
    write(database, MONDAY, [*bout(0, BoutRated(31_000, 0, 1, reps=10)), *again], asked(0))
    assert [each.reps for each in read(database)[0].sets] == [10]


def test_three_sessions_of_each_exercise_are_kept_the_latest_first(database: Database) -> None:
    days = [MONDAY + timedelta(days=number) for number in range(5)]
    for number, day in enumerate(days):
        write(database, day, bout(0, BoutRated(31_000, 0, 1, reps=number)), asked(0), asked(1, "Hop"))
    found = read(database, MONDAY, days[-1])
    rows = [each for each in found if each.exercise == "Row"]
    assert [each.day for each in rows] == days[:1:-1]
    assert [each.sets[0].reps for each in rows] == [4, 3, 2]
    assert len(found) == 2 * SESSIONS_KEPT


def test_what_lies_outside_of_the_days_or_is_somebody_elses_is_left_out(database: Database) -> None:
    for day in (MONDAY - timedelta(days=1), MONDAY, MONDAY + timedelta(days=1)):
        write(database, day, bout(0), asked(0))
    write(database, MONDAY, bout(0), asked(0, "Hop"), athlete="Hugo")
    assert [(each.day, each.exercise) for each in read(database)] == [(MONDAY, "Row")]


def test_an_exercise_older_than_the_sessions_looked_at_has_no_row(database: Database) -> None:
    write(database, MONDAY, bout(0), asked(0, "Hop"))
    for number in range(SESSIONS_LOOKED_AT):
        write(database, MONDAY + timedelta(days=number + 1), bout(0), asked(0))
    found = read(database, MONDAY, MONDAY + timedelta(days=SESSIONS_LOOKED_AT))
    assert {each.exercise for each in found} == {"Row"}
