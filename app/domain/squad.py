"""The squad: of each athlete what the last weeks were like, and the answers that are still owed."""

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum

from app.domain.reviewed import AthleteRecord


class OwedKind(StrEnum):
    """Which answer is owed after a run."""

    SESSION_RPE = "session_rpe"
    NEXT_MORNING_PAIN = "next_morning_pain"


@dataclass(frozen=True, slots=True)
class OwedRating:
    """An answer that is owed: about which run of whom, done on which local day, over since `ended_at`."""

    kind: OwedKind
    run_id: str
    athlete: str
    plan_title: str
    day: date
    ended_at: datetime
    zone: str


@dataclass(frozen=True, slots=True)
class SquadMember:
    """One athlete of the squad. The sessions of `record` have totals and no parts.

    Its results are of tests of one side at a time, from shortly before both sides were last tested on, within
    half a year. Of the totals clean and missed reps, contacts, time under tension and volume are unknown, and
    `done` counts every attempt.
    `before` are the local days and loads in AU, None unknown, of sessions in the weeks before the record's.
    `last_run` is the local day of their latest run, whenever that was; None where there is none.
    """

    record: AthleteRecord
    last_run: date | None
    owed: tuple[OwedRating, ...] = ()
    before: tuple[tuple[date, float | None], ...] = ()


@dataclass(frozen=True, slots=True)
class LastTrained:
    """Somebody of the record, and when their latest run began; None where there is none."""

    athlete: str
    at: datetime | None


@dataclass(frozen=True, slots=True)
class RecentPlan:
    """A plan that was carried out, and when last. `text` is the plan file as it was read then."""

    title: str
    text: str
    at: datetime
