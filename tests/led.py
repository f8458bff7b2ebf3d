"""A run led by hand: a controller, a clock of its own, and what came of it."""

from collections.abc import Iterable
from typing import TypeVar

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose, TempoReps
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind
from app.domain.records import (
    Fact,
    RepDone,
)
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    Intent,
    Tick,
)

F = TypeVar("F")

TWO_REPS = TempoReps(Band.exactly(2), parse_tempo("2-1-1-0"))


def timeline_of(*exercises: Exercise) -> Timeline:
    return compile_timeline(Plan("Try-out", (Stage("One", StageKind.ACTIVATION, exercises),)))


def one(dose: Dose, sides: Sides = Sides.BOTH, sets: int = 1) -> Timeline:
    return timeline_of(Exercise("Heel raise", dose, sides=sides, sets=sets, rest_ms=30_000))


class Led:
    """A controller with a clock of its own that ticks four times a second, as a screen would."""

    def __init__(self, timeline: Timeline) -> None:
        self.controller = Controller(timeline)
        self.now = 1_000_000
        self.facts: list[Fact] = []

    def do(self, intent: Intent) -> tuple[Fact, ...]:
        _, facts = self.controller.handle(intent, self.now)
        self.facts.extend(facts)
        return facts

    def to(self, run_ms: int) -> "Led":
        while self.now < 1_000_000 + run_ms:
            self.now = min(self.now + 250, 1_000_000 + run_ms)
            self.do(Tick())
        return self

    def begin(self) -> "Led":
        self.do(Begin())
        return self

    def kinds(self) -> list[type]:
        return [type(fact) for fact in self.facts]

    def of(self, kind: type[F]) -> list[F]:
        return [fact for fact in self.facts if isinstance(fact, kind)]


def reps(facts: Iterable[RepDone]) -> list[tuple[int, int, int]]:
    return [(fact.rep, fact.start_ms, fact.at_ms) for fact in facts]
