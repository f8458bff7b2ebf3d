"""Writes a run fact by fact in a process of its own, kills that process, and goes on with the next.

Run as `store_writer.py DATABASE KILLS` it prints a line of JSON a kill: how many facts were acknowledged
before it, how many the file holds afterwards, and how long it took to open it and find the run. It fails
when the facts in the file are not those that were written.
"""

import json
import os
import random
import signal
import sys
import time
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path

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
    RunHeader,
)
from app.store.database import Database, open_database

REPS = 5
KILLS_A_RUN = 25
PORTION = REPS + 3
BOUTS = [
    BoutPrescribed(bout, "Catch", StageKind.STABILITY, "Step-down", 1, Side.LEFT, REPS, REPS, 20_000, 1, None)
    for bout in range(400)
]


def header(run: int) -> RunHeader:
    """Whose run it is, by its number."""
    return RunHeader(
        run_id=f"0190163d-8694-7{run:03x}-aea5-966c26f8ad91",
        athlete="Ines",
        plan_title="Landing control",
        plan_text="",
        started_at=datetime(2026, 3, 2, 17, 30, tzinfo=UTC) + timedelta(days=run),
        zone="Europe/Lisbon",
    )


def fact(number: int) -> Fact:
    """The fact of that number in a run of bouts of five reps, each rated after it."""
    if number == 0:
        return RunBegan()
    bout, place = divmod(number - 1, PORTION)
    at = number * 4_000
    if place == 0:
        return BoutBegan(at, bout, 1)
    if place <= REPS:
        return RepDone(at, bout, 1, place, Side.LEFT, at - 4_000, number % 17)
    if place == REPS + 1:
        return BoutEnded(at, bout, 1, BoutOutcome.DONE)
    return BoutRated(at, bout, 1, rpe=number % 11, pain=0)


def facts_held(database: Database, run: int) -> int:
    """How many facts of the run the file holds. Raises AssertionError when they are not the right ones."""
    held = database.queries.facts_of(header(run).run_id)
    if held != tuple(fact(number) for number in range(len(held))):
        raise AssertionError("the facts in the file are not those that were written")
    return len(held)


def write_on(path: Path, run: int, told: int) -> None:
    """Go on with the run where the file ends, telling of each fact once it is kept; until killed."""
    with open_database(path) as database:
        database.journal.open_run(header(run), BOUTS)
        for number in count(facts_held(database, run)):
            database.journal.append(header(run).run_id, number, [fact(number)])
            os.write(told, number.to_bytes(4, "big"))


def kill_one(path: Path, run: int, chance: random.Random) -> dict[str, object]:
    """Start a writer, kill it at a moment of chance, and look at what is there."""
    hears, tells = os.pipe()
    writer = os.fork()
    if writer == 0:
        os.close(hears)
        try:
            write_on(path, run, tells)
        finally:
            os._exit(1)
    os.close(tells)
    with os.fdopen(hears, "rb", buffering=0) as heard:
        last = b""
        for _ in range(chance.randint(1, 30)):
            last = heard.read(4) or last
        until = time.perf_counter() + chance.uniform(0, 0.004)
        while time.perf_counter() < until:
            pass
        os.kill(writer, signal.SIGKILL)
        os.waitpid(writer, 0)
        last = (last + heard.read())[-4:]
    acknowledged = int.from_bytes(last, "big") + 1
    beside = path.with_name(path.name + "-journal").exists()
    start = time.perf_counter()
    with open_database(path) as database:
        offered = database.queries.unfinished_runs()[0]
        took = time.perf_counter() - start
        held = facts_held(database, run)
        bouts = database.queries.bouts_of(header(run).run_id)
    reps = sum(record.reps_done for _, record in bouts if record is not None)
    return {
        "acknowledged": acknowledged,
        "held": held,
        "offered": offered == header(run),
        "reps": reps,
        "reps_written": sum(isinstance(fact(number), RepDone) for number in range(held)),
        "torn": beside,
        "opened_s": took,
    }


def main(path: Path, kills: int, seed: int = 20260302) -> None:
    """Kill so many writers one after the other."""
    chance = random.Random(seed)
    for kill in range(kills):
        sys.stdout.write(json.dumps(kill_one(path, kill // KILLS_A_RUN, chance)) + "\n")


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]))
