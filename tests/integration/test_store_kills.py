"""A process that leads sessions is killed again and again: nothing it was told is kept may be missing."""

import json
import subprocess
import sys
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from app.domain.plan import Side
from app.domain.records import BoutBegan, Fact, RepDone, RunBegan, RunHeader
from app.store.database import open_database

ROOT = Path(__file__).parents[2]
WRITER = Path(__file__).with_name("store_writer.py")
KILLS = 25
RUN = "0190163d-8694-739b-aea5-966c26f8ad91"

Killed = tuple[Path, list[dict[str, Any]]]


def kill_leaders(path: Path, kills: int) -> list[dict[str, Any]]:
    """What was found after each kill."""
    done = subprocess.run(
        [sys.executable, str(WRITER), str(path), str(kills)],
        capture_output=True,
        text=True,
        check=False,
        cwd=ROOT,
        env={"PYTHONPATH": str(ROOT), "PATH": "", "HOME": str(path.parent)},
    )
    assert (done.returncode, done.stderr) == (0, "")
    return [json.loads(line) for line in done.stdout.splitlines()]


@pytest.fixture(scope="module")
def killed(tmp_path_factory: pytest.TempPathFactory) -> Killed:
    path = tmp_path_factory.mktemp("killed") / "record.db"
    return path, kill_leaders(path, KILLS)


def test_no_fact_that_was_acknowledged_is_lost(killed: Killed) -> None:
    _, found = killed
    assert len(found) == KILLS
    assert all(after["kept"] for after in found)
    # What was kept and not told of any more, because the kill came between, is one portion of facts.
    assert all(0 <= after["held"] - after["acknowledged"] <= 3 for after in found)
    assert sum(after["acknowledged"] for after in found) > 0


def test_a_run_that_was_cut_short_is_offered_and_goes_on_from_where_it_was(killed: Killed) -> None:
    path, found = killed
    assert all(after["offered"] for after in found)
    with open_database(path) as database:
        runs = database.queries.run_summaries()
    assert sum(after["reps"] > 0 for after in found) > KILLS / 3
    assert 1 <= len(runs) < KILLS / 2


def test_no_rep_is_lost_or_doubled(killed: Killed) -> None:
    _, found = killed
    assert all(after["reps"] == after["reps_written"] for after in found)
    assert all(after["doubled"] == 0 for after in found)


def test_the_file_is_whole_after_each_kill_and_nothing_lies_beside_it(killed: Killed) -> None:
    path, found = killed
    assert all(after["whole"] for after in found)
    assert not (path.parent / "spare").exists()


def test_another_process_sees_a_fact_as_soon_as_it_is_acknowledged(tmp_path: Path) -> None:
    path = tmp_path / "record.db"
    look = (
        "import sys; from pathlib import Path; from app.store.database import open_database; "
        "database = open_database(Path(sys.argv[1]), read_only=True); "
        "print(len(database.queries.facts_of(sys.argv[2]))); database.close()"
    )
    with open_database(path) as database:
        database.journal.open_run(RunHeader(RUN, "Ines", "Landing", "", datetime.now(UTC), "UTC"), ())
        facts: list[Fact] = [RunBegan(), BoutBegan(5_000, 0, 1), RepDone(9_000, 0, 1, 1, Side.LEFT, 5_000, 0)]
        database.journal.append(RUN, 0, facts)
        seen = subprocess.run(
            [sys.executable, "-c", look, str(path), RUN],
            capture_output=True,
            text=True,
            check=True,
            cwd=ROOT,
        )
    assert seen.stdout == "3\n"
