"""What came from outside, less all that belongs to people who were erased here."""

from collections.abc import Callable
from hashlib import sha256
from uuid import UUID

from app.domain.correctable import Subject
from app.domain.corrections import Correction, Target, history
from app.domain.table import Table
from app.domain.tables_beside_runs import CORRECTIONS, NOTES, RATINGS, READINESS, RESULTS
from app.domain.tables_of_groups import GROUP_MEMBERS, GROUP_SESSIONS
from app.domain.tables_of_planning import PLANNED, PLANNED_CHANGES
from app.domain.tables_of_runs import ATHLETES, BRANCHES, RUNS
from app.domain.values import Plain, Row
from app.store.correction_rows import NAMES_AN_ATHLETE
from app.store.intake import Incoming
from app.store.plain import LEFT_OUT


def mark_of(name: str) -> bytes:
    """What stays of an athlete or a run that was erased: the SHA-256 of the name of the row."""
    return sha256(UUID(name).bytes).digest()


def leave_out_erased(incoming: Incoming, marks: frozenset[bytes]) -> int:
    """Take out those who were erased with all of theirs, and give how many runs that were.

    A run that was written down as theirs but is corrected to be somebody else's stays, as that one's.
    """
    if not marks:
        return 0
    erased = [row for row in incoming.of(ATHLETES) if mark_of(str(row["id"])) in marks]
    people = {str(row["id"]) for row in erased}
    _leave_out_who(incoming, {row["name"] for row in erased})
    runs = _runs_of(incoming, people)
    runs |= {str(row["id"]) for row in incoming.of(RUNS) if mark_of(str(row["id"])) in marks}
    _drop(incoming, RUNS, lambda row: row["id"] in runs)
    for run in runs:
        incoming.courses.pop(run, None)
    gone = people | runs
    for table in (READINESS, RATINGS, RESULTS, NOTES, PLANNED_CHANGES, PLANNED, GROUP_MEMBERS):
        gone |= _drop(
            incoming, table, lambda row: row.get("athlete") in people or row.get("run") in runs, "id"
        )
    there = {row["group"] for row in incoming.of(GROUP_MEMBERS)}
    _drop(incoming, GROUP_SESSIONS, lambda row: row["id"] not in there)
    _drop(incoming, BRANCHES, lambda row: row["run"] in runs)
    _drop(
        incoming,
        CORRECTIONS,
        lambda row: row["subject_id"] in gone or _names_one_of(incoming.corrections[str(row["id"])], people),
    )
    _drop(incoming, ATHLETES, lambda row: row["id"] in people)
    return len(runs)


def _leave_out_who(incoming: Incoming, names: set[Plain]) -> None:
    """Say of what they wrote about others only that somebody did."""
    for table in (NOTES, CORRECTIONS):
        for row in incoming.of(table):
            if row["who"] in names:
                row["who"] = LEFT_OUT


def _runs_of(incoming: Incoming, people: set[str]) -> set[str]:
    """The runs of some people as corrected; those of others that were written down as theirs change hands."""
    known = history(incoming.corrections.values())
    found = set()
    for row in incoming.of(RUNS):
        run = str(row["id"])
        holding = known.holding.get((Target(Subject.RUN, run), NAMES_AN_ATHLETE[1]))
        whose = row["athlete"] if holding is None else holding.after
        if whose in people:
            found.add(run)
        elif row["athlete"] in people:
            row["athlete"] = str(whose)
    return found


def _names_one_of(correction: Correction, people: set[str]) -> bool:
    change = correction.change
    if (change.target.subject, change.field) != NAMES_AN_ATHLETE:
        return False
    return bool({correction.before, correction.after} & people)


def _drop(incoming: Incoming, table: Table, is_gone: Callable[[Row], bool], key: str = "") -> set[str]:
    """Take rows out of a table, and give what a column of theirs says."""
    rows = incoming.rows[table.name]
    gone = [name for name, row in rows.items() if is_gone(row)]
    said = {str(rows[name][key]) for name in gone} if key else set()
    for name in gone:
        del rows[name]
    return said
