"""What is looked back on: one athlete's sessions as totals, what was due when, what they answered.

The record gives these, the figures are made from them. Days are local ones, those of the clock on the wall
where it was done. None is unknown, never zero.
"""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from app.domain.dose import DoseKind
from app.domain.keeping import Result
from app.domain.plan import Side, StageKind
from app.domain.planned import DueSession
from app.domain.readiness import Readiness
from app.domain.tolerance import DEFAULT_TOLERANCE, Tolerance
from app.domain.tried import Tried


@dataclass(frozen=True, slots=True)
class Totals:
    """What was asked for and done in a stretch of a session, of the last attempt at each bout.

    `prescribed` sums the lower bounds of reps, `met` what was done up to that bound, bout by bout, `done` all
    reps beyond it too; `clean` of these had no fault marked and `missed` passed undone, both None where reps
    were counted by the athlete alone. `tempo_known` is how many reps have a tempo that can be judged,
    `tempo_kept` how many of those kept it. `contacts` are foot or hand contacts done, `tut_ms` is the nominal
    time under tension of the reps done, `volume_kg` their kg times reps as far as loads are known, all of
    them where `volume_complete`.
    """

    prescribed: int
    met: int
    done: int
    clean: int | None = None
    missed: int | None = None
    tempo_known: int = 0
    tempo_kept: int = 0
    contacts: int | None = None
    tut_ms: int | None = None
    volume_kg: float | None = None
    volume_complete: bool = False

    @property
    def extra(self) -> int:
        """Reps done beyond those prescribed, bout by bout."""
        return self.done - self.met


@dataclass(frozen=True, slots=True)
class PartTotals:
    """The totals of one exercise on one side; `stage` is the name the plan gives it and `kind` its rung.

    `landings` says that its reps are landings to be stuck, so that a clean rep is one that was stuck.
    """

    stage: str
    kind: StageKind
    exercise: str
    side: Side
    totals: Totals
    landings: bool = False


@dataclass(frozen=True, slots=True)
class ReviewedSession:
    """One run as looked back on. `started`: minutes after local midnight, None where only the day is known.

    `ended` says whether the run has an end; `minutes` are elapsed ones, rests included. `rpe`, `pain` (the
    highest stated in the run) and `pain_next_morning` are whole numbers 0-10; `next_morning_asked` says that
    the question was put, so that None then means: not answered. `totals` is None where nothing is known of
    the reps, as in an `imported` run. `corrected` names the figures that rest on a corrected value.
    """

    run_id: str
    day: date
    plan_title: str
    ended: bool
    minutes: float | None = None
    rpe: int | None = None
    pain: int | None = None
    pain_next_morning: int | None = None
    next_morning_asked: bool = False
    totals: Totals | None = None
    parts: tuple[PartTotals, ...] = ()
    started: int | None = None
    imported: bool = False
    corrected: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class SetDone:
    """One set of an exercise on a side. `low` and `high` are the reps asked for.

    `reps` are those of the attempt that stands: 0 where it was left out, None where it was not begun or
    nobody counted. `load_kg` is what was used as far as it was said, else what the plan asks for.
    """

    low: int
    high: int
    reps: int | None
    load_kg: Decimal | None = None


@dataclass(frozen=True, slots=True)
class ExerciseDone:
    """The sets of one exercise on one side in one session, in the order of the plan.

    `dose` is None in what was written down before it was kept.
    """

    run_id: str
    day: date
    exercise: str
    side: Side
    dose: DoseKind | None
    sets: tuple[SetDone, ...]


@dataclass(frozen=True, slots=True)
class AthleteRecord:
    """Everything the figures of one athlete rest on, from `first` to `last` day, both included.

    `today` is the local day on which it is looked at: later days are not due. `since` is the first day of
    which the record knows anything at all, None when it knows nothing; a day before it is unknown, a day from
    it on without a session is a rest day. `readiness` and `results` may reach back before `first` for a
    baseline. `reference` is the side that limb symmetry is measured against, None where nobody has chosen
    one. `tries` are everybody's first two tries of a day at the tests of this athlete, which tell how far a
    test can be trusted. `exercises` are the last sessions of each exercise and side, those of one together,
    the latest first. `tolerance` is what tempo was judged by.
    """

    athlete: str
    first: date
    last: date
    today: date
    since: date | None = None
    sessions: tuple[ReviewedSession, ...] = ()
    due: tuple[DueSession, ...] = ()
    readiness: tuple[Readiness, ...] = ()
    results: tuple[Result, ...] = ()
    reference: Side | None = None
    exercises: tuple[ExerciseDone, ...] = ()
    tries: tuple[Tried, ...] = ()
    tolerance: Tolerance = DEFAULT_TOLERANCE

    def covers(self, day: date) -> bool:
        """Whether a day is one of the record's."""
        return self.first <= day <= self.last

    @property
    def sessions_within(self) -> tuple[ReviewedSession, ...]:
        """The sessions of the record's days."""
        return tuple(each for each in self.sessions if self.covers(each.day))

    @property
    def due_within(self) -> tuple[DueSession, ...]:
        """The planned sessions of the record's days."""
        return tuple(each for each in self.due if self.covers(each.occurrence.day))
