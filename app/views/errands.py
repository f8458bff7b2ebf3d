"""What may take a while, done one after the other on a thread of its own while the screen goes on."""

import threading
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from typing import TypeVar

from PySide6.QtCore import QObject, Signal

Answer = TypeVar("Answer")


class Errands(QObject):
    """Does things away from the screen's thread and brings their answers back to it.

    Once closed it brings nothing back any more.
    """

    _answered = Signal(object, object)
    _broke = Signal(object)

    def __init__(self, name: str, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix=name)
        self._closing = threading.Lock()
        self._closed = False
        self._answered.connect(_deliver)
        self._broke.connect(_raise)

    def run(self, work: Callable[[], Answer], then: Callable[[Answer], object] | None = None) -> None:
        """Have something done; `then` gets its answer on the screen's thread."""
        self._thread.submit(work).add_done_callback(lambda done: self._finish(done, then))

    def close(self) -> None:
        """Begin nothing that waits, bring nothing back; what is being done ends by itself."""
        with self._closing:
            self._closed = True
        self._thread.shutdown(wait=False, cancel_futures=True)

    def _finish(self, done: "Future[Answer]", then: Callable[[Answer], object] | None) -> None:
        with self._closing:
            if self._closed or done.cancelled():
                return
            error = done.exception()
            if error is not None:
                self._broke.emit(error)
            elif then is not None:
                self._answered.emit(then, done.result())


def _deliver(then: Callable[[object], object], answer: object) -> None:
    then(answer)


def _raise(error: BaseException) -> None:
    raise error
