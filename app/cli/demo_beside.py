"""What is kept beside the invented runs: what was planned, how they felt before and the next morning."""

from collections.abc import Iterable, Iterator
from datetime import UTC, date, datetime, time, timedelta
from random import Random
from zoneinfo import ZoneInfo

from app.cli.demo_season import (
    AFTER_LANDING,
    NEWCOMER,
    SORE,
    WEEKDAYS,
    ZONE,
    InventedRun,
    Season,
    habits_of,
    present,
)
from app.domain.keeping import Rating, RatingKind
from app.domain.plan import Side
from app.domain.planned import ChangeKind, PlannedChange, PlannedSession
from app.domain.readiness import Readiness
from app.store.identity import RANDOM_BYTES, uuid7

EVENING = time(17, 30)
PLACES = {SORE: ("shoulder", Side.RIGHT), AFTER_LANDING: ("knee", Side.LEFT)}
LESS_BEFORE = {SORE: 1, AFTER_LANDING: 3}
"""By how much pain is less before a session than at its worst within it."""
AHEAD = 1
"""So many weeks after the season are planned already."""


def planned(season: Season) -> Iterator[PlannedSession]:
    """A session for everybody on each of the club's days, and on those of the week to come."""
    first = season.until - timedelta(days=7 * season.weeks - 1)
    last = max(1, 7 * season.weeks - 1)
    made = datetime.combine(first - timedelta(days=3), time(10), UTC)
    for day in range(7 * (season.weeks + AHEAD)):
        on = first + timedelta(days=day)
        if on.weekday() not in WEEKDAYS:
            continue
        title = season.plan_of(on, day)[0].title
        for athlete in season.athletes:
            if athlete.name == NEWCOMER and not present(NEWCOMER, day / last):
                continue
            name = _name(made, f"planned {on} {athlete.name}")
            yield PlannedSession(name, athlete.name, title, on, made, ZONE, EVENING)


def excuses(season: Season, sessions: Iterable[PlannedSession]) -> Iterator[PlannedChange]:
    """The week in which the hall was closed, and the days on which a shoulder was rested."""
    first = season.until - timedelta(days=7 * season.weeks - 1)
    last = max(1, 7 * season.weeks - 1)
    for session in sessions:
        day = (session.day - first).days
        rested = session.athlete == SORE and day <= last and not present(SORE, day / last)
        reason = "hall closed" if season.is_free(day // 7) else "shoulder rested" if rested else None
        if reason is not None:
            name = _name(session.at, f"excused {session.id}")
            yield PlannedChange(
                name,
                session.id,
                session.athlete,
                ChangeKind.EXCUSED,
                session.day,
                session.at,
                ZONE,
                None,
                reason,
            )


def before(run: InventedRun) -> Readiness | None:
    """What the athlete said of themselves before a run; None where they said nothing."""
    header = run.header
    chance = Random(f"before {header.run_id}")  # noqa: S311 - an invention, no secret
    if chance.random() > habits_of(header.athlete).answers:
        return None
    sleep, fatigue, stress, soreness = (min(7, max(1, round(chance.gauss(3, 1)))) for _ in range(4))
    pain = max(run.day.pain.values(), default=0)
    hurts = header.athlete in PLACES and pain > 1
    place, side = PLACES[header.athlete] if hurts else (None, None)
    return Readiness(
        _name(header.started_at, f"before {header.run_id}"),
        header.athlete,
        header.started_at - timedelta(minutes=4),
        ZONE,
        sleep,
        fatigue,
        stress,
        soreness,
        max(0, pain - LESS_BEFORE[header.athlete]) if hurts else 0,
        place,
        side,
        changed=False,
        red_flag=False,
        run_id=header.run_id,
    )


def morning_after(run: InventedRun, until: date) -> Rating | None:
    """The pain of the next morning; None where nobody was asked, and for the last day of the season."""
    header = run.header
    chance = Random(f"after {header.run_id}")  # noqa: S311 - an invention, no secret
    local = header.started_at.astimezone(ZoneInfo(ZONE))
    if local.date() >= until or chance.random() > habits_of(header.athlete).answers:
        return None
    pain = max(run.day.pain.values(), default=0)
    at = datetime.combine(local.date() + timedelta(days=1), time(7, 40), ZoneInfo(ZONE)).astimezone(UTC)
    lasting = header.athlete in PLACES and pain
    value = max(0, pain - 1) if lasting else chance.choice((0, 0, 0, 1)) if pain else 0
    return Rating(
        _name(at, f"after {header.run_id}"), header.run_id, RatingKind.NEXT_MORNING_PAIN, value, at, ZONE
    )


def _name(at: datetime, of: str) -> str:
    chance = Random(of)  # noqa: S311 - an invention, no secret
    return str(uuid7(int(at.timestamp() * 1000), chance.randbytes(RANDOM_BYTES)))
