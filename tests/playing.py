"""The player as a process of its own, in an environment of the test's choice."""

import json
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from tests.pulse import FIRST

ROOT = Path(__file__).parents[1]


class Playing:
    """`tests.player` as a process of its own: what it says, line by line, and what it is told."""

    def __init__(self, environment: Mapping[str, str], speaker: str, what: str) -> None:
        self.said: list[dict[str, Any]] = []
        self._process = subprocess.Popen(
            [*FIRST, sys.executable, "-m", "tests.player", speaker, what],
            env=dict(environment),
            cwd=ROOT,
            text=True,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
        )

    def hear(self) -> dict[str, Any]:
        """The next thing it says."""
        assert self._process.stdout is not None
        line = self._process.stdout.readline()
        assert line, self._process.communicate()[1]
        self.said.append(json.loads(line))
        return self.said[-1]

    def hear_until(self, **wanted: object) -> dict[str, Any]:
        """What it says once that holds."""
        told = self.hear()
        while any(told.get(name) != value for name, value in wanted.items()):
            told = self.hear()
        return told

    def tell(self, word: str) -> None:
        """Give it a line to read."""
        assert self._process.stdin is not None
        self._process.stdin.write(f"{word}\n")
        self._process.stdin.flush()

    def end(self) -> str:
        """Wait for it, and give what it wrote on stderr."""
        try:
            _, wrong = self._process.communicate(timeout=30)
        except subprocess.TimeoutExpired:
            self._process.kill()
            self._process.communicate()
            raise
        assert self._process.returncode == 0, wrong
        return wrong
