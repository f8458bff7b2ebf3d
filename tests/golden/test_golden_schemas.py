"""Records of every schema there was: each opens in today's program, and nothing of it is lost on the way."""

import json
import shutil
import sqlite3
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from app.domain.records import Fact
from app.store.backup import backups_in
from app.store.contents import contents_of
from app.store.database import open_database
from app.store.migration import SCRIPTS
from app.store.places import backup_folder
from app.store.recovery import recover
from app.store.refold import facts_by_number
from app.store.restore import restore, restore_plan
from app.store.schema import SCHEMA_VERSION
from app.store.verify import verify
from tests.schemas import AT, FOLDER, held_in, held_of, record_of

VERSIONS = range(1, SCHEMA_VERSION + 1)


@pytest.fixture(params=VERSIONS, ids=lambda version: f"r{version:04d}")
def version(request: pytest.FixtureRequest) -> int:
    number: int = request.param
    return number


@pytest.fixture
def record(version: int, tmp_path: Path) -> Path:
    return Path(shutil.copyfile(record_of(version), tmp_path / "pacewright.db"))


def held(version: int) -> dict[str, Any]:
    content: dict[str, Any] = json.loads(held_of(version).read_text(encoding="utf-8"))
    return content


def all_facts(path: Path) -> dict[bytes, dict[int, Fact]]:
    with closing(sqlite3.connect(path)) as raw:
        runs = raw.execute("SELECT id FROM run").fetchall()
        return {run_id: facts_by_number(raw, run_id) for (run_id,) in runs}


def test_every_schema_has_a_record_made_by_the_program_of_its_time() -> None:
    steps = {path.name.partition("_")[0] for path in (SCRIPTS / "versions").glob("r*.py")}
    made = {path.stem for path in FOLDER.glob("*.db")}
    assert made == steps, "python -m tests.schemas makes the one of today's schema"
    assert {path.stem for path in FOLDER.glob("*.json")} == made


def test_a_record_is_of_its_schema_and_holds_what_it_held(version: int) -> None:
    path = record_of(version)
    with closing(sqlite3.connect(f"{path.as_uri()}?mode=ro", uri=True)) as raw:
        assert raw.execute("PRAGMA user_version").fetchone() == (version,)
        assert raw.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
    assert held_in(path) == held(version)


def test_it_opens_and_keeps_every_row_and_every_run(record: Path, version: int) -> None:
    open_database(record).close()
    now, then = held_in(record), held(version)
    assert now["runs"] == then["runs"]
    assert {table: now["rows"][table] for table in then["rows"]} == then["rows"]


def test_it_keeps_every_fact_with_its_number(record: Path) -> None:
    before = all_facts(record)
    open_database(record).close()
    after = all_facts(record)
    assert after == before
    assert sum(map(len, after.values())) > 100
    with open_database(record) as database:
        read = {run_id: database.queries.facts_of(run_id) for run_id in database.queries.run_ids()}
    assert {bytes.fromhex(name.replace("-", "")): facts for name, facts in read.items()} == {
        run_id: tuple(facts.values()) for run_id, facts in after.items()
    }


def test_it_is_sound_before_and_after(record: Path) -> None:
    assert verify(record).findings == ()
    open_database(record).close()
    assert verify(record, thorough=True).findings == ()


def test_it_is_what_the_program_of_today_would_make(record: Path, tmp_path: Path) -> None:
    """The same tables and indexes, whatever the way to them."""
    open_database(record).close()
    open_database(tmp_path / "new.db").close()
    assert _schema(record) == _schema(tmp_path / "new.db")


def _schema(path: Path) -> set[tuple[str, str]]:
    with closing(sqlite3.connect(path)) as raw:
        found = raw.execute("SELECT name, coalesce(sql, '') FROM sqlite_schema").fetchall()
    return {(name, " ".join(sql.replace('"', "").split())) for name, sql in found}


def test_it_is_backed_up_as_it_was_before_it_is_brought_up_to_date(record: Path, version: int) -> None:
    open_database(record, now=lambda: AT).close()
    made = backups_in(backup_folder(record))
    if version == SCHEMA_VERSION:
        assert made == ()
        return
    (backup,) = made
    assert backup.schema == version
    assert held_in(backup.path) == held(version)


def test_going_back_to_it_and_forward_again_loses_nothing(record: Path, version: int, tmp_path: Path) -> None:
    old = shutil.copyfile(record, tmp_path / "old.db")
    open_database(record).close()
    assert restore_plan(record, Path(old)).nothing
    restore(record, Path(old), AT)
    there = held_in(record)
    assert there["runs"] == held(version)["runs"]
    # Where somebody was erased, the file is brought up to date at once, with tables that are empty.
    assert {**held(version)["rows"], **there["rows"]} == there["rows"]
    open_database(record).close()
    assert held_in(record)["runs"] == held(version)["runs"]


def test_it_can_be_saved_page_by_page(record: Path, tmp_path: Path) -> None:
    facts, runs = all_facts(record), contents_of(record).runs
    recovered = recover(record, tmp_path / "saved.db", at=AT)
    assert recovered.whole
    assert all_facts(tmp_path / "saved.db") == facts
    assert contents_of(tmp_path / "saved.db").runs == runs
    assert verify(tmp_path / "saved.db", thorough=True).findings == ()


def test_a_damaged_record_of_today_is_filled_up_from_it(record: Path, tmp_path: Path) -> None:
    facts = all_facts(record)
    today = tmp_path / "today.db"
    shutil.copyfile(record, today)
    open_database(today).close()
    with closing(sqlite3.connect(today, isolation_level=None)) as raw:
        for statement in (
            "DELETE FROM fold WHERE first_number > 0",
            "DELETE FROM athlete",
            "DELETE FROM plan",
        ):
            raw.execute(statement)
    recover(today, tmp_path / "saved.db", record, at=AT)
    assert all_facts(tmp_path / "saved.db") == facts
    assert verify(tmp_path / "saved.db", thorough=True).findings == ()
