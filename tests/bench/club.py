"""A club of many years in a record, written in compact rows: the same for the same numbers.

300 athletes do four sessions a week, each of 8 bouts of 20 reps: ten years are 624 000 runs, 100 million
reps. Every run has its facts in the encoding of the journal, readiness before it and an answer of the morning
after it. Every four weeks everybody is tested: three tries at a hop on each side and at a jump.
"""

import random
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import asdict
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from app.domain.dose import DoseKind
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    Fact,
    RepDone,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
)
from app.store.conversions import plan_columns, prescription_columns
from app.store.database import open_database
from app.store.encoding import encode
from app.store.identity import uuid7

ATHLETES, BOUTS, REPS = 300, 8, 20
WEEKDAYS = (0, 1, 3, 4)
ZONE = "Europe/Lisbon"
WEEKS_BETWEEN_TESTS = 4
LAST_MONDAY = date(2026, 11, 16)
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_EXERCISES = (("Wake", StageKind.ACTIVATION, "Row"), ("Catch", StageKind.STABILITY, "Step-down"))

ASKED = tuple(
    BoutPrescribed(
        bout,
        *_EXERCISES[bout // 4],
        1 + bout % 4 // 2,
        (Side.LEFT, Side.RIGHT)[bout % 2],
        REPS,
        REPS,
        REPS * 4_000,
        1,
        "2.5",
        DoseKind.TEMPO,
        4_000,
    )
    for bout in range(BOUTS)
)


def athlete_named(number: int) -> str:
    """What an athlete of the club is called."""
    return f"Athlete {number:03d}"


def write_club(path: Path, years: int, *, athletes: int = ATHLETES, seed: int = 5) -> int:
    """Write a club of so many years that end with the week of 2026-11-16; gives the number of its runs."""
    open_database(path).close()
    chance = random.Random(seed)
    with closing(sqlite3.connect(path, isolation_level=None)) as raw:
        raw.execute("PRAGMA synchronous = OFF")
        raw.execute("PRAGMA cache_size = -200000")
        raw.execute("BEGIN")
        people = _write_people(raw, athletes, chance)
        plan, prescription = _write_plan(raw)
        runs = 0
        for week in range(52 * years - 1, -1, -1):
            monday = LAST_MONDAY - timedelta(weeks=week)
            rows = list(_week(monday, people, chance))
            _write_runs(raw, rows, plan, prescription)
            runs += len(rows)
            if week % WEEKS_BETWEEN_TESTS == 0:
                _write_results(raw, monday, people, chance)
        _write_planned(raw, people, years, chance)
        raw.execute("COMMIT")
    return runs


def _micros(at: datetime) -> int:
    return (at - _EPOCH) // timedelta(microseconds=1)


def _write_people(raw: sqlite3.Connection, count: int, chance: random.Random) -> list[bytes]:
    people = [uuid7(1_400_000_000_000 + number, chance.randbytes(10)).bytes for number in range(count)]
    raw.executemany(
        "INSERT INTO athlete (id, name) VALUES (?, ?)",
        [(row, athlete_named(number)) for number, row in enumerate(people)],
    )
    return people


def _write_plan(raw: sqlite3.Connection) -> tuple[bytes, bytes]:
    header = RunHeader("", "", "Landing control", 'title = "Landing control"\n', _EPOCH, ZONE)
    plan = plan_columns(header)
    parent, bouts = prescription_columns(ASKED)
    raw.execute("INSERT INTO plan VALUES (:hash, :title, :text)", plan)
    raw.execute("INSERT INTO prescription VALUES (:hash, :low)", parent)
    names = ["prescription_hash", *asdict(ASKED[0])]
    places = ", ".join(f":{name}" for name in names)
    raw.executemany(
        f"INSERT INTO prescribed_bout ({', '.join(names)}) VALUES ({places})",  # noqa: S608 - own names
        [{name: _plain(value) for name, value in bout.items()} for bout in bouts],
    )
    return plan["hash"], parent["hash"]


def _plain(value: Any) -> Any:  # noqa: ANN401 - a cell
    return str(value) if isinstance(value, str) else value


def _week(
    monday: date, people: list[bytes], chance: random.Random
) -> Iterator[tuple[bytes, bytes, int, int, int]]:
    """Run, athlete, beginning, session RPE and pain of everybody's sessions of a week, in order of time."""
    for weekday in WEEKDAYS:
        day = datetime.combine(monday + timedelta(days=weekday), time(17), ZoneInfo(ZONE))
        for number, person in enumerate(people):
            at = _micros(day + timedelta(seconds=30 * number))
            name = uuid7(at // 1000, chance.randbytes(10)).bytes
            yield name, person, at, chance.randint(2, 8), chance.choice((0, 0, 0, 1, 2, 4))


def _write_runs(
    raw: sqlite3.Connection, rows: list[tuple[bytes, bytes, int, int, int]], plan: bytes, prescription: bytes
) -> None:
    elapsed = BOUTS * 120_000
    raw.executemany(
        "INSERT INTO run VALUES (?, ?, ?, ?, ?, ?, 1)",
        [(run, person, plan, prescription, at, ZONE) for run, person, at, _, _ in rows],
    )
    raw.executemany(
        "INSERT INTO run_course VALUES (?, ?, ?, ?, 'finished', ?, ?, 60000, NULL, ?, ?, ?, ?, ?)",
        [
            (run, person, at, ZONE, elapsed, rpe, *(BOUTS * REPS,) * 4, pain)
            for run, person, at, rpe, pain in rows
        ],
    )
    raw.executemany(
        "INSERT INTO bout_record VALUES (?, ?, 1, 'done', ?, ?, 20, 20, NULL, ?, ?, NULL, 0, 20, 20, 80000)",
        [
            (run, bout, bout * 120_000, bout * 120_000 + 80_000, rpe, pain)
            for run, _, _, rpe, pain in rows
            for bout in range(BOUTS)
        ],
    )
    raw.executemany(
        "INSERT INTO fold VALUES (?, 0, ?, ?)", [(run, len(_FACTS) - 1, _BODY) for run, *_ in rows]
    )
    raw.executemany(
        "INSERT INTO readiness VALUES (?, ?, ?, ?, ?, 3, 2, 4, 3, ?, NULL, NULL, 0, 0, NULL, NULL)",
        [(run, person, run, at - 600_000_000, ZONE, pain) for run, person, at, _, pain in rows],
    )
    raw.executemany(
        "INSERT INTO rating VALUES (?, ?, 'next_morning_pain', ?, ?, ?, NULL, NULL, NULL)",
        [(run, run, pain, at + 50_000_000_000, ZONE) for run, _, at, _, pain in rows],
    )


def _write_results(raw: sqlite3.Connection, monday: date, people: list[bytes], chance: random.Random) -> None:
    """Three tries of everybody at a hop on each side and at a jump on both legs."""
    at = _micros(datetime.combine(monday + timedelta(days=2), time(17), ZoneInfo(ZONE)))
    rows: list[tuple[object, ...]] = []
    for number, person in enumerate(people):
        for key, side, around in (
            ("single_hop", Side.LEFT, 140 + number % 30),
            ("single_hop", Side.RIGHT, 145 + number % 30),
            ("jump_height", Side.BOTH, 30 + number % 9),
        ):
            for attempt in (1, 2, 3):
                when = at + 1_000_000 * (60 * number + len(rows) % 9)
                name = uuid7(when // 1000, chance.randbytes(10)).bytes
                value = f"{chance.gauss(around, around / 40):.1f}"
                rows.append((name, person, key, value, "cm", str(side), attempt, when, ZONE))
    raw.executemany(
        "INSERT INTO result (id, athlete_id, test, value, unit, side, attempt, at, zone)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        rows,
    )


def _write_planned(raw: sqlite3.Connection, people: list[bytes], years: int, chance: random.Random) -> None:
    """Every session a weekly plan of its own for each year, as a coach would set it up."""
    rows = []
    for person in people:
        for year in range(years):
            first = LAST_MONDAY - timedelta(weeks=52 * (year + 1) - 1)
            for weekday in WEEKDAYS:
                name = uuid7(1_400_000_000_000, chance.randbytes(10)).bytes
                day, until = first + timedelta(days=weekday), first + timedelta(weeks=52)
                rows.append((name, person, "Landing control", str(day), "17:00", str(until), None, 0, ZONE))
    raw.executemany("INSERT INTO planned VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)", rows)


def _facts() -> Iterator[Fact]:
    yield RunBegan()
    for bout in range(BOUTS):
        begin = bout * 120_000
        yield BoutBegan(begin, bout, 1)
        for rep in range(1, REPS + 1):
            end = begin + rep * 4_000
            yield RepDone(end, bout, 1, rep, ASKED[bout].side, end - 4_000, 5)
        yield BoutEnded(begin + REPS * 4_000, bout, 1, BoutOutcome.DONE)
        yield BoutRated(begin + 90_000, bout, 1, rpe=5, pain=0)
    yield RunEnded(BOUTS * 120_000, RunOutcome.FINISHED)


_FACTS = tuple(_facts())
_BODY = encode(_FACTS)
