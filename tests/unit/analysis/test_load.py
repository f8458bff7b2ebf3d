"""Session load is a number only where effort and length are both known."""

from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.load import elapsed_minutes, load_of, loads_by_session, session_load
from app.domain.records import RunSummary
from tests.strategies import summaries
from tests.summaries import summary


@pytest.mark.parametrize(("rpe", "minutes"), [(None, 40.0), (5, None), (None, None)])
def test_load_is_unknown_where_effort_or_length_is(rpe: int | None, minutes: float | None) -> None:
    assert session_load(rpe, minutes) is None


def test_an_effort_of_nought_is_a_known_load_of_nought() -> None:
    assert session_load(0, 30.0) == 0.0


def test_minutes_are_those_from_beginning_to_end() -> None:
    assert elapsed_minutes(90_000) == pytest.approx(1.5)
    assert elapsed_minutes(None) is None
    assert load_of(summary(session_rpe=7, elapsed_ms=75 * 60_000)) == pytest.approx(525.0)


@given(st.lists(summaries(), max_size=20, unique_by=lambda run: run.run_id))
def test_sessions_come_in_the_order_of_time_each_once(runs: list[RunSummary]) -> None:
    loads = loads_by_session(runs)
    moments = [load.started.astimezone(UTC) for load in loads]
    assert moments == sorted(moments)
    assert sorted(load.run_id for load in loads) == sorted(run.run_id for run in runs)
    assert all((load.load is None) == (load.rpe is None or load.minutes is None) for load in loads)


def test_a_session_carries_the_local_hour() -> None:
    (load,) = loads_by_session([summary(started_at=datetime(2026, 7, 1, 17, tzinfo=UTC))])
    assert load.started.hour == 19
