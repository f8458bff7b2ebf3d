"""Records on several computers that hand each other packs, and the whole of a record to compare."""

import random
import sqlite3
from collections.abc import Sequence
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from app.domain.correctable import Subject, Value
from app.domain.corrections import Change, Correction, Target
from app.domain.keeping import Device, DeviceKind, Note, Rating, RatingKind, Result
from app.domain.plan import Side
from app.domain.planned import PlannedSession
from app.domain.readiness import Readiness
from app.domain.records import Fact, RunEnded, RunOutcome
from app.store.answers import Kept
from app.store.database import Database, open_database
from app.store.exchange import Wanted
from app.store.taking_in import Taken
from tests.filled import Invented, invented_runs

MADE_AT = datetime(2026, 11, 22, 18, 0, tzinfo=UTC)
LISBON = "Europe/Lisbon"
WORDS = "Landed softer than last week"


@dataclass(frozen=True, slots=True)
class Laptop:
    """A record in a folder of its own; names it gives come from its seed."""

    path: Path
    seed: int

    def open(self) -> Database:
        """The record, opened."""
        return open_database(self.path, random_bytes=random.Random(self.seed).randbytes)

    def lead(self, runs: Sequence[Invented]) -> None:
        """Write down runs, or what has been added to them."""
        with self.open() as record:
            for run in runs:
                record.journal.open_run(run.header, run.prescribed)
                record.journal.append(run.header.run_id, 0, run.facts)

    def keep(self, *things: Kept) -> None:
        """Keep answers, notes, results."""
        with self.open() as record:
            for thing in things:
                record.answers.keep(thing)

    def plan(self, run: Invented, number: int = 1, reason: str = "at school") -> None:
        """Plan the session of a run for three weeks, and excuse the second."""
        header = run.header
        name, day = f"0190163d-8694-7000-9000-{number:012d}", header.started_at.date()
        session = PlannedSession(
            name, header.athlete, header.plan_title, day, header.started_at, LISBON, None, day + timedelta(14)
        )
        with self.open() as record:
            record.planned.keep(session)
            record.planned.excuse(name, day + timedelta(7), reason, header.started_at, LISBON)

    def correct(self, target: Target, field: str, after: Value, who: str, minutes: int = 0) -> Correction:
        """Set something right."""
        with open_database(self.path) as record:
            made = record.corrections.correct(
                Change(
                    target, field, after, who, "heard it wrong", MADE_AT + timedelta(minutes=minutes), LISBON
                )
            )
        assert made is not None
        return made

    def pack(self, name: str, wanted: Wanted | None = None) -> Path:
        """A pack of the record as it is now."""
        path = self.path.with_name(name)
        with self.open() as record:
            record.exchange.pack(path, wanted or Wanted(), MADE_AT)
        return path

    def unpack(self, *packs: Path) -> list[Taken]:
        """Take in packs in this order."""
        with self.open() as record:
            return [record.exchange.unpack(pack) for pack in packs]

    def athlete(self, name: str) -> str:
        """The id of the first athlete of a name."""
        with closing(sqlite3.connect(self.path)) as raw:
            (found,) = raw.execute("SELECT min(id) FROM athlete WHERE name = ?", (name,)).fetchone()
        return hyphened(found)


def laptop(folder: Path, name: str, seed: int) -> Laptop:
    """A laptop with an empty record."""
    (folder / name).mkdir()
    return Laptop(folder / name / "pacewright.db", seed)


def dump(path: Path) -> dict[str, list[tuple[object, ...]]]:
    """All rows of all tables, in an order that says nothing."""
    with closing(sqlite3.connect(path)) as raw:
        tables = [name for (name,) in raw.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")]
        return {
            table: sorted(raw.execute(f'SELECT * FROM "{table}"').fetchall(), key=repr)  # noqa: S608
            for table in sorted(tables)
        }


def hyphened(name: bytes) -> str:
    """A UUID as text."""
    text = name.hex()
    return "-".join((text[:8], text[8:12], text[12:16], text[16:20], text[20:]))


def cut_short(run: Invented, facts: int) -> Invented:
    """A run as far as it had come."""
    return Invented(run.header, run.prescribed, run.facts[:facts])


def laid_down(run: Invented, facts: int) -> Invented:
    """A run as far as it had come, then given up."""
    over: tuple[Fact, ...] = (RunEnded(600_000, RunOutcome.ABANDONED),)
    return Invented(run.header, run.prescribed, run.facts[:facts] + over)


def beside(runs: Sequence[Invented], number: int = 1) -> list[Kept]:
    """One thing of each kind kept beside the first of some runs."""
    run = runs[0].header
    at = run.started_at

    def name(place: int) -> str:
        return f"0190163d-8694-7000-8000-{number:06d}{place:06d}"

    device = Device(name(1), DeviceKind.INSTRUMENT, "Jump mat of the hall", at, LISBON)
    return [
        device,
        Readiness(
            name(2),
            run.athlete,
            at,
            LISBON,
            3,
            2,
            4,
            3,
            1,
            "shoulder",
            Side.LEFT,
            False,
            None,
            "",
            run.run_id,
        ),
        Rating(name(3), run.run_id, RatingKind.NEXT_MORNING_PAIN, 2, at + timedelta(hours=14), LISBON),
        Note(name(4), run.athlete, WORDS, "Tomas", at, LISBON, run.run_id),
        Result(name(5), run.athlete, "Single-leg hop", "141.50", "cm", at, LISBON, Side.LEFT, 2, device.id),
    ]


def of_run(run: Invented) -> Target:
    """A run, to be corrected."""
    return Target(Subject.RUN, run.header.run_id)


def of_bout(run: Invented, bout: int = 0) -> Target:
    """The first attempt at a bout, to be corrected."""
    return Target(Subject.BOUT, run.header.run_id, bout, 1)


RUNS = invented_runs(6, unfinished=False)
