"""Records with something in them: invented runs of the seaside club, the same for the same seed."""

import random
import sqlite3
from collections.abc import Sequence
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    Fact,
    FaultMarked,
    Paused,
    PauseReason,
    RepDone,
    RepMissed,
    RestExtended,
    Resumed,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
    SessionRated,
    SkipReason,
)
from app.store.database import open_database
from app.store.identity import uuid7

ATHLETES = ("Hugo", "Ines", "Kaya", "Bram")
FIRST = datetime(2026, 1, 5, 17, 30, tzinfo=UTC)
PAGE = 4096


@dataclass(frozen=True, slots=True)
class Invented:
    """A run as it is written down."""

    header: RunHeader
    prescribed: tuple[BoutPrescribed, ...]
    facts: tuple[Fact, ...]


def invented_runs(count: int, seed: int = 3, *, unfinished: bool = True) -> list[Invented]:
    """So many runs, the last of them cut short in mid-bout where `unfinished`."""
    chance = random.Random(seed)
    runs = [_invented(number, chance) for number in range(count)]
    if unfinished and runs:
        last = runs[-1]
        runs[-1] = Invented(last.header, last.prescribed, last.facts[:10])
    return runs


def fill(path: Path, runs: Sequence[Invented]) -> None:
    """Write runs into a record."""
    with open_database(path, random_bytes=random.Random(11).randbytes) as database:
        for run in runs:
            database.journal.open_run(run.header, run.prescribed)
            database.journal.append(run.header.run_id, 0, run.facts)


def facts_in(path: Path) -> dict[str, tuple[Fact, ...]]:
    """All facts of a record by run."""
    with open_database(path) as database:
        return {run_id: database.queries.facts_of(run_id) for run_id in database.queries.run_ids()}


def change(path: Path, statement: str, *values: object) -> None:
    """Do to a record what the program never does."""
    with closing(sqlite3.connect(path, isolation_level=None)) as raw:
        raw.execute(statement, values)


def spoil(path: Path, number: int, *, seed: int | None = None) -> None:
    """Overwrite a page, counted from 1, with zeros, or with noise."""
    content = bytes(PAGE) if seed is None else random.Random(seed).randbytes(PAGE)
    with path.open("r+b") as file:
        file.seek((number - 1) * PAGE)
        file.write(content)


def page_of(path: Path, table: str) -> int:
    """The root page of a table."""
    with closing(sqlite3.connect(path)) as raw:
        found = raw.execute("SELECT rootpage FROM sqlite_schema WHERE name = ?", (table,)).fetchone()
    return int(found[0])


def _invented(number: int, chance: random.Random) -> Invented:
    began = FIRST + timedelta(hours=31 * number)
    name = str(uuid7(int(began.timestamp() * 1000), chance.randbytes(10)))
    title = ("Shoulder rotators", "Landing control")[number % 2]
    header = RunHeader(
        name, ATHLETES[number % len(ATHLETES)], title, f'title = "{title}"\n', began, "Europe/Lisbon", True
    )
    prescribed = tuple(
        BoutPrescribed(
            bout,
            "Wake" if bout < 2 else "Catch",
            StageKind.ACTIVATION if bout < 2 else StageKind.STABILITY,
            "Towel press" if number % 2 else "Step-down",
            1 + bout // 2,
            (Side.LEFT, Side.RIGHT)[bout % 2],
            4,
            6,
            24_000,
            number % 2,
            (None, "2.5")[bout % 2],
        )
        for bout in range(4)
    )
    return Invented(header, prescribed, tuple(_facts(chance)))


def _facts(chance: random.Random) -> list[Fact]:
    facts: list[Fact] = [RunBegan()]
    now = 5_000
    for bout in range(3):
        facts += _bout(bout, now, chance)
        now += 90_000
    facts.append(BoutEnded(now, 3, 1, BoutOutcome.SKIPPED, SkipReason.EQUIPMENT, "no towel left"))
    facts.append(RunEnded(now + 1_000, chance.choice((RunOutcome.FINISHED, RunOutcome.ABANDONED))))
    return [*facts, SessionRated(now + 61_000, chance.randint(2, 8), 60_000, chance.choice((None, "windy")))]


def _bout(bout: int, now: int, chance: random.Random) -> list[Fact]:
    side = (Side.LEFT, Side.RIGHT)[bout % 2]
    facts: list[Fact] = [BoutBegan(now, bout, 1)]
    for rep in range(1, 6):
        start, now = now, now + 6_000
        if chance.random() < 0.2:
            facts.append(FaultMarked(now - 900, bout, 1, rep, side, chance.choice((None, "knee in"))))
        if chance.random() < 0.1:
            facts.append(RepMissed(now, bout, 1, rep, side))
        else:
            facts.append(RepDone(now, bout, 1, rep, side, start, chance.randint(0, 40)))
    if chance.random() < 0.3:
        facts += [Paused(now, PauseReason.ASKED), Resumed(now + 4_000)]
    facts.append(BoutEnded(now + 4_000, bout, 1, BoutOutcome.DONE))
    rated = BoutRated(now + 9_000, bout, 1, None, chance.randint(2, 8), chance.randint(0, 3), None)
    return [*facts, rated, RestExtended(now + 20_000, bout + 1, 15_000)]
