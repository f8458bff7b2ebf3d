"""How long the record takes with what happens in a whole room at one moment."""

import statistics
import time
from functools import partial
from pathlib import Path

import pytest

from app import wiring
from app.domain.athlete import Athlete
from app.domain.group_choice import group_session
from app.domain.grouping import Grouping
from app.run.intents import Begin, Tick
from app.run.room_controller import RoomController
from app.run.room_pen import RoomPen

pytestmark = pytest.mark.bench


@pytest.mark.parametrize("people", [12, 40])
def test_reps_of_a_whole_room_at_once(people: int, tmp_path: Path) -> None:
    written = wiring.read_plan(wiring.demo_folder() / "landing_control.toml")
    session = group_session(written.plan, [Athlete(f"A{n}") for n in range(people)], Grouping())
    header = partial(wiring.new_member_header, written=written, invented=True)
    with wiring.open_record(tmp_path / "record.db") as database:
        group = wiring.new_group(session, Grouping())
        pen = RoomPen(RoomController(session), database.journal, group, header)
        took: list[float] = []
        for now_ms in range(0, 400_000, 250):
            before = time.perf_counter()
            told = pen.follow(Tick() if now_ms else Begin(), now_ms)
            if told:
                took.append((time.perf_counter() - before) * 1000)
    opening, *rest = took
    p50, worst = statistics.median(rest), max(rest)
    print(f"\n{people} athletes: opening {opening:.1f} ms; a moment p50 {p50:.1f} ms, worst {worst:.1f} ms")
