"""Compiled timelines and sheets, kept as text that was read line by line against the rules of the plan file.

When a change is meant, write the new text with `python -m app timeline PLAN --format csv` (and without the
format for the sheet) and read the difference.
"""

from pathlib import Path

import pytest

from app.domain.compiler import compile_timeline
from app.planfile.reader import read_plan
from app.reports.timeline_rows import timeline_csv
from app.reports.timeline_sheet import timeline_text

PLANS = sorted((Path(__file__).parent / "plans").glob("*.toml"))
KEPT = Path(__file__).parent / "timelines"


@pytest.mark.parametrize("path", PLANS, ids=lambda path: path.stem)
def test_the_rows_are_the_kept_ones(path: Path) -> None:
    kept = (KEPT / f"{path.stem}.csv").read_text(encoding="utf-8")
    assert timeline_csv(compile_timeline(read_plan(path))).replace("\r\n", "\n") == kept


@pytest.mark.parametrize("path", PLANS, ids=lambda path: path.stem)
def test_the_sheet_is_the_kept_one(path: Path) -> None:
    kept = (KEPT / f"{path.stem}.txt").read_text(encoding="utf-8")
    assert timeline_text(compile_timeline(read_plan(path))) == kept


def test_nothing_is_kept_without_its_plan() -> None:
    assert {path.stem for path in KEPT.iterdir()} == {path.stem for path in PLANS}
