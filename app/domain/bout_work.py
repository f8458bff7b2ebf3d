"""The work of a bout: a dose laid out as phases from the start of the bout, in whole milliseconds."""

from collections.abc import Iterator
from dataclasses import dataclass

from app.domain.dose import Band, Dose, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Side, Sides
from app.domain.tempo import PLAYING_ORDER, Phase
from app.domain.timeline import WorkSpan


@dataclass(frozen=True, slots=True)
class RepPhase:
    """One phase of a rep. Lengths in ms; `low_ms` is the lower bound where the length is a range.

    `between` marks what only separates a rep from the next, and is left out after the last.
    """

    phase: Phase
    length_ms: int
    low_ms: int | None = None
    between: bool = False


def work_of(exercise: Exercise, side: Side, fast_ms: int) -> tuple[WorkSpan, ...]:
    """The spans of one bout that begins on `side`. `fast_ms` is the length given to an X phase.

    Work at the athlete's own pace is one span without an end.
    """
    if isinstance(exercise.dose, OwnPaceReps):
        return (WorkSpan(0, None, Phase.OWN, 1, side),)
    phases = rep_phases(exercise.dose, fast_ms)
    closing = tuple(phase for phase in phases if not phase.between)
    turns = tuple(_turns(exercise, side))
    spans: list[WorkSpan] = []
    now = 0
    for number, (rep, turn_side) in enumerate(turns, 1):
        for part in closing if number == len(turns) else phases:
            end = now + part.length_ms
            mark = None if part.low_ms is None else now + part.low_ms
            spans.append(WorkSpan(now, end, part.phase, rep, turn_side, mark))
            now = end
    return tuple(spans)


def rep_phases(dose: Dose, fast_ms: int) -> tuple[RepPhase, ...]:
    """The phases of one rep in playing order without those of 0 ms; none for reps at one's own pace."""
    return tuple(part for part in _all_phases(dose, fast_ms) if part.length_ms > 0)


def _all_phases(dose: Dose, fast_ms: int) -> Iterator[RepPhase]:
    match dose:
        case TempoReps(tempo=tempo, begins=begins):
            for phase in PLAYING_ORDER[begins]:
                length = tempo.length(phase)
                yield RepPhase(phase, fast_ms if length is None else length)
        case HoldReps(hold=hold, relax_ms=relax_ms):
            yield _banded(Phase.HOLD, hold)
            yield RepPhase(Phase.RELAX, relax_ms, between=True)
        case StickReps(stick=stick, move_ms=move_ms, reset_ms=reset_ms):
            yield RepPhase(Phase.MOVE, move_ms)
            yield _banded(Phase.STICK, stick)
            yield RepPhase(Phase.RESET, reset_ms, between=True)
        case SignalReps(every_ms=every_ms):
            yield RepPhase(Phase.GO, every_ms)
        case WorkTime(work=work):
            yield _banded(Phase.WORK, work)
        case OwnPaceReps():
            return


def _banded(phase: Phase, band: Band) -> RepPhase:
    return RepPhase(phase, band.high, band.low if band.ranged else None)


def _turns(exercise: Exercise, side: Side) -> Iterator[tuple[int, Side]]:
    """Number and side of every rep of a bout, led to the upper bound."""
    reps = 1 if isinstance(exercise.dose, WorkTime) else exercise.dose.reps.high
    for rep in range(1, reps + 1):
        yield rep, side
        if exercise.sides is Sides.ALTERNATE:
            yield rep, side.other
