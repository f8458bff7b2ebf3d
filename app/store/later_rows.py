"""The tables of what is said beside a run or after it: answers, results, notes, corrections.

Rows are added and never changed. Each is named by a UUIDv7; what a correction is about is named by a column
and not by a reference, because it may reach a database before the thing it corrects.
"""

from datetime import datetime

from sqlalchemy import ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from app.store.columns import UtcDateTime, UuidText
from app.store.rows import Row


class DeviceRow(Row):
    """A computer that runs are led on, or an instrument that tests are measured with."""

    __tablename__ = "device"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    kind: Mapped[str]
    name: Mapped[str]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]


class ReadinessRow(Row):
    """What an athlete said of themselves before a run, or before none. NULL is unknown."""

    __tablename__ = "readiness"
    __table_args__ = (Index(None, "athlete_id", "at"),)

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    athlete_id: Mapped[str] = mapped_column(ForeignKey("athlete.id"))
    run_id: Mapped[str | None] = mapped_column(ForeignKey("run.id"), type_=UuidText)
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]
    sleep: Mapped[int | None]
    fatigue: Mapped[int | None]
    stress: Mapped[int | None]
    soreness: Mapped[int | None]
    pain: Mapped[int | None]
    pain_place: Mapped[str | None]
    pain_side: Mapped[str | None]
    changed: Mapped[bool | None]
    red_flag: Mapped[bool | None]
    note: Mapped[str | None]
    decision: Mapped[str | None]


class RatingRow(Row):
    """What an athlete said of a run after it. NULL says that it was asked and not answered."""

    __tablename__ = "rating"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    run_id: Mapped[str] = mapped_column(ForeignKey("run.id"), index=True)
    kind: Mapped[str]
    value: Mapped[int | None]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]
    place: Mapped[str | None]
    side: Mapped[str | None]
    note: Mapped[str | None]


class ResultRow(Row):
    """One try at a test; `value` is a number in decimals, as text."""

    __tablename__ = "result"
    __table_args__ = (Index(None, "athlete_id", "at"),)

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    athlete_id: Mapped[str] = mapped_column(ForeignKey("athlete.id"))
    test: Mapped[str]
    value: Mapped[str]
    unit: Mapped[str]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]
    side: Mapped[str]
    attempt: Mapped[int]
    device_id: Mapped[str | None] = mapped_column(ForeignKey("device.id"), type_=UuidText)
    note: Mapped[str | None]


class NoteRow(Row):
    """Words about an athlete, or about one run of theirs."""

    __tablename__ = "note"
    __table_args__ = (Index(None, "athlete_id", "at"),)

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    athlete_id: Mapped[str] = mapped_column(ForeignKey("athlete.id"))
    run_id: Mapped[str | None] = mapped_column(ForeignKey("run.id"), type_=UuidText)
    text: Mapped[str]
    who: Mapped[str]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]


class CorrectionRow(Row):
    """One correction of one field; `before`, `after` and `replaces` are JSON.

    Of a field that names an athlete the values are the names of rows, so that no person's name stands here.
    """

    __tablename__ = "correction"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    subject: Mapped[str]
    subject_id: Mapped[str] = mapped_column(UuidText, index=True)
    bout: Mapped[int | None]
    attempt: Mapped[int | None]
    rep: Mapped[int | None]
    side: Mapped[str | None]
    field: Mapped[str]
    before: Mapped[str]
    after: Mapped[str]
    who: Mapped[str]
    why: Mapped[str]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]
    replaces: Mapped[str]


class SettingRow(Row):
    """A choice that belongs to the record; the latest of a name holds."""

    __tablename__ = "setting"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    name: Mapped[str] = mapped_column(index=True)
    value: Mapped[str | None]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]
