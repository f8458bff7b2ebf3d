"""Stations: exercises side by side, teams that work for a window of time and move on to the next."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from app.domain.athlete import Athlete
from app.domain.bout_work import rep_phases, work_of
from app.domain.compiler import first_side
from app.domain.dose import Band, Dose, OwnPaceReps, SignalReps, WorkTime
from app.domain.group import GroupError, GroupSession, Part, Place, checked, own_part, sat_out, teams_of
from app.domain.grouping import (
    DEFAULT_CHANGE_MS,
    DEFAULT_WINDOW_MS,
    LONGEST_CHANGE_MS,
    LONGEST_WINDOW_MS,
    MOST_ROUNDS,
    MOST_STATIONS,
    SHORTEST_CHANGE_MS,
    SHORTEST_WINDOW_MS,
    Form,
)
from app.domain.plan import LONGEST_SESSION_MS, Exercise, Plan, Side, Sides, StageOrder
from app.domain.timeline import Bout, SpanKind, Timeline, WorkSpan, windows_of
from app.domain.units import MS_PER_SECOND

MOST_REPS = 200
BEAT_MS = MS_PER_SECOND
"""The leading clock of a window is cut into seconds, so that after a pause no more than one is repeated."""


@dataclass(frozen=True, slots=True)
class Rotation:
    """How long a team works at a station, how long it takes to move on, and how often all go round. In ms."""

    work_ms: int = DEFAULT_WINDOW_MS
    change_ms: int = DEFAULT_CHANGE_MS
    rounds: int = 1

    def __post_init__(self) -> None:
        if not SHORTEST_WINDOW_MS <= self.work_ms <= LONGEST_WINDOW_MS:
            raise GroupError("The window of work at a station is 10 s to 10 min.")
        if not SHORTEST_CHANGE_MS <= self.change_ms <= LONGEST_CHANGE_MS:
            raise GroupError("The change between stations takes 5 s to 10 min.")
        if not 1 <= self.rounds <= MOST_ROUNDS:
            raise GroupError("A group goes round the stations 1 to 20 times.")


def stations(
    plan: Plan,
    athletes: Sequence[Athlete],
    rotation: Rotation,
    chosen: Sequence[Place] = (),
    teams: int | None = None,
) -> GroupSession:
    """Teams rotating over stations: one slot a window, until each was everywhere, `rotation.rounds` times.

    `chosen` are the exercises of the plan that are stations, all of them when none is named; `teams` is how
    many there are, as many as stations when it is not said, but never more than athletes. In a full round
    of max(stations, teams) windows each team is at each station once; where there are more teams than
    stations the others rest. Raises GroupError for what cannot be done.
    """
    members = checked(athletes)
    where = _stations(plan, chosen)
    count = min(len(where) if teams is None else teams, len(members))
    if count < 1:
        raise GroupError("Stations need at least one team.")
    turns = max(len(where), count)
    slots = turns * rotation.rounds
    lead_in_ms = min(plan.lead_in_ms, rotation.change_ms)
    if slots * (rotation.work_ms + rotation.change_ms) > LONGEST_SESSION_MS:
        raise GroupError("These windows and rounds last more than six hours; take fewer or shorter ones.")
    numbers = teams_of(members, count)
    places = tuple(
        tuple(_station(team + slot, turns, len(where)) for team in range(count)) for slot in range(slots)
    )
    session = GroupSession(
        Form.STATIONS, _leader(plan, where, rotation, slots, lead_in_ms), (), where, places
    )
    parts = tuple(
        _part(session, plan, member, team, rotation) for member, team in zip(members, numbers, strict=True)
    )
    return replace(session, parts=parts)


def _stations(plan: Plan, chosen: Sequence[Place]) -> tuple[Place, ...]:
    every = tuple(
        (stage, exercise) for stage, each in enumerate(plan.stages) for exercise in range(len(each.exercises))
    )
    where = tuple(chosen) or every
    if len(where) > MOST_STATIONS:
        raise GroupError(f"There are at most {MOST_STATIONS} stations, and {len(where)} were named.")
    if len(set(where)) < len(where) or not set(where) <= set(every):
        raise GroupError("Each station is another exercise of the plan.")
    return where


def _station(turn: int, turns: int, count: int) -> int | None:
    place = turn % turns
    return place if place < count else None


def _leader(plan: Plan, where: Sequence[Place], rotation: Rotation, slots: int, lead_in_ms: int) -> Timeline:
    """The clock of the room: in each slot the window, cut into beats, after the time of the change."""
    stage, exercise = where[0]
    beats = rotation.work_ms // BEAT_MS
    window = Exercise("", SignalReps(Band.exactly(beats), BEAT_MS))
    work = _to_the_end(work_of(window, Side.BOTH, 0), rotation.work_ms)
    bouts = tuple(
        Bout(
            index=slot,
            stage=stage,
            exercise=exercise,
            set_number=slot + 1,
            side=Side.BOTH,
            gap_kind=SpanKind.CHANGEOVER if slot else None,
            gap_ms=rotation.change_ms - lead_in_ms if slot else 0,
            lead_in_ms=lead_in_ms,
            work=work,
            windows=windows_of(work),
            low=beats,
            high=beats,
        )
        for slot in range(slots)
    )
    return Timeline(replace(plan, order=StageOrder.LOCKED), bouts)


def _to_the_end(work: tuple[WorkSpan, ...], end_ms: int) -> tuple[WorkSpan, ...]:
    return (*work[:-1], replace(work[-1], end_ms=end_ms))


def _part(session: GroupSession, plan: Plan, member: Athlete, team: int, rotation: Rotation) -> Part:
    turns = len(session.places) // rotation.rounds
    suited, bouts, slots = _Suited(plan, member, rotation), list[Bout](), list[int]()
    for slot, row in enumerate(session.places):
        station = row[team]
        if station is not None:
            window = suited.bouts(session.stations[station], len(bouts), 1 + slot // turns)
            for bout in window:
                bouts.append(bout)
                slots.append(slot)
    fitted = Timeline(suited.fitted(session.stations), tuple(bouts))
    return Part(member, own_part(fitted, member), tuple(slots), sat_out(plan, member), team)


@dataclass(frozen=True, slots=True)
class _Suited:
    """The plan's exercises cut to the window of a rotation for one athlete."""

    plan: Plan
    member: Athlete
    rotation: Rotation

    def fitted(self, where: Sequence[Place]) -> Plan:
        """The plan with the reps that fit, as often as the rounds say, at the stations."""
        stages = tuple(
            replace(
                stage,
                exercises=tuple(
                    self._fitted(exercise) if (number, place) in where else exercise
                    for place, exercise in enumerate(stage.exercises)
                ),
            )
            for number, stage in enumerate(self.plan.stages)
        )
        return replace(self.plan, stages=stages)

    def bouts(self, place: Place, index: int, number: int) -> Iterator[Bout]:
        """The bouts of one window: one, or one a side; `index` is the first one's, `number` its set's."""
        exercise = self._fitted(self.plan.stages[place[0]].exercises[place[1]])
        first = first_side(exercise, self.member)
        one_sided = exercise.sides is Sides.EACH
        lead_in_ms = min(self.plan.lead_in_ms, self.rotation.change_ms)
        gaps = [(SpanKind.CHANGEOVER if index else None, self.rotation.change_ms if index else lead_in_ms)]
        gaps += [(SpanKind.SIDE_CHANGE, self._between_sides_ms)] if one_sided else []
        for more, (kind, before_ms) in enumerate(gaps):
            side = first.other if more else first
            work = work_of(exercise, side, self.plan.fast_ms)
            turns = 2 if exercise.sides is Sides.ALTERNATE else 1
            reps = 1 if isinstance(exercise.dose, WorkTime) else exercise.dose.reps.high * turns
            yield Bout(
                index=index + more,
                stage=place[0],
                exercise=place[1],
                set_number=number,
                side=side,
                gap_kind=kind,
                gap_ms=before_ms - lead_in_ms,
                lead_in_ms=lead_in_ms,
                work=work,
                windows=windows_of(work),
                low=reps,
                high=reps,
                load_kg=self.member.load_kg(exercise.name, side, exercise.load_kg),
                other_load_kg=self.member.load_kg(exercise.name, side.other, exercise.load_kg)
                if turns > 1
                else None,
            )

    @property
    def _between_sides_ms(self) -> int:
        return max(self.plan.side_change_ms, min(self.plan.lead_in_ms, self.rotation.change_ms))

    def _fitted(self, exercise: Exercise) -> Exercise:
        room_ms = self.rotation.work_ms
        if exercise.sides is Sides.EACH:
            room_ms = (room_ms - self._between_sides_ms) // 2
        dose = fitted_dose(exercise, room_ms, self.plan.fast_ms, self._most(exercise))
        return replace(exercise, dose=dose, sets=self.rotation.rounds)

    def _most(self, exercise: Exercise) -> int:
        own = self.member.reps.get(exercise.name)
        return MOST_REPS if own is None else own.high


