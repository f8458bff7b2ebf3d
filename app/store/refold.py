"""The facts of a run read with their numbers, gaps and all, and written anew."""

import sqlite3
from collections.abc import Iterator, Mapping

from app.domain.records import Fact
from app.store.encoding import decode, encode
from app.store.facts import Numbered, cut

_SPANS = """
    SELECT first_number, last_number, body FROM {database}.fold WHERE run_id = ?
    UNION ALL SELECT number, number, body FROM {database}.fact WHERE run_id = ? ORDER BY 1, 2 DESC
"""


def span_facts(first: int, last: int, body: bytes) -> dict[int, Fact]:
    """The facts in one row by their numbers. Raises ValueError where they are not as many as it says."""
    return dict(zip(range(first, last + 1), decode(body), strict=True))


def facts_by_number(connection: sqlite3.Connection, run_id: bytes, database: str = "main") -> dict[int, Fact]:
    """The facts of a run, loose and folded; of one that stands twice the longer row. Raises ValueError."""
    found: dict[int, Fact] = {}
    for first, last, body in connection.execute(_SPANS.format(database=database), (run_id, run_id)):
        found = span_facts(first, last, body) | found
    return dict(sorted(found.items()))


def write_facts(connection: sqlite3.Connection, run_id: bytes, facts: Mapping[int, Fact]) -> None:
    """Put these facts in the place of those that are written of a run, folded where a bout is over.

    Before a number that is missing all are folded, so that what is loose always comes last.
    """
    for table in ("fact", "fold"):
        connection.execute(f"DELETE FROM {table} WHERE run_id = ?", (run_id,))  # noqa: S608 - of these two
    stretches = list(_stretches(facts))
    for place, stretch in enumerate(stretches):
        pieces, rest = cut(stretch)
        if rest and place < len(stretches) - 1:
            pieces, rest = [*pieces, rest], []
        for piece in pieces:
            body = encode([fact for _, fact in piece])
            connection.execute(
                "INSERT INTO fold (run_id, first_number, last_number, body) VALUES (?, ?, ?, ?)",
                (run_id, piece[0][0], piece[-1][0], body),
            )
        for number, fact in rest:
            connection.execute(
                "INSERT INTO fact (run_id, number, body) VALUES (?, ?, ?)", (run_id, number, encode([fact]))
            )


def _stretches(facts: Mapping[int, Fact]) -> Iterator[list[Numbered]]:
    """The facts in order, parted wherever a number is missing."""
    stretch: list[Numbered] = []
    for number, fact in sorted(facts.items()):
        if stretch and number != stretch[-1][0] + 1:
            yield stretch
            stretch = []
        stretch.append((number, fact))
    if stretch:
        yield stretch
