"""The sound of a run: follows the run's stretches of time with one buffer each, rendered ahead."""

from concurrent.futures import Executor, Future, ThreadPoolExecutor

from app.audio.bout_sound import Entry, Manner, bout_sound, count_sound
from app.audio.clocks import Clock
from app.audio.samples import PER_MS, Spoken, Stereo
from app.audio.speaker.port import Speaker
from app.audio.track import Phrases
from app.audio.voice import Voice
from app.domain.cue_texts import spoken_texts
from app.domain.cue_words import TONGUES
from app.domain.cues import CODA_MS
from app.domain.records import BoutEnded, Fact, RepDone
from app.domain.timeline import Timeline
from app.run.state import RunState, Stand

Wanted = tuple[int, Entry]
"""One buffer: the index of a bout, and how its sound is entered."""

TEND_EACH_MS = 500


class RunSound:
    """Plays what belongs to where a run stands.

    Buffers are rendered on one thread and played from another, so that neither a slow device nor a long bout
    holds up the picture. Without a voice there are tones only. The speaker and the voice are closed with it.
    """

    def __init__(
        self,
        timeline: Timeline,
        speaker: Speaker,
        clock: Clock,
        voice: Voice | None = None,
        manner: Manner | None = None,
        executors: tuple[Executor, Executor] | None = None,
    ) -> None:
        self._timeline, self._speaker, self._clock = timeline, speaker, clock
        self._voice, self._manner = voice, manner or Manner()
        self._phrases: Future[dict[str, Spoken]] | None = None
        self._kitchen, self._desk = executors or (_thread("sound"), _thread("speaker"))
        self._ahead: dict[Wanted, Future[Stereo]] = {}
        self._stretch: object = None
        self._ends_at_ms: int | None = None
        self._counted_out = False
        self._due: Wanted | None = None
        self._turns = 0
        self._tended_ms = 0

    def prepare(self, state: RunState) -> None:
        """Wake the device, and render the first bout while the athlete gets ready."""
        self._desk.submit(self._speaker.warm_up)
        if self._voice is not None:
            tongue = TONGUES[self._manner.language]
            self._phrases = self._voice.prepare(spoken_texts(self._timeline, self._manner.level, tongue))
        self._fetch(_wanted(state, 0))

    def hear(self, facts: tuple[Fact, ...]) -> None:
        """Count aloud the reps of open-ended work; the last one closes the bout."""
        ended = {fact.bout for fact in facts if isinstance(fact, BoutEnded)}
        for fact in facts:
            if isinstance(fact, RepDone) and self._timeline.bouts[fact.bout].open_ended:
                self._counted_out = fact.bout in ended
                self._desk.submit(self._count, fact, last=fact.bout in ended)

    def follow(self, state: RunState, now_ms: int) -> None:
        """Turn to a new stretch of time where there is one, and play it once it is rendered and due."""
        running = state.stand is Stand.RUNNING
        stretch = state.stretch if running else state.stand
        if stretch != self._stretch:
            self._turn(state, running=running)
            self._stretch = stretch
        if running and self._due is not None:
            self._play_when_due(state, now_ms)
        elif running and now_ms - self._tended_ms >= TEND_EACH_MS:
            self._tended_ms = now_ms
            self._desk.submit(self._speaker.tend)

    def close(self) -> None:
        """Be silent, and end both threads."""
        self._turns += 1
        self._desk.submit(self._speaker.stop)
        self._desk.submit(self._speaker.close)
        for thread in (self._kitchen, self._desk):
            thread.shutdown(wait=True)
        if self._voice is not None:
            self._voice.close()

    def _turn(self, state: RunState, *, running: bool) -> None:
        entered_ms = state.anchor_ms if running else state.began_ms + (state.ended_ms or 0)
        by_itself = self._counted_out or entered_ms == self._ends_at_ms
        rings_out = by_itself and state.stand is not Stand.PAUSED
        self._turns += 1
        self._counted_out = False
        self._due = _wanted(state, CODA_MS if rings_out else 0) if running else None
        self._ends_at_ms = self._end_of(state) if running else None
        if not rings_out:
            self._desk.submit(self._speaker.stop)
        if self._due is not None:
            self._fetch(self._due)

    def _end_of(self, state: RunState) -> int | None:
        work_ms = self._timeline.bouts[state.bout].work_ms
        return None if work_ms is None else state.anchor_ms + work_ms - state.cursor_ms

    def _play_when_due(self, state: RunState, now_ms: int) -> None:
        wanted = self._due
        if wanted is None or wanted not in self._ahead or not self._ahead[wanted].done():
            return
        if state.local_ms(now_ms) + self._speaker.latency_ms < wanted[1].from_ms:
            return
        self._due = None
        samples = self._ahead.pop(wanted).result()
        self._desk.submit(self._play, samples, wanted[1].from_ms, state, self._turns)
        self._fetch_next(state)

    def _play(self, samples: Stereo, from_ms: int, state: RunState, turn: int) -> None:
        if turn != self._turns:
            return
        latency = self._speaker.latency_ms
        place = state.local_ms(self._clock.now_ms() - latency) + latency
        rest = samples[max(place - from_ms, 0) * PER_MS :]
        if rest.size:
            self._speaker.play(rest)

    def _count(self, fact: RepDone, *, last: bool) -> None:
        self._speaker.play(count_sound(fact.rep, self._manner, self._spoken(), side=fact.side, last=last))

    def _fetch(self, wanted: Wanted) -> None:
        if wanted not in self._ahead:
            self._ahead[wanted] = self._kitchen.submit(self._render, wanted)

    def _fetch_next(self, state: RunState) -> None:
        for old in list(self._ahead):
            self._ahead.pop(old).cancel()
        for bout in self._timeline.bouts[state.bout + 1 :]:
            if (bout.stage, bout.exercise) not in state.skipped:
                self._fetch((bout.index, Entry(CODA_MS - bout.before_ms, 0, bout.gap_ms)))
                return

    def _render(self, wanted: Wanted) -> Stereo:
        index, entry = wanted
        bout = self._timeline.bouts[index]
        return bout_sound(self._timeline, bout, entry, self._manner, self._spoken())

    def _spoken(self) -> Phrases:
        return {} if self._phrases is None else self._phrases.result()


def _wanted(state: RunState, after_ms: int) -> Wanted:
    return state.bout, Entry(state.cursor_ms + after_ms, state.work_from_ms, state.rest_ms)


def _thread(name: str) -> Executor:
    return ThreadPoolExecutor(max_workers=1, thread_name_prefix=name)
