"""What a cue is: something heard at an instant of a bout, and shown at the same instant."""

from dataclasses import dataclass
from enum import StrEnum

from app.domain.plan import Side


class CueKind(StrEnum):
    """What a cue is for. The first ten are tones, the rest is spoken."""

    ECCENTRIC = "eccentric"
    HOLD_LENGTHENED = "hold_lengthened"
    CONCENTRIC = "concentric"
    HOLD_SHORTENED = "hold_shortened"
    HOLD = "hold"
    EXPLOSIVE = "explosive"
    RELEASE = "release"
    END = "end"
    MARK = "mark"
    TICK = "tick"
    COUNT = "count"
    SIDE = "side"
    TIME_LEFT = "time_left"
    EXERCISE = "exercise"
    SETUP = "setup"
    REST = "rest"
    HALFWAY = "halfway"
    PHASE = "phase"
    COACHING = "coaching"

    @property
    def spoken(self) -> bool:
        """Whether it is said and not sounded."""
        return self in SPOKEN


class CueLevel(StrEnum):
    """How much is cued: everything, the bare lead, or tones alone."""

    FULL = "full"
    SPARE = "spare"
    TONES = "tones"


PRIORITY: dict[CueKind, int] = {
    CueKind.ECCENTRIC: 0,
    CueKind.HOLD_LENGTHENED: 0,
    CueKind.CONCENTRIC: 0,
    CueKind.HOLD_SHORTENED: 0,
    CueKind.HOLD: 0,
    CueKind.EXPLOSIVE: 0,
    CueKind.RELEASE: 0,
    CueKind.END: 1,
    CueKind.MARK: 2,
    CueKind.COUNT: 3,
    CueKind.SIDE: 4,
    CueKind.TIME_LEFT: 5,
    CueKind.EXERCISE: 6,
    CueKind.REST: 7,
    CueKind.HALFWAY: 8,
    CueKind.SETUP: 9,
    CueKind.PHASE: 10,
    CueKind.COACHING: 11,
    CueKind.TICK: 12,
}
"""Who gives way to whom, 0 first: a choice of this program, checked by reason and not by a source."""

SPOKEN = frozenset(
    {
        CueKind.COUNT,
        CueKind.SIDE,
        CueKind.TIME_LEFT,
        CueKind.EXERCISE,
        CueKind.SETUP,
        CueKind.REST,
        CueKind.HALFWAY,
        CueKind.PHASE,
        CueKind.COACHING,
    }
)

LEVEL_SPEECH: dict[CueLevel, frozenset[CueKind]] = {
    CueLevel.FULL: SPOKEN,
    CueLevel.SPARE: frozenset({CueKind.COUNT, CueKind.SIDE, CueKind.TIME_LEFT, CueKind.EXERCISE}),
    CueLevel.TONES: frozenset(),
}
"""Which kinds are spoken at which level; tones sound at all of them."""


@dataclass(frozen=True, slots=True)
class Cue:
    """One cue. Times in whole ms on the local axis of its bout, whose first phase begins at 0.

    `length_ms` is how long it sounds, 0 for speech that has not been fitted. `shown` is what a tone stands
    for. `text` is what is spoken, None for a tone, and `shorter` what may be said instead, longest first.
    Speech ends by `until_ms`; speech that `slides` may begin later than `at_ms` to find room.
    """

    at_ms: int
    kind: CueKind
    side: Side
    length_ms: int
    shown: str
    text: str | None = None
    shorter: tuple[str, ...] = ()
    until_ms: int | None = None
    slides: bool = False

    @property
    def end_ms(self) -> int:
        """When it falls silent."""
        return self.at_ms + self.length_ms

    @property
    def priority(self) -> int:
        """Its place in the order of who gives way, 0 first."""
        return PRIORITY[self.kind]


def caption(cue: Cue) -> str:
    """What is shown while a cue is heard: the words spoken, or what a tone stands for."""
    return cue.text or cue.shown
