"""A second start as a real process: it hands over to the first and ends; a dead first is in nobody's way."""

import os
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest

from app import wiring
from tests.waiting import PATIENCE_S, until

ROOT = Path(__file__).parents[2]
PLAN = wiring.demo_folder() / "landing_control.toml"
Start = Callable[..., "subprocess.Popen[bytes]"]


@pytest.fixture
def start(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Start]:
    """Starts the program, each as a process that does not outlive the test."""
    runtime = tmp_path / "run"
    runtime.mkdir(mode=0o700)
    monkeypatch.setenv("XDG_RUNTIME_DIR", str(runtime))
    monkeypatch.setenv("PACEWRIGHT_STATE", str(tmp_path / "state"))
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    with ExitStack() as processes:

        def started(*words: str) -> "subprocess.Popen[bytes]":
            command = [sys.executable, "-m", "app", "open", "--sound", "silent", *words]
            process = subprocess.Popen(
                command, cwd=ROOT, env=dict(os.environ), stdout=subprocess.PIPE, stderr=subprocess.PIPE
            )
            processes.enter_context(process)
            processes.callback(process.kill)
            return process

        yield started


def opened(start: Start, record: Path, sockets: int = 1) -> "subprocess.Popen[bytes]":
    """A first window on a record, once it can be reached and the record is made."""
    process = start("--database", str(record))
    folder = Path(os.environ["XDG_RUNTIME_DIR"])
    until(lambda: len(list(folder.glob("pacewright-*[!k]"))) == sockets, "no window can be reached")
    until(record.exists, "no record was made")
    return process


def test_a_second_start_hands_over_and_ends_with_status_0_while_the_first_goes_on(
    start: Start, tmp_path: Path
) -> None:
    first = opened(start, tmp_path / "own.db")
    second = start("--database", str(tmp_path / "own.db"), str(PLAN), "--athlete", "Ines")
    _, err = second.communicate(timeout=PATIENCE_S)
    assert second.returncode == 0
    assert b"Traceback" not in err
    assert first.poll() is None
    first.send_signal(signal.SIGTERM)
    _, err = first.communicate(timeout=PATIENCE_S)
    assert first.returncode == 0
    assert b"Traceback" not in err


def test_a_plan_that_cannot_be_read_is_said_by_the_second_start_and_not_handed_over(
    start: Start, tmp_path: Path
) -> None:
    opened(start, tmp_path / "own.db")
    broken = tmp_path / "broken.toml"
    broken.write_text("format = 1\n", encoding="utf-8")
    second = start("--database", str(tmp_path / "own.db"), str(broken))
    _, err = second.communicate(timeout=PATIENCE_S)
    assert second.returncode == 1
    assert b"broken.toml:1:1" in err


def test_a_window_on_another_record_opens_beside_it(start: Start, tmp_path: Path) -> None:
    first = opened(start, tmp_path / "own.db")
    other = opened(start, tmp_path / "other.db", sockets=2)
    assert (first.poll(), other.poll()) == (None, None)


def _is_another(socket: Path, dead: os.stat_result) -> bool:
    """Whether a socket was made anew in the place of one whose program is dead."""
    if not socket.exists():
        return False
    now = socket.stat()
    return (now.st_ino, now.st_ctime_ns) != (dead.st_ino, dead.st_ctime_ns)


def test_after_the_death_of_the_first_the_next_start_is_the_window(start: Start, tmp_path: Path) -> None:
    first = opened(start, tmp_path / "own.db")
    first.kill()
    first.wait()
    (left,) = Path(os.environ["XDG_RUNTIME_DIR"]).glob("pacewright-*[!k]")
    dead = left.stat()
    next_one = opened(start, tmp_path / "own.db")
    until(lambda: _is_another(left, dead), "the next start cannot be reached")
    third = start("--database", str(tmp_path / "own.db"))
    third.communicate(timeout=PATIENCE_S)
    assert third.returncode == 0
    assert next_one.poll() is None
