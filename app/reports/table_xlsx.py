"""Tables as one spreadsheet, a sheet each, the data dictionary first. Needs the extra `export`."""

from collections.abc import Iterable
from pathlib import Path
from typing import Any

from app.domain.errors import MissingExtraError, PacewrightError
from app.domain.table import Column, Table
from app.domain.values import Decimals, Load, Plain, Row

MOST_ROWS = 1_048_575
"""Of a sheet, beside its heading. Source: Microsoft, Excel specifications and limits."""
LONGEST_CELL = 32_767
CUT = " ... (cut)"
DICTIONARY = "dictionary"
LONGEST_WIDTH = 40


def write_xlsx(path: Path, tables: Iterable[tuple[Table, Iterable[Row]]]) -> dict[str, int]:
    """Write tables into one file; gives how many rows each has. Texts stay texts, whatever they begin with.

    Texts longer than a cell are cut and say so. Raises MissingExtraError without the library, PacewrightError
    for a table longer than a sheet.
    """
    try:
        import xlsxwriter
    except ImportError as error:
        raise MissingExtraError("A spreadsheet", "export") from error
    options = {"strings_to_formulas": False, "strings_to_numbers": False, "strings_to_urls": False}
    counts: dict[str, int] = {}
    with xlsxwriter.Workbook(str(path), {**options, "constant_memory": True}) as book:
        bold = book.add_format({"bold": True})
        told = tuple(tables)
        _write_dictionary(book.add_worksheet(DICTIONARY), bold, [table for table, _ in told])
        for table, rows in told:
            counts[table.name] = _write_sheet(book.add_worksheet(table.name), bold, table, rows)
    return counts


def _write_dictionary(sheet: Any, bold: Any, tables: Iterable[Table]) -> None:  # noqa: ANN401 - no types
    _write_heading(sheet, bold, ("table", "column", "about"))
    line = 1
    for table in tables:
        for name, about in (("", table.about), *((column.name, column.about) for column in table.columns)):
            for place, text in enumerate((table.name, name, about)):
                sheet.write_string(line, place, text)
            line += 1


def _write_sheet(sheet: Any, bold: Any, table: Table, rows: Iterable[Row]) -> int:  # noqa: ANN401 - no types
    _write_heading(sheet, bold, table.column_names)
    count = 0
    for row in rows:
        count += 1
        if count > MOST_ROWS:
            raise PacewrightError(
                f"{table.name} has more than {MOST_ROWS} rows, and a sheet takes no more. Narrow it with "
                "--athlete, --from and --until, or write it as CSV."
            )
        for place, column in enumerate(table.columns):
            _write(sheet, count, place, column, row[column.name])
    sheet.autofilter(0, 0, max(count, 1), len(table.columns) - 1)
    return count


def _write_heading(sheet: Any, bold: Any, names: tuple[str, ...]) -> None:  # noqa: ANN401 - no types
    sheet.freeze_panes(1, 0)
    for place, name in enumerate(names):
        sheet.set_column(place, place, min(max(len(name) + 4, 10), LONGEST_WIDTH))
        sheet.write_string(0, place, name, bold)


def _write(sheet: Any, line: int, place: int, column: Column, value: Plain) -> None:  # noqa: ANN401 - no types
    if value is None:
        return
    if isinstance(value, bool):
        sheet.write_boolean(line, place, value)
    elif isinstance(value, int | float) or isinstance(column.kind, Decimals | Load):
        sheet.write_number(line, place, float(value))
    else:
        sheet.write_string(line, place, _fitting(value))


def _fitting(text: str) -> str:
    return text if len(text) <= LONGEST_CELL else text[: LONGEST_CELL - len(CUT)] + CUT
