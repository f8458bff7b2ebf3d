"""The squad names a side that lags once the club's own tries say how large the error of the test is."""

import os
from datetime import UTC, datetime, timedelta
from pathlib import Path

from app import wiring
from app.domain.keeping import Result
from app.domain.plan import Side
from app.store.identity import uuid7
from app.views.review.questions import read_squad

NOW = datetime(2026, 11, 24, 9, tzinfo=UTC)
TEST = "single_hop"


def tries(athlete: str, days_ago: int, side: Side, *values: float) -> list[Result]:
    """Tries of one athlete on one side of one day, in cm."""
    at = NOW - timedelta(days=days_ago)
    return [
        Result(_name(at), athlete, TEST, str(value), "cm", at, "UTC", side, attempt)
        for attempt, value in enumerate(values, 1)
    ]


def _name(at: datetime) -> str:
    return str(uuid7(int(at.timestamp() * 1000), os.urandom(10)))


def kept(path: Path, results: list[Result]) -> dict[str, str]:
    """Why each athlete of a record with these results is looked at first, by name."""
    with wiring.open_record(path) as database:
        for result in results:
            database.answers.keep(result)
        lines = read_squad(database, NOW)
    return {line.athlete: " ".join(reason.rule for reason in line.attention.reasons) for line in lines}


def everybody() -> list[Result]:
    """Six people whose two tries differ by 1 cm on either side; the left of Greta is 30 cm behind."""
    found = []
    for number, name in enumerate(("Anouk", "Bram", "Chidi", "Dagny", "Esra", "Greta")):
        left = 110 if name == "Greta" else 140
        found += tries(name, 3 + number, Side.LEFT, left, left + 1)
        found += tries(name, 3 + number, Side.RIGHT, 140, 141)
    return found


def test_a_side_behind_by_more_than_the_error_of_the_test_is_named(tmp_path: Path) -> None:
    why = kept(tmp_path / "own.db", everybody())
    assert "side_behind" in why["Greta"]
    assert not any("side_behind" in rules for name, rules in why.items() if name != "Greta")


def test_nothing_is_said_while_the_error_is_unknown(tmp_path: Path) -> None:
    few = [result for result in everybody() if result.athlete in ("Anouk", "Greta")]
    assert not any("side_behind" in rules for rules in kept(tmp_path / "own.db", few).values())


def test_what_is_older_than_half_a_year_says_nothing_of_now(tmp_path: Path) -> None:
    old = [*tries("Hugo", 200, Side.LEFT, 100, 101), *tries("Hugo", 200, Side.RIGHT, 140, 141)]
    assert "side_behind" not in kept(tmp_path / "own.db", [*everybody(), *old])["Hugo"]
