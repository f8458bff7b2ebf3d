"""The single database thread: everything that touches the record goes through it, in order."""

from collections import deque
from collections.abc import Callable, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from time import monotonic
from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QObject, QTimer, Signal

from app.domain.errors import PacewrightError
from app.domain.records import BoutPrescribed, Fact, RunHeader

if TYPE_CHECKING:
    from app.domain.group_record import GroupRecord
    from app.run.group_journal import Opened, Written
    from app.store.database import Database
    from app.store.steady import SteadyJournal

Answer = TypeVar("Answer")

MOST_WAITING = 1_000
LONGEST_WAIT_S = 2.0
"""So many writes may wait, and one for so long, before it is said."""
LOOK_MS = 500
LOOKS_A_TRY = 6
"""What could not be saved is tried again at every so many looks."""
SLOW = "Saving is slow: {waiting} entries wait for it, the oldest for {age:.0f} s. The session goes on."


class RecordKeeper(QObject):
    """Hands work to the database thread and brings answers back to the screen's, which never waits.

    `failed` carries a sentence for the person at the screen. Until the database is open, work queues up
    behind its opening; once that has failed, later work is refused with a sentence too. What cannot be
    written waits elsewhere, as `SteadyJournal` says, and is tried again with the next and every few seconds.
    `noticed` carries a sentence about what does not keep anybody from going on, such as a missing backup.
    `troubled` carries a sentence while that is so or saving is slow, and an empty one once all is well.
    """

    opened = Signal()
    failed = Signal(str)
    troubled = Signal(str)
    noticed = Signal(str)
    _answered = Signal(object, object)
    _broke = Signal(object)
    _told = Signal(str)

    def __init__(
        self,
        open_record: "Callable[[], Database]",
        parent: QObject | None = None,
        now_s: Callable[[], float] = monotonic,
    ) -> None:
        super().__init__(parent)
        self._open_record = open_record
        self._now_s = now_s
        self._database: Database | None = None
        self._steady: SteadyJournal | None = None
        self._closed = False
        self._writes: deque[float] = deque()
        self._trouble = self._strain = self._shown = ""
        self._looks = 0
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="record")
        self._watch = QTimer(self, interval=LOOK_MS)
        self._watch.timeout.connect(self.look)
        self._answered.connect(_deliver)
        self._broke.connect(_raise)
        self._told.connect(self._hear)

    def open(self) -> None:
        """Open the database, in its thread."""
        self._submit(self._open, self._say_opened)

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        """Write down that a run exists."""
        self._write(lambda steady: steady.open_run(header, prescribed))

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        """Write down what happened."""
        self._write(lambda steady: steady.append(run_id, first_number, facts))

    def open_group(self, group: "GroupRecord", runs: "Sequence[Opened]") -> None:
        """Write down that a group session exists, and runs of it."""
        self._write(lambda steady: steady.open_group(group, runs))

    def append_all(self, written: "Sequence[Written]") -> None:
        """Write down what happened at one moment in several runs."""
        self._write(lambda steady: steady.append_all(written))

    def recall(self, header: RunHeader, prescribed: Sequence[BoutPrescribed], facts: Sequence[Fact]) -> None:
        """Tell of a run in the record that is about to go on, so that all of it can be kept elsewhere."""
        self._write(lambda steady: steady.recall(header, prescribed, facts))

    def ask(self, query: "Callable[[Database], Answer]", then: Callable[[Answer], None]) -> None:
        """Put a question to the record; `then` gets the answer on the screen's thread, unless it closed."""
        if not self._closed:
            self._submit(lambda: query(self._ready()), then)

    def back_up(self, make: Callable[[], object]) -> None:
        """Have a backup made once what is queued is done; where it cannot be made, that is noticed."""
        if not self._closed:
            self._submit(lambda: self._noticing(make))

    def finish(self) -> str | None:
        """Wait for what is queued; says why in a sentence when something is kept nowhere but in memory."""
        return self._thread.submit(self._at_risk).result()

    def close(self) -> None:
        """Finish what is queued, close the database, end the thread; a second time does nothing."""
        if self._closed:
            return
        self._closed = True
        self._watch.stop()
        self._thread.submit(self._close)
        self._thread.shutdown(wait=True)

    def look(self) -> None:
        """See how much waits to be written and for how long, and have what could not be saved tried again."""
        waiting, oldest = len(self._writes), next(iter(tuple(self._writes)), None)
        age = 0.0 if oldest is None else self._now_s() - oldest
        slow = waiting > MOST_WAITING or age > LONGEST_WAIT_S
        self._strain = SLOW.format(waiting=waiting, age=age) if slow else ""
        self._show()
        self._looks += 1
        if self._trouble and not waiting and self._looks % LOOKS_A_TRY == 0:
            self._write(lambda steady: steady.mend())
        elif not self._trouble and not waiting:
            self._watch.stop()

    def _open(self) -> str | None:
        self._database = self._open_record()
        self._steady = self._database.steadily(lambda sentence: self._told.emit(sentence or ""))
        try:
            return self._database.take_in().sentence
        except PacewrightError as error:
            return str(error)

    def _say_opened(self, sentence: str | None) -> None:
        self.opened.emit()
        if sentence is not None:
            self.failed.emit(sentence)

    def _noticing(self, work: Callable[[], object]) -> None:
        try:
            work()
        except PacewrightError as error:
            self.noticed.emit(str(error))

    def _at_risk(self) -> str | None:
        return None if self._steady is None else self._steady.at_risk()

    def _close(self) -> None:
        if self._steady is not None:
            self._steady.close()
        if self._database is not None:
            self._database.close()
            self._database = None

    def _write(self, work: "Callable[[SteadyJournal], object]") -> None:
        self._writes.append(self._now_s())
        if not self._watch.isActive():
            self._watch.start()
        future = self._thread.submit(lambda: work(self._journal()))
        future.add_done_callback(self._written)

    def _written(self, done: "Future[object]") -> None:
        self._writes.popleft()
        self._finish(done, None)

    def _journal(self) -> "SteadyJournal":
        if self._steady is None:
            raise _not_open()
        return self._steady

    def _hear(self, sentence: str) -> None:
        self._trouble = sentence
        if sentence and not self._closed:
            self._watch.start()
        self._show()

    def _show(self) -> None:
        sentence = self._trouble or self._strain
        if sentence != self._shown:
            self._shown = sentence
            self.troubled.emit(sentence)

    def _ready(self) -> "Database":
        if self._database is None:
            raise _not_open()
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


def _not_open() -> PacewrightError:
    return PacewrightError("The record is not open, so nothing can be kept. Start the program again.")


def _deliver(then: Callable[[object], None], answer: object) -> None:
    then(answer)


def _raise(error: BaseException) -> None:
    raise error
