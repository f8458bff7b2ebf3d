"""Pages read one by one give what SQLite itself reads from the same file."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from itertools import islice
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.store.pages import TABLE_INNER, PagedFile, Record, walk
from tests.filled import PAGE, fill, invented_runs, spoil

VALUES = st.one_of(
    st.none(),
    st.integers(-(2**63), 2**63 - 1),
    st.floats(allow_nan=False),
    st.text(max_size=40),
    st.binary(max_size=40),
    st.integers(0, 30_000).map(lambda length: b"\x07" * length),
    st.integers(0, 30_000).map(lambda length: "é" * length),
)


def records(file: PagedFile, root: int) -> Iterator[Record]:
    for _, page in walk(file, root):
        assert page.bad == 0
        yield from page.records


def roots(raw: sqlite3.Connection) -> dict[str, int]:
    return dict(raw.execute("SELECT name, rootpage FROM sqlite_schema").fetchall())


@pytest.fixture
def record(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    fill(path, invented_runs(30))
    return path


@settings(max_examples=60)
@given(
    rows=st.lists(st.tuples(VALUES, VALUES, VALUES), max_size=40),
    rowids=st.lists(st.integers(-(2**63), 2**63 - 1), min_size=40, max_size=40, unique=True),
    size=st.sampled_from((512, 1024, 4096, 65536)),
)
def test_any_rows_of_any_size_are_read_as_sqlite_reads_them(
    rows: list[tuple[Any, Any, Any]], rowids: list[int], size: int
) -> None:
    with TemporaryDirectory() as folder:
        path = Path(folder) / "any.db"
        with closing(sqlite3.connect(path)) as raw:
            raw.execute(f"PRAGMA page_size = {size}")
            raw.execute("CREATE TABLE plain (a, b, c)")
            raw.execute("CREATE TABLE keyed (number INTEGER, a, b, c, PRIMARY KEY (number)) WITHOUT ROWID")
            for rowid, row in zip(rowids, rows, strict=False):
                raw.execute("INSERT INTO plain (rowid, a, b, c) VALUES (?, ?, ?, ?)", (rowid, *row))
                raw.execute("INSERT INTO keyed VALUES (?, ?, ?, ?)", (rowid, *row))
            raw.commit()
            found = roots(raw)
            expected = sorted(raw.execute("SELECT rowid, * FROM plain").fetchall())
        file = PagedFile(path)
        plain = sorted((record.rowid, *record.values) for record in records(file, found["plain"]))
        keyed = sorted(record.values for record in records(file, found["keyed"]))
        assert repr(plain) == repr(keyed) == repr(expected)


@pytest.mark.parametrize("without", ["", " WITHOUT ROWID"])
def test_a_row_of_every_length_is_read_whether_it_overflows_or_not(tmp_path: Path, without: str) -> None:
    path = tmp_path / "lengths.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("PRAGMA page_size = 512")
        raw.execute(f"CREATE TABLE plain (a TEXT PRIMARY KEY){without}")
        raw.executemany("INSERT INTO plain VALUES (?)", [("x" * length,) for length in range(1_600)])
        raw.commit()
        root = roots(raw)["plain"]
    found = [one.values for one in records(PagedFile(path), root)]
    assert sorted(found, key=lambda row: len(str(row[0]))) == [("x" * length,) for length in range(1_600)]


def test_pages_that_lead_in_a_circle_are_walked_once(tmp_path: Path) -> None:
    path = tmp_path / "circle.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE plain (a)")
        raw.commit()
    inner = bytes((TABLE_INNER, 0, 0, 0, 0, 0, 0, 0)) + (2).to_bytes(4, "big")
    content = path.read_bytes()
    path.write_bytes(content[:PAGE] + inner.ljust(PAGE, b"\0"))
    assert [number for number, _ in islice(walk(PagedFile(path), 2), 9)] == [2]


@pytest.mark.parametrize("table", ["athlete", "plan", "run", "fact", "fold", "bout_record"])
def test_every_table_of_a_record_is_read_as_sqlite_reads_it(record: Path, table: str) -> None:
    with closing(sqlite3.connect(record)) as raw:
        expected = raw.execute(f"SELECT * FROM {table}").fetchall()  # noqa: S608
        root = roots(raw)[table]
    found = [one.values for one in records(PagedFile(record), root)]
    assert sorted(map(repr, found)) == sorted(map(repr, expected))


def test_the_header_says_the_marks(record: Path) -> None:
    with closing(sqlite3.connect(record)) as raw:
        marks = [
            raw.execute(f"PRAGMA {name}").fetchone()[0]
            for name in ("application_id", "user_version", "page_count")
        ]
    file = PagedFile(record)
    assert [file.application_id, file.version, file.count] == marks
    assert file.has_header


def test_a_file_without_a_header_is_read_in_pages_of_the_usual_size(record: Path) -> None:
    whole = PagedFile(record)
    spoil(record, 1)
    file = PagedFile(record)
    assert (file.has_header, file.application_id, file.version) == (False, 0, 0)
    assert [file.page(number) for number in range(2, file.count + 1)] == [
        whole.page(number) for number in range(2, whole.count + 1)
    ]


@given(noise=st.binary(max_size=3 * PAGE))
def test_noise_is_read_without_an_error(noise: bytes) -> None:
    with TemporaryDirectory() as folder:
        path = Path(folder) / "noise"
        path.write_bytes(noise)
        file = PagedFile(path)
        for number in range(file.count + 2):
            file.page(number)


@given(st.data())
@settings(max_examples=100)
def test_a_page_with_wrong_bytes_is_read_without_an_error(data: st.DataObject) -> None:
    with TemporaryDirectory() as folder:
        path = Path(folder) / "one.db"
        with closing(sqlite3.connect(path)) as raw:
            raw.execute("PRAGMA page_size = 512")
            raw.execute("CREATE TABLE plain (a, b)")
            raw.executemany("INSERT INTO plain VALUES (?, ?)", [(n, "x" * (n * 40)) for n in range(20)])
            raw.commit()
        content = bytearray(path.read_bytes())
        for _ in range(data.draw(st.integers(1, 30))):
            content[data.draw(st.integers(0, len(content) - 1))] = data.draw(st.integers(0, 255))
        path.write_bytes(content)
        file = PagedFile(path)
        for number in range(1, file.count + 1):
            file.page(number)
            list(walk(file, number))


def test_a_bad_row_costs_that_row_alone(tmp_path: Path) -> None:
    path = tmp_path / "rows.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE plain (a)")
        raw.executemany("INSERT INTO plain VALUES (?)", [("row",), ("mark",), ("row",)])
        raw.commit()
    content = path.read_bytes()
    at = content.index(b"mark") - 1
    path.write_bytes(content[:at] + b"\xff" + content[at + 1 :])
    page = PagedFile(path).page(2)
    assert page is not None
    assert (sorted(one.values for one in page.records), page.bad) == ([("row",), ("row",)], 1)


def test_what_the_disk_does_not_give_back_counts_and_the_rest_is_read(
    record: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    whole = PagedFile(record)
    monkeypatch.setattr("app.store.pages.open_raw", lambda path: BadSector(path, 3 * PAGE))
    file = PagedFile(record)
    assert file.unread == PAGE
    assert file.page(4) is None
    assert file.page(5) == whole.page(5)
    assert file.count == whole.count


class BadSector:
    """A file of which one stretch cannot be read."""

    def __init__(self, path: Path, at: int) -> None:
        self._file = path.open("rb", buffering=0)
        self._at = at

    def __enter__(self) -> "BadSector":
        return self

    def __exit__(self, *_: object) -> None:
        self._file.close()

    def seek(self, to: int, whence: int = 0) -> int:
        return self._file.seek(to, whence)

    def read(self, length: int) -> bytes:
        if self._file.tell() == self._at:
            raise OSError(5, "Input/output error")
        return self._file.read(length)
