"""Planned sessions: which plan on which day for whom, and which of them were done.

Days and times of day are those of the clock on the wall, so that 18:00 stays 18:00 when the clocks change.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from enum import StrEnum

from app.domain.checks import moment, short_text

MOST_YEARS = 10
"""So many years after its first day a weekly session ends at the latest."""
_WEEK, _DAY = timedelta(days=7), timedelta(days=1)


class ChangeKind(StrEnum):
    """What became of a planned session, or of one day of it, since it was planned."""

    EXCUSED = "excused"
    DUE = "due"
    MOVED = "moved"
    ENDED = "ended"


class DueState(StrEnum):
    """How one planned session stands."""

    DONE = "done"
    MISSED = "missed"
    EXCUSED = "excused"
    NOT_DUE = "not_due"


@dataclass(frozen=True, slots=True)
class PlannedSession:
    """A plan for an athlete on a day, and on the same weekday up to `until` where that is given, included.

    `id` is a UUIDv7 as text; `at` is when it was planned, `zone` the name of the time zone in which `day` and
    the time of day are meant, None for any time of the day. `plan_file` is the path of the plan. Raises
    ValueError for an end before the first day or more than ten years after it.
    """

    id: str
    athlete: str
    plan_title: str
    day: date
    at: datetime
    zone: str
    clock: time | None = None
    until: date | None = None
    plan_file: str | None = None

    def __post_init__(self) -> None:
        short_text("plan_title", self.plan_title, wanted=True)
        short_text("plan_file", self.plan_file)
        moment("at", self.at)
        if self.clock is not None and (self.clock.tzinfo or self.clock.second or self.clock.microsecond):
            raise ValueError(f"clock is a time of day in hours and minutes, not {self.clock!r}")
        if self.until is not None and not self.day <= self.until <= self.day + MOST_YEARS * 366 * _DAY:
            raise ValueError(f"until lies from the first day to {MOST_YEARS} years later, not {self.until}")


@dataclass(frozen=True, slots=True)
class PlannedChange:
    """A later word about a planned session; of those about one day the latest by (at, id) holds.

    `day` is the day as first planned: it is excused for a `reason`, due after all, or moved `to_day`. With
    ENDED there is no session from `day` on. Raises ValueError where reason or new day is missing.
    """

    id: str
    planned_id: str
    athlete: str
    kind: ChangeKind
    day: date
    at: datetime
    zone: str
    to_day: date | None = None
    reason: str | None = None

    def __post_init__(self) -> None:
        short_text("reason", self.reason, wanted=self.kind is ChangeKind.EXCUSED)
        moment("at", self.at)
        if (self.to_day is None) is (self.kind is ChangeKind.MOVED):
            raise ValueError(f"to_day belongs to a session that is moved, and to no other, not {self.to_day}")


@dataclass(frozen=True, slots=True)
class Occurrence:
    """One day of a planned session: `day` as it stands, `first_day` as first planned."""

    planned: PlannedSession
    day: date
    first_day: date
    excused: str | None = None


@dataclass(frozen=True, slots=True)
class DoneRun:
    """A run as far as it is asked which planned session it carried out; `day` by the clock of its place."""

    run_id: str
    athlete: str
    plan_title: str
    started_at: datetime
    day: date


@dataclass(frozen=True, slots=True)
class DueSession:
    """One planned session and how it stands; `run_id` is the run that carried it out."""

    occurrence: Occurrence
    state: DueState
    run_id: str | None = None


def occurrences(
    planned: Iterable[PlannedSession], changes: Iterable[PlannedChange], since: date, until: date
) -> tuple[Occurrence, ...]:
    """The planned sessions from one day to another, both included, by day, time and id."""
    said: dict[str, list[PlannedChange]] = {}
    for change in sorted(changes, key=lambda each: (each.at, each.id)):
        said.setdefault(change.planned_id, []).append(change)
    found = [
        occurrence
        for session in planned
        for occurrence in _of_session(session, said.get(session.id, []), since, until)
        if since <= occurrence.day <= until
    ]
    return tuple(sorted(found, key=_order))


def next_after(
    planned: Iterable[PlannedSession],
    changes: Iterable[PlannedChange],
    day: date,
    clock: time,
) -> Occurrence | None:
    """The next planned session that is not excused, from a day and a time of day on; None when there is none.

    One without a time of day counts as long as its day lasts.
    """
    later = occurrences(planned, changes, day, day + MOST_YEARS * 366 * _DAY)
    for occurrence in later:
        at = occurrence.planned.clock
        gone = occurrence.day == day and at is not None and at < clock
        if occurrence.excused is None and not gone:
            return occurrence
    return None


def settle(
    due: Iterable[Occurrence], runs: Iterable[DoneRun], today: date
) -> tuple[tuple[DueSession, ...], tuple[DoneRun, ...]]:
    """How planned sessions stand on a day, and the runs that carried out none.

    A run carries out a session of the same athlete, day and plan title; each run counts for one session, the
    earlier run for the earlier session, and for an excused one only when no other is left. A session is due
    once its day is over.
    """
    waiting: dict[tuple[str, date, str], list[DoneRun]] = {}
    for run in sorted(runs, key=lambda each: (each.started_at, each.run_id)):
        waiting.setdefault((run.athlete, run.day, run.plan_title), []).append(run)
    settled: dict[int, DueSession] = {}
    ordered = sorted(due, key=_order)
    for place in sorted(range(len(ordered)), key=lambda place: ordered[place].excused is not None):
        occurrence = ordered[place]
        session = occurrence.planned
        fitting = waiting.get((session.athlete, occurrence.day, session.plan_title))
        run_id = fitting.pop(0).run_id if fitting else None
        settled[place] = DueSession(occurrence, _state(occurrence, run_id, today), run_id)
    left = [run for fitting in waiting.values() for run in fitting]
    return (
        tuple(settled[place] for place in range(len(ordered))),
        tuple(sorted(left, key=lambda each: (each.started_at, each.run_id))),
    )


def _state(occurrence: Occurrence, run_id: str | None, today: date) -> DueState:
    if run_id is not None:
        return DueState.DONE
    if occurrence.excused is not None:
        return DueState.EXCUSED
    return DueState.MISSED if occurrence.day < today else DueState.NOT_DUE


def _of_session(
    session: PlannedSession, changes: list[PlannedChange], since: date, until: date
) -> Iterator[Occurrence]:
    """The days of one session from one to another, and all that were moved; `changes` the earliest first."""
    ended = [change.day for change in changes if change.kind is ChangeKind.ENDED]
    moved = {change.day for change in changes if change.kind is ChangeKind.MOVED}
    within = set(_days(session, since, until)) | {day for day in moved if _is_of(session, day)}
    for first_day in sorted(within):
        if ended and first_day >= ended[-1]:
            return
        day, excused = first_day, None
        for change in changes:
            if change.day != first_day or change.kind is ChangeKind.ENDED:
                continue
            excused = change.reason if change.kind is ChangeKind.EXCUSED else None
            if change.to_day is not None:
                day = change.to_day
        yield Occurrence(session, day, first_day, excused)


def _days(session: PlannedSession, since: date, until: date) -> Iterator[date]:
    """The days of a session as first planned, from one to another; those before are not counted through."""
    behind = max((since - session.day).days, 0)
    day, last = session.day + -(-behind // 7) * _WEEK, min(session.until or session.day, until)
    while day <= last:
        yield day
        day += _WEEK


def rule_days(session: PlannedSession) -> tuple[date, ...]:
    """The days of a session as it was first planned, whatever became of them."""
    return tuple(_days(session, session.day, session.until or session.day))


def _is_of(session: PlannedSession, day: date) -> bool:
    last = session.until or session.day
    return session.day <= day <= last and (day - session.day) % _WEEK == timedelta(0)


def _order(occurrence: Occurrence) -> tuple[date, time, str, date]:
    session = occurrence.planned
    return occurrence.day, session.clock or time.min, session.id, occurrence.first_day
