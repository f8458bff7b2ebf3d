"""Dose: how much of an exercise is prescribed. Exactly one kind an exercise; all lengths in whole ms."""

from dataclasses import dataclass
from enum import StrEnum

from app.domain.tempo import Begins, Tempo

DEFAULT_RELAX_MS = 2_000
DEFAULT_MOVE_MS = 2_000
DEFAULT_RESET_MS = 4_000


@dataclass(frozen=True, slots=True)
class Band:
    """A number or a range: led to `high`, met from `low`. Reps where reps are meant, ms where time is."""

    low: int
    high: int

    @classmethod
    def exactly(cls, value: int) -> "Band":
        """A band of one value."""
        return cls(value, value)

    @property
    def ranged(self) -> bool:
        """Whether the lower bound differs from the upper."""
        return self.low != self.high


@dataclass(frozen=True, slots=True)
class TempoReps:
    """Reps, each its non-zero phases in playing order."""

    reps: Band
    tempo: Tempo
    begins: Begins = Begins.ECCENTRIC


@dataclass(frozen=True, slots=True)
class HoldReps:
    """Isometric reps: a hold each, with `relax_ms` between and none after the last."""

    reps: Band
    hold: Band
    relax_ms: int = DEFAULT_RELAX_MS


@dataclass(frozen=True, slots=True)
class StickReps:
    """Landings to be stuck: move on the signal, hold the landing from `stick.low` to `stick.high`, reset."""

    reps: Band
    stick: Band
    move_ms: int = DEFAULT_MOVE_MS
    reset_ms: int = DEFAULT_RESET_MS


@dataclass(frozen=True, slots=True)
class SignalReps:
    """Explosive reps, one on a signal each `every_ms`."""

    reps: Band
    every_ms: int


@dataclass(frozen=True, slots=True)
class OwnPaceReps:
    """Reps at the athlete's own pace, counted as they come: no end time."""

    reps: Band


@dataclass(frozen=True, slots=True)
class WorkTime:
    """Continuous work for a time."""

    work: Band


class DoseKind(StrEnum):
    """The kinds of dose, in a word."""

    TEMPO = "tempo"
    HOLD = "hold"
    STICK = "stick"
    SIGNAL = "signal"
    OWN_PACE = "own_pace"
    WORK = "work"


Dose = TempoReps | HoldReps | StickReps | SignalReps | OwnPaceReps | WorkTime


def rep_band(dose: Dose) -> Band:
    """The reps prescribed a bout (to each side); timed work counts as one."""
    return Band.exactly(1) if isinstance(dose, WorkTime) else dose.reps


_KINDS = {
    TempoReps: DoseKind.TEMPO,
    HoldReps: DoseKind.HOLD,
    StickReps: DoseKind.STICK,
    SignalReps: DoseKind.SIGNAL,
    OwnPaceReps: DoseKind.OWN_PACE,
    WorkTime: DoseKind.WORK,
}


def kind_of(dose: Dose) -> DoseKind:
    """Of which kind a dose is."""
    return _KINDS[type(dose)]
