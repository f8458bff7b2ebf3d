"""Small plans, built in a line."""

from typing import Any

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.dose import Band, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Plan, Stage, StageKind
from app.domain.tempo import Begins, parse_tempo
from app.domain.timeline import Timeline


def tempo_reps(reps: int | tuple[int, int], tempo: str, begins: Begins = Begins.ECCENTRIC) -> TempoReps:
    """Reps at a tempo."""
    return TempoReps(_band(reps), parse_tempo(tempo), begins)


def holds(reps: int | tuple[int, int], seconds: float | tuple[float, float], relax: float = 2) -> HoldReps:
    """Isometric reps."""
    return HoldReps(_band(reps), _length(seconds), round(relax * 1000))


def sticks(
    reps: int | tuple[int, int], seconds: float | tuple[float, float], move: float = 2, reset: float = 4
) -> StickReps:
    """Landings to be stuck."""
    return StickReps(_band(reps), _length(seconds), round(move * 1000), round(reset * 1000))


def signals(reps: int | tuple[int, int], every: float) -> SignalReps:
    """Reps on a signal."""
    return SignalReps(_band(reps), round(every * 1000))


def own_pace(reps: int | tuple[int, int]) -> OwnPaceReps:
    """Reps at one's own pace."""
    return OwnPaceReps(_band(reps))


def work_for(seconds: float | tuple[float, float]) -> WorkTime:
    """Continuous work."""
    return WorkTime(_length(seconds))


def plan_of(*exercises: Exercise, kind: StageKind = StageKind.OTHER, **keys: Any) -> Plan:  # noqa: ANN401
    """A plan of one stage."""
    return Plan("Try-out", (Stage("Stage", kind, exercises),), **keys)


def staged(*stages: tuple[StageKind, tuple[Exercise, ...]], **keys: Any) -> Plan:  # noqa: ANN401
    """A plan of stages named by their number and kind."""
    named = (
        Stage(f"{number} {kind.value}", kind, exercises) for number, (kind, exercises) in enumerate(stages, 1)
    )
    return Plan("Try-out", tuple(named), **keys)


def compiled(*exercises: Exercise, athlete: Athlete | None = None, **keys: Any) -> Timeline:  # noqa: ANN401
    """The timeline of a plan of one stage."""
    return compile_timeline(plan_of(*exercises, **keys), athlete)


def _band(value: int | tuple[int, int]) -> Band:
    return Band(*value) if isinstance(value, tuple) else Band.exactly(value)


def _length(seconds: float | tuple[float, float]) -> Band:
    low, high = seconds if isinstance(seconds, tuple) else (seconds, seconds)
    return Band(round(low * 1000), round(high * 1000))
