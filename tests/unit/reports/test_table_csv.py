"""Tables as CSV files: RFC 4180 to the letter, and every row read back."""

import io
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.errors import FileProblemsError
from app.domain.table import Column, Table
from app.domain.tables import TABLES
from app.domain.values import Row, Text, Whole
from app.reports.table_csv import read_csv, write_csv
from tests.table_rows import table_rows

TABLE = Table(
    "things", "", (Column("id", Whole(0, 9), ""), Column("note", Text(20), "", unknown=True)), ("id",)
)


def written(table: Table, rows: list[Row]) -> str:
    file = io.StringIO(newline="")
    assert write_csv(file, table, rows) == len(rows)
    return file.getvalue()


def test_a_file_is_as_the_standard_has_it() -> None:
    rows: list[Row] = [
        {"id": 1, "note": 'said "ow", twice'},
        {"id": 2, "note": "two\r\nlines"},
        {"id": 3, "note": None},
    ]
    assert written(TABLE, rows) == 'id,note\r\n1,"said ""ow"", twice"\r\n2,"two\r\nlines"\r\n3,\r\n'


@settings(max_examples=15)
@given(data=st.data())
@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.name)
def test_every_row_of_every_table_is_read_back(table: Table, data: st.DataObject) -> None:
    rows = data.draw(st.lists(table_rows(table), max_size=4))
    with TemporaryDirectory() as folder:
        path = Path(folder) / "table.csv"
        with path.open("w", encoding="utf-8", newline="") as file:
            write_csv(file, table, rows)
        assert [row for _, row in read_csv(path, table)] == rows


def read(path: Path, content: bytes) -> list[tuple[int, Row]]:
    path.write_bytes(content)
    return list(read_csv(path, TABLE))


def test_columns_may_stand_in_another_order_with_a_byte_order_mark_and_plain_line_ends(
    tmp_path: Path,
) -> None:
    found = read(tmp_path / "a.csv", b'\xef\xbb\xbfnote,id\n"two\nlines",1\nx,2\n')
    assert found == [(2, {"note": "two\nlines", "id": 1}), (4, {"note": "x", "id": 2})]


@pytest.mark.parametrize(
    ("content", "problem"),
    [
        (b"", "1:1: the column id is missing"),
        (b"id\n1\n", "1:1: the column note is missing"),
        (b"id,note,id\n", "1:3: this column is here twice"),
        (b"id,note,other\n", "1:3: no column of such a name belongs here"),
        (b"id,note\n1,a\n2\n", "3:1: the row has 1 cells, there are 2 columns"),
        (b"id,note\n1,a\nx,b\n", "3:1: id must be a whole number from 0 to 9"),
        (b"id,note\n,a\n", "2:1: id must not be empty"),
        (b"id,note\n1," + b"a" * 30 + b"\n", "2:2: note must be text of at most 20 characters"),
        (b'id,note\n1,"a\n', "2:1: this row cannot be read"),
        (b"id,note\n1,\xff\n", "1:1: the file is not UTF-8 text"),
    ],
)
def test_what_cannot_be_read_is_said_with_its_place(tmp_path: Path, content: bytes, problem: str) -> None:
    path = tmp_path / "a.csv"
    with pytest.raises(FileProblemsError) as caught:
        read(path, content)
    assert str(caught.value).startswith(f"{path}:{problem}")


def test_a_file_that_is_not_there_is_said(tmp_path: Path) -> None:
    with pytest.raises(FileProblemsError, match="cannot be read"):
        list(read_csv(tmp_path / "missing.csv", TABLE))
