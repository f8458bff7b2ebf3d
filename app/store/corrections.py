"""Corrections in the database: each is a new row, and the figures that follow from it are drawn anew."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime
from enum import StrEnum
from pathlib import Path

from sqlalchemy import Connection, select, update

from app.domain.correctable import FIELDS, Subject, as_native
from app.domain.corrections import Change, Correction, History, Target, history, open_ends, undoing
from app.domain.errors import StoreError
from app.store.correction_rows import (
    NAMES_AN_ATHLETE,
    as_correction,
    corrections_about,
    insert_new,
    with_names,
)
from app.store.drawing import draw_run
from app.store.later_rows import CorrectionRow
from app.store.link import Link
from app.store.people import RandomBytes, athlete_made, is_there, new_name
from app.store.present import value_held
from app.store.rows import AthleteRow

_OF_A_RUN = (Subject.RUN, Subject.BOUT, Subject.REP)


class Corrections:
    """Writes and reads corrections. Every method raises StoreError when the database cannot be had."""

    def __init__(self, link: Link, random_bytes: RandomBytes) -> None:
        self._link = link
        self._random_bytes = random_bytes

    def correct(self, change: Change) -> Correction | None:
        """Write a correction down; None, and nothing written, when that value holds already undisputed.

        Raises StoreError when what is to be corrected is not there.
        """
        with self._link.writing() as connection:
            written = self._write(connection, self._with_row(connection, change))
            return None if written is None else with_names(connection, [written])[0]

    def undo(self, correction_id: str, who: str, why: str, at: datetime, zone: str) -> Correction | None:
        """Take a correction back by a further one: to what held before it.

        Raises StoreError when it is not there, or does not hold any more.
        """
        with self._link.writing() as connection:
            row = select(CorrectionRow.__table__).where(CorrectionRow.id == correction_id)
            found = connection.execute(row).mappings().first()
            if found is None:
                raise StoreError("That correction is not in the record.")
            correction = as_correction(found)
            if not self._history(connection, correction.change.target.of).holds(correction):
                raise StoreError(
                    "That correction does not hold any more: a later one does. Take that one back instead."
                )
            self._see_who_it_names(connection, correction)
            written = self._write(connection, undoing(correction, who, why, at, zone))
            return None if written is None else with_names(connection, [written])[0]

    def add(self, corrections: Iterable[Correction]) -> int:
        """Take in corrections made elsewhere, athletes named by their rows; gives how many were new.

        They may come in any order and more than once.
        """
        with self._link.writing() as connection:
            new = insert_new(connection, corrections)
            for subject, of in dict.fromkeys((c.change.target.subject, c.change.target.of) for c in new):
                self._draw(connection, subject, of)
        return len(new)

    def history_of(self, run_id: str) -> History:
        """Every correction of a run, its bouts and reps, athletes by name."""
        return self.history_about(run_id)

    def history_about(self, subject_id: str) -> History:
        """Every correction of a run or another thing, by its UUID; athletes by name."""
        with self._link.reading() as connection:
            found = corrections_about(connection, self._link.path, subject_id)
            return history(with_names(connection, found))

    def corrected_ever(self, subject: Subject) -> frozenset[str]:
        """The UUIDs of all things of a kind of which there are corrections, whether they hold or not."""
        query = select(CorrectionRow.subject_id).where(CorrectionRow.subject == subject.value).distinct()
        with self._link.reading() as connection:
            return frozenset(connection.execute(query).scalars())

    def _history(self, connection: Connection, subject_id: str) -> History:
        return history(corrections_about(connection, self._link.path, subject_id))

    def _with_row(self, connection: Connection, change: Change) -> Change:
        """The change with an athlete named by their row, made where there is none of that name."""
        if (change.target.subject, change.field) != NAMES_AN_ATHLETE:
            return change
        row = athlete_made(connection, str(change.after), change.at, self._random_bytes)
        return replace(change, after=row)

    def _see_who_it_names(self, connection: Connection, correction: Correction) -> None:
        change = correction.change
        if (change.target.subject, change.field) == NAMES_AN_ATHLETE and not is_there(
            connection, str(correction.before)
        ):
            raise StoreError("That correction cannot be taken back: the athlete before it was erased.")

    def _write(self, connection: Connection, change: Change) -> Correction | None:
        target = change.target
        before = value_held(connection, self._link.path, target, change.field)
        known = self._history(connection, target.of)
        of_field = [each for each in known.corrections if each.key == (target, change.field)]
        disputed = any(conflict.holds.key == (target, change.field) for conflict in known.conflicts)
        if change.after == before and not disputed:
            return None
        knowing = tuple(each.id for each in open_ends(of_field))
        correction = Correction(new_name(change.at, self._random_bytes), change, before, knowing)
        insert_new(connection, [correction])
        self._draw(connection, target.subject, target.of)
        return correction

    def _draw(self, connection: Connection, subject: Subject, of: str) -> None:
        draw_subject(connection, self._link.path, subject, of)


def draw_subject(connection: Connection, path: Path, subject: Subject, of: str) -> None:
    """Draw anew what follows from the corrections of a thing: the figures of its run, or an athlete's row.

    Raises StoreError when what was written cannot be read.
    """
    if subject in _OF_A_RUN:
        draw_run(connection, path, of)
    elif subject is Subject.ATHLETE:
        holding = history(corrections_about(connection, path, of)).holding
        target = Target(Subject.ATHLETE, of)
        values = {
            field: _plain(as_native(field, holding[target, field].after))
            for field in FIELDS[Subject.ATHLETE]
            if (target, field) in holding
        }
        if values:
            connection.execute(update(AthleteRow).where(AthleteRow.id == of).values(values))


def _plain(native: object) -> object:
    return native.value if isinstance(native, StrEnum) else native
