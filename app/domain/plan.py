"""The plan: one planned session, as its author wrote it."""

from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum

from app.domain.dose import Dose
from app.domain.grouping import Grouping

DEFAULT_LEAD_IN_MS = 5_000
LEAST_LEAD_IN_MS = 3_000
DEFAULT_CHANGEOVER_MS = 20_000
DEFAULT_SIDE_CHANGE_MS = 8_000
DEFAULT_FAST_MS = 1_000
DEFAULT_REST_MS = 60_000
LONGEST_SESSION_MS = 6 * 3_600_000


class StageKind(StrEnum):
    """A rung of the ladder, lowest first. Order matters; OTHER stands outside the ladder."""

    ACTIVATION = "activation"
    INTEGRATION = "integration"
    STABILITY = "stability"
    REACTIVE = "reactive"
    POWER = "power"
    OTHER = "other"


class Level(StrEnum):
    """Which guideline of contacts applies."""

    BEGINNER = "beginner"
    INTERMEDIATE = "intermediate"
    ADVANCED = "advanced"


class StageOrder(StrEnum):
    """Whether stages must be done in order."""

    LOCKED = "locked"
    FREE = "free"


class Side(StrEnum):
    """A side of the body, or both together."""

    LEFT = "left"
    RIGHT = "right"
    BOTH = "both"

    @property
    def other(self) -> "Side":
        """The opposite side; both stays both."""
        return {Side.LEFT: Side.RIGHT, Side.RIGHT: Side.LEFT, Side.BOTH: Side.BOTH}[self]


class Sides(StrEnum):
    """How an exercise is shared between the sides."""

    BOTH = "both"
    EACH = "each"
    ALTERNATE = "alternate"
    LEFT = "left"
    RIGHT = "right"


class First(StrEnum):
    """Which side begins an exercise done on each side."""

    LEFT = "left"
    RIGHT = "right"
    WEAKER = "weaker"


@dataclass(frozen=True, slots=True)
class Words:
    """What is said and shown for a phase, where the plan's author chose other words; None is the default."""

    eccentric: str | None = None
    hold: str | None = None
    concentric: str | None = None
    relax: str | None = None
    move: str | None = None
    stick: str | None = None
    reset: str | None = None
    go: str | None = None
    work: str | None = None


@dataclass(frozen=True, slots=True)
class Exercise:
    """One exercise of a stage.

    `contacts` is foot or hand contacts a rep, None for the stage's default; `superset` is the letter
    shared with neighbours whose sets alternate; `picture` is a path relative to the plan's folder. `easier`
    and `harder` name variants of it that some of a group do at the same tempo.
    """

    name: str
    dose: Dose
    target: str | None = None
    sides: Sides = Sides.BOTH
    first: First = First.LEFT
    sets: int = 1
    rest_ms: int = DEFAULT_REST_MS
    load_kg: Decimal | None = None
    contacts: int | None = None
    superset: str | None = None
    setup: str | None = None
    cues: tuple[str, ...] = ()
    faults: tuple[str, ...] = ()
    words: Words = field(default_factory=Words)
    picture: str | None = None
    stop_if: tuple[str, ...] = ()
    easier: str | None = None
    harder: str | None = None


@dataclass(frozen=True, slots=True)
class Stage:
    """A rung of the ladder with its exercises in order."""

    name: str
    kind: StageKind
    exercises: tuple[Exercise, ...]

    def contacts_per_rep(self, exercise: Exercise) -> int:
        """Contacts a rep: as written, else 1 in reactive and power stages and 0 elsewhere."""
        if exercise.contacts is not None:
            return exercise.contacts
        return 1 if self.kind in (StageKind.REACTIVE, StageKind.POWER) else 0


@dataclass(frozen=True, slots=True)
class Plan:
    """One planned session: ordered stages of exercises, and the gaps that hold for all of it.

    `group` is how a group does it, None where the author says nothing of groups.
    """

    title: str
    stages: tuple[Stage, ...]
    author: str | None = None
    level: Level = Level.BEGINNER
    order: StageOrder = StageOrder.LOCKED
    lead_in_ms: int = DEFAULT_LEAD_IN_MS
    changeover_ms: int = DEFAULT_CHANGEOVER_MS
    side_change_ms: int = DEFAULT_SIDE_CHANGE_MS
    fast_ms: int = DEFAULT_FAST_MS
    group: Grouping | None = None


@dataclass(frozen=True, slots=True)
class WrittenPlan:
    """A plan and the text it was read from, which is kept with every run of it.

    `folder` is the path of where it was read, and where its pictures lie; None where nobody knows.
    """

    plan: Plan
    text: str
    folder: str | None = None
