"""One window a record: handing over, what is not ours, and what a dead one left behind."""

import os
import socket
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pytestqt.qtbot import QtBot

from app.views.one_window import OneWindow, socket_name, understood

Wish = tuple[Path | None, str | None]


@contextmanager
def listening(record: Path) -> Iterator[list[Wish]]:
    one, heard = OneWindow(record), list[Wish]()
    one.handed.connect(lambda plan, athlete: heard.append((plan, athlete)))
    assert not one.is_handed_over(None, None)
    try:
        yield heard
    finally:
        one.close()


ANOTHER_START = """
import sys
from pathlib import Path
from app.views.one_window import OneWindow
record, plan, athlete = sys.argv[1:]
handed = OneWindow(Path(record)).is_handed_over(Path(plan) if plan else None, athlete or None)
sys.exit(0 if handed else 7)
"""
ROOT = Path(__file__).parents[3]


def handed_over(qtbot: QtBot, record: Path, plan: Path | None, athlete: str | None) -> bool:
    """Hand over from another process, while this one goes on."""
    words = [sys.executable, "-c", ANOTHER_START, str(record), str(plan or ""), athlete or ""]
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    with subprocess.Popen(words, env=environment) as other:
        qtbot.waitUntil(lambda: other.poll() is not None, timeout=20_000)
    assert other.returncode in (0, 7)
    return other.returncode == 0


def test_plan_and_athlete_are_handed_over_in_any_script(qtbot: QtBot, tmp_path: Path) -> None:
    record, plan = tmp_path / "own.db", tmp_path / "Übung ضغط.toml"
    with listening(record) as heard:
        assert handed_over(qtbot, record, plan, "Ἀθηνᾶ")
        assert handed_over(qtbot, record, None, None)
    assert heard == [(plan, "Ἀθηνᾶ"), (None, None)]


def test_a_path_from_the_folder_one_is_in_is_handed_over_as_a_whole(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    with listening(tmp_path / "own.db") as heard:
        assert handed_over(qtbot, tmp_path / "own.db", Path("plan.toml"), None)
    assert heard == [(tmp_path / "plan.toml", None)]


def test_another_record_has_a_window_of_its_own(qtbot: QtBot, tmp_path: Path) -> None:
    with listening(tmp_path / "own.db") as heard:
        assert not handed_over(qtbot, tmp_path / "other.db", None, None)
        with listening(tmp_path / "other.db"):
            assert handed_over(qtbot, tmp_path / "own.db", None, "Hugo")
    assert heard == [(None, "Hugo")]


def test_the_same_record_by_another_path_is_the_same(tmp_path: Path) -> None:
    (tmp_path / "link").symlink_to(tmp_path)
    assert socket_name(tmp_path / "link" / "own.db") == socket_name(tmp_path / "own.db")


def test_of_many_later_starts_each_hands_over_to_the_first(qtbot: QtBot, tmp_path: Path) -> None:
    with listening(tmp_path / "own.db") as heard:
        for name in ("Hugo", "Ines", "Bram"):
            assert handed_over(qtbot, tmp_path / "own.db", None, name)
    assert [athlete for _, athlete in heard] == ["Hugo", "Ines", "Bram"]


def test_once_it_is_closed_the_next_start_is_the_window(qtbot: QtBot, tmp_path: Path) -> None:
    with listening(tmp_path / "own.db"):
        pass
    assert not handed_over(qtbot, tmp_path / "own.db", None, None)


def test_what_a_dead_window_left_is_cleared(qtbot: QtBot, tmp_path: Path) -> None:
    record = tmp_path / "own.db"
    left = socket.socket(socket.AF_UNIX)
    left.bind(socket_name(record))
    left.close()
    assert Path(socket_name(record)).exists()
    with listening(record) as heard:
        assert handed_over(qtbot, record, None, "Hugo")
    assert heard == [(None, "Hugo")]


def test_nonsense_from_another_program_is_passed_over(qtbot: QtBot, tmp_path: Path) -> None:
    record = tmp_path / "own.db"
    with listening(record) as heard:
        stranger = socket.socket(socket.AF_UNIX)
        stranger.connect(socket_name(record))
        stranger.sendall(b"GET / HTTP/1.1\n")
        assert handed_over(qtbot, record, None, "Hugo")
        stranger.close()
    assert heard == [(None, "Hugo")]


@given(st.binary())
def test_no_line_of_bytes_is_more_than_not_understood(line: bytes) -> None:
    assert understood(line) is None or isinstance(understood(line), tuple)


@pytest.mark.parametrize("line", [b"[]", b"7", b'{"plan": 7}', b'{"athlete": ["Hugo"]}', b"\xff"])
def test_what_is_none_of_ours_is_not_understood(line: bytes) -> None:
    assert understood(line) is None
