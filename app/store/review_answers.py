"""The answers and results that the review shows, of many runs and people at once, as corrected."""

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from pathlib import Path
from typing import Any, TypeVar

from sqlalchemy import Connection, RowMapping, Select, select

from app.analysis.local_time import known_zone
from app.domain.correctable import Subject
from app.domain.corrected import corrected
from app.domain.corrections import Correction, Target, history
from app.domain.keeping import Rating, RatingKind, Result
from app.domain.plan import Side
from app.domain.readiness import Decision, Readiness
from app.store.correction_rows import as_correction
from app.store.later_rows import CorrectionRow, RatingRow, ReadinessRow, ResultRow
from app.store.review_rows import bounds, text_of
from app.store.rows import AthleteRow, RunCourseRow
from app.store.troubles import damaged


@dataclass(frozen=True, slots=True)
class Morning:
    """The pain of the morning after a run, as answered last; None where it was asked and not answered."""

    pain: int | None


def mornings(
    connection: Connection, path: Path, first: date, last: date, athletes: Iterable[bytes] | None = None
) -> Mapping[str, Morning]:
    """By run what was answered of the morning after, of these days; runs not asked of are left out."""
    begin, end = bounds(first, last)
    query = (
        select(RatingRow.__table__)
        .join(RunCourseRow, RunCourseRow.run_id == RatingRow.run_id)
        .where(
            RatingRow.kind == RatingKind.NEXT_MORNING_PAIN.value,
            RunCourseRow.started_at.between(begin, end),
        )
        .order_by(RatingRow.at, RatingRow.id)
    )
    if athletes is not None:
        query = query.where(RunCourseRow.athlete_id.in_([text_of(athlete) for athlete in athletes]))
    found = {}
    for thing in _held(connection, path, query, RatingRow, _rating):
        found[thing.run_id] = Morning(thing.value)
    return found


def readiness_between(
    connection: Connection, path: Path, first: date, last: date, athlete: str | None = None
) -> Mapping[str, list[Readiness]]:
    """By name what athletes said of themselves on these local days, the earliest first."""
    begin, end = bounds(first, last)
    query = (
        select(ReadinessRow.__table__, AthleteRow.name.label("athlete"))
        .join(AthleteRow, AthleteRow.id == ReadinessRow.athlete_id)
        .where(ReadinessRow.at.between(begin, end))
        .order_by(ReadinessRow.at, ReadinessRow.id)
    )
    if athlete is not None:
        query = query.where(AthleteRow.name == athlete)
    found: defaultdict[str, list[Readiness]] = defaultdict(list)
    for thing in _held(connection, path, query, ReadinessRow, _readiness):
        if first <= _local_day(thing) <= last:
            found[thing.athlete].append(thing)
    return found


def results_until(connection: Connection, path: Path, athlete: str, last: date) -> list[Result]:
    """The tries of an athlete at tests up to a local day, the earliest first."""
    query = (
        select(ResultRow.__table__, AthleteRow.name.label("athlete"))
        .join(AthleteRow, AthleteRow.id == ResultRow.athlete_id)
        .where(AthleteRow.name == athlete)
        .order_by(ResultRow.at, ResultRow.id)
    )
    found = _held(connection, path, query, ResultRow, _result)
    return [thing for thing in found if _local_day(thing) <= last]


_Made = TypeVar("_Made", Rating, Readiness, Result)
_Word = TypeVar("_Word", bound=StrEnum)


def _held(
    connection: Connection,
    path: Path,
    query: Select[Any],
    rows: type[RatingRow] | type[ReadinessRow] | type[ResultRow],
    made: Callable[[RowMapping], _Made],
) -> list[_Made]:
    """The things of a query as corrected, with the corrections of all of them read at once."""
    things = [made(row) for row in connection.execute(query).mappings()]
    ids = query.with_only_columns(rows.id).order_by(None)
    about = select(CorrectionRow.__table__).where(CorrectionRow.subject_id.in_(ids))
    found: defaultdict[str, list[Correction]] = defaultdict(list)
    try:
        for row in connection.execute(about).mappings():
            found[row["subject_id"]].append(as_correction(row))
    except (ValueError, TypeError) as error:
        raise damaged(path) from error
    subject = _SUBJECTS[rows]
    return [
        corrected(thing, Target(subject, thing.id), history(found[thing.id]))[0]
        if thing.id in found
        else thing
        for thing in things
    ]


_SUBJECTS = {
    RatingRow: Subject.RATING,
    ReadinessRow: Subject.READINESS,
    ResultRow: Subject.RESULT,
}


def _rating(row: RowMapping) -> Rating:
    return Rating(**{**_said(row), "kind": RatingKind(row["kind"]), "side": _word(Side, row["side"])})


def _readiness(row: RowMapping) -> Readiness:
    words = {"pain_side": _word(Side, row["pain_side"]), "decision": _word(Decision, row["decision"])}
    return Readiness(**{**_said(row), **words})


def _result(row: RowMapping) -> Result:
    return Result(**{**_said(row), "side": Side(row["side"])})


def _said(row: RowMapping) -> dict[str, Any]:
    return {name: value for name, value in row.items() if name != "athlete_id"}


def _word(words: type[_Word], value: str | None) -> _Word | None:
    return None if value is None else words(value)


def _local_day(thing: Readiness | Result) -> date:
    return thing.at.astimezone(known_zone(thing.zone)).date()
