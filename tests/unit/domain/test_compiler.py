"""The compiler, rule by rule."""

from decimal import Decimal

import pytest

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline, first_side, suit
from app.domain.dose import Band, OwnPaceReps, rep_band
from app.domain.errors import SessionTooLongError
from app.domain.plan import Exercise, First, Side, Sides
from app.domain.timeline import SpanKind
from tests.planned import compiled, holds, own_pace, plan_of, signals, tempo_reps, work_for

SQUAT = Exercise("Squat", tempo_reps(2, "3-0-1-0"), sets=2, rest_ms=45_000)
EACH = Exercise("Hop", signals((2, 3), 4), sides=Sides.EACH)


def test_the_lead_in_is_the_end_of_the_gap() -> None:
    _, second = compiled(SQUAT).bouts
    assert (second.gap_kind, second.gap_ms, second.lead_in_ms) == (SpanKind.REST, 40_000, 5_000)


@pytest.mark.parametrize("rest_ms", [0, 4_999, 5_000])
def test_a_gap_no_longer_than_the_lead_in_becomes_the_lead_in_alone(rest_ms: int) -> None:
    timeline = compiled(Exercise("Squat", tempo_reps(2, "3-0-1-0"), sets=2, rest_ms=rest_ms))
    _, second = timeline.bouts
    assert (second.gap_ms, second.before_ms) == (0, 5_000)
    assert SpanKind.REST not in [span.kind for span in timeline.spans()]


def test_the_first_bout_has_its_lead_in_and_no_gap() -> None:
    first, _ = compiled(SQUAT, lead_in_ms=3_000).bouts
    assert (first.gap_kind, first.gap_ms, first.lead_in_ms) == (None, 0, 3_000)


def test_each_side_is_a_bout_with_a_side_change_between() -> None:
    left, right = compiled(EACH, side_change_ms=12_000).bouts
    assert (left.side, right.side) == (Side.LEFT, Side.RIGHT)
    assert (right.gap_kind, right.before_ms) == (SpanKind.SIDE_CHANGE, 12_000)
    assert (left.set_number, right.set_number) == (1, 1)


def test_rest_comes_after_both_sides_of_a_set() -> None:
    twice = Exercise("Hop", signals(2, 4), sides=Sides.EACH, sets=2, first=First.RIGHT)
    bouts = compiled(twice).bouts
    assert [bout.side for bout in bouts] == [Side.RIGHT, Side.LEFT, Side.RIGHT, Side.LEFT]
    assert [bout.gap_kind for bout in bouts[1:]] == [
        SpanKind.SIDE_CHANGE,
        SpanKind.REST,
        SpanKind.SIDE_CHANGE,
    ]


def test_bouts_count_from_nought_and_know_their_place() -> None:
    bouts = compiled(SQUAT, EACH, SQUAT).bouts
    assert [(bout.index, bout.exercise, bout.set_number) for bout in bouts] == [
        (0, 0, 1),
        (1, 0, 2),
        (2, 1, 1),
        (3, 1, 1),
        (4, 2, 1),
        (5, 2, 2),
    ]


def test_an_alternating_set_is_one_bout_with_the_reps_of_both_sides() -> None:
    timeline = compiled(Exercise("Hop", signals((2, 3), 4), sides=Sides.ALTERNATE, first=First.RIGHT))
    (bout,) = timeline.bouts
    assert (bout.side, bout.low, bout.high, bout.alternating) == (Side.RIGHT, 4, 6, True)
    assert next(timeline.spans()).side is Side.RIGHT


def test_a_bout_on_one_side_or_both_together_does_not_alternate() -> None:
    assert [bout.alternating for bout in compiled(SQUAT, EACH).bouts] == [False] * 4


def test_a_bout_of_one_side_of_each_has_the_reps_of_that_side() -> None:
    assert [(bout.low, bout.high) for bout in compiled(EACH).bouts] == [(2, 3), (2, 3)]


def test_timed_work_counts_as_one_rep() -> None:
    (bout,) = compiled(Exercise("Plank", work_for(30))).bouts
    assert (bout.low, bout.high, bout.work_ms) == (1, 1, 30_000)


def test_an_own_pace_bout_has_no_length() -> None:
    (bout,) = compiled(Exercise("Jump", own_pace((4, 6)))).bouts
    assert (bout.low, bout.high, bout.work_ms, bout.open_ended) == (4, 6, None, True)


@pytest.mark.parametrize(
    ("written", "own", "weaker", "begins"),
    [
        (First.LEFT, None, None, Side.LEFT),
        (First.RIGHT, None, None, Side.RIGHT),
        (First.RIGHT, Side.LEFT, None, Side.LEFT),
        (First.LEFT, Side.RIGHT, None, Side.RIGHT),
        (First.WEAKER, None, None, Side.LEFT),
        (First.WEAKER, None, Side.RIGHT, Side.RIGHT),
        (First.WEAKER, None, Side.LEFT, Side.LEFT),
        (First.WEAKER, Side.LEFT, Side.RIGHT, Side.LEFT),
        (First.RIGHT, None, Side.LEFT, Side.RIGHT),
    ],
)
def test_the_side_that_begins(written: First, own: Side | None, weaker: Side | None, begins: Side) -> None:
    for sides in (Sides.EACH, Sides.ALTERNATE):
        exercise = Exercise("Hop", signals(2, 4), sides=sides, first=written)
        assert first_side(exercise, Athlete("Ada", first=own), weaker) is begins
        plan = plan_of(exercise)
        assert compile_timeline(plan, Athlete("Ada", first=own), weaker).bouts[0].side is begins


