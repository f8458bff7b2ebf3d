"""What the gym screen shows of a room at one moment, as plain values: no pain, no notes, no whole names."""

from dataclasses import dataclass
from enum import StrEnum

from app.domain.group import GroupSession, Part
from app.domain.grouping import Form
from app.domain.plan import Side
from app.domain.timeline import Bout
from app.run.room import RoomState
from app.run.snapshot import Snapshot, snapshot
from app.run.state import RunState, Stand

LETTERS = "ABCDEFGHIJKL"


class Standing(StrEnum):
    """How somebody stands to the slot of the room."""

    WORKS = "works"
    DONE = "done"
    RESTS = "rests"
    SITS_OUT = "sits_out"
    ABSENT = "absent"
    GONE = "gone"


@dataclass(frozen=True, slots=True)
class Someone:
    """One athlete in a slot: what they do, on which side, how many of how many reps."""

    name: str
    standing: Standing
    side: Side
    done: int
    target: int
    team: int


@dataclass(frozen=True, slots=True)
class StationScene:
    """One station: who is there and what they do; `following` is the letter of where they go next.

    `shown` is the run of the first of them, None where nobody is at work there; `done` says that those who
    are there have done all the reps that fit.
    """

    letter: str
    exercise: str
    names: tuple[str, ...]
    shown: Snapshot | None
    following: str | None
    done: bool = False


@dataclass(frozen=True, slots=True)
class RoomScene:
    """The room at one moment. `slot` counts from 0; `round_` and `rounds` from 1, for stations alone.

    `leader` is the leading clock, `people` everybody in the order of the roster, `stations` none but for
    stations, and `resting` the teams that have none. `sides_differ` says that people work on different
    sides, so that none can be named for all, and `next_differs` the same of the slot that follows.
    """

    form: Form
    leader: Snapshot
    people: tuple[Someone, ...]
    sides_differ: bool
    next_differs: bool
    second_side: bool
    slot: int
    slots: int
    round_: int
    rounds: int
    stations: tuple[StationScene, ...] = ()
    resting: tuple[StationScene, ...] = ()

    @property
    def wave(self) -> int | None:
        """The wave whose slot it is, None where all work."""
        return self.slot % 2 if self.form is Form.WAVES else None


def room_scene(session: GroupSession, state: RoomState, names: tuple[str, ...], now_ms: int) -> RoomScene:
    """The room at a clock time, its state brought up to that time; `names` are those for the screen."""
    leader = snapshot(session.leader, state.leader, now_ms)
    slot = state.leader.bout
    stations = _Stations(session, state, names, now_ms)
    turns = max(len(session.stations), session.teams) if session.stations else len(session.leader.bouts)
    people = tuple(
        _someone(part, state.members[number], name, slot, there=state.present[number])
        for number, (part, name) in enumerate(zip(session.parts, names, strict=True))
    )
    return RoomScene(
        form=session.form,
        leader=leader,
        people=people,
        sides_differ=_differ(session, slot),
        next_differs=leader.following is not None and _differ(session, leader.following.index),
        second_side=_second_side(session, slot),
        slot=slot,
        slots=len(session.leader.bouts),
        round_=slot // turns + 1,
        rounds=len(session.leader.bouts) // turns,
        stations=stations.scenes(),
        resting=stations.resting(),
    )


def _someone(part: Part, state: RunState, name: str, slot: int, *, there: bool) -> Someone:
    bouts = part.bouts_in(slot)
    bout = bouts[0] if bouts else part.timeline.bouts[min(state.bout, len(part.timeline.bouts) - 1)]
    for each in bouts:
        if each.index == state.bout:
            bout = each
    standing = _standing(part, state, bouts, bout, there=there)
    target = bout.high // 2 if bout.alternating else bout.high
    return Someone(name, standing, bout.side, _done(state, bout, target, standing), target, part.team)


def _standing(part: Part, state: RunState, bouts: tuple[Bout, ...], bout: Bout, *, there: bool) -> Standing:
    if not there:
        return Standing.GONE if state.stand is Stand.ENDED else Standing.ABSENT
    if bouts and all((each.stage, each.exercise) in state.skipped | part.sits_out for each in bouts):
        return Standing.SITS_OUT
    if not bouts:
        return Standing.RESTS
    over = state.stand is Stand.ENDED or state.bout > bouts[-1].index
    return Standing.DONE if over and bout.index <= bouts[-1].index else Standing.WORKS


def _done(state: RunState, bout: Bout, target: int, standing: Standing) -> int:
    if standing is Standing.DONE:
        return target
    if state.bout != bout.index or standing is not Standing.WORKS:
        return 0
    return state.passed // 2 if bout.alternating else state.passed


def _differ(session: GroupSession, slot: int) -> bool:
    return session.form is not Form.STATIONS and session.sides_differ(slot)


def _second_side(session: GroupSession, slot: int) -> bool:
    """Whether a slot is the second of two that one set of a one-sided exercise has."""
    bouts = session.leader.bouts
    before = slot - (2 if session.form is Form.WAVES else 1)
    if before < 0 or session.form is Form.STATIONS:
        return False
    here, other = bouts[slot], bouts[before]
    same = (here.stage, here.exercise, here.set_number) == (other.stage, other.exercise, other.set_number)
    return same and here.side is not other.side


@dataclass(frozen=True, slots=True)
class _Stations:
    """The stations of a room at a moment."""

    session: GroupSession
    state: RoomState
    names: tuple[str, ...]
    now_ms: int

    def scenes(self) -> tuple[StationScene, ...]:
        """Each station in order, with who is there."""
        return tuple(self._scene(number) for number in range(len(self.session.stations)))

    def resting(self) -> tuple[StationScene, ...]:
        """The teams that have no station in this slot."""
        return tuple(
            StationScene("", "", self._names(self._there(team)), None, self._following(team))
            for team, station in enumerate(self._row)
            if station is None
        )

    @property
    def _row(self) -> tuple[int | None, ...]:
        return self.session.places[self.state.leader.bout] if self.session.places else ()

    def _scene(self, number: int) -> StationScene:
        stage, exercise = self.session.stations[number]
        title = self.session.leader.plan.stages[stage].exercises[exercise].name
        if number not in self._row:
            return StationScene(LETTERS[number], title, (), None, None)
        team = self._row.index(number)
        there = self._there(team)
        shown = next((self._snapshot(member) for member in there if self._in_slot(member)), None)
        done = bool(there) and shown is None
        return StationScene(LETTERS[number], title, self._names(there), shown, self._following(team), done)

    def _there(self, team: int) -> tuple[int, ...]:
        return tuple(
            member
            for member, part in enumerate(self.session.parts)
            if part.team == team
            and self.state.present[member]
            and self.state.members[member].stand is not Stand.ENDED
        )

    def _names(self, members: tuple[int, ...]) -> tuple[str, ...]:
        return tuple(self.names[member] for member in members)

    def _following(self, team: int) -> str | None:
        """Letter of the station where a team goes next; None when it rests, or when nothing follows."""
        slot = self.state.leader.bout + 1
        station = self.session.places[slot][team] if slot < len(self.session.places) else None
        return None if station is None else LETTERS[station]

    def _snapshot(self, member: int) -> Snapshot:
        return snapshot(self.session.parts[member].timeline, self.state.members[member], self.now_ms)

    def _in_slot(self, member: int) -> bool:
        part, state = self.session.parts[member], self.state.members[member]
        return part.slots[state.bout] == self.state.leader.bout
