"""Playing through simpleaudio: one thread of C for each buffer, which never waits for the interpreter."""

import os
from collections.abc import Iterator
from contextlib import contextmanager
from types import ModuleType
from typing import Any

import numpy as np

from app.audio.clocks import Clock, MonotonicClock
from app.audio.samples import CHANNELS, NOTHING, PER_MS, RATE, Stereo, silence, soften
from app.audio.speaker.hush import hush_alsa
from app.audio.speaker.port import First, from_the_start
from app.domain.errors import SpeakerError

START_MS = 2
"""From `play` to the sink of a sound server, as recorded there. A device adds what the user is to calibrate,
and a screen about as much: a guess at one of them alone would put them apart."""
QUEUE_VARIABLE, QUEUE_MS = "PULSE_LATENCY_MSEC", 80
"""PulseAudio reads here how much sound to hold; the library's own 100 ms sound on too long after a stop."""
WARM_UP_MS = 500
GRACE_MS = 500


class SimpleaudioSpeaker:
    """The system's default device through simpleaudio."""

    name = "simpleaudio"
    notice: str | None = None

    def __init__(self, clock: Clock | None = None) -> None:
        self.latency_ms = START_MS
        self._clock = clock or MonotonicClock()
        self._module: ModuleType | None = None
        self._playing: Any = None
        self._meant: Stereo = NOTHING
        self._sounding: Stereo = NOTHING
        self._share = 1.0
        self._began_ms = 0

    @property
    def lost(self) -> bool:
        """Whether its thread ended before the buffer did."""
        playing = self._playing
        if playing is None or self._passed_ms >= len(self._meant) // PER_MS - GRACE_MS:
            return False
        return not playing.is_playing()

    def warm_up(self) -> None:
        """Play half a second of silence. Raises SpeakerError when there is no device."""
        self.play(silence(WARM_UP_MS))

    def play(self, samples: Stereo, first: First = from_the_start) -> None:
        """Play samples from the `first` frame on in place of what plays now.

        Raises SpeakerError when there is no device.
        """
        self.stop()
        module = self._load()
        # The library reads this memory while it plays: a copy of our own can be softened and cannot go away.
        own = np.empty(samples.shape, dtype=np.int16)
        soften(samples, self._share, own)
        begin = first()
        if begin >= len(own):
            return
        try:
            with _short_queue():
                self._playing = module.play_buffer(own[begin:], CHANNELS, own.itemsize, RATE)
        except Exception as error:
            raise SpeakerError(f"The sound device could not be opened ({error}).") from error
        self._meant, self._sounding = samples[begin:], own[begin:]
        self._began_ms = self._clock.now_ms()

    def set_loudness(self, share: float) -> None:
        """Play at this share of what the samples say, from what has not gone to the device yet on."""
        self._share = share
        here = max(self._passed_ms - GRACE_MS, 0) * PER_MS
        soften(self._meant[here:], share, self._sounding[here:])

    def stop(self) -> None:
        """Be silent: what has not gone to the device yet becomes silence, and the thread is told to end."""
        self._sounding.fill(0)
        if self._playing is not None:
            self._playing.stop()
        self._playing, self._meant, self._sounding = None, NOTHING, NOTHING

    def tend(self) -> None:
        """Nothing of its own to bring back: whoever holds the buffer does that."""

    def close(self) -> None:
        """Fall silent."""
        self.stop()

    @property
    def _passed_ms(self) -> int:
        return self._clock.now_ms() - self._began_ms

    def _load(self) -> ModuleType:
        if self._module is None:
            try:
                import simpleaudio
            except Exception as error:
                raise SpeakerError("simpleaudio is not installed for this Python.") from error
            hush_alsa()
            self._module = simpleaudio
        return self._module


@contextmanager
def _short_queue() -> Iterator[None]:
    """Set the length of the queue while a stream is opened, unless the user has."""
    if QUEUE_VARIABLE in os.environ:
        yield
        return
    os.environ[QUEUE_VARIABLE] = str(QUEUE_MS)
    try:
        yield
    finally:
        os.environ.pop(QUEUE_VARIABLE, None)
