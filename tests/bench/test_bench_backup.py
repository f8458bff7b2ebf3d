"""Figures of 500 000 reps: opening, checking, backing up, comparing, going back, saving a damaged record."""

import random
import shutil
import statistics
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

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
    SessionRated,
)
from app.store.backup import back_up, write_backup
from app.store.contents import contents_of
from app.store.database import open_database
from app.store.identity import uuid7
from app.store.recovery import recover
from app.store.restore import restore, restore_plan
from app.store.verify import verify
from tests.filled import change, spoil

pytestmark = pytest.mark.bench

RUNS, BOUTS, REPS = 5_000, 10, 10
FIRST = datetime(2021, 1, 4, 17, 30, tzinfo=UTC)
AT = datetime(2026, 6, 1, tzinfo=UTC)
PRESCRIBED = [
    BoutPrescribed(
        bout, "Catch", StageKind.STABILITY, "Step-down", 1, Side.LEFT, REPS, REPS, 80_000, 1, "2.5"
    )
    for bout in range(BOUTS)
]


def facts(chance: random.Random) -> list[Fact]:
    found: list[Fact] = [RunBegan()]
    for bout in range(BOUTS):
        begin = 5_000 + bout * 125_000
        found.append(BoutBegan(begin, bout, 1))
        for rep in range(1, REPS + 1):
            end = begin + 8_000 * rep
            found.append(RepDone(end, bout, 1, rep, Side.LEFT, end - 8_000, chance.randint(0, 40)))
        found.append(BoutEnded(begin + 80_000, bout, 1, BoutOutcome.DONE))
        found.append(BoutRated(begin + 89_000, bout, 1, rpe=chance.randint(2, 8), pain=chance.randint(0, 3)))
    end = BOUTS * 125_000
    return [*found, RunEnded(end, RunOutcome.FINISHED), SessionRated(end + 60_000, 5, 60_000)]


@pytest.fixture(scope="module")
def full(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A record of 5 000 runs and 500 000 reps."""
    path = tmp_path_factory.mktemp("bench") / "record.db"
    chance = random.Random(1)
    with open_database(path) as database:
        database._link.outside_transactions("PRAGMA synchronous = OFF")
        for number in range(RUNS):
            began = FIRST + timedelta(hours=9 * number)
            name = str(uuid7(int(began.timestamp() * 1000), chance.randbytes(10)))
            athlete = f"Athlete {number % 12}"
            head = RunHeader(name, athlete, "Landing control", "text", began, "Europe/Lisbon", True)
            database.journal.open_run(head, PRESCRIBED)
            database.journal.append(name, 0, facts(chance))
    print(f"\n{RUNS * BOUTS * REPS} reps in {path.stat().st_size / 2**20:.1f} MiB")
    return path


@pytest.fixture
def record(full: Path, tmp_path: Path) -> Path:
    return Path(shutil.copyfile(full, tmp_path / "record.db"))


def say(name: str, what: Callable[[], object], times: int = 10, before: Callable[[], object] = int) -> None:
    """Print how long it takes; `before` is done ahead of each time and not counted."""
    taken = []
    for _ in range(times):
        before()
        start = time.perf_counter()
        what()
        taken.append((time.perf_counter() - start) * 1000)
    print(f"\n{name}: median {statistics.median(taken):.0f} ms, worst {max(taken):.0f} ms, of {times}")


def test_opening(full: Path) -> None:
    say("opening (at most 300 ms)", lambda: open_database(full).close(), 20)


def test_verify(full: Path) -> None:
    say("verify (at most 1 s)", lambda: verify(full))
    say("verify --thorough", lambda: verify(full, thorough=True), 1)


def test_backup(record: Path, tmp_path: Path) -> None:
    folder, steps = tmp_path / "backups", iter(range(1_000))

    def go_on() -> None:
        change(
            record,
            "UPDATE run_course SET elapsed_ms = elapsed_ms + 1 WHERE run_id = (SELECT min(id) FROM run)",
        )

    say(
        "backup at a start (at most 1 s)",
        lambda: back_up(record, folder, AT + timedelta(days=next(steps))),
        20,
        go_on,
    )
    say("the same where nothing changed", lambda: back_up(record, folder, AT + timedelta(days=next(steps))))


def test_going_back(record: Path, tmp_path: Path) -> None:
    backup = write_backup(record, tmp_path / "backups", AT).path
    say("what a database holds", lambda: contents_of(record), 5)
    say("the difference to a backup", lambda: restore_plan(record, backup), 5)
    say("going back", lambda: restore(record, backup, AT), 5)


def test_saving_a_damaged_record(record: Path, tmp_path: Path) -> None:
    pages = record.stat().st_size // 4096
    for number in random.Random(2).sample(range(1, pages + 1), pages // 100):
        spoil(record, number, seed=number)
    began = time.perf_counter()
    recovered = recover(record, tmp_path / "saved.db", at=AT)
    took = time.perf_counter() - began
    missing = sum(recovered.missing_facts.values())
    facts_left = sum(run.facts for run in recovered.contents.runs) - missing
    print(
        f"\n1 page of 100 lost to noise ({pages // 100} of {pages}): {len(recovered.contents.runs)} of "
        f"{RUNS} runs and {facts_left} of {RUNS * len(facts(random.Random(1)))} facts saved in {took:.1f} s"
    )
