"""The answers that the review shows, of many runs and people at once, as corrected."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from datetime import date
from pathlib import Path
from typing import Any

from sqlalchemy import Connection

from app.domain.correctable import Subject, Value
from app.domain.corrected import corrected
from app.domain.corrections import Correction, Key, Target, history
from app.domain.keeping import RatingKind
from app.domain.plan import Side
from app.domain.readiness import Decision, Readiness
from app.store.correction_rows import corrections_about
from app.store.review_rows import marks, span, text_of, utc, zone_of

_KIND = RatingKind.NEXT_MORNING_PAIN.value
_MORNINGS = """
    FROM run_course AS rc CROSS JOIN rating ON rating.run_id = rc.run_id
    WHERE rc.started_at BETWEEN ? AND ? {whose} AND rating.kind = ?
"""
_READINESS = """
    FROM athlete CROSS JOIN readiness AS said ON said.athlete_id = athlete.id
    WHERE said.at BETWEEN ? AND ? {whose}
"""
_ANSWERS = """
    said.id, athlete.name, said.at, said.zone, sleep, fatigue, stress, soreness, pain, pain_place, pain_side,
    changed, red_flag, note, run_id, decision
"""
"""In the order of the fields of `Readiness`."""


def mornings(
    connection: Connection, path: Path, first: date, last: date, athletes: Iterable[bytes] | None = None
) -> Mapping[str, int | None]:
    """By run of these days the pain of the morning after, as answered last.

    None where it was asked and not answered; runs of which it was not asked are left out.
    """
    ids = None if athletes is None else tuple(athletes)
    whose = "" if ids is None else f"AND rc.athlete_id IN ({marks(len(ids))})"
    tail, of = _MORNINGS.format(whose=whose), (*span(first, last), *(ids or ()), _KIND)
    query = f"SELECT rating.id, rating.run_id, rating.value {tail} ORDER BY rating.at, rating.id"
    rows = connection.exec_driver_sql(query, of).all()
    holding = _holding(connection, path, f"SELECT rating.id {tail}", of)
    found: dict[str, int | None] = {}
    for rating_id, run_id, value in rows:
        found[text_of(run_id)] = value
        if rating_id in holding:
            key = Target(Subject.RATING, text_of(rating_id)), "value"
            if key in holding[rating_id]:
                found[text_of(run_id)] = _whole(holding[rating_id][key].after)
    return found


def readiness_between(
    connection: Connection, path: Path, first: date, last: date, athlete: str | None = None
) -> Mapping[str, list[Readiness]]:
    """By name what athletes said of themselves on these local days, the earliest first."""
    whose = "" if athlete is None else "AND athlete.name = ?"
    tail = _READINESS.format(whose=whose)
    of = (*span(first, last), *(() if athlete is None else (athlete,)))
    query = f"SELECT {_ANSWERS} {tail} ORDER BY said.at, said.id"
    rows = connection.exec_driver_sql(query, of).all()
    holding = _holding(connection, path, f"SELECT said.id {tail}", of)
    found: defaultdict[str, list[Readiness]] = defaultdict(list)
    for row in rows:
        thing = _readiness(tuple(row))
        if row[0] in holding:
            known = history(corrections_about(connection, path, thing.id))
            thing, _ = corrected(thing, Target(Subject.READINESS, thing.id), known)
        if first <= _local_day(thing) <= last:
            found[thing.athlete].append(thing)
    return found


def _holding(
    connection: Connection, path: Path, ids: str, of: tuple[object, ...]
) -> Mapping[bytes, Mapping[Key, Correction]]:
    """What holds of those things that were ever corrected; `ids` is a query for the names of all of them."""
    query = f"SELECT DISTINCT subject_id FROM correction WHERE subject_id IN ({ids})"  # noqa: S608
    names = connection.exec_driver_sql(query, of).scalars().all()
    return {name: history(corrections_about(connection, path, text_of(name))).holding for name in names}


def _whole(value: Value) -> int | None:
    return value if isinstance(value, int) else None


def _readiness(row: tuple[Any, ...]) -> Readiness:
    name, athlete, at, zone, sleep, fatigue, stress, soreness, pain, place, side = row[:11]
    changed, flag, note, run_id, decision = row[11:]
    return Readiness(
        text_of(name),
        athlete,
        utc(at),
        zone,
        sleep,
        fatigue,
        stress,
        soreness,
        pain,
        place,
        None if side is None else Side(side),
        None if changed is None else bool(changed),
        None if flag is None else bool(flag),
        note,
        None if run_id is None else text_of(run_id),
        None if decision is None else Decision(decision),
    )


def _local_day(thing: Readiness) -> date:
    return thing.at.astimezone(zone_of(thing.zone)).date()
