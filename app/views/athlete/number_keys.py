"""What a number key means: ten out of a 1 and a 0, and the name of a fault that was just marked."""

from collections.abc import Callable

from app.run.answers import NAMING_MS
from app.run.intents import MarkFault
from app.views.athlete.session import RunSession

TEN_WITHIN_S = 0.8
"""A 0 pressed this soon after a 1 means 10."""


class Ten:
    """Notices a 0 right after a 1."""

    def __init__(self, now_s: Callable[[], float]) -> None:
        self._now_s = now_s
        self._one_at_s: float | None = None

    def made_by(self, number: int) -> bool:
        """Whether a key that is pressed now makes a 10 of the 1 before it."""
        now, one = self._now_s(), self._one_at_s
        self._one_at_s = now if number == 1 else None
        return number == 0 and one is not None and now - one <= TEN_WITHIN_S


def fault_to_name(session: RunSession, number: int, since_ms: int) -> MarkFault | None:
    """The name by its number of a fault that was marked just before, since a moment; None without one."""
    state, timeline = session.controller.state, session.timeline
    if state.unnamed is None:
        return None
    mark, at_ms = state.unnamed
    faults = timeline.exercise_of(timeline.bouts[mark.bout]).faults
    soon = state.seen_ms - at_ms <= NAMING_MS and at_ms >= since_ms
    return MarkFault(faults[number - 1], mark) if soon and 1 <= number <= len(faults) else None
