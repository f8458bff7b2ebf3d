"""The room: one leading clock, and a run for each athlete that keeps step with it. Pure: time is handed in.

Each athlete's run is the same as if they trained alone. Only their gaps differ: who is done waits until the
leading clock comes to their next slot.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace

from app.domain.group import GroupSession, Part
from app.domain.grouping import Form
from app.domain.records import BoutChosen, BoutEnded, BoutOutcome, Fact, SkipReason
from app.domain.timeline import Timeline
from app.run.controller import handle
from app.run.intents import (
    Begin,
    BeginNow,
    ExtendRest,
    Intent,
    Pause,
    RedoBout,
    SkipExercise,
    Stop,
    Tick,
)
from app.run.passing import Step, enter
from app.run.room_intents import Arrive, Depart, ForOne, GoToSlot, RoomIntent
from app.run.state import RunState, Stand, ready

HELD_MS = 36_000_000
"""Stands for a wait whose length nobody knows: work before it ends by count."""
SITS_OUT = "sits out"

MemberFacts = tuple[tuple[Fact, ...], ...]


@dataclass(frozen=True, slots=True)
class RoomState:
    """The leading run and those of the athletes, in the order of the session's parts.

    `present` says who is there; one who is not there yet stands READY, one who has gone ENDED.
    """

    leader: RunState
    members: tuple[RunState, ...]
    present: tuple[bool, ...]

    @property
    def over(self) -> bool:
        """Whether nobody's run goes on any more."""
        led = self.leader.stand is Stand.ENDED
        return led and all(state.stand in (Stand.ENDED, Stand.READY) for state in self.members)


RoomStep = tuple[RoomState, tuple[Fact, ...], MemberFacts]
"""The room, what the leading clock did, and the facts of each athlete."""


def ready_room(session: GroupSession, present: tuple[bool, ...] | None = None) -> RoomState:
    """The room before it begins; everybody is there unless it is said who is."""
    there = present or (True,) * len(session.parts)
    return RoomState(ready(session.leader), tuple(ready(part.timeline) for part in session.parts), there)


def handle_room(session: GroupSession, state: RoomState, intent: RoomIntent, now_ms: int) -> RoomStep:
    """The room after time has passed to `now_ms` and the intent was followed.

    An intent that makes no sense where the room stands changes nothing. Somebody's late arrival begins a run
    of theirs; a departure ends it, and both leave the others alone.
    """
    moving = _Moving(session, state, now_ms)
    moving.lead(Tick())
    moving.all(Tick())
    moving.align()
    moving.follow(intent)
    moving.align()
    return moving.done()


