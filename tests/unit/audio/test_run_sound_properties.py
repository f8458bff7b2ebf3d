"""Whatever is pressed, whenever: what is heard is what the run stands at."""

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from numpy.typing import NDArray

from app.audio import run_sound
from app.audio.bout_sound import OPEN_TAIL_MS, Entry
from app.audio.run_sound import RunSound
from app.domain.cues import CODA_MS
from app.domain.timeline import Bout, Timeline
from app.run.controller import Controller
from app.run.intents import Begin, Intent
from app.run.state import RunState, Stand
from tests.driven import MOMENTS, TIMELINE
from tests.fakes import HandClock, ImmediateExecutor, RecordingSpeaker

LATENCY_MS = 200
COUNT = -1
"""In the place of a bout: a rep counted aloud."""


def end_of(bout: Bout) -> int:
    return (OPEN_TAIL_MS if bout.work_ms is None else bout.work_ms) + CODA_MS


def placed(_timeline: Timeline, bout: Bout, entry: Entry, *_how: object) -> NDArray[Any]:
    """A buffer of one frame a ms, each saying which bout it is of and where."""
    places = np.arange(entry.from_ms, end_of(bout), dtype=np.int32)
    return np.stack((np.full_like(places, bout.index), places), axis=1)


class Ear(RecordingSpeaker):
    """A speaker that knows what sounds at each moment of a clock."""

    def __init__(self, clock: HandClock) -> None:
        super().__init__(LATENCY_MS)
        self._clock = clock
        self._since: tuple[NDArray[Any], int] | None = None

    def play(self, samples: NDArray[Any], first: Callable[[], int] = lambda: 0) -> None:
        self._since = (samples[first() :], self._clock.at_ms)

    def stop(self) -> None:
        self._since = None

    def warm_up(self) -> None:
        self._since = None

    @property
    def hears(self) -> tuple[int, int] | None:
        """The bout and its place in ms that is sent to the device now; None in silence."""
        if self._since is None:
            return None
        samples, began = self._since
        frame = self._clock.at_ms - began
        if frame >= len(samples):
            return None
        bout, place = samples[frame]
        return int(bout), int(place)


@given(MOMENTS)
@settings(max_examples=100)
def test_what_is_heard_is_where_the_run_stands(moments: list[tuple[Intent, int]]) -> None:
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(run_sound, "bout_sound", placed)
        patch.setattr(run_sound, "count_sound", lambda *_of, **_how: np.full((CODA_MS, 2), COUNT))
        patch.setattr(run_sound, "PER_MS", 1)
        clock = HandClock(10_000)
        ear, controller = Ear(clock), Controller(TIMELINE)
        sound = RunSound(TIMELINE, ear, clock, executors=(ImmediateExecutor(), ImmediateExecutor()))
        sound.prepare(controller.state)
        for intent, passed in [(Begin(), 0), *moments]:
            clock.at_ms += max(passed, 0)
            now = clock.at_ms - LATENCY_MS
            _, facts = controller.handle(intent, now)
            sound.hear(facts)
            sound.follow(controller.state, now)
            assert _in_step(controller.state, now, ear.hears)


def _in_step(state: RunState, now: int, hears: tuple[int, int] | None) -> bool:
    if hears is not None and hears[0] == COUNT:
        return True
    if state.stand is not Stand.RUNNING:
        return hears is None or state.stand is Stand.ENDED
    bout = TIMELINE.bouts[state.bout]
    sent_ms = state.local_ms(now) + LATENCY_MS
    if hears is None:
        return sent_ms >= end_of(bout) or _rings_out(state, now)
    here = hears[0] == state.bout and hears[1] == sent_ms
    last = TIMELINE.bouts[hears[0]].work_ms
    return here or (last is not None and hears[1] >= last - LATENCY_MS and _rings_out(state, now))


def _rings_out(state: RunState, now: int) -> bool:
    """The last bout may still sound, or have just ended: its coda takes the first moments of the gap."""
    entered = replace(state, cursor_ms=0).local_ms(now)
    return entered <= CODA_MS + LATENCY_MS
