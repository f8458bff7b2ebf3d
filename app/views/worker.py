"""The single database thread: everything that touches the record goes through it, in order."""

from collections import deque
from collections.abc import Callable, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QObject, Signal

from app.domain.errors import PacewrightError
from app.domain.records import BoutPrescribed, Fact, RunHeader

if TYPE_CHECKING:
    from app.store.database import Database

Answer = TypeVar("Answer")


class RecordKeeper(QObject):
    """Hands work to the database thread and brings answers back to the screen's, which never waits.

    `failed` carries a sentence for the person at the screen. Until the database is open, work queues up
    behind its opening; once that has failed, later work is refused with a sentence too. What cannot be
    written is kept and tried again, in order, with whatever is written next; `caught_up` says that all is.
    """

    opened = Signal()
    failed = Signal(str)
    caught_up = Signal()
    _answered = Signal(object, object)
    _broke = Signal(object)

    def __init__(self, open_record: "Callable[[], Database]", parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._open_record = open_record
        self._database: Database | None = None
        self._closed = False
        self._unwritten: deque[Callable[[Database], None]] = deque()
        self._behind = False
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="record")
        self._answered.connect(_deliver)
        self._broke.connect(_raise)

    def open(self) -> None:
        """Open the database, in its thread."""
        self._submit(self._open, lambda _nothing: self.opened.emit())

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        """Write down that a run exists."""
        self._write(lambda database: database.journal.open_run(header, prescribed))

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        """Write down what happened."""
        self._write(lambda database: database.journal.append(run_id, first_number, facts))

    def ask(self, query: "Callable[[Database], Answer]", then: Callable[[Answer], None]) -> None:
        """Put a question to the record; `then` gets the answer on the screen's thread, unless it closed."""
        if not self._closed:
            self._submit(lambda: query(self._ready()), then)

    def finish(self) -> str | None:
        """Wait for what is queued; says why in a sentence when something still cannot be written."""
        try:
            self._thread.submit(self._catch_up).result()
        except PacewrightError as error:
            return str(error)
        return None

    def close(self) -> None:
        """Finish what is queued, close the database, end the thread; a second time does nothing."""
        if self._closed:
            return
        self._closed = True
        self._thread.submit(self._close)
        self._thread.shutdown(wait=True)

    def _open(self) -> None:
        self._database = self._open_record()

    def _close(self) -> None:
        if self._database is not None:
            self._database.close()
            self._database = None

    def _write(self, work: "Callable[[Database], None]") -> None:
        self._submit(lambda: self._catch_up(work))

    def _catch_up(self, *more: "Callable[[Database], None]") -> None:
        self._unwritten.extend(more)
        while self._unwritten:
            work = self._unwritten.popleft()
            try:
                work(self._ready())
            except PacewrightError:
                self._unwritten.appendleft(work)
                self._behind = True
                raise
        if self._behind:
            self._behind = False
            self.caught_up.emit()

    def _ready(self) -> "Database":
        if self._database is None:
            raise PacewrightError("The record is not open, so nothing can be kept. Start the program again.")
        return self._database

    def _submit(self, work: Callable[[], Answer], then: Callable[[Answer], None] | None = None) -> None:
        future = self._thread.submit(work)
        future.add_done_callback(lambda done: self._finish(done, then))

    def _finish(self, done: "Future[Answer]", then: Callable[[Answer], None] | None) -> None:
        error = done.exception()
        if isinstance(error, PacewrightError):
            self.failed.emit(str(error))
        elif error is not None:
            self._broke.emit(error)
        elif then is not None:
            self._answered.emit(then, done.result())


def _deliver(then: Callable[[object], None], answer: object) -> None:
    then(answer)


def _raise(error: BaseException) -> None:
    raise error
