"""The journal in the database: every call is one transaction, on the disk when it returns."""

from collections.abc import Callable, Sequence
from typing import Any

from sqlalchemy import Connection, RowMapping, delete, insert, select, update

from app.domain.fold import BoutFact, fold_closing, fold_run
from app.domain.group_record import GroupRecord
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutPrescribed,
    Fact,
    RunEnded,
    RunHeader,
    SessionRated,
)
from app.run.group_journal import Opened, Written
from app.store.conversions import (
    as_closing,
    course_columns,
    plan_columns,
    prescription_columns,
    record_columns,
)
from app.store.correction_rows import is_corrected
from app.store.drawing import asked_of, begun_columns, begun_of, draw_run
from app.store.encoding import encode
from app.store.facts import Numbered, cut, folded_facts, last_folded, loose_facts
from app.store.groups import write_group
from app.store.link import Link
from app.store.people import athlete_made
from app.store.rows import (
    BoutRecordRow,
    FactRow,
    FoldRow,
    PlanRow,
    PrescribedBoutRow,
    PrescriptionRow,
    RunCourseRow,
    RunRow,
)
from app.store.sums import sum_up
from app.store.tolerance import tolerance_of


class StoreJournal:
    """Fills the port `app.run.group_journal.GroupJournal`.

    `random_bytes` gives so many, for the names of new rows.
    """

    def __init__(self, link: Link, random_bytes: Callable[[int], bytes]) -> None:
        self._link = link
        self._random_bytes = random_bytes

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        """Write down that a run exists, and what it asks for; the same again changes nothing.

        Raises StoreError when it cannot be kept, ValueError when another run has that name.
        """
        with self._link.writing() as connection:
            self._open(connection, header, prescribed)

    def open_group(self, group: GroupRecord, runs: Sequence[Opened]) -> None:
        """Write down that a group session exists, and runs of it; the same again changes nothing.

        Raises StoreError when they cannot be kept, ValueError when another has the name of one.
        """
        with self._link.writing() as connection:
            write_group(connection, group, self._random_bytes)
            for header, prescribed in runs:
                self._open(connection, header, prescribed)

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        """Write down facts in order, numbered from `first_number`; a number written before is left as it is.

        Raises StoreError when they cannot be kept, and then none of them is; ValueError when a fact before
        them is missing.
        """
        self.append_all([(run_id, first_number, facts)])

    def append_all(self, written: Sequence[Written]) -> None:
        """Write down facts of several runs in one transaction; of each holds what is said of `append`."""
        with self._link.writing() as connection:
            for run_id, first_number, facts in written:
                self._append(connection, run_id, first_number, facts)

    def _open(self, connection: Connection, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        plan = plan_columns(header)
        prescription, bouts = prescription_columns(prescribed)
        columns = {
            "id": header.run_id,
            "athlete_id": athlete_made(connection, header.athlete, header.started_at, self._random_bytes),
            "plan_hash": plan["hash"],
            "prescription_hash": prescription["hash"],
            "started_at": header.started_at,
            "zone": header.zone,
            "invented": header.invented,
        }
        same_name = select(RunRow.__table__).where(RunRow.id == header.run_id)
        known = connection.execute(same_name).mappings().first()
        if known is not None:
            if dict(known) != columns and _as_corrected(connection, known) != columns:
                raise ValueError(f"run {header.run_id} is written down already, and is another")
            return
        if connection.execute(select(PlanRow.hash).where(PlanRow.hash == plan["hash"])).first() is None:
            connection.execute(insert(PlanRow), plan)
        known_hash = select(PrescriptionRow.hash).where(PrescriptionRow.hash == prescription["hash"])
        if connection.execute(known_hash).first() is None:
            connection.execute(insert(PrescriptionRow), prescription)
            if bouts:
                connection.execute(insert(PrescribedBoutRow), bouts)
        connection.execute(insert(RunRow), columns)

    def _append(self, connection: Connection, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        loose = loose_facts(connection, self._link.path, run_id)
        last = loose[-1][0] if loose else last_folded(connection, run_id)
        if facts and first_number > last + 1:
            raise ValueError(f"the fact after number {last} of run {run_id} is missing")
        new = [(number, fact) for number, fact in enumerate(facts, first_number) if number > last]
        if new:
            _Addition(connection, self._link, run_id, loose, new).write()


class _Addition:
    """New facts on their way into a run: written, folded where a bout is over, and drawn from."""

    def __init__(
        self, connection: Connection, link: Link, run_id: str, loose: list[Numbered], new: list[Numbered]
    ) -> None:
        self._connection = connection
        self._path = link.path
        self._run_id = run_id
        self._new = new
        self._stream = [*loose, *new]

    def write(self) -> None:
        """Do it all."""
        if is_corrected(self._connection, self._run_id):
            self._write_facts()
            draw_run(self._connection, self._path, self._run_id)
            return
        known = self._known()
        self._write_facts()
        self._draw_records(known)
        self._draw_course()
        if self._touched() or self._new[0][0] == 0:
            sum_up(self._connection, self._run_id)

    def _known(self) -> list[Fact]:
        """The facts from which every bout that is spoken of can be drawn."""
        stream = [fact for _, fact in self._stream]
        here = {(f.bout, f.attempt) for f in stream if isinstance(f, BoutBegan | BoutEnded)}
        if self._touched() <= here:
            return stream
        return [fact for _, fact in folded_facts(self._connection, self._path, self._run_id)] + stream

    def _touched(self) -> set[tuple[int, int]]:
        return {(fact.bout, fact.attempt) for _, fact in self._new if isinstance(fact, BoutFact)}

    def _write_facts(self) -> None:
        pieces, rest = cut(self._stream)
        run = {"run_id": self._run_id}
        if pieces:
            folds = [
                {**run, "first_number": piece[0][0], "last_number": piece[-1][0], "body": _body(piece)}
                for piece in pieces
            ]
            self._connection.execute(insert(FoldRow), folds)
            # A piece ends with a new fact, so that all that was loose before is in one.
            self._connection.execute(delete(FactRow).where(FactRow.run_id == self._run_id))
        first_new = self._new[0][0]
        added = [
            {**run, "number": number, "body": encode([fact])} for number, fact in rest if number >= first_new
        ]
        if added:
            self._connection.execute(insert(FactRow), added)

    def _draw_records(self, known: list[Fact]) -> None:
        touched = self._touched()
        if not touched:
            return
        keys = select(BoutRecordRow.bout, BoutRecordRow.attempt).where(BoutRecordRow.run_id == self._run_id)
        there = {(bout, attempt) for bout, attempt in self._connection.execute(keys)}
        new = []
        asked, tolerance = asked_of(self._connection, self._run_id), tolerance_of(self._connection)
        for record in fold_run(known):
            key = (record.bout, record.attempt)
            if key not in touched:
                continue
            columns = record_columns(record, asked.get(record.bout), tolerance)
            if key not in there:
                new.append({"run_id": self._run_id, **columns})
                continue
            row = (
                (BoutRecordRow.run_id == self._run_id)
                & (BoutRecordRow.bout == record.bout)
                & (BoutRecordRow.attempt == record.attempt)
            )
            self._connection.execute(update(BoutRecordRow).where(row).values(columns))
        if new:
            self._connection.execute(insert(BoutRecordRow), new)

    def _draw_course(self) -> None:
        news = [fact for _, fact in self._new if isinstance(fact, RunEnded | SessionRated)]
        first = self._new[0][0] == 0
        if not news and not first:
            return
        row = select(RunCourseRow.__table__).where(RunCourseRow.run_id == self._run_id)
        known = self._connection.execute(row).mappings().first()
        if known is None:
            begun = begun_of(self._connection, self._run_id)
            if begun is not None:
                columns = {**begun_columns(begun), **course_columns(fold_closing(news))}
                self._connection.execute(insert(RunCourseRow), {"run_id": self._run_id, **columns})
            return
        columns = course_columns(fold_closing(news, as_closing(known)))
        self._connection.execute(
            update(RunCourseRow).where(RunCourseRow.run_id == self._run_id).values(columns)
        )


def _as_corrected(connection: Connection, known: RowMapping) -> dict[str, Any]:
    """The columns of a run with those that corrections gave it."""
    course = select(RunCourseRow.athlete_id, RunCourseRow.started_at, RunCourseRow.zone).where(
        RunCourseRow.run_id == known["id"]
    )
    found = connection.execute(course).mappings().first()
    return {**known, **(found or {})}


def _body(piece: Sequence[Numbered]) -> bytes:
    return encode([fact for _, fact in piece])
