"""One run with all that can be corrected of it, and what was."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from app.domain.corrections import History
from app.domain.fold import Closing
from app.domain.records import BoutPrescribed, BoutRecord, RunHeader

if TYPE_CHECKING:
    from app.store.database import Database


@dataclass(frozen=True, slots=True)
class RunDetails:
    """A run as corrected, its history, and the names of all athletes.

    `bouts` are those that were begun, once an attempt.
    """

    header: RunHeader
    closing: Closing
    bouts: tuple[tuple[BoutPrescribed, BoutRecord], ...]
    history: History
    athletes: tuple[str, ...]


def details_of(database: "Database", run_id: str) -> RunDetails:
    """Read a run for the dialog that corrects it. For the database's thread; raises StoreError."""
    queries = database.queries
    begun = tuple((asked, record) for asked, record in queries.bouts_of(run_id) if record is not None)
    return RunDetails(
        queries.header_of(run_id),
        queries.closing_of(run_id),
        begun,
        database.corrections.history_of(run_id),
        queries.athletes(),
    )
