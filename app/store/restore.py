"""Going back to a backup: first the difference, then the change, which can be undone."""

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from app.domain.errors import DamagedStoreError, StoreError
from app.store.backup import backups_in
from app.store.contents import Contents, HeldRun, contents_of
from app.store.copying import copy_verified, is_sound, saying_which_copy
from app.store.durable import make_private_folder, part_beside
from app.store.marks import keep_erased
from app.store.places import backup_folder
from app.store.replacing import put_instead


@dataclass(frozen=True, slots=True)
class Difference:
    """What going back to a backup would change.

    `present` is None where the database in place cannot be read, and `trouble` says why. `lost` are the runs
    that only it holds, `gained` those that only the backup holds, `changed` the runs of which something else
    is written in each: as it is now, as it is in the backup.
    """

    present: Contents | None
    backup: Contents
    lost: tuple[HeldRun, ...] = ()
    gained: tuple[HeldRun, ...] = ()
    changed: tuple[tuple[HeldRun, HeldRun], ...] = ()
    trouble: str = ""

    @property
    def nothing(self) -> bool:
        """Whether both hold the same."""
        if self.present is None or self.lost or self.gained or self.changed:
            return False
        return self.present.athletes == self.backup.athletes and self.present.beside == self.backup.beside

    def only_in_place(self, table: str) -> int:
        """How many rows of a table beside the runs only the database in place has."""
        return len(_keys(self.present, table) - _keys(self.backup, table))

    def only_in_backup(self, table: str) -> int:
        """How many rows of a table beside the runs only the backup has."""
        return len(_keys(self.backup, table) - _keys(self.present, table))


def restore_plan(database: Path, backup: Path) -> Difference:
    """What going back to a backup would change. Nothing is done. Raises StoreError for the backup."""
    _see_that_two(database, backup)
    _see_that_sound(backup)
    then = contents_of(backup)
    try:
        now = contents_of(database)
    except StoreError as error:
        return Difference(None, then, gained=then.runs, trouble=str(error))
    return compared(now, then)


def compared(now: Contents, then: Contents) -> Difference:
    """What one database holds against another."""
    old, new = ({run.run_id: run for run in contents.runs} for contents in (now, then))
    return Difference(
        now,
        then,
        lost=tuple(run for run in now.runs if run.run_id not in new),
        gained=tuple(run for run in then.runs if run.run_id not in old),
        changed=tuple(
            (run, new[run.run_id])
            for run in now.runs
            if run.run_id in new and new[run.run_id].print != run.print
        ),
    )


def restore(database: Path, backup: Path, at: datetime) -> Path | None:
    """Put a verified copy of a backup in a database's place, in one step.

    Whoever was erased since stays erased. Gives the path to which the present file was set aside, None where
    there was none. Raises StoreError, and then the database is as it was.
    """
    _see_that_two(database, backup)
    _see_that_sound(backup)
    with saying_which_copy(database.parent):
        make_private_folder(database.parent)
    with part_beside(database) as part:
        copy_verified(backup, part)
        keep_erased(part, (database, *(each.path for each in backups_in(backup_folder(database)))), at)
        return put_instead(part, database, at)


def _keys(contents: Contents | None, table: str) -> frozenset[bytes]:
    return frozenset() if contents is None else contents.beside.get(table, frozenset())


def _see_that_two(database: Path, backup: Path) -> None:
    if database.exists() and backup.exists() and database.samefile(backup):
        raise StoreError(f"{backup} is the database itself. Name one of its backups.")


def _see_that_sound(backup: Path) -> None:
    if not is_sound(backup):
        raise DamagedStoreError(
            f"The backup {backup} does not pass its check, so it is not put in place. Choose another: "
            "`pacewright restore` without a name lists them."
        )
