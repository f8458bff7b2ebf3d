"""Figures of a season handed on: packing, taking in, exporting, erasing."""

import time
from pathlib import Path

import pytest

from app.__main__ import main
from tests.laptops import Laptop

pytestmark = pytest.mark.bench


def seconds(*words: str) -> float:
    began = time.perf_counter()
    status = main(words)
    took = time.perf_counter() - began
    assert status == 0
    return took


def test_a_season_of_twelve_athletes_handed_on(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    record, desk, again = (str(tmp_path / name) for name in ("season.db", "desk.db", "again.db"))
    pack, folder = str(tmp_path / "all.pwpack"), str(tmp_path / "out")
    main(["demo", "--database", record])
    timed = {
        "pack": seconds("pack", "-o", pack, "--database", record),
        "unpack": seconds("unpack", pack, "--database", desk),
        "unpack again": seconds("unpack", pack, "--database", desk),
        "export": seconds("export", "--to", folder, "--database", record),
        "import": seconds("import", folder, "--database", again),
        "erase": seconds("erase", "--athlete", "Hugo", "--yes", "--database", desk),
    }
    with Laptop(Path(record), 1).open() as opened:
        runs = opened.queries.run_summaries()
    capsys.readouterr()
    with capsys.disabled():
        reps = sum(run.reps_done for run in runs)
        sizes = f"record {Path(record).stat().st_size >> 10} KiB, pack {Path(pack).stat().st_size >> 10} KiB"
        print(f"\n{len(runs)} runs, {reps} reps; {sizes}")
        print(", ".join(f"{name} {took:.2f} s" for name, took in timed.items()))
