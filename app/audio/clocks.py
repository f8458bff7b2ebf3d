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
        if sys.platform == "linux":  # the ordinary clock stands still there in a sleep
            return time.clock_gettime_ns(time.CLOCK_BOOTTIME) // 1_000_000
        return time.monotonic_ns() // 1_000_000