def fitted_dose(exercise: Exercise, room_ms: int, fast_ms: int, most: int = MOST_REPS) -> Dose:
    """The dose that fills `room_ms`: as many whole reps as fit, at most `most`; timed work for all of it.

    Reps at one's own pace become timed work: nobody counts them in a window. Raises GroupError when not one
    rep fits.
    """
    if isinstance(exercise.dose, WorkTime | OwnPaceReps):
        if room_ms < MS_PER_SECOND:
            raise GroupError(_too_short(exercise))
        return WorkTime(Band.exactly(room_ms))
    phases = rep_phases(exercise.dose, fast_ms)
    whole_ms = sum(phase.length_ms for phase in phases)
    last_ms = sum(phase.length_ms for phase in phases if not phase.between)
    turns = 0 if room_ms < last_ms else 1 + (room_ms - last_ms) // whole_ms
    reps = min(turns // (2 if exercise.sides is Sides.ALTERNATE else 1), most, MOST_REPS)
    if reps < 1:
        raise GroupError(_too_short(exercise))
    return replace(exercise.dose, reps=Band.exactly(reps))


def _too_short(exercise: Exercise) -> str:
    return (
        f'Not one rep of "{exercise.name}" fits into the window of work; make the window longer, or leave '
        "the station out."
    )
