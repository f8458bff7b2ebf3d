"""The length of a session by arithmetic, against the timeline laid out span by span."""

from hypothesis import given

from app.domain.compiler import compile_timeline
from app.domain.length import bout_ms, session_ms
from app.domain.plan import Exercise, Plan, Sides
from tests.planned import holds, own_pace, plan_of, sticks, tempo_reps, work_for
from tests.strategies import plans


@given(plans())
def test_the_length_is_that_of_the_compiled_timeline(plan: Plan) -> None:
    assert session_ms(plan) == compile_timeline(plan).timed_ms


def test_a_session_by_hand() -> None:
    # 5 lead-in + 8 x 4 work, 8 side change + 32, 60 rest + 32, 8 + 32; 20 changeover + 3 x 7 + 2 x 4 = 29.
    squat = Exercise("Squat", tempo_reps(8, "3010"), sides=Sides.EACH, sets=2)
    hop = Exercise("Hop", sticks(3, (3, 5)))
    assert session_ms(plan_of(squat, hop)) == (5 + 32 + 8 + 32 + 60 + 32 + 8 + 32 + 20 + 29) * 1000


def test_a_gap_shorter_than_the_lead_in_is_the_lead_in() -> None:
    work = Exercise("Carry", work_for(10), sets=2, rest_ms=0)
    assert session_ms(plan_of(work, lead_in_ms=6000)) == (6 + 10 + 6 + 10) * 1000


def test_alternating_reps_count_for_each_side() -> None:
    assert bout_ms(Exercise("Tap", holds(6, 4), sides=Sides.ALTERNATE), 1000) == (12 * 4 + 11 * 2) * 1000


def test_work_at_ones_own_pace_counts_nothing() -> None:
    assert bout_ms(Exercise("Throw", own_pace(6)), 1000) == 0


def test_an_x_phase_has_the_length_of_the_setting() -> None:
    assert bout_ms(Exercise("Jump", tempo_reps(6, "40X0")), 800) == 6 * 4800
