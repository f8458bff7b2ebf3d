"""What is on pages that are whole is found, whatever became of the others."""

import shutil
import sqlite3
from collections import Counter
from contextlib import closing
from pathlib import Path

import pytest

from app.store.agreement import agrees
from app.store.looking import looking_at
from app.store.pages import PagedFile, walk
from app.store.salvage import Salvaged, Shape, salvage, shapes_of
from tests.filled import change, fill, invented_runs, page_of, spoil

RUNS = invented_runs(60)
TABLES = ("athlete", "plan", "prescription", "prescribed_bout", "run", "fact", "fold", "bout_record")
Rows = dict[str, Counter[tuple[object, ...]]]


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("filled") / "record.db"
    fill(path, RUNS)
    return path


@pytest.fixture
def record(whole: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(whole, tmp_path / "record.db"))


@pytest.fixture(scope="module")
def shapes(whole: Path) -> list[Shape]:
    with looking_at(whole) as connection:
        return shapes_of(connection)


def truth(path: Path) -> Rows:
    with closing(sqlite3.connect(path)) as raw:
        return {table: Counter(raw.execute(f"SELECT * FROM {table}").fetchall()) for table in TABLES}  # noqa: S608


def found(salvaged: Salvaged) -> Rows:
    return {table: Counter(tuple(row.values()) for row in salvaged.rows[table]) for table in TABLES}


def lost(path: Path, shapes: list[Shape], expected: Rows) -> int:
    """How many rows are not found; every row that is found must have been there."""
    seen = found(salvage(PagedFile(path), shapes))
    for table in TABLES:
        assert set(seen[table]) <= set(expected[table])
    return sum(len(set(expected[table]) - set(seen[table])) for table in TABLES)


def test_all_of_a_whole_file_is_found_once(whole: Path, shapes: list[Shape]) -> None:
    salvaged = salvage(PagedFile(whole), shapes)
    assert found(salvaged) == truth(whole)
    assert (salvaged.bad_cells, salvaged.unplaced, salvaged.unread) == (0, 0, 0)


@pytest.mark.parametrize("seed", [None, 5])
def test_a_lost_page_costs_the_rows_on_it_and_no_others(
    whole: Path, record: Path, shapes: list[Shape], seed: int | None
) -> None:
    expected, pages = truth(whole), PagedFile(whole)
    for number in range(1, pages.count + 1):
        spoil(record, number, seed=seed)
        page = pages.page(number)
        assert lost(record, shapes, expected) <= (0 if page is None else len(page.records))
        shutil.copy(whole, record)


def test_the_rows_below_a_lost_root_are_found(whole: Path, record: Path, shapes: list[Shape]) -> None:
    expected = truth(whole)
    for table in ("fold", "run", "bout_record"):
        spoil(record, page_of(whole, table))
    kept_on_roots = sum(
        len(page.records)
        for table in ("fold", "bout_record")
        if (page := PagedFile(whole).page(page_of(whole, table))) is not None
    )
    assert lost(record, shapes, expected) == kept_on_roots


def test_all_rows_are_found_though_the_schema_is_lost(whole: Path, record: Path, shapes: list[Shape]) -> None:
    spoil(record, 1)
    assert lost(record, shapes, truth(whole)) == 0


def test_rows_that_may_be_of_two_tables_are_counted_and_left_out(tmp_path: Path) -> None:
    path = tmp_path / "twins.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE one (a TEXT NOT NULL)")
        raw.execute("CREATE TABLE two (a TEXT NOT NULL)")
        raw.execute("INSERT INTO one VALUES ('?')")
        raw.commit()
        both = shapes_of(raw)
    assert salvage(PagedFile(path), both).unplaced == 0
    spoil(path, 1)
    salvaged = salvage(PagedFile(path), both)
    assert (salvaged.unplaced, dict(salvaged.rows)) == (1, {})


