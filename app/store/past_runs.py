"""Past training taken into the record: runs without bouts, marked as imported, each once."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time
from hashlib import sha256

from sqlalchemy import Connection, exists, select

from app.analysis.local_time import known_zone
from app.domain.fact_rows import fact_row
from app.domain.past import PastSession, past_facts
from app.domain.tables_of_runs import ATHLETES, FACTS, PLANS, RUNS
from app.domain.values import Row, moment_text
from app.store.conversions import prescription_columns
from app.store.drawing import all_facts
from app.store.identity import RANDOM_BYTES, uuid7
from app.store.intake import Intake
from app.store.link import Link
from app.store.people import RandomBytes, athlete_made
from app.store.rows import RunRow
from app.store.taking_in import put_in

NOON = time(12)
"""The hour that stands for a day of which no hour is known."""


@dataclass(frozen=True, slots=True)
class TakenPast:
    """How many sessions were new, and were there before; `otherwise` are there with other figures."""

    new: int
    known: int
    otherwise: tuple[PastSession, ...]


@dataclass(slots=True)
class _New:
    """The rows of what is new."""

    athletes: dict[str, Row] = field(default_factory=dict)
    plans: dict[str, Row] = field(default_factory=dict)
    runs: dict[str, Row] = field(default_factory=dict)
    facts: list[Row] = field(default_factory=list)

    def intake(self) -> Intake:
        """All of them, checked."""
        intake = Intake()
        for table, rows in (
            (ATHLETES, self.athletes.values()),
            (PLANS, self.plans.values()),
            (RUNS, self.runs.values()),
            (FACTS, self.facts),
        ):
            for row in rows:
                intake.take(table, row)
        return intake


def take_past(
    link: Link, sessions: Iterable[PastSession], athlete: str | None, zone: str, random_bytes: RandomBytes
) -> TakenPast:
    """Put past sessions into the record, or, when this raises, none. `athlete` is whose they are by default.

    A session is told by whose it is, its day, its title, and which of that title it is on that day. `zone` is
    the time zone whose days are meant. Raises StoreError.
    """
    new, known = _New(), 0
    otherwise: list[PastSession] = []
    told: Counter[tuple[str, date, str]] = Counter()
    with link.writing() as connection:
        for session in sessions:
            name = session.athlete or athlete or ""
            noon = datetime.combine(session.day, NOON, known_zone(zone)).astimezone(UTC)
            whose = athlete_made(connection, name, noon, random_bytes)
            run_id = _run_id(whose, session, told[whose, session.day, session.title], noon)
            told[whose, session.day, session.title] += 1
            if not _is_there(connection, run_id):
                new.athletes[whose] = {"id": whose, "name": name}
                _add(new, session, {"id": run_id, "athlete": whose, "zone": zone}, noon)
            elif all_facts(connection, link.path, run_id) == past_facts(session):
                known += 1
            else:
                otherwise.append(session)
        put_in(connection, link.path, new.intake().finish())
    return TakenPast(len(new.runs), known, tuple(otherwise))


def _add(new: _New, session: PastSession, run: Row, noon: datetime) -> None:
    plan = sha256(f"{session.title}\n".encode()).hexdigest()
    new.plans[plan] = {"hash": plan, "title": session.title, "text": ""}
    new.runs[str(run["id"])] = {
        **run,
        "plan": plan,
        "prescription": prescription_columns([])[0]["hash"].hex(),
        "started_at": moment_text(noon),
        "invented": False,
        "imported": True,
    }
    facts = enumerate(past_facts(session))
    new.facts += [{"run": run["id"], "number": number, **fact_row(fact)} for number, fact in facts]


def _run_id(athlete_id: str, session: PastSession, place: int, noon: datetime) -> str:
    """The same name each time: of a session's moment, and of what tells it from others."""
    said = sha256(f"{athlete_id}\n{session.day}\n{session.title}\n{place}".encode()).digest()
    return str(uuid7(max(int(noon.timestamp() * 1000), 0), said[:RANDOM_BYTES]))


def _is_there(connection: Connection, run_id: str) -> bool:
    return bool(connection.execute(select(exists().where(RunRow.id == run_id))).scalar_one())
