"""Tests of the invented club: a hop on either leg, jumps, landings, balance and a lift, every few weeks."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from random import Random
from zoneinfo import ZoneInfo

from app.analysis.tests_catalog import field_test
from app.cli.demo_season import AFTER_LANDING, SORE, ZONE, Season, present
from app.domain.keeping import Result
from app.domain.plan import Side
from app.store.identity import RANDOM_BYTES, uuid7

AT = time(17, 5)
EVERY_WEEKS = 3
TESTED_ON = 5
"""Saturdays, apart from training."""
NOTE = "invented"
LIFT = "Split squat"
WEAKER = {SORE: ("external_rotation", Side.RIGHT, 0.8), AFTER_LANDING: ("single_hop", Side.LEFT, 0.86)}
"""Whose side does worse in which test, and by how much."""
SIDED = (("single_hop", 142.0, 3.0, 3), ("external_rotation", 118.0, 3.5, 3))
"""A test on either side: what it comes to about, how much a try strays, and how many tries there are."""
Tries = Iterator[tuple[str, Side, tuple[str, ...], int]]
"""What a try is kept under, on which side, what is kept of it in order, and its number."""


def tests(season: Season) -> Iterator[Result]:
    """The tests of everybody on each of the club's days of testing, the first in the first week."""
    first = season.until - timedelta(days=7 * season.weeks - 1)
    last = max(1, 7 * season.weeks - 1)
    for day in range(7 * season.weeks):
        on = first + timedelta(days=day)
        if on.weekday() != TESTED_ON or (day // 7) % EVERY_WEEKS or season.is_free(day // 7):
            continue
        for athlete in season.athletes:
            if present(athlete.name, day / last):
                yield from _of_one(athlete.name, on, day / last)


def _of_one(name: str, on: date, gone: float) -> Iterator[Result]:
    local = datetime.combine(on, AT, ZoneInfo(ZONE))
    at = local.astimezone(UTC)
    own = Random(f"strength of {name}")  # noqa: S311 - an invention, no secret
    build = own.uniform(0.86, 1.14)
    chance = Random(f"tests {on} {name}")  # noqa: S311 - an invention, no secret
    for key, side, values, attempt in (
        *_sided(name, build, gone, chance),
        *_others(build, own.gauss(0, 1), gone, chance),
    ):
        test = field_test(key)
        assert test is not None  # noqa: S101 - named here
        kept = ((part.key, part.unit) for part in test.parts) if len(values) > 1 else ((key, test.unit),)
        for (under, unit), value in zip(kept, values, strict=True):
            made = Random(f"test {under} {side} {attempt} {on} {name}")  # noqa: S311 - an invention
            result = str(uuid7(int(at.timestamp() * 1000), made.randbytes(RANDOM_BYTES)))
            yield Result(result, name, under, value, unit, at, ZONE, side, attempt, None, NOTE)


def _sided(name: str, build: float, gone: float, chance: Random) -> Tries:
    lags = WEAKER.get(name)
    for key, about, strays, tries in SIDED:
        for side in (Side.LEFT, Side.RIGHT):
            share = lags[2] if lags is not None and lags[:2] == (key, side) else 1.0
            for attempt in range(1, tries + 1):
                value = about * build * share * (1 + 0.05 * gone) + chance.gauss(0, strays)
                yield key, side, (f"{value:.0f}",), attempt
    for side in (Side.LEFT, Side.RIGHT):
        inside = min(10, max(0, round(chance.gauss(6 + 3 * gone, 1.2))))
        yield "jumps_in_square", side, (str(inside), str(10 - inside)), 1


def _others(build: float, clumsy: float, gone: float, chance: Random) -> Tries:
    for attempt in range(1, 4):
        contact = round(chance.gauss(225 + 15 * clumsy - 20 * gone, 9))
        flight = round(chance.gauss(470 * (1 + 0.04 * gone) * build**0.5, 10))
        yield "drop_jump_flight", Side.BOTH, (str(contact), str(flight)), attempt
        errors = max(0, round(chance.gauss(6.5 + 1.5 * clumsy - 2 * gone, 0.7)))
        yield "landing_errors", Side.BOTH, (str(errors),), attempt
    stances = (0, *(max(0, round(chance.gauss(about, 1))) for about in (2, 1)))
    foam = tuple(max(0, round(chance.gauss(about - gone, 1.2))) for about in (1, 6, 4))
    yield "balance_errors", Side.BOTH, tuple(map(str, (*stances, *foam))), 1
    load = 2.5 * round(build * (40 + 8 * gone) / 2.5)
    yield f"one_rep_max_epley:{LIFT}", Side.BOTH, (f"{load:g}", str(chance.randint(5, 8))), 1
