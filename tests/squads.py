"""Records of a whole invented squad over a season as they are looked back on, the same for the same seed."""

import random
from datetime import UTC, date, datetime, time, timedelta

from app.domain.keeping import Result
from app.domain.plan import Side, StageKind
from app.domain.planned import DueSession, DueState, Occurrence, PlannedSession
from app.domain.readiness import Readiness
from app.domain.reviewed import AthleteRecord, PartTotals, ReviewedSession, Totals
from app.domain.squad import SquadMember
from tests.exercised import season_of_sets
from tests.summaries import SQUAD

TODAY = date(2026, 11, 23)
ZONE = "Europe/Copenhagen"
PLANS = ("Shoulder rotators", "Landing control")


def season(athlete: str = "Hugo", weeks: int = 12, *, seed: int = 7, today: date = TODAY) -> AthleteRecord:
    """Three sessions a week up to the day before `today`, the fifth week off, some not rated; tests too."""
    chance = random.Random(f"{athlete} {seed}")
    first = today - timedelta(days=today.weekday()) - timedelta(weeks=weeks - 1)
    sessions: list[ReviewedSession] = []
    due: list[DueSession] = []
    for week in range(weeks):
        for number, weekday in enumerate((0, 2, 4)):
            day = first + timedelta(weeks=week, days=weekday)
            done = day < today and week % 13 != 4 and chance.random() > 0.1
            if done:
                sessions.append(_session(athlete, day, week, number, chance))
            excused = "holiday" if week % 13 == 4 else None
            due.append(_due(athlete, day, sessions[-1] if done else None, excused, today))
    return AthleteRecord(
        athlete,
        first,
        today + timedelta(days=6 - today.weekday()),
        today,
        first,
        tuple(sessions),
        tuple(due),
        _readiness(athlete, first, today, chance),
        tuple(_results(athlete, first, weeks, chance)),
        exercises=season_of_sets(today),
    )


def squad(names: tuple[str, ...] = SQUAD, weeks: int = 8, *, seed: int = 7) -> tuple[AthleteRecord, ...]:
    """A record for each of these names."""
    return tuple(season(name, weeks, seed=seed) for name in names)


def nothing(athlete: str = "Greta", *, today: date = TODAY) -> AthleteRecord:
    """Somebody of whom nothing is known."""
    return AthleteRecord(athlete, today - timedelta(weeks=8), today, today)


def unknown(athlete: str = "Esra", *, today: date = TODAY) -> AthleteRecord:
    """Somebody who did one session of which only the day is known."""
    day = today - timedelta(days=3)
    only = ReviewedSession("run-unknown", day, "Landing control", ended=False, imported=True)
    return AthleteRecord(athlete, today - timedelta(weeks=8), today, today, day, (only,))


def _session(athlete: str, day: date, week: int, number: int, chance: random.Random) -> ReviewedSession:
    skill = min(0.62 + 0.03 * week + chance.gauss(0, 0.04), 1.0)
    parts = tuple(
        _part(name, kind, side, week, skill, chance)
        for name, kind in (
            ("External rotation hold", StageKind.STABILITY),
            ("Drop landing", StageKind.REACTIVE),
        )
        for side in (Side.LEFT, Side.RIGHT)
    )
    whole = Totals(
        sum(part.totals.prescribed for part in parts),
        sum(part.totals.met for part in parts),
        sum(part.totals.done for part in parts),
        sum(part.totals.clean or 0 for part in parts),
        0,
        sum(part.totals.tempo_known for part in parts),
        sum(part.totals.tempo_kept for part in parts),
        sum(part.totals.contacts or 0 for part in parts),
        sum(part.totals.tut_ms or 0 for part in parts),
    )
    return ReviewedSession(
        f"run-{athlete}-{day}",
        day,
        f"{PLANS[number % 2]}, week {week + 1}",
        True,
        24 + 1.5 * week + chance.gauss(0, 2),
        None if chance.random() < 0.05 else max(1, min(10, round(3 + 0.25 * week + chance.gauss(0, 1)))),
        None if chance.random() < 0.06 else max(0, min(10, round(chance.gauss(1.4, 1.3)))),
        None if chance.random() < 0.1 else max(0, min(10, round(chance.gauss(0.8, 1)))),
        True,
        whole,
        parts,
        18 * 60 + 5,
    )


def _part(
    name: str, kind: StageKind, side: Side, week: int, skill: float, chance: random.Random
) -> PartTotals:
    asked = 24 + 2 * min(week, 10)
    behind = 0.85 if side is Side.LEFT else 1.0
    met = max(0, min(asked, round(asked * skill * behind + chance.gauss(0, 1))))
    landings = kind is StageKind.REACTIVE
    kept = 0 if landings else round(met * min(skill + 0.05, 1.0))
    clean = round(met * 0.95)
    totals = Totals(
        asked,
        met,
        met,
        clean,
        0,
        0 if landings else met,
        kept,
        met if landings else 0,
        None if landings else met * 3_000,
    )
    return PartTotals("Catch" if landings else "Hold", kind, name, side, totals, landings)


def _due(
    athlete: str, day: date, done: ReviewedSession | None, excused: str | None, today: date
) -> DueSession:
    planned = PlannedSession(
        f"planned-{athlete}-{day}",
        athlete,
        PLANS[day.toordinal() % 2],
        day,
        datetime(2026, 9, 1, tzinfo=UTC),
        ZONE,
        time(18),
    )
    state = DueState.MISSED if day < today else DueState.NOT_DUE
    state = DueState.EXCUSED if excused else state
    state = DueState.DONE if done else state
    return DueSession(Occurrence(planned, day, day, excused), state, done.run_id if done else None)


def _readiness(athlete: str, first: date, today: date, chance: random.Random) -> tuple[Readiness, ...]:
    days = (first + timedelta(days=number) for number in range((today - first).days + 1))
    return tuple(
        Readiness(
            f"ready-{athlete}-{day}",
            athlete,
            datetime(day.year, day.month, day.day, 16, tzinfo=UTC),
            ZONE,
            sleep=chance.randint(2, 5),
            fatigue=chance.randint(2, 5),
            stress=chance.randint(2, 5),
            soreness=chance.randint(2, 5),
            pain=chance.choice((0, 0, 1, None)),
        )
        for day in days
    )


def _results(athlete: str, first: date, weeks: int, chance: random.Random) -> list[Result]:
    found = []
    for week in range(0, weeks, 1 if weeks < 30 else 4):
        day = first + timedelta(weeks=week, days=1)
        for side, least in ((Side.LEFT, 128), (Side.RIGHT, 141)):
            value = least + 1.4 * min(week, 20) + chance.gauss(0, 2)
            found.append(
                Result(
                    f"result-{athlete}-{day}-{side}",
                    athlete,
                    "single_hop",
                    f"{value:.1f}",
                    "cm",
                    datetime(day.year, day.month, day.day, 15, tzinfo=UTC),
                    ZONE,
                    side,
                )
            )
        jump = Result(
            f"jump-{athlete}-{day}",
            athlete,
            "jump_height",
            f"{31 + 0.3 * min(week, 20) + chance.gauss(0, 0.8):.1f}",
            "cm",
            datetime(day.year, day.month, day.day, 15, 30, tzinfo=UTC),
            ZONE,
        )
        found.append(jump)
    return found


def members(records: tuple[AthleteRecord, ...]) -> tuple[SquadMember, ...]:
    """The records as members of the squad."""
    return tuple(
        SquadMember(each, max((session.day for session in each.sessions), default=None)) for each in records
    )
