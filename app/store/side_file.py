"""A side file: where the facts of a session are kept while the database cannot be written.

It lies elsewhere than the database, has a name that says nothing of anybody, is only ever added to, and is
gone as soon as all of it is in the database.
"""

import errno
import os
from collections.abc import Callable, Iterable
from hashlib import sha256
from pathlib import Path

from app.store.durable import make_private_folder, sync_folder
from app.store.side_lock import hold, is_held

_UNREAD = ".unread"


class SideFile:
    """Made when first written to, for one database and this process alone. Methods raise OSError."""

    def __init__(
        self, folder: Path, database: Path, random_bytes: Callable[[int], bytes] = os.urandom
    ) -> None:
        self._folder = folder
        self._name = f"{_stem(database)}-{random_bytes(6).hex()}.jsonl"
        self._descriptor: int | None = None
        self._torn = False

    @property
    def path(self) -> Path:
        """Where it lies, or would."""
        return self._folder / self._name

    def write(self, lines: Iterable[bytes]) -> None:
        """Add lines; they are on the disk when this returns."""
        descriptor = self._opened()
        if os.fstat(descriptor).st_nlink == 0:
            self.close()
            raise FileNotFoundError(errno.ENOENT, "the side file was taken away", str(self.path))
        data = b"".join(lines)
        left = memoryview(b"\n" + data if self._torn else data)
        self._torn = True
        while left:
            left = left[os.write(descriptor, left) :]
        os.fsync(descriptor)
        self._torn = False

    def remove(self) -> None:
        """Take it away; a later write makes it anew."""
        self.close()
        self.path.unlink(missing_ok=True)

    def close(self) -> None:
        """Let go of it, and leave it where it is."""
        if self._descriptor is not None:
            descriptor, self._descriptor = self._descriptor, None
            os.close(descriptor)

    def _opened(self) -> int:
        if self._descriptor is None:
            make_private_folder(self._folder)
            flags = os.O_WRONLY | os.O_APPEND | os.O_CREAT
            descriptor = os.open(self.path, flags, 0o600)
            hold(descriptor)
            self._descriptor = descriptor
            sync_folder(self._folder)
        return self._descriptor


def side_files(folder: Path, database: Path) -> tuple[Path, ...]:
    """The side files of a database, those of other processes too, the latest last. Raises OSError."""
    if not folder.is_dir():
        return ()
    found = folder.glob(f"{_stem(database)}-*")
    return tuple(sorted(found, key=lambda path: (path.stat().st_mtime_ns, path.name)))


def left_over(folder: Path, database: Path) -> tuple[Path, ...]:
    """The side files that nobody writes to any more and that were not put aside. Raises OSError."""
    found = side_files(folder, database)
    return tuple(path for path in found if path.suffix != _UNREAD and not is_held(path))


def put_aside(path: Path) -> Path:
    """Give a side file that could not be read whole a name by which it is not read again. Raises OSError."""
    return path.replace(path.with_name(path.name + _UNREAD))


def _stem(database: Path) -> str:
    return f"unsaved-{sha256(str(database.absolute()).encode(errors='surrogateescape')).hexdigest()[:12]}"
