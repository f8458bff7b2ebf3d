"""The CSV form of a roster, turned into what the TOML form would have said, every cell keeping its place."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Any

from app.domain.errors import Problem
from app.planfile.csv_cells import Cell, records
from app.planfile.positions import Place
from app.planfile.report import MOST_PROBLEMS
from app.planfile.shown import choices, shown, suggestion

COLUMNS = (
    "name",
    "first",
    "exercise",
    "side",
    "load_kg",
    "reps",
    "notes",
    "short",
    "team",
    "sits_out",
    "variant",
)
OF_EXERCISE = ("side", "load_kg", "reps", "sits_out", "variant")
"""The columns that say something of the exercise in the same row."""
MOST_ROWS = 20_000
SIDES = ("left", "right", "both")

_RANGE = re.compile(r"\s*([0-9]+)\s*[-–]\s*([0-9]+)\s*\Z")
_WHOLE = re.compile(r"\s*-?[0-9]{1,9}\s*\Z")
_DECIMAL = re.compile(r"\s*-?[0-9]{1,9}\.[0-9]{1,9}\s*\Z")


@dataclass(slots=True)
class Sheet:
    """A CSV text as the TOML form says it: values (None without any), their places, what is wrong already."""

    document: dict[str, Any] | None = None
    places: dict[Place, tuple[int, int]] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)

    def tell(self, place: tuple[int, int], message: str) -> None:
        """Take down one problem, as long as there are not too many."""
        if len(self.problems) < MOST_PROBLEMS:
            self.problems.append(Problem(*place, message))

    def of_key(self, path: Place) -> tuple[int, int]:
        """Where the row or cell at the end of a path stands, or the nearest thing around it."""
        for length in range(len(path), 0, -1):
            if path[:length] in self.places:
                return self.places[path[:length]]
        return 1, 1

    def of_value(self, path: Place) -> tuple[int, int]:
        """The same: in a table of cells the value is its own key."""
        return self.of_key(path)


Row = dict[str, Cell]


def parse_csv(text: str) -> Sheet:
    """Turn a CSV text whose lines end with a line feed into a sheet."""
    sheet = Sheet()
    athletes: list[dict[str, Any]] = []
    by_name: dict[str, int] = {}
    for number, row in enumerate(_rows(text, sheet), start=1):
        name = row["name"]
        if number > MOST_ROWS:
            sheet.tell(name.place, f"there are more than {MOST_ROWS} rows; check that it is the right file")
            break
        if not name.text:
            sheet.tell(name.place, "the row has no name; write whose it is")
            continue
        if name.text not in by_name:
            by_name[name.text] = len(athletes)
            athletes.append({"name": name.text})
            sheet.places["athlete", by_name[name.text]] = name.place
        _merge(athletes[by_name[name.text]], ("athlete", by_name[name.text]), row, sheet)
    if athletes:
        sheet.document = {"format": 1, "athlete": athletes}
    elif not sheet.problems:
        sheet.tell((1, 1), "there is nobody in the sheet; write a row for each athlete")
    return sheet


def _rows(text: str, sheet: Sheet) -> Iterator[Row]:
    """The rows below the first line, by column; what is wrong with the form of the file is taken down."""
    read = records(text, sheet.tell)
    columns = _columns(next(read, []), sheet)
    if columns:
        yield from (_row(columns, cells, sheet) for cells in read if any(cell.text for cell in cells))


def _columns(cells: list[Cell], sheet: Sheet) -> list[str]:
    names = [cell.text.casefold() for cell in cells]
    for index, (name, cell) in enumerate(zip(names, cells, strict=True)):
        if name not in COLUMNS:
            near = suggestion(name, COLUMNS)
            right = f'did you mean "{near}"?' if near else f"known here are {', '.join(COLUMNS)}"
            sheet.tell(cell.place, f"unknown column {shown(cell.text)}; {right}")
        elif name in names[:index]:
            sheet.tell(cell.place, f"the column {name} stands here twice; keep one of them")
    if "name" not in names:
        message = (
            'the first line has no column "name"; begin with name,first,exercise,side,load_kg,reps,notes'
        )
        sheet.tell((1, 1), message)
        return []
    return names


def _row(columns: list[str], cells: list[Cell], sheet: Sheet) -> Row:
    if len(cells) > len(columns):
        message = f"the row has more than {len(columns)} cells; put text with commas in quotes"
        sheet.tell(cells[len(columns)].place, message)
    end = cells[-1].place
    row = {name: Cell("", end) for name in COLUMNS}
    row.update({name: cell for name, cell in zip(columns, cells, strict=False) if name in COLUMNS})
    return row


def _merge(athlete: dict[str, Any], place: Place, row: Row, sheet: Sheet) -> None:
    """Add what a row says to its athlete."""
    for key in ("first", "notes", "short", "team"):
        if row[key].text:
            _put(athlete, key, row[key].text, row[key], (*place, key), sheet)
    if row["exercise"].text:
        _merge_sits_out(athlete, place, row, sheet)
        if row["sits_out"].text and not any(row[key].text for key in OF_EXERCISE if key != "sits_out"):
            return
        exercises = athlete.setdefault("exercise", [])
        names = [exercise["name"] for exercise in exercises]
        if row["exercise"].text not in names:
            names.append(row["exercise"].text)
            exercises.append({"name": row["exercise"].text})
            sheet.places[(*place, "exercise", len(exercises) - 1)] = row["exercise"].place
        index = names.index(row["exercise"].text)
        _merge_exercise(exercises[index], (*place, "exercise", index), row, sheet)
    else:
        for key in OF_EXERCISE:
            if row[key].text:
                message = f"{key} without an exercise; name the exercise in the same row"
                sheet.tell(row[key].place, message)


def _merge_sits_out(athlete: dict[str, Any], place: Place, row: Row, sheet: Sheet) -> None:
    said = row["sits_out"].text.casefold()
    if said not in ("", "yes"):
        message = f"{shown(row['sits_out'].text)} is not known here; write yes, or leave the cell empty"
        sheet.tell(row["sits_out"].place, message)
    elif said:
        names = athlete.setdefault("sits_out", [])
        if row["exercise"].text not in names:
            names.append(row["exercise"].text)
            sheet.places[(*place, "sits_out", len(names) - 1)] = row["exercise"].place


def _merge_exercise(exercise: dict[str, Any], place: Place, row: Row, sheet: Sheet) -> None:
    if row["reps"].text:
        _put(exercise, "reps", _amount(row["reps"].text), row["reps"], (*place, "reps"), sheet)
    if row["variant"].text:
        said = row["variant"].text.casefold()
        _put(exercise, "variant", said, row["variant"], (*place, "variant"), sheet)
    side = row["side"].text.casefold()
    if side and side not in SIDES:
        message = f"{shown(row['side'].text)} is no side; write {choices(SIDES)}, or nothing for both"
        sheet.tell(row["side"].place, message)
    if row["load_kg"].text and side in ("left", "right"):
        loads = exercise.setdefault("load_kg", {})
        if isinstance(loads, dict):
            _put(loads, side, _amount(row["load_kg"].text), row["load_kg"], (*place, "load_kg", side), sheet)
        else:
            _twice("load_kg", row["load_kg"], sheet)
    elif row["load_kg"].text:
        _put(exercise, "load_kg", _amount(row["load_kg"].text), row["load_kg"], (*place, "load_kg"), sheet)


def _put(table: dict[str, Any], key: str, value: object, cell: Cell, place: Place, sheet: Sheet) -> None:
    if key in table and table[key] != value:
        _twice(key, cell, sheet)
    table.setdefault(key, value)
    sheet.places.setdefault(place, cell.place)


def _twice(key: str, cell: Cell, sheet: Sheet) -> None:
    message = f"another row says something else about {key}; keep one of them"
    sheet.tell(cell.place, message)


def _amount(text: str) -> object:
    """A cell as a number or a range; as text where it is neither, for the reader to refuse."""
    if match := _RANGE.match(text):
        return [int(bound[:9]) for bound in match.groups()]
    if _WHOLE.match(text):
        return int(text)
    return Decimal(text.strip()) if _DECIMAL.match(text) else text
