"""A process that writes a run is killed again and again: nothing it was told is kept may be missing."""

import json
import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest

from app.store.database import open_database
from tests.integration.store_writer import KILLS_A_RUN, PORTION, fact, header

ROOT = Path(__file__).parents[2]
WRITER = Path(__file__).with_name("store_writer.py")
KILLS = KILLS_A_RUN


def kill_writers(path: Path, kills: int) -> list[dict[str, int]]:
    """What was found after each kill."""
    done = subprocess.run(
        [sys.executable, str(WRITER), str(path), str(kills)],
        capture_output=True,
        text=True,
        check=True,
        cwd=ROOT,
        env={"PYTHONPATH": str(ROOT), "PATH": ""},
    )
    return [json.loads(line) for line in done.stdout.splitlines()]


@pytest.fixture(scope="module")
def killed(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, list[dict[str, int]]]:
    path = tmp_path_factory.mktemp("killed") / "record.db"
    return path, kill_writers(path, KILLS)


def test_no_fact_that_was_acknowledged_is_lost(killed: tuple[Path, list[dict[str, int]]]) -> None:
    _, found = killed
    assert len(found) == KILLS
    for after in found:
        # One more than acknowledged may be there: kept, and killed before it could say so.
        assert after["acknowledged"] <= after["held"] <= after["acknowledged"] + 1


def test_the_run_goes_on_from_where_it_was(killed: tuple[Path, list[dict[str, int]]]) -> None:
    _, found = killed
    held = [after["held"] for after in found]
    assert held == sorted(held)
    assert all(after["offered"] for after in found)


def test_no_rep_is_lost_or_doubled_in_the_records(killed: tuple[Path, list[dict[str, int]]]) -> None:
    _, found = killed
    assert all(after["reps"] == after["reps_written"] for after in found)
    assert found[-1]["reps"] > 3 * PORTION


def test_the_file_is_whole_in_the_end(killed: tuple[Path, list[dict[str, int]]]) -> None:
    path, found = killed
    with sqlite3.connect(path) as raw:
        assert raw.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert raw.execute("PRAGMA foreign_key_check").fetchall() == []
    raw.close()
    with open_database(path) as database:
        facts = database.queries.facts_of(header(0).run_id)
    assert facts == tuple(fact(number) for number in range(found[-1]["held"]))


def test_another_process_sees_a_fact_as_soon_as_it_is_acknowledged(tmp_path: Path) -> None:
    path = tmp_path / "record.db"
    look = (
        "import sys; from pathlib import Path; from app.store.database import open_database; "
        "database = open_database(Path(sys.argv[1]), read_only=True); "
        "print(len(database.queries.facts_of(sys.argv[2]))); database.close()"
    )
    with open_database(path) as database:
        database.journal.open_run(header(0), ())
        database.journal.append(header(0).run_id, 0, [fact(0), fact(1), fact(2)])
        seen = subprocess.run(
            [sys.executable, "-c", look, str(path), header(0).run_id],
            capture_output=True,
            text=True,
            check=True,
            cwd=ROOT,
        )
    assert seen.stdout == "3\n"
