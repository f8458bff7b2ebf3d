"""What a speaker is: something that plays samples at once, in place of what it was playing."""

from collections.abc import Callable
from typing import Protocol

from app.audio.samples import Stereo

First = Callable[[], int]
"""Asked for the frame to begin at when all else is ready, so that no time is lost after it was reckoned."""


def from_the_start() -> int:
    """The first frame."""
    return 0


class Speaker(Protocol):
    """Plays one buffer at a time. Only the one got from `choose_speaker` promises never to raise.

    `latency_ms` is the time from `play` to the sound at the ear, the user's to correct. `notice` is a plain
    sentence for the user when something is not as it should be, else None. `lost` says that what should be
    playing has fallen silent.
    """

    latency_ms: int

    @property
    def name(self) -> str:
        """What the user knows it by."""

    @property
    def notice(self) -> str | None:
        """What the user should know, or None."""

    @property
    def lost(self) -> bool:
        """Whether the device went away while it was playing."""

    def warm_up(self) -> None:
        """Wake the device with a moment of silence, so that the first cue is not late."""

    def play(self, samples: Stereo, first: First = from_the_start) -> None:
        """Play samples from the `first` frame on in place of what plays now, nothing when it is past the end.

        Raises SpeakerError when there is no device.
        """

    def set_loudness(self, share: float) -> None:
        """Play at this share, 0 to 1, of what the samples say: what plays now and all that comes."""

    def stop(self) -> None:
        """Be silent at once."""

    def tend(self) -> None:
        """Called now and then: bring back, at its place, what fell silent with its device."""

    def close(self) -> None:
        """Let the device go."""
