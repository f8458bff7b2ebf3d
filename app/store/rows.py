"""The tables.

What happened stands in `fact` and `fold` and is never changed. `fact` holds the facts of a run as they
come, one row each; when a bout is over they move, in the same transaction and without loss, into one row of
`fold`. Keeping both would say everything twice and cost a rep three times the room. What is learnt of a
bout later is a further fact, what is set right a correction; nothing is written over. `bout_record` and
`run_course` are drawn from facts and corrections for the queries and follow every new one; they could be made
anew at any time.

Runs and athletes are named by UUIDv7, plans and prescriptions by the hash of what they say, and all else by
its run, so that rows of two databases can be put together without meeting.
"""

from datetime import date, datetime

from sqlalchemy import ForeignKey, Index, LargeBinary, MetaData
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

from app.store.columns import UtcDateTime, UuidText

_NAMES = {
    "pk": "pk_%(table_name)s",
    "fk": "fk_%(table_name)s_%(referred_table_name)s",
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
}
_BY_KEY_ALONE = {"sqlite_with_rowid": False}
"""For small rows: the key is the table, without a second tree beside it."""


class Row(DeclarativeBase):
    """The base of all rows."""

    metadata = MetaData(naming_convention=_NAMES)


class AthleteRow(Row):
    """One person, as corrected. Two of one name may meet when databases are put together.

    `consent_on` is the day on which they agreed to what `consent_scope` says, NULL where nobody asked.
    `reference_side` is what the other side is measured against, left or right, NULL where nobody chose.
    """

    __tablename__ = "athlete"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    name: Mapped[str] = mapped_column(index=True)
    short_name: Mapped[str | None]
    consent_on: Mapped[date | None]
    consent_scope: Mapped[str | None]
    reference_side: Mapped[str | None]


class PlanRow(Row):
    """A plan file as it was read, named by the SHA-256 of its title and text."""

    __tablename__ = "plan"

    hash: Mapped[bytes] = mapped_column(LargeBinary(32), primary_key=True)
    title: Mapped[str]
    text: Mapped[str]


class PrescriptionRow(Row):
    """What all bouts of a run ask for, named by the SHA-256 of it; `low` sums their lower bounds of reps."""

    __tablename__ = "prescription"

    hash: Mapped[bytes] = mapped_column(LargeBinary(32), primary_key=True)
    low: Mapped[int]


class PrescribedBoutRow(Row):
    """What one bout of a prescription asks for; the columns are those of `BoutPrescribed`."""

    __tablename__ = "prescribed_bout"

    prescription_hash: Mapped[bytes] = mapped_column(ForeignKey("prescription.hash"), primary_key=True)
    bout: Mapped[int] = mapped_column(primary_key=True)
    stage_name: Mapped[str]
    stage_kind: Mapped[str]
    exercise: Mapped[str]
    set_number: Mapped[int]
    side: Mapped[str]
    low: Mapped[int]
    high: Mapped[int]
    work_ms: Mapped[int | None]
    contacts_per_rep: Mapped[int]
    load_kg: Mapped[str | None]
    dose: Mapped[str | None]
    rep_tut_ms: Mapped[int | None]


class RunRow(Row):
    """One run as it was written down: who, which plan, since when."""

    __tablename__ = "run"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    athlete_id: Mapped[str] = mapped_column(ForeignKey("athlete.id"))
    plan_hash: Mapped[bytes] = mapped_column(ForeignKey("plan.hash"))
    prescription_hash: Mapped[bytes] = mapped_column(ForeignKey("prescription.hash"))
    started_at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]
    invented: Mapped[bool]


class FactRow(Row):
    """One fact of a run that is not yet folded; `number` counts the facts of the run in order."""

    __tablename__ = "fact"
    __table_args__ = _BY_KEY_ALONE

    run_id: Mapped[str] = mapped_column(ForeignKey("run.id"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True)
    body: Mapped[bytes]


class FoldRow(Row):
    """The facts of a run from one number to another, both included, in one piece."""

    __tablename__ = "fold"
    __table_args__ = _BY_KEY_ALONE

    run_id: Mapped[str] = mapped_column(ForeignKey("run.id"), primary_key=True)
    first_number: Mapped[int] = mapped_column(primary_key=True)
    last_number: Mapped[int]
    body: Mapped[bytes]


class BoutRecordRow(Row):
    """One attempt at one bout in figures, drawn from its facts. NULL is unknown, never zero."""

    __tablename__ = "bout_record"
    __table_args__ = _BY_KEY_ALONE

    run_id: Mapped[str] = mapped_column(ForeignKey("run.id"), primary_key=True)
    bout: Mapped[int] = mapped_column(primary_key=True)
    attempt: Mapped[int] = mapped_column(primary_key=True)
    outcome: Mapped[str]
    began_ms: Mapped[int | None]
    ended_ms: Mapped[int]
    reps_counted: Mapped[int]
    reps_clean: Mapped[int]
    reps_stated: Mapped[int | None]
    rpe: Mapped[int | None]
    pain: Mapped[int | None]
    load_kg: Mapped[str | None]
    reps_missed: Mapped[int]
    tempo_known: Mapped[int]
    tempo_kept: Mapped[int]
    tut_ms: Mapped[int | None]


class RunCourseRow(Row):
    """How a run that began went on, drawn from its facts and corrections. NULL is unknown, never zero.

    `corrected` names the figures of its summary that rest on a corrected value, commas between them. What
    comes after it sums up the records of its bouts, so that a list of runs need not read them.
    """

    __tablename__ = "run_course"
    __table_args__ = (Index(None, "athlete_id", "started_at"), _BY_KEY_ALONE)

    run_id: Mapped[str] = mapped_column(ForeignKey("run.id"), primary_key=True)
    athlete_id: Mapped[str] = mapped_column(ForeignKey("athlete.id"))
    started_at: Mapped[datetime] = mapped_column(UtcDateTime, index=True)
    zone: Mapped[str]
    outcome: Mapped[str | None]
    elapsed_ms: Mapped[int | None]
    session_rpe: Mapped[int | None]
    lag_ms: Mapped[int | None]
    corrected: Mapped[str | None]
    reps_met: Mapped[int | None]
    reps_done: Mapped[int | None]
    tempo_known: Mapped[int | None]
    tempo_kept: Mapped[int | None]
    pain: Mapped[int | None]
