"""A damaged record: what is left of it is saved, what is not is said, and nothing is made up."""

import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from uuid import UUID

import pytest

from app.domain.records import BoutEnded, Fact, RepDone, RunEnded, RunOutcome
from app.store.backup import write_backup
from app.store.contents import contents_of
from app.store.database import open_database
from app.store.encoding import encode
from app.store.erasure import erase, find
from app.store.identity import uuid7
from app.store.pages import PagedFile, walk
from app.store.recovery import Recovered, recover
from app.store.refold import facts_by_number
from app.store.verify import verify
from tests.filled import Invented, change, facts_in, fill, invented_runs, page_of, spoil
from tests.torn import leave_unfinished_write

RUNS = invented_runs(60)
WRITTEN = {run.header.run_id: run.facts for run in RUNS}
ALL = {(name, number, fact) for name, facts in WRITTEN.items() for number, fact in enumerate(facts)}
AT = datetime(2026, 6, 1, tzinfo=UTC)


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("filled") / "record.db"
    fill(path, RUNS)
    return path


@pytest.fixture
def record(whole: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(whole, tmp_path / "record.db"))


def saved(record: Path, backup: Path | None = None) -> tuple[Recovered, Path]:
    into = record.with_name("saved.db")
    return recover(record, into, backup, at=AT), into


def numbered(path: Path) -> Iterator[tuple[str, int, Fact]]:
    """Every fact of a record with its run and its number."""
    with closing(sqlite3.connect(path)) as raw:
        for (run_id,) in raw.execute("SELECT id FROM run").fetchall():
            for number, fact in facts_by_number(raw, run_id).items():
                yield str(UUID(bytes=run_id)), number, fact


def leaves_of(path: Path, table: str) -> list[int]:
    """The numbers of the pages that hold the rows of a table."""
    return [number for number, page in walk(PagedFile(path), page_of(path, table)) if page.records]


def test_a_whole_record_is_saved_whole(record: Path, whole: Path) -> None:
    recovered, into = saved(record)
    assert facts_in(into) == WRITTEN
    assert recovered.whole
    assert contents_of(into) == contents_of(whole)
    assert verify(into, thorough=True).findings == ()


def test_the_damaged_file_is_only_read(record: Path) -> None:
    spoil(record, page_of(record, "fold"))
    before = record.read_bytes()
    saved(record)
    assert record.read_bytes() == before
    assert sorted(path.name for path in record.parent.iterdir()) == ["record.db", "saved.db"]


def test_what_is_saved_is_its_owners_alone(record: Path) -> None:
    _, into = saved(record)
    assert into.stat().st_mode & 0o777 == 0o600


@pytest.mark.parametrize("noise", [None, 7])
def test_whichever_page_is_lost_no_fact_of_another_is_and_none_is_made_up(
    whole: Path, record: Path, noise: int | None
) -> None:
    pages = PagedFile(whole)
    true = set(numbered(whole))
    for number in [1, *leaves_of(whole, "fold"), *leaves_of(whole, "fact"), *leaves_of(whole, "run")]:
        spoil(record, number, seed=noise)
        recovered, into = saved(record)
        found = set(numbered(into))
        ends = {(name, place) for name, place, fact in found - true if isinstance(fact, RunEnded)}
        assert {name for name, _ in ends} <= set(recovered.closed)
        assert len(found - true) == len(ends), "nothing but the end of a run that was closed is new"
        page = pages.page(number)
        on_it = 0 if page is None else sum(_facts_of(record.values) for record in page.records)
        assert len(true - found) <= on_it
        shutil.copy(whole, record)


def _facts_of(row: tuple[object, ...]) -> int:
    """How many facts a row of `fold` or `fact` holds."""
    if len(row) == 4 and isinstance(row[1], int) and isinstance(row[2], int):
        return row[2] - row[1] + 1
    return 1 if len(row) == 3 else 0