@pytest.mark.parametrize("sides", [Sides.BOTH, Sides.LEFT, Sides.RIGHT])
def test_an_athletes_side_changes_nothing_where_the_plan_fixes_it(sides: Sides) -> None:
    exercise = Exercise("Hop", signals(2, 4), sides=sides, first=First.RIGHT)
    assert first_side(exercise, Athlete("Ada", first=Side.RIGHT), Side.RIGHT).value == sides.value


def test_an_athletes_reps_stand_in_for_the_plans_in_the_timeline_and_its_plan() -> None:
    timeline = compiled(SQUAT, EACH, athlete=Athlete("Ada", reps={"Hop": Band(1, 2)}))
    assert [(bout.low, bout.high) for bout in timeline.bouts] == [(2, 2), (2, 2), (1, 2), (1, 2)]
    assert rep_band(timeline.plan.stages[0].exercises[1].dose) == Band(1, 2)


def test_an_athletes_reps_hold_for_own_pace_work_and_leave_timed_work_alone() -> None:
    plan = plan_of(Exercise("Jump", own_pace(8)), Exercise("Plank", work_for(30)))
    jump, plank = (
        suit(plan, Athlete("Ada", reps={"Jump": Band(3, 3), "Plank": Band(9, 9)})).stages[0].exercises
    )
    assert jump.dose == OwnPaceReps(Band(3, 3))
    assert plank.dose == work_for(30)


def test_an_athlete_without_own_reps_has_the_plan_itself() -> None:
    plan = plan_of(SQUAT)
    assert suit(plan, Athlete("Ada")) is plan


def test_reps_that_make_a_session_longer_than_six_hours_are_refused_with_whose_and_which_they_are() -> None:
    # Each set has a lead-in of 5 s, the two changeovers 15 s more: 20 x (800 + 24 + 800) + 60 x 5 + 2 x 15 s.
    squats = [Exercise(name, tempo_reps(20, "3010"), sets=20, rest_ms=5_000) for name in ("A", "B", "C")]
    many, fewer = Band(180, 200), Band(5, 6)
    with pytest.raises(SessionTooLongError) as caught:
        compiled(*squats, athlete=Athlete("Ines", reps={"A": many, "B": fewer, "C": many, "D": many}))
    assert str(caught.value) == (
        'With the reps of Ines for "A", "C" the session lasts 9:06:50, and 6:00:00 is the most. '
        "Give fewer reps in the roster, or split the plan."
    )
    compiled(*squats, athlete=Athlete("Ines", reps={"A": fewer, "B": fewer, "C": many}))


def test_reps_up_to_six_hours_to_the_second_are_taken() -> None:
    # 5 s lead-in and 200 signals 107.975 s apart.
    hop = Exercise("Hop", signals(1, 107.975), rest_ms=0)
    assert compiled(hop, athlete=Athlete("Ines", reps={"Hop": Band(200, 200)})).timed_ms == 21_600_000
    with pytest.raises(SessionTooLongError, match=r"lasts 6:00:00\.001, and 6:00:00"):
        compiled(hop, athlete=Athlete("Ines", reps={"Hop": Band(200, 200)}), lead_in_ms=5_001)


def test_loads_are_the_plans_without_an_athlete() -> None:
    (bout,) = compiled(Exercise("Press", holds(2, 5), load_kg=Decimal("2.5"))).bouts
    assert (bout.load_kg, bout.other_load_kg) == (Decimal("2.5"), None)


def test_loads_are_the_athletes_by_side() -> None:
    athlete = Athlete("Ada", loads_kg={("Press", Side.LEFT): Decimal(3)})
    press = Exercise("Press", holds(2, 5), sides=Sides.EACH, load_kg=Decimal(2))
    assert [bout.load_kg for bout in compiled(press, athlete=athlete).bouts] == [Decimal(3), Decimal(2)]


def test_an_alternating_bout_has_the_load_of_either_side() -> None:
    loads = {("Press", Side.LEFT): Decimal(3), ("Press", Side.RIGHT): Decimal(4)}
    press = Exercise("Press", holds(2, 5), sides=Sides.ALTERNATE, first=First.RIGHT)
    (bout,) = compiled(press, athlete=Athlete("Ada", loads_kg=loads)).bouts
    assert (bout.load_kg, bout.other_load_kg) == (Decimal(4), Decimal(3))


def test_a_load_nobody_stated_is_unknown() -> None:
    (bout,) = compiled(Exercise("Press", holds(2, 5)), athlete=Athlete("Ada")).bouts
    assert bout.load_kg is None
