"""Tables as a folder of files with a data dictionary, and such a folder read back."""

import json
import os
from collections.abc import Iterable, Iterator
from pathlib import Path

from app.domain.errors import FileProblemsError, PackError, Problem
from app.domain.table import Table
from app.domain.values import Row
from app.reports.data_package import FILE_NAME, FORMAT, OWN, data_package, descriptor_text
from app.reports.table_csv import read_csv, write_csv
from app.reports.table_parquet import write_parquet
from app.reports.table_xlsx import write_xlsx

FORMATS = ("csv", "xlsx", "parquet")
SPREADSHEET = "record.xlsx"
LARGEST_DICTIONARY = 1 << 20

Told = tuple[Table, Iterable[Row], bool]
"""A table, its rows, and whether they are drawn from the others."""


def write_folder(folder: Path, kind: str, tables: Iterable[Told], made_at: str) -> dict[str, int]:
    """Write tables into a folder in one of `FORMATS`, files its owner's alone; gives how many rows each has.

    Only files of the same names are written over. Raises PackError when they cannot be written,
    MissingExtraError where a library is missing.
    """
    told = tuple(tables)
    try:
        if not folder.exists():
            folder.mkdir(mode=0o700, parents=True)
        if kind == "xlsx":
            path = _private(folder / SPREADSHEET)
            return write_xlsx(path, [(table, rows) for table, rows, _ in told])
        counts = {
            table.name: _write(_private(folder / _file(table, kind)), table, rows) for table, rows, _ in told
        }
        named = [(table, _file(table, kind), drawn) for table, _, drawn in told]
        dictionary = descriptor_text(data_package(made_at, named))
        _private(folder / FILE_NAME).write_text(dictionary, encoding="utf-8")
    except OSError as error:
        raise PackError(
            f"Nothing whole could be written in {folder} ({error.strerror}). See whether it may be written "
            "and has room."
        ) from error
    return counts


def read_folder(folder: Path, tables: Iterable[Table]) -> Iterator[tuple[Table, Path, int, Row]]:
    """The rows of these tables in a folder that `write_folder` wrote as CSV, each with its file and line.

    Raises PackError when it is no such folder, FileProblemsError at the first thing wrong in a file.
    """
    there = _files(folder)
    for table in tables:
        if table.name not in there:
            raise PackError(f"{folder} has no table {table.name}. Export it again, as CSV.")
        path = folder / there[table.name]
        for line, row in read_csv(path, table):
            yield table, path, line, row


def wrong_row(path: Path, line: int, error: ValueError) -> FileProblemsError:
    """What is wrong with a row, said with its place."""
    return FileProblemsError(str(path), (Problem(line, 1, str(error)),))


def _write(path: Path, table: Table, rows: Iterable[Row]) -> int:
    if path.suffix == ".parquet":
        return write_parquet(path, table, rows)
    with path.open("w", encoding="utf-8", newline="") as file:
        return write_csv(file, table, rows)


def _file(table: Table, kind: str) -> str:
    return f"{table.name}.{kind}"


def _private(path: Path) -> Path:
    """A new, empty file that is its owner's alone, in the place of any that was there."""
    path.unlink(missing_ok=True)
    os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
    return path


def _files(folder: Path) -> dict[str, str]:
    """The names of the files in a folder by their tables."""
    told = f"{folder} is no folder of tables that this program wrote: it has no {FILE_NAME} that says so."
    try:
        with (folder / FILE_NAME).open(encoding="utf-8") as file:
            said = json.loads(file.read(LARGEST_DICTIONARY))
        version = said[OWN]["format"]
        files = {resource["name"]: resource["path"] for resource in said["resources"]}
    except (OSError, ValueError, KeyError, TypeError, RecursionError) as error:
        raise PackError(told) from error
    if version != FORMAT:
        raise PackError(f"{folder} was written by a newer version of Pacewright. Install the newer version.")
    if any(path != f"{name}.csv" for name, path in files.items()):
        raise PackError(f"{folder} is not written as CSV, and only CSV is read back.")
    return files
