"""Whether somebody still writes to a file: a lock that ends with the process that holds it."""

import os
import sys
from contextlib import suppress
from pathlib import Path

if sys.platform != "win32":
    import fcntl

    def hold(descriptor: int) -> None:
        """Say that this process writes to the file; where locks cannot be had, nothing is said."""
        with suppress(OSError):
            fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)

    def is_held(path: Path) -> bool:
        """Whether a process says that it writes to the file. Raises OSError when it cannot be opened."""
        descriptor = os.open(path, os.O_RDONLY)
        try:
            fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            return True
        except OSError:
            return False
        finally:
            os.close(descriptor)
        return False

else:

    def hold(descriptor: int) -> None:
        """Nothing needs saying: a file that is open cannot be taken away."""

    def is_held(path: Path) -> bool:  # noqa: ARG001
        """Whether a process says that it writes to the file: that is found out when it is taken away."""
        return False
