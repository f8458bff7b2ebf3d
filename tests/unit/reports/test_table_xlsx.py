"""The spreadsheet: numbers as numbers, text as text, nothing taken for a formula or a link."""

from pathlib import Path

import openpyxl
import pytest

from app.domain.errors import PacewrightError
from app.domain.table import Column, Table
from app.domain.values import Decimals, Flag, Row, Text, Whole
from app.reports import table_xlsx
from app.reports.table_xlsx import CUT, LONGEST_CELL, write_xlsx

TABLE = Table(
    "things",
    "Some things.",
    (
        Column("id", Whole(), "A number."),
        Column("flag", Flag(), "A flag."),
        Column("cm", Decimals(), "A length.", unknown=True),
        Column("note", Text(), "A note.", unknown=True),
    ),
    ("id",),
)
LONG = "x" * (LONGEST_CELL + 1)
ROWS: list[Row] = [
    {"id": 1, "flag": True, "cm": "141.50", "note": "=1+1"},
    {"id": 2, "flag": False, "cm": None, "note": None},
    {"id": 3, "flag": False, "cm": "0", "note": "https://example.org"},
    {"id": 4, "flag": False, "cm": None, "note": LONG},
    {"id": 5, "flag": False, "cm": None, "note": "007"},
]


def test_what_another_program_reads_is_what_was_written(tmp_path: Path) -> None:
    path = tmp_path / "a.xlsx"
    assert write_xlsx(path, [(TABLE, ROWS)]) == {"things": 5}
    book = openpyxl.load_workbook(path)
    assert book.sheetnames == ["dictionary", "things"]
    cells = [[cell.value for cell in row] for row in book["things"].iter_rows()]
    assert cells == [
        ["id", "flag", "cm", "note"],
        [1, True, 141.5, "=1+1"],
        [2, False, None, None],
        [3, False, 0, "https://example.org"],
        [4, False, None, "x" * (LONGEST_CELL - len(CUT)) + CUT],
        [5, False, None, "007"],
    ]
    assert book["things"]["D2"].data_type == "s"
    assert book["things"]["D4"].hyperlink is None
    told = [[cell.value for cell in row] for row in book["dictionary"].iter_rows()]
    assert told[:3] == [
        ["table", "column", "about"],
        ["things", "", "Some things."],
        ["things", "id", "A number."],
    ]


def test_a_table_longer_than_a_sheet_is_refused_in_words(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(table_xlsx, "MOST_ROWS", 4)
    with pytest.raises(PacewrightError, match=r"things has more than 4 rows.*or write it as CSV"):
        write_xlsx(tmp_path / "a.xlsx", [(TABLE, ROWS)])
