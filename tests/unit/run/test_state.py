"""Where a run stands, as one value."""

from dataclasses import replace

import pytest

from app.domain.dose import Band, TempoReps
from app.domain.plan import Plan
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline
from app.run.state import Doing, Stand, ready
from tests.led import one

TIMELINE = one(TempoReps(Band.exactly(2), parse_tempo("2-1-1-0")))


def test_a_run_needs_a_bout() -> None:
    with pytest.raises(ValueError, match="at least one bout"):
        ready(Timeline(Plan("Nothing", ()), ()))


def test_a_clock_behind_the_moment_a_stretch_began_stands_at_its_beginning() -> None:
    state = replace(ready(TIMELINE), stand=Stand.RUNNING, anchor_ms=9_000)
    assert [state.local_ms(now) for now in (8_800, 9_000, 9_200)] == [-5_000, -5_000, -4_800]


def test_work_begins_at_the_very_end_of_the_lead_in() -> None:
    state = replace(ready(TIMELINE), stand=Stand.RUNNING, anchor_ms=0, cursor_ms=-20_000)
    moments = (14_999, 15_000, 19_999, 20_000)
    assert [state.doing(TIMELINE, now) for now in moments] == [
        Doing.GAP,
        Doing.LEAD_IN,
        Doing.LEAD_IN,
        Doing.WORK,
    ]
