"""Figures of the record: commits, opening, bytes a rep, corrections, kills, power cuts, failing calls."""

import json
import os
import random
import shutil
import statistics
import subprocess
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication

from app.domain.correctable import Subject
from app.domain.corrections import Change, Target
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
from app.store.database import Database, open_database
from app.store.identity import uuid7
from app.views.worker import RecordKeeper
from tests.drills import (
    NAME,
    calls_of_a_session,
    cuts,
    image,
    lead_through,
    look,
    record_making,
    record_session,
)
from tests.file_layer import FAULTS, faulty, reachable

pytestmark = pytest.mark.bench

RUNS, BOUTS, REPS = 5_000, 10, 10
FIRST = datetime(2021, 1, 4, 17, 30, tzinfo=UTC)
PRESCRIBED = [
    BoutPrescribed(
        bout, "Catch", StageKind.STABILITY, "Step-down", 1, Side.LEFT, REPS, REPS, 80_000, 1, "2.5"
    )
    for bout in range(BOUTS)
]


def header(number: int, chance: random.Random) -> RunHeader:
    began = FIRST + timedelta(hours=9 * number)
    name = str(uuid7(int(began.timestamp() * 1000), chance.randbytes(10)))
    return RunHeader(name, f"Athlete {number % 12}", "Landing control", "text", began, "Europe/Lisbon", True)


def bout_facts(bout: int, begin_ms: int, chance: random.Random) -> list[Fact]:
    facts: list[Fact] = [BoutBegan(begin_ms, bout, 1)]
    for rep in range(1, REPS + 1):
        end = begin_ms + 8_000 * rep
        facts.append(RepDone(end, bout, 1, rep, Side.LEFT, end - 8_000, chance.randint(0, 40)))
    end = begin_ms + 8_000 * REPS
    rated = BoutRated(end + 9_000, bout, 1, rpe=chance.randint(2, 8), pain=chance.randint(0, 3))
    return [*facts, BoutEnded(end, bout, 1, BoutOutcome.DONE), rated]


def run_facts(chance: random.Random) -> list[Fact]:
    facts: list[Fact] = [RunBegan()]
    for bout in range(BOUTS):
        facts += bout_facts(bout, 5_000 + bout * 125_000, chance)
    end = BOUTS * 125_000
    return [
        *facts,
        RunEnded(end, RunOutcome.FINISHED),
        SessionRated(end + 60_000, chance.randint(3, 8), 60_000),
    ]


