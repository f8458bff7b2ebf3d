"""The facts of a run written anew keep their numbers and their order, whatever is missing between them."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.plan import Side
from app.domain.records import BoutBegan, BoutEnded, BoutOutcome, Fact, RepDone, RunBegan
from app.store.database import open_database
from app.store.encoding import encode
from app.store.refold import facts_by_number, span_facts, write_facts
from tests.filled import fill, invented_runs
from tests.strategies import any_fact

RUN = invented_runs(1, unfinished=False)[0]
NAME = bytes.fromhex(RUN.header.run_id.replace("-", ""))
BEGUN: dict[int, Fact] = {
    0: RunBegan(),
    1: BoutBegan(5_000, 0, 1),
    2: RepDone(9_000, 0, 1, 1, Side.LEFT, 5_000, 3),
}
ENDED: dict[int, Fact] = {7: BoutEnded(30_000, 0, 1, BoutOutcome.DONE), 8: BoutBegan(40_000, 1, 1)}


@pytest.fixture
def record(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    fill(path, [RUN])
    return path


@pytest.fixture
def raw(record: Path) -> Iterator[sqlite3.Connection]:
    with closing(sqlite3.connect(record, isolation_level=None)) as connection:
        yield connection


def rows(raw: sqlite3.Connection) -> tuple[list[tuple[int, int]], list[int]]:
    """The spans of what is folded, and the numbers of what is loose."""
    folds = raw.execute("SELECT first_number, last_number FROM fold ORDER BY 1").fetchall()
    return folds, [number for (number,) in raw.execute("SELECT number FROM fact ORDER BY 1")]


def test_what_the_journal_wrote_is_written_anew_as_it_was(raw: sqlite3.Connection) -> None:
    before = raw.execute("SELECT * FROM fold").fetchall(), raw.execute("SELECT * FROM fact").fetchall()
    facts = facts_by_number(raw, NAME)
    assert facts == dict(enumerate(RUN.facts))
    write_facts(raw, NAME, facts)
    assert (
        raw.execute("SELECT * FROM fold").fetchall(),
        raw.execute("SELECT * FROM fact").fetchall(),
    ) == before


def test_what_lies_before_a_gap_is_folded_so_that_loose_facts_come_last(
    record: Path, raw: sqlite3.Connection
) -> None:
    write_facts(raw, NAME, BEGUN | ENDED)
    assert rows(raw) == ([(0, 2), (7, 7)], [8])
    with open_database(record) as database:
        assert database.queries.facts_of(RUN.header.run_id) == tuple((BEGUN | ENDED).values())


def test_what_is_not_over_stays_loose(raw: sqlite3.Connection) -> None:
    write_facts(raw, NAME, BEGUN)
    assert rows(raw) == ([], [0, 1, 2])


@given(st.dictionaries(st.integers(0, 40), any_fact(), max_size=30))
def test_any_facts_are_read_back_with_their_numbers_in_order(facts: dict[int, Fact]) -> None:
    with closing(sqlite3.connect(":memory:")) as raw:
        raw.execute("CREATE TABLE fact (run_id, number, body)")
        raw.execute("CREATE TABLE fold (run_id, first_number, last_number, body)")
        write_facts(raw, NAME, facts)
        found = facts_by_number(raw, NAME)
        folds, loose = rows(raw)
    assert list(found.items()) == sorted(facts.items())
    assert all(number > last for number in loose for _, last in folds)


def test_of_facts_that_stand_twice_each_is_read_once(raw: sqlite3.Connection) -> None:
    raw.execute("INSERT INTO fact VALUES (?, 0, ?)", (NAME, encode([RunBegan()])))
    assert facts_by_number(raw, NAME) == dict(enumerate(RUN.facts))


def test_a_row_of_another_length_than_it_says_is_refused() -> None:
    body = encode([RunBegan(), RunBegan(5)])
    assert span_facts(3, 4, body) == {3: RunBegan(), 4: RunBegan(5)}
    for last in (3, 5):
        with pytest.raises(ValueError, match="argument"):
            span_facts(3, last, body)
