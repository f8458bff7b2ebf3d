"""The sound of a run: follows the run's stretches of time with one buffer each, rendered ahead."""

from collections.abc import Callable
from concurrent.futures import Executor, Future, ThreadPoolExecutor
from dataclasses import dataclass
from typing import TYPE_CHECKING, Protocol

from app.domain.cues import CODA_MS, bout_cues
from app.domain.timeline import Timeline
from app.run.state import RunState, Stand

if TYPE_CHECKING:
    from app.audio.samples import Stereo
    from app.audio.speaker.port import Speaker

OPEN_TAIL_MS = 2_000
SAMPLES_A_MS = 48


@dataclass(frozen=True, slots=True)
class Wanted:
    """One buffer: a bout from a place on its axis on, entered at a rep, after a gap of a length. In ms."""

    bout: int
    start_ms: int
    work_from_ms: int
    rest_ms: int


class Sounding(Protocol):
    """What a session asks of its sound."""

    def prepare(self, state: RunState) -> None:
        """Get ready while the athlete does."""

    def follow(self, state: RunState, now_ms: int) -> None:
        """Bring the sound to where the run stands; called after each change and each tick."""

    def close(self) -> None:
        """Be silent, and let everything go."""


class NoSound:
    """Where nothing is to be heard: pictures, and tests of what is seen."""

    def prepare(self, state: RunState) -> None:
        """There is nothing to get ready."""

    def follow(self, state: RunState, now_ms: int) -> None:
        """There is nothing to follow with."""

    def close(self) -> None:
        """There is nothing to let go."""


class RunSound:
    """Plays what belongs to where a run stands. Rendering happens in a thread of its own.

    `render` makes the samples of a `Wanted`, `executor` runs it; both are given by those who test.
    """

    def __init__(
        self,
        timeline: Timeline,
        speaker: "Speaker",
        render: "Callable[[Wanted], Stereo] | None" = None,
        executor: Executor | None = None,
    ) -> None:
        self._timeline = timeline
        self._speaker = speaker
        self._render = render or self._rendered
        self._thread = executor or ThreadPoolExecutor(max_workers=1, thread_name_prefix="sound")
        self._ahead: dict[Wanted, Future[Stereo]] = {}
        self._stretch: object = None
        self._ends_at_ms: int | None = None
        self._due: Wanted | None = None

    def prepare(self, state: RunState) -> None:
        """Wake the device, and render the first bout while the athlete gets ready."""
        self._thread.submit(self._speaker.warm_up)
        self._fetch(_wanted(state, 0))

    def follow(self, state: RunState, now_ms: int) -> None:
        """Bring the sound to where the run stands; called after each change and each tick."""
        running = state.stand is Stand.RUNNING
        stretch = state.stretch if running else state.stand
        if stretch != self._stretch:
            self._turn(state, running=running)
            self._stretch = stretch
        if self._due is not None and running:
            self._play_when_due(state, now_ms)

    def close(self) -> None:
        """Be silent and end the thread."""
        self._speaker.stop()
        self._thread.shutdown(wait=True, cancel_futures=True)

    def _turn(self, state: RunState, *, running: bool) -> None:
        entered_ms = state.anchor_ms if running else state.began_ms + (state.ended_ms or 0)
        by_itself = entered_ms == self._ends_at_ms and state.stand is not Stand.PAUSED
        self._due = _wanted(state, CODA_MS if by_itself else 0) if running else None
        self._ends_at_ms = self._end_of(state) if running else None
        if not by_itself:
            self._speaker.stop()
        if self._due is not None:
            self._fetch(self._due)

    def _end_of(self, state: RunState) -> int | None:
        work_ms = self._timeline.bouts[state.bout].work_ms
        return None if work_ms is None else state.anchor_ms + work_ms - state.cursor_ms

    def _play_when_due(self, state: RunState, now_ms: int) -> None:
        wanted = self._due
        if wanted is None or wanted not in self._ahead or not self._ahead[wanted].done():
            return
        place = state.local_ms(now_ms) + self._speaker.latency_ms
        if place < wanted.start_ms:
            return
        samples = self._ahead.pop(wanted).result()
        self._due = None
        if (rest := samples[(place - wanted.start_ms) * SAMPLES_A_MS :]).size:
            self._speaker.play(rest)
        self._fetch_next(state)

    def _fetch(self, wanted: Wanted) -> None:
        if wanted not in self._ahead:
            self._ahead[wanted] = self._thread.submit(self._render, wanted)

    def _fetch_next(self, state: RunState) -> None:
        following = [
            bout
            for bout in self._timeline.bouts[state.bout + 1 :]
            if (bout.stage, bout.exercise) not in state.skipped
        ]
        for old in list(self._ahead):
            self._ahead.pop(old).cancel()
        if following:
            bout = following[0]
            self._fetch(Wanted(bout.index, CODA_MS - bout.before_ms, 0, bout.gap_ms))

    def _rendered(self, wanted: Wanted) -> "Stereo":
        from app.audio.track import render_track

        bout = self._timeline.bouts[wanted.bout]
        cues = bout_cues(
            self._timeline,
            bout,
            from_ms=wanted.start_ms,
            work_from_ms=wanted.work_from_ms,
            rest_ms=wanted.rest_ms,
        )
        end = OPEN_TAIL_MS if bout.work_ms is None else bout.work_ms + CODA_MS
        return render_track(cues, wanted.start_ms, end)


def _wanted(state: RunState, after_ms: int) -> Wanted:
    return Wanted(state.bout, state.cursor_ms + after_ms, state.work_from_ms, state.rest_ms)