def test_what_the_newest_backup_still_has_fills_the_gaps(record: Path, tmp_path: Path) -> None:
    backup = write_backup(record, tmp_path / "backups", AT).path
    later = [_moved(run, timedelta(days=200)) for run in invented_runs(3, seed=99, unfinished=False)]
    fill(record, later)
    for table in ("fold", "run", "plan", "prescription", "athlete"):
        spoil(record, leaves_of(record, table)[0])
    recovered, into = saved(record, backup)
    everything = WRITTEN | {run.header.run_id: run.facts for run in later}
    found = facts_in(into)
    assert {name: found[name] for name in WRITTEN} == WRITTEN
    assert all(set(found.get(name, ())) <= set(facts) for name, facts in everything.items())
    assert recovered.from_backup > 0
    assert verify(into, thorough=True).findings == ()
    held = {run.run_id: (run.athlete, run.plan_title) for run in contents_of(into).runs}
    for run in RUNS:
        assert held[run.header.run_id] == (run.header.athlete, run.header.plan_title)


def _moved(run: Invented, by: timedelta) -> Invented:
    began = run.header.started_at + by
    name = str(uuid7(int(began.timestamp() * 1000), bytes(10)))
    return replace(run, header=replace(run.header, started_at=began, run_id=name))


def test_what_was_read_is_believed_before_the_backup(record: Path, tmp_path: Path) -> None:
    backup = write_backup(record, tmp_path / "backups", AT).path
    run = RUNS[-1]
    with open_database(record) as database:
        end = RunEnded(500_000, RunOutcome.ABANDONED)
        database.journal.append(run.header.run_id, len(run.facts), [end])
    spoil(record, leaves_of(record, "plan")[0])
    _, into = saved(record, backup)
    assert facts_in(into)[run.header.run_id] == (*run.facts, end)


def test_whoever_was_erased_does_not_come_back_out_of_a_backup_kept_elsewhere(
    record: Path, tmp_path: Path
) -> None:
    backup = write_backup(record, tmp_path / "stick", AT).path
    erase(find(record, None, {"Ines"}), AT)
    spoil(record, page_of(record, "ix_athlete_name"))
    _, into = saved(record, backup)
    assert {run.athlete for run in contents_of(into).runs} == {"Hugo", "Kaya", "Bram"}
    assert b"Ines" not in into.read_bytes()
    assert verify(into, thorough=True).findings == ()


def test_a_run_with_a_gap_keeps_the_numbers_of_its_facts_and_says_how_many_are_missing(record: Path) -> None:
    run = RUNS[4]
    gone = _drop_fold(record, run.header.run_id, 1)
    recovered, into = saved(record)
    assert recovered.missing_facts == {run.header.run_id: len(gone)}
    kept = {number: fact for name, number, fact in numbered(into) if name == run.header.run_id}
    assert kept == {number: fact for number, fact in enumerate(run.facts) if number not in gone}
    assert recovered.closed == ()
    assert not recovered.whole


def _drop_fold(record: Path, run_id: str, place: int) -> range:
    """Delete one row of folded facts, as a bad page would; gives the numbers that are gone."""
    name = bytes.fromhex(run_id.replace("-", ""))
    with closing(sqlite3.connect(record, isolation_level=None)) as raw:
        folds = raw.execute(
            "SELECT first_number, last_number FROM fold WHERE run_id = ? ORDER BY 1", (name,)
        ).fetchall()
        first, last = folds[place]
        raw.execute("DELETE FROM fold WHERE run_id = ? AND first_number = ?", (name, first))
    return range(first, last + 1)


def test_the_figures_of_lost_facts_are_kept(record: Path) -> None:
    run = RUNS[4]
    with open_database(record) as database:
        before = [line for line in database.queries.run_summaries() if line.run_id == run.header.run_id]
    _drop_fold(record, run.header.run_id, 1)
    _, into = saved(record)
    with open_database(into) as database:
        after = [line for line in database.queries.run_summaries() if line.run_id == run.header.run_id]
    assert after == before


def test_a_run_whose_end_is_lost_is_over_as_its_figures_say(record: Path) -> None:
    run = RUNS[4]
    name = bytes.fromhex(run.header.run_id.replace("-", ""))
    change(record, "DELETE FROM fold WHERE run_id = ? AND first_number > 0", name)
    change(record, "DELETE FROM fact WHERE run_id = ?", name)
    recovered, into = saved(record)
    with open_database(into) as database:
        assert run.header.run_id not in [header.run_id for header in database.queries.unfinished_runs()]
        (summary,) = [line for line in database.queries.run_summaries() if line.run_id == run.header.run_id]
    assert summary.outcome is not None
    assert recovered.beyond == (run.header.run_id,)
    assert not recovered.whole


