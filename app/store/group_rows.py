"""The tables of group sessions: rows are added and never changed.

A member names a run and does not refer to it: there is one only once somebody is there.
"""

from datetime import datetime

from sqlalchemy import ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from app.store.columns import UtcDateTime, UuidText
from app.store.rows import Row


class GroupSessionRow(Row):
    """A group session; `choices` is JSON, see `app.domain.group_record`. Its plan is that of its runs."""

    __tablename__ = "group_session"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    form: Mapped[str]
    choices: Mapped[str]
    started_at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]


class GroupMemberRow(Row):
    """Somebody who was to come to a group session, and the name of the run that is theirs in it."""

    __tablename__ = "group_member"

    id: Mapped[str] = mapped_column(UuidText, primary_key=True)
    group_id: Mapped[str] = mapped_column(ForeignKey("group_session.id"), index=True)
    athlete_id: Mapped[str] = mapped_column(ForeignKey("athlete.id"))
    run_id: Mapped[str] = mapped_column(UuidText, index=True)
    place: Mapped[int]
    choices: Mapped[str]
    at: Mapped[datetime] = mapped_column(UtcDateTime)
    zone: Mapped[str]
