"""Playing through miniaudio: an open device that is fed silence between buffers, and a choice of devices."""

from collections.abc import Generator
from typing import Any

import numpy as np

from app.audio.clocks import Clock, MonotonicClock
from app.audio.samples import CHANNELS, NOTHING, PER_MS, RATE, Stereo, soften
from app.audio.speaker.hush import hush_alsa
from app.audio.speaker.port import First, from_the_start
from app.domain.errors import SpeakerError

BUFFER_MS = 400
"""The library's thread needs the interpreter for each buffer: beside busy threads 20 ms is far too short, and
200 ms sometimes. A fresh device plays its first buffer at once, so that its length delays nothing."""
START_MS = 2
"""From `play` to the sink of a sound server, as recorded there."""
STALLED_MS = 1_500


def list_devices() -> tuple[str, ...]:
    """Names of the playback devices miniaudio sees; none when it cannot look."""
    return tuple(device["name"] for device in _devices())


class MiniaudioSpeaker:
    """A device through miniaudio, the default one unless named."""

    notice: str | None = None

    def __init__(self, device: str | None = None, clock: Clock | None = None) -> None:
        self.latency_ms = START_MS
        self._wanted = device
        self._clock = clock or MonotonicClock()
        self._device: Any = None
        self._feed = _Feed(self._clock)
        self._meant: Stereo = NOTHING
        self._began_ms = 0

    @property
    def name(self) -> str:
        """The library, and the device where one was named."""
        return "miniaudio" if self._wanted is None else f"miniaudio: {self._wanted}"

    @property
    def lost(self) -> bool:
        """Whether the device has stopped asking for samples."""
        device = self._device
        running = device is not None and device.running
        return running and self._clock.now_ms() - self._feed.asked_ms > STALLED_MS

    def warm_up(self) -> None:
        """Open the device and let it play silence. Raises SpeakerError when there is none."""
        if self._device is None or not self._device.running or self.lost:
            self.play(NOTHING)

    def play(self, samples: Stereo, first: First = from_the_start) -> None:
        """Play samples from the `first` frame on in place of what plays now.

        Raises SpeakerError when there is no device.
        """
        self.close()
        self._device = self._open()
        self._meant = samples[first() :]
        self._began_ms = self._clock.now_ms()
        self._feed.take(self._meant)
        try:
            self._device.start(self._feed.serve())
        except Exception as error:
            self.close()
            raise SpeakerError(f"The sound device could not be started ({error}).") from error

    def set_loudness(self, share: float) -> None:
        """Play at this share of what the samples say, once what the device holds has been played.

        To be mute, or not any more, does not wait for that. Raises SpeakerError when the device has gone.
        """
        at_once = (share == 0) != (self._feed.share == 0)
        self._feed.share = share
        if at_once and self._device is not None:
            self.play(self._meant, lambda: (self._clock.now_ms() - self._began_ms) * PER_MS)

    def stop(self) -> None:
        """Be silent at once: the device goes, and with it what it holds and would play when started again."""
        self.close()

    def tend(self) -> None:
        """Nothing of its own to bring back: whoever holds the buffer does that."""

    def close(self) -> None:
        """Let the device go."""
        device, self._device = self._device, None
        if device is not None:
            device.close()

    def _open(self) -> Any:  # noqa: ANN401
        try:
            import miniaudio

            hush_alsa()
            chosen = self._chosen()
            device = miniaudio.PlaybackDevice(
                miniaudio.SampleFormat.SIGNED16, CHANNELS, RATE, BUFFER_MS, chosen, app_name="Pacewright"
            )
            if device.backend.lower() == "null":
                device.close()
                raise SpeakerError("There is no sound device.")
        except SpeakerError:
            raise
        except Exception as error:
            raise SpeakerError(f"The sound device could not be opened ({error}).") from error
        return device

    def _chosen(self) -> Any:  # noqa: ANN401
        if self._wanted is None:
            return None
        for device in _devices():
            if device["name"] == self._wanted:
                return device["id"]
        raise SpeakerError(f"There is no sound device called '{self._wanted}'.")


class _Feed:
    """Hands the current buffer to the device piece by piece, and silence after it."""

    def __init__(self, clock: Clock) -> None:
        self._clock = clock
        self._place: tuple[Stereo, int] = (NOTHING, 0)
        self.asked_ms = 0
        self.share = 1.0

    def take(self, samples: Stereo) -> None:
        """From now on these are handed out, from their beginning."""
        self._place = (samples, 0)
        self.asked_ms = self._clock.now_ms()

    def serve(self) -> Generator[Stereo, int, None]:
        """A generator that has been started: it is sent a number of frames and gives as many."""
        pieces = self._pieces()
        next(pieces)
        return pieces

    def _pieces(self) -> Generator[Stereo, int, None]:
        wanted = yield NOTHING
        while True:
            self.asked_ms = self._clock.now_ms()
            place = self._place
            samples, begin = place
            piece = samples[begin : begin + wanted]
            if self._place is place:
                self._place = (samples, begin + len(piece))
            given = np.zeros((wanted, CHANNELS), dtype=np.int16)
            soften(piece, self.share, given[: len(piece)])
            wanted = yield given


def _devices() -> list[dict[str, Any]]:
    try:
        import miniaudio

        hush_alsa()
        found: list[dict[str, Any]] = miniaudio.Devices().get_playbacks()
    except Exception:
        return []
    return found
