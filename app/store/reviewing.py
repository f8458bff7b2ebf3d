"""What the review asks of the record: the squad, one athlete's days, and the answers that are owed."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import Connection

from app.analysis.tests_catalog import keys_of, tried_tests
from app.domain.plan import Side
from app.domain.planned import DoneRun, DueSession, occurrences, settle
from app.domain.reviewed import AthleteRecord, ReviewedSession
from app.domain.squad import LastTrained, OwedRating, RecentPlan, SquadMember
from app.domain.tried import Tried
from app.store.exercise_rows import last_exercises
from app.store.link import Link
from app.store.owed import owed_at
from app.store.planned import Planning, read_planning
from app.store.review_answers import mornings, readiness_between
from app.store.review_rows import RunLine, added, load_days, local, part_totals, run_lines
from app.store.tolerance import tolerance_of
from app.store.tries import first_two_tries, results_of_sides, results_until

BASELINE = timedelta(days=28)
"""So far back before the first day the answers on readiness reach, for the athlete's own baseline."""
TESTED = timedelta(weeks=26)
"""So far back the tries reach that the squad is looked at with, and that a test's error is told by."""
_RECENT_RUNS = 500

_PEOPLE = """
    SELECT id, name,
        (SELECT max(started_at) FROM run_course WHERE athlete_id = athlete.id),
        (SELECT zone FROM run_course WHERE athlete_id = athlete.id ORDER BY started_at DESC LIMIT 1),
        (SELECT min(started_at) FROM run_course WHERE athlete_id = athlete.id),
        (SELECT zone FROM run_course WHERE athlete_id = athlete.id ORDER BY started_at LIMIT 1),
        (SELECT min(at) FROM readiness WHERE athlete_id = athlete.id),
        EXISTS (SELECT 1 FROM planned WHERE athlete_id = athlete.id),
        reference_side
    FROM athlete
"""
_PLANS = """
    SELECT plan.title, plan.text, max(recent.started_at) AS latest FROM (
        SELECT run_id, started_at FROM run_course ORDER BY started_at DESC LIMIT ?
    ) AS recent JOIN run ON run.id = recent.run_id JOIN plan ON plan.hash = run.plan_hash
    GROUP BY plan.title ORDER BY latest DESC, plan.title LIMIT ?
"""


class Reviewing:
    """Reads for the review. Every method raises StoreError when the record cannot be read."""

    def __init__(self, link: Link) -> None:
        self._link = link

    def squad(self, now: datetime, today: date, weeks: int = 4, before: int = 4) -> tuple[SquadMember, ...]:
        """Everybody of the record, by name: `weeks` calendar weeks that end with the one of `today`.

        Of so many weeks `before` them the loads alone. `today` is the local day of the moment `now`. Athletes
        of one name are one.
        """
        monday = today - timedelta(days=today.weekday())
        first, last = monday - timedelta(weeks=weeks - 1), monday + timedelta(days=6)
        earlier = first - timedelta(weeks=before), first - timedelta(days=1)
        with self._link.reading() as connection:
            people = _people(connection)
            names = {row: name for name, found in people.items() for row, *_ in found}
            lines = _by_name(run_lines(connection, first, last), names)
            loads: defaultdict[str, list[tuple[date, float | None]]] = defaultdict(list)
            for row, day, load in load_days(connection, *earlier):
                loads[names[row]].append((day, load))
            after = mornings(connection, self._link.path, first, last)
            readiness = readiness_between(connection, self._link.path, today - BASELINE, last)
            planning = _planning_by_name(read_planning(connection, days=(first, last)))
            owed = _owed_by_name(owed_at(connection, now))
            results = results_of_sides(connection, self._link.path, today - TESTED, last, names)
        members = []
        for name, rows in people.items():
            mine = lines.get(name, [])
            record = AthleteRecord(
                name,
                first,
                last,
                today,
                _since(rows),
                tuple(_session(line, after) for line in mine),
                _due(name, planning.get(name, ((), ())), mine, first, last, today),
                tuple(readiness.get(name, ())),
                tuple(results.get(name, ())),
                _reference(rows),
            )
            members.append(
                SquadMember(record, _last(rows), tuple(owed.get(name, ())), tuple(loads.get(name, ())))
            )
        return tuple(members)

    def athlete(self, athlete: str, first: date, last: date, today: date) -> AthleteRecord:
        """One athlete from one local day to another, both included, with the parts of every session."""
        with self._link.reading() as connection:
            rows = _people(connection, athlete).get(athlete, [])
            ids = [row for row, *_ in rows]
            lines = list(run_lines(connection, first, last, ids))
            parts = part_totals(connection, first, last, ids)
            path = self._link.path
            after = mornings(connection, path, first, last, ids)
            readiness = readiness_between(connection, path, first - BASELINE, last, athlete)
            results = results_until(connection, path, athlete, last)
            tests = tried_tests(results)
            keys = {key for test in tests for key in keys_of(test)}
            tries = first_two_tries(connection, path, last - TESTED, last, keys) if keys else ()
            tolerance = tolerance_of(connection)
            planning = read_planning(connection, athlete, (first, last))
            exercises = last_exercises(connection, first, last, ids) if lines else ()
        return AthleteRecord(
            athlete,
            first,
            last,
            today,
            _since(rows),
            tuple(_session_with_parts(line, after, parts) for line in lines),
            _due(athlete, planning, lines, first, last, today),
            tuple(readiness.get(athlete, ())),
            results,
            _reference(rows),
            tries=tries,
            tolerance=tolerance,
            exercises=exercises,
        )

    def first_two_tries(self, last: date) -> tuple[Tried, ...]:
        """Everybody's first and second tries of the half year that ends with a local day, at most 400 a test.

        The earliest first.
        """
        with self._link.reading() as connection:
            return first_two_tries(connection, self._link.path, last - TESTED, last)

    def owed(self, now: datetime) -> tuple[OwedRating, ...]:
        """The answers that are owed at a moment, the oldest first."""
        with self._link.reading() as connection:
            return tuple(owed_at(connection, now))

    def last_trained(self) -> tuple[LastTrained, ...]:
        """Everybody of the record, who trained last first, then those who never did by name."""
        with self._link.reading() as connection:
            people = _people(connection)
        found = [LastTrained(name, _latest(rows)) for name, rows in people.items()]
        trained = sorted((each for each in found if each.at is not None), key=_trained_at, reverse=True)
        return (*trained, *(each for each in found if each.at is None))

    def recent_plans(self, count: int = 12) -> tuple[RecentPlan, ...]:
        """The plans that were carried out last, the latest first, each title once."""
        with self._link.reading() as connection:
            found = connection.exec_driver_sql(_PLANS, (_RECENT_RUNS, count)).all()
        return tuple(RecentPlan(title, text, local(at, "UTC")) for title, text, at in found)


