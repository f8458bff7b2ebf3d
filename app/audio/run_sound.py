"""The sound of a run: follows the run's stretches of time with one buffer each, rendered ahead."""

from collections import deque
from collections.abc import Callable
from concurrent.futures import Executor, Future, ThreadPoolExecutor
from dataclasses import replace
from functools import partial

from app.audio.bout_sound import Entry, Manner, Score, bout_sound, count_sound
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
from app.run.sounding import Loudness, Making
from app.run.state import RunState, Stand

Wanted = tuple[int, Entry]
"""One buffer: the index of a bout, and how its sound is entered."""

TEND_EACH_MS = 500
WAKE_EACH_MS = 3_000
"""After some five seconds of nothing a sound server lets the device sleep; to wake it would delay a bout."""


class RunSound:
    """Plays what belongs to where a run stands.

    Buffers are rendered on one thread and played from another, so that neither a slow device nor a long bout
    holds up the picture. Without a voice there are tones only. The speaker and the voice are closed with it.
    A slip of the program on either thread is raised by the next `follow`, once, and the run can go on.
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
        self._score: Score | None = None
        self._timeline, self._speaker, self._clock = timeline, speaker, clock
        asked = manner or Manner()
        self._voice, self._manner = voice, replace(asked, volumes=asked.volumes.balance)
        self._loudness = Loudness(round(asked.volumes.loudest * 100), asked.muted)
        self._making: Making | None = None
        self._phrases: Future[dict[str, Spoken]] | None = None
        self._kitchen, self._desk = executors or (_thread("sound"), _thread("speaker"))
        self._ahead: dict[Wanted, Future[Stereo]] = {}
        self._handed: deque[Future[None]] = deque()
        self._stretch: object = None
        self._ends_at_ms: int | None = None
        self._counted_out = False
        self._due: Wanted | None = None
        self._turns = 0
        self._tended_ms: int | None = None

    def prepare(self, state: RunState) -> None:
        """Wake the device, make the speech, and render the first bout while the athlete gets ready."""
        self._stretch = state.stand
        self.set_loudness(self._loudness)
        self._hand(self._speaker.warm_up)
        if self._voice is not None:
            self._phrases = self._kitchen.submit(self._speak, self._voice)
        self._fetch(_wanted(state, 0))

    @property
    def notice(self) -> str | None:
        """Why there is no speech, None while there is."""
        return None if self._voice is None else self._voice.notice

    @property
    def making(self) -> Making | None:
        """How far speech has been made, None once it is."""
        return self._making

    @property
    def loudness(self) -> Loudness:
        """How loud it is; at 100 percent the louder of tones and voice is as loud as it can be."""
        return self._loudness

    def set_loudness(self, loudness: Loudness) -> None:
        """Be as loud as that, what plays now included."""
        self._loudness = loudness
        self._hand(lambda: self._speaker.set_loudness(loudness.share))

    def hear(self, facts: tuple[Fact, ...]) -> None:
        """Count aloud the reps of open-ended work; the last one closes the bout."""
        ended = {fact.bout for fact in facts if isinstance(fact, BoutEnded)}
        for fact in facts:
            if isinstance(fact, RepDone) and self._timeline.bouts[fact.bout].open_ended:
                self._counted_out = fact.bout in ended
                self._hand(partial(self._count, fact, last=fact.bout in ended))

    def follow(self, state: RunState, now_ms: int) -> None:
        """Turn to a new stretch of time where there is one, and play it once it is rendered and due."""
        running = state.stand is Stand.RUNNING
        stretch = state.stretch if running else state.stand
        if stretch != self._stretch:
            self._turn(state, running=running)
            self._stretch = stretch
        if running and self._due is not None:
            self._play_when_due(state, now_ms)
        else:
            self._look_after(state.stand, now_ms)
        self._raise_slips()

    def rescore(self, score: Score) -> None:
        """Let something else be heard of the timeline than one athlete would, from where the run stands.

        Speech is made in `prepare`: a later score has no texts but those of the one before.
        """
        self._score = score
        for old in list(self._ahead):
            self._ahead.pop(old).cancel()
        self._stretch = None

    def close(self) -> None:
        """Be silent, and end both threads."""
        self._turns += 1
        self._hand(self._speaker.stop)
        self._hand(self._speaker.close)
        if self._voice is not None:
            self._voice.close()
        for thread in (self._kitchen, self._desk):
            thread.shutdown(wait=True, cancel_futures=thread is self._kitchen)
        self._raise_slips()

    def _hand(self, act: Callable[[], None]) -> None:
        self._handed.append(self._desk.submit(act))

    def _raise_slips(self) -> None:
        while self._handed and self._handed[0].done():
            self._handed.popleft().result()

    def _speak(self, voice: Voice) -> dict[str, Spoken]:
        if self._score is not None:
            texts = self._score.texts()
        else:
            texts = spoken_texts(self._timeline, self._manner.level, TONGUES[self._manner.language])

        def made(done: int, of: int) -> None:
            self._making = Making(done, of) if done < of else None

        made(0, len(texts))
        return voice.prepare(texts, made).result()

    def _look_after(self, stand: Stand, now_ms: int) -> None:
        """Bring back what fell silent; keep the device awake while the run stands still."""
        running = stand is Stand.RUNNING
        last_ms = now_ms if self._tended_ms is None else self._tended_ms
        self._tended_ms = last_ms
        if stand is not Stand.ENDED and now_ms - last_ms >= (TEND_EACH_MS if running else WAKE_EACH_MS):
            self._tended_ms = now_ms
            self._hand(self._speaker.tend if running else self._speaker.warm_up)

    def _turn(self, state: RunState, *, running: bool) -> None:
        entered_ms = state.anchor_ms if running else state.began_ms + (state.ended_ms or 0)
        by_itself = self._counted_out or entered_ms == self._ends_at_ms
        rings_out = by_itself and state.stand is not Stand.PAUSED
        self._turns += 1
        self._counted_out = False
        self._due = _wanted(state, CODA_MS if rings_out else 0) if running else None
        self._ends_at_ms = self._end_of(state) if running else None
        if not rings_out:
            self._hand(self._speaker.stop)
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
        made = self._ahead.pop(wanted)
        self._hand(partial(self._play, made, wanted[1].from_ms, state, self._turns))
        self._fetch_next(state)

    def _play(self, made: "Future[Stereo]", from_ms: int, state: RunState, turn: int) -> None:
        samples = made.result()
        if turn == self._turns:
            self._speaker.play(samples, lambda: max(self._place_ms(state) - from_ms, 0) * PER_MS)

    def _place_ms(self, state: RunState) -> int:
        latency = self._speaker.latency_ms
        return state.local_ms(self._clock.now_ms() - latency) + latency

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
        if self._score is not None:
            return self._score.samples(bout, entry, self._manner.volumes, self._spoken())
        return bout_sound(self._timeline, bout, entry, self._manner, self._spoken())

    def _spoken(self) -> Phrases:
        return {} if self._phrases is None else self._phrases.result()


def _wanted(state: RunState, after_ms: int) -> Wanted:
    return state.bout, Entry(state.cursor_ms + after_ms, state.work_from_ms, state.rest_ms)


def _thread(name: str) -> Executor:
    return ThreadPoolExecutor(max_workers=1, thread_name_prefix=name)
