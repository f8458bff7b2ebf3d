"""The tries of everybody at tests, read at once and as corrected: for a test's error, and for the squad."""

from collections.abc import Iterable, Mapping
from datetime import date, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import Connection

from app.domain.correctable import Subject
from app.domain.corrected import corrected
from app.domain.corrections import Target, history
from app.domain.keeping import Result
from app.domain.plan import Side
from app.domain.tried import Tried
from app.store.correction_rows import corrections_about
from app.store.review_rows import local, marks, span, text_of, utc, zone_of

LATEST = 400
"""So many of the latest first and second tries of a test tell its error."""
APART = timedelta(days=14)
"""A side that was tested longer before the other one is not compared with it in the squad."""
_COLUMNS = "id, athlete_id, test, value, unit, at, zone, side, attempt, device_id, note"
_FIRST_TWO = f"""
    SELECT {_COLUMNS} FROM (
        SELECT result.*, row_number() OVER (PARTITION BY test ORDER BY at DESC, attempt DESC) AS place
        FROM athlete CROSS JOIN result ON result.athlete_id = athlete.id
        WHERE at BETWEEN ? AND ? AND attempt <= 2 {{which}}
    ) WHERE place <= {LATEST} ORDER BY at, attempt, id
"""  # noqa: S608 - its own words
_BOTH_SIDES = f"""
    WITH latest AS (
        SELECT athlete_id, test, side, max(at) AS at
        FROM athlete CROSS JOIN result ON result.athlete_id = athlete.id
        WHERE at BETWEEN ? AND ? AND side <> 'both' GROUP BY athlete_id, test, side
    ), tested AS (
        SELECT athlete_id, test, min(at) AS since FROM latest GROUP BY athlete_id, test HAVING count(*) = 2
    )
    SELECT {", ".join(f"result.{name}" for name in _COLUMNS.split(", "))}
    FROM tested CROSS JOIN result ON result.athlete_id = tested.athlete_id
    WHERE result.at BETWEEN since - ? AND ? AND result.test = tested.test AND result.side <> 'both'
    ORDER BY result.at, result.attempt, result.id
"""  # noqa: S608 - its own words
_OF_ONE = f"""
    SELECT {", ".join(f"result.{name}" for name in _COLUMNS.split(", "))}
    FROM athlete CROSS JOIN result ON result.athlete_id = athlete.id
    WHERE athlete.name = ? AND at <= ? ORDER BY at, attempt, result.id
"""  # noqa: S608 - its own words
SOMEBODY = "somebody"
"""Stands for the name of whoever made a try that is read without it."""
_CORRECTED = "SELECT DISTINCT subject_id FROM correction WHERE subject = ?"
_SIDES = {side.value: side for side in Side}


def first_two_tries(
    connection: Connection, path: Path, first: date, last: date, tests: Iterable[str] | None = None
) -> tuple[Tried, ...]:
    """Everybody's first and second tries on these local days, the earliest first: the latest 400 of a test.

    Of the tests named, or of all. A try is looked for where it was first written down to be.
    """
    keys = None if tests is None else tuple(tests)
    which = "" if keys is None else f"AND test IN ({marks(len(keys))})"
    query = _FIRST_TWO.format(which=which)
    rows = connection.exec_driver_sql(query, (*span(first, last), *(keys or ()))).all()
    changed = _changed(connection)
    found = (
        _tried(_as_corrected(connection, path, row, SOMEBODY), row[1]) if row[0] in changed else _plain(row)
        for row in rows
    )
    return tuple(each for each in found if first <= each.day <= last)


def results_until(connection: Connection, path: Path, athlete: str, last: date) -> tuple[Result, ...]:
    """The tries of an athlete up to a local day, the earliest first."""
    changed = _changed(connection)
    rows = connection.exec_driver_sql(_OF_ONE, (athlete, span(last, last)[1])).all()
    found = (
        _as_corrected(connection, path, row, athlete) if row[0] in changed else _result(row, athlete)
        for row in rows
    )
    return tuple(sorted((each for each in found if _day(each) <= last), key=lambda each: (each.at, each.id)))


def results_of_sides(
    connection: Connection, path: Path, first: date, last: date, names: Mapping[bytes, str]
) -> dict[str, list[Result]]:
    """By name the results at each test since shortly before its latest day with both sides tested."""
    begin, end = span(first, last)
    of = (begin, end, APART // timedelta(microseconds=1), end)
    changed = _changed(connection)
    found: dict[str, list[Result]] = {}
    for row in connection.exec_driver_sql(_BOTH_SIDES, of):
        name = names[row[1]]
        result = _as_corrected(connection, path, row, name) if row[0] in changed else _result(row, name)
        if first <= _day(result) <= last:
            found.setdefault(name, []).append(result)
    return found


def _changed(connection: Connection) -> set[bytes]:
    return set(connection.exec_driver_sql(_CORRECTED, (Subject.RESULT.value,)).scalars())


def _plain(row: Any) -> Tried:  # noqa: ANN401 - a row
    _, whose, test, value, unit, at, zone, side, attempt, *_ = row
    return Tried(whose, test, _SIDES[side], local(at, zone).date(), attempt, float(value), unit)


def _tried(result: Result, whose: bytes) -> Tried:
    value = float(result.value)
    return Tried(whose, result.test, result.side, _day(result), result.attempt, value, result.unit)


def _result(row: Any, athlete: str) -> Result:  # noqa: ANN401 - a row
    name, _, test, value, unit, at, zone, side, attempt, device, note = row
    instrument = None if device is None else text_of(device)
    return Result(
        text_of(name), athlete, test, value, unit, utc(at), zone, _SIDES[side], attempt, instrument, note
    )


def _as_corrected(connection: Connection, path: Path, row: Any, athlete: str) -> Result:  # noqa: ANN401 - a row
    written = _result(row, athlete)
    known = history(corrections_about(connection, path, written.id))
    return corrected(written, Target(Subject.RESULT, written.id), known)[0]


def _day(result: Result) -> date:
    return result.at.astimezone(zone_of(result.zone)).date()
