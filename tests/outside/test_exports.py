"""An export as other programs see it.

The Table Schema and the data against it by `frictionless`, the reference implementation of the specification
(https://specs.frictionlessdata.io/); the CSV files by the standard library and by Arrow's reader, which is no
kin of it; the spreadsheet by openpyxl; the Parquet files by Arrow.
"""

import csv
import stat
from datetime import UTC, datetime
from pathlib import Path

import openpyxl
import pyarrow.csv
import pyarrow.parquet
import pytest
from frictionless import Package, system

from app.__main__ import main
from app.domain.tables import TABLES
from app.domain.values import Moment, Text, Words, moment_of
from app.reports.drawn import DRAWN
from app.reports.guard import FORMULA_SIGNS
from tests.laptops import RUNS, Laptop, beside, laptop, of_bout

EVERY = (*TABLES, *DRAWN)
NAUGHTY = '=HYPERLINK("x"), two\nlines'


@pytest.fixture(scope="module")
def one(tmp_path_factory: pytest.TempPathFactory) -> Laptop:
    """A record with one of everything, and a reason that a spreadsheet would run."""
    made = laptop(tmp_path_factory.mktemp("one"), "one", 1)
    made.lead(RUNS)
    made.keep(*beside(RUNS))
    made.correct(of_bout(RUNS[0]), "note", NAUGHTY, "Tomas")
    return made


@pytest.fixture(scope="module")
def folder(one: Laptop) -> Path:
    """The record exported as CSV."""
    to = one.path.with_name("csv")
    assert main(["export", "--to", str(to), "--database", str(one.path)]) == 0
    return to


def test_the_reference_implementation_finds_the_package_and_every_row_valid(folder: Path) -> None:
    with system.use_context(trusted=True):
        report = Package(str(folder / "datapackage.json")).validate()
    assert report.flatten(["type", "fieldName", "note"]) == []
    assert {task.name: task.stats.get("rows") for task in report.tasks}["runs"] == len(RUNS)
    assert len(report.tasks) == len(EVERY)


def test_the_reference_implementation_would_see_a_row_that_is_wrong(folder: Path, tmp_path: Path) -> None:
    for path in folder.iterdir():
        (tmp_path / path.name).write_bytes(path.read_bytes())
    path = tmp_path / "readiness.csv"
    path.write_bytes(path.read_bytes().replace(b",3,2,4,3,", b",3,2,4,9,"))
    with system.use_context(trusted=True):
        report = Package(str(tmp_path / "datapackage.json")).validate()
    assert [error[:2] for error in report.flatten(["type", "fieldName"])] == [
        ["constraint-error", "soreness"]
    ]


@pytest.mark.parametrize("table", EVERY, ids=lambda table: table.name)
def test_two_readers_read_the_same_and_no_text_begins_a_formula(folder: Path, table) -> None:  # type: ignore[no-untyped-def]  # noqa: ANN001
    path = folder / f"{table.name}.csv"
    with path.open(encoding="utf-8", newline="") as file:
        first, *rows = csv.reader(file, strict=True)
    assert tuple(first) == table.column_names
    content = path.read_bytes()
    assert content.endswith(b"\r\n")
    as_text = {name: pyarrow.string() for name in table.column_names}
    other = pyarrow.csv.read_csv(
        path,
        parse_options=pyarrow.csv.ParseOptions(newlines_in_values=True),
        convert_options=pyarrow.csv.ConvertOptions(column_types=as_text, strings_can_be_null=False),
    )
    assert [list(row.values()) for row in other.to_pylist()] == rows
    for column, *cells in zip(table.columns, *rows, strict=True):
        if isinstance(column.kind, Text | Words):
            assert not any(cell[:1] in FORMULA_SIGNS for cell in cells if cell)


def test_the_spreadsheet_and_the_parquet_files_say_what_the_csv_files_say(one: Laptop, folder: Path) -> None:
    for kind in ("xlsx", "parquet"):
        to = str(one.path.with_name(kind))
        assert main(["export", "--to", to, "--format", kind, "--database", str(one.path)]) == 0
    sheets = one.path.with_name("xlsx") / "record.xlsx"
    book = openpyxl.load_workbook(sheets, read_only=True)
    assert stat.S_IMODE(sheets.stat().st_mode) == 0o600
    for table in EVERY:
        path = one.path.with_name("parquet") / f"{table.name}.parquet"
        assert stat.S_IMODE(path.stat().st_mode) == 0o600
        columns = pyarrow.parquet.read_table(path).to_pylist()
        with (folder / f"{table.name}.csv").open(encoding="utf-8", newline="") as file:
            lines = list(csv.DictReader(file))
        assert len(columns) == len(lines) == book[table.name].max_row - 1
        for column in table.columns:
            if isinstance(column.kind, Moment):
                found = [row[column.name] for row in columns]
                assert found == [moment_of(line[column.name]) for line in lines]
                assert all(isinstance(at, datetime) and at.tzinfo is not None for at in found)
    began = pyarrow.parquet.read_table(one.path.with_name("parquet") / "runs.parquet")[
        "started_at"
    ].to_pylist()
    assert sorted(began) == sorted(run.header.started_at.astimezone(UTC) for run in RUNS)
    book.close()
