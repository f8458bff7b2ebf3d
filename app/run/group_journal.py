"""Where a group session is written down as it happens: the port of a run, for the runs of a room at once."""

from collections.abc import Sequence
from typing import Protocol

from app.domain.group_record import GroupRecord
from app.domain.records import BoutPrescribed, Fact, RunHeader
from app.run.journal import Journal

Opened = tuple[RunHeader, Sequence[BoutPrescribed]]
"""A run that begins, and what it asks for."""
Written = tuple[str, int, Sequence[Fact]]
"""Facts of a run: its UUID, the number of the first, and the facts in order."""


class GroupJournal(Journal, Protocol):
    """Append only, as the port of a run; each call is durable when it returns."""

    def open_group(self, group: GroupRecord, runs: Sequence[Opened]) -> None:
        """Write down that a group session exists, and the runs of those who are there from the start."""

    def append_all(self, written: Sequence[Written]) -> None:
        """Write down what happened at one moment in several runs, in one go."""
