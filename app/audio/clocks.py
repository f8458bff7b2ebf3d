"""The one clock that a run is timed by."""

import sys
import time
from typing import Protocol


class Clock(Protocol):
    """Something that tells the time since a fixed moment, and never goes back."""

    def now_ms(self) -> int:
        """Whole milliseconds since a fixed moment of this process."""


class MonotonicClock:
    """The machine's monotonic clock, which goes on while the machine sleeps: a sleep is seen as a gap."""

    def now_ms(self) -> int:
        """Whole milliseconds since a moment that is fixed while the machine runs."""
        if sys.platform == "linux":
            now_ns = time.clock_gettime_ns(time.CLOCK_BOOTTIME)  # the ordinary one stands still in a sleep
        else:
            now_ns = time.monotonic_ns()
        return now_ns // 1_000_000
