"""What a person asks of a run, and the passing of time. Each is a value handed to the controller."""

from dataclasses import dataclass

from app.domain.checks import load_text
from app.domain.records import PauseReason, SkipReason
from app.run.state import RepMark


@dataclass(frozen=True, slots=True)
class Begin:
    """Ready: the first lead-in runs."""


@dataclass(frozen=True, slots=True)
class Tick:
    """Time has passed."""


@dataclass(frozen=True, slots=True)
class Pause:
    """Stand still."""

    reason: PauseReason = PauseReason.ASKED


@dataclass(frozen=True, slots=True)
class Resume:
    """Go on, with a lead-in, from the start of the interrupted rep."""


@dataclass(frozen=True, slots=True)
class CountRep:
    """A rep at the athlete's own pace is complete."""


@dataclass(frozen=True, slots=True)
class MarkFault:
    """A fault in the current rep, or in the last one during the gap after a bout; the name is optional.

    `on` names a rep that was done before and is not the last.
    """

    fault: str | None = None
    on: RepMark | None = None


@dataclass(frozen=True, slots=True)
class MarkMissed:
    """The current rep is not being done."""


@dataclass(frozen=True, slots=True)
class TakeBack:
    """The last mark or answer since the work last began was a mistake."""


@dataclass(frozen=True, slots=True)
class EndBout:
    """The bout is over now: done at the athlete's own pace once the low count is reached, early otherwise."""


@dataclass(frozen=True, slots=True)
class RedoBout:
    """Do the current bout again, or the last one when in the gap after it."""


@dataclass(frozen=True, slots=True)
class SkipExercise:
    """Leave out what remains of an exercise: that of `bout` where one is named, else the current one."""

    reason: SkipReason
    note: str | None = None
    bout: int | None = None


@dataclass(frozen=True, slots=True)
class SkipStage:
    """Leave out what remains of the current stage."""

    reason: SkipReason
    note: str | None = None


@dataclass(frozen=True, slots=True)
class GoToStage:
    """Go on with another stage (index from 0), where the plan leaves the order of its stages free."""

    stage: int


@dataclass(frozen=True, slots=True)
class ExtendRest:
    """A longer rest before the next bout."""

    by_ms: int = 15_000

    def __post_init__(self) -> None:
        if not 0 < self.by_ms <= 600_000:
            raise ValueError(f"a rest is made longer by up to ten minutes, not by {self.by_ms} ms")


@dataclass(frozen=True, slots=True)
class BeginNow:
    """Cut the rest short: go to the lead-in."""


@dataclass(frozen=True, slots=True)
class RateBout:
    """Answers about a bout that has ended; None leaves a question unanswered, as it was.

    `load_kg` is the load that was used, 0 to 1000 kg as decimal text. `attempt` is the attempt that is meant,
    the last where none is named.
    """

    bout: int
    reps: int | None = None
    rpe: int | None = None
    pain: int | None = None
    note: str | None = None
    load_kg: str | None = None
    attempt: int | None = None

    def __post_init__(self) -> None:
        load_text("load_kg", self.load_kg)
        _within("reps", self.reps, 10_000)
        _within("rpe", self.rpe, 10)
        _within("pain", self.pain, 10)


@dataclass(frozen=True, slots=True)
class RateSession:
    """The athlete's rating of the whole session, 0-10; None leaves it unanswered."""

    rpe: int | None
    note: str | None = None

    def __post_init__(self) -> None:
        _within("rpe", self.rpe, 10)


@dataclass(frozen=True, slots=True)
class Stop:
    """End the run here, for good."""


def _within(name: str, value: int | None, most: int) -> None:
    if value is not None and not 0 <= value <= most:
        raise ValueError(f"{name} is a whole number from 0 to {most}, not {value}")


Intent = (
    Begin
    | Tick
    | Pause
    | Resume
    | CountRep
    | MarkFault
    | MarkMissed
    | TakeBack
    | EndBout
    | RedoBout
    | SkipExercise
    | SkipStage
    | GoToStage
    | ExtendRest
    | BeginNow
    | RateBout
    | RateSession
    | Stop
)
