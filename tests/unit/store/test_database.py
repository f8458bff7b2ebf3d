"""Opening the record: private, durable, and plain about what is in the way."""

import sqlite3
import stat
from datetime import UTC, datetime
from pathlib import Path

import pytest
from sqlalchemy.exc import OperationalError

from app.domain.errors import NewerStoreError, StoreError
from app.domain.records import RunHeader
from app.store.database import open_database
from app.store.link import Link
from app.store.schema import SCHEMA_VERSION


@pytest.fixture
def record(tmp_path: Path) -> Path:
    """A database that is closed."""
    path = tmp_path / "record.db"
    open_database(path).close()
    return path


def mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


def setting(link: Link, name: str) -> object:
    with link.reading() as connection:
        return connection.exec_driver_sql(f"PRAGMA {name}").scalar()


def raw(path: Path, *statements: str) -> None:
    connection = sqlite3.connect(path, isolation_level=None)
    for statement in statements:
        connection.execute(statement)
    connection.close()


def test_a_new_database_and_the_folder_made_for_it_are_their_owners_alone(tmp_path: Path) -> None:
    path = tmp_path / "data" / "record.db"
    open_database(path).close()
    assert (mode(path.parent), mode(path)) == (0o700, 0o600)


def test_a_folder_that_was_there_keeps_its_mode(tmp_path: Path) -> None:
    shared = tmp_path / "shared"
    shared.mkdir(mode=0o755)
    shared.chmod(0o755)
    open_database(shared / "record.db").close()
    assert mode(shared) == 0o755


def test_a_database_that_others_may_read_is_made_private(record: Path) -> None:
    record.chmod(0o644)
    open_database(record).close()
    assert mode(record) == 0o600


def test_a_database_opened_to_be_read_is_left_as_it_is(record: Path) -> None:
    record.chmod(0o644)
    before = record.read_bytes()
    with open_database(record, read_only=True) as database:
        assert database.queries.run_summaries() == ()
    assert (mode(record), record.read_bytes()) == (0o644, before)


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("journal_mode", "delete"),
        ("synchronous", 3),  # EXTRA
        ("foreign_keys", 1),
        ("secure_delete", 1),
        ("temp_store", 2),  # MEMORY
        ("fullfsync", 1),
        ("trusted_schema", 0),
    ],
)
def test_the_connection_is_set_to_lose_nothing(record: Path, name: str, value: object) -> None:
    with open_database(record) as database:
        assert setting(database._link, name) == value


def test_the_journal_of_another_make_is_put_back(record: Path) -> None:
    raw(record, "PRAGMA journal_mode = WAL")
    with open_database(record) as database:
        assert setting(database._link, "journal_mode") == "delete"


def test_opening_leaves_nothing_beside_the_file(record: Path) -> None:
    open_database(record).close()
    assert list(record.parent.iterdir()) == [record]


def test_closing_twice_is_closing_once(record: Path) -> None:
    database = open_database(record)
    database.close()
    database.close()


def test_a_path_with_characters_that_mean_something_elsewhere_is_a_path(tmp_path: Path) -> None:
    path = tmp_path / "50% of #1 & more?" / "é {x}.db"
    open_database(path).close()
    open_database(path).close()
    assert path.is_file()


def test_a_database_of_a_newer_version_is_refused_and_left_as_it_is(record: Path) -> None:
    raw(record, f"PRAGMA user_version = {SCHEMA_VERSION + 1}")
    before = record.read_bytes()
    for read_only in (False, True):
        with pytest.raises(NewerStoreError, match=r"newer version of Pacewright.*Install the newer"):
            open_database(record, read_only=read_only)
    assert record.read_bytes() == before


def test_a_file_that_is_no_database_is_refused_and_left_as_it_is(tmp_path: Path) -> None:
    path = tmp_path / "notes.txt"
    path.write_text("Step-down, three sets. " * 100)
    before = path.read_bytes()
    with pytest.raises(StoreError, match="is not a database of this program"):
        open_database(path)
    assert path.read_bytes() == before


def test_a_database_of_another_program_is_refused_and_left_as_it_is(tmp_path: Path) -> None:
    path = tmp_path / "stock.db"
    raw(path, "CREATE TABLE balls (size INTEGER)", "INSERT INTO balls VALUES (2)")
    before = path.read_bytes()
    with pytest.raises(StoreError, match="is not a database of this program"):
        open_database(path)
    assert path.read_bytes() == before


def test_an_empty_file_becomes_a_database(tmp_path: Path) -> None:
    path = tmp_path / "record.db"
    path.touch()
    with open_database(path) as database:
        assert database.queries.athletes() == ()


def test_a_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match=r"is a folder\. Name a file in it"):
        open_database(tmp_path)


def test_a_folder_that_is_a_file_is_refused(tmp_path: Path) -> None:
    (tmp_path / "file").touch()
    with pytest.raises(StoreError, match="cannot be opened"):
        open_database(tmp_path / "file" / "record.db")


