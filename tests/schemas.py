"""One small record of every schema there was, and what it held when it was made.

`python -m tests.schemas` writes the record of today's schema, for a schema that is about to be released; the
others were made by the program of their time and are never made again.
"""

import json
import sqlite3
from collections.abc import Sequence
from contextlib import closing
from datetime import UTC, date, datetime, time
from hashlib import sha256
from pathlib import Path
from typing import Any

from app.domain.correctable import Subject
from app.domain.corrections import Change, Target
from app.domain.group_record import GroupMember, GroupRecord
from app.domain.grouping import Form
from app.domain.keeping import Device, DeviceKind, Note, Rating, RatingKind, Result, Setting
from app.domain.plan import Side
from app.domain.planned import PlannedSession
from app.domain.readiness import Decision, Readiness
from app.store.answers import Kept
from app.store.database import open_database
from app.store.encoding import encode
from app.store.identity import uuid7
from app.store.schema import SCHEMA_VERSION
from tests.filled import Invented, change, fill, invented_runs

FOLDER = Path(__file__).parent / "golden" / "schemas"
AT = datetime(2026, 1, 20, 18, 0, tzinfo=UTC)
ZONE = "Europe/Lisbon"
WAVES = (
    '{"change_ms":20000,"form":"waves","rounds":1,"stations":[],"swap_ms":10000,"teams":null,"work_ms":40000}'
)
MEMBER = '{"first":"left","loads_kg":[],"reps":{},"sits_out":[],"team":0,"variants":{}}'


def record_of(version: int) -> Path:
    """The record of a schema."""
    return FOLDER / f"r{version:04d}.db"


def held_of(version: int) -> Path:
    """What it held when it was made, as `held_in` says it."""
    return FOLDER / f"r{version:04d}.json"


def held_in(path: Path) -> dict[str, Any]:
    """What a record holds, by plain SQL over columns that every schema has: rows by table, and its runs."""
    with closing(sqlite3.connect(path)) as raw:
        tables = [name for (name,) in raw.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")]
        rows = {table: _count(raw, table) for table in sorted(tables)}
        runs = raw.execute(
            "SELECT lower(hex(run.id)), athlete.name, plan.title, plan.text, run.started_at, run.zone, "
            "outcome, elapsed_ms, session_rpe, lag_ms, "
            "(SELECT count(*) FROM bout_record WHERE run_id = run.id), "
            "(SELECT sum(reps_counted) FROM bout_record WHERE run_id = run.id), "
            "(SELECT sum(rpe) FROM bout_record WHERE run_id = run.id) "
            "FROM run JOIN athlete ON athlete.id = run.athlete_id JOIN plan ON plan.hash = plan_hash "
            "JOIN run_course ON run_id = run.id ORDER BY run.started_at"
        ).fetchall()
    return {"rows": rows, "runs": [list(run) for run in runs]}


def _count(raw: sqlite3.Connection, table: str) -> int:
    return int(raw.execute(f'SELECT count(*) FROM "{table}"').fetchone()[0])  # noqa: S608


def make(path: Path) -> None:
    """Write a record that has something in every table of today's schema."""
    runs = invented_runs(6)
    fill(path, runs)
    _keep_beside(path, runs)
    _take_from_elsewhere(path, runs)
    with closing(sqlite3.connect(path, isolation_level=None)) as raw:
        raw.execute("VACUUM")


def _keep_beside(path: Path, runs: Sequence[Invented]) -> None:
    first, *_ = runs
    run, whose = first.header.run_id, first.header.athlete

    def name(number: int) -> str:
        return str(uuid7(int(AT.timestamp() * 1000), number.to_bytes(10, "big")))

    things: list[Kept] = [
        Readiness(
            *(name(1), whose, AT, ZONE, 3, 2, 4, 5, 1, "shoulder", Side.LEFT, False, False, "slept late"),
            *(run, Decision.SPOKEN),
        ),
        Rating(name(2), run, RatingKind.NEXT_MORNING_PAIN, 2, AT, ZONE, "shoulder", Side.LEFT, "stiff"),
        Note(name(3), whose, "Shoulder drops at the end.", "Coach", AT, ZONE, run),
        Device(name(4), DeviceKind.INSTRUMENT, "Tape", AT, ZONE),
        Result(name(5), whose, "Single-leg hop", "142.5", "cm", AT, ZONE, Side.LEFT, 1, name(4), "on sand"),
        Setting(name(6), "rest", "long", AT, ZONE),
    ]
    with open_database(path, random_bytes=bytes) as database:
        for thing in things:
            database.answers.keep(thing)
        until = date(2026, 2, 24)
        day = date(2026, 1, 27)
        database.planned.keep(
            PlannedSession(name(7), whose, "Landing control", day, AT, ZONE, time(18), until, "landing.toml")
        )
        database.planned.excuse(name(7), day, "at school", AT, ZONE)
        members = tuple(
            GroupMember(name(8 + place), place, each.header.athlete, each.header.run_id, MEMBER)
            for place, each in enumerate(runs[:2])
        )
        database.journal.open_group(GroupRecord(name(11), Form.WAVES, WAVES, AT, ZONE, members), ())
        target = Target(Subject.RUN, run)
        database.corrections.correct(Change(target, "session_rpe", 9, "Coach", "misheard", AT, ZONE))
        whose_row = next(person.id for person in database.answers.people() if person.name == whose)
        chosen = Target(Subject.ATHLETE, whose_row)
        database.corrections.correct(
            Change(chosen, "reference_side", "left", "Coach", "the sound side", AT, ZONE)
        )


def _take_from_elsewhere(path: Path, runs: Sequence[Invented]) -> None:
    first, second, *_ = runs
    name, other = (bytes.fromhex(run.header.run_id.replace("-", "")) for run in (first, second))
    branch = encode(first.facts[:5])
    change(path, "INSERT INTO branch VALUES (?, ?, ?)", name, sha256(branch).digest(), branch)
    change(path, "INSERT INTO imported VALUES (?)", other)
    change(path, "INSERT INTO erased VALUES (?, ?)", sha256(b"nobody").digest(), 1_767_000_000_000_000)


def main() -> None:
    """Write the record of today's schema, and what it holds."""
    FOLDER.mkdir(exist_ok=True)
    path = record_of(SCHEMA_VERSION)
    path.unlink(missing_ok=True)
    make(path)
    held = json.dumps(held_in(path), indent=1, ensure_ascii=False)
    held_of(SCHEMA_VERSION).write_text(f"{held}\n", encoding="utf-8")


if __name__ == "__main__":
    main()
