"""`rehearse`: a whole session without a screen, and every way it can fail, in words."""

import json
import signal
import sqlite3
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

import pytest

from app import wiring
from app.__main__ import main
from app.domain.records import Fact, RunEnded, RunOutcome
from app.domain.tempo import parse_tempo
from app.store.journal import StoreJournal
from tests.waiting import wait_for_reps

ROOT = Path(__file__).parents[2]
PLANS = ("shoulder_rotators.toml", "landing_control.toml")
SLOW = """format = 1
title = "Try-out"
lead_in = 3
[[stage]]
name = "One"
kind = "activation"
  [[stage.exercise]]
  name = "Heel raise"
  reps = 100
  tempo = "0.1-0-0.1-0"
"""


def rehearse(*words: object, capsys: pytest.CaptureFixture[str]) -> tuple[int, str, str]:
    status = main(["rehearse", *map(str, words)])
    said = capsys.readouterr()
    return status, said.out, said.err


@pytest.mark.parametrize("plan", PLANS)
def test_every_rep_prescribed_is_recorded_and_the_timeline_is_as_long_as_the_run(
    plan: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    database = tmp_path / "new.db"
    status, out, err = rehearse(wiring.demo_folder() / plan, "--database", database, "--json", capsys=capsys)
    report = json.loads(out)
    assert (status, err) == (0, "")
    assert report["outcome"] == "finished"
    assert all(bout["reps_recorded"] == bout["reps_prescribed"] for bout in report["bouts"])
    assert len(report["bouts"]) > 20
    assert report["elapsed_ms"] >= report["timeline_ms"] > 20 * 60_000


def test_twice_into_one_database_are_two_runs(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for _ in range(2):
        rehearse(wiring.demo_folder() / PLANS[0], "--database", tmp_path / "new.db", capsys=capsys)
    with wiring.open_record(tmp_path / "new.db") as database:
        runs = database.queries.run_summaries()
    assert len({run.run_id for run in runs}) == 2
    assert all(run.invented for run in runs)


def test_a_timed_plan_takes_exactly_its_timeline(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plan = tmp_path / "slow.toml"
    plan.write_text(SLOW, encoding="utf-8")
    _, out, _ = rehearse(plan, "--json", capsys=capsys)
    report = json.loads(out)
    assert report["timeline_ms"] == report["elapsed_ms"] == 3_000 + 100 * 200
    assert str(parse_tempo("0.1-0-0.1-0")) in SLOW


def test_without_a_database_nothing_is_kept(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    status, out, _ = rehearse(wiring.demo_folder() / PLANS[0], capsys=capsys)
    assert status == 0
    assert "recorded" in out
    assert not wiring.database_file().exists()


def test_an_athlete_of_the_roster_gets_their_own_numbers(capsys: pytest.CaptureFixture[str]) -> None:
    roster = wiring.demo_folder() / "roster.toml"
    plan = wiring.demo_folder() / PLANS[0]
    everybody = json.loads(rehearse(plan, "--json", capsys=capsys)[1])
    different = [
        athlete.name
        for athlete in wiring.read_athletes(roster)
        if athlete.reps and any(name in plan.read_text(encoding="utf-8") for name in athlete.reps)
    ]
    assert different, "the demo roster has nobody with counts of their own"
    own = json.loads(
        rehearse(plan, "--json", "--roster", roster, "--athlete", different[0], capsys=capsys)[1]
    )
    assert own["reps_prescribed"] != everybody["reps_prescribed"]


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("missing.toml",), "there is no such file"),
        ((str(ROOT),), "this is a folder"),
        ((str(wiring.demo_folder() / PLANS[0]), "--speed", "-1"), "--speed is 0"),
        ((str(wiring.demo_folder() / PLANS[0]), "--speed", "nan"), "--speed is 0"),
        (
            (
                str(wiring.demo_folder() / PLANS[0]),
                "--athlete",
                "Nobody",
                "--roster",
                str(wiring.demo_folder() / "roster.toml"),
            ),
            "Nobody is not in",
        ),
        ((str(wiring.demo_folder() / PLANS[0]), "--database", "/proc/nowhere/own.db"), "/proc/nowhere"),
        ((str(wiring.demo_folder() / PLANS[0]), "--database", str(ROOT)), "folder"),
    ],
)
def test_what_cannot_be_done_is_one_plain_sentence(
    words: tuple[str, ...], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    status, out, err = rehearse(*words, capsys=capsys)
    assert status == 1
    assert out == ""
    assert said in err
    assert "Traceback" not in err
    assert err.count("\n") == 1


def test_a_broken_plan_is_said_with_its_places(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    plan = tmp_path / "broken.toml"
    plan.write_text(SLOW.replace("tempo", "tmpo").replace("kind", "knd"), encoding="utf-8")
    status, _, err = rehearse(plan, capsys=capsys)
    assert status == 1
    assert f"{plan}:6:" in err
    assert f"{plan}:10:" in err


def test_a_database_of_a_newer_version_is_left_as_it_is(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "newer.db"
    rehearse(wiring.demo_folder() / PLANS[0], "--database", path, capsys=capsys)
    with sqlite3.connect(path) as connection:
        connection.execute("PRAGMA user_version = 9999")
    connection.close()
    before = path.read_bytes()
    status, _, err = rehearse(wiring.demo_folder() / PLANS[0], "--database", path, capsys=capsys)
    assert status == 1
    assert "newer" in err
    assert path.read_bytes() == before


def test_ctrl_c_keeps_every_finished_rep_and_abandons_the_run(tmp_path: Path) -> None:
    plan, path = tmp_path / "slow.toml", tmp_path / "own.db"
    plan.write_text(SLOW, encoding="utf-8")
    command = [sys.executable, "-m", "app", "rehearse", str(plan), "--speed", "2", "--database", str(path)]
    with subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as process:
        wait_for_reps(path, 2)
        process.send_signal(2)
        _, err = process.communicate(timeout=20)
    assert process.returncode == 130
    assert err == b""
    with wiring.open_record(path) as database:
        (run,) = database.queries.run_summaries()
    assert run.outcome is RunOutcome.ABANDONED
    assert 2 <= run.reps_done < 100


@pytest.mark.parametrize("before_the_writing", [True, False])
def test_ctrl_c_while_a_rep_is_written_loses_neither_the_rep_nor_the_end(
    before_the_writing: bool,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    append, written = StoreJournal.append, list[Fact]()
    handler = signal.getsignal(signal.SIGINT)

    def interrupted(journal: StoreJournal, run_id: str, first: int, facts: Sequence[Fact]) -> None:
        interrupt = len(written) < 8 <= len(written) + len(facts)
        written.extend(facts)
        if interrupt and before_the_writing:
            signal.raise_signal(signal.SIGINT)
        append(journal, run_id, first, facts)
        if interrupt and not before_the_writing:
            signal.raise_signal(signal.SIGINT)

    monkeypatch.setattr(StoreJournal, "append", interrupted)
    plan = tmp_path / "slow.toml"
    plan.write_text(SLOW, encoding="utf-8")
    status, _, err = rehearse(plan, "--database", tmp_path / "own.db", capsys=capsys)
    assert (status, err) == (130, "")
    assert isinstance(written[-1], RunEnded)
    with wiring.open_record(tmp_path / "own.db") as database:
        (run,) = database.queries.run_summaries()
        assert database.queries.facts_of(run.run_id) == tuple(written)
    assert run.outcome is RunOutcome.ABANDONED
    assert signal.getsignal(signal.SIGINT) is handler
