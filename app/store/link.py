"""The one connection to a database file, and its transactions."""

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.exc import DBAPIError
from sqlalchemy.pool import StaticPool

from app.store.troubles import in_plain_words

_ON_CONNECT = (
    "PRAGMA foreign_keys = ON",
    "PRAGMA synchronous = EXTRA",
    "PRAGMA fullfsync = ON",
    "PRAGMA secure_delete = ON",
    "PRAGMA temp_store = MEMORY",
    "PRAGMA cell_size_check = ON",
    "PRAGMA trusted_schema = OFF",
)


class Link:
    """A connection to an existing file, for one thread at a time.

    `wait_s` is how long a locked file is waited for. Every method raises StoreError when the file cannot be
    had.
    """

    def __init__(self, path: Path, *, read_only: bool, wait_s: float) -> None:
        self.path = path
        self.read_only = read_only
        self._wait_s = wait_s
        self._writing = False
        self._engine = self._new_engine()
        self._held: Connection | None = None
        self._connected()

    def _connected(self) -> Connection:
        """The connection, made where there is none."""
        if self._held is None:
            with in_plain_words(self.path):
                self._held = self._engine.connect()
        return self._held

    def renew(self, wait_s: float) -> None:
        """Connect anew, and wait so long for a locked file from here on.

        After a fault of the disk, or where the file was away for a while, an old connection may be of no use.
        """
        self._wait_s = wait_s
        self._drop()
        self._connected()

    def wait(self, wait_s: float) -> None:
        """Wait so long for a locked file from here on."""
        self._wait_s = wait_s
        self.outside_transactions(f"PRAGMA busy_timeout = {round(wait_s * 1000)}")

    def _drop(self) -> None:
        """Let go of the connection, whatever it says to that."""
        held, self._held = self._held, None
        with suppress(DBAPIError, sqlite3.Error):
            if held is not None:
                held.close()
        self._engine.dispose()

    def _new_engine(self) -> Engine:
        engine = create_engine("sqlite+pysqlite://", creator=self._connect, poolclass=StaticPool)
        event.listen(engine, "begin", self._begin)
        return engine

    def _connect(self) -> sqlite3.Connection:
        mode = "ro" if self.read_only else "rw"
        connection = sqlite3.connect(
            f"{self.path.absolute().as_uri()}?mode={mode}",
            uri=True,
            timeout=self._wait_s,
            isolation_level=None,
            check_same_thread=False,
        )
        try:
            for pragma in _ON_CONNECT:
                connection.execute(pragma)
        except sqlite3.Error:
            connection.close()
            raise
        return connection

    def _begin(self, connection: Connection) -> None:
        connection.exec_driver_sql("BEGIN IMMEDIATE" if self._writing else "BEGIN")

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """A transaction that sees the database as it is at its first query."""
        connection = self._connected()
        with in_plain_words(self.path), connection.begin():
            yield connection

    @contextmanager
    def writing(self) -> Iterator[Connection]:
        """A transaction that holds the write lock from its start; durable once left without an error."""
        connection = self._connected()
        self._writing = True
        try:
            with in_plain_words(self.path), connection.begin():
                yield connection
        finally:
            self._writing = False

    def outside_transactions(self, statement: str) -> None:
        """Run a statement that does nothing within a transaction, such as a PRAGMA."""
        with in_plain_words(self.path):
            self._connected().connection.cursor().execute(statement)

    def close(self) -> None:
        """Let go of the file; a second time does nothing."""
        with in_plain_words(self.path):
            if self._held is not None:
                self._held.close()
            self._engine.dispose()
