"""The tables of what comes from elsewhere, and of who may not come back."""

from datetime import datetime

from sqlalchemy import ForeignKey, LargeBinary
from sqlalchemy.orm import Mapped, mapped_column

from app.store.columns import UtcDateTime
from app.store.rows import Row

_BY_KEY_ALONE = {"sqlite_with_rowid": False}


class ImportedRow(Row):
    """Says of a run that it comes from a list of past training: only its day is known."""

    __tablename__ = "imported"
    __table_args__ = _BY_KEY_ALONE

    run_id: Mapped[str] = mapped_column(ForeignKey("run.id"), primary_key=True)


class BranchRow(Row):
    """All facts of a run as they were written where it was led on too; `hash` is their SHA-256."""

    __tablename__ = "branch"
    __table_args__ = _BY_KEY_ALONE

    run_id: Mapped[str] = mapped_column(ForeignKey("run.id"), primary_key=True)
    hash: Mapped[bytes] = mapped_column(LargeBinary(32), primary_key=True)
    body: Mapped[bytes]


class ErasedRow(Row):
    """An athlete who was erased: the SHA-256 of the name of their row, and nothing else of them."""

    __tablename__ = "erased"
    __table_args__ = _BY_KEY_ALONE

    hash: Mapped[bytes] = mapped_column(LargeBinary(32), primary_key=True)
    at: Mapped[datetime] = mapped_column(UtcDateTime)
