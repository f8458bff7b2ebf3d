"""Opens the record: makes the file, brings it to today's schema, and says plainly why it cannot."""

import os
from collections.abc import Callable
from contextlib import suppress
from datetime import UTC, datetime
from enum import Enum
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from sqlalchemy import text

from app.domain.errors import StoreError
from app.store.answers import Answers
from app.store.backup import back_up
from app.store.corrections import Corrections
from app.store.groups import Groups
from app.store.journal import StoreJournal
from app.store.judging import Tolerances
from app.store.link import Link
from app.store.migration import migrate, version_of
from app.store.places import backup_folder
from app.store.planned import Planned
from app.store.queries import Queries
from app.store.reviewing import Reviewing
from app.store.schema import APPLICATION_ID, SCHEMA_VERSION
from app.store.side_file import SideFile
from app.store.side_intake import TakenIn, take_in
from app.store.steady import SteadyJournal
from app.store.troubles import gone, in_plain_words, is_folder, missing, newer, not_ours

if TYPE_CHECKING:
    from app.store.exchange import Exchange

WAIT_S = 5.0
"""How long a file that another program is writing to is waited for."""


class Database:
    """An open record, for one thread at a time; `with` closes it.

    `journal` writes runs and `queries` reads them, `groups` reads those of a room together, `answers` keeps
    and reads what is said beside them, `planned` keeps what is planned, `reviewing` reads for the review,
    `corrections` sets right, `tolerances` says what tempo is judged by, `exchange` hands on and takes in.
    """

    def __init__(self, link: Link, random_bytes: Callable[[int], bytes], spare: Path | None = None) -> None:
        self._link = link
        self._spare = spare
        self._random_bytes = random_bytes
        self.path = link.path
        self.journal = StoreJournal(link, random_bytes)
        self.queries = Queries(link)
        self.groups = Groups(link)
        self.answers = Answers(link, random_bytes)
        self.corrections = Corrections(link, random_bytes)
        self.planned = Planned(link, random_bytes)
        self.reviewing = Reviewing(link)
        self.tolerances = Tolerances(link, random_bytes)

    @property
    def exchange(self) -> "Exchange":
        """Hands on to other records, and takes in from them."""
        from app.store.exchange import Exchange

        return Exchange(self._link, self._random_bytes)

    def steadily(self, tell: Callable[[str | None], None]) -> SteadyJournal:
        """A journal that goes on in a side file when this file cannot be written; `tell` gets what to say."""
        side = None if self._spare is None else SideFile(self._spare, self.path)
        return SteadyJournal(self, side, tell)

    def take_in(self) -> TakenIn:
        """Put in what earlier sessions left in side files. Raises StoreError, and leaves the files then."""
        return TakenIn() if self._spare is None else take_in(self, self._spare)

    def renew(self, wait_s: float) -> None:
        """Connect to the file anew, and wait so long for its locks from here on.

        Raises StoreError when it cannot be had, or another file or an empty one stands in its place.
        """
        self._link.renew(wait_s)
        if _make_of(self._link) is not _Make.OURS:
            raise gone(self.path)

    def wait(self, wait_s: float) -> None:
        """Wait so long for the locks of others from here on."""
        self._link.wait(wait_s)

    def holds_run(self, run_id: str) -> bool:
        """Whether a run is written down."""
        return run_id in self.queries.run_ids()

    def close(self) -> None:
        """Let go of the file; a second time does nothing."""
        self._link.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        traceback: TracebackType | None,
    ) -> None:
        self.close()


def open_database(
    path: Path,
    *,
    read_only: bool = False,
    wait_s: float = WAIT_S,
    spare: Path | None = None,
    random_bytes: Callable[[int], bytes] = os.urandom,
    now: Callable[[], datetime] = lambda: datetime.now(UTC),
) -> Database:
    """The record in a file; to write, the file is made and brought up to date as needed, backed up before.

    `spare` is a folder elsewhere for what this file cannot take.
    Raises NewerStoreError when a newer version of the program made it, StoreError with what to do when it
    cannot be read, or written where that is asked.
    """
    path = Path(path)
    with in_plain_words(path):
        if path.is_dir():
            raise is_folder(path)
        if not read_only:
            _make_private(path)
        elif not path.exists():
            raise missing(path)
    link = Link(path, read_only=read_only, wait_s=wait_s)
    try:
        _make_ready(link, now)
    except BaseException:
        link.close()
        raise
    return Database(link, random_bytes, spare)


def _make_private(path: Path) -> None:
    """See that the file is there and its owner's alone; a folder made for it too."""
    if not path.exists():
        path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        with suppress(FileExistsError):
            os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
    elif path.stat().st_mode & 0o077:
        with suppress(OSError):
            path.chmod(0o600)


class _Make(Enum):
    EMPTY = "empty"
    OLDER = "older"
    OURS = "ours"


def _make_ready(link: Link, now: Callable[[], datetime]) -> None:
    make = _make_of(link)
    if link.read_only:
        if make is not _Make.OURS:
            raise StoreError(
                f"The database {link.path} must be brought up to date before it can be read. "
                "Open it once where it can be written."
            )
        return
    link.outside_transactions("PRAGMA journal_mode = DELETE")
    if make is _Make.OURS:
        _try_writing(link)
        return
    if make is _Make.OLDER:
        back_up(link.path, backup_folder(link.path), now())
    migrate(link)


def _make_of(link: Link) -> _Make:
    with link.reading() as connection:
        version = version_of(connection)
        mark = connection.execute(text("PRAGMA application_id")).scalar_one()
        tables = connection.execute(text("SELECT count(*) FROM sqlite_schema")).scalar_one()
    if mark == 0 and version == 0 and tables == 0:
        return _Make.EMPTY
    if mark != APPLICATION_ID:
        raise not_ours(link.path)
    if version > SCHEMA_VERSION:
        raise newer(link.path, version)
    return _Make.OURS if version == SCHEMA_VERSION else _Make.OLDER


class _Undone(Exception):  # noqa: N818 - no error: it takes a trial back
    """Ends a trial transaction without keeping anything."""


def _try_writing(link: Link) -> None:
    """Find out now, and not in mid-rep, whether the file can be written. Nothing is kept."""
    with suppress(_Undone), link.writing() as connection:
        connection.exec_driver_sql(f"PRAGMA user_version = {SCHEMA_VERSION}")
        raise _Undone
