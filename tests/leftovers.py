"""What a test left behind: threads, Qt timers and threads that run, windows. Looks at Qt only where Qt is."""

import gc
import sys
import threading
import weakref
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from PySide6.QtCore import QThread, QTimer
    from PySide6.QtWidgets import QWidget

    Runner = QTimer | QThread

GRACE_S = 0.5

_started: "weakref.WeakSet[Runner]" = weakref.WeakSet()
_watched: list[str] = []


class LeftBehind:
    """A look around before a test; `since` says what is there afterwards that was not."""

    def __init__(self) -> None:
        self._threads = set(threading.enumerate())
        if "PySide6.QtCore" in sys.modules:
            _watch_qt()
        self._running = set(map(id, _running()))
        self._windows = set(map(id, _windows()))

    def since(self) -> list[str]:
        """Everything new that is still alive, in words."""
        found = self._qt()
        if found:
            gc.collect()
            found = self._qt()
        return found + self._new_threads()

    def _new_threads(self) -> list[str]:
        new = [thread for thread in threading.enumerate() if thread not in self._threads]
        for thread in new:
            if not isinstance(thread, threading._DummyThread):
                thread.join(GRACE_S)
        return [
            f"thread {thread.name}"
            for thread in new
            if thread.is_alive() and not isinstance(thread, threading._DummyThread)
        ]

    def _qt(self) -> list[str]:
        return [
            *(f"running {_name(thing)}" for thing in _running() if id(thing) not in self._running),
            *(f"window {_name(widget)}" for widget in _windows() if id(widget) not in self._windows),
        ]


def _name(thing: "Runner | QWidget") -> str:
    return f"{type(thing).__name__} {thing.objectName()}".strip()


def _running() -> "list[Runner]":
    """Timers and threads of Qt that were started from Python and still run."""
    if not _watched:
        return []
    import shiboken6

    return [thing for thing in list(_started) if shiboken6.isValid(thing) and _runs(thing)]


def _runs(thing: "Runner") -> bool:
    return thing.isActive() if hasattr(thing, "isActive") else thing.isRunning()


def _windows() -> "list[QWidget]":
    """Top-level widgets, those waiting to be deleted excepted."""
    widgets = sys.modules.get("PySide6.QtWidgets")
    application = widgets.QApplication.instance() if widgets else None
    if widgets is None or not isinstance(application, widgets.QApplication):
        return []
    core = sys.modules["PySide6.QtCore"]
    application.sendPostedEvents(None, core.QEvent.Type.DeferredDelete)
    return list(application.topLevelWidgets())


def _watch_qt() -> None:
    """Note every timer and thread started from here on; once a process."""
    core = sys.modules["PySide6.QtCore"]
    for kind in (core.QTimer, core.QThread):
        if kind.__name__ not in _watched:
            kind.start = _noting(kind.start)
            _watched.append(kind.__name__)


def _noting(start: Callable[..., None]) -> Callable[..., None]:
    def noted(thing: "Runner", *arguments: Any) -> None:  # noqa: ANN401 - whatever the overload takes
        _started.add(thing)
        start(thing, *arguments)

    return noted
