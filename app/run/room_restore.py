"""Taking a room up again from what was written down of each athlete's run, after the program is gone."""

from collections.abc import Sequence
from dataclasses import replace

from app.domain.group import GroupSession, Place
from app.domain.grouping import Form
from app.domain.records import Fact, PauseReason, RunOutcome
from app.domain.timeline import rep_windows
from app.run.passing import enter
from app.run.restore import restore
from app.run.room import RoomState
from app.run.room_steps import offset_in_slot, within_slot
from app.run.state import RunState, Stand, ready


def restore_room(session: GroupSession, facts: Sequence[Sequence[Fact]], now_ms: int) -> RoomState:
    """The room standing still at the slot it was in, as if interrupted at its last fact.

    `facts` are those of each athlete, in the order of the parts, none for one whose run never began; they
    are not there. The leading clock goes on where the athlete at work who was furthest stands.
    """
    members = tuple(
        restore(part.timeline, theirs, now_ms) if theirs else ready(part.timeline)
        for part, theirs in zip(session.parts, facts, strict=True)
    )
    present = tuple(
        bool(theirs) and state.outcome is not RunOutcome.ABANDONED
        for theirs, state in zip(facts, members, strict=True)
    )
    leader = _leader(session, members, now_ms)
    if leader.stand is Stand.ENDED:
        return RoomState(leader, members, present)
    caught_up = tuple(_caught_up(session, leader, number, state) for number, state in enumerate(members))
    return RoomState(leader, caught_up, present)


def _leader(session: GroupSession, members: Sequence[RunState], now_ms: int) -> RunState:
    going = [number for number, state in enumerate(members) if state.stand is Stand.PAUSED]
    still = replace(ready(session.leader), began_ms=now_ms, seen_ms=now_ms, anchor_ms=now_ms)
    if not going:
        return replace(still, stand=Stand.ENDED, ended_ms=0)
    slot, position_ms = _where(session, members, going)
    bout = session.leader.bouts[slot]
    paused = replace(
        enter(still, bout, now_ms, -bout.lead_in_ms),
        stand=Stand.PAUSED,
        pause=PauseReason.INTERRUPTED,
        skipped=_left_out(session, [members[number] for number in going]),
    )
    if position_ms is None:
        return paused
    windows = rep_windows(bout)
    passed = sum(window.end_ms <= position_ms for window in windows)
    work_from = windows[min(passed, len(windows) - 1)].start_ms if windows else 0
    attempts = paused.with_attempt(slot, paused.attempt)
    return replace(
        paused,
        attempts=attempts,
        begun=True,
        passed=passed,
        work_from_ms=work_from,
        cursor_ms=work_from - bout.lead_in_ms,
    )


def _left_out(session: GroupSession, going: Sequence[RunState]) -> frozenset[Place]:
    """What nobody does any more; stations are left out by nobody for all."""
    if session.form is Form.STATIONS:
        return frozenset()
    return frozenset.intersection(*(state.skipped for state in going))


def _where(
    session: GroupSession, members: Sequence[RunState], going: Sequence[int]
) -> tuple[int, int | None]:
    """The slot of the room, and how far in ms its work had come; None where all wait for it.

    At stations that is as far as who has most to repeat: nobody's window is the shorter for it.
    """

    def slot_of(number: int) -> int:
        return session.parts[number].slots[members[number].bout]

    working = [
        number
        for number in going
        if members[number].begun or within_slot(session.parts[number], members[number].bout)
    ]
    if not working:
        return min(slot_of(number) for number in going), None
    slot = max(slot_of(number) for number in working)
    positions = [
        offset_in_slot(session.parts[number], members[number].bout) + members[number].work_from_ms
        for number in working
        if slot_of(number) == slot
    ]
    return slot, min(positions) if session.form is Form.STATIONS else max(positions)


def _caught_up(session: GroupSession, leader: RunState, number: int, state: RunState) -> RunState:
    """Somebody who had not come to the slot of the room waits for the next one of theirs."""
    part = session.parts[number]
    if state.stand is not Stand.PAUSED or part.slots[state.bout] >= leader.bout:
        return state
    bout = part.first_from(leader.bout)
    if bout is None:
        return state
    meant = part.timeline.bouts[bout]
    return replace(enter(state, meant, state.anchor_ms, -meant.lead_in_ms), stand=Stand.PAUSED)
