"""Adherence as three numbers, of sessions, reps and tempo: whole, by week, by stage, exercise and side."""

from collections import defaultdict
from collections.abc import Callable, Hashable, Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import TypeVar

from app.analysis.adherence import Interval, wilson
from app.domain.plan import Side
from app.domain.planned import DueSession, DueState
from app.domain.reviewed import PartTotals, ReviewedSession, Totals

SESSIONS_CAUTION = "as if sessions were independent, which those of one athlete are not"
REPS_CAUTION = "as if reps were independent, which those of one athlete are not"
Key = TypeVar("Key", bound=Hashable)


@dataclass(frozen=True, slots=True)
class SessionsKept:
    """Planned sessions, counted by what became of them. Excused and not due are in no denominator."""

    done: int = 0
    missed: int = 0
    excused: int = 0
    not_due: int = 0

    @property
    def due(self) -> int:
        """Sessions that had to be done by now: done and missed."""
        return self.done + self.missed

    @property
    def share(self) -> float | None:
        """Sessions done / due, 0-1; None when none was due. Definition: common practice, no source."""
        return self.done / self.due if self.due else None

    @property
    def interval(self) -> Interval | None:
        """The 95 % Wilson interval of `share`; see SESSIONS_CAUTION. None when none was due."""
        return wilson(self.done, self.due)


@dataclass(frozen=True, slots=True)
class Kept:
    """Reps asked for and done, and reps led to a tempo and kept; counts over some stretch of training.

    `met` never exceeds `prescribed`, bout by bout; `extra` reps are those beyond.
    """

    prescribed: int = 0
    met: int = 0
    extra: int = 0
    tempo_known: int = 0
    tempo_kept: int = 0

    @property
    def reps_share(self) -> float | None:
        """Reps met / prescribed, 0-1; None when none was prescribed."""
        return self.met / self.prescribed if self.prescribed else None

    @property
    def tempo_share(self) -> float | None:
        """Reps that kept the tempo / reps led to one, 0-1; None where no tempo can be judged."""
        return self.tempo_kept / self.tempo_known if self.tempo_known else None


def sessions_kept(due: Iterable[DueSession]) -> SessionsKept:
    """Sessions counted by how they stand."""
    states = [each.state for each in due]
    return SessionsKept(
        states.count(DueState.DONE),
        states.count(DueState.MISSED),
        states.count(DueState.EXCUSED),
        states.count(DueState.NOT_DUE),
    )


def sessions_by_week(due: Iterable[DueSession]) -> dict[date, SessionsKept]:
    """Sessions by the Monday of their ISO week (ISO 8601), in order; weeks without any are left out."""
    weeks = _gathered(due, lambda each: monday_of(each.occurrence.day))
    return {monday: sessions_kept(weeks[monday]) for monday in sorted(weeks)}


def kept(totals: Iterable[Totals]) -> Kept:
    """Totals added up."""
    parts = tuple(totals)
    return Kept(
        sum(part.prescribed for part in parts),
        sum(part.met for part in parts),
        sum(part.extra for part in parts),
        sum(part.tempo_known for part in parts),
        sum(part.tempo_kept for part in parts),
    )


def kept_by_week(sessions: Iterable[ReviewedSession]) -> dict[date, Kept]:
    """Reps and tempo by the Monday of the ISO week of the local day, of sessions that ended."""
    weeks = _gathered(ended(sessions), lambda session: monday_of(session.day))
    return {monday: kept(_totals(weeks[monday])) for monday in sorted(weeks)}


def kept_by_stage(sessions: Iterable[ReviewedSession]) -> dict[str, Kept]:
    """Reps and tempo by the name of the stage, in the order in which stages first came."""
    return _by_part(sessions, lambda part: part.stage)


def kept_by_exercise(sessions: Iterable[ReviewedSession]) -> dict[str, Kept]:
    """Reps and tempo by the name of the exercise, in the order in which exercises first came."""
    return _by_part(sessions, lambda part: part.exercise)


def kept_by_side(sessions: Iterable[ReviewedSession]) -> dict[Side, Kept]:
    """Reps and tempo by side; work of both sides together is a group of its own."""
    return _by_part(sessions, lambda part: part.side)


def ended(sessions: Iterable[ReviewedSession]) -> tuple[ReviewedSession, ...]:
    """The sessions of which reps are due: those that have ended and whose reps are known."""
    return tuple(session for session in sessions if session.ended and session.totals is not None)


def monday_of(day: date) -> date:
    """The Monday of the ISO week of a day (ISO 8601)."""
    return day - timedelta(days=day.weekday())


def _totals(sessions: Iterable[ReviewedSession]) -> list[Totals]:
    return [session.totals for session in sessions if session.totals is not None]


def _by_part(sessions: Iterable[ReviewedSession], key: Callable[[PartTotals], Key]) -> dict[Key, Kept]:
    groups = _gathered((part for session in ended(sessions) for part in session.parts), key)
    return {name: kept(part.totals for part in parts) for name, parts in groups.items()}


Item = TypeVar("Item")


def _gathered(items: Iterable[Item], key: Callable[[Item], Key]) -> dict[Key, list[Item]]:
    groups: defaultdict[Key, list[Item]] = defaultdict(list)
    for item in items:
        groups[key(item)].append(item)
    return dict(groups)
