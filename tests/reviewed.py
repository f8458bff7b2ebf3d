"""An invented athlete's record as it is looked back on, for tests: one with what matters set."""

from collections.abc import Iterable
from datetime import UTC, date, datetime, timedelta
from typing import Any

from app.domain.keeping import Result
from app.domain.plan import Side, StageKind
from app.domain.planned import DueSession, DueState, Occurrence, PlannedSession
from app.domain.reviewed import AthleteRecord, PartTotals, ReviewedSession, Totals
from app.domain.tried import Tried

MONDAY = date(2026, 11, 16)
TODAY = date(2026, 11, 23)


def totals(**changes: Any) -> Totals:  # noqa: ANN401 - whatever totals hold
    """90 of 100 reps met and two more, 88 of them clean; 80 of 92 kept the tempo."""
    values: dict[str, Any] = {
        "prescribed": 100,
        "met": 90,
        "done": 92,
        "clean": 88,
        "missed": 8,
        "tempo_known": 92,
        "tempo_kept": 80,
        "contacts": 24,
        "tut_ms": 368_000,
        "volume_kg": 460.0,
        "volume_complete": True,
    }
    return Totals(**(values | changes))


def part(side: Side = Side.LEFT, **changes: Any) -> PartTotals:  # noqa: ANN401 - whatever a part holds
    """Drop landings of one side."""
    values: dict[str, Any] = {
        "stage": "Landing",
        "kind": StageKind.REACTIVE,
        "exercise": "Drop landing",
        "side": side,
        "totals": totals(),
        "landings": True,
    }
    return PartTotals(**(values | changes))


def session(day: date = MONDAY, **changes: Any) -> ReviewedSession:  # noqa: ANN401 - whatever a session holds
    """A session of 40 min that ended, rated 5, pain 1 and 0 on the morning after."""
    values: dict[str, Any] = {
        "run_id": f"run-{day}",
        "day": day,
        "plan_title": "Landing control, week 3",
        "ended": True,
        "minutes": 40.0,
        "rpe": 5,
        "pain": 1,
        "pain_next_morning": 0,
        "next_morning_asked": True,
        "totals": totals(),
    }
    return ReviewedSession(**(values | changes))


def due(day: date, state: DueState) -> DueSession:
    """A planned session and how it stands."""
    planned = PlannedSession(
        f"planned-{day}", "Hugo", "Landing control", day, datetime(2026, 9, 1, tzinfo=UTC), "UTC"
    )
    return DueSession(Occurrence(planned, day, day), state, f"run-{day}" if state is DueState.DONE else None)


def result(value: float | str, test: str = "single_hop", **changes: Any) -> Result:  # noqa: ANN401 - see above
    """One try at a test, in cm on the left side; `day` says on which day."""
    day: date = changes.pop("day", MONDAY)
    values: dict[str, Any] = {
        "id": f"result-{test}-{day}-{value}",
        "athlete": "Hugo",
        "test": test,
        "value": str(value),
        "unit": "cm",
        "at": datetime(day.year, day.month, day.day, 12, tzinfo=UTC),
        "zone": "UTC",
        "side": Side.LEFT,
    }
    return Result(**(values | changes))


def lights(results: Iterable[Result]) -> tuple[Tried, ...]:
    """Results as the tries that tell how far a test can be trusted."""
    return tuple(
        Tried(
            each.athlete.encode(),
            each.test,
            each.side,
            each.at.date(),
            each.attempt,
            float(each.value),
            each.unit,
        )
        for each in results
    )


def record(**changes: Any) -> AthleteRecord:  # noqa: ANN401 - whatever a record holds
    """A week of three sessions, known since well before, looked at on the Monday after."""
    values: dict[str, Any] = {
        "athlete": "Hugo",
        "first": MONDAY,
        "last": MONDAY + timedelta(days=6),
        "today": TODAY,
        "since": date(2026, 9, 1),
        "sessions": tuple(session(MONDAY + timedelta(days=number)) for number in (0, 2, 4)),
    }
    return AthleteRecord(**(values | changes))
