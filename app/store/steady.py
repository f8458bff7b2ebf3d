"""A journal that goes on when the disk does not: what the database will not take waits beside it."""

from collections.abc import Callable, Mapping, Sequence
from typing import Protocol

from app.domain.errors import StoreError
from app.domain.group_record import GroupRecord
from app.domain.records import BoutPrescribed, Fact, RunHeader
from app.run.group_journal import GroupJournal, Opened, Written
from app.store.side_file import SideFile
from app.store.side_lines import KeptRun, facts_line, group_line, run_line

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
    def journal(self) -> GroupJournal:
        """What writes into it; its calls raise StoreError."""

    def renew(self, wait_s: float) -> None:
        """Connect anew. Raises StoreError when that cannot be."""

    def wait(self, wait_s: float) -> None:
        """Wait so long for locks from here on."""


class SteadyJournal:
    """Fills the port `app.run.group_journal.GroupJournal`, and never raises StoreError.

    `tell` gets a sentence when something cannot be saved, another when that changes, and None once all is
    saved. `side` is None where there is no place for a side file. For one thread at a time.
    """

    def __init__(self, base: Base, side: SideFile | None, tell: Callable[[str | None], None]) -> None:
        self._base = base
        self._side = side
        self._tell = tell
        self._runs: dict[str, KeptRun] = {}
        self._unsaved: dict[str, None] = {}
        self._unsaved_groups: dict[str, GroupRecord] = {}
        self._beside = True
        self._told: str | None = None
        base.wait(PATIENCE_S)

    @property
    def unsaved(self) -> bool:
        """Whether anything waits for the database."""
        return bool(self._unsaved or self._unsaved_groups)

    def recall(self, header: RunHeader, prescribed: Sequence[BoutPrescribed], facts: Sequence[Fact]) -> None:
        """Tell of a run that is in the database already and is about to go on."""
        self._remember(header.run_id, header, prescribed).add(0, facts)

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        """Write down that a run exists."""
        self._remember(header.run_id, header, prescribed)
        line = run_line(header, prescribed) if self.unsaved else b""
        self._save({header.run_id: line}, lambda journal: journal.open_run(header, prescribed))

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        """Write down facts, as the port says. Raises ValueError when a fact before them is missing."""
        self.append_all([(run_id, first_number, facts)])

    def open_group(self, group: GroupRecord, runs: Sequence[Opened]) -> None:
        """Write down that a group session exists, and runs of it."""
        for header, prescribed in runs:
            self._remember(header.run_id, header, prescribed)
        if self.unsaved:
            self._keep_group(group, runs)
            self.mend()
            return
        try:
            self._base.journal.open_group(group, runs)
        except StoreError as trouble:
            self._keep_group(group, runs)
            self._say(trouble)

    def append_all(self, written: Sequence[Written]) -> None:
        """Write down facts of several runs. Raises ValueError when a fact before those of one is missing."""
        for run_id, first_number, facts in written:
            self._remember(run_id).add(first_number, facts)
        lines = {each[0]: facts_line(*each) if self.unsaved else b"" for each in written}
        self._save(lines, lambda journal: journal.append_all(written))

    def mend(self) -> bool:
        """Try to save what waits; whether all is saved."""
        if not self.unsaved:
            return True
        try:
            self._base.renew(IMPATIENCE_S)
            for group in self._unsaved_groups.values():
                self._base.journal.open_group(group, ())
            for run_id in tuple(self._unsaved):
                self._put(self._runs[run_id])
            self._base.wait(PATIENCE_S)
        except StoreError as trouble:
            if not self._beside:
                self._keep_beside()
            self._say(trouble)
            return False
        self._unsaved.clear()
        self._unsaved_groups.clear()
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

    def _save(self, lines: Mapping[str, bytes], write: Callable[[GroupJournal], None]) -> None:
        """Write into the database; `lines` say the same by run, for when something waits already."""
        if self.unsaved:
            self._wait(lines)
            self.mend()
            return
        try:
            write(self._base.journal)
        except StoreError as trouble:
            self._unsaved.update(dict.fromkeys(lines))
            self._keep_beside()
            self._say(trouble)

    def _wait(self, lines: Mapping[str, bytes]) -> None:
        """Keep more things beside; everything where a run did not wait yet, or that failed before."""
        new = not lines.keys() <= self._unsaved.keys()
        self._unsaved.update(dict.fromkeys(lines))
        if new or not self._beside:
            self._keep_beside()
        else:
            self._write_beside(tuple(lines.values()))

    def _keep_group(self, group: GroupRecord, runs: Sequence[Opened]) -> None:
        self._unsaved_groups[group.group_id] = group
        self._unsaved.update({header.run_id: None for header, _ in runs})
        self._keep_beside()

    def _keep_beside(self) -> None:
        """Write all that waits into the side file, each run from its beginning: doubling does no harm."""
        lines = [group_line(group) for group in self._unsaved_groups.values()]
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
