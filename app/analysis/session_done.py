"""What was done of a session against what was planned: by exercise and side, as far as it is known.

Time under tension is nominal: the seconds of the tempo, or of the hold, times the reps done (textbook rule;
tests/outside/test_durations.py checks the sums it rests on). Where the dose has no tempo it is not defined.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from app.domain.bout_work import rep_phases
from app.domain.dose import Band, HoldReps, TempoReps, WorkTime
from app.domain.fold import UNNAMED_FAULT, standing
from app.domain.plan import Side
from app.domain.records import BoutRecord
from app.domain.timeline import Bout, Timeline


@dataclass(frozen=True, slots=True)
class DoneRow:
    """What was done of an exercise on a side. None is not defined or not known, never zero.

    `reps` are those of the attempts that stand, `faulty` how many of the recorded ones have a fault.
    """

    name: str
    side: Side
    reps: int
    asked: Band
    tut_ms: int | None
    contacts: int | None
    faulty: int

    @property
    def met(self) -> bool:
        """Whether the lower bound was reached."""
        return self.reps >= self.asked.low


@dataclass(frozen=True, slots=True)
class SessionDone:
    """The rows in the order of the plan, their sums, and the faults by name with their number."""

    rows: tuple[DoneRow, ...]
    faults: tuple[tuple[str, int], ...]

    @property
    def tut_ms(self) -> int | None:
        """Time under tension as far as it is defined, None where it is for nothing."""
        known = [row.tut_ms for row in self.rows if row.tut_ms is not None]
        return sum(known) if known else None

    @property
    def contacts(self) -> int | None:
        """All contacts; None when some are unknown."""
        known = [row.contacts for row in self.rows]
        return None if None in known else sum(each or 0 for each in known)


def session_done(timeline: Timeline, records: Iterable[BoutRecord]) -> SessionDone:
    """The sums of a session out of the records of its bouts, every attempt among them."""
    stands = standing(records)
    rows: dict[tuple[int, int, Side], DoneRow] = {}
    faults: dict[str, int] = {}
    for bout in timeline.bouts:
        side = Side.BOTH if bout.alternating else bout.side
        row, key = _row(timeline, bout, stands.get(bout.index), side), (bout.stage, bout.exercise, side)
        rows[key] = _added(rows[key], row) if key in rows else row
        for name in _faults_of(stands.get(bout.index)):
            faults[name] = faults.get(name, 0) + 1
    by_count = sorted(faults.items(), key=lambda fault: (-fault[1], fault[0]))
    return SessionDone(tuple(rows.values()), tuple(by_count))


def _row(timeline: Timeline, bout: Bout, record: BoutRecord | None, side: Side) -> DoneRow:
    exercise, reps = timeline.exercise_of(bout), 0 if record is None else record.reps_done
    per_rep = timeline.stage_of(bout).contacts_per_rep(exercise)
    timed = isinstance(exercise.dose, WorkTime)
    unknown = timed and exercise.contacts is None and per_rep > 0
    tension = _tension_ms(timeline, bout)
    return DoneRow(
        exercise.name,
        side,
        reps,
        Band(bout.low, bout.high),
        None if tension is None else tension * reps,
        None if unknown else per_rep * reps,
        0 if record is None else sum(bool(rep.faults) for rep in record.reps),
    )


def _tension_ms(timeline: Timeline, bout: Bout) -> int | None:
    dose = timeline.exercise_of(bout).dose
    if not isinstance(dose, TempoReps | HoldReps):
        return None
    phases = rep_phases(dose, timeline.plan.fast_ms)
    return sum(phase.length_ms for phase in phases if not phase.between)


def _added(one: DoneRow, other: DoneRow) -> DoneRow:
    return replace(
        one,
        reps=one.reps + other.reps,
        asked=Band(one.asked.low + other.asked.low, one.asked.high + other.asked.high),
        tut_ms=None if one.tut_ms is None or other.tut_ms is None else one.tut_ms + other.tut_ms,
        contacts=None if one.contacts is None or other.contacts is None else one.contacts + other.contacts,
        faulty=one.faulty + other.faulty,
    )


def _faults_of(record: BoutRecord | None) -> list[str]:
    if record is None:
        return []
    return [fault for rep in record.reps for fault in rep.faults if fault != UNNAMED_FAULT]
