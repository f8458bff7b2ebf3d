"""Past training as a CSV file: date, session, minutes, RPE, and whose it is; every problem of it at once."""

import re
from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from pathlib import Path

from app.domain.errors import FileProblemsError, Problem
from app.domain.past import LONGEST_MINUTES, MS_A_MINUTE, PastSession
from app.planfile.csv_cells import Cell, records
from app.planfile.report import MOST_PROBLEMS
from app.planfile.shown import UNSEEN, shown, suggestion
from app.planfile.source import read_text

COLUMNS = ("date", "session", "minutes", "rpe", "athlete")
WANTED = ("date", "session")
MOST_ROWS = 20_000
LONGEST_TEXT = 500
EARLIEST = date(1950, 1, 1)

_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_MINUTES = re.compile(r"[0-9]{1,4}(\.[0-9]{1,3})?")
_WHOLE = re.compile(r"[0-9]{1,2}")
_Row = dict[str, Cell]


def read_past(path: Path, today: date, *, athlete: bool) -> tuple[PastSession, ...]:
    """The sessions in a file. `athlete` says that each row must say whose it is.

    Raises FileProblemsError with every problem of the file.
    """
    return parse_past(read_text(path), str(path), today, athlete=athlete)


def parse_past(text: str, file: str, today: date, *, athlete: bool) -> tuple[PastSession, ...]:
    """The sessions in a text whose lines end with a line feed. Raises FileProblemsError."""
    reader = _Reader(today)
    sessions = tuple(reader.sessions(text, wanted=(*WANTED, "athlete") if athlete else WANTED))
    if not sessions and not reader.problems:
        reader.tell((1, 1), "there is no session in the sheet; write a row for each")
    if reader.problems:
        raise FileProblemsError(file, tuple(sorted(reader.problems)))
    return sessions


class _Reader:
    """Reads rows and takes down what is wrong with them."""

    def __init__(self, today: date) -> None:
        self.problems: list[Problem] = []
        self._today = today

    def tell(self, place: tuple[int, int], message: str) -> None:
        """Take down one problem, as long as there are not too many."""
        if len(self.problems) < MOST_PROBLEMS:
            self.problems.append(Problem(*place, message))

    def sessions(self, text: str, wanted: tuple[str, ...]) -> Iterator[PastSession]:
        """The rows below the first line, as far as they can be read."""
        rows = records(text, self.tell)
        columns = self._columns(next(rows, []), wanted)
        if not columns:
            return
        for number, cells in enumerate(rows, start=1):
            if number > MOST_ROWS:
                self.tell(
                    cells[0].place, f"there are more than {MOST_ROWS} rows; check that it is the right file"
                )
                return
            if any(cell.text for cell in cells):
                session = self._session(self._row(columns, cells), wanted)
                if session is not None:
                    yield session

    def _columns(self, cells: list[Cell], wanted: tuple[str, ...]) -> list[str]:
        names = [cell.text.casefold() for cell in cells]
        for index, (name, cell) in enumerate(zip(names, cells, strict=True)):
            if name not in COLUMNS:
                near = suggestion(name, COLUMNS)
                right = f'did you mean "{near}"?' if near else f"known here are {', '.join(COLUMNS)}"
                self.tell(cell.place, f"unknown column {shown(cell.text)}; {right}")
            elif name in names[:index]:
                self.tell(cell.place, f"the column {name} stands here twice; keep one of them")
        missing = [name for name in wanted if name not in names]
        if missing:
            hint = "; or name the athlete with --athlete" if "athlete" in missing else ""
            self.tell((1, 1), f"the first line has no column {' and no column '.join(missing)}{hint}")
        return [] if missing else names

    def _row(self, columns: list[str], cells: list[Cell]) -> _Row:
        if len(cells) > len(columns):
            message = f"the row has more than {len(columns)} cells; put text with commas in quotes"
            self.tell(cells[len(columns)].place, message)
        row = {name: Cell("", cells[-1].place) for name in COLUMNS}
        row.update({name: cell for name, cell in zip(columns, cells, strict=False) if name in COLUMNS})
        return row

    def _session(self, row: _Row, wanted: tuple[str, ...]) -> PastSession | None:
        before = len(self.problems)
        day = self._day(row["date"])
        title = self._text(row["session"], "session", wanted=True)
        ms, rpe = self._ms(row["minutes"]), self._rpe(row["rpe"])
        athlete = self._text(row["athlete"], "athlete", wanted="athlete" in wanted)
        if len(self.problems) > before or day is None:
            return None
        return PastSession(day, title, ms, rpe, athlete or None)

    def _day(self, cell: Cell) -> date | None:
        day = None
        if _DAY.fullmatch(cell.text):
            try:
                day = date.fromisoformat(cell.text)
            except ValueError:
                day = None
        if day is None:
            self.tell(cell.place, f"{shown(cell.text)} is no day; write it as 2026-03-02")
        elif not EARLIEST <= day <= self._today:
            self.tell(cell.place, f"{day} is not a day of the past; check the year")
        return day

    def _text(self, cell: Cell, name: str, *, wanted: bool) -> str:
        if wanted and not cell.text:
            self.tell(cell.place, f"the row has no {name}; write one")
        elif len(cell.text) > LONGEST_TEXT or UNSEEN.search(cell.text):
            self.tell(cell.place, f"write a {name} of at most {LONGEST_TEXT} characters that can all be seen")
        return cell.text

    def _ms(self, cell: Cell) -> int | None:
        if not cell.text:
            return None
        if _MINUTES.fullmatch(cell.text):
            ms = round(Decimal(cell.text) * MS_A_MINUTE)
            if 0 < ms <= LONGEST_MINUTES * MS_A_MINUTE:
                return ms
        self.tell(
            cell.place,
            f"{shown(cell.text)} are no minutes; write up to {LONGEST_MINUTES}, or nothing when unknown",
        )
        return None

    def _rpe(self, cell: Cell) -> int | None:
        if not cell.text:
            return None
        if _WHOLE.fullmatch(cell.text) and int(cell.text) <= 10:
            return int(cell.text)
        self.tell(
            cell.place,
            f"{shown(cell.text)} is no RPE; write a whole number from 0 to 10, or nothing when unknown",
        )
        return None
