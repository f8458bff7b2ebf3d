"""Tables as CSV files by RFC 4180: a first line of names, CRLF, UTF-8, quotes doubled."""

import csv
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import TextIO

from app.domain.errors import FileProblemsError, Problem
from app.domain.table import Column, Table
from app.domain.values import Row
from app.reports.cells import cell_of, value_of

LARGEST_CELL = 1 << 22


def write_csv(file: TextIO, table: Table, rows: Iterable[Row]) -> int:
    """Write a table into a text file opened without translation of line ends; gives how many rows it has."""
    writer = csv.writer(file, lineterminator="\r\n")
    writer.writerow(table.column_names)
    count = 0
    for row in rows:
        writer.writerow([cell_of(column, row[column.name]) for column in table.columns])
        count += 1
    return count


def read_csv(path: Path, table: Table) -> Iterator[tuple[int, Row]]:
    """The rows of a file that `write_csv` wrote, each with its line. Columns may stand in any order.

    Raises FileProblemsError at the first thing wrong.
    """
    before = csv.field_size_limit(LARGEST_CELL)
    try:
        with path.open(encoding="utf-8-sig", newline="") as file:
            yield from _rows(path, table, file)
    except OSError as error:
        raise _wrong(path, 0, 0, f"the file cannot be read ({error.strerror})") from error
    except UnicodeDecodeError as error:
        raise _wrong(path, 0, 0, "the file is not UTF-8 text; save it as UTF-8") from error
    finally:
        csv.field_size_limit(before)


def _rows(path: Path, table: Table, file: TextIO) -> Iterator[tuple[int, Row]]:
    reader = csv.reader(file, strict=True)
    line = 1
    try:
        columns = _columns(path, table, next(reader, []))
        for cells in reader:
            line, start = reader.line_num, line + 1
            yield start, _row(path, start, columns, cells)
    except csv.Error as error:
        message = "this row cannot be read; close each quote, and write a quote in text twice"
        raise _wrong(path, line + 1, 1, message) from error


def _columns(path: Path, table: Table, names: list[str]) -> list[Column]:
    known = {column.name: column for column in table.columns}
    for place, name in enumerate(names, start=1):
        if name not in known or name in names[: place - 1]:
            message = (
                "no column of such a name belongs here" if name not in known else "this column is here twice"
            )
            raise _wrong(path, 1, place, message)
    missing = [name for name in known if name not in names]
    if missing:
        raise _wrong(path, 1, 1, f"the column {missing[0]} is missing")
    return [known[name] for name in names]


def _row(path: Path, line: int, columns: list[Column], cells: list[str]) -> Row:
    if len(cells) != len(columns):
        raise _wrong(path, line, 1, f"the row has {len(cells)} cells, there are {len(columns)} columns")
    row: Row = {}
    for place, (column, cell) in enumerate(zip(columns, cells, strict=True), start=1):
        try:
            row[column.name] = value_of(column, cell)
        except ValueError as error:
            raise _wrong(path, line, place, f"{column.name} {error}") from error
    return row


def _wrong(path: Path, line: int, column: int, message: str) -> FileProblemsError:
    return FileProblemsError(str(path), (Problem(line, column, message),))
