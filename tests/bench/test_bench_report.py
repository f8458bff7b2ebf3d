"""How long the report of an athlete takes over 1, 3 and 10 years."""

from datetime import timedelta
from itertools import pairwise
from pathlib import Path
from time import perf_counter

import pytest

from app.reports.report_pdf import render_report
from app.reports.reporting import Report, content_of
from app.store.database import open_database
from tests.bench.club import LAST_MONDAY, athlete_named, write_club

pytestmark = pytest.mark.bench
FONTS = Path(__file__).parents[2] / "resources" / "fonts"
TODAY = LAST_MONDAY + timedelta(days=6)


@pytest.mark.parametrize("years", [1, 3, 10])
def test_a_report(years: int, tmp_path: Path) -> None:
    path = tmp_path / "club.db"
    write_club(path, years, athletes=3)
    name, first = athlete_named(1), TODAY - timedelta(days=365 * years)
    with open_database(path) as database:
        for title in ("first", "again"):
            times = [perf_counter()]
            record = database.reviewing.athlete(name, first, TODAY, TODAY)
            times.append(perf_counter())
            content = content_of(Report(record, TODAY))
            times.append(perf_counter())
            rendered = render_report(content, FONTS)
            times.append(perf_counter())
            read, worked, drawn = (1000 * (end - begin) for begin, end in pairwise(times))
            whole = f"{read + worked + drawn:.0f} ms"
            parts = f"read {read:.0f}, worked out {worked:.0f}, drawn {drawn:.0f}"
            print(f"\n{years} years, {len(record.sessions)} sessions, {title}: {whole} ({parts})", end="")
    assert rendered.notice is None
