"""What comes from outside, row by row: all of it is checked before any of it is written."""

from base64 import b64decode
from binascii import Error as Base64Error
from collections.abc import Iterable
from hashlib import sha256

from app.domain.correctable import Subject, check_value
from app.domain.corrections import Correction
from app.domain.dose import DoseKind
from app.domain.fact_rows import fact_of, fact_row
from app.domain.plan import Side, StageKind
from app.domain.records import BoutPrescribed, Fact
from app.domain.table import Table
from app.domain.tables import TABLES
from app.domain.tables_beside_runs import CORRECTIONS, NOTES, RATINGS, READINESS, RESULTS
from app.domain.tables_of_runs import ATHLETES, BRANCHES, FACTS, PLANS, PRESCRIBED, RUNS
from app.domain.values import Name, Row
from app.store.conversions import prescription_columns
from app.store.correction_rows import NAMES_AN_ATHLETE, as_correction
from app.store.courses import Course, course_of, read_course
from app.store.plain import stored_columns

_SUBJECTS = {
    Subject.RUN: RUNS,
    Subject.BOUT: RUNS,
    Subject.REP: RUNS,
    Subject.READINESS: READINESS,
    Subject.RATING: RATINGS,
    Subject.RESULT: RESULTS,
    Subject.NOTE: NOTES,
    Subject.ATHLETE: ATHLETES,
}

MOST_FACTS = 200_000
"""Of one run. A session of six hours has some tens of thousands."""
MOST_ROWS = 500_000
"""Of all tables but that of the facts. A squad of a hundred has so many in ten years."""


class Incoming:
    """Rows by the name of their table and by their key; nothing in it hangs loose.

    The facts stand as the courses of each run, and the corrections beside their rows as what they say.
    """

    def __init__(self) -> None:
        self.rows: dict[str, dict[tuple[object, ...], Row]] = {table.name: {} for table in TABLES}
        self.courses: dict[str, list[Course]] = {}
        self.corrections: dict[str, Correction] = {}

    def of(self, table: Table) -> Iterable[Row]:
        """The rows of a table."""
        return self.rows[table.name].values()

    def prescriptions(self) -> dict[str, list[BoutPrescribed]]:
        """The bouts of each prescription in order, by its name."""
        found: dict[str, list[BoutPrescribed]] = {}
        for row in sorted(self.of(PRESCRIBED), key=PRESCRIBED.key_of):
            found.setdefault(str(row["prescription"]), []).append(_bout(row))
        return found


class Intake:
    """Takes rows table by table and gives what came in. Each method raises ValueError with what is wrong."""

    def __init__(self) -> None:
        self._incoming = Incoming()
        self._rows = 0
        self._run = ""
        self._facts: list[Fact] = []

    def take(self, table: Table, row: Row) -> None:
        """Take one row; the facts of a run come together and in order."""
        if table is FACTS:
            self._take_fact(row)
            return
        checked = table.check(row)
        rows, key = self._incoming.rows[table.name], table.key_of(checked)
        if key in rows:
            raise ValueError(f"the same {', '.join(table.key)} as in a row before")
        self._rows += 1
        if self._rows > MOST_ROWS:
            raise ValueError(f"there are more than {MOST_ROWS} rows in all")
        if table is BRANCHES:
            self._take_branch(checked)
        if table is CORRECTIONS:
            self._incoming.corrections[str(checked["id"])] = _correction(checked)
        rows[key] = checked

    def finish(self) -> Incoming:
        """All that came in, once it is known to hold together."""
        self._end_run()
        for table in TABLES:
            for column, parent in table.links.items():
                self._check_link(table, column, parent)
        self._check_corrections()
        self._check_plans()
        self._check_prescriptions()
        return self._incoming

    def _take_fact(self, row: Row) -> None:
        if row.get("run") != self._run:
            self._end_run()
            self._run = _run_named(row)
            if self._run in self._incoming.courses:
                raise ValueError("the facts of this run do not stand together")
        number = row.get("number")
        if isinstance(number, bool) or number != len(self._facts):
            raise ValueError(f"number should be {len(self._facts)}, the next fact of the run")
        if len(self._facts) >= MOST_FACTS:
            raise ValueError(f"a run has at most {MOST_FACTS} facts")
        said = {name: value for name, value in row.items() if name not in FACTS.key}
        self._facts.append(fact_of(said))

    def _end_run(self) -> None:
        if self._run:
            self._incoming.courses[self._run] = [course_of(self._facts)]
        self._run, self._facts = "", []

    def _take_branch(self, row: Row) -> None:
        self._end_run()
        try:
            course = read_course(b64decode(str(row["facts"]), validate=True))
            for fact in course.facts():
                fact_of(fact_row(fact))
        except (Base64Error, ValueError) as error:
            raise ValueError("facts cannot be read") from error
        if course.hash.hex() != row["hash"]:
            raise ValueError("hash is not that of the facts")
        self._incoming.courses.setdefault(str(row["run"]), []).append(course)

    def _check_link(self, table: Table, column: str, parent: str) -> None:
        known = {key[0] for key in self._incoming.rows[parent]}
        named: Iterable[object] = (row[column] for row in self._incoming.of(table))
        if table is FACTS:
            named = self._incoming.courses
        for name in named:
            if name is not None and name not in known:
                raise ValueError(f"{table.name} names a row of {parent} that is not there")

    def _check_corrections(self) -> None:
        rows = self._incoming.rows
        for correction in self._incoming.corrections.values():
            change = correction.change
            if (change.target.of,) not in rows[_SUBJECTS[change.target.subject].name]:
                raise ValueError("corrections has one of something that is not there")
            if (change.target.subject, change.field) == NAMES_AN_ATHLETE:
                for athlete in {correction.before, correction.after}:
                    if (athlete,) not in rows[ATHLETES.name]:
                        raise ValueError("corrections names a row of athletes that is not there")

    def _check_plans(self) -> None:
        for row in self._incoming.of(PLANS):
            content = f"{row['title']}\n{row['text']}".encode()
            if sha256(content).hexdigest() != row["hash"]:
                raise ValueError("plans has a plan that is not the one its hash names")

    def _check_prescriptions(self) -> None:
        asked = self._incoming.prescriptions()
        for name, bouts in asked.items():
            if prescription_columns(bouts)[0]["hash"].hex() != name:
                raise ValueError("prescribed has bouts that are not those their hash names")
        nothing = prescription_columns([])[0]["hash"].hex()
        for row in self._incoming.of(RUNS):
            if row["prescription"] not in asked and row["prescription"] != nothing:
                raise ValueError("runs names a prescription that is not there")


def _run_named(row: Row) -> str:
    try:
        return Name().check(row.get("run"))
    except ValueError as error:
        raise ValueError(f"run {error}") from error


def _correction(row: Row) -> Correction:
    """What a row says, its values among those that can be corrected to."""
    try:
        correction = as_correction(stored_columns(CORRECTIONS, row))
        change = correction.change
        check_value(change.target.subject, change.field, correction.before)
        for name in correction.replaces:
            Name().check(name)
    except (ValueError, TypeError, RecursionError) as error:
        raise ValueError("this is no correction that can be made") from error
    return correction


def _bout(row: Row) -> BoutPrescribed:
    said = {name: value for name, value in row.items() if name != "prescription"}
    said["stage_kind"] = StageKind(str(said["stage_kind"]))
    said["side"] = Side(str(said["side"]))
    if said["dose"] is not None:
        said["dose"] = DoseKind(str(said["dose"]))
    return BoutPrescribed(**said)  # type: ignore[arg-type]  # checked by its table
