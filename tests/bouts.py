"""Small plans of the invented club, compiled, for tests of what is heard."""

from dataclasses import replace

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Plan, Side, Sides, Stage, StageKind
from app.domain.tempo import Begins, parse_tempo
from app.domain.timeline import Bout, Timeline

ROTATION = Exercise(
    "Side-lying external rotation",
    TempoReps(Band.exactly(4), parse_tempo("2-1-2-1"), Begins.CONCENTRIC),
    sides=Sides.EACH,
    rest_ms=45_000,
    setup="Lie on the other side",
    cues=("Elbow down", "Slow on the way back"),
)


def exercise(dose: Dose, name: str = "Throwing lunge", **more: object) -> Exercise:
    """An exercise of a dose, with whatever else a test needs."""
    return replace(Exercise(name, dose), **more)  # type: ignore[arg-type]


def timeline_of(*exercises: Exercise, **more: object) -> Timeline:
    """The timeline of a plan of one stage."""
    stage = Stage("Wake the shoulder", StageKind.ACTIVATION, exercises)
    return compile_timeline(Plan("Throwing shoulder, week 2", (stage,), **more))  # type: ignore[arg-type]


def bout_of(dose: Dose, **more: object) -> tuple[Timeline, Bout]:
    """A timeline of one exercise, and its first bout."""
    timeline = timeline_of(replace(exercise(dose), **more))  # type: ignore[arg-type]
    return timeline, timeline.bouts[0]


def tempo_reps(tempo: str, reps: int, begins: Begins = Begins.ECCENTRIC) -> TempoReps:
    """Reps at a tempo."""
    return TempoReps(Band.exactly(reps), parse_tempo(tempo), begins)


EVERY_DOSE: dict[str, Dose] = {
    "tempo": tempo_reps("3-1-2-0", 5),
    "slow": tempo_reps("4-0-4-0", 3),
    "explosive": tempo_reps("3-0-X-0", 4),
    "quick": tempo_reps("0.5-0-0.5-0", 11),
    "hold": HoldReps(Band.exactly(3), Band(20_000, 30_000)),
    "stick": StickReps(Band.exactly(3), Band(3_000, 5_000)),
    "signal": SignalReps(Band.exactly(4), 5_000),
    "work": WorkTime(Band.exactly(40_000)),
    "own": OwnPaceReps(Band(8, 12)),
}
LEFT, RIGHT, BOTH = Side.LEFT, Side.RIGHT, Side.BOTH