class _Moving:
    """A room on its way from one state to the next, collecting what came of it."""

    def __init__(self, session: GroupSession, state: RoomState, now_ms: int) -> None:
        self._session, self._now_ms = session, now_ms
        self._leader, self._present = state.leader, list(state.present)
        self._states = list(state.members)
        self._led: list[Fact] = []
        self._facts: list[list[Fact]] = [[] for _ in state.members]

    def done(self) -> RoomStep:
        """The room as it is now, and everything that came of it."""
        state = RoomState(self._leader, tuple(self._states), tuple(self._present))
        return state, tuple(self._led), tuple(map(tuple, self._facts))

    def follow(self, intent: RoomIntent) -> None:
        """Follow one intent, time having passed already."""
        match intent:
            case Arrive(member=member) if self._knows(member):
                self._arrive(member)
            case Depart(member=member) if self._knows(member):
                self._depart(member)
            case ForOne(member=member, intent=one) if self._knows(member):
                self._one(member, one)
            case GoToSlot(slot=slot) if 0 <= slot < len(self._session.leader.bouts):
                self._go_to(slot, self._session.leader.bouts[slot].before_ms)
            case Arrive() | Depart() | ForOne() | GoToSlot():
                return
            case _:
                self._everybody(intent)

    def lead(self, intent: Intent) -> tuple[Fact, ...]:
        """Have the leading clock follow an intent."""
        self._leader, facts = handle(self._session.leader, self._leader, intent, self._now_ms)
        self._led.extend(facts)
        return facts

    def all(self, intent: Intent) -> None:
        """Have everybody follow an intent who is there, and who was and still has a run."""
        for member, state in enumerate(self._states):
            if self._present[member] or state.stand is not Stand.READY:
                self._one(member, intent)

    def align(self) -> None:
        """Have all who wait for a slot wait as long as the leading clock does, and end with it."""
        for member, part in enumerate(self._session.parts):
            state = self._states[member]
            if state.stand not in (Stand.RUNNING, Stand.PAUSED) or state.begun:
                continue
            if self._leader.stand is Stand.ENDED:
                self._one(member, Stop())
            elif state.stand is Stand.RUNNING and not self._within_slot(part, state.bout):
                self._states[member] = self._waiting(part, state)

    def _everybody(self, intent: Intent) -> None:
        if isinstance(intent, Begin):
            self._begin()
        elif isinstance(intent, RedoBout):
            again = self._leader.bout if self._leader.begun else self._leader.last_bout
            if again is not None:
                self._go_to(again, self._session.leader.bouts[again].lead_in_ms)
        elif isinstance(intent, SkipExercise) and self._session.form is Form.STATIONS:
            if self._leader.bout + 1 < len(self._session.leader.bouts):
                slot = self._leader.bout + 1
                self._go_to(slot, self._session.leader.bouts[slot].before_ms)
        elif isinstance(intent, SkipExercise):
            self._skip(intent)
        elif isinstance(intent, BeginNow):
            self.lead(intent)
        elif isinstance(intent, ExtendRest):
            if self.lead(intent):
                self._those(intent, lambda part, state: part.slots[state.bout] == self._leader.bout)
        else:
            self.lead(intent)
            self.all(intent)

    def _begin(self) -> None:
        if self._leader.stand is not Stand.READY:
            return
        self.lead(Begin())
        for member, there in enumerate(self._present):
            if there:
                self._one(member, Begin())
                self._sit_out(member)

    def _arrive(self, member: int) -> None:
        state, part = self._states[member], self._session.parts[member]
        if self._leader.stand is Stand.READY:
            self._present[member] = True
        if self._leader.stand not in (Stand.RUNNING, Stand.PAUSED) or state.stand is not Stand.READY:
            return
        bout = part.first_from(self._leader.bout + (1 if self._leader.begun else 0))
        if bout is None:
            return
        self._present[member] = True
        self._one(member, Begin())
        self._states[member], facts = _go_to(part.timeline, self._states[member], bout, self._now_ms)
        self._facts[member].extend(facts)
        self._sit_out(member)
        if self._leader.stand is Stand.PAUSED:
            self._one(member, Pause())

    def _depart(self, member: int) -> None:
        """Go for good; who was not in the session yet can still come."""
        self._present[member] = False
        if self._states[member].stand is not Stand.READY:
            self._one(member, Stop())

    def _sit_out(self, member: int) -> None:
        part = self._session.parts[member]
        for bout in part.timeline.bouts:
            if (bout.stage, bout.exercise) in part.sits_out:
                self._one(member, SkipExercise(SkipReason.OTHER, SITS_OUT, bout.index))

    def _skip(self, intent: SkipExercise) -> None:
        bout = self._leader.bout if intent.bout is None else intent.bout
        if not 0 <= bout < len(self._session.leader.bouts):
            return
        self.lead(replace(intent, bout=bout))
        for member, part in enumerate(self._session.parts):
            theirs = part.first_from(bout)
            if (
                self._present[member]
                and theirs is not None
                and _same(self._session.leader, bout, part, theirs)
            ):
                self._one(member, replace(intent, bout=theirs))

    def _go_to(self, slot: int, before_ms: int) -> None:
        if self._leader.stand not in (Stand.RUNNING, Stand.PAUSED):
            return
        at, leader = self._now_ms, self._session.leader
        self._leader, facts = _go_to(leader, self._leader, slot, at, before_ms)
        self._led.extend(facts)
        for member, part in enumerate(self._session.parts):
            state, bout = self._states[member], part.first_from(self._leader.bout)
            if state.stand not in (Stand.RUNNING, Stand.PAUSED):
                continue
            if bout is None:
                self._one(member, Stop())
                continue
            self._states[member], facts = _go_to(part.timeline, state, bout, at)
            self._facts[member].extend(facts)

    def _those(self, intent: Intent, meant: Callable[[Part, RunState], bool]) -> None:
        for member, part in enumerate(self._session.parts):
            state = self._states[member]
            if state.stand is not Stand.ENDED and self._present[member] and meant(part, state):
                self._one(member, intent)

    def _one(self, member: int, intent: Intent) -> None:
        timeline = self._session.parts[member].timeline
        self._states[member], facts = handle(timeline, self._states[member], intent, self._now_ms)
        self._facts[member].extend(facts)

    def _knows(self, member: int) -> bool:
        return 0 <= member < len(self._states)

    @staticmethod
    def _within_slot(part: Part, bout: int) -> bool:
        """Whether a bout is not the first of its slot for the athlete: the second side of a window."""
        return bout > 0 and part.slots[bout - 1] == part.slots[bout]

    def _waiting(self, part: Part, state: RunState) -> RunState:
        slot = part.slots[state.bout]
        if self._leader.bout > slot or (self._leader.bout == slot and self._leader.begun):
            return state
        wait_ms = until_slot(self._session.leader, self._leader, slot, self._now_ms)
        if state.local_ms(self._now_ms) == -wait_ms:
            return state
        rest_ms = self._session.leader.bouts[slot].gap_ms
        return replace(state, anchor_ms=self._now_ms, cursor_ms=-wait_ms, rest_ms=rest_ms)


def until_slot(leader: Timeline, state: RunState, slot: int, now_ms: int) -> int:
    """Time in ms until the work of a slot begins, from where the leading clock stands.

    HELD_MS and more when work that ends by count lies between. The slot is not before the leader's.
    """
    if slot == state.bout:
        return -state.local_ms(now_ms)
    work = [bout.work_ms for bout in leader.bouts[state.bout : slot]]
    gaps_ms = sum(bout.before_ms for bout in leader.bouts[state.bout + 1 : slot + 1])
    if None in work:
        return HELD_MS + gaps_ms
    return sum(length or 0 for length in work) - state.local_ms(now_ms) + gaps_ms


def _go_to(timeline: Timeline, state: RunState, bout: int, now_ms: int, before_ms: int | None = None) -> Step:
    """A run at the beginning of a bout, what was under way broken off; exercises left out are passed over."""
    facts: tuple[Fact, ...] = ()
    if state.begun:
        at = now_ms - state.began_ms
        facts = (BoutEnded(at, state.bout, state.attempt, BoutOutcome.BROKEN_OFF),)
    meant = next(
        (each for each in timeline.bouts[bout:] if (each.stage, each.exercise) not in state.skipped), None
    )
    if meant is None:
        return state, ()
    cursor_ms = -meant.before_ms if before_ms is None or meant.index != bout else -before_ms
    chosen = BoutChosen(now_ms - state.began_ms, meant.index)
    return enter(replace(state, last_bout=None), meant, now_ms, cursor_ms), (*facts, chosen)


def _same(leader: Timeline, slot: int, part: Part, bout: int) -> bool:
    led, theirs = leader.bouts[slot], part.timeline.bouts[bout]
    return (led.stage, led.exercise) == (theirs.stage, theirs.exercise)
