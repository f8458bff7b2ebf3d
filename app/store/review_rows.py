"""The statements of the review and their rows as what is looked back on.

They are written out, and read without the mapping of columns to types, because a squad's table wants ten
thousand rows within a fraction of a second. Each reads the runs of a span of time by an index, so that its
cost grows with the span and not with the history.
"""

from collections.abc import Iterable, Iterator
from datetime import UTC, date, datetime, time, timedelta, tzinfo
from functools import lru_cache
from typing import Any, NamedTuple

from sqlalchemy import Connection

from app.analysis.load import elapsed_minutes, session_load
from app.analysis.local_time import known_zone
from app.domain.plan import Side, StageKind
from app.domain.reviewed import PartTotals, Totals

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_MICROSECOND = timedelta(microseconds=1)
_MARGIN = timedelta(hours=15)
"""No place's day begins or ends further than 14 hours from that of UTC."""

_RUNS = """
    SELECT rc.run_id, rc.athlete_id, rc.started_at, rc.zone, rc.outcome, rc.elapsed_ms, rc.session_rpe,
        rc.pain, rc.reps_met, rc.reps_done, rc.tempo_known, rc.tempo_kept, rc.corrected,
        plan.title, prescription.low, imported.run_id IS NOT NULL
    FROM run_course AS rc
    JOIN run ON run.id = rc.run_id
    JOIN plan ON plan.hash = run.plan_hash
    JOIN prescription ON prescription.hash = run.prescription_hash
    LEFT JOIN imported ON imported.run_id = rc.run_id
    WHERE rc.started_at BETWEEN ? AND ? {whose}
    ORDER BY rc.started_at, rc.run_id
"""
PLACE = """
            row_number() OVER (
                PARTITION BY {run}, {bout} ORDER BY
                    outcome IN ('done', 'ended_early') DESC,
                    CASE WHEN outcome IN ('done', 'ended_early') THEN 0
                        ELSE coalesce(reps_stated, reps_counted) END DESC,
                    attempt DESC
            )
"""
"""Of the attempts at a bout the one that stands has the first place, see `fold.standing`."""
_PARTS = """
    WITH chosen AS (
        SELECT rc.run_id, run.prescription_hash
        FROM run_course AS rc JOIN run ON run.id = rc.run_id
        WHERE rc.started_at BETWEEN ? AND ? AND rc.athlete_id IN ({athletes})
    ), attempts AS (
        SELECT bout_record.*, coalesce(reps_stated, reps_counted) AS done,
            {place} AS place
        FROM chosen CROSS JOIN bout_record ON bout_record.run_id = chosen.run_id
    )
    SELECT chosen.run_id, asked.stage_name, asked.stage_kind, asked.exercise, asked.side,
        asked.dose = 'stick',
        sum(asked.low), sum(min(coalesce(done, 0), asked.low)), sum(coalesce(done, 0)),
        sum(reps_clean), sum(reps_missed), sum(reps_counted),
        sum(coalesce(attempts.tempo_known, 0)), sum(coalesce(attempts.tempo_kept, 0)),
        sum(coalesce(done, 0) * asked.contacts_per_rep),
        sum(attempts.tut_ms),
        sum(CAST(coalesce(attempts.load_kg, asked.load_kg) AS REAL) * done),
        sum(done > 0 AND coalesce(attempts.load_kg, asked.load_kg) IS NULL)
    FROM chosen
    JOIN prescribed_bout AS asked ON asked.prescription_hash = chosen.prescription_hash
    LEFT JOIN attempts
        ON attempts.run_id = chosen.run_id AND attempts.bout = asked.bout AND attempts.place = 1
    GROUP BY chosen.run_id, asked.stage_name, asked.stage_kind, asked.exercise, asked.side
    ORDER BY chosen.run_id, min(asked.bout)
"""


_LOADS = """
    SELECT athlete_id, started_at, zone, session_rpe, elapsed_ms FROM run_course
    WHERE started_at BETWEEN ? AND ?
"""


class RunLine(NamedTuple):
    """One run of the review: its columns, and when it began by the clock of its place."""

    run_id: str
    athlete_id: bytes
    local: datetime
    ended: bool
    minutes: float | None
    rpe: int | None
    pain: int | None
    totals: Totals | None
    corrected: frozenset[str]
    plan_title: str
    imported: bool


def span(first: date, last: date) -> tuple[int, int]:
    """Microseconds since 1970 between which all that happened on these local days lies, and little else."""
    begin = datetime.combine(first, time(), UTC) - _MARGIN
    end = datetime.combine(last, time(), UTC) + timedelta(days=1) + _MARGIN
    return (begin - _EPOCH) // _MICROSECOND, (end - _EPOCH) // _MICROSECOND


