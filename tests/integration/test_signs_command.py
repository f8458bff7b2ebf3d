"""Signs of progression from sessions in a record to the figures that are printed."""

import json
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from app.__main__ import main
from app.domain.dose import DoseKind
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    LoadUsed,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
)
from app.store.database import open_database
from app.store.identity import uuid7

FIRST = datetime(2026, 11, 3, 17, tzinfo=UTC)
PRESS = BoutPrescribed(
    0, "Lift", StageKind.STABILITY, "Press", 1, Side.RIGHT, 8, 10, None, 0, "20", DoseKind.OWN_PACE
)


@pytest.fixture
def kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Three sessions a week apart of a set of 8 to 10: 12 reps with 20 kg, then with 22.5 kg, and 13."""
    monkeypatch.setattr("app.cli.figures.local_today", lambda: date(2026, 11, 23))
    path = tmp_path / "record.db"
    with open_database(path) as database:
        for number, (reps, load) in enumerate(((12, "20"), (12, "22.5"), (13, "22.5"))):
            at = FIRST + timedelta(weeks=number)
            run = str(uuid7(int(at.timestamp() * 1000), bytes(10)))
            database.journal.open_run(RunHeader(run, "Ines", "Presses", "text", at, "UTC"), (PRESS,))
            database.journal.append(
                run,
                0,
                (
                    RunBegan(),
                    BoutBegan(10_000, 0, 1),
                    BoutEnded(40_000, 0, 1, BoutOutcome.DONE),
                    BoutRated(41_000, 0, 1, reps=reps),
                    LoadUsed(42_000, 0, 1, load),
                    RunEnded(600_000, RunOutcome.FINISHED),
                ),
            )
    return path


def figures(kept: Path, printed: pytest.CaptureFixture[str], *more: str) -> dict[tuple[str, str], Any]:
    words = ("figures", "--json", "--athlete", "Ines", "--database", str(kept), "--from", "2026-11-02", *more)
    assert main(list(words)) == 0
    return {(each["name"], each["of"]): each for each in json.loads(printed.readouterr().out)["figures"]}


def test_every_sign_is_printed_with_what_went_in_and_its_source(
    kept: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    found = figures(kept, capsys, "--to", "2026-11-22")
    two = found["Two for two", "exercise: Press; side: right"]
    assert (two["value"], two["unit"], two["n"], two["reason"]) == (1, "yes or no", 2, None)
    assert two["source"] == "NSCA, from memory. A sign, no advice."
    assert {each["label"]: each["value"] for each in two["inputs"]} == {
        "most reps asked for": 10,
        "load of the last set, kg": 22.5,
        "2026-11-10": 12,
        "2026-11-17": 13,
    }
    assert found["Load step, 10 %", "exercise: Press; side: right"]["value"] == 2.25
    assert found["Top of the range", "exercise: Press; side: right"]["value"] == 1
    volume = found["Volume load, change on the week before", "2026-11-16"]
    assert (volume["value"], volume["n"]) == (22.5, 2), "13 x 22.5 kg after 12 x 22.5 kg"
    began = found["Volume load, change on the week before", "2026-11-09"]
    assert began["reason"] == "One of the two weeks is not known in full.", "the record begins on a Tuesday"


def test_a_time_with_one_session_of_a_load_cannot_tell(
    kept: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    two = figures(kept, capsys, "--to", "2026-11-15")["Two for two", "exercise: Press; side: right"]
    assert two["value"] is None
    assert two["reason"].startswith("The last two sessions with this load")
