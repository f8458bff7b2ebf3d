"""Backups: which are made, which are kept, and that a failure takes none away."""

import random
import shutil
import stat
from collections.abc import Iterable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.errors import DamagedStoreError, StoreError
from app.store import backup as backups
from app.store.backup import Backup, back_up, backups_in, newest_sound, prune, write_backup
from app.store.database import open_database
from app.store.schema import SCHEMA_VERSION
from tests.filled import change, facts_in, fill, invented_runs, page_of, spoil

RUNS = invented_runs(6)
AT = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
HOUR, DAY = timedelta(hours=1), timedelta(days=1)


@pytest.fixture(scope="module")
def _filled(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("filled") / "record.db"
    fill(path, RUNS)
    return path


@pytest.fixture
def record(_filled: Path, tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    shutil.copy(_filled, path)
    return path


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return tmp_path / "backups"


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def step(record: Path, number: int) -> None:
    """Change the record a little."""
    change(record, "INSERT INTO plan VALUES (?, 'plan', ?)", number.to_bytes(32, "big"), str(number))


def mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


def test_a_backup_holds_every_fact_and_is_its_owners_alone(record: Path, folder: Path) -> None:
    made = back_up(record, folder, AT)
    assert made.made
    assert made.backup is not None
    assert made.backup.path.parent == folder
    assert (mode(folder), mode(made.backup.path)) == (0o700, 0o600)
    assert facts_in(made.backup.path) == {run.header.run_id: run.facts for run in RUNS}


def test_the_name_of_a_backup_says_when_in_utc_and_its_schema_and_nothing_else(
    record: Path, folder: Path
) -> None:
    back_up(record, folder, AT.astimezone())
    assert names(folder) == [f"2026-03-02T17-30-00Z-schema{SCHEMA_VERSION}.db"]


def test_nothing_else_is_left_in_the_folder(record: Path, folder: Path) -> None:
    for hour in range(3):
        step(record, hour)
        back_up(record, folder, AT + hour * HOUR)
    assert names(folder) == [f"2026-03-02T19-30-00Z-schema{SCHEMA_VERSION}.db"]


def test_what_has_a_backup_already_is_not_backed_up_again(record: Path, folder: Path) -> None:
    first = back_up(record, folder, AT).backup
    with open_database(record) as database:
        database.queries.run_summaries()
    again = back_up(record, folder, AT + 3 * DAY)
    assert (again.backup, again.made) == (first, False)
    assert len(names(folder)) == 1


def test_a_single_changed_value_makes_a_new_backup(record: Path, folder: Path) -> None:
    back_up(record, folder, AT)
    change(record, "UPDATE run_course SET session_rpe = 9 WHERE session_rpe IS NOT NULL")
    assert back_up(record, folder, AT + DAY).made


def test_a_run_more_makes_a_new_backup(record: Path, folder: Path) -> None:
    back_up(record, folder, AT)
    fill(record, invented_runs(40, seed=8))
    assert back_up(record, folder, AT + DAY).made


def test_another_library_that_counts_its_writes_otherwise_makes_no_new_backup(
    record: Path, folder: Path
) -> None:
    # https://www.sqlite.org/fileformat2.html, section 1.3: change counter, schema cookie, version-valid-for
    # number, and the version of the library that wrote last.
    first = back_up(record, folder, AT).backup
    assert first is not None
    content = bytearray(first.path.read_bytes())
    for start, end in ((24, 28), (40, 44), (92, 100)):
        content[start:end] = (7).to_bytes(end - start, "big")
    first.path.write_bytes(content)
    assert not back_up(record, folder, AT + DAY).made


def test_a_backup_that_rotted_is_not_taken_for_todays(record: Path, folder: Path) -> None:
    first = back_up(record, folder, AT).backup
    assert first is not None
    spoil(first.path, page_of(first.path, "fold"), seed=4)
    assert back_up(record, folder, AT + HOUR).made


def test_a_record_that_holds_nothing_has_no_backup(tmp_path: Path, folder: Path) -> None:
    path = tmp_path / "new.db"
    open_database(path).close()
    made = back_up(path, folder, AT)
    assert (made.backup, made.made, folder.exists()) == (None, False, False)


def test_two_backups_of_one_moment_have_two_names(record: Path, folder: Path) -> None:
    first = write_backup(record, folder, AT)
    second = write_backup(record, folder, AT)
    assert first.path != second.path
    assert [backup.path for backup in backups_in(folder)] == [second.path, first.path]


def test_other_files_in_the_folder_are_no_backups_and_stay(record: Path, folder: Path) -> None:
    folder.mkdir()
    others = ["notes.txt", "2026-03-01T00-00-00Z.db", "2026-99-01T00-00-00Z-schema1.db", "x-schema1.db"]
    for name in others:
        (folder / name).write_text("mine")
    back_up(record, folder, AT)
    assert len(backups_in(folder)) == 1
    assert set(others) < set(names(folder))


def test_a_failed_backup_takes_no_other_away(record: Path, folder: Path) -> None:
    kept = [write_backup(record, folder, AT - hour * HOUR) for hour in range(1, 4)]
    spoil(record, page_of(record, "bout_record"), seed=5)
    with pytest.raises(DamagedStoreError):
        back_up(record, folder, AT)
    assert names(folder) == sorted(backup.path.name for backup in kept)


def test_a_disk_that_fails_is_said_and_takes_no_backup_away(
    record: Path, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    write_backup(record, folder, AT - HOUR)
    before = names(folder)
    step(record, 1)

    def fail(_part: Path, _target: Path) -> None:
        raise OSError(5, "Input/output error")

    monkeypatch.setattr(backups, "put_in_place", fail)
    with pytest.raises(StoreError, match="Input/output error"):
        back_up(record, folder, AT)
    assert [name for name in names(folder) if not name.endswith(".part")] == before


def test_the_folder_cannot_be_a_file(record: Path, folder: Path) -> None:
    folder.write_text("mine")
    with pytest.raises(StoreError, match="No copy of the database could be written"):
        back_up(record, folder, AT)
    assert folder.read_text() == "mine"


def dated(folder: Path, moments: Iterable[datetime], schema: int = SCHEMA_VERSION) -> None:
    """Files named as backups of these moments, that all hold the same."""
    folder.mkdir(exist_ok=True)
    for moment in moments:
        (folder / f"{moment:%Y-%m-%dT%H-%M-%SZ}-schema{schema}.db").write_bytes(b"")


def kept_after_pruning(folder: Path, monkeypatch: pytest.MonkeyPatch) -> list[Backup]:
    monkeypatch.setattr(backups, "_runs_in", lambda _path: frozenset())
    prune(folder, AT)
    return list(backups_in(folder))


def test_a_year_of_days_leaves_seven_days_and_twelve_months(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    dated(folder, (AT - day * DAY for day in range(500)))
    left = [backup.at for backup in kept_after_pruning(folder, monkeypatch)]
    assert left[:7] == [AT - day * DAY for day in range(7)]
    assert sorted({(moment.year, moment.month) for moment in left}) == [
        *((2025, month) for month in range(4, 13)),
        *((2026, month) for month in range(1, 4)),
    ]
    assert len(left) == 7 + 10, "two of the twelve months end within the seven days"
    for moment in left[7:]:
        assert (moment + DAY).month != moment.month, "the newest of its month"


def test_of_a_day_the_newest_is_kept(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    dated(folder, (AT - hour * HOUR for hour in range(50)))
    left = [backup.at for backup in kept_after_pruning(folder, monkeypatch)]
    assert left == [AT, datetime(2026, 3, 1, 23, 30, tzinfo=UTC), datetime(2026, 2, 28, 23, 30, tzinfo=UTC)]


def test_the_newest_of_an_older_schema_is_kept(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    dated(folder, (AT - day * DAY for day in range(400)))
    dated(folder, (AT - (500 + day) * DAY for day in range(3)), schema=SCHEMA_VERSION - 1)
    left = [backup for backup in kept_after_pruning(folder, monkeypatch) if backup.schema < SCHEMA_VERSION]
    assert [backup.at for backup in left] == [AT - 500 * DAY]


@settings(max_examples=60)
@given(st.lists(st.integers(0, 20_000), max_size=60, unique=True))
def test_pruning_again_takes_nothing_more_and_never_the_newest(hours: list[int]) -> None:
    found = [Backup(Path(str(hour)), AT - hour * HOUR, 1) for hour in sorted(hours)]
    kept = backups._to_keep(found)
    in_order = [backup for backup in found if backup in kept]
    assert set(backups._to_keep(in_order)) == set(in_order)
    assert in_order[:1] == found[:1]
    assert len(in_order) <= 7 + 12 + 1


def test_a_backup_with_a_run_that_the_newest_lacks_is_never_taken_away(record: Path, folder: Path) -> None:
    fuller = write_backup(record, folder, AT)
    lost = RUNS[2].header.run_id
    for table in ("fold", "fact", "bout_record", "run_course"):
        change(record, f"DELETE FROM {table} WHERE run_id = ?", bytes.fromhex(lost.replace("-", "")))  # noqa: S608
    change(record, "DELETE FROM run WHERE id = ?", bytes.fromhex(lost.replace("-", "")))
    poorer = back_up(record, folder, AT + HOUR).backup
    assert [backup.path for backup in backups_in(folder)] == [poorer.path if poorer else None, fuller.path]
    later = back_up_after_a_change(record, folder, AT + 2 * HOUR)
    assert [backup.path for backup in backups_in(folder)] == [later, fuller.path]


def back_up_after_a_change(record: Path, folder: Path, at: datetime) -> Path:
    step(record, 7)
    made = back_up(record, folder, at).backup
    assert made is not None
    return made.path


def test_a_backup_that_cannot_be_read_is_left_alone(record: Path, folder: Path) -> None:
    write_backup(record, folder, AT)
    (folder / f"2026-03-02T10-00-00Z-schema{SCHEMA_VERSION}.db").write_bytes(b"not to be read")
    step(record, 1)
    back_up(record, folder, AT + HOUR)
    assert f"2026-03-02T10-00-00Z-schema{SCHEMA_VERSION}.db" in names(folder)


def test_what_a_killed_copy_left_is_swept_up_a_day_later(record: Path, folder: Path) -> None:
    folder.mkdir()
    for moment in (AT - 2 * DAY, AT - HOUR):
        part = folder / f"{moment:%Y-%m-%dT%H-%M-%SZ}-schema1.db.{random.Random(1).randrange(9999)}.part"
        part.touch()
        part.with_name(f"{part.name}-journal").touch()
    back_up(record, folder, AT)
    assert [name[:10] for name in names(folder) if ".part" in name] == ["2026-03-02"] * 2


def test_the_newest_sound_backup_is_found_behind_a_spoiled_one(record: Path, folder: Path) -> None:
    assert newest_sound(folder) is None
    sound = write_backup(record, folder, AT)
    spoiled = write_backup(record, folder, AT + HOUR)
    spoil(spoiled.path, page_of(spoiled.path, "run"), seed=6)
    spoil(write_backup(record, folder, AT + 2 * HOUR).path, 1)
    assert newest_sound(folder) == sound
