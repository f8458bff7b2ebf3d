"""What every test gets: a home of its own, a repeatable Hypothesis, and no mercy for what is left behind."""

import logging
import os
import sys
from collections.abc import Iterator
from itertools import count
from pathlib import Path

import pytest
from hypothesis import settings

from tests.leftovers import LeftBehind

settings.register_profile("repeatable", derandomize=True, deadline=None, database=None, print_blob=True)
settings.register_profile("searching", deadline=None, database=None, print_blob=True, max_examples=2_000)
settings.load_profile("repeatable")

if not os.environ.get("DISPLAY") and not os.environ.get("WAYLAND_DISPLAY"):
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

PERSONAL = (
    "XDG_DATA_HOME",
    "XDG_CONFIG_HOME",
    "XDG_CACHE_HOME",
    "XDG_STATE_HOME",
    "PACEWRIGHT_DATA",
    "PACEWRIGHT_STATE",
)
_numbers = count()


@pytest.fixture(scope="session", autouse=True)
def _strange_house(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """A home and a runtime folder that are nobody's."""
    house = tmp_path_factory.mktemp("house")
    runtime = house / "runtime"
    runtime.mkdir(mode=0o700)
    with pytest.MonkeyPatch.context() as patch:
        for name in PERSONAL:
            patch.delenv(name, raising=False)
        patch.setenv("HOME", str(house))
        patch.setenv("XDG_RUNTIME_DIR", str(runtime))
        patch.setenv("LC_ALL", "C.UTF-8")
        yield house


@pytest.fixture(autouse=True)
def _own_data(_strange_house: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A data folder for this test alone, not yet made."""
    monkeypatch.setenv("PACEWRIGHT_DATA", str(_strange_house / "data" / str(next(_numbers))))


@pytest.fixture(autouse=True)
def _nothing_left_behind() -> Iterator[None]:
    """Fail a test that leaves a thread, a timer or a window behind."""
    before = LeftBehind()
    yield
    left = before.since()
    if left:
        pytest.fail(f"left behind: {', '.join(left)}", pytrace=False)


class ExpectedLog(logging.Handler):
    """Collects what is logged from WARNING up, and knows what the test said would come."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self._lines: list[str] = []
        self._expected: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        """Keep the line."""
        self._lines.append(f"{record.levelname} {record.name}: {record.getMessage()}")

    def expect(self, part: str) -> None:
        """Say that at least one line holding `part` will be logged in this test."""
        self._expected.append(part)

    @property
    def unexpected(self) -> list[str]:
        """Lines that hold none of the expected parts."""
        return [line for line in self._lines if not any(part in line for part in self._expected)]

    @property
    def awaited(self) -> list[str]:
        """Expected parts that no line holds."""
        return [part for part in self._expected if not any(part in line for line in self._lines)]


@pytest.fixture(autouse=True)
def expected_log() -> Iterator[ExpectedLog]:
    """A log line of WARNING or above fails the test unless announced: `expected_log.expect("part of it")`."""
    handler = ExpectedLog()
    logging.getLogger().addHandler(handler)
    yield handler
    logging.getLogger().removeHandler(handler)
    if handler.unexpected:
        pytest.fail(f"logged unexpectedly: {'; '.join(handler.unexpected)}", pytrace=False)
    if handler.awaited:
        pytest.fail(f"never logged: {'; '.join(handler.awaited)}", pytrace=False)


@pytest.fixture(autouse=True)
def _same_interpreter() -> Iterator[None]:
    """Put back what a test may have changed in the interpreter itself."""
    hook, path, mask = sys.excepthook, list(sys.path), os.umask(0o022)
    os.umask(mask)
    yield
    sys.excepthook, sys.path[:] = hook, path
    os.umask(mask)
