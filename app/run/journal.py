"""Where a run is written down as it happens: a port that the store fills."""

from collections.abc import Sequence
from typing import Protocol

from app.domain.records import BoutPrescribed, Fact, RunHeader


class Journal(Protocol):
    """Append only. When a call returns, what it was given survives the death of the process.

    Calls raise StoreError when the record cannot be kept.
    """

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        """Write down that a run exists, and what it asks for."""

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        """Write down facts in order, numbered from `first_number`; a number written before is left as it is.

        The first fact of a run has number 0, and no number may be left out: that raises ValueError.
        A `BoutEnded` folds its bout, and a `RunEnded` closes the run, in the same transaction.
        """
