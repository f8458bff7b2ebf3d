"""A file layer between SQLite and the disk: it notes what is written and synced, or lets calls fail.

It reaches into the library that this Python's own sqlite3 module uses. Linux only, and only where that is a
library of the system: elsewhere `reachable` says no.
"""

import ctypes
import errno
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from ctypes import CFUNCTYPE, c_char_p, c_int, c_int64, c_size_t, c_ssize_t, c_void_p
from dataclasses import dataclass
from pathlib import Path
from typing import Any

IOERR_FSYNC = 10 | (4 << 8)
_CREATES = 0x4
_METHODS = 19
_AT = {"close": 1, "write": 3, "truncate": 4, "sync": 5}
"""Places of the methods that are stood before, among those of a file (sqlite3_io_methods)."""

_Close = CFUNCTYPE(c_int, c_void_p)
_Write = CFUNCTYPE(c_int, c_void_p, c_void_p, c_int, c_int64)
_Truncate = CFUNCTYPE(c_int, c_void_p, c_int64)
_Sync = CFUNCTYPE(c_int, c_void_p, c_int)
_Open = CFUNCTYPE(c_int, c_void_p, c_void_p, c_void_p, c_int, c_void_p)
_Delete = CFUNCTYPE(c_int, c_void_p, c_void_p, c_int)
_SetCall = CFUNCTYPE(c_int, c_void_p, c_char_p, c_void_p)
_GetCall = CFUNCTYPE(c_void_p, c_void_p, c_char_p)


class _Vfs(ctypes.Structure):
    """The layer as SQLite knows it: https://www.sqlite.org/c3ref/vfs.html."""

    _fields_ = (
        ("version", c_int),
        ("file_size", c_int),
        ("longest_path", c_int),
        ("next", c_void_p),
        ("name", c_char_p),
        ("data", c_void_p),
        ("open", c_void_p),
        ("delete", c_void_p),
        *((f"other_{number}", c_void_p) for number in range(11)),
        ("set_call", c_void_p),
        ("get_call", c_void_p),
        ("next_call", c_void_p),
    )


def library() -> ctypes.CDLL | None:
    """The SQLite that this process has loaded, None where it cannot be reached."""
    import sqlite3

    if not sys.platform.startswith("linux"):
        return None
    maps = Path("/proc/self/maps").read_text(encoding="utf-8").splitlines()
    paths = {line.split()[-1] for line in maps if "libsqlite3" in line}
    if not paths:
        return None
    found = ctypes.CDLL(paths.pop())
    found.sqlite3_libversion.restype = c_char_p
    found.sqlite3_vfs_find.restype = c_void_p
    same = found.sqlite3_libversion().decode() == sqlite3.sqlite_version
    return found if same else None


reachable = library() is not None


@dataclass(frozen=True, slots=True)
class Event:
    """One thing that was done to a file: `open` (where it was made), `write`, `truncate`, `sync`, `delete`.

    `at` is where it was written, the size it was cut to, or whether the folder was synced too. `told` marks
    the moment at which something was acknowledged, `at` saying how much.
    """

    kind: str
    name: str = ""
    at: int = 0
    data: bytes = b""


class _Layer:
    """Stands before the system's own layer until `remove`."""

    def __init__(self) -> None:
        found = library()
        assert found is not None
        self.sqlite = found
        self.below = _Vfs.from_address(found.sqlite3_vfs_find(None))
        self._names: dict[int, str] = {}
        self._methods: dict[int, Any] = {}
        self._kept: list[Any] = []
        self._own = _Vfs.from_buffer_copy(self.below)
        self._own.name = b"tests"
        self._own.open = self._pointer(_Open(self._open))
        self._own.delete = self._pointer(_Delete(self._delete))
        found.sqlite3_vfs_register(ctypes.byref(self._own), 1)

    def remove(self) -> None:
        """Take it away; files that are open must be closed before."""
        assert not self._names, f"still open: {self._names}"
        self.sqlite.sqlite3_vfs_unregister(ctypes.byref(self._own))

    def seen(self, event: Event) -> int:
        """Hear of what is about to be done; anything but 0 is the error that is given instead."""
        raise NotImplementedError

    def _pointer(self, function: Any) -> int:  # noqa: ANN401 - any C function
        self._kept.append(function)
        return ctypes.cast(function, c_void_p).value or 0

    def _open(self, _vfs: int, name: int | None, file: int, flags: int, out: int | None) -> int:
        # The name is handed on where it stands: SQLite keeps the pointer, and reads on behind its end.
        path = None if name is None else Path(os.fsdecode(ctypes.string_at(name)))
        if path is not None and flags & _CREATES and not path.exists():
            self.seen(Event("open", path.name))
        result = int(_Open(self.below.open)(ctypes.addressof(self.below), name, file, flags, out))
        if result == 0 and path is not None:
            self._names[file] = path.name
            self._stand_before(file)
        return result

    def _delete(self, _vfs: int, name: int, sync_folder: int) -> int:
        event = Event("delete", Path(os.fsdecode(ctypes.string_at(name))).name, sync_folder)
        return self.seen(event) or int(
            _Delete(self.below.delete)(ctypes.addressof(self.below), name, sync_folder)
        )

    def _stand_before(self, file: int) -> None:
        slot = c_void_p.from_address(file)
        below = slot.value or 0
        if below not in self._methods:
            self._methods[below] = self._methods_over(below)
        slot.value = ctypes.addressof(self._methods[below])

    def _methods_over(self, below: int) -> Any:  # noqa: ANN401
        own = (c_void_p * _METHODS).from_buffer_copy((c_void_p * _METHODS).from_address(below))
        close, write = _Close(own[_AT["close"]] or 0), _Write(own[_AT["write"]] or 0)
        truncate, sync = _Truncate(own[_AT["truncate"]] or 0), _Sync(own[_AT["sync"]] or 0)

        def on_close(file: int) -> int:
            self._names.pop(file, None)
            return int(close(file))

        def on_write(file: int, data: int, amount: int, offset: int) -> int:
            event = Event("write", self._names[file], offset, ctypes.string_at(data, amount))
            return self.seen(event) or int(write(file, data, amount, offset))

        def on_truncate(file: int, size: int) -> int:
            return self.seen(Event("truncate", self._names[file], size)) or int(truncate(file, size))

        def on_sync(file: int, flags: int) -> int:
            return self.seen(Event("sync", self._names[file])) or int(sync(file, flags))

        own[_AT["close"]] = self._pointer(_Close(on_close))
        own[_AT["write"]] = self._pointer(_Write(on_write))
        own[_AT["truncate"]] = self._pointer(_Truncate(on_truncate))
        own[_AT["sync"]] = self._pointer(_Sync(on_sync))
        return own


