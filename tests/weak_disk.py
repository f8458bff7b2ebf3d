"""A record whose disk can fail, in memory."""

from collections.abc import Sequence
from pathlib import Path

from app.domain.errors import StoreError
from app.domain.group_record import GroupRecord
from app.domain.records import BoutPrescribed, Fact, RunHeader
from app.run.group_journal import Opened
from app.store.side_file import SideFile
from app.store.side_intake import TakenIn
from app.store.steady import SteadyJournal
from tests.fakes import MemoryJournal

FULL = "The disk is full."


class WeakJournal(MemoryJournal):
    """A journal whose disk says `trouble` when asked to write, and that knows a slip when it sees one."""

    trouble: str | None = None

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        self._refuse()
        if header.run_id not in self.facts:
            super().open_run(header, prescribed)

    def open_group(self, group: GroupRecord, runs: Sequence[Opened]) -> None:
        self._refuse()
        super().open_group(group, runs)

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        self._refuse()
        if not facts or first_number > len(self.facts.setdefault(run_id, [])):
            raise ValueError("nothing to write, or a gap before it, is a slip")
        super().append(run_id, first_number, facts)

    def _refuse(self) -> None:
        if self.trouble is not None:
            raise StoreError(self.trouble)


class WeakRecord:
    """A database of which only the journal is wanted; `side` is where its side files go, None for nowhere."""

    def __init__(self, side: Path | None = None) -> None:
        self.journal, self.side = WeakJournal(), side
        self.closed = False
        self.waits: list[float] = []
        self.renewed = 0

    def steadily(self, tell: object) -> SteadyJournal:
        side = None if self.side is None else SideFile(self.side, Path("/data/record.db"))
        return SteadyJournal(self, side, tell)  # type: ignore[arg-type]

    def take_in(self) -> TakenIn:
        return TakenIn()

    def renew(self, wait_s: float) -> None:
        self.renewed += 1
        self.waits.append(wait_s)

    def wait(self, wait_s: float) -> None:
        self.waits.append(wait_s)

    def close(self) -> None:
        self.closed = True
