"""The commands about a record as a person uses them: what they say, what they end with, what they do."""

import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

from app.__main__ import main
from app.store.backup import backups_in
from app.store.places import backup_folder
from tests.filled import change, facts_in, fill, invented_runs, page_of, spoil

ROOT = Path(__file__).parents[2]
RUNS = invented_runs(5, unfinished=False)
EARLIER = {run.header.run_id: run.facts for run in RUNS[:3]}
ALL = {run.header.run_id: run.facts for run in RUNS}


@dataclass
class Said:
    """What a command ended with and wrote."""

    status: int
    out: str
    err: str


class Desk:
    """A record and the commands about it."""

    def __init__(self, record: Path, capsys: pytest.CaptureFixture[str]) -> None:
        self.record = record
        self._capsys = capsys

    def say(self, *words: object) -> Said:
        self._capsys.readouterr()
        status = main([*map(str, words), "--database", str(self.record)])
        return Said(status, *self._capsys.readouterr())

    @property
    def backups(self) -> list[Path]:
        return [backup.path for backup in backups_in(backup_folder(self.record))]


@pytest.fixture
def desk(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Desk:
    record = tmp_path / "data" / "pacewright.db"
    fill(record, RUNS[:3])
    return Desk(record, capsys)


def test_a_backup_is_made_beside_the_record_and_said(desk: Desk) -> None:
    said = desk.say("backup")
    assert (said.status, said.err) == (0, "")
    (backup,) = desk.backups
    assert backup.parent == desk.record.parent / "backups"
    assert said.out.startswith(f"{backup}: 3 runs, the newest of ")
    assert said.out.endswith("checked.\n")
    assert facts_in(backup) == EARLIER


def test_what_is_backed_up_already_is_not_backed_up_again(desk: Desk) -> None:
    desk.say("backup")
    said = desk.say("backup")
    assert (said.status, said.out) == (0, f"Nothing has changed since the backup {desk.backups[0]}.\n")
    assert len(desk.backups) == 1


def test_a_backup_to_a_folder_is_made_each_time_and_takes_nothing_away(desk: Desk, tmp_path: Path) -> None:
    stick = tmp_path / "stick"
    for _ in range(3):
        assert desk.say("backup", "--to", stick).status == 0
    assert len(backups_in(stick)) == 3
    assert desk.backups == []


def test_an_empty_record_needs_no_backup(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    desk = Desk(tmp_path / "new.db", capsys)
    fill(desk.record, [])
    said = desk.say("backup")
    assert (said.status, desk.backups) == (0, [])
    assert "holds nothing yet" in said.out


@pytest.mark.parametrize("command", ["backup", "verify", "recover"])
def test_a_record_that_is_not_there_is_said_and_not_made(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], command: str
) -> None:
    desk = Desk(tmp_path / "none.db", capsys)
    said = desk.say(command)
    assert (said.status, said.out) == (1, "")
    assert said.err.startswith(f"There is no database {desk.record}.")
    assert list(tmp_path.iterdir()) == []


def test_a_backup_of_a_damaged_record_is_refused_in_plain_words(desk: Desk) -> None:
    spoil(desk.record, page_of(desk.record, "fold"), seed=1)
    said = desk.say("backup")
    assert said.status == 1
    assert "is damaged. Do not delete it: `pacewright recover`" in said.err
    assert desk.backups == []


def test_without_a_name_the_backups_are_listed(desk: Desk) -> None:
    assert "There is no backup of" in desk.say("restore").err
    desk.say("backup")
    said = desk.say("restore")
    assert said.status == 1
    assert f"  {desk.backups[0].name}  3 runs, the newest of " in said.out
    assert "Name one of them" in said.err


def test_going_back_is_shown_first_and_done_when_asked(desk: Desk) -> None:
    desk.say("backup")
    fill(desk.record, RUNS[3:])
    name = desk.backups[0].name
    shown = desk.say("restore", name)
    assert shown.status == 1
    assert "Only now: 2 runs" in shown.out
    assert f"  2026-01-10 21:30  {RUNS[4].header.athlete}, {RUNS[4].header.plan_title}, " in shown.out
    assert "Nothing was changed." in shown.err
    assert "--yes" in shown.err
    assert facts_in(desk.record) == ALL
    done = desk.say("restore", name, "--yes")
    assert (done.status, done.err) == (0, "")
    assert facts_in(desk.record) == EARLIER
    (aside,) = (desk.record.parent / "set_aside").iterdir()
    assert f"What stood there before is {aside}." in done.out
    assert facts_in(aside) == ALL


def test_the_counts_of_both_stand_side_by_side(desk: Desk) -> None:
    desk.say("backup")
    fill(desk.record, RUNS[3:])
    lines = desk.say("restore", desk.backups[0]).out.splitlines()
    assert lines[0].split() == ["now", "in", "the", "backup"]
    assert lines[1].split() == ["runs", "5", "3"]
    assert lines[2].split() == ["athletes", "4", "3"]


def test_a_backup_that_says_the_same_needs_no_going_back(desk: Desk) -> None:
    desk.say("backup")
    said = desk.say("restore", desk.backups[0], "--yes")
    assert said.status == 0
    assert "Both hold the same" in said.out
    assert not (desk.record.parent / "set_aside").exists()


def test_a_damaged_record_can_be_gone_back_from(desk: Desk) -> None:
    desk.say("backup")
    spoil(desk.record, 1)
    shown = desk.say("restore", desk.backups[0].name)
    assert "cannot be read" in shown.out
    assert "Only in the backup: 3 runs" in shown.out
    assert desk.say("restore", desk.backups[0].name, "--yes").status == 0
    assert facts_in(desk.record) == EARLIER


def test_a_backup_that_is_not_there_is_said(desk: Desk) -> None:
    said = desk.say("restore", "nothing.db")
    assert said.status == 1
    assert "There is no database nothing.db" in said.err


def test_a_sound_record_is_said_to_be_sound(desk: Desk) -> None:
    said = desk.say("verify")
    assert (said.status, said.err) == (0, "")
    entries = sum(map(len, EARLIER.values()))
    assert said.out.splitlines() == [
        f"{desk.record} is sound: 3 runs, {entries} entries.",
        "The figures of all runs were drawn again from their entries, and are the same.",
    ]


def test_what_is_wrong_with_a_record_is_said_in_sentences(desk: Desk) -> None:
    change(desk.record, "UPDATE bout_record SET pain = 9 WHERE bout = 1")
    said = desk.say("verify", "--thorough")
    assert (said.status, said.out) == (1, "")
    assert said.err.count("The figures of the bouts of the run") == 3
    assert "Do not delete it" in said.err.splitlines()[-1]


def test_a_backup_can_be_checked_too(desk: Desk, capsys: pytest.CaptureFixture[str]) -> None:
    desk.say("backup")
    assert Desk(desk.backups[0], capsys).say("verify").status == 0


def test_there_is_nothing_to_recover_of_a_sound_record(desk: Desk) -> None:
    said = desk.say("recover", "--yes")
    assert said.status == 0
    assert "there is nothing to recover" in said.out
    assert [path.name for path in desk.record.parent.iterdir()] == ["pacewright.db"]


def test_what_can_be_saved_is_shown_first_with_the_newest_backup_beside_it(desk: Desk) -> None:
    desk.say("backup")
    fill(desk.record, RUNS[3:])
    spoil(desk.record, page_of(desk.record, "athlete"), seed=1)
    before = desk.record.read_bytes()
    said = desk.say("recover")
    assert said.status == 1
    assert said.out.startswith("Saved: 5 runs, the newest of ")
    assert "Unknown: 1 athlete of which no more than a number is left." in said.out
    assert "Only saved: 2 runs" in said.out
    assert f"restore {desk.backups[0].name}" in said.err
    assert desk.record.read_bytes() == before
    assert sorted(path.name for path in desk.record.parent.iterdir()) == ["backups", "pacewright.db"]


def test_what_could_be_saved_takes_the_place_of_the_damaged_file_when_asked(desk: Desk) -> None:
    desk.say("backup")
    fill(desk.record, RUNS[3:])
    spoil(desk.record, page_of(desk.record, "athlete"), seed=1)
    damaged = desk.record.read_bytes()
    said = desk.say("recover", "--yes")
    assert said.status == 0
    assert facts_in(desk.record) == ALL
    (aside,) = (desk.record.parent / "set_aside").iterdir()
    assert aside.read_bytes() == damaged
    assert f"The damaged file is {aside}." in said.out
    assert desk.say("verify").status == 0


def test_recovering_without_the_backup_takes_nothing_from_it(desk: Desk) -> None:
    desk.say("backup")
    spoil(desk.record, page_of(desk.record, "athlete"), seed=1)
    assert "the newest backup added 3 entries" in desk.say("recover").out
    said = desk.say("recover", "--without-backup")
    assert "the newest backup added" not in said.out
    assert "Unknown: 3 athletes of which" in said.out


def test_gaps_are_listed_by_run(desk: Desk) -> None:
    change(desk.record, "DELETE FROM fold WHERE first_number = 0")
    said = desk.say("recover")
    assert "Missing in 3 runs: " in said.out
    assert f"{RUNS[0].header.athlete}, {RUNS[0].header.plan_title}: " in said.out
    assert "There is no backup that passes its check." in said.out


def test_runs_that_lost_their_end_are_listed_though_nobody_knows_how_much(desk: Desk) -> None:
    change(desk.record, "DELETE FROM fold WHERE first_number > 0")
    change(desk.record, "DELETE FROM fact")
    spoil(desk.record, page_of(desk.record, "ix_athlete_name"), seed=1)
    said = desk.say("recover")
    assert "Missing in 3 runs: 0 entries and some whose number nobody knows." in said.out
    assert f"{RUNS[0].header.plan_title}: at the end\n" in said.out


def test_the_commands_are_there_for_a_stranger(desk: Desk) -> None:
    words = [sys.executable, "-m", "app", "verify", "--database", str(desk.record)]
    done = subprocess.run(words, capture_output=True, text=True, cwd=ROOT, check=False)
    assert (done.returncode, done.stderr) == (0, "")
    assert "is sound" in done.stdout
