"""The facts of a run in the database: read back from both places they stand in, and cut into folds."""

from collections.abc import Iterable, Sequence
from pathlib import Path

from sqlalchemy import Connection, select

from app.domain.records import BoutBegan, BoutEnded, Fact, RunEnded
from app.store.encoding import decode
from app.store.rows import FactRow, FoldRow
from app.store.troubles import damaged

Numbered = tuple[int, Fact]


def loose_facts(connection: Connection, path: Path, run_id: str) -> list[Numbered]:
    """The facts of a run that are not yet folded. Raises StoreError when they cannot be read."""
    query = select(FactRow.number, FactRow.body).where(FactRow.run_id == run_id).order_by(FactRow.number)
    found: list[Numbered] = []
    for number, body in connection.execute(query):
        found += _numbered(path, number, number, body)
    return found


def folded_facts(connection: Connection, path: Path, run_id: str) -> list[Numbered]:
    """The facts of a run that are folded. Raises StoreError when they cannot be read."""
    query = (
        select(FoldRow.first_number, FoldRow.last_number, FoldRow.body)
        .where(FoldRow.run_id == run_id)
        .order_by(FoldRow.first_number)
    )
    found: list[Numbered] = []
    for first, last, body in connection.execute(query):
        found += _numbered(path, first, last, body)
    return found


def last_folded(connection: Connection, run_id: str) -> int:
    """The number of the last folded fact of a run, -1 when none is."""
    query = (
        select(FoldRow.last_number)
        .where(FoldRow.run_id == run_id)
        .order_by(FoldRow.first_number.desc())
        .limit(1)
    )
    number = connection.execute(query).scalar_one_or_none()
    return -1 if number is None else number


def cut(facts: Iterable[Numbered]) -> tuple[list[list[Numbered]], list[Numbered]]:
    """Pieces to be folded, and the rest.

    A piece ends where a bout ends and no other is under way, or where the run ends. So every bout that begins
    in a piece ends in it, and only what is said of it later stands elsewhere.
    """
    pieces: list[list[Numbered]] = []
    piece: list[Numbered] = []
    under_way: set[tuple[int, int]] = set()
    for number, fact in facts:
        piece.append((number, fact))
        match fact:
            case BoutBegan(bout=bout, attempt=attempt):
                under_way.add((bout, attempt))
                continue
            case BoutEnded(bout=bout, attempt=attempt):
                under_way.discard((bout, attempt))
            case RunEnded():
                under_way.clear()
            case _:
                continue
        if not under_way:
            pieces.append(piece)
            piece = []
    return pieces, piece


def _numbered(path: Path, first: int, last: int, body: bytes) -> Sequence[Numbered]:
    try:
        return list(zip(range(first, last + 1), decode(body), strict=True))
    except ValueError as error:
        raise damaged(path) from error
