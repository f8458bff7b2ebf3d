"""What was done: the facts of a run as they happen, and the records they are folded into.

Every `at_ms` counts whole milliseconds from the moment the run began, on a clock that never jumps.
"""

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from app.domain.dose import DoseKind
from app.domain.plan import Side, StageKind


class SkipReason(StrEnum):
    """Why an exercise was not done."""

    PAIN = "pain"
    EQUIPMENT = "equipment"
    TIME = "time"
    OTHER = "other"


class PauseReason(StrEnum):
    """Why a run stands still."""

    ASKED = "asked"
    INTERRUPTED = "interrupted"


class BoutOutcome(StrEnum):
    """How a bout ended."""

    DONE = "done"
    ENDED_EARLY = "ended_early"
    SKIPPED = "skipped"
    BROKEN_OFF = "broken_off"


class RunOutcome(StrEnum):
    """How a run ended."""

    FINISHED = "finished"
    ABANDONED = "abandoned"


@dataclass(frozen=True, slots=True)
class RunBegan:
    """The athlete was ready and the first lead-in began; `at_ms` is 0 by definition."""

    at_ms: int = 0


@dataclass(frozen=True, slots=True)
class BoutBegan:
    """The first phase of a bout began. `attempt` counts from 1; a bout done again has a higher one."""

    at_ms: int
    bout: int
    attempt: int


@dataclass(frozen=True, slots=True)
class RepDone:
    """A rep was completed. `rep` counts from 1 within the bout, within a side where sides alternate.

    `start_ms` is when it began; `late_ms` is how long after its scheduled end the program noticed.
    """

    at_ms: int
    bout: int
    attempt: int
    rep: int
    side: Side
    start_ms: int
    late_ms: int


@dataclass(frozen=True, slots=True)
class RepMissed:
    """The time of a rep passed and it was marked as not done."""

    at_ms: int
    bout: int
    attempt: int
    rep: int
    side: Side


@dataclass(frozen=True, slots=True)
class FaultMarked:
    """A deviation in form was marked on a rep; `fault` is its name, None when none was chosen."""

    at_ms: int
    bout: int
    attempt: int
    rep: int
    side: Side
    fault: str | None


@dataclass(frozen=True, slots=True)
class BoutEnded:
    """A bout is over. `reason` and `note` are given when it was skipped."""

    at_ms: int
    bout: int
    attempt: int
    outcome: BoutOutcome
    reason: SkipReason | None = None
    note: str | None = None


@dataclass(frozen=True, slots=True)
class BoutRated:
    """The athlete's answers about a bout; each answer replaces the one before, None leaves it unanswered.

    `reps` is the number they say they did; `rpe` and `pain` are whole numbers 0-10.
    """

    at_ms: int
    bout: int
    attempt: int
    reps: int | None = None
    rpe: int | None = None
    pain: int | None = None
    note: str | None = None


@dataclass(frozen=True, slots=True)
class LoadUsed:
    """The load an athlete says they used in a bout, in kg as decimal text; a later one replaces it."""

    at_ms: int
    bout: int
    attempt: int
    load_kg: str


@dataclass(frozen=True, slots=True)
class TakenBack:
    """The last mark or answer about an attempt was a mistake: it stays written and counts no more."""

    at_ms: int
    bout: int
    attempt: int


@dataclass(frozen=True, slots=True)
class BoutChosen:
    """The athlete chose to go on with a bout, where the plan leaves the order of its stages free."""

    at_ms: int
    bout: int


@dataclass(frozen=True, slots=True)
class Paused:
    """The run stands still from `at_ms`."""

    at_ms: int
    reason: PauseReason


@dataclass(frozen=True, slots=True)
class Resumed:
    """The run goes on."""

    at_ms: int


@dataclass(frozen=True, slots=True)
class RestExtended:
    """The rest before a bout was made longer by `by_ms`."""

    at_ms: int
    bout: int
    by_ms: int


@dataclass(frozen=True, slots=True)
class RunEnded:
    """The run is over."""

    at_ms: int
    outcome: RunOutcome


