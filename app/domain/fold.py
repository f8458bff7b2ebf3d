"""Folding: the facts of a run, as they happened, become one record a bout and attempt."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from app.domain.plan import Side
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutRated,
    BoutRecord,
    Fact,
    FaultMarked,
    LoadUsed,
    RepDone,
    RepMissed,
    RepRecord,
    RunEnded,
    RunOutcome,
    SessionRated,
    TakenBack,
)

UNNAMED_FAULT = ""
"""Stands in a rep's record for a fault that was marked without choosing a name."""

BoutFact = BoutBegan | RepDone | RepMissed | FaultMarked | BoutEnded | BoutRated | LoadUsed | TakenBack
_WORK = (BoutBegan, RepDone, RepMissed, BoutEnded)
_SAID = (FaultMarked, BoutRated, LoadUsed)


@dataclass(frozen=True, slots=True)
class Closing:
    """How a run ended and how its athlete rated it. None is unknown, never zero.

    `elapsed_ms` runs from the beginning of the run to its end, `lag_ms` from that end to the answer
    `session_rpe`.
    """

    outcome: RunOutcome | None = None
    elapsed_ms: int | None = None
    session_rpe: int | None = None
    lag_ms: int | None = None
    note: str | None = None


def fold_bout(facts: Sequence[Fact], bout: int, attempt: int) -> BoutRecord:
    """One attempt at one bout, out of the facts of its run in the order they were written.

    A later answer replaces an earlier one, and None leaves it as it was. A fault goes with its rep whether
    it was marked before or after the rep was done; the same fault twice on a rep is one; a fault on a rep
    that was never recorded is left out. A rep recorded again replaces the first. A bout that has no end was
    broken off at the last that is known of its work. Raises ValueError when nothing was done of this attempt,
    not even leaving it out.
    """
    return _fold([fact for fact in facts if isinstance(fact, BoutFact) and _key(fact) == (bout, attempt)])


def fold_run(facts: Sequence[Fact]) -> tuple[BoutRecord, ...]:
    """Every attempt at every bout of a run, in the order in which they were first written down."""
    return tuple(_fold(mine) for mine in _by_attempt(facts).values() if _worked(mine))


def fold_closing(facts: Iterable[Fact], so_far: Closing | None = None) -> Closing:
    """How a run ended and was rated: a later answer replaces an earlier one, None leaves it as it was."""
    closing = so_far or Closing()
    for fact in facts:
        match fact:
            case RunEnded(at_ms=at, outcome=outcome):
                closing = replace(closing, outcome=outcome, elapsed_ms=at)
            case SessionRated(rpe=rpe, lag_ms=lag, note=note):
                if rpe is not None:
                    closing = replace(closing, session_rpe=rpe, lag_ms=lag)
                if note is not None:
                    closing = replace(closing, note=note)
    return closing


def as_meant(facts: Iterable[Fact]) -> tuple[Fact, ...]:
    """The facts that count: without marks and answers that were taken back, and without the taking back.

    A `TakenBack` that nothing is left for takes back nothing.
    """
    kept: list[Fact | None] = []
    said: dict[tuple[int, int], list[int]] = {}
    for fact in facts:
        if isinstance(fact, TakenBack):
            if places := said.get(_key(fact)):
                kept[places.pop()] = None
            continue
        if isinstance(fact, _SAID):
            said.setdefault(_key(fact), []).append(len(kept))
        kept.append(fact)
    return tuple(fact for fact in kept if fact is not None)


def standing(records: Iterable[BoutRecord]) -> dict[int, BoutRecord]:
    """By bout the attempt that counts: the last that was done or ended early by the athlete.

    Where there is none, the one with the most reps done, the later of two alike. So an attempt that was
    broken off or left out never stands before one that came to its end.
    """
    found: dict[int, BoutRecord] = {}
    for record in records:
        before = found.get(record.bout)
        if before is None or _rank(record) >= _rank(before):
            found[record.bout] = record
    return found


def _rank(record: BoutRecord) -> tuple[int, int, int]:
    ended = record.outcome in (BoutOutcome.DONE, BoutOutcome.ENDED_EARLY)
    return (1, 0, record.attempt) if ended else (0, record.reps_done, record.attempt)


def _by_attempt(facts: Iterable[Fact]) -> dict[tuple[int, int], list[BoutFact]]:
    found: dict[tuple[int, int], list[BoutFact]] = {}
    for fact in facts:
        if isinstance(fact, BoutFact):
            found.setdefault(_key(fact), []).append(fact)
    return found


def _key(fact: BoutFact) -> tuple[int, int]:
    return fact.bout, fact.attempt


def _worked(facts: Iterable[BoutFact]) -> bool:
    return any(isinstance(fact, _WORK) for fact in facts)


def _fold(facts: Sequence[BoutFact]) -> BoutRecord:
    """The record of one attempt out of its own facts."""
    facts = [fact for fact in as_meant(facts) if isinstance(fact, BoutFact)]
    work = [fact for fact in facts if isinstance(fact, _WORK)]
    if not work:
        raise ValueError("nothing was done of this attempt")
    began = next((fact.at_ms for fact in facts if isinstance(fact, BoutBegan)), None)
    record = BoutRecord(
        bout=facts[0].bout,
        attempt=facts[0].attempt,
        reps=_reps(facts),
        outcome=BoutOutcome.BROKEN_OFF,
        began_ms=began,
        ended_ms=max(fact.at_ms for fact in work),
    )
    for fact in facts:
        if isinstance(fact, BoutEnded):
            note = record.note if fact.note is None else fact.note
            record = replace(record, outcome=fact.outcome, ended_ms=fact.at_ms, reason=fact.reason, note=note)
        elif isinstance(fact, BoutRated):
            record = _answered(record, fact)
        elif isinstance(fact, LoadUsed):
            record = replace(record, load_kg=fact.load_kg)
    return record


def _answered(record: BoutRecord, answers: BoutRated) -> BoutRecord:
    return replace(
        record,
        reps_stated=record.reps_stated if answers.reps is None else answers.reps,
        rpe=record.rpe if answers.rpe is None else answers.rpe,
        pain=record.pain if answers.pain is None else answers.pain,
        note=record.note if answers.note is None else answers.note,
    )


def _reps(facts: Iterable[BoutFact]) -> tuple[RepRecord, ...]:
    reps: dict[tuple[int, Side], RepRecord] = {}
    faults: dict[tuple[int, Side], dict[str, None]] = {}
    for fact in facts:
        match fact:
            case RepDone(at_ms=at, rep=rep, side=side, start_ms=start, late_ms=late):
                reps[rep, side] = RepRecord(rep, side, start, at, late)
            case RepMissed(at_ms=at, rep=rep, side=side):
                reps[rep, side] = RepRecord(rep, side, at, at, 0, missed=True)
            case FaultMarked(rep=rep, side=side, fault=fault):
                faults.setdefault((rep, side), {})[UNNAMED_FAULT if fault is None else fault] = None
    return tuple(
        replace(record, faults=_named(faults[key])) if key in faults else record
        for key, record in reps.items()
    )


def _named(faults: Iterable[str]) -> tuple[str, ...]:
    """The faults of one rep; a mark without a name is said by one that has it."""
    marked = tuple(faults)
    return tuple(fault for fault in marked if fault != UNNAMED_FAULT) or marked