def test_a_database_that_is_not_there_is_not_made_by_reading(tmp_path: Path) -> None:
    path = tmp_path / "data" / "record.db"
    with pytest.raises(StoreError, match="There is no database"):
        open_database(path, read_only=True)
    assert not path.parent.exists()


def test_an_empty_file_cannot_be_read_yet(tmp_path: Path) -> None:
    path = tmp_path / "record.db"
    path.touch()
    with pytest.raises(StoreError, match="brought up to date"):
        open_database(path, read_only=True)


def test_a_database_opened_to_be_read_cannot_be_written(record: Path) -> None:
    header = RunHeader(
        "0190163d-8694-739b-aea5-966c26f8ad91", "Ines", "Landing", "text", datetime.now(UTC), "UTC"
    )
    with open_database(record, read_only=True) as database, pytest.raises(StoreError, match="read-only"):
        database.journal.open_run(header, ())


def test_a_damaged_file_is_refused_and_not_to_be_deleted(record: Path) -> None:
    size = record.stat().st_size
    with record.open("r+b") as file:
        file.seek(100)  # the page of the schema, behind the header
        file.write(b"\xff" * 200)
    with pytest.raises(StoreError, match=r"is damaged\. Do not delete it"):
        open_database(record)
    assert record.stat().st_size == size


def test_a_file_cut_short_is_refused(record: Path) -> None:
    with record.open("r+b") as file:
        file.truncate(5_000)
    with pytest.raises(StoreError, match="is damaged"), open_database(record) as database:
        database.queries.run_summaries()


def test_facts_that_are_no_facts_are_damage(record: Path) -> None:
    raw(record, "INSERT INTO fact VALUES (x'0190163d8694739baea5966c26f8ad91', 0, x'01ff')")
    with open_database(record) as database, pytest.raises(StoreError, match="is damaged"):
        database.queries.facts_of("0190163d-8694-739b-aea5-966c26f8ad91")


def test_a_file_locked_by_another_is_refused_in_plain_words(record: Path) -> None:
    other = sqlite3.connect(record, isolation_level=None)
    other.execute("BEGIN EXCLUSIVE")
    for read_only in (False, True):
        with pytest.raises(StoreError, match="in use by another program"):
            open_database(record, read_only=read_only, wait_s=0)
    other.execute("ROLLBACK")
    other.close()
    open_database(record, wait_s=0).close()


def test_a_write_refused_by_a_lock_can_be_done_once_the_lock_is_gone(record: Path) -> None:
    other = sqlite3.connect(record, isolation_level=None)
    with open_database(record, wait_s=0) as database:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(StoreError, match="in use by another program"), database._link.writing():
            pass
        other.execute("ROLLBACK")
        with database._link.writing() as connection:
            connection.exec_driver_sql("INSERT INTO plan VALUES (x'00', 'title', 'text')")
    assert other.execute("SELECT count(*) FROM plan").fetchone() == (1,)
    other.close()


def test_a_full_disk_is_said_and_what_was_saved_stays(record: Path) -> None:
    with open_database(record) as database:
        pages = setting(database._link, "page_count")
        database._link.outside_transactions(f"PRAGMA max_page_count = {pages}")
        with pytest.raises(StoreError, match="is full"), database._link.writing() as connection:
            connection.exec_driver_sql("INSERT INTO plan VALUES (x'00', 'title', zeroblob(100000))")
        database._link.outside_transactions("PRAGMA max_page_count = 1000")
        with database._link.writing() as connection:
            connection.exec_driver_sql("INSERT INTO plan VALUES (x'00', 'title', 'text')")
        assert setting(database._link, "integrity_check") == "ok"


def test_a_file_deleted_while_open_is_said(record: Path) -> None:
    with open_database(record) as database:
        record.unlink()
        with pytest.raises(StoreError, match="moved or deleted"), database._link.writing() as connection:
            connection.exec_driver_sql("INSERT INTO plan VALUES (x'00', 'title', 'text')")


def test_a_write_that_fails_half_way_leaves_nothing(record: Path) -> None:
    def fail_at_the_second(link: Link) -> None:
        with link.writing() as connection:
            connection.exec_driver_sql("INSERT INTO plan VALUES (x'00', 'title', 'text')")
            connection.exec_driver_sql("INSERT INTO nothing VALUES (1)")

    with open_database(record) as database:
        with pytest.raises(OperationalError, match="nothing"):
            fail_at_the_second(database._link)
        with database._link.reading() as connection:
            assert connection.exec_driver_sql("SELECT count(*) FROM plan").scalar() == 0


def test_reading_takes_no_lock_that_keeps_others_from_writing(record: Path) -> None:
    other = sqlite3.connect(record, isolation_level=None, timeout=0)
    with open_database(record) as database, database._link.reading():
        other.execute("BEGIN IMMEDIATE")
        other.execute("ROLLBACK")
    other.close()
