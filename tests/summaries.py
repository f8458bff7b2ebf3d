"""Summaries of runs for tests: one with what matters set, and a season of a whole invented squad."""

import random
from datetime import UTC, datetime, timedelta
from typing import Any

from app.domain.records import RunOutcome, RunSummary

ZONES = (
    "UTC",
    "Europe/Lisbon",
    "Europe/Copenhagen",
    "America/St_Johns",
    "Pacific/Auckland",
    "Asia/Kathmandu",
)
SQUAD = (
    "Anouk",
    "Bram",
    "Chidi",
    "Dagny",
    "Esra",
    "Farid",
    "Greta",
    "Hugo",
    "Ines",
    "Jarno",
    "Kaya",
    "Lotte",
)
PLANS = ("Shoulder rotators, week {}", "Landing control, week {}")
SEASON_BEGINS = datetime(2026, 8, 31, tzinfo=UTC)


def summary(**changes: Any) -> RunSummary:  # noqa: ANN401 - whatever a summary holds
    """A finished run of 40 min: 90 of 100 reps, rated 5, pain 1; `changes` say what differs."""
    values: dict[str, Any] = {
        "run_id": "0190b5a0-0000-7000-8000-000000000001",
        "athlete": "Hugo",
        "plan_title": "Landing control, week 3",
        "started_at": datetime(2026, 11, 21, 17, 5, tzinfo=UTC),
        "zone": "Europe/Copenhagen",
        "invented": True,
        "outcome": RunOutcome.FINISHED,
        "elapsed_ms": 40 * 60_000,
        "reps_prescribed": 100,
        "reps_met": 90,
        "reps_done": 92,
        "session_rpe": 5,
        "pain": 1,
    }
    return RunSummary(**(values | changes))


def season(
    weeks: int = 12, *, a_week: int = 3, seed: int = 7, squad: tuple[str, ...] = SQUAD
) -> tuple[RunSummary, ...]:
    """Every run of a squad over some weeks, newest first, the same for the same seed.

    Adherence climbs, the sixth week is off, some sessions are abandoned, some not rated, one has not ended.
    """
    chance = random.Random(seed)
    runs = [
        _session(chance, person, week, day)
        for person in range(len(squad))
        for week in range(weeks)
        if week % 13 != 5
        for day in sorted(chance.sample(range(7), a_week))
        if chance.random() > 0.06
    ]
    named = [
        summary(**(values | {"athlete": squad[values.pop("person")], "run_id": f"run-{number:06d}"}))
        for number, values in enumerate(runs)
    ]
    return tuple(sorted(named, key=lambda run: run.started_at, reverse=True))


def _session(chance: random.Random, person: int, week: int, day: int) -> dict[str, Any]:
    prescribed = 120 + 12 * min(week, 10)
    abandoned = chance.random() < 0.07
    skill = min(0.60 + 0.035 * week + 0.02 * (person % 4) + chance.gauss(0, 0.05), 1.0)
    met = round(prescribed * max(skill * (chance.uniform(0.3, 0.8) if abandoned else 1.0), 0.1))
    return {
        "person": person,
        "plan_title": PLANS[(person + day) % 2].format(week + 1),
        "started_at": SEASON_BEGINS
        + timedelta(
            weeks=week, days=day, hours=chance.choice((6, 16, 17, 18)), minutes=chance.randrange(0, 60, 5)
        ),
        "outcome": RunOutcome.ABANDONED if abandoned else RunOutcome.FINISHED,
        "elapsed_ms": round((24 + 1.6 * week + chance.gauss(0, 3)) * 60_000 * (0.5 if abandoned else 1.0)),
        "reps_prescribed": prescribed,
        "reps_met": met,
        "reps_done": met + chance.choice((0, 0, 0, 0, 3, 6)),
        "session_rpe": None
        if chance.random() < 0.08
        else max(min(round(3 + 0.3 * week + chance.gauss(0, 1.1)), 10), 1),
        "pain": None
        if chance.random() < 0.1
        else max(min(round(chance.gauss(1.2, 1.4)), 10), 0) + (5 if chance.random() < 0.01 else 0),
    }
