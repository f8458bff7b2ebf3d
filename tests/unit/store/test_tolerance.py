"""The tolerance of the record: all runs are judged by it anew, all or nothing, and all agrees after."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from app.__main__ import main
from app.analysis.figures_adherence import TEMPO, adherence_figures
from app.domain.dose import DoseKind
from app.domain.errors import StoreError
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    Fact,
    RepDone,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
)
from app.domain.reviewed import AthleteRecord
from app.domain.tolerance import DEFAULT_TOLERANCE, Tolerance
from app.store import judging, redrawing
from app.store.database import Database, open_database
from app.store.identity import uuid7
from app.store.verify import verify

AT = datetime(2026, 10, 25, 18, 30, tzinfo=UTC)
DAY = date(2026, 10, 25)
RUNS, REPS, REP_MS, LATE_MS = 4, 3, 4_000, 100
ASKED = (
    BoutPrescribed(
        0,
        "Wake",
        StageKind.ACTIVATION,
        "Row",
        1,
        Side.LEFT,
        REPS,
        REPS,
        REPS * REP_MS,
        0,
        None,
        DoseKind.TEMPO,
        REP_MS,
    ),
)


def reps() -> tuple[Fact, ...]:
    """Three reps of which the program noticed the second a tenth of a second late."""
    done = tuple(
        RepDone(
            number * REP_MS, 0, 1, number, Side.LEFT, (number - 1) * REP_MS, LATE_MS if number == 2 else 3
        )
        for number in range(1, REPS + 1)
    )
    ended = BoutEnded(REPS * REP_MS, 0, 1, BoutOutcome.DONE)
    return (RunBegan(), BoutBegan(0, 0, 1), *done, ended, RunEnded(60_000, RunOutcome.FINISHED))


@pytest.fixture
def path(tmp_path: Path) -> Path:
    made = tmp_path / "record.db"
    with open_database(made) as database:
        for number in range(RUNS):
            name = str(uuid7(1_790_000_000_000 + number, bytes(10)))
            header = RunHeader(name, "Ines", "Landing control", "text", AT + timedelta(hours=number), "UTC")
            database.journal.open_run(header, ASKED)
            database.journal.append(name, 0, reps())
    return made


@pytest.fixture
def database(path: Path) -> Iterator[Database]:
    with open_database(path) as opened:
        yield opened


def looked_at(database: Database) -> AthleteRecord:
    return database.reviewing.athlete("Ines", DAY, DAY, DAY)


def counts(database: Database) -> list[tuple[int, int]]:
    """Reps led to a tempo and kept, of each session."""
    sessions = looked_at(database).sessions
    return [(each.totals.tempo_known, each.totals.tempo_kept) for each in sessions if each.totals]


def test_a_record_that_was_told_nothing_judges_by_the_default(database: Database) -> None:
    assert database.tolerances.current() == DEFAULT_TOLERANCE == Tolerance(10, 250)


def test_a_tighter_tolerance_judges_every_run_anew_and_a_wider_one_again(database: Database) -> None:
    assert counts(database) == [(3, 3)] * RUNS
    assert database.tolerances.choose(Tolerance(1, 0), AT, "UTC") == (RUNS, 0)
    assert database.tolerances.current() == Tolerance(1, 0)
    # 1 % of 4 s are 40 ms; the second rep was 100 ms late.
    assert counts(database) == [(3, 2)] * RUNS
    assert database.tolerances.choose(DEFAULT_TOLERANCE, AT, "UTC") == (RUNS, 0)
    assert counts(database) == [(3, 3)] * RUNS


def test_what_is_recorded_after_it_is_judged_by_it_at_once(database: Database) -> None:
    database.tolerances.choose(Tolerance(1, 0), AT, "UTC")
    name = str(uuid7(1_790_000_009_000, bytes(10)))
    header = RunHeader(name, "Ines", "Landing control", "text", AT + timedelta(minutes=5), "UTC")
    database.journal.open_run(header, ASKED)
    database.journal.append(name, 0, reps())
    assert counts(database) == [(3, 2)] * (RUNS + 1)


@pytest.mark.parametrize("later", [timedelta(0), timedelta(hours=-1), timedelta(hours=1)])
def test_what_is_chosen_last_holds_whatever_the_clock_says(database: Database, later: timedelta) -> None:
    for number in range(8):
        wanted = Tolerance(1 + number, 0)
        database.tolerances.choose(wanted, AT + number * later, "UTC")
        assert database.tolerances.current() == wanted


def test_the_same_tolerance_again_changes_nothing(database: Database) -> None:
    assert database.tolerances.choose(DEFAULT_TOLERANCE, AT, "UTC") == (0, 0)


def test_a_run_that_cannot_be_read_keeps_its_counts_and_the_others_are_judged(path: Path) -> None:
    with closing(sqlite3.connect(path)) as raw:
        (first,) = raw.execute("SELECT id FROM run ORDER BY started_at LIMIT 1").fetchone()
        raw.execute("UPDATE fold SET body = x'01ff' WHERE run_id = ?", (first,))
        raw.commit()
    with open_database(path) as database:
        assert database.tolerances.choose(Tolerance(1, 0), AT, "UTC") == (RUNS - 1, 1)
        assert counts(database) == [(3, 3), *[(3, 2)] * (RUNS - 1)]


def test_the_record_agrees_with_itself_after_it(database: Database, path: Path) -> None:
    database.tolerances.choose(Tolerance(1, 0), AT, "UTC")
    database.close()
    assert verify(path, thorough=True).findings == ()


def test_where_it_is_broken_off_the_record_is_as_it_was(
    database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    before, drawn = counts(database), redrawing.draw_again
    calls: list[str] = []

    def broken(*of: object) -> bool:
        calls.append(str(of[-1]))
        if len(calls) == 3:
            raise StoreError("The disk is full.")
        return drawn(*of)  # type: ignore[arg-type]

    monkeypatch.setattr(judging, "draw_again", broken)
    with pytest.raises(StoreError, match="full"):
        database.tolerances.choose(Tolerance(1, 0), AT, "UTC")
    assert len(calls) == 3
    assert database.tolerances.current() == DEFAULT_TOLERANCE
    assert counts(database) == before


def test_the_figure_says_which_tolerance_it_was_judged_by(database: Database) -> None:
    database.tolerances.choose(Tolerance(20, 500), AT, "UTC")
    tempo = next(each for each in adherence_figures(looked_at(database)) if each.name == TEMPO.name)
    assert dict(tempo.inputs)["tolerance, %"] == 20
    assert dict(tempo.inputs)["or, if more, ms"] == 500


@pytest.mark.parametrize(("percent", "ms"), [(0, 250), (51, 250), (10, -1), (10, 2_001)])
def test_a_tolerance_has_bounds(percent: int, ms: int) -> None:
    with pytest.raises(ValueError, match="is a whole number"):
        Tolerance(percent, ms)


def test_the_command_says_and_sets_it(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["tolerance", "--database", str(path)]) == 0
    assert "within 10 % of its planned length or 250 ms" in capsys.readouterr().out
    assert main(["tolerance", "--percent", "5", "--database", str(path)]) == 0
    told = capsys.readouterr().out
    assert "within 5 % of its planned length or 250 ms" in told
    assert "4 runs were judged by it anew." in told
    assert main(["tolerance", "--ms", "9000", "--database", str(path)]) != 0
    assert "Nothing was changed" in capsys.readouterr().err
