"""What a database holds, counted from the file alone."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from app.domain.records import RepDone
from app.store.contents import contents_of
from app.store.database import open_database
from tests.filled import change, fill, invented_runs

RUNS = invented_runs(8)


@pytest.fixture
def record(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    fill(path, RUNS)
    return path


def test_counts_are_those_of_what_was_written(record: Path) -> None:
    held = contents_of(record)
    reps = [fact for run in RUNS for fact in run.facts if isinstance(fact, RepDone)]
    assert (len(held.runs), held.athletes, held.reps) == (8, 4, len(reps))
    assert [run.facts for run in held.runs] == [len(run.facts) for run in RUNS]


def test_ratings_are_bouts_with_effort_or_pain_and_sessions_rated(record: Path) -> None:
    # Seven whole runs with three rated bouts and a session rating each; the eighth was cut short before any.
    assert contents_of(record).ratings == 7 * (3 + 1)
    change(record, "UPDATE bout_record SET pain = NULL, rpe = NULL")
    assert contents_of(record).ratings == 7


def test_runs_come_in_the_order_in_which_they_began_and_know_whose_they_are(record: Path) -> None:
    held = contents_of(record)
    found = [(run.run_id, run.athlete, run.plan_title, run.started_at, run.zone) for run in held.runs]
    assert found == [
        (
            run.header.run_id,
            run.header.athlete,
            run.header.plan_title,
            run.header.started_at,
            run.header.zone,
        )
        for run in RUNS
    ]
    assert held.newest == held.runs[-1]


def test_a_fact_more_is_another_state_of_its_run_alone(record: Path) -> None:
    before = {run.run_id: run.print for run in contents_of(record).runs}
    last = RUNS[-1]
    with open_database(record) as database:
        database.journal.append(last.header.run_id, len(last.facts), [RepDone(90_000, 0, 1, 6, "left", 1, 0)])  # type: ignore[arg-type]
    after = {run.run_id: run.print for run in contents_of(record).runs}
    assert [name for name in before if before[name] != after[name]] == [last.header.run_id]


NOTED = """
    INSERT INTO note (id, athlete_id, run_id, text, who, at, zone)
    SELECT x'01', athlete_id, id, 'windy', 'Coach', 0, 'UTC' FROM run WHERE id = ?
"""
CORRECTED = """
    INSERT INTO correction
        (id, subject, subject_id, field, before, after, who, why, at, zone, replaces)
    VALUES (x'01', 'run', ?, 'session_rpe', '5', '6', 'Coach', 'misheard', 0, 'UTC', '[]')
"""


@pytest.mark.parametrize("statement", [NOTED, CORRECTED])
def test_words_about_a_run_are_another_state_of_it(record: Path, statement: str) -> None:
    before = contents_of(record)
    change(record, statement, bytes.fromhex(RUNS[2].header.run_id.replace("-", "")))
    after = contents_of(record)
    changed = [old.run_id for old, new in zip(before.runs, after.runs, strict=True) if old != new]
    assert changed == [RUNS[2].header.run_id]


def test_an_empty_database_holds_nothing(tmp_path: Path) -> None:
    path = tmp_path / "new.db"
    open_database(path).close()
    held = contents_of(path)
    assert (held.runs, held.reps, held.athletes, held.newest) == ((), 0, 0, None)


def test_what_is_kept_beside_the_runs_is_known_by_its_key(record: Path) -> None:
    assert contents_of(record).beside == {}
    at = int(datetime(2026, 3, 2, tzinfo=UTC).timestamp() * 1_000_000)
    change(record, "INSERT INTO setting VALUES (?, 'units', 'kg', ?, 'UTC')", b"\1" * 16, at)
    assert contents_of(record).beside == {"setting": frozenset({b"\1" * 16})}
