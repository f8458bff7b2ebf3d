"""The records of a run, and other things that are kept, as they are with their corrections."""

from collections.abc import Iterable
from dataclasses import dataclass, fields, replace
from datetime import datetime
from typing import Any, Generic, TypeVar, cast

from app.domain.correctable import FIELDS, Subject, as_native
from app.domain.corrections import History, Target
from app.domain.fold import Closing
from app.domain.records import BoutRecord, RepRecord

Thing = TypeVar("Thing")

_FIGURES = {
    "athlete": ("athlete",),
    "started_at": ("started_at",),
    "zone": ("zone",),
    "session_rpe": ("session_rpe",),
    "reps_stated": ("reps_met", "reps_done"),
    "missed": ("reps_met", "reps_done"),
    "pain": ("pain",),
}
"""Which figures of a run's summary a corrected field goes into; the others go into none."""


@dataclass(frozen=True, slots=True)
class Begun:
    """Of whom and of when a run is: the athlete's name or UUID, the moment, the time zone's name."""

    athlete: str
    started_at: datetime
    zone: str


@dataclass(frozen=True, slots=True)
class CorrectedRun:
    """A run as corrected; `figures` names what of its `RunSummary` rests on a corrected value."""

    begun: Begun
    records: tuple[BoutRecord, ...]
    closing: Closing
    figures: frozenset[str]


def target_of_bout(run_id: str, record: BoutRecord) -> Target:
    """What a correction of one attempt at a bout is about."""
    return Target(Subject.BOUT, run_id, record.bout, record.attempt)


def target_of_rep(run_id: str, record: BoutRecord, rep: RepRecord) -> Target:
    """What a correction of one rep is about."""
    return Target(Subject.REP, run_id, record.bout, record.attempt, rep.rep, rep.side)


def corrected_run(
    run_id: str, begun: Begun, records: Iterable[BoutRecord], closing: Closing, known: History
) -> CorrectedRun:
    """A whole run with the corrections that are known of it."""
    target = Target(Subject.RUN, run_id)
    begun, of_begun = corrected(begun, target, known)
    closing, of_closing = corrected(closing, target, known)
    bouts = tuple(corrected_bout(run_id, record, known) for record in records)
    differing = of_begun | of_closing
    for bout in bouts:
        differing |= bout.corrected
    figures = frozenset(figure for name in differing for figure in _FIGURES.get(name, ()))
    return CorrectedRun(begun, bouts, closing, figures)


def corrected_bout(run_id: str, record: BoutRecord, known: History) -> BoutRecord:
    """One attempt at a bout as corrected; its `corrected` names the fields that differ from what was written.

    `missed` and `faults` among them are those of its reps.
    """
    changed, names = corrected(record, target_of_bout(run_id, record), known)
    reps = []
    for rep in record.reps:
        made, of_rep = corrected(rep, target_of_rep(run_id, record, rep), known)
        reps.append(made)
        names |= of_rep
    return replace(changed, reps=tuple(reps), corrected=names)


def corrected(thing: Thing, target: Target, known: History) -> tuple[Thing, frozenset[str]]:
    """A dataclass with the values that hold today, and the names of those fields that differ by it.

    Fields that it does not have are left aside.
    """
    own = {each.name for each in fields(cast("Any", thing))}
    values = {
        name: as_native(name, known.holding[target, name].after)
        for name in FIELDS[target.subject]
        if name in own and (target, name) in known.holding
    }
    differing = {name: value for name, value in values.items() if value != getattr(thing, name)}
    if not differing:
        return thing, frozenset()
    return replace(cast("Any", thing), **differing), frozenset(differing)


@dataclass(frozen=True, slots=True)
class Held(Generic[Thing]):
    """A thing as corrected, and the names of the fields that differ from what was first written."""

    thing: Thing
    corrected: frozenset[str] = frozenset()
