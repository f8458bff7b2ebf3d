"""A room in one pair of hands: its state, and the numbers of everybody's facts."""

from collections.abc import Sequence

from app.domain.group import GroupSession
from app.domain.records import Fact
from app.run.room import handle_room, ready_room
from app.run.room_intents import RoomIntent
from app.run.room_restore import restore_room

Told = tuple[int, int, tuple[Fact, ...]]
"""What came of an intent for one athlete: their place in the session, the first fact's number, the facts."""


class RoomController:
    """Holds the state of a room and numbers the facts of each athlete, so that a journal can be told."""

    def __init__(self, session: GroupSession, present: Sequence[bool] | None = None) -> None:
        self.session = session
        self.state = ready_room(session, None if present is None else tuple(present))
        self.facts_so_far = [0] * len(session.parts)

    @classmethod
    def taken_up(
        cls, session: GroupSession, facts: Sequence[Sequence[Fact]], now_ms: int
    ) -> "RoomController":
        """The room standing still where its facts leave it, those of each athlete in order."""
        room = cls(session)
        room.state = restore_room(session, facts, now_ms)
        room.facts_so_far = [len(theirs) for theirs in facts]
        return room

    def handle(self, intent: RoomIntent, now_ms: int) -> tuple[tuple[Told, ...], tuple[Fact, ...]]:
        """Follow an intent; gives what is new of each athlete with anything new, and what the clock did."""
        self.state, led, facts = handle_room(self.session, self.state, intent, now_ms)
        told = tuple(
            (place, self.facts_so_far[place], theirs) for place, theirs in enumerate(facts) if theirs
        )
        for place, _, theirs in told:
            self.facts_so_far[place] += len(theirs)
        return told, led

    @property
    def over(self) -> bool:
        """Whether nobody's run goes on any more."""
        return self.state.over
