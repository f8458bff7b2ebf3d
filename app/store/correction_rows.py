"""Corrections as rows of the database, and back."""

import json
from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, RowMapping, exists, insert, select

from app.domain.correctable import Subject, Value
from app.domain.corrections import Change, Correction, Target
from app.domain.plan import Side
from app.store.later_rows import CorrectionRow
from app.store.people import called
from app.store.troubles import damaged

NAMES_AN_ATHLETE = (Subject.RUN, "athlete")
"""A field whose values are athletes: by name outside, by the name of their row in the database."""

FORGOTTEN = "somebody who was erased"
"""Stands for an athlete whose row is gone."""


def correction_columns(correction: Correction) -> dict[str, Any]:
    """The row of a correction; an athlete must be named by their row already."""
    change, target = correction.change, correction.change.target
    return {
        "id": correction.id,
        "subject": target.subject.value,
        "subject_id": target.of,
        "bout": target.bout,
        "attempt": target.attempt,
        "rep": target.rep,
        "side": None if target.side is None else target.side.value,
        "field": change.field,
        "before": json.dumps(correction.before, ensure_ascii=False),
        "after": json.dumps(change.after, ensure_ascii=False),
        "who": change.who,
        "why": change.why,
        "at": change.at,
        "zone": change.zone,
        "replaces": json.dumps(correction.replaces),
    }


def as_correction(row: RowMapping | Mapping[str, Any]) -> Correction:
    """The correction of a row, an athlete named by their row. Raises ValueError when it is none."""
    target = Target(
        Subject(row["subject"]),
        row["subject_id"],
        row["bout"],
        row["attempt"],
        row["rep"],
        None if row["side"] is None else Side(row["side"]),
    )
    after, before = _value(row["after"]), _value(row["before"])
    change = Change(target, row["field"], after, row["who"], row["why"], row["at"], row["zone"])
    return Correction(row["id"], change, before, tuple(json.loads(row["replaces"])))


def corrections_about(connection: Connection, path: Path, subject_id: str) -> tuple[Correction, ...]:
    """All corrections of a run with its bouts and reps, or of another thing; athletes named by their rows.

    Raises StoreError when one cannot be read.
    """
    query = select(CorrectionRow.__table__).where(CorrectionRow.subject_id == subject_id)
    try:
        return tuple(map(as_correction, connection.execute(query).mappings()))
    except (ValueError, TypeError) as error:
        raise damaged(path) from error


def is_corrected(connection: Connection, subject_id: str) -> bool:
    """Whether anything was ever corrected of it."""
    query = select(exists().where(CorrectionRow.subject_id == subject_id))
    return bool(connection.execute(query).scalar_one())


def insert_new(connection: Connection, corrections: Iterable[Correction]) -> tuple[Correction, ...]:
    """Add the corrections that are not there yet, and give them."""
    given = {each.id: each for each in corrections}
    query = select(CorrectionRow.id).where(CorrectionRow.id.in_(list(given)))
    there = set(connection.execute(query).scalars())
    new = tuple(each for name, each in given.items() if name not in there)
    if new:
        connection.execute(insert(CorrectionRow), [correction_columns(each) for each in new])
    return new


def with_names(connection: Connection, corrections: Iterable[Correction]) -> tuple[Correction, ...]:
    """The same corrections with athletes by what they are called today."""
    given = tuple(corrections)
    rows = {str(value) for each in given if _of_athlete(each) for value in (each.before, each.after)}
    names = called(connection, rows) if rows else {}
    return tuple(_swapped(each, lambda row: names.get(str(row), FORGOTTEN)) for each in given)


def _swapped(correction: Correction, swap: Callable[[Value], Value]) -> Correction:
    if not _of_athlete(correction):
        return correction
    change = replace(correction.change, after=swap(correction.after))
    return replace(correction, change=change, before=swap(correction.before))


def _of_athlete(correction: Correction) -> bool:
    return (correction.change.target.subject, correction.change.field) == NAMES_AN_ATHLETE


def _value(text: str) -> Value:
    value = json.loads(text)
    return tuple(value) if isinstance(value, list) else value
