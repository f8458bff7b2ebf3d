"""Three numbers of adherence, each with its own denominator and none made of another."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from app.analysis.adherence import wilson
from app.analysis.adherence_parts import (
    SessionsKept,
    kept,
    kept_by_exercise,
    kept_by_side,
    kept_by_stage,
    kept_by_week,
    sessions_by_week,
    sessions_kept,
)
from app.domain.plan import Side
from app.domain.planned import DueState
from app.domain.reviewed import Totals
from tests.reviewed import MONDAY, due, part, session, totals


def test_excused_and_not_due_sessions_are_in_no_denominator() -> None:
    states = [DueState.DONE] * 2 + [DueState.MISSED, DueState.EXCUSED, DueState.NOT_DUE, DueState.NOT_DUE]
    found = sessions_kept(due(MONDAY + timedelta(days=day), state) for day, state in enumerate(states))
    assert found == SessionsKept(done=2, missed=1, excused=1, not_due=2)
    assert found.due == 3
    assert found.share == 2 / 3


def test_with_nothing_due_there_is_neither_share_nor_interval() -> None:
    found = sessions_kept([due(MONDAY, DueState.EXCUSED), due(MONDAY, DueState.NOT_DUE)])
    assert (found.share, found.interval) == (None, None)
    nothing = kept([])
    assert nothing.reps_share is None
    assert nothing.tempo_share is None


def test_a_planned_session_belongs_to_the_week_of_its_day() -> None:
    sunday = MONDAY - timedelta(days=1)
    weeks = sessions_by_week([due(MONDAY, DueState.DONE), due(sunday, DueState.MISSED)])
    assert weeks == {
        MONDAY - timedelta(days=7): SessionsKept(missed=1),
        MONDAY: SessionsKept(done=1),
    }


def test_extra_reps_stand_apart_and_lift_no_share_above_one() -> None:
    found = kept([totals(prescribed=10, met=10, done=14), totals(prescribed=10, met=5, done=5)])
    assert (found.met, found.prescribed, found.extra) == (15, 20, 4)
    assert found.reps_share == 0.75


def test_tempo_is_unknown_where_no_rep_can_be_judged() -> None:
    found = kept([totals(tempo_known=0, tempo_kept=0)])
    assert found.tempo_share is None
    assert found.reps_share == 0.9


def test_imported_runs_and_runs_under_way_are_due_no_reps() -> None:
    runs = [session(), session(totals=None, imported=True), session(ended=False)]
    assert kept_by_week(runs)[MONDAY].prescribed == 100


def test_the_year_s_end_lies_within_one_week() -> None:
    runs = [session(date(2026, 12, 31)), session(date(2027, 1, 3)), session(date(2027, 1, 4))]
    weeks = kept_by_week(runs)
    assert {monday: week.prescribed for monday, week in weeks.items()} == {
        date(2026, 12, 28): 200,
        date(2027, 1, 4): 100,
    }


def test_parts_are_grouped_by_stage_exercise_and_side() -> None:
    parts = (
        part(Side.LEFT, totals=totals(prescribed=10, met=10, done=10)),
        part(Side.RIGHT, totals=totals(prescribed=10, met=6, done=6)),
        part(
            Side.BOTH, stage="Activation", exercise="Band pull", totals=totals(prescribed=20, met=1, done=1)
        ),
    )
    runs = [session(parts=parts), session(parts=parts, ended=False)]
    stages, exercises, sides = kept_by_stage(runs), kept_by_exercise(runs), kept_by_side(runs)
    assert {name: group.reps_share for name, group in stages.items()} == {"Landing": 0.8, "Activation": 0.05}
    assert list(exercises) == ["Drop landing", "Band pull"]
    assert {side: group.reps_share for side, group in sides.items()} == {
        Side.LEFT: 1.0,
        Side.RIGHT: 0.6,
        Side.BOTH: 0.05,
    }


@st.composite
def any_totals(draw: st.DrawFn) -> Totals:
    prescribed = draw(st.integers(0, 200))
    met = draw(st.integers(0, prescribed))
    known = draw(st.integers(0, 200))
    return Totals(
        prescribed,
        met,
        met + draw(st.integers(0, 50)),
        tempo_known=known,
        tempo_kept=draw(st.integers(0, known)),
    )


@given(st.lists(any_totals(), max_size=12))
def test_shares_lie_within_their_intervals(parts: list[Totals]) -> None:
    found = kept(parts)
    for share, interval in (
        (found.reps_share, wilson(found.met, found.prescribed)),
        (found.tempo_share, wilson(found.tempo_kept, found.tempo_known)),
    ):
        assert (share is None) is (interval is None)
        if share is not None and interval is not None:
            assert 0 <= interval.low <= share + 1e-12
            assert share <= interval.high + 1e-12 <= 1 + 2e-12
