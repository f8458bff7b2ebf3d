"""Where things lie: as asked, as the environment says, else in the user's own folders."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from app import wiring
from app.domain.records import RunBegan, RunHeader
from app.store.side_file import SideFile
from app.store.side_lines import facts_line, run_line

HEADER = RunHeader(
    "0190163d-8694-739b-aea5-966c26f8ad91",
    "Ines",
    "Try-out",
    "text",
    datetime(2026, 3, 2, tzinfo=UTC),
    "UTC",
)


def test_the_folder_for_what_the_record_cannot_take_is_another_than_that_of_the_record() -> None:
    assert wiring.state_folder({}) != wiring.data_folder(environment={})
    assert wiring.state_folder({}).name == "pacewright"
    assert wiring.state_folder({"PACEWRIGHT_STATE": "/elsewhere"}) == Path("/elsewhere")


def test_a_record_takes_in_what_was_left_in_that_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PACEWRIGHT_STATE", str(tmp_path / "state"))
    path = tmp_path / "data" / "record.db"
    side = SideFile(tmp_path / "state", path)
    side.write([run_line(HEADER, ()), facts_line(HEADER.run_id, 0, [RunBegan()])])
    side.close()
    with wiring.open_record(path) as database:
        assert database.take_in().taken == 1
        assert database.queries.unfinished_runs() == (HEADER,)


def test_the_moment_of_a_correction_says_in_which_zone_it_is() -> None:
    at, zone = wiring.stamp()
    assert at.utcoffset() is not None
    assert zone
