"""A hall for tests: the invented club in a group session, on a clock moved by hand."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import cycle, islice

from app import wiring
from app.domain.athlete import Athlete
from app.domain.group import GroupSession
from app.domain.group_stations import Rotation, stations
from app.domain.group_together import together
from app.domain.group_waves import waves
from app.domain.grouping import Form
from app.domain.plan import Plan
from app.domain.records import Fact
from app.run.room_intents import RoomIntent
from app.run.sounding import NoSound
from app.views.group.room_session import RoomSession, Told
from tests.fakes import HandClock, RecordingSpeaker

SWAP_MS = 15_000
ROTATION = Rotation(40_000, 20_000, 2)


def club(count: int) -> tuple[Athlete, ...]:
    """So many of the invented club, with more of the same first names where twelve are not enough."""
    roster = wiring.read_athletes(wiring.demo_folder() / "roster.toml")
    return tuple(
        one if number < len(roster) else replace(one, name=f"{one.name} {surname(number)}")
        for number, one in enumerate(islice(cycle(roster), count))
    )


def surname(number: int) -> str:
    """A made-up surname for a place in the roster."""
    return ("Marram", "Dulse", "Sandling", "Tern")[number // 12 % 4] + chr(ord("a") + number % 12)


def demo_plan() -> Plan:
    """The invented club's landing session."""
    return wiring.read_plan(wiring.demo_folder() / "landing_control.toml").plan


def group_session(form: Form, plan: Plan, athletes: Sequence[Athlete]) -> GroupSession:
    """A session of a form with the usual lengths."""
    if form is Form.TOGETHER:
        return together(plan, athletes)
    return waves(plan, athletes, SWAP_MS) if form is Form.WAVES else stations(plan, athletes, ROTATION)


class Hall:
    """A group session on a clock moved by hand, and what it wrote of each athlete."""

    def __init__(self, session: GroupSession) -> None:
        self.clock = HandClock(5_000)
        self.written: list[list[Fact]] = [[] for _ in session.parts]
        self.sound = NoSound()
        self.room = RoomSession(session, self.clock, RecordingSpeaker(), self.sound, self._write)

    def _write(self, told: Sequence[Told]) -> None:
        for member, first, facts in told:
            assert first == len(self.written[member])
            self.written[member].extend(facts)

    def do(self, *intents: RoomIntent) -> "Hall":
        for intent in intents:
            self.room.act(intent)
        return self

    def wait(self, ms: int, step_ms: int = 500) -> "Hall":
        """Let time pass in steps."""
        while ms > 0:
            self.clock.at_ms += min(step_ms, ms)
            ms -= step_ms
            self.room.look()
        return self
