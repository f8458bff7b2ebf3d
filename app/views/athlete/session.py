"""A run on a screen: the controller, the clock, the sound and the record, brought together."""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from app.domain.records import Fact
from app.domain.timeline import Timeline
from app.run.controller import Controller
from app.run.intents import Intent, Stop, Tick
from app.run.restore import restore
from app.run.snapshot import Snapshot, snapshot
from app.run.sounding import Loudness, Making, Sounding
from app.run.state import ready

if TYPE_CHECKING:
    from app.audio.clocks import Clock
    from app.audio.speaker.port import Speaker

Write = Callable[[int, Sequence[Fact]], None]


class RunSession(QObject):
    """Carries intents to the controller, facts to the record, and the run to the sound.

    The picture's clock runs behind the machine's by the latency of the sound, so that what is seen and what
    is heard belong together. `moved` is emitted after every intent that left facts behind. A run that is
    taken up again brings the facts `written` of it before. `folder` is that of its plan, as far as
    somebody says it: there the pictures of its exercises lie. Once
    it is `closed` nothing is heard or taken any more.
    """

    moved = Signal(tuple)

    def __init__(
        self,
        timeline: Timeline,
        clock: "Clock",
        speaker: "Speaker",
        sound: Sounding,
        write: Write,
        written: Sequence[Fact] = (),
    ) -> None:
        super().__init__()
        self.timeline = timeline
        self.folder: Path | None = None
        self.closed = False
        self._clock = clock
        self._speaker = speaker
        self._sound = sound
        self._write = write
        self.facts: list[Fact] = list(written)
        state = restore(timeline, written, self.now_ms()) if written else ready(timeline)
        self.controller = Controller(timeline, state, len(written))
        sound.prepare(self.controller.state)

    def now_ms(self) -> int:
        """The time the picture is painted for."""
        return self._clock.now_ms() - self._speaker.latency_ms

    def act(self, intent: Intent) -> tuple[Fact, ...]:
        """Follow an intent now; gives the facts that came of it and of the time that passed."""
        now = self.now_ms()
        first, facts = self.controller.handle(intent, now)
        if facts:
            self.facts.extend(facts)
            self._write(first, facts)
            self._sound.hear(facts)
        self._sound.follow(self.controller.state, now)
        if facts:
            self.moved.emit(facts)
        return facts

    def look(self) -> Snapshot:
        """Let time pass and give the run as it stands now."""
        self.act(Tick())
        return snapshot(self.timeline, self.controller.state, self.controller.state.seen_ms)

    @property
    def notice(self) -> str | None:
        """What the athlete should know of the sound."""
        return self._speaker.notice

    @property
    def voice_notice(self) -> str | None:
        """Why there is no speech, None while there is."""
        return self._sound.notice

    @property
    def making(self) -> Making | None:
        """How far speech has been made, None once it is."""
        return self._sound.making

    @property
    def loudness(self) -> Loudness:
        """How loud the run is."""
        return self._sound.loudness

    def set_loudness(self, loudness: Loudness) -> None:
        """Be as loud as that, at once."""
        self._sound.set_loudness(loudness)

    @property
    def over(self) -> bool:
        """Whether the run has ended."""
        return self.controller.over

    def close(self) -> None:
        """Leave: what is not over is abandoned, every finished rep kept."""
        self.act(Stop())
        self.closed = True
        self._sound.close()
