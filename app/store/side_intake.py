"""Reading in what an earlier session had to leave in a side file."""

from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from app.domain.errors import StoreError
from app.domain.group_record import GroupRecord
from app.run.group_journal import GroupJournal
from app.store.side_file import left_over, put_aside
from app.store.side_lines import KeptRun, read_groups, read_lines

UNREAD = "Some of what a session had kept beside the record cannot be read. It was left where it is: {path}."


@dataclass(frozen=True, slots=True)
class TakenIn:
    """How many side files were read in whole and removed, and which could not be read whole."""

    taken: int = 0
    unread: tuple[Path, ...] = ()

    @property
    def sentence(self) -> str | None:
        """What a person should know of it, None when there is nothing."""
        return UNREAD.format(path=", ".join(map(str, self.unread))) if self.unread else None


class Base(Protocol):
    """The database as far as this needs it."""

    @property
    def path(self) -> Path:
        """Where it is."""

    @property
    def journal(self) -> GroupJournal:
        """What writes into it."""

    def holds_run(self, run_id: str) -> bool:
        """Whether a run is written down."""


def take_in(database: Base, folder: Path) -> TakenIn:
    """Put into the database what lies in its left-over side files, and remove them.

    What was there already changes nothing. A file of which something cannot be read or placed, but for a last
    line that was cut off, is kept under another name. Raises StoreError when the database cannot be written;
    the files stay then.
    """
    taken, unread = 0, []
    try:
        for path in left_over(folder, database.path):
            data = path.read_bytes()
            runs, bad = read_lines(data)
            cut_off = bool(data) and not data.endswith(b"\n")
            placed = [_place_group(database, group) for group in read_groups(data)]
            placed += [_place(database, run) for run in runs.values()]
            if all(placed) and bad <= cut_off:
                path.unlink(missing_ok=True)
                taken += 1
            else:
                unread.append(put_aside(path))
    except OSError as error:
        raise StoreError(
            f"What a session had kept beside the record cannot be read in. See whether {folder} may be read "
            "and written; it is tried again at the next start."
        ) from error
    return TakenIn(taken, tuple(unread))


def _place_group(database: Base, group: GroupRecord) -> bool:
    """Write a group session down; whether it could be placed."""
    try:
        database.journal.open_group(group, ())
    except ValueError:
        return False
    return True


def _place(database: Base, run: KeptRun) -> bool:
    """Write a run down; whether all of it could be placed."""
    if run.header is None and not database.holds_run(run.run_id):
        return False
    try:
        if run.header is not None:
            database.journal.open_run(run.header, run.prescribed)
        for first, facts in run.stretches():
            database.journal.append(run.run_id, first, facts)
    except ValueError:
        return False
    return True