def run_lines(
    connection: Connection, first: date, last: date, athletes: Iterable[bytes] | None = None
) -> Iterator[RunLine]:
    """The runs that began on these local days, the earliest first; of everybody, or of these rows."""
    ids = None if athletes is None else tuple(athletes)
    whose = "" if ids is None else f"AND rc.athlete_id IN ({marks(len(ids))})"
    found = connection.exec_driver_sql(_RUNS.format(whose=whose), (*span(first, last), *(ids or ())))
    for row in found:
        line = _line(tuple(row))
        if first <= line.local.date() <= last:
            yield line


def load_days(connection: Connection, first: date, last: date) -> Iterator[tuple[bytes, date, float | None]]:
    """By athlete's row the local day and the load in AU of every run of these local days; None is unknown."""
    for athlete, at, zone, rpe, elapsed in connection.exec_driver_sql(_LOADS, span(first, last)):
        day = local(at, zone).date()
        if first <= day <= last:
            yield athlete, day, session_load(rpe, elapsed_minutes(elapsed))


def part_totals(
    connection: Connection, first: date, last: date, athletes: Iterable[bytes]
) -> dict[str, list[PartTotals]]:
    """By run what was asked for and done, by stage, exercise and side in the order of the plan."""
    ids = tuple(athletes)
    place = PLACE.format(run="bout_record.run_id", bout="bout")
    query = _PARTS.format(athletes=marks(len(ids)), place=place)
    found: dict[str, list[PartTotals]] = {}
    for row in connection.exec_driver_sql(query, (*span(first, last), *ids)):
        run_id, stage, kind, exercise, side, landings, *sums = row
        part = PartTotals(stage, StageKind(kind), exercise, Side(side), _totals(sums), bool(landings))
        found.setdefault(text_of(run_id), []).append(part)
    return found


def added(parts: Iterable[PartTotals]) -> Totals | None:
    """The totals of a whole session; None where nothing was asked for."""
    each = [part.totals for part in parts]
    if not each:
        return None
    return Totals(
        sum(part.prescribed for part in each),
        sum(part.met for part in each),
        sum(part.done for part in each),
        _sum_all(part.clean for part in each),
        _sum_all(part.missed for part in each),
        sum(part.tempo_known for part in each),
        sum(part.tempo_kept for part in each),
        _sum_all(part.contacts for part in each),
        _sum_known(part.tut_ms for part in each),
        _sum_known(part.volume_kg for part in each),
        all(part.volume_complete for part in each),
    )


def marks(count: int) -> str:
    """So many places of a statement."""
    return ", ".join("?" * count)


def text_of(name: bytes) -> str:
    """The UUID of a row as text."""
    digits = name.hex()
    return f"{digits[:8]}-{digits[8:12]}-{digits[12:16]}-{digits[16:20]}-{digits[20:]}"


def local(at: int, zone: str) -> datetime:
    """A moment in microseconds since 1970, by the clock of a place."""
    return utc(at).astimezone(zone_of(zone))


def utc(at: int) -> datetime:
    """A moment in microseconds since 1970, in UTC."""
    return _EPOCH + timedelta(microseconds=at)


@lru_cache(64)
def zone_of(name: str) -> tzinfo:
    """The time zone of a name, UTC where there is none."""
    return known_zone(name)


def _line(row: tuple[Any, ...]) -> RunLine:
    run_id, athlete, at, zone, outcome, elapsed, rpe, pain, met, done, known, kept, corrected, title = row[
        :14
    ]
    low, imported = row[14:]
    totals = None
    if low and not imported:
        totals = Totals(low, met or 0, done or 0, None, None, known or 0, kept or 0)
    return RunLine(
        text_of(run_id),
        athlete,
        local(at, zone),
        outcome is not None,
        elapsed_minutes(elapsed),
        rpe,
        pain,
        totals,
        frozenset(corrected.split(",")) if corrected else frozenset(),
        title,
        bool(imported),
    )


def _totals(sums: list[Any]) -> Totals:
    low, met, done, clean, missed, counted, known, kept, contacts, tut, volume, unknown_loads = sums
    by_word_alone = done > 0 and not counted and not missed
    return Totals(
        low,
        met,
        done,
        None if by_word_alone else clean or 0,
        None if by_word_alone else missed or 0,
        known,
        kept,
        contacts,
        tut,
        volume,
        not unknown_loads,
    )


def _sum_all(values: Iterable[int | None]) -> int | None:
    """The sum, None as soon as one is unknown."""
    all_values = list(values)
    known = [value for value in all_values if value is not None]
    return sum(known) if len(known) == len(all_values) else None


def _sum_known(values: Iterable[Any]) -> Any:  # noqa: ANN401 - whole numbers or others
    """The sum of what is known, None where nothing is."""
    known = [value for value in values if value is not None]
    return sum(known) if known else None