class Trace(_Layer):
    """Everything that was done to files, in order."""

    def __init__(self) -> None:
        self.events: list[Event] = []
        super().__init__()

    def seen(self, event: Event) -> int:
        self.events.append(event)
        return 0

    def tell(self, how_much: int) -> None:
        """Note that so much has been acknowledged."""
        self.events.append(Event("told", at=how_much))


@contextmanager
def traced() -> Iterator[Trace]:
    """What SQLite does to files meanwhile."""
    layer = Trace()
    try:
        yield layer
    finally:
        layer.remove()


_CALLS: dict[str, Any] = {
    "open": CFUNCTYPE(c_int, c_char_p, c_int, c_int, use_errno=True),
    "pread64": CFUNCTYPE(c_ssize_t, c_int, c_void_p, c_size_t, c_int64, use_errno=True),
    "pwrite64": CFUNCTYPE(c_ssize_t, c_int, c_void_p, c_size_t, c_int64, use_errno=True),
    "ftruncate": CFUNCTYPE(c_int, c_int, c_int64, use_errno=True),
    "unlink": CFUNCTYPE(c_int, c_char_p, use_errno=True),
    "fcntl": CFUNCTYPE(c_int, c_int, c_int, c_void_p, use_errno=True),
}
"""The system calls that can fail, and their forms."""

FAULTS = {
    "full": errno.ENOSPC,
    "broken": errno.EIO,
    "read-only": errno.EROFS,
    "locked": errno.EAGAIN,
}


class Faults(_Layer):
    """Counts the calls to the system, and lets the one of a number fail once with an error of the system.

    Syncs are counted too; they fail as a broken disk whatever the error, since SQLite asks no further there.
    """

    def __init__(self) -> None:
        self.count = 0
        self.failed = ""
        self._at, self._times, self._error = 0, 0, 0
        super().__init__()
        self._real: dict[str, Any] = {}
        for name, form in _CALLS.items():
            self._replace(name, form)

    def remove(self) -> None:
        for name in self._real:
            self._set(name, None)
        super().remove()

    def fail(self, at: int, error: int, times: int = 1) -> None:
        """Let calls fail from number `at` on, counted from 1 and from now, so many times; 0 for none."""
        self.count, self.failed = 0, ""
        self._at, self._times, self._error = at, times, error

    def seen(self, event: Event) -> int:
        return IOERR_FSYNC if event.kind == "sync" and self._fails("sync") else 0

    def _fails(self, name: str) -> bool:
        self.count += 1
        if not 0 < self._at <= self.count < self._at + self._times:
            return False
        self.failed = self.failed or name
        return True

    def _replace(self, name: str, form: Any) -> None:  # noqa: ANN401
        get = _GetCall(self.below.get_call)
        real = form(get(ctypes.addressof(self.below), name.encode()))
        self._real[name] = real

        def call(*arguments: Any) -> int:  # noqa: ANN401
            if self._fails(name):
                ctypes.set_errno(self._error)
                return -1
            return int(real(*arguments))

        self._set(name, self._pointer(form(call)))

    def _set(self, name: str, pointer: int | None) -> None:
        _SetCall(self.below.set_call)(ctypes.addressof(self.below), name.encode(), pointer)


@contextmanager
def faulty() -> Iterator[Faults]:
    """A disk whose calls can be made to fail."""
    layer = Faults()
    try:
        yield layer
    finally:
        layer.remove()
