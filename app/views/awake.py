"""Keeps the display from going dark while an athlete is led; always let go of in a pause and at the end."""

from collections.abc import Callable
from concurrent.futures import Executor, ThreadPoolExecutor
from contextlib import AbstractContextManager, ExitStack, suppress

Keep = Callable[[], AbstractContextManager[object]]


class Awake:
    """Holds the display awake, or does not. Asking the system happens on a thread of its own: it may be slow.

    Where the system has no way of being asked, nothing happens and nothing is said: the session goes on.
    """

    def __init__(self, keep: Keep | None = None, executor: Executor | None = None) -> None:
        self._keep = keep or _presenting
        self._thread = executor or ThreadPoolExecutor(max_workers=1, thread_name_prefix="awake")
        self._held = ExitStack()
        self._wanted = False

    def hold(self, *, wanted: bool) -> None:
        """Hold the display awake from now on, or let go; the same again changes nothing."""
        if wanted != self._wanted:
            self._wanted = wanted
            self._thread.submit(self._take if wanted else self._held.close)

    def close(self) -> None:
        """Let go, and end the thread."""
        self.hold(wanted=False)
        self._thread.shutdown(wait=True)

    def _take(self) -> None:
        with suppress(Exception):
            self._held.enter_context(self._keep())


def _presenting() -> AbstractContextManager[object]:
    from wakepy import keep

    return keep.presenting(on_fail="pass")
