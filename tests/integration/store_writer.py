"""Leads sessions in real time in a process of its own, kills it, and goes on with the next where it was.

Run as `store_writer.py DATABASE KILLS` it prints a line of JSON a kill: how much was acknowledged before it,
what the file holds afterwards, and how long it took to open it and to take the run up again.
"""

import json
import os
import random
import signal
import sqlite3
import sys
import time
from dataclasses import dataclass, field
from pathlib import Path

from app import wiring
from app.domain.compiler import compile_timeline
from app.domain.dose import Band, TempoReps
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind, WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import Fact, RepDone, RunEnded
from app.domain.tempo import Begins, Tempo
from app.domain.timeline import Timeline
from app.run.controller import Controller
from app.run.intents import Begin, Resume, Tick
from app.run.restore import restore
from app.store.database import Database, open_database
from app.store.encoding import decode, encode
from app.store.steady import SteadyJournal

LONGEST_LIFE_S = 0.25
STEP_S = 0.002
EXERCISES = tuple(
    Exercise(
        name,
        TempoReps(Band.exactly(4), Tempo(20, 5, 10, 5), Begins.ECCENTRIC),
        sides=Sides.EACH,
        sets=2,
        rest_ms=60,
    )
    for name in ("Step-down", "Dune hop", "Towel press")
)
PLAN = Plan(
    "Landing control",
    (Stage("Catch", StageKind.STABILITY, EXERCISES),),
    lead_in_ms=30,
    changeover_ms=60,
    side_change_ms=40,
)
TIMELINE: Timeline = compile_timeline(PLAN)


def now_ms() -> int:
    """The clock of a session."""
    return time.monotonic_ns() // 1_000_000


def lead(path: Path, told: int) -> None:
    """Lead one session after the other, taking up what is not over, telling of facts once they are kept."""
    with open_database(path, spare=path.parent / "spare") as database:
        journal = database.steadily(_say)
        while True:
            _lead_one(database, journal, told)


def _say(sentence: str | None) -> None:
    sys.stderr.write(f"{sentence}\n")


def _lead_one(database: Database, journal: SteadyJournal, told: int) -> None:
    unfinished = database.queries.unfinished_runs()
    if unfinished:
        header = unfinished[0]
        facts = database.queries.facts_of(header.run_id)
        journal.recall(header, prescriptions(TIMELINE), facts)
        controller = Controller(TIMELINE, restore(TIMELINE, facts, now_ms()), len(facts))
        first, new = controller.handle(Resume(), now_ms())
    else:
        header = wiring.new_header("Ines", WrittenPlan(PLAN, "text"))
        journal.open_run(header, prescriptions(TIMELINE))
        controller = Controller(TIMELINE)
        first, new = controller.handle(Begin(), now_ms())
    while True:
        if new:
            journal.append(header.run_id, first, new)
            body, name = encode(new), bytes.fromhex(header.run_id.replace("-", ""))
            os.write(told, len(body).to_bytes(4, "big") + name + body)
        if controller.over:
            return
        time.sleep(STEP_S)
        first, new = controller.handle(Tick(), now_ms())


@dataclass
class Witness:
    """What was acknowledged, by run, and how the file bears it out."""

    path: Path
    runs: dict[str, list[Fact]] = field(default_factory=dict)
    latest: str = ""

    def hear(self, said: bytes) -> None:
        """Take in what a process told before it died; a message that was cut off tells nothing."""
        while len(said) >= 20:
            length, run = int.from_bytes(said[:4], "big"), said[4:20].hex()
            if len(said) < 20 + length:
                return
            self.latest = "-".join((run[:8], run[8:12], run[12:16], run[16:20], run[20:]))
            self.runs.setdefault(self.latest, []).extend(decode(said[20 : 20 + length]))
            said = said[20 + length :]

    def look(self) -> dict[str, object]:
        """Open the file as the next process would, and compare."""
        torn = self.path.with_name(self.path.name + "-journal").exists()
        start = time.perf_counter()
        with open_database(self.path) as database:
            offered = database.queries.unfinished_runs()
            if offered:
                facts = database.queries.facts_of(offered[0].run_id)
                restore(TIMELINE, facts, now_ms())
            took = time.perf_counter() - start
            if offered:
                self.latest = offered[0].run_id
            held = database.queries.facts_of(self.latest) if self.latest else ()
            bouts = database.queries.bouts_of(self.latest) if self.latest else ()
        known = self.runs.setdefault(self.latest, [])
        reps = [(f.bout, f.attempt, f.rep, f.side) for f in held if isinstance(f, RepDone)]
        found: dict[str, object] = {
            "acknowledged": len(known),
            "held": len(held),
            "kept": list(held[: len(known)]) == known,
            "offered": bool(offered) == (bool(held) and not any(isinstance(fact, RunEnded) for fact in held)),
            "reps": sum(record.reps_done for _, record in bouts if record is not None),
            "reps_written": len(reps),
            "doubled": len(reps) - len(set(reps)),
            "whole": self._whole(),
            "torn": torn,
            "found_s": took,
        }
        self.runs[self.latest] = list(held)
        return found

    def _whole(self) -> bool:
        raw = sqlite3.connect(self.path)
        checked = raw.execute("PRAGMA integrity_check").fetchall()
        loose = raw.execute("PRAGMA foreign_key_check").fetchall()
        raw.close()
        return checked == [("ok",)] and loose == []


def kill_one(witness: Witness, chance: random.Random) -> dict[str, object]:
    """Start a process, kill it at a moment of chance, and look at what is there."""
    hears, tells = os.pipe()
    leader = os.fork()
    if leader == 0:
        os.close(hears)
        try:
            lead(witness.path, tells)
        finally:
            os._exit(1)
    os.close(tells)
    time.sleep(chance.uniform(0, LONGEST_LIFE_S))
    os.kill(leader, signal.SIGKILL)
    _, status = os.waitpid(leader, 0)
    with os.fdopen(hears, "rb") as heard:
        witness.hear(heard.read())
    if not os.WIFSIGNALED(status):
        raise AssertionError("the process died by itself")
    return witness.look()


def main(path: Path, kills: int, seed: int = 20260302) -> None:
    """Kill so many processes one after the other, and say in the end how the sessions stand."""
    chance, witness = random.Random(seed), Witness(path)
    open_database(path).close()
    for _ in range(kills):
        sys.stdout.write(json.dumps(kill_one(witness, chance)) + "\n")


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]))
