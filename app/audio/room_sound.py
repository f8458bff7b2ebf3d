"""The sound of a room: that of its leading clock, with the tempo of one athlete where the coach picks one."""

from dataclasses import replace

from app.audio.room_score import RoomScore
from app.audio.run_sound import RunSound
from app.domain.records import Fact
from app.run.sounding import Loudness, Making
from app.run.state import RunState


class RoomSound:
    """Fills `app.run.sounding.Sounding`, following the leading run; `sound` is made for its timeline."""

    def __init__(self, sound: RunSound, score: RoomScore) -> None:
        self._sound, self._score = sound, score
        sound.rescore(score)

    @property
    def picked(self) -> int | None:
        """Whose tempo is heard at the stations, by their place in the session; None where nobody's is."""
        return self._score.ear.picked

    def pick(self, place: int | None) -> None:
        """Let an athlete's tempo be heard at the stations from here on, or nobody's."""
        if place != self.picked:
            self._score = replace(self._score, ear=replace(self._score.ear, picked=place))
            self._sound.rescore(self._score)

    @property
    def notice(self) -> str | None:
        """Why something will not be heard, None while all will."""
        return self._sound.notice

    @property
    def making(self) -> Making | None:
        """How far speech has been made, None once it is."""
        return self._sound.making

    @property
    def loudness(self) -> Loudness:
        """How loud it is."""
        return self._sound.loudness

    def set_loudness(self, loudness: Loudness) -> None:
        """Be as loud as that, at once."""
        self._sound.set_loudness(loudness)

    def prepare(self, state: RunState) -> None:
        """Get ready while the room does."""
        self._sound.prepare(state)

    def hear(self, facts: tuple[Fact, ...]) -> None:
        """Sound reps that the leading clock counted at one's own pace."""
        self._sound.hear(facts)

    def follow(self, state: RunState, now_ms: int) -> None:
        """Bring the sound to where the leading clock stands."""
        self._sound.follow(state, now_ms)

    def close(self) -> None:
        """Be silent, and let everything go."""
        self._sound.close()