def test_a_page_that_held_rows_is_counted_and_one_of_an_index_is_not(record: Path) -> None:
    spoil(record, page_of(record, "ix_athlete_name"))
    recovered, _ = saved(record)
    assert (recovered.lost_pages, recovered.whole) == (0, True)
    spoil(record, leaves_of(record, "fold")[-1])
    recovered, _ = saved(record)
    assert (recovered.lost_pages, recovered.whole) == (1, False)


def test_what_is_saved_takes_no_more_room_than_it_needs(record: Path) -> None:
    spoil(record, page_of(record, "fold"))
    _, into = saved(record)
    size = into.stat().st_size
    change(into, "VACUUM")
    assert into.stat().st_size == size


def test_an_unfinished_run_whose_last_bout_is_lost_is_said_to_lack_facts(tmp_path: Path) -> None:
    run = RUNS[0]
    ends = [number for number, fact in enumerate(run.facts) if isinstance(fact, BoutEnded)]
    path = tmp_path / "record.db"
    fill(path, [replace(run, facts=run.facts[: ends[1] + 1])])
    _drop_fold(path, run.header.run_id, 1)
    recovered, into = saved(path)
    assert (recovered.beyond, recovered.whole) == ((run.header.run_id,), False)
    assert facts_in(into) == {run.header.run_id: run.facts[: ends[0] + 1]}


def test_the_figures_of_a_run_without_a_fact_left_are_kept(record: Path) -> None:
    run = RUNS[4]
    name = bytes.fromhex(run.header.run_id.replace("-", ""))
    with open_database(record) as database:
        before = database.queries.run_summaries()
    for table in ("fold", "fact"):
        change(record, f"DELETE FROM {table} WHERE run_id = ?", name)  # noqa: S608
    recovered, into = saved(record)
    with open_database(into) as database:
        assert database.queries.run_summaries() == before
    assert recovered.beyond == (run.header.run_id,)


def test_a_correction_that_cannot_be_read_is_counted_and_let_go(record: Path) -> None:
    statement = """
        INSERT INTO correction
            (id, subject, subject_id, field, before, after, who, why, at, zone, replaces)
        VALUES (?, 'run', ?, 'session_rpe', '5', ?, 'Coach', 'misheard', 0, 'UTC', '[]')
    """
    name = bytes.fromhex(RUNS[4].header.run_id.replace("-", ""))
    change(record, statement, b"\1" * 16, name, "6")
    change(record, statement, b"\2" * 16, name, "six?")
    recovered, into = saved(record)
    assert recovered.bad_rows == 1
    with open_database(into) as database:
        kept = database.corrections.history_of(RUNS[4].header.run_id)
        (rpe,) = [
            run.session_rpe for run in database.queries.run_summaries() if run.run_id == RUNS[4].header.run_id
        ]
    assert [each.after for each in kept.corrections] == [6]
    assert rpe == 6


def test_of_two_versions_of_a_fact_the_one_that_was_read_stands(record: Path, tmp_path: Path) -> None:
    run = RUNS[4]
    other = tmp_path / "other.db"
    altered = tuple(
        replace(fact, late_ms=fact.late_ms + 1) if isinstance(fact, RepDone) else fact for fact in run.facts
    )
    fill(other, [replace(run, facts=altered)])
    gone = _drop_fold(record, run.header.run_id, 1)
    _, into = saved(record, other)
    kept = {number: fact for name, number, fact in numbered(into) if name == run.header.run_id}
    assert kept == {
        number: (altered if number in gone else run.facts)[number] for number in range(len(run.facts))
    }


def test_stand_ins_make_way_for_what_the_backup_knows(record: Path, tmp_path: Path) -> None:
    backup = write_backup(record, tmp_path / "backups", AT).path
    for table in ("run", "run_course", "athlete", "plan"):
        for number in leaves_of(record, table):
            spoil(record, number)
    recovered, into = saved(record, backup)
    assert recovered.stand_ins == {}
    assert contents_of(into) == contents_of(backup)


