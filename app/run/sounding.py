"""What is heard of a run: a port that the sound fills."""

from typing import Protocol

from app.domain.records import Fact
from app.run.state import RunState


class Sounding(Protocol):
    """What a session asks of its sound. Nothing here ever makes the screen wait."""

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

    def prepare(self, state: RunState) -> None:
        """There is nothing to get ready."""

    def hear(self, facts: tuple[Fact, ...]) -> None:
        """There is nothing to sound."""

    def follow(self, state: RunState, now_ms: int) -> None:
        """There is nothing to follow with."""

    def close(self) -> None:
        """There is nothing to let go."""
