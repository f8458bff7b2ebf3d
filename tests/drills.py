"""Drills with the record: a short session, led into it while power is cut or calls to the disk fail."""

import random
from collections.abc import Sequence
from datetime import UTC, datetime, timedelta
from pathlib import Path

from app.domain.correctable import Subject
from app.domain.corrections import Change, Target
from app.domain.plan import Exercise, Sides
from app.domain.prescription import prescriptions
from app.domain.records import Fact, RunHeader, RunOutcome
from app.run.controller import Controller
from app.run.journal import Journal
from app.run.rehearsal import rehearse
from app.store.database import Database, open_database
from tests.fakes import MemoryJournal
from tests.file_layer import Event, Faults, Trace, traced
from tests.planned import compiled, tempo_reps
from tests.power_cut import Disk

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
STARTED = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
HEADER = RunHeader(RUN, "Ines", "Landing control", "text", STARTED, "Europe/Lisbon")
TIMELINE = compiled(Exercise("Step-down", tempo_reps(2, "2-0-1-0"), sides=Sides.EACH, sets=2, rest_ms=6_000))
NAME = "record.db"


def session() -> tuple[Fact, ...]:
    """Everything that the session writes down."""
    journal = MemoryJournal()
    lead(journal)
    return tuple(journal.facts[RUN])


def lead(journal: Journal) -> None:
    """Lead the whole session into a journal."""
    journal.open_run(HEADER, prescriptions(TIMELINE))
    rehearse(Controller(TIMELINE), journal, RUN, lambda _step_ms: None)


class Telling:
    """Hands a session on to a journal, and notes in a trace how many facts were acknowledged."""

    def __init__(self, journal: Journal, trace: Trace) -> None:
        self._journal, self._trace = journal, trace
        self.open_run = journal.open_run

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        """Write down, then say so."""
        self._journal.append(run_id, first_number, facts)
        self._trace.tell(first_number + len(facts))


def change(after: int) -> Change:
    """A correction of what the whole session was rated."""
    at = STARTED + timedelta(days=1)
    return Change(Target(Subject.RUN, RUN), "session_rpe", after, "Tomas", "misheard", at, "UTC")


def record_session(folder: Path) -> tuple[dict[str, bytes], list[Event]]:
    """A database before a session, and everything that was done to files while it was led and corrected.

    The correction is told as one more than all facts.
    """
    path = folder / NAME
    open_database(path).close()
    before = {NAME: path.read_bytes()}
    with traced() as trace:
        with open_database(path) as database:
            lead(Telling(database.journal, trace))
            database.corrections.correct(change(7))
            trace.tell(len(session()) + 1)
        return before, trace.events


def record_making(folder: Path) -> tuple[dict[str, bytes], list[Event]]:
    """Everything that is done to files while a database is made."""
    path = folder / NAME
    path.touch()
    with traced() as trace:
        open_database(path).close()
        return {NAME: b""}, trace.events


def cuts(events: Sequence[Event], number: int) -> list[int]:
    """So many moments for a power cut, spread over all of a trace, every one of it where there is room."""
    return [1 + place * (len(events) - 1) // (number - 1) for place in range(number)]


def image(before: dict[str, bytes], events: Sequence[Event], seed: int, folder: Path) -> Disk:
    """Put into a folder what a power cut after some events may leave; gives what the disk was told."""
    disk = Disk(before)
    disk.see(events)
    for old in folder.iterdir():
        old.unlink()
    for name, content in disk.after_cut(random.Random(seed)).items():
        (folder / name).write_bytes(content)
    return disk


def look(path: Path) -> int:
    """Open a database, see that it is whole, and say how much it holds of the session, by the way it is told.

    Raises AssertionError when it is not whole, or holds what was never written.
    """
    with open_database(path) as database:
        held = facts_held(database)
        corrected = len(database.corrections.history_of(RUN).corrections)
        return held + corrected


def facts_held(database: Database) -> int:
    """How many facts of the session a database holds, once they are seen to be right and there once each."""
    with database._link.reading() as connection:
        checked = connection.exec_driver_sql("PRAGMA integrity_check").scalar()
        loose = connection.exec_driver_sql("PRAGMA foreign_key_check").first()
    assert (checked, loose) == ("ok", None)
    facts = database.queries.facts_of(RUN)
    assert facts == session()[: len(facts)], "the facts are not those that were written"
    return len(facts)


def calls_of_a_session(path: Path, faults: Faults) -> int:
    """How many calls to the system a session takes where none fails."""
    with open_database(path) as database:
        journal = database.steadily(lambda _sentence: None)
        faults.fail(0, 0)
        lead(journal)
        return faults.count


def lead_through(path: Path, faults: Faults, at: int, error: int, times: int = 1) -> str:
    """Lead the session while a call to the disk, or some in a row, fails; gives which it was, or "" for none.

    Raises AssertionError when anything is missing in the database in the end.
    """
    said: list[str | None] = []
    with open_database(path, spare=path.parent / "spare") as database:
        journal = database.steadily(said.append)
        faults.fail(at, error, times)
        lead(journal)
        failed = faults.failed
        faults.fail(0, 0)
        assert journal.mend(), f"it could not be mended: {said[-1]}"
        journal.close()
        assert facts_held(database) == len(session()), f"lost by {failed}"
        (summary,) = database.queries.run_summaries()
        assert (summary.reps_done, summary.outcome) == (8, RunOutcome.FINISHED)
    assert (said[-1] if said else None) is None, "the trouble is still told of"
    assert not list((path.parent / "spare").glob("*")), "something still lies beside"
    return failed
