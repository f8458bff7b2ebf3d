"""What a coach asks of a room. An intent of a single run is meant for everybody who is there."""

from dataclasses import dataclass

from app.run.intents import (
    Begin,
    BeginNow,
    CountRep,
    EndBout,
    ExtendRest,
    MarkFault,
    MarkMissed,
    Pause,
    RateBout,
    RateSession,
    RedoBout,
    Resume,
    SkipExercise,
    Stop,
    Tick,
)


@dataclass(frozen=True, slots=True)
class Arrive:
    """Somebody comes: at once before the session begins, else with the next slot."""

    member: int


@dataclass(frozen=True, slots=True)
class Depart:
    """Somebody goes, for good; before the session begins they were never there."""

    member: int


@dataclass(frozen=True, slots=True)
class ForOne:
    """An intent for one athlete: a fault, a missed rep, an exercise sat out, an answer."""

    member: int
    intent: MarkFault | MarkMissed | SkipExercise | RateBout | RateSession


@dataclass(frozen=True, slots=True)
class GoToSlot:
    """The room goes to the beginning of a slot, forwards or back, with the change before it."""

    slot: int


ForAll = (
    Begin
    | Tick
    | Pause
    | Resume
    | CountRep
    | EndBout
    | RedoBout
    | SkipExercise
    | ExtendRest
    | BeginNow
    | Stop
)

RoomIntent = ForAll | Arrive | Depart | ForOne | GoToSlot