def test_what_is_left_of_the_schema_tells_tables_apart(tmp_path: Path) -> None:
    path = tmp_path / "twins.db"
    with closing(sqlite3.connect(path)) as raw:
        for number in range(200):
            raw.execute(f"CREATE TABLE twin_{number} (a TEXT NOT NULL)")
            raw.execute(f"INSERT INTO twin_{number} VALUES ('{number}')")  # noqa: S608
        raw.commit()
        alike = shapes_of(raw)
    spoil(path, 1)
    salvaged = salvage(PagedFile(path), alike)
    assert dict(salvaged.rows) == {f"twin_{number}": [{"a": str(number)}] for number in range(200)}


def test_a_row_that_agrees_with_one_of_two_tables_is_of_that_one(tmp_path: Path) -> None:
    path = tmp_path / "twins.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE one (a TEXT NOT NULL)")
        raw.execute("CREATE TABLE two (a TEXT NOT NULL)")
        raw.execute("INSERT INTO two VALUES ('?')")
        raw.commit()
        both = shapes_of(raw)
    spoil(path, 1)
    for says in (lambda table, _row: table == "two" or None, lambda table, _row: table == "two"):
        salvaged = salvage(PagedFile(path), both, says)
        assert (salvaged.unplaced, dict(salvaged.rows)) == (0, {"two": [{"a": "?"}]})
    assert salvage(PagedFile(path), both, lambda table, _row: None if table == "two" else False).rows["two"]


def test_a_mark_of_somebody_erased_is_not_taken_for_a_page_of_an_index(record: Path) -> None:
    moment = 1_767_000_000_000_000
    change(record, "INSERT INTO erased VALUES (?, ?)", b"\7" * 32, moment)
    with looking_at(record) as connection:
        of_it = shapes_of(connection)
    for number in _schema_pages(record):
        spoil(record, number)
    salvaged = salvage(PagedFile(record), of_it, agrees)
    assert salvaged.rows["erased"] == [{"hash": b"\7" * 32, "at": moment}]
    assert found(salvaged) == truth(record.with_name("whole.db"))
    assert salvaged.unplaced == 0


def _schema_pages(record: Path) -> list[int]:
    """All pages of the schema of a record, which is copied first."""
    shutil.copyfile(record, record.with_name("whole.db"))
    return [number for number, _ in walk(PagedFile(record), 1)]


def test_the_pages_of_an_index_are_not_taken_for_rows(tmp_path: Path) -> None:
    path = tmp_path / "indexed.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE keyed (a TEXT NOT NULL, b INTEGER NOT NULL, PRIMARY KEY (a)) WITHOUT ROWID")
        raw.execute("CREATE TABLE other (c TEXT NOT NULL)")
        raw.execute("CREATE INDEX by_c ON other (c)")
        raw.execute("INSERT INTO other VALUES ('x')")
        raw.commit()
        shapes = shapes_of(raw)
    spoil(path, 1)
    assert dict(salvage(PagedFile(path), shapes).rows) == {"other": [{"c": "x"}]}


def test_a_row_from_before_a_column_was_added_lacks_it(tmp_path: Path) -> None:
    path = tmp_path / "added.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE plain (a TEXT NOT NULL)")
        raw.execute("INSERT INTO plain VALUES ('old')")
        raw.execute("ALTER TABLE plain ADD COLUMN b INTEGER NOT NULL DEFAULT 7")
        raw.commit()
        shapes = shapes_of(raw)
    assert dict(salvage(PagedFile(path), shapes).rows) == {"plain": [{"a": "old"}]}


def test_a_column_that_names_the_rowid_has_its_number(tmp_path: Path) -> None:
    path = tmp_path / "numbered.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE plain (number INTEGER PRIMARY KEY, a TEXT)")
        raw.execute("INSERT INTO plain VALUES (42, 'x')")
        raw.commit()
        shapes = shapes_of(raw)
    assert dict(salvage(PagedFile(path), shapes).rows) == {"plain": [{"number": 42, "a": "x"}]}
