"""What is heard of a run: a port that the sound fills."""

from dataclasses import dataclass, replace
from typing import Protocol

from app.domain.records import Fact
from app.run.state import RunState

LOUDNESS_STEP = 10


@dataclass(frozen=True, slots=True)
class Loudness:
    """How loud a run sounds, in whole percent, and whether it is muted."""

    percent: int = 100
    muted: bool = False

    @property
    def share(self) -> float:
        """What is heard of it, 0 to 1."""
        return 0.0 if self.muted else self.percent / 100

    def louder(self) -> "Loudness":
        """A step up, and not muted."""
        return Loudness(min(self.percent + LOUDNESS_STEP, 100))

    def softer(self) -> "Loudness":
        """A step down, and not muted."""
        return Loudness(max(self.percent - LOUDNESS_STEP, 0))

    def switched(self) -> "Loudness":
        """Muted when it was not, and the other way round."""
        return replace(self, muted=not self.muted)


@dataclass(frozen=True, slots=True)
class Making:
    """How many phrases have been made, and of how many."""

    done: int
    of: int


class Sounding(Protocol):
    """What a session asks of its sound. Nothing here ever makes the screen wait.

    `notice` says in a sentence why something will not be heard, None while all will; `making` how far speech
    has been made, None once it is.
    """

    @property
    def notice(self) -> str | None:
        """What the athlete should know of it."""

    @property
    def making(self) -> Making | None:
        """How far it has got with getting ready."""

    @property
    def loudness(self) -> Loudness:
        """How loud it is."""

    def set_loudness(self, loudness: Loudness) -> None:
        """Be as loud as that, at once."""

    def prepare(self, state: RunState) -> None:
        """Get ready while the athlete does."""

    def hear(self, facts: tuple[Fact, ...]) -> None:
        """Sound what has just happened and could not be foreseen: reps counted at one's own pace."""

    def follow(self, state: RunState, now_ms: int) -> None:
        """Bring the sound to where the run stands; called after each change and each tick."""

    def close(self) -> None:
        """Be silent, and let everything go."""


class NoSound:
    """Where nothing is to be heard: pictures, and tests of what is seen."""

    notice: str | None = None
    making: Making | None = None

    def __init__(self) -> None:
        self.loudness = Loudness()

    def set_loudness(self, loudness: Loudness) -> None:
        """Remember it."""
        self.loudness = loudness

    def prepare(self, state: RunState) -> None:
        """There is nothing to get ready."""

    def hear(self, facts: tuple[Fact, ...]) -> None:
        """There is nothing to sound."""

    def follow(self, state: RunState, now_ms: int) -> None:
        """There is nothing to follow with."""

    def close(self) -> None:
        """There is nothing to let go."""