@dataclass(frozen=True, slots=True)
class SessionRated:
    """The athlete's rating of the whole session; may come long after the run ended.

    `lag_ms` is how long after the end of the run the answer came, None while it goes on. `rpe` is a whole
    number 0-10.
    """

    at_ms: int
    rpe: int | None
    lag_ms: int | None
    note: str | None = None


Fact = (
    RunBegan
    | BoutBegan
    | RepDone
    | RepMissed
    | FaultMarked
    | BoutEnded
    | BoutRated
    | Paused
    | Resumed
    | RestExtended
    | RunEnded
    | SessionRated
    | LoadUsed
    | TakenBack
    | BoutChosen
)


@dataclass(frozen=True, slots=True)
class RunHeader:
    """Who carries out which plan, and since when.

    `run_id` is a UUID as text; `plan_text` is the plan file as it was read, so that editing the file
    later rewrites no history; `started_at` is in UTC and `zone` the name of the local time zone;
    `invented` marks demo data.
    """

    run_id: str
    athlete: str
    plan_title: str
    plan_text: str
    started_at: datetime
    zone: str
    invented: bool = False


@dataclass(frozen=True, slots=True)
class BoutPrescribed:
    """What a bout asked for, kept with the run so that it can be read without the plan. Lengths in ms.

    `low` and `high` are reps of the whole bout; `work_ms` is None for work at the athlete's own pace.
    `rep_tut_ms` is the nominal time under tension of one rep, None where the dose defines none. It and `dose`
    are None too in what was written down before they were kept.
    """

    bout: int
    stage_name: str
    stage_kind: StageKind
    exercise: str
    set_number: int
    side: Side
    low: int
    high: int
    work_ms: int | None
    contacts_per_rep: int
    load_kg: str | None
    dose: DoseKind | None = None
    rep_tut_ms: int | None = None


@dataclass(frozen=True, slots=True)
class RepRecord:
    """One rep as it was recorded. Times in ms from the beginning of the run."""

    rep: int
    side: Side
    start_ms: int
    end_ms: int
    late_ms: int
    missed: bool = False
    faults: tuple[str, ...] = ()

    @property
    def clean(self) -> bool:
        """A completed rep with no fault marked."""
        return not self.missed and not self.faults


@dataclass(frozen=True, slots=True)
class BoutRecord:
    """One attempt at one bout. None is unknown, never zero.

    `load_kg` is the load that was used, decimal text, as far as it was said. `corrected` names the fields
    that hold another value than the one first written, `missed` and `faults` those of its reps.
    """

    bout: int
    attempt: int
    reps: tuple[RepRecord, ...]
    outcome: BoutOutcome
    began_ms: int | None
    ended_ms: int
    reps_stated: int | None = None
    rpe: int | None = None
    pain: int | None = None
    note: str | None = None
    reason: SkipReason | None = None
    corrected: frozenset[str] = frozenset()
    load_kg: str | None = None

    @property
    def reps_done(self) -> int:
        """Reps the athlete says they did, else those counted."""
        counted = sum(not rep.missed for rep in self.reps)
        return counted if self.reps_stated is None else self.reps_stated


@dataclass(frozen=True, slots=True)
class RunSummary:
    """One run as a line of a list. None is unknown, never zero.

    `reps_prescribed` sums the lower bounds of all bouts; `reps_met` sums, bout by bout, what was done up
    to that bound (the attempt that stands, see `fold.standing`); `reps_done` is all reps done, beyond the
    bound too. `elapsed_ms` is None while the run has not ended; `outcome` None likewise. `session_rpe` is
    0-10;
    `pain` is the highest stated in any bout. `corrected` names the figures that rest on a corrected value.
    `imported` marks a run from a list of past training: only its day is known, and nothing of its reps.
    """

    run_id: str
    athlete: str
    plan_title: str
    started_at: datetime
    zone: str
    invented: bool
    outcome: RunOutcome | None
    elapsed_ms: int | None
    reps_prescribed: int
    reps_met: int
    reps_done: int
    session_rpe: int | None
    pain: int | None
    corrected: frozenset[str] = frozenset()
    imported: bool = False
