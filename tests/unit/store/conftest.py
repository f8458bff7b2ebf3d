"""A database on a real disk, for one test."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from app.store.database import Database, open_database


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    with open_database(tmp_path / "record.db") as opened:
        yield opened
