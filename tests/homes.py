"""A first page with everything on it."""

from datetime import UTC, datetime, time, timedelta
from pathlib import Path

from app import wiring
from app.domain.squad import LastTrained, OwedKind, OwedRating
from app.views.home.people import everybody
from app.views.home.plans import PlanShelf, Today, offered_plans
from app.views.home.state import HomeState

NOW = datetime(2026, 3, 4, 17, 0, tzinfo=UTC)
DEMO = tuple(wiring.demo_folder() / name for name in ("shoulder_rotators.toml", "landing_control.toml"))


def owed_rating(kind: OwedKind, athlete: str, hours: int = 20) -> OwedRating:
    """An answer that is owed since a session that ended so many hours ago."""
    ended = NOW - timedelta(hours=hours)
    return OwedRating(kind, f"run of {athlete}", athlete, "Landing control", ended.date(), ended, "UTC")


def home_state(handed: Path | None = None, athlete: str = "Hugo") -> HomeState:
    """Everybody of the demo club, plans of every kind, and answers owed."""
    names = [each.name for each in wiring.read_athletes(wiring.demo_folder() / "roster.toml")]
    trained = [LastTrained(name, NOW - timedelta(days=2 * place)) for place, name in enumerate(names[:6])]
    today = [Today("Hugo", "Shoulder rotators, week 2", DEMO[0], time(18), done=False)]
    plans = offered_plans(PlanShelf(wiring.read_plan), today, DEMO[1:], DEMO, handed=handed)
    owed = (
        owed_rating(OwedKind.NEXT_MORNING_PAIN, "Hugo"),
        owed_rating(OwedKind.SESSION_RPE, "Ines"),
    )
    return HomeState(NOW.date(), everybody(names, trained), athlete, plans, DEMO[0], owed)
