"""The tables of planned sessions: rows are added and never changed."""

from datetime import date, datetime

from sqlalchemy import ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from app.store.columns import UtcDateTime, UuidText
from app.store.rows import Row


class PlannedRow(Row):
    """A plan for an athlete on a day, or every week from it up to `until`; `clock` is `18:30` or NULL."""

    __tablename__ = "planned"
    __table_args__ = (Index(None, "athlete_id", "day"),)

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    athlete_id: Mapped[str] = mapped_column(ForeignKey("athlete.id"))
    plan_title: Mapped[str]
    day: Mapped[date]
    clock: Mapped[str | None]
    until: Mapped[date | None]
    plan_file: Mapped[str | None]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]


class PlannedChangeRow(Row):
    """What became of one day of a planned session, or of all from it on."""

    __tablename__ = "planned_change"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    planned_id: Mapped[str] = mapped_column(ForeignKey("planned.id"), index=True)
    athlete_id: Mapped[str] = mapped_column(ForeignKey("athlete.id"))
    kind: Mapped[str]
    day: Mapped[date]
    to_day: Mapped[date | None]
    reason: Mapped[str | None]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]
