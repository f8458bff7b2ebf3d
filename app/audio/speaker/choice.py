"""Which speaker plays: the best that can be had, tried anew at each buffer, and said when it is another."""

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from typing import Literal

from app.audio.clocks import Clock, MonotonicClock
from app.audio.samples import PER_MS, Stereo
from app.audio.speaker.mini import MiniaudioSpeaker
from app.audio.speaker.port import First, Speaker, from_the_start
from app.audio.speaker.silent import SilentSpeaker
from app.audio.speaker.simple import SimpleaudioSpeaker
from app.domain.errors import SpeakerError

Preference = Literal["auto", "simpleaudio", "miniaudio", "silent"]
RETRY_MS = 1_000
NO_SOUND = "No sound: {} The session goes on without it; it is tried again at the next bout."
GONE = "The sound device has gone. The session goes on, and so does the sound once there is a device again."


class SteadySpeaker:
    """Several speakers as one that never raises: each buffer goes to the first that takes it.

    A buffer that fell silent with its device is taken up again, where it would be by then, once there is one.
    """

    def __init__(self, choices: Sequence[Speaker], clock: Clock) -> None:
        self._choices = tuple(choices)
        self._clock = clock
        self._current: Speaker = self._choices[0]
        self._silent = SilentSpeaker()
        self._notice: str | None = None
        self._buffer: Stereo | None = None
        self._began_ms = self._tried_ms = 0
        self._has_sounded = False

    @property
    def name(self) -> str:
        """The one that played last, or would play first."""
        return self._current.name

    @property
    def notice(self) -> str | None:
        """Why it is another speaker than wanted, or that the device has gone."""
        return GONE if self.lost else self._notice

    @property
    def lost(self) -> bool:
        """Whether a device that played has gone and none has taken its place."""
        return self._current.lost or (self._current is self._silent and self._has_sounded)

    @property
    def latency_ms(self) -> int:
        """Time from `play` to the sound, of the speaker that played last or would play first."""
        return self._current.latency_ms

    @latency_ms.setter
    def latency_ms(self, value: int) -> None:
        self._current.latency_ms = value

    def warm_up(self) -> None:
        """Wake the first speaker that can be had."""
        self._buffer = None
        self._first(lambda speaker: speaker.warm_up())

    def play(self, samples: Stereo, first: First = from_the_start) -> None:
        """Play samples in place of what plays now, on the first speaker that can be had."""

        def begin() -> int:
            frame = first()
            self._began_ms = self._clock.now_ms() - frame // PER_MS
            return frame

        self._buffer, self._began_ms = samples, self._clock.now_ms()
        self._first(lambda speaker: speaker.play(samples, begin))

    def set_loudness(self, share: float) -> None:
        """Play at this share of what the samples say, on whichever speaker."""
        for speaker in (*self._choices, self._silent):
            _quietly(partial(speaker.set_loudness, share))

    def stop(self) -> None:
        """Be silent at once."""
        self._buffer = None
        _quietly(self._current.stop)

    def tend(self) -> None:
        """Try again, once a second, to play on what fell silent with its device."""
        now = self._clock.now_ms()
        if self._buffer is None or not self.lost or now - self._tried_ms < RETRY_MS:
            return
        rest = self._buffer[(now - self._began_ms) * PER_MS :]
        if len(rest):
            self._first(lambda speaker: speaker.play(rest))

    def close(self) -> None:
        """Let every device go."""
        self._buffer = None
        for speaker in self._choices:
            _quietly(speaker.close)

    def _first(self, attempt: Callable[[Speaker], None]) -> None:
        self._tried_ms = self._clock.now_ms()
        reasons: list[str] = []
        for speaker in (*self._choices, self._silent):
            try:
                if speaker is not self._current:
                    _quietly(self._current.stop)
                attempt(speaker)
            except SpeakerError as error:
                reasons.append(str(error))
                continue
            self._current = speaker
            self._has_sounded = self._has_sounded or speaker is not self._silent
            self._notice = _notice(speaker, reasons)
            return


def _quietly(act: Callable[[], None]) -> None:
    try:
        act()
    except SpeakerError:
        return


def choose_speaker(
    preference: Preference = "auto",
    *,
    device: str | None = None,
    clock: Clock | None = None,
    latency_ms: Mapping[str, int] | None = None,
) -> SteadySpeaker:
    """The speaker for a preference; silence where nothing else can be had, with a notice.

    A named `device` is one of `mini.list_devices()` and is had through miniaudio only. `latency_ms` is what
    the user has set, by the name of the speaker.
    """
    timer = clock or MonotonicClock()
    simple = SimpleaudioSpeaker(timer)
    mini = MiniaudioSpeaker(device, timer)
    orders: dict[str, tuple[Speaker, ...]] = {
        "auto": (simple, mini) if device is None else (mini, simple),
        "simpleaudio": (simple,),
        "miniaudio": (mini,),
        "silent": (SilentSpeaker(),),
    }
    for speaker in orders[preference]:
        speaker.latency_ms = (latency_ms or {}).get(speaker.name, speaker.latency_ms)
    return SteadySpeaker(orders[preference], timer)


def _notice(speaker: Speaker, reasons: list[str]) -> str | None:
    if not reasons:
        return speaker.notice
    if isinstance(speaker, SilentSpeaker):
        return NO_SOUND.format(reasons[0])
    return f"Sound plays through {speaker.name}: {reasons[0]}"