def test_an_unfinished_run_with_a_gap_is_ended_because_new_facts_would_take_old_numbers(
    record: Path,
) -> None:
    run = RUNS[-1]
    gone = _drop_fold(record, run.header.run_id, 0)
    recovered, into = saved(record)
    assert recovered.missing_facts == {run.header.run_id: len(gone)}
    assert recovered.closed == (run.header.run_id,)
    with open_database(into) as database:
        assert database.queries.unfinished_runs() == ()
        last = database.queries.facts_of(run.header.run_id)[-1]
    assert last == RunEnded(run.facts[-1].at_ms, RunOutcome.ABANDONED)


def test_an_unfinished_run_without_a_gap_can_be_led_on(record: Path) -> None:
    spoil(record, leaves_of(record, "plan")[0])
    _, into = saved(record)
    with open_database(into) as database:
        (header,) = database.queries.unfinished_runs()
    assert header.run_id == RUNS[-1].header.run_id


def test_a_run_of_which_only_facts_are_left_is_known_by_its_name(record: Path) -> None:
    for table in ("run", "run_course"):
        for number in leaves_of(record, table):
            spoil(record, number)
    recovered, into = saved(record)
    assert recovered.stand_ins["run"] == len(RUNS)
    assert facts_in(into) == WRITTEN
    found = {run.run_id: (run.athlete, run.plan_title, run.started_at) for run in contents_of(into).runs}
    expected = {run.header.run_id: ("Unknown athlete", "Unknown plan", run.header.started_at) for run in RUNS}
    assert found == expected
    assert verify(into, thorough=True).findings == ()


@pytest.mark.parametrize("name", [b"\1\2\3", UUID("919108f7-52d1-4320-9bac-f847db4148a8").bytes])
def test_facts_under_a_name_that_no_run_can_have_are_counted_and_let_go(record: Path, name: bytes) -> None:
    body = encode([RunEnded(5, RunOutcome.ABANDONED)])
    change(record, "INSERT INTO fact VALUES (?, 0, ?)", name, body)
    recovered, into = saved(record)
    assert recovered.bad_rows == 1
    assert facts_in(into) == WRITTEN


def test_a_run_of_which_the_course_is_left_is_known_by_that(record: Path) -> None:
    for number in leaves_of(record, "run"):
        spoil(record, number)
    _, into = saved(record)
    found = {run.run_id: (run.athlete, run.started_at) for run in contents_of(into).runs}
    assert found == {run.header.run_id: (run.header.athlete, run.header.started_at) for run in RUNS}


def test_a_plan_that_is_not_its_hash_is_not_believed(record: Path) -> None:
    change(record, "UPDATE plan SET text = 'title = \"Another\"' WHERE title = 'Landing control'")
    recovered, into = saved(record)
    assert recovered.bad_rows == 1
    assert {run.plan_title for run in contents_of(into).runs} == {"Shoulder rotators", "Unknown plan"}


def test_facts_that_are_none_are_counted_and_left_out(record: Path) -> None:
    change(record, "UPDATE fold SET body = x'01ff' WHERE first_number = 0")
    recovered, into = saved(record)
    assert recovered.bad_rows == len(RUNS)
    ends = {one for one in numbered(into) if one[0] in recovered.closed and isinstance(one[2], RunEnded)}
    assert set(numbered(into)) - ends < ALL


def test_a_record_whose_header_is_lost_is_saved(record: Path) -> None:
    spoil(record, 1)
    _, into = saved(record)
    assert facts_in(into) == WRITTEN


def test_a_record_cut_short_is_saved_as_far_as_it_goes(record: Path) -> None:
    with record.open("r+b") as file:
        file.truncate(record.stat().st_size // 2)
    recovered, into = saved(record)
    found = set(numbered(into))
    assert found
    assert found <= ALL | {one for one in found if one[0] in recovered.closed}


def test_a_torn_record_is_saved_as_it_was_before_it_was_torn(record: Path) -> None:
    leave_unfinished_write(record)
    _, into = saved(record)
    assert facts_in(into) == WRITTEN
