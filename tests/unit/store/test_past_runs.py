"""Past training in the record: once, marked as imported, unknown where it is unknown."""

from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from app.domain.past import PastSession
from app.domain.records import RunOutcome, RunSummary
from app.store.database import Database, open_database
from app.store.past_runs import TakenPast
from app.store.verify import verify
from tests.laptops import RUNS, dump, laptop

DAY = date(2026, 3, 2)
RUN = PastSession(DAY, "Beach run", 45 * 60_000, 6)
LISBON = "Europe/Lisbon"


def take(database: Database, *sessions: PastSession, athlete: str | None = "Ines") -> TakenPast:
    return database.exchange.take_past(sessions, athlete, LISBON)


def summaries(database: Database) -> tuple[RunSummary, ...]:
    return database.queries.run_summaries()


def test_a_past_session_is_a_run_without_bouts_marked_as_imported(database: Database) -> None:
    assert take(database, RUN) == TakenPast(1, 0, ())
    (run,) = summaries(database)
    assert (run.athlete, run.plan_title, run.imported, run.invented) == ("Ines", "Beach run", True, False)
    assert (run.outcome, run.elapsed_ms, run.session_rpe) == (RunOutcome.FINISHED, 45 * 60_000, 6)
    assert (run.started_at, run.zone) == (datetime(2026, 3, 2, 12, 0, tzinfo=UTC), LISBON)
    assert database.queries.bouts_of(run.run_id) == ()
    assert (run.reps_prescribed, run.reps_done) == (0, 0)


def test_a_run_that_was_led_is_not_marked(database: Database) -> None:
    database.journal.open_run(RUNS[0].header, RUNS[0].prescribed)
    database.journal.append(RUNS[0].header.run_id, 0, RUNS[0].facts)
    assert [run.imported for run in summaries(database)] == [False]


def test_what_is_unknown_stays_unknown_and_is_not_offered_to_be_taken_up(database: Database) -> None:
    take(database, PastSession(DAY, "Swim"), PastSession(DAY, "Row", None, 3))
    assert {(run.elapsed_ms, run.session_rpe) for run in summaries(database)} == {(None, None), (None, 3)}
    assert database.queries.unfinished_runs() == ()


def test_the_same_sessions_again_change_nothing(database: Database) -> None:
    sessions = (RUN, RUN, PastSession(DAY, "Swim"), PastSession(DAY, "Swim", athlete="Hugo"))
    assert take(database, *sessions) == TakenPast(4, 0, ())
    before = dump(database.path)
    assert take(database, *sessions) == TakenPast(0, 4, ())
    assert take(database, *sessions[::-1]) == TakenPast(0, 4, ())
    assert dump(database.path) == before


def test_a_session_with_other_figures_is_left_as_it_is_and_named(database: Database) -> None:
    take(database, RUN)
    before = dump(database.path)
    other = PastSession(DAY, "Beach run", 50 * 60_000, 6)
    assert take(database, other) == TakenPast(0, 0, (other,))
    assert dump(database.path) == before


def test_days_are_those_of_the_zone_and_long_past_days_are_taken_too(database: Database) -> None:
    database.exchange.take_past([PastSession(DAY, "Swim")], "Ines", "Pacific/Auckland")
    take(database, PastSession(date(1961, 5, 1), "Row"))
    first, second = summaries(database)
    assert first.started_at.year == 1961
    assert second.started_at == datetime(2026, 3, 1, 23, 0, tzinfo=UTC)


def test_past_sessions_go_with_a_pack_and_keep_their_mark(tmp_path: Path) -> None:
    one, other = laptop(tmp_path, "one", 1), laptop(tmp_path, "other", 2)
    with one.open() as record:
        take(record, RUN, PastSession(DAY, "Swim"))
    other.unpack(one.pack("all.pwpack"))
    assert dump(other.path) == dump(one.path)
    assert verify(other.path, thorough=True).sound


def test_nothing_is_taken_when_something_fails(tmp_path: Path) -> None:
    def failing(size: int) -> bytes:
        raise RuntimeError("no randomness left")

    with open_database(tmp_path / "record.db", random_bytes=failing) as database:
        before = dump(database.path)
        with pytest.raises(RuntimeError):
            take(database, RUN)
        assert dump(database.path) == before
