"""A journal that goes on when the disk does not: what the database will not take waits beside it."""

from collections.abc import Callable, Sequence
from typing import Protocol

from app.domain.errors import StoreError
from app.domain.records import BoutPrescribed, Fact, RunHeader
from app.run.journal import Journal
from app.store.side_file import SideFile
from app.store.side_lines import KeptRun, facts_line, run_line

KEPT_BESIDE = (
    "{trouble} The session goes on: what is done is kept in a file beside, and saved as soon as it can be."
)
KEPT_IN_MEMORY = (
    "{trouble} The session goes on, but what is done is in memory alone, until this is mended: leave the "
    "program open."
)
PATIENCE_S, IMPATIENCE_S = 1.0, 0.2
"""How long a locked file is waited for, in good days and in trouble."""

_REMEMBERED_RUNS = 64


class Base(Protocol):
    """The database as far as this needs it."""

    @property
    def journal(self) -> Journal:
        """What writes into it; its calls raise StoreError."""

    def renew(self, wait_s: float) -> None:
        """Connect anew. Raises StoreError when that cannot be."""

    def wait(self, wait_s: float) -> None:
        """Wait so long for locks from here on."""


class SteadyJournal:
    """Fills the port `app.run.journal.Journal`, and never raises StoreError.

    `tell` gets a sentence when something cannot be saved, another when that changes, and None once all is
    saved. `side` is None where there is no place for a side file. For one thread at a time.
    """

    def __init__(self, base: Base, side: SideFile | None, tell: Callable[[str | None], None]) -> None:
        self._base = base
        self._side = side
        self._tell = tell
        self._runs: dict[str, KeptRun] = {}
        self._unsaved: dict[str, None] = {}
        self._beside = True
        self._told: str | None = None
        base.wait(PATIENCE_S)

    @property
    def unsaved(self) -> bool:
        """Whether anything waits for the database."""
        return bool(self._unsaved)

    def recall(self, header: RunHeader, prescribed: Sequence[BoutPrescribed], facts: Sequence[Fact]) -> None:
        """Tell of a run that is in the database already and is about to go on."""
        self._remember(header.run_id, header, prescribed).add(0, facts)

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        """Write down that a run exists."""
        self._remember(header.run_id, header, prescribed)
        line = run_line(header, prescribed) if self._unsaved else b""
        self._save(header.run_id, lambda journal: journal.open_run(header, prescribed), line)

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        """Write down facts, as the port says. Raises ValueError when a fact before them is missing."""
        self._remember(run_id).add(first_number, facts)
        line = facts_line(run_id, first_number, facts) if self._unsaved else b""
        self._save(run_id, lambda journal: journal.append(run_id, first_number, facts), line)

    def mend(self) -> bool:
        """Try to save what waits; whether all is saved."""
        if not self._unsaved:
            return True
        try:
            self._base.renew(IMPATIENCE_S)
            for run_id in tuple(self._unsaved):
                self._put(self._runs[run_id])
            self._base.wait(PATIENCE_S)
        except StoreError as trouble:
            if not self._beside:
                self._keep_beside()
            self._say(trouble)
            return False
        self._unsaved.clear()
        self._clear_side()
        self._tell_once(None)
        return True

    def at_risk(self) -> str | None:
        """Try to save what waits; a sentence when some of it is kept nowhere but in memory, else None."""
        return None if self.mend() or self._beside else self._told

    def close(self) -> None:
        """Try a last time to save what waits, and let go of the side file."""
        self.mend()
        if self._side is not None:
            self._side.close()

    def _save(self, run_id: str, write: Callable[[Journal], None], line: bytes) -> None:
        if self._unsaved:
            self._wait(run_id, line)
            self.mend()
            return
        try:
            write(self._base.journal)
        except StoreError as trouble:
            self._unsaved[run_id] = None
            self._keep_beside()
            self._say(trouble)

    def _wait(self, run_id: str, line: bytes) -> None:
        """Keep one more thing beside; everything where its run did not wait yet, or that failed before."""
        new = run_id not in self._unsaved
        self._unsaved[run_id] = None
        if new or not self._beside:
            self._keep_beside()
        else:
            self._write_beside([line])

    def _keep_beside(self) -> None:
        """Write all that waits into the side file, each run from its beginning: doubling does no harm."""
        lines: list[bytes] = []
        for run_id in self._unsaved:
            run = self._runs[run_id]
            lines += [] if run.header is None else [run_line(run.header, run.prescribed)]
            lines += [facts_line(run_id, first, facts) for first, facts in run.stretches()]
        self._write_beside(lines)

    def _write_beside(self, lines: Sequence[bytes]) -> None:
        self._beside = False
        if self._side is None:
            return
        try:
            self._side.write(lines)
        except OSError:
            return
        self._beside = True

    def _clear_side(self) -> None:
        self._beside = True
        if self._side is not None:
            try:
                self._side.remove()
            except OSError:
                return  # it is read in at the next start, which changes nothing, and removed then

    def _put(self, run: KeptRun) -> None:
        if run.header is not None:
            self._base.journal.open_run(run.header, run.prescribed)
        for first, facts in run.stretches():
            self._base.journal.append(run.run_id, first, facts)

    def _remember(
        self, run_id: str, header: RunHeader | None = None, prescribed: Sequence[BoutPrescribed] = ()
    ) -> KeptRun:
        run = self._runs.setdefault(run_id, KeptRun(run_id))
        if header is not None:
            run.header, run.prescribed = header, tuple(prescribed)
        for other in tuple(self._runs)[: max(0, len(self._runs) - _REMEMBERED_RUNS)]:
            if other not in self._unsaved and other != run_id:
                del self._runs[other]
        return run

    def _say(self, trouble: StoreError) -> None:
        self._tell_once((KEPT_BESIDE if self._beside else KEPT_IN_MEMORY).format(trouble=trouble))

    def _tell_once(self, sentence: str | None) -> None:
        if sentence != self._told:
            self._told = sentence
            self._tell(sentence)
