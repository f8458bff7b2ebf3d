"""What came from outside of the courses of runs, put beside or in the place of what is written of them."""

from collections.abc import Iterable, Mapping
from pathlib import Path

from sqlalchemy import Connection, delete, insert, select

from app.store.courses import Course, course_of, farthest, read_course
from app.store.drawing import all_facts
from app.store.encoding import encode
from app.store.exchange_rows import BranchRow
from app.store.facts import cut
from app.store.rows import FactRow, FoldRow
from app.store.troubles import damaged


def take_courses(
    connection: Connection, path: Path, courses: Mapping[str, Iterable[Course]]
) -> tuple[set[str], set[str]]:
    """Put the courses of runs that are there together with what is written of them.

    Gives the runs of which something else is written now, and those that were led on in two places.
    """
    changed, parted = set(), set()
    for run_id, came in courses.items():
        written, others = _written(connection, path, run_id), _branches(connection, path, run_id)
        *branches, main = farthest([*written, *others, *came])
        if [main] != written:
            _write(connection, run_id, main)
            changed.add(run_id)
        if branches != others:
            _write_branches(connection, run_id, branches)
        if branches:
            parted.add(run_id)
    return changed, parted


def _written(connection: Connection, path: Path, run_id: str) -> list[Course]:
    facts = all_facts(connection, path, run_id)
    return [course_of(facts)] if facts else []


def _branches(connection: Connection, path: Path, run_id: str) -> list[Course]:
    bodies = connection.execute(select(BranchRow.body).where(BranchRow.run_id == run_id)).scalars()
    try:
        return sorted(map(read_course, bodies))
    except ValueError as error:
        raise damaged(path) from error


def _write(connection: Connection, run_id: str, course: Course) -> None:
    """Write the facts of a run anew, as the journal would have: folded where a bout is over."""
    for rows in (FactRow, FoldRow):
        connection.execute(delete(rows).where(rows.run_id == run_id))
    pieces, rest = cut(enumerate(course.facts()))
    folds = [
        {
            "run_id": run_id,
            "first_number": piece[0][0],
            "last_number": piece[-1][0],
            "body": encode([fact for _, fact in piece]),
        }
        for piece in pieces
    ]
    if folds:
        connection.execute(insert(FoldRow), folds)
    loose = [{"run_id": run_id, "number": number, "body": encode([fact])} for number, fact in rest]
    if loose:
        connection.execute(insert(FactRow), loose)


def _write_branches(connection: Connection, run_id: str, branches: Iterable[Course]) -> None:
    connection.execute(delete(BranchRow).where(BranchRow.run_id == run_id))
    rows = [{"run_id": run_id, "hash": branch.hash, "body": branch.body} for branch in branches]
    if rows:
        connection.execute(insert(BranchRow), rows)
