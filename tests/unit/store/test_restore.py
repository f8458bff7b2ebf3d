"""Going back to a backup: what it would change is said first, and nothing is lost by it."""

import shutil
from datetime import UTC, datetime
from pathlib import Path

import pytest

from app.domain.errors import DamagedStoreError, StoreError
from app.domain.records import RepDone
from app.store.backup import write_backup
from app.store.database import open_database
from app.store.restore import restore, restore_plan
from tests.filled import change, facts_in, fill, invented_runs, page_of, spoil

RUNS = invented_runs(6, unfinished=False)
AT = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)


@pytest.fixture(scope="module")
def _filled(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    """A record of four runs and its backup of the first three."""
    folder = tmp_path_factory.mktemp("filled")
    record = folder / "record.db"
    fill(record, RUNS[:3])
    backup = write_backup(record, folder / "backups", AT).path
    fill(record, RUNS[3:4])
    return record, backup


@pytest.fixture
def record(_filled: tuple[Path, Path], tmp_path: Path) -> Path:
    return Path(shutil.copy(_filled[0], tmp_path / "record.db"))


@pytest.fixture
def backup(_filled: tuple[Path, Path], tmp_path: Path) -> Path:
    return Path(shutil.copy(_filled[1], tmp_path / "backup.db"))


def names(runs: object) -> list[str]:
    return [run.run_id for run in runs]  # type: ignore[attr-defined]


def test_runs_that_would_be_lost_are_said(record: Path, backup: Path) -> None:
    plan = restore_plan(record, backup)
    assert names(plan.lost) == [RUNS[3].header.run_id]
    assert (plan.gained, plan.changed, plan.nothing) == ((), (), False)
    assert plan.present is not None
    assert (len(plan.present.runs), len(plan.backup.runs)) == (4, 3)


def test_runs_that_would_come_back_are_said(record: Path, backup: Path) -> None:
    plan = restore_plan(backup, record)
    assert names(plan.gained) == [RUNS[3].header.run_id]
    assert plan.lost == ()


def test_a_run_that_went_on_since_is_said(record: Path, backup: Path) -> None:
    run = RUNS[0]
    more = RepDone(900_000, 2, 1, 6, run.prescribed[2].side, 890_000, 0)
    with open_database(record) as database:
        database.journal.append(run.header.run_id, len(run.facts), [more])
    ((now, then),) = restore_plan(record, backup).changed
    assert (now.run_id, now.facts, then.facts) == (run.header.run_id, len(run.facts) + 1, len(run.facts))
    assert now.reps == then.reps + 1


def test_a_run_that_went_on_otherwise_since_is_said_though_it_is_as_long(record: Path, backup: Path) -> None:
    run = RUNS[1]
    for path, late in ((record, 1), (backup, 2)):
        more = RepDone(900_000, 2, 1, 6, run.prescribed[2].side, 890_000, late)
        with open_database(path) as database:
            database.journal.append(run.header.run_id, len(run.facts), [more])
    assert [now.run_id for now, _ in restore_plan(record, backup).changed] == [run.header.run_id]


def test_a_backup_of_what_is_there_changes_nothing(record: Path, tmp_path: Path) -> None:
    same = write_backup(record, tmp_path / "backups", AT).path
    assert restore_plan(record, same).nothing


def test_a_choice_made_since_is_a_difference(record: Path, tmp_path: Path) -> None:
    before = write_backup(record, tmp_path / "backups", AT).path
    change(record, "INSERT INTO setting VALUES (?, 'units', 'kg', 0, 'UTC')", b"\1" * 16)
    plan = restore_plan(record, before)
    assert not plan.nothing
    assert (plan.only_in_place("setting"), plan.only_in_backup("setting")) == (1, 0)


def test_planning_changes_nothing(record: Path, backup: Path) -> None:
    before = record.read_bytes(), backup.read_bytes(), sorted(record.parent.iterdir())
    restore_plan(record, backup)
    assert (record.read_bytes(), backup.read_bytes(), sorted(record.parent.iterdir())) == before


def test_a_record_that_cannot_be_read_is_said_beside_what_would_come_back(record: Path, backup: Path) -> None:
    spoil(record, 1, seed=1)
    plan = restore_plan(record, backup)
    assert plan.present is None
    assert "record.db" in plan.trouble
    assert names(plan.gained) == [run.header.run_id for run in RUNS[:3]]


def test_going_back_gives_every_fact_of_then_and_keeps_every_fact_of_now(record: Path, backup: Path) -> None:
    aside = restore(record, backup, AT)
    assert facts_in(record) == {run.header.run_id: run.facts for run in RUNS[:3]}
    assert aside is not None
    assert facts_in(aside) == {run.header.run_id: run.facts for run in RUNS[:4]}
    assert facts_in(backup) == facts_in(record)
    assert record.stat().st_mode & 0o777 == 0o600


def test_going_back_can_be_undone(record: Path, backup: Path) -> None:
    before = facts_in(record)
    aside = restore(record, backup, AT)
    assert aside is not None
    restore(record, aside, AT)
    assert facts_in(record) == before


def test_a_record_that_is_gone_comes_back(record: Path, backup: Path) -> None:
    record.unlink()
    assert "There is no database" in restore_plan(record, backup).trouble
    assert restore(record, backup, AT) is None
    assert len(facts_in(record)) == 3


def test_a_folder_that_is_gone_comes_back_with_it(tmp_path: Path, backup: Path) -> None:
    record = tmp_path / "data" / "record.db"
    restore(record, backup, AT)
    assert len(facts_in(record)) == 3
    assert record.parent.stat().st_mode & 0o777 == 0o700


@pytest.mark.parametrize("act", [restore_plan, lambda record, backup: restore(record, backup, AT)])
def test_a_damaged_backup_is_not_gone_back_to(record: Path, backup: Path, act: object) -> None:
    spoil(backup, page_of(backup, "fold"), seed=2)
    before = record.read_bytes()
    with pytest.raises(DamagedStoreError, match=r"does not pass its check.*Choose another"):
        act(record, backup)  # type: ignore[operator]
    assert record.read_bytes() == before
    assert sorted(path.name for path in record.parent.iterdir()) == ["backup.db", "record.db"]


def test_the_database_itself_is_no_backup_of_it(record: Path) -> None:
    link = record.with_name("link.db")
    link.symlink_to(record)
    for name in (record, link):
        with pytest.raises(StoreError, match="is the database itself"):
            restore(record, name, AT)


def test_a_backup_that_is_not_there_is_said(record: Path, tmp_path: Path) -> None:
    with pytest.raises(StoreError, match=r"There is no database .*nothing\.db"):
        restore_plan(record, tmp_path / "nothing.db")
