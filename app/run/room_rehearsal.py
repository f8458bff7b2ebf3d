"""A rehearsal of a group session: the same room, journal and store as a real one, on a simulated clock."""

from collections.abc import Callable

from app.run.intents import Begin, CountRep, Resume, Stop, Tick
from app.run.rehearsal import OWN_PACE_MS, STEP_MS, SimulatedClock, since_count
from app.run.room_intents import ForAll
from app.run.room_pen import RoomPen
from app.run.state import Doing, Stand


def rehearse_room(
    pen: RoomPen, wait: Callable[[int], None], own_pace_ms: int = OWN_PACE_MS, now_ms: int = 0
) -> int:
    """Lead a whole room, or the rest of one taken up again at `now_ms`; gives the clock time of its end.

    As a rehearsal of one athlete: `wait` is called with each step's ms, reps at one's own pace are counted
    one every `own_pace_ms`, nothing is answered, and a KeyboardInterrupt ends every run and goes on upwards.
    """
    clock = SimulatedClock(now_ms)
    pen.follow(Begin() if pen.room.state.leader.stand is Stand.READY else Resume(), clock.now_ms)
    try:
        while not pen.room.over:
            step = _step(pen, clock.now_ms, own_pace_ms)
            wait(step)
            pen.follow(_next(pen, clock.advance(step), own_pace_ms), clock.now_ms)
    except KeyboardInterrupt:
        pen.follow(Stop(), clock.now_ms)
        raise
    return clock.now_ms


def _step(pen: RoomPen, now_ms: int, own_pace_ms: int) -> int:
    since = _since_count(pen, now_ms)
    return STEP_MS if since is None else min(max(own_pace_ms - since, 1), STEP_MS)


def _next(pen: RoomPen, now_ms: int, own_pace_ms: int) -> ForAll:
    since = _since_count(pen, now_ms)
    return Tick() if since is None or since < own_pace_ms else CountRep()


def _since_count(pen: RoomPen, now_ms: int) -> int | None:
    """Time in ms since a rep at one's own pace was last counted; None while nobody does such reps."""
    leader, timeline = pen.room.state.leader, pen.room.session.leader
    working = leader.stand is Stand.RUNNING and leader.doing(timeline, now_ms) is Doing.WORK
    if not working or not timeline.bouts[leader.bout].open_ended:
        return None
    return since_count(leader, now_ms)
