"""No sound at all, for a machine without a device and for those who want none."""

from app.audio.samples import Stereo
from app.audio.speaker.port import First, from_the_start


class SilentSpeaker:
    """Plays nothing and is content."""

    name = "silent"
    lost = False

    def __init__(self, notice: str | None = None) -> None:
        self.latency_ms = 0
        self.notice = notice

    def warm_up(self) -> None:
        """Nothing to wake."""

    def play(self, samples: Stereo, first: First = from_the_start) -> None:
        """Nothing is heard."""

    def set_loudness(self, share: float) -> None:
        """Nothing is heard at any loudness."""

    def stop(self) -> None:
        """Silent it is."""

    def tend(self) -> None:
        """Nothing to bring back."""

    def close(self) -> None:
        """Nothing to let go."""
