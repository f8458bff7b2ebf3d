"""The cells of a CSV file somebody wrote or a spreadsheet saved, each with its line and column."""

import csv
import io
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

MOST_COLUMNS = 100
_DELIMITERS = ",;\t"
_GUARDED = re.compile(r"'(?=[-=+@\t\r])")

Tell = Callable[[tuple[int, int], str], None]
"""Takes down a problem: its line and column, and what it is."""


@dataclass(frozen=True, slots=True)
class Cell:
    """One cell: its text without blanks around it, and its line and column."""

    text: str
    place: tuple[int, int]


def records(text: str, tell: Tell) -> Iterator[list[Cell]]:
    """The cells of every row, the first line included, as far as quotes match.

    Comma, semicolon and tab part cells, whichever the first line has most of; with semicolons a comma in a
    number is its decimal point.
    """
    lines = text.split("\n")
    delimiter = max(_DELIMITERS, key=lines[0].count)
    reader = csv.reader(io.StringIO(text), delimiter=delimiter, strict=True)
    start = 0
    try:
        for values in reader:
            yield _cells(values, lines[start], start + 1, delimiter)
            start = reader.line_num
    except csv.Error:
        message = "this row cannot be read; close each quote, and write a quote in text twice"
        tell((start + 1, 1), message)


def _cells(values: list[str], line: str, number: int, delimiter: str) -> list[Cell]:
    mark = re.escape(delimiter)
    starts = [
        match.start() for match in re.finditer(rf'(?:(?<={mark})|^)(?:"(?:[^"]|"")*"?|[^{mark}"])*', line)
    ]
    comma = delimiter == ";"
    cells = []
    for index, value in enumerate(values[:MOST_COLUMNS]):
        text = _GUARDED.sub("", value.strip(), count=1) if value.strip().startswith("'") else value.strip()
        if comma:
            text = re.sub(r"\A(-?[0-9]+),([0-9]+)\Z", r"\1.\2", text)
        column = starts[index] + 1 if index < len(starts) else len(line) + 1
        cells.append(Cell(text, (number, column)))
    return cells
