"""The one clock that a run is timed by."""

import time
from typing import Protocol


class Clock(Protocol):
    """Something that tells the time since a fixed moment, and never goes back."""

    def now_ms(self) -> int:
        """Whole milliseconds since a fixed moment of this process."""


class MonotonicClock:
    """The machine's monotonic clock; on Linux it stands still while the machine sleeps."""

    def now_ms(self) -> int:
        """Whole milliseconds since a moment that is fixed while the machine runs."""
        return time.monotonic_ns() // 1_000_000
