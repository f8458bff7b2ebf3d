"""Checks of a record: a sound one passes, and each thing that can be wrong is found and said."""

import re
import sqlite3
from collections.abc import Sequence
from contextlib import closing
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.errors import StoreError
from app.domain.records import BoutPrescribed, RunHeader
from app.store import verify as checks
from app.store.database import open_database
from app.store.schema import SCHEMA_VERSION
from app.store.verify import MOST_FINDINGS, verify
from tests.filled import change, fill, invented_runs, page_of, spoil
from tests.strategies import headers, prescribed_bouts, run_facts

RUNS = invented_runs(8)
FIRST = bytes.fromhex(RUNS[0].header.run_id.replace("-", ""))


@pytest.fixture
def record(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    fill(path, RUNS)
    return path


def found(path: Path, *, thorough: bool = False) -> Sequence[str]:
    verdict = verify(path, thorough=thorough)
    assert verdict.sound == (not verdict.findings)
    return verdict.findings


def test_a_sound_record_is_said_to_be_with_what_it_holds(record: Path) -> None:
    verdict = verify(record)
    assert verdict.sound
    assert (verdict.runs, verdict.facts, verdict.folded) == (8, sum(len(run.facts) for run in RUNS), 8)


def test_checking_changes_nothing(record: Path) -> None:
    before = record.read_bytes()
    verify(record, thorough=True)
    assert record.read_bytes() == before
    assert list(record.parent.iterdir()) == [record]


def test_a_record_without_a_run_is_sound(tmp_path: Path) -> None:
    path = tmp_path / "new.db"
    open_database(path).close()
    assert verify(path).sound


@settings(max_examples=25)
@given(header=headers(), prescribed=prescribed_bouts(), data=st.data())
def test_whatever_the_journal_writes_is_sound(
    header: RunHeader, prescribed: tuple[BoutPrescribed, ...], data: st.DataObject
) -> None:
    facts = data.draw(run_facts(len(prescribed)))
    cuts = sorted(data.draw(st.lists(st.integers(0, len(facts)), max_size=3)))
    with TemporaryDirectory() as folder:
        path = Path(folder) / "record.db"
        with open_database(path) as database:
            database.journal.open_run(header, prescribed)
            for start, end in zip([0, *cuts], [*cuts, len(facts)], strict=True):
                database.journal.append(header.run_id, start, facts[start:end])
        assert found(path, thorough=True) == ()


@pytest.mark.parametrize(
    ("statement", "said"),
    [
        ("DELETE FROM fold WHERE rowid_of = 1", "not numbered from 0 without a gap"),
        ("UPDATE fold SET last_number = last_number + 1 WHERE rowid_of = 1", "without a gap"),
        ("UPDATE fold SET body = x'01ff' WHERE rowid_of = 1", "cannot be read"),
        ("UPDATE bout_record SET reps_counted = reps_counted + 1 WHERE rowid_of = 1", "figures of the bouts"),
        ("UPDATE bout_record SET pain = NULL WHERE rowid_of = 1", "figures of the bouts"),
        ("DELETE FROM bout_record WHERE rowid_of = 1", "figures of the bouts"),
        ("UPDATE run_course SET session_rpe = 9 WHERE rowid_of = 1", "of the whole run"),
        ("DELETE FROM run_course WHERE rowid_of = 1", "Nothing says how"),
        ("UPDATE plan SET text = text || ' '", "The plan .* is not the one that its hash names"),
        ("UPDATE plan SET title = 'Another'", "The plan .* is not the one that its hash names"),
        ("UPDATE prescription SET low = low + 1", "The prescription .* is not the one"),
        ("UPDATE prescribed_bout SET work_ms = 1", "The prescription .* is not the one"),
        ("DELETE FROM athlete WHERE name = 'Ines'", "belongs to a row of athlete that is not there"),
        ("UPDATE alembic_version SET version_num = '0000'", "the table of versions another"),
    ],
)
def test_what_is_wrong_is_found(record: Path, statement: str, said: str) -> None:
    change(record, statement.replace("rowid_of = 1", f"run_id = x'{FIRST.hex()}'"))
    findings = found(record)
    assert any(re.search(said, sentence) for sentence in findings), findings
    assert all(sentence.endswith(".") for sentence in findings)


def test_facts_that_lie_in_another_order_than_their_numbers_are_found(record: Path) -> None:
    with closing(sqlite3.connect(record, isolation_level=None)) as raw:
        first = raw.execute("SELECT first_number FROM fold WHERE run_id = ? LIMIT 1", (FIRST,)).fetchone()
        assert first == (0,)
        raw.execute("INSERT INTO fact VALUES (?, -1, x'01')", (FIRST,))
    assert any("later facts are folded" in sentence for sentence in found(record))


def test_a_row_of_folded_facts_that_ends_before_it_begins_is_found(record: Path) -> None:
    number = len(RUNS[0].facts)
    change(record, "DELETE FROM fact WHERE run_id = ?", FIRST)
    with closing(sqlite3.connect(record)) as raw:
        (last,) = raw.execute("SELECT max(last_number) FROM fold WHERE run_id = ?", (FIRST,)).fetchone()
    assert last < number
    change(record, "INSERT INTO fold VALUES (?, ?, ?, x'01')", FIRST, last + 1, last)
    assert any("without a gap" in sentence for sentence in found(record))


def test_a_course_of_a_run_without_facts_is_found(record: Path) -> None:
    for table in ("fold", "fact"):
        change(record, f"DELETE FROM {table} WHERE run_id = ?", FIRST)  # noqa: S608
    assert any("which has no facts" in sentence for sentence in found(record))


@pytest.mark.parametrize("table", ["run", "sqlite_autoindex_plan_1", "bout_record"])
def test_a_damaged_page_is_found(record: Path, table: str) -> None:
    spoil(record, page_of(record, table), seed=1)
    try:
        findings = found(record)
    except StoreError as error:
        findings = (str(error),)
    assert any("damaged" in sentence for sentence in findings)


def test_findings_name_nobody(record: Path) -> None:
    change(record, "DELETE FROM fold WHERE first_number = 0")
    text = " ".join(found(record, thorough=True))
    assert text
    assert not any(run.header.athlete in text or run.header.plan_title in text for run in RUNS)


def test_the_figures_of_older_runs_are_looked_at_when_asked(
    record: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(checks, "QUICK_RUNS", 3)
    change(record, "UPDATE bout_record SET rpe = 1 WHERE run_id = ?", FIRST)
    assert verify(record).sound
    assert verify(record).folded == 3
    assert verify(record, thorough=True).folded == 8
    assert any(RUNS[0].header.run_id in sentence for sentence in found(record, thorough=True))


def test_findings_of_a_kind_are_not_listed_without_end(tmp_path: Path) -> None:
    path = tmp_path / "record.db"
    fill(path, invented_runs(MOST_FINDINGS + 5))
    change(path, "DELETE FROM fold WHERE first_number = 0")
    assert len(found(path)) <= 2 * MOST_FINDINGS


def test_of_an_older_schema_all_but_the_figures_is_checked(record: Path) -> None:
    change(record, f"PRAGMA user_version = {SCHEMA_VERSION - 1}")
    change(record, "UPDATE alembic_version SET version_num = ?", f"{SCHEMA_VERSION - 1:04d}")
    assert (verify(record).findings, verify(record).folded) == ((), 0)
    change(record, "DELETE FROM fold WHERE run_id = ? AND first_number = 0", FIRST)
    assert not verify(record).sound


def test_what_is_no_record_is_refused(tmp_path: Path) -> None:
    (tmp_path / "notes.txt").write_text("Step-down. " * 1_000)
    with pytest.raises(StoreError, match="is not a database of this program"):
        verify(tmp_path / "notes.txt")
    with pytest.raises(StoreError, match="There is no database"):
        verify(tmp_path / "nothing.db")
