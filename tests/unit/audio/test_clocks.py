"""The clock of a run: a sleep of the machine is not lost on it."""

import sys
import time

import pytest

from app.audio.clocks import MonotonicClock


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere the ordinary clock goes on in a sleep")
def test_it_goes_on_while_the_machine_sleeps(monkeypatch: pytest.MonkeyPatch) -> None:
    slept_ns = 60_000_000_000
    ordinary = time.monotonic_ns()

    def read(which: int) -> int:
        return ordinary + (slept_ns if which == time.CLOCK_BOOTTIME else 0)

    monkeypatch.setattr(time, "clock_gettime_ns", read)
    monkeypatch.setattr(time, "monotonic_ns", lambda: ordinary)
    assert MonotonicClock().now_ms() == (ordinary + slept_ns) // 1_000_000
