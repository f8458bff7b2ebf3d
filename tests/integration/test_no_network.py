"""No command opens a socket for the internet, and the guard would see one."""

import socket
import subprocess
import sys
from pathlib import Path

import pytest

from tests.laptops import RUNS, beside, laptop
from tests.no_network import NetworkError, internet_sockets, no_network

ROOT = Path(__file__).parents[2]
PLAN = ROOT / "demo_data" / "shoulder_rotators.toml"


def guarded(*words: object) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "tests.no_network", *map(str, words)],
        capture_output=True,
        text=True,
        check=False,
        cwd=ROOT,
    )


def test_the_guard_sees_a_socket_however_it_is_made(monkeypatch: pytest.MonkeyPatch) -> None:
    for family in (socket.AF_INET, socket.AF_INET6):
        with pytest.raises(NetworkError), no_network():
            socket.socket(family)
    with pytest.raises(NetworkError), no_network():
        socket.create_connection(("localhost", 9))
    with pytest.raises(NetworkError), no_network():
        socket.getaddrinfo("localhost", 9)
    with no_network():
        socket.socket(socket.AF_UNIX).close()
    with socket.socket(socket.AF_INET) as opened:
        opened.bind(("127.0.0.1", 0))
        opened.listen()
        assert internet_sockets() == [f"socket:[{Path(f'/proc/self/fd/{opened.fileno()}').stat().st_ino}]"]
    assert internet_sockets() == []


def test_the_guard_of_a_process_sees_one_made_beneath_python_s_own_name(tmp_path: Path) -> None:
    script = (
        "import sys, tests.no_network as guard, _socket\n"
        "sys.addaudithook(guard._audited)\n"
        "_socket.socket(_socket.AF_INET, _socket.SOCK_STREAM)\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=False, cwd=ROOT
    )
    assert "NetworkError: a socket for the internet was made" in done.stderr


def test_a_whole_rehearsal_and_all_that_follows_it_reach_no_network(tmp_path: Path) -> None:
    record, pack, out = tmp_path / "record.db", tmp_path / "all.pwpack", tmp_path / "out"
    one = laptop(tmp_path, "one", 1)
    one.lead(RUNS)
    one.keep(*beside(RUNS))
    commands: list[tuple[object, ...]] = [
        ("rehearse", PLAN, "--database", record),
        ("check", PLAN),
        ("timeline", PLAN),
        ("backup", "--database", record),
        ("verify", "--database", record),
        ("pack", "-o", pack, "--database", one.path),
        ("unpack", pack, "--database", record),
        ("export", "--to", out, "--database", record),
        ("import", out, "--database", record),
        ("erase", "--athlete", "Hugo", "--database", record, "--yes"),
    ]
    for words in commands:
        done = guarded(*words)
        assert (done.returncode, done.stderr) == (0, ""), words
