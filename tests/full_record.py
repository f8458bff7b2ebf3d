"""An invented athlete's record with something of everything in it, for tests."""

from datetime import UTC, datetime, timedelta

from app.analysis.tests_catalog import CATALOGUE
from app.domain.keeping import Result
from app.domain.plan import Side
from app.domain.planned import DueState
from app.domain.reviewed import AthleteRecord
from tests.answered import answers
from tests.reviewed import MONDAY, due, lights, part, record, result, session, totals


def everything() -> list[Result]:
    """A try at every other test of the catalogue, by its value or its parts, with a lift where one is due."""
    found = []
    for test in CATALOGUE:
        own = test.with_lift("Front squat") if test.by_lift else test
        side = Side.LEFT if own.by_side else Side.BOTH
        if own.parts:
            found += [
                result(5 if part.unit == "reps" else part.most // 2, part.key, unit=part.unit, side=side)
                for part in own.parts
            ]
        elif test.key not in ("single_hop", "limb_length") and not test.key.startswith("reach_"):
            found.append(result(test.most // 2, own.key, unit=own.unit, side=side))
    return list({each.id: each for each in found}.values())


def full() -> AthleteRecord:
    """A record with something of everything."""
    parts = (part(Side.LEFT), part(Side.RIGHT, totals=totals(met=60, done=60, clean=50)))
    hops = [
        result(100 + 2 * week, day=MONDAY - timedelta(weeks=week), side=side)
        for week in range(9)
        for side in (Side.LEFT, Side.RIGHT)
    ]
    reaches = [
        result(value, test, side=side)
        for side in (Side.LEFT, Side.RIGHT)
        for test, value in (
            ("reach_anterior", 68),
            ("reach_posteromedial", 96),
            ("reach_posterolateral", 94),
            ("limb_length", 90),
        )
    ]
    return record(
        first=MONDAY - timedelta(weeks=9),
        sessions=tuple(session(MONDAY + timedelta(days=day), parts=parts) for day in (0, 2, 4)),
        due=(due(MONDAY, DueState.DONE), due(MONDAY + timedelta(days=1), DueState.MISSED)),
        readiness=(answers(at=datetime(2026, 11, 16, 9, tzinfo=UTC)),),
        results=(*hops, *reaches, *everything()),
        tries=lights([*hops, *everything(), *everybody()]),
        reference=Side.RIGHT,
        since=MONDAY - timedelta(weeks=9),
    )


def everybody() -> list[Result]:
    """Two hops on a day of each of twelve others."""
    return [
        result(140 + number + attempt * (number % 3), athlete=f"Athlete {number}", attempt=attempt)
        for number in range(12)
        for attempt in (1, 2)
    ]