_Person = tuple[Any, ...]


def _people(connection: Connection, name: str | None = None) -> dict[str, list[_Person]]:
    """The rows of people by what they are called, in the order of the alphabet."""
    query, of = (_PEOPLE, ()) if name is None else (f"{_PEOPLE} WHERE name = ?", (name,))
    found: defaultdict[str, list[_Person]] = defaultdict(list)
    rows = [tuple(row) for row in connection.exec_driver_sql(query, of)]
    for row, called, *rest in sorted(rows, key=lambda row: (row[1].casefold(), row[1], row[0])):
        found[called].append((row, *rest))
    return dict(found)


def _latest(rows: Iterable[_Person]) -> datetime | None:
    return max((local(row[1], row[2]) for row in rows if row[1] is not None), default=None)


def _last(rows: Iterable[_Person]) -> date | None:
    latest = _latest(rows)
    return None if latest is None else latest.date()


def _since(rows: Iterable[_Person]) -> date | None:
    """The first day of which the record knows anything of an athlete."""
    known = [local(row[3], row[4]).date() for row in rows if row[3] is not None]
    known += [local(row[5], row[2] or "UTC").date() for row in rows if row[5] is not None]
    return min(known, default=None)


def _reference(rows: Iterable[_Person]) -> Side | None:
    """The reference side on which those of one name agree that have any; None where nobody chose one."""
    chosen = {row[7] for row in rows if row[7] is not None}
    return Side(chosen.pop()) if len(chosen) == 1 else None


def _trained_at(each: LastTrained) -> float:
    return 0.0 if each.at is None else each.at.timestamp()


def _by_name(lines: Iterable[RunLine], names: Mapping[bytes, str]) -> dict[str, list[RunLine]]:
    found: defaultdict[str, list[RunLine]] = defaultdict(list)
    for line in lines:
        found[names[line.athlete_id]].append(line)
    return found


def _planning_by_name(planning: Planning) -> dict[str, Planning]:
    sessions, changes = defaultdict(list), defaultdict(list)
    for session in planning[0]:
        sessions[session.athlete].append(session)
    for change in planning[1]:
        changes[change.athlete].append(change)
    return {name: (tuple(mine), tuple(changes[name])) for name, mine in sessions.items()}


def _owed_by_name(owed: Iterable[OwedRating]) -> dict[str, list[OwedRating]]:
    found: defaultdict[str, list[OwedRating]] = defaultdict(list)
    for each in owed:
        found[each.athlete].append(each)
    return found


def _due(
    athlete: str, planning: Planning, lines: Iterable[RunLine], first: date, last: date, today: date
) -> tuple[DueSession, ...]:
    runs = [DoneRun(line.run_id, athlete, line.plan_title, line.local, line.local.date()) for line in lines]
    return settle(occurrences(*planning, first, last), runs, today)[0]


def _session_with_parts(
    line: RunLine, after: Mapping[str, int | None], parts: Mapping[str, list[Any]]
) -> ReviewedSession:
    mine = tuple(parts.get(line.run_id, ()))
    return _session(line, after, mine)


def _session(line: RunLine, after: Mapping[str, int | None], parts: tuple[Any, ...] = ()) -> ReviewedSession:
    return ReviewedSession(
        line.run_id,
        line.local.date(),
        line.plan_title,
        line.ended,
        line.minutes,
        line.rpe,
        line.pain,
        after.get(line.run_id),
        line.run_id in after,
        added(parts) if parts and not line.imported else line.totals,
        parts,
        None if line.imported else line.local.hour * 60 + line.local.minute,
        line.imported,
        line.corrected,
    )
