"""`open` as a real process: what it says when it cannot, and what it keeps when it is ended."""

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from app import wiring
from app.__main__ import main
from app.domain.records import RunOutcome
from tests.waiting import PATIENCE_S, until, wait_for_reps

ROOT = Path(__file__).parents[2]
PLAN = """format = 1
title = "Try-out"
lead_in = 3
[[stage]]
name = "One"
kind = "activation"
  [[stage.exercise]]
  name = "Heel raise"
  reps = 100
  tempo = "0.2-0-0.2-0"
"""
on_a_display = pytest.mark.skipif(
    not os.environ.get("DISPLAY") or shutil.which("xdotool") is None, reason="needs a display and xdotool"
)


@contextmanager
def opened(*words: str) -> "Iterator[subprocess.Popen[bytes]]":
    """The program as a process, which does not outlive the block."""
    command = [sys.executable, "-m", "app", "open", "--sound", "silent", *words]
    with subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as process:
        try:
            yield process
        finally:
            process.kill()


def window_of(process: "subprocess.Popen[bytes]", title: str = "Pacewright") -> str:
    """The X window of a process, once it is there."""
    search = ["xdotool", "search", "--onlyvisible", "--pid", str(process.pid), "--name", title]
    found: list[str] = []

    def there() -> bool:
        found[:] = subprocess.run(search, capture_output=True, text=True, check=False).stdout.split()
        return bool(found)

    until(there, "no window came")
    return found[-1]


def press(key: str) -> None:
    subprocess.run(["xdotool", "key", key], check=True)


def ended_by_return(process: "subprocess.Popen[bytes]") -> bool:
    press("Return")
    return process.poll() is not None


@on_a_display
@pytest.mark.parametrize("number", [2, 15])
def test_ending_the_process_in_mid_bout_keeps_every_finished_rep(number: int, tmp_path: Path) -> None:
    plan, path = tmp_path / "plan.toml", tmp_path / "own.db"
    plan.write_text(PLAN, encoding="utf-8")
    with opened(str(plan), "--database", str(path), "--athlete", "Ines") as process:
        window_of(process)
        until(path.exists, "no record was made")
        press("s")
        press("space")
        wait_for_reps(path, 3)
        process.send_signal(number)
        _, err = process.communicate(timeout=PATIENCE_S)
    assert (process.returncode, err) == (0, b"")
    with wiring.open_record(path) as database:
        (run,) = database.queries.run_summaries()
    assert (run.athlete, run.outcome) == ("Ines", RunOutcome.ABANDONED)
    assert run.reps_done >= 3


@on_a_display
def test_a_record_that_cannot_be_had_is_said_and_ends_with_status_1() -> None:
    with opened("--database", "/proc/nowhere/own.db") as process:
        window_of(process)
        until(lambda: ended_by_return(process), "the program did not end")
        _, err = process.communicate(timeout=PATIENCE_S)
    assert process.returncode == 1
    assert b"/proc/nowhere" in err
    assert b"Traceback" not in err


@pytest.mark.parametrize("display", ["", ":9876"])
def test_without_a_display_it_says_what_to_do_instead(
    display: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    for name in ("WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("DISPLAY", display)
    assert main(["open"]) == 1
    said = capsys.readouterr()
    assert said.out == ""
    assert "There is no display" in said.err
    assert "`rehearse`" in said.err


def test_a_broken_plan_is_said_before_any_window_opens(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    plan = tmp_path / "broken.toml"
    plan.write_text(PLAN.replace("reps = 100", "reps = 0"), encoding="utf-8")
    assert main(["open", str(plan)]) == 1
    assert f"{plan}:9:" in capsys.readouterr().err


@pytest.mark.parametrize("words", [("--at", "42"), ("--home", "--athlete", "Ines")])
def test_a_picture_is_drawn_without_a_display(words: tuple[str, ...], tmp_path: Path) -> None:
    to = tmp_path / "screen.png"
    environment = {name: value for name, value in os.environ.items() if name != "DISPLAY"}
    command = [sys.executable, "-m", "app", "picture", "-o", str(to), *words, "--size", "1366x768"]
    done = subprocess.run(
        command, cwd=ROOT, env=environment, capture_output=True, text=True, check=True, timeout=60
    )
    assert (done.stdout, done.stderr) == (f"{to}\n", "")
    assert to.read_bytes()[:8] == b"\x89PNG\r\n\x1a\n"
    assert int.from_bytes(to.read_bytes()[16:20], "big") == 1366


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--size", "big"), "--size"),
        (("--at", "-5"), "--at"),
        (("--at", "nan"), "--at"),
        (("missing.toml",), "there is no such file"),
    ],
)
def test_a_picture_that_cannot_be_drawn_is_said(
    words: tuple[str, ...], said: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["picture", *words, "-o", str(tmp_path / "screen.png")]) == 1
    assert said in capsys.readouterr().err


def test_a_picture_in_no_folder_is_said(tmp_path: Path) -> None:
    to = tmp_path / "nowhere" / "screen.png"
    command = [sys.executable, "-m", "app", "picture", "-o", str(to)]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False, timeout=60)
    assert done.returncode == 1
    assert "cannot be written" in done.stderr
