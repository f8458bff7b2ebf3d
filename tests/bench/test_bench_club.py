"""The squad's table and an athlete's page over a club of 1, 3 and 10 years."""

import gc
import statistics
import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from app.analysis.reliability import trusts_of
from app.store.database import open_database
from tests.bench.club import BOUTS, LAST_MONDAY, REPS, athlete_named, write_club

pytestmark = pytest.mark.bench

TODAY = LAST_MONDAY + timedelta(days=6)
NOW = datetime(2026, 11, 22, 18, tzinfo=UTC)


def spread(work: Callable[[], object], times: int = 5) -> tuple[float, float]:
    """Median and worst of some runs, in ms."""
    took = []
    for _ in range(times):
        began = time.perf_counter()
        work()
        took.append((time.perf_counter() - began) * 1000)
    return statistics.median(took), max(took)


@pytest.mark.parametrize("years", [1, 3, 10])
def test_the_review_costs_by_the_window_and_not_by_the_history(years: int, tmp_path: Path) -> None:
    path = tmp_path / "club.db"
    runs = write_club(path, years)
    print(f"\n{years} years: {runs} runs, {runs * BOUTS * REPS / 1e6:.0f} million reps, ", end="")
    print(f"{path.stat().st_size / 1e6:.0f} MB")
    gc.freeze()  # as the program does after its start
    with open_database(path) as database:
        first, year_ago = TODAY - timedelta(weeks=12), TODAY - timedelta(weeks=52)
        name = athlete_named(150)
        for title, work in (
            ("squad, 8 weeks", lambda: database.reviewing.squad(NOW, TODAY)),
            ("athlete, 12 weeks", lambda: database.reviewing.athlete(name, first, TODAY, TODAY)),
            ("athlete, a year", lambda: database.reviewing.athlete(name, year_ago, TODAY, TODAY)),
            ("error of tests", lambda: trusts_of(database.reviewing.first_two_tries(TODAY))),
            ("owed", lambda: database.reviewing.owed(NOW)),
            ("last trained", database.reviewing.last_trained),
            ("recent plans", database.reviewing.recent_plans),
        ):
            median, worst = spread(work)
            print(f"  {title}: median {median:.0f} ms, worst {worst:.0f} ms")
        assert len(database.reviewing.squad(NOW, TODAY)) == 300
        assert len(database.reviewing.athlete(name, first, TODAY, TODAY).sessions) == 48
    gc.unfreeze()
    path.unlink()
