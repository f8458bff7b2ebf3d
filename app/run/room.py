"""The room: one leading clock, and a run for each athlete that keeps step with it. Pure: time is handed in.

Each athlete's run is the same as if they trained alone. Only their gaps differ: who is done waits until the
leading clock comes to their next slot.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace

from app.domain.group import GroupSession, Part
from app.domain.grouping import Form
from app.domain.records import Fact, SkipReason
from app.domain.timeline import Timeline
from app.run.controller import handle
from app.run.intents import (
    Begin,
    BeginNow,
    EndBout,
    ExtendRest,
    Intent,
    Pause,
    RedoBout,
    SkipExercise,
    Stop,
    Tick,
)
from app.run.room_intents import Arrive, Depart, ForOne, GoToSlot, RoomIntent
from app.run.room_steps import (
    back_to,
    go_to,
    kept_in_window,
    lived_ms,
    longest_rest_ms,
    until_slot,
    within_slot,
)
from app.run.state import RunState, Stand, ready

SITS_OUT = "sits out"

GOING = (Stand.RUNNING, Stand.PAUSED)
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
    moving.pass_time()
    moving.follow(intent)
    return moving.done()


class _Moving:
    """A room on its way from one state to the next, collecting what came of it."""

    def __init__(self, session: GroupSession, state: RoomState, now_ms: int) -> None:
        self._session, self._now_ms = session, now_ms
        self._leader, self._present = state.leader, list(state.present)
        self._states = list(state.members)
        self._led: list[Fact] = []
        self._facts: list[list[Fact]] = [[] for _ in state.members]
        self._stood_ms: int | None = None
        self._again_ms = 0

    def done(self) -> RoomStep:
        """The room as it is now, and everything that came of it."""
        state = RoomState(self._leader, tuple(self._states), tuple(self._present))
        return state, tuple(self._led), tuple(map(tuple, self._facts))

    def pass_time(self) -> None:
        """Bring everybody up to now."""
        self.lead(Tick())
        self._all(Tick())
        self._settle()

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
        self._settle()

    def lead(self, intent: Intent) -> tuple[Fact, ...]:
        """Have the leading clock follow an intent."""
        before = self._leader
        self._leader, facts = handle(self._session.leader, before, intent, self._now_ms)
        self._led.extend(facts)
        if self._stands_still(before, self._leader):
            self._stood_ms = lived_ms(before, self._leader, self._now_ms)
        return facts

    def _all(self, intent: Intent) -> None:
        """Have everybody follow an intent who is there, and who was and still has a run."""
        for member, state in enumerate(self._states):
            if self._present[member] or state.stand is not Stand.READY:
                self._one(member, intent)

    def _settle(self) -> None:
        """Have everybody keep step with the leading clock, and the clock with those who are there."""
        self._step_back()
        self._end_empty()
        for member, part in enumerate(self._session.parts):
            self._leave_behind(member, part)
            self._align(member, part)
        if self._leader.stand in GOING and not any(state.stand in GOING for state in self._states):
            self.lead(Stop())

    def _step_back(self) -> None:
        """A window that stands still is as much longer as the longest rep that is begun again in it."""
        stood_ms, self._stood_ms = self._stood_ms, None
        if stood_ms is not None and self._session.form is Form.STATIONS:
            self._leader = back_to(self._session.leader, self._leader, stood_ms - self._again_ms)
        self._again_ms = 0

    def _end_empty(self) -> None:
        """The bout ends that nobody is at any more; a wave that waits for it still has its whole rest."""
        leader, parts = self._leader, self._session.parts
        if self._session.form is Form.STATIONS or leader.stand is not Stand.RUNNING or not leader.begun:
            return
        if any(
            state.stand in GOING and part.slots[state.bout] <= leader.bout
            for part, state in zip(parts, self._states, strict=True)
        ):
            return
        before_ms = self._session.leader.bouts[leader.bout].before_ms
        self.lead(EndBout())
        if self._session.form is not Form.WAVES or self._leader.stand is not Stand.RUNNING:
            return
        rest_ms = longest_rest_ms(parts, self._states, self._leader.bout) - before_ms
        more_ms = rest_ms + self._leader.local_ms(self._now_ms)
        if more_ms > 0:
            cursor_ms = self._leader.cursor_ms - more_ms
            self._leader = replace(self._leader, cursor_ms=cursor_ms, rest_ms=self._leader.rest_ms + more_ms)

    def _leave_behind(self, member: int, part: Part) -> None:
        """Who is at a slot that is over goes on; a window at a station ends whatever is under way in it."""
        state, ended = self._states[member], self._leader.stand is Stand.ENDED
        if state.stand is not Stand.RUNNING or not (ended or part.slots[state.bout] < self._leader.bout):
            return
        if state.begun and self._session.form is Form.STATIONS:
            self._one(member, EndBout())
            state = self._states[member]
        behind = state.stand is Stand.RUNNING and part.slots[state.bout] < self._leader.bout
        if behind and not state.begun and not ended:
            self._take_to(member, part.first_from(self._leader.bout))

    def _align(self, member: int, part: Part) -> None:
        """Who waits for a slot waits as long as the leading clock does, and ends with it."""
        state = self._states[member]
        if state.stand not in GOING or state.begun:
            return
        if self._leader.stand is Stand.ENDED:
            self._one(member, Stop())
        elif state.stand is Stand.RUNNING and not within_slot(part, state.bout):
            self._states[member] = self._waiting(part, state)

    def _everybody(self, intent: Intent) -> None:
        if isinstance(intent, Begin):
            self._begin()
        elif isinstance(intent, RedoBout):
            again = self._leader.bout if self._leader.begun else self._leader.last_bout
            if again is not None:
                self._go_to(again, self._session.leader.bouts[again].lead_in_ms)
        elif isinstance(intent, SkipExercise) and self._session.form is Form.STATIONS:
            self._next_window()
        elif isinstance(intent, SkipExercise):
            self._skip(intent)
        elif isinstance(intent, BeginNow):
            self.lead(intent)
        elif isinstance(intent, ExtendRest):
            if self.lead(intent):
                self._those(intent, lambda part, state: part.slots[state.bout] == self._leader.bout)
        else:
            self.lead(intent)
            self._all(intent)

    def _next_window(self) -> None:
        slot = self._leader.bout + 1
        if slot < len(self._session.leader.bouts):
            self._go_to(slot, self._session.leader.bouts[slot].before_ms)
        else:
            self.lead(EndBout())

    def _begin(self) -> None:
        if self._leader.stand is not Stand.READY or not any(self._present):
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
        self._take_to(member, bout)
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
        if self._leader.stand not in GOING:
            return
        self._leader, facts = go_to(self._session.leader, self._leader, slot, self._now_ms, before_ms)
        self._led.extend(facts)
        if not facts:
            return
        for member, part in enumerate(self._session.parts):
            if self._states[member].stand in GOING:
                self._take_to(member, part.first_from(self._leader.bout))

    def _take_to(self, member: int, bout: int | None) -> None:
        """Take somebody to a bout of theirs, or end their run where there is none left."""
        timeline, facts = self._session.parts[member].timeline, tuple[Fact, ...]()
        if bout is not None:
            self._states[member], facts = go_to(timeline, self._states[member], bout, self._now_ms)
            self._facts[member].extend(facts)
        if not facts:
            self._one(member, Stop())

    def _those(self, intent: Intent, meant: Callable[[Part, RunState], bool]) -> None:
        for member, part in enumerate(self._session.parts):
            state = self._states[member]
            if state.stand is not Stand.ENDED and self._present[member] and meant(part, state):
                self._one(member, intent)

    def _one(self, member: int, intent: Intent) -> None:
        part, before = self._session.parts[member], self._states[member]
        state, facts = handle(part.timeline, before, intent, self._now_ms)
        if self._stands_still(before, state) and self._session.form is Form.STATIONS:
            local_ms = lived_ms(before, state, self._now_ms)
            state = kept_in_window(part.timeline, state, local_ms)
            self._again_ms = max(self._again_ms, local_ms - state.work_from_ms)
        self._states[member] = state
        self._facts[member].extend(facts)

    @staticmethod
    def _stands_still(before: RunState, state: RunState) -> bool:
        return before.stand is Stand.RUNNING and state.stand is Stand.PAUSED and state.begun

    def _knows(self, member: int) -> bool:
        return 0 <= member < len(self._states)

    def _waiting(self, part: Part, state: RunState) -> RunState:
        slot = part.slots[state.bout]
        if self._leader.bout > slot or (self._leader.bout == slot and self._leader.begun):
            return state
        wait_ms = until_slot(self._session.leader, self._leader, slot, self._now_ms)
        if state.local_ms(self._now_ms) == -wait_ms:
            return state
        rest_ms = self._session.leader.bouts[slot].gap_ms
        return replace(state, anchor_ms=self._now_ms, cursor_ms=-wait_ms, rest_ms=rest_ms)


def _same(leader: Timeline, slot: int, part: Part, bout: int) -> bool:
    led, theirs = leader.bouts[slot], part.timeline.bouts[bout]
    return (led.stage, led.exercise) == (theirs.stage, theirs.exercise)