@pytest.fixture(scope="module")
def full(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A record of 5 000 runs and 500 000 reps."""
    path = tmp_path_factory.mktemp("bench") / "record.db"
    chance = random.Random(1)
    began = time.perf_counter()
    with open_database(path) as database:
        for number in range(RUNS):
            head = header(number, chance)
            database.journal.open_run(head, PRESCRIBED)
            database.journal.append(head.run_id, 0, run_facts(chance))
    print(f"\n{RUNS} runs, {RUNS * BOUTS * REPS} reps written in {time.perf_counter() - began:.1f} s")
    return path


@pytest.fixture
def opened(full: Path) -> Iterator[Database]:
    with open_database(full) as database:
        yield database


def timed(what: Callable[[], object], times: int) -> list[float]:
    """Milliseconds of each time."""
    taken = []
    for _ in range(times):
        start = time.perf_counter()
        what()
        taken.append((time.perf_counter() - start) * 1000)
    return sorted(taken)


def say(name: str, taken: list[float]) -> None:
    high = taken[min(len(taken) - 1, len(taken) * 99 // 100)]
    print(f"\n{name}: median {statistics.median(taken):.2f} ms, p99 {high:.2f} ms, of {len(taken)}")


def test_bytes_a_rep(full: Path) -> None:
    print(f"\n{full.stat().st_size / (RUNS * BOUTS * REPS):.1f} bytes a rep, all tables and indexes")


def test_opening(full: Path) -> None:
    say("opening 500 000 reps", timed(lambda: open_database(full).close(), 50))


def test_first_opening_with_its_imports(full: Path) -> None:
    script = (
        "import time; start = time.perf_counter(); import sys; from pathlib import Path; "
        "from app.store.database import open_database; open_database(Path(sys.argv[1])).close(); "
        "print(time.perf_counter() - start)"
    )
    words = [sys.executable, "-c", script, str(full)]
    root = Path(__file__).parents[2]
    took = [
        float(subprocess.run(words, capture_output=True, text=True, check=True, cwd=root).stdout) * 1000
        for _ in range(10)
    ]
    say("opening, with loading SQLAlchemy", sorted(took))


def test_one_rep_committed(opened: Database) -> None:
    chance = random.Random(2)
    taken = []
    for number in range(4):
        head = header(RUNS + number, chance)
        opened.journal.open_run(head, PRESCRIBED)
        for place, fact in enumerate(run_facts(chance)):
            start = time.perf_counter()
            opened.journal.append(head.run_id, place, [fact])
            if isinstance(fact, RepDone):
                taken.append((time.perf_counter() - start) * 1000)
    say("a rep's commit", sorted(taken))


def test_folds_and_late_ratings(opened: Database) -> None:
    chance = random.Random(3)
    folds, ratings = [], []
    head = header(RUNS + 10, chance)
    opened.journal.open_run(head, PRESCRIBED)
    for place, fact in enumerate(run_facts(chance)):
        start = time.perf_counter()
        opened.journal.append(head.run_id, place, [fact])
        taken = (time.perf_counter() - start) * 1000
        if isinstance(fact, BoutEnded):
            folds.append(taken)
        elif isinstance(fact, BoutRated):
            ratings.append(taken)
    say("a bout's fold", sorted(folds))
    say("a rating after the fold", sorted(ratings))


def test_summaries(opened: Database) -> None:
    ask = opened.queries.run_summaries
    say("summaries of 5 000 runs", timed(ask, 10))
    say("summaries of one athlete", timed(lambda: ask(athlete="Athlete 3"), 10))
    since = FIRST + timedelta(hours=9 * (RUNS - 100))
    say("summaries of the last 100 runs", timed(lambda: ask(since=since), 20))
    run_id = ask()[0].run_id
    say("the bouts of one run", timed(lambda: opened.queries.bouts_of(run_id), 50))


def test_corrections(opened: Database) -> None:
    chance = random.Random(4)
    run_id = opened.queries.run_summaries()[-1].run_id
    bout = Target(Subject.BOUT, run_id, 3, 1)
    taken = []
    for number in range(40):
        at = FIRST + timedelta(days=2_000, minutes=number)
        change = Change(bout, "rpe", number % 11, "Tomas", f"{chance.random()}", at, "UTC")
        start = time.perf_counter()
        opened.corrections.correct(change)
        taken.append((time.perf_counter() - start) * 1000)
    say("a correction and all that is drawn anew", sorted(taken))
    say("the history of a run", timed(lambda: opened.corrections.history_of(run_id), 20))
    say("a fact of a run that was corrected", _late_facts(opened, run_id))


def _late_facts(opened: Database, run_id: str) -> list[float]:
    number = len(opened.queries.facts_of(run_id))
    rated: list[Fact] = [SessionRated(1_000_000 + more, 5, more) for more in range(20)]
    taken = []
    for more, fact in enumerate(rated):
        start = time.perf_counter()
        opened.journal.append(run_id, number + more, [fact])
        taken.append((time.perf_counter() - start) * 1000)
    return sorted(taken)


def test_what_the_screen_pays_for_a_rep(full: Path, qapp: QCoreApplication) -> None:
    chance = random.Random(5)
    head = header(RUNS + 20, chance)
    keeper = RecordKeeper(lambda: open_database(full, spare=full.parent / "spare"))
    keeper.open()
    keeper.open_run(head, PRESCRIBED)
    facts = run_facts(chance)
    taken = []
    for place, fact in enumerate(facts):
        start = time.perf_counter()
        keeper.append(head.run_id, place, [fact])
        taken.append((time.perf_counter() - start) * 1000)
        time.sleep(0.01)
        qapp.processEvents()
    assert keeper.finish() is None
    keeper.close()
    say("what the screen pays for a rep", sorted(taken))


def test_a_thousand_kills(tmp_path: Path) -> None:
    root = Path(__file__).parents[2]
    writer = root / "tests" / "integration" / "store_writer.py"
    done = subprocess.run(
        [sys.executable, str(writer), str(tmp_path / "record.db"), "1000"],
        capture_output=True,
        text=True,
        check=True,
        cwd=root,
        env={**os.environ, "PYTHONPATH": str(root)},
    )
    found = [json.loads(line) for line in done.stdout.splitlines()]
    counts = {
        "lost": sum(not after["kept"] for after in found),
        "doubled": sum(after["doubled"] for after in found),
        "not offered": sum(not after["offered"] for after in found),
        "not whole": sum(not after["whole"] for after in found),
    }
    torn, going = sum(after["torn"] for after in found), sum(after["reps"] > 0 for after in found)
    print(f"\n{len(found)} kills, {going} with reps behind them, {torn} in mid-write: {counts}")
    say("opening and taking the run up", sorted(after["found_s"] * 1000 for after in found))
    assert set(counts.values()) == {0}


@pytest.mark.skipif(not reachable, reason="SQLite's file layer cannot be reached here")
def test_power_cuts(tmp_path: Path) -> None:
    for name, record, images in (("a session", record_session, 1_000), ("the making", record_making, 60)):
        folder, disk_of = tmp_path / name, tmp_path / f"{name} after"
        folder.mkdir()
        disk_of.mkdir()
        before, events = record(folder)
        lost = 0
        for seed, cut in enumerate(cuts(events, images)):
            disk = image(before, events[:cut], seed, disk_of)
            lost += look(disk_of / NAME) < disk.told
        print(f"\n{images} images of {len(events)} events of {name}: all open, {lost} lost anything")
        assert lost == 0


@pytest.mark.skipif(not reachable, reason="SQLite's file layer cannot be reached here")
def test_failing_calls(tmp_path: Path) -> None:
    empty, path = tmp_path / "empty.db", tmp_path / NAME
    open_database(empty).close()
    with faulty() as faults:
        shutil.copy(empty, path)
        calls = calls_of_a_session(path, faults)
        failed: Counter[str] = Counter()
        for error in FAULTS.values():
            for at in range(1, calls + 1):
                shutil.copy(empty, path)
                failed[lead_through(path, faults, at, error)] += 1
    print(f"\neach of {calls} calls failed once in {len(FAULTS)} ways: all reps kept; {dict(failed)}")
