"""A group session on a screen: the room, the clock, the sound and everybody's record, brought together."""

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from app.domain.group import GroupSession
from app.domain.records import Fact
from app.run.intents import Stop, Tick
from app.run.room import RoomState, handle_room, ready_room
from app.run.room_intents import RoomIntent
from app.run.room_restore import restore_room
from app.run.sounding import Loudness, Making, Sounding

if TYPE_CHECKING:
    from app.audio.clocks import Clock
    from app.audio.speaker.port import Speaker

Told = tuple[int, int, Sequence[Fact]]
"""The place of an athlete in the session, the number of their first new fact, and their new facts."""
WriteAll = Callable[[Sequence[Told]], None]
"""Takes what was told at one moment of everybody of whom there is something."""


class RoomSession(QObject):
    """Carries a coach's intents to the room, everybody's facts to the record, the leading run to the sound.

    `moved` is emitted after each intent that left facts behind, with those of each athlete. A session that is
    taken up again brings what was `written` of each athlete before.
    """

    moved = Signal(tuple)

    def __init__(
        self,
        session: GroupSession,
        clock: "Clock",
        speaker: "Speaker",
        sound: Sounding,
        write: WriteAll,
        written: Sequence[Sequence[Fact]] = (),
    ) -> None:
        super().__init__()
        self.session = session
        self._clock, self._speaker, self._sound, self._write = clock, speaker, sound, write
        self.facts: list[list[Fact]] = [list(theirs) for theirs in written] or [[] for _ in session.parts]
        self.state: RoomState = (
            restore_room(session, self.facts, self.now_ms()) if written else ready_room(session)
        )
        sound.prepare(self.state.leader)

    def now_ms(self) -> int:
        """The time the picture is painted for."""
        return self._clock.now_ms() - self._speaker.latency_ms

    def act(self, intent: RoomIntent) -> None:
        """Follow an intent now, and write down what came of it and of the time that passed."""
        now = self.now_ms()
        self.state, led, told = handle_room(self.session, self.state, intent, now)
        written = [(member, len(self.facts[member]), facts) for member, facts in enumerate(told) if facts]
        for member, _, facts in written:
            self.facts[member].extend(facts)
        if written:
            self._write(written)
        if led:
            self._sound.hear(led)
        self._sound.follow(self.state.leader, now)
        if any(told):
            self.moved.emit(told)

    def look(self) -> RoomState:
        """Let time pass and give the room as it stands now."""
        self.act(Tick())
        return self.state

    @property
    def notice(self) -> str | None:
        """What the coach should know of the sound."""
        return self._speaker.notice

    @property
    def making(self) -> Making | None:
        """How far speech has been made, None once it is."""
        return self._sound.making

    @property
    def loudness(self) -> Loudness:
        """How loud the session is."""
        return self._sound.loudness

    def set_loudness(self, loudness: Loudness) -> None:
        """Be as loud as that, at once."""
        self._sound.set_loudness(loudness)

    @property
    def picked(self) -> int | None:
        """Whose tempo is heard at the stations, by their place; None where nobody's is."""
        return getattr(self._sound, "picked", None)

    def pick(self, member: int) -> None:
        """Let the tempo of somebody be heard at the stations, or nobody's where it was theirs."""
        pick = getattr(self._sound, "pick", None)
        if pick is not None:
            pick(None if self.picked == member else member)

    @property
    def over(self) -> bool:
        """Whether nobody's run goes on any more."""
        return self.state.over

    def close(self) -> None:
        """Leave: runs that are not over are abandoned, every finished rep kept."""
        self.act(Stop())
        self._sound.close()
