"""The cautions: each is said when it should be, not when it should not, and says why."""

import re

import pytest

from app.domain.caution import cautions
from app.domain.caution_value import Caution, CautionRule
from app.domain.compiler import compile_timeline
from app.domain.plan import Exercise, Level, Plan, Sides, StageKind
from app.domain.thresholds import Standing, thresholds_from
from tests.planned import holds, own_pace, plan_of, signals, staged, sticks, tempo_reps, work_for

STOP = ("sharp pain",)
ONE_HOLD = Exercise("Squeeze", holds(3, 4))
HOPS = Exercise("Hop", signals(5, 4), stop_if=STOP)


def asked(plan: Plan, rule: CautionRule, **settings: float) -> list[Caution]:
    """The cautions of one rule."""
    found = cautions(compile_timeline(plan), thresholds_from(settings))
    return [caution for caution in found if caution.rule is rule]


def test_a_plan_in_order_with_little_of_everything_has_none() -> None:
    plan = staged(
        (StageKind.ACTIVATION, (ONE_HOLD,)),
        (StageKind.INTEGRATION, (Exercise("Squat", tempo_reps(8, "3-0-1-0"), sets=2),)),
        (StageKind.STABILITY, (Exercise("Stand", work_for(30), sides=Sides.EACH),)),
        (StageKind.REACTIVE, (Exercise("Hop and hold", sticks(6, 3), stop_if=STOP),)),
        (StageKind.POWER, (Exercise("Jump", own_pace(5), stop_if=STOP),)),
    )
    assert cautions(compile_timeline(plan)) == ()


@pytest.mark.parametrize("early", [StageKind.REACTIVE, StageKind.POWER])
@pytest.mark.parametrize("late", [StageKind.ACTIVATION, StageKind.INTEGRATION, StageKind.STABILITY])
def test_explosive_work_before_its_groundwork_is_questioned(early: StageKind, late: StageKind) -> None:
    (found,) = asked(staged((early, (HOPS,)), (late, (ONE_HOLD,))), CautionRule.STAGE_ORDER)
    assert found.stage == f"1 {early}"
    assert f"'2 {late}' ({late})" in found.what
    assert found.standing is Standing.COMMON_PRACTICE


def test_the_ladder_upwards_and_other_stages_are_not_questioned() -> None:
    upwards = staged(
        (StageKind.STABILITY, (ONE_HOLD,)), (StageKind.REACTIVE, (HOPS,)), (StageKind.POWER, (HOPS,))
    )
    assert asked(upwards, CautionRule.STAGE_ORDER) == []
    assert (
        asked(staged((StageKind.POWER, (HOPS,)), (StageKind.OTHER, (ONE_HOLD,))), CautionRule.STAGE_ORDER)
        == []
    )


@pytest.mark.parametrize(
    ("level", "most", "standing"),
    [
        (Level.BEGINNER, 100, Standing.GUIDELINE),
        (Level.INTERMEDIATE, 120, Standing.GUIDELINE),
        (Level.ADVANCED, 140, Standing.GUIDELINE),
    ],
)
def test_contacts_are_questioned_above_the_guideline_of_the_level(
    level: Level, most: int, standing: Standing
) -> None:
    at_most = plan_of(Exercise("Hop", signals(most, 4)), kind=StageKind.REACTIVE, level=level)
    assert asked(at_most, CautionRule.CONTACTS) == []
    more = plan_of(Exercise("Hop", signals((5, most + 1), 4)), kind=StageKind.REACTIVE, level=level)
    (found,) = asked(more, CautionRule.CONTACTS)
    assert found.what.startswith(f"{most + 1} contacts")
    assert (found.where, found.standing) == ("whole session", standing)


def test_contacts_that_are_unknown_come_on_top() -> None:
    plan = plan_of(Exercise("Hop", signals(101, 4)), Exercise("Skip", work_for(20)), kind=StageKind.REACTIVE)
    (found,) = asked(plan, CautionRule.CONTACTS)
    assert found.what.startswith("at least 101 contacts")


def test_a_session_is_questioned_above_ninety_minutes() -> None:
    at_most = plan_of(Exercise("Row", work_for(595), sets=9, rest_ms=5_000))
    assert compile_timeline(at_most).timed_ms == 90 * 60_000
    assert asked(at_most, CautionRule.SESSION_LENGTH) == []
    longer = plan_of(Exercise("Row", work_for(595), sets=9, rest_ms=5_001))
    (found,) = asked(longer, CautionRule.SESSION_LENGTH)
    assert "1:30:00" in found.what
    assert found.standing is Standing.CHOICE


def test_a_session_with_own_pace_work_takes_at_least_its_timed_part() -> None:
    plan = plan_of(Exercise("Row", work_for(600), sets=9), Exercise("Jump", own_pace(5)))
    (found,) = asked(plan, CautionRule.SESSION_LENGTH)
    assert "at least" in found.what


def test_clearly_fewer_reps_on_one_side_are_questioned() -> None:
    plan = plan_of(
        Exercise("Hop", signals(10, 4), sides=Sides.LEFT), Exercise("Hop", signals(8, 4), sides=Sides.RIGHT)
    )
    (found,) = asked(plan, CautionRule.SIDE_BALANCE)
    assert "10 reps on the left and 8 on the right, fewer on the right" in found.what


def test_a_tenth_fewer_is_not_questioned_and_work_of_both_sides_does_not_count() -> None:
    plan = plan_of(
        Exercise("Hop", signals(10, 4), sides=Sides.LEFT),
        Exercise("Hop", signals(9, 4), sides=Sides.RIGHT),
    )
    assert asked(plan, CautionRule.SIDE_BALANCE) == []
    diluted = plan_of(
        Exercise("Hop", signals(10, 4), sides=Sides.LEFT),
        Exercise("Hop", signals(8, 4), sides=Sides.RIGHT),
        Exercise("Squat", signals(90, 4)),
    )
    assert len(asked(diluted, CautionRule.SIDE_BALANCE)) == 1
    assert asked(plan_of(Exercise("Squat", signals(9, 4))), CautionRule.SIDE_BALANCE) == []
    assert asked(plan_of(Exercise("Hop", signals(9, 4), sides=Sides.EACH)), CautionRule.SIDE_BALANCE) == []


def test_just_over_a_tenth_fewer_is_questioned() -> None:
    plan = plan_of(
        Exercise("Hop", signals(89, 4), sides=Sides.LEFT), Exercise("Hop", signals(100, 4), sides=Sides.RIGHT)
    )
    (found,) = asked(plan, CautionRule.SIDE_BALANCE)
    assert found.what.endswith("fewer on the left")


def test_work_on_one_side_alone_is_questioned() -> None:
    assert (
        len(asked(plan_of(Exercise("Hop", signals(9, 4), sides=Sides.RIGHT)), CautionRule.SIDE_BALANCE)) == 1
    )


@pytest.mark.parametrize(
    ("kind", "stop_if", "count"),
    [
        (StageKind.REACTIVE, (), 1),
        (StageKind.POWER, (), 1),
        (StageKind.POWER, STOP, 0),
        (StageKind.STABILITY, (), 0),
    ],
)
def test_explosive_stages_without_signs_to_stop_at_are_questioned(
    kind: StageKind, stop_if: tuple[str, ...], count: int
) -> None:
    plan = plan_of(Exercise("Hop", signals(5, 4), stop_if=stop_if), kind=kind)
    assert len(asked(plan, CautionRule.STOP_SIGNS)) == count


@pytest.mark.parametrize(
    ("kind", "tempo", "count"),
    [
        (StageKind.POWER, "2-1-1-0", 1),
        (StageKind.REACTIVE, "2-0-1-1", 1),
        (StageKind.POWER, "2-0-X-0", 0),
        (StageKind.OTHER, "2-1-X-0", 1),
        (StageKind.OTHER, "3-0-X-1", 0),
        (StageKind.OTHER, "2-1-1-0", 0),
    ],
)
def test_a_hold_in_explosive_work_is_questioned(kind: StageKind, tempo: str, count: int) -> None:
    found = asked(plan_of(Exercise("Jump", tempo_reps(5, tempo)), kind=kind), CautionRule.EXPLOSIVE_HOLD)
    assert len(found) == count
    assert all(tempo in caution.what for caution in found)


def test_a_hold_is_questioned_for_where_it_stands() -> None:
    between, after = (
        asked(
            plan_of(Exercise("Jump", tempo_reps(5, tempo)), kind=StageKind.POWER), CautionRule.EXPLOSIVE_HOLD
        )[0]
        for tempo in ("2-1-1-0", "2-0-1-1")
    )
    assert "between lowering and rising" in between.reason
    assert "between lowering and rising" not in after.reason


def test_rest_below_five_times_explosive_work_is_questioned() -> None:
    def drill(rest_ms: int) -> Plan:
        return plan_of(Exercise("Skip", work_for(10), sets=2, rest_ms=rest_ms), kind=StageKind.REACTIVE)

    assert asked(drill(50_000), CautionRule.EXPLOSIVE_REST) == []
    (found,) = asked(drill(49_000), CautionRule.EXPLOSIVE_REST)
    assert "10 s of explosive work to 49 s of rest, about 1:4.9, less than 1:5" in found.what
    assert found.standing is Standing.GUIDELINE


def test_the_time_to_the_next_signal_and_a_stuck_landing_are_rest() -> None:
    spaced = plan_of(Exercise("Jump", signals(5, 8), sets=2), kind=StageKind.POWER)
    assert asked(spaced, CautionRule.EXPLOSIVE_REST) == []
    stuck = plan_of(Exercise("Hop", sticks(5, 4), sets=2), kind=StageKind.POWER)
    assert asked(stuck, CautionRule.EXPLOSIVE_REST) == []
    dense = plan_of(Exercise("Jump", signals(20, 1), sets=2), kind=StageKind.POWER)
    (found,) = asked(dense, CautionRule.EXPLOSIVE_REST)
    assert "20 s of explosive work to 60 s of rest" in found.what


def test_signals_are_explosive_in_any_stage() -> None:
    assert len(asked(plan_of(Exercise("Jump", signals(20, 1), sets=2)), CautionRule.EXPLOSIVE_REST)) == 1
    assert asked(plan_of(Exercise("Row", work_for(60), sets=2)), CautionRule.EXPLOSIVE_REST) == []


def test_rest_counts_to_the_next_explosive_work_of_whatever_exercise() -> None:
    plan = plan_of(Exercise("Skip", work_for(10)), Exercise("Jump", own_pace(5)), kind=StageKind.REACTIVE)
    (found,) = asked(plan, CautionRule.EXPLOSIVE_REST)
    assert "10 s of explosive work to 20 s of rest" in found.what


def test_every_phase_of_a_tempo_is_explosive_work() -> None:
    jump = Exercise("Jump squat", tempo_reps(5, "2-0-1-0"), sets=2, rest_ms=30_000)
    (found,) = asked(plan_of(jump, kind=StageKind.POWER), CautionRule.EXPLOSIVE_REST)
    assert "15 s of explosive work to 30 s of rest" in found.what


def test_rest_before_other_work_is_not_questioned() -> None:
    plan = staged((StageKind.REACTIVE, (Exercise("Skip", work_for(10)),)), (StageKind.OTHER, (ONE_HOLD,)))
    assert asked(plan, CautionRule.EXPLOSIVE_REST) == []


def test_both_sides_of_a_set_are_its_work() -> None:
    plan = plan_of(
        Exercise("Skip", work_for(10), sides=Sides.EACH, sets=2, rest_ms=90_000), kind=StageKind.REACTIVE
    )
    (found,) = asked(plan, CautionRule.EXPLOSIVE_REST)
    assert "20 s of explosive work to 98 s of rest" in found.what


def test_the_last_set_and_own_pace_work_have_no_known_rest() -> None:
    assert (
        asked(plan_of(Exercise("Skip", work_for(10)), kind=StageKind.POWER), CautionRule.EXPLOSIVE_REST) == []
    )
    own = plan_of(Exercise("Jump", own_pace(5), sets=3, rest_ms=5_000), kind=StageKind.POWER)
    assert asked(own, CautionRule.EXPLOSIVE_REST) == []


def test_a_set_long_under_tension_is_questioned_by_side() -> None:
    assert asked(plan_of(Exercise("Squat", tempo_reps(30, "3-0-3-0"))), CautionRule.SET_TENSION) == []
    plan = plan_of(Exercise("Squat", tempo_reps(31, "3-0-3-0"), sides=Sides.ALTERNATE))
    (found,) = asked(plan, CautionRule.SET_TENSION)
    assert "186 s under tension on each side, more than 180 s" in found.what


def test_tension_with_an_x_is_called_nominal() -> None:
    (found,) = asked(plan_of(Exercise("Squat", tempo_reps(40, "4-0-X-0"))), CautionRule.SET_TENSION)
    assert "nominally 200 s" in found.what


def test_a_long_isometric_total_is_questioned_over_all_sets() -> None:
    assert asked(plan_of(Exercise("Wall sit", holds(4, 45))), CautionRule.ISOMETRIC_TOTAL) == []
    for plan in (
        plan_of(Exercise("Wall sit", holds(5, 45))),
        plan_of(Exercise("Wall sit", holds(1, 45), sets=5)),
    ):
        (found,) = asked(plan, CautionRule.ISOMETRIC_TOTAL)
        assert "225 s of holds" in found.what
    assert len(asked(plan_of(Exercise("Wall sit", holds(1, 180.5))), CautionRule.ISOMETRIC_TOTAL)) == 1
    assert asked(plan_of(Exercise("Squat", tempo_reps(60, "1-3-1-0"))), CautionRule.ISOMETRIC_TOTAL) == []


def test_less_rest_than_work_after_long_holds_is_questioned() -> None:
    def wall_sit(seconds: float, rest_ms: int, sides: Sides = Sides.BOTH) -> Plan:
        return plan_of(Exercise("Wall sit", holds(1, seconds), sets=2, rest_ms=rest_ms, sides=sides))

    assert asked(wall_sit(40, 40_000), CautionRule.HOLD_REST) == []
    (found,) = asked(wall_sit(40, 39_000), CautionRule.HOLD_REST)
    assert "39 s of rest after 40 s of work with holds over 30 s" in found.what
    assert asked(wall_sit(30, 5_000), CautionRule.HOLD_REST) == []
    assert asked(wall_sit(40, 20_000, Sides.EACH), CautionRule.HOLD_REST) == []


def test_rest_after_a_hold_counts_to_the_next_of_its_side_through_other_work() -> None:
    plan = plan_of(
        Exercise("Wall sit", holds(1, 60), sets=2, superset="S"),
        Exercise("Squeeze", holds(1, 3), sets=2, superset="S", rest_ms=10_000),
    )
    (found,) = asked(plan, CautionRule.HOLD_REST)
    assert "33 s of rest after 60 s of work" in found.what


def test_the_rest_after_a_hold_is_told_once_an_exercise() -> None:
    plan = plan_of(Exercise("Wall sit", holds(1, 40), sets=5, rest_ms=20_000))
    assert len(asked(plan, CautionRule.HOLD_REST)) == 1


def test_rest_of_unknown_length_is_not_questioned() -> None:
    plan = plan_of(
        Exercise("Wall sit", holds(1, 60), sets=2, superset="S"), Exercise("Jump", own_pace(5), superset="S")
    )
    assert asked(plan, CautionRule.HOLD_REST) == []


def test_power_work_on_a_tired_target_is_questioned() -> None:
    def climb(reps: int, target: str = "Calves ", kind: StageKind = StageKind.POWER) -> Plan:
        raises = Exercise("Raise", tempo_reps(reps, "2-0-2-0"), sides=Sides.EACH, sets=2, target="calves")
        return staged(
            (StageKind.STABILITY, (raises,)), (kind, (Exercise("Hop", own_pace(5), target=target),))
        )

    assert asked(climb(25), CautionRule.TIRED_TARGET) == []
    (found,) = asked(climb(26), CautionRule.TIRED_TARGET)
    assert found.exercise == "Hop"
    assert "after 208 s of it under tension, more than 200 s" in found.what
    assert asked(climb(26, target="hamstrings"), CautionRule.TIRED_TARGET) == []
    assert asked(climb(26, kind=StageKind.REACTIVE), CautionRule.TIRED_TARGET) == []


def test_power_work_is_not_tired_by_its_own_sets() -> None:
    power = Exercise("Jump squat", tempo_reps(40, "2-0-X-0"), sets=3, target="thighs")
    assert asked(plan_of(power, kind=StageKind.POWER), CautionRule.TIRED_TARGET) == []


@pytest.mark.parametrize(
    ("setting", "rule", "plan"),
    [
        ("contacts_beginner", CautionRule.CONTACTS, plan_of(HOPS, kind=StageKind.REACTIVE)),
        ("session_minutes", CautionRule.SESSION_LENGTH, plan_of(ONE_HOLD)),
        ("isometric_seconds", CautionRule.ISOMETRIC_TOTAL, plan_of(ONE_HOLD)),
        (
            "set_tension_seconds",
            CautionRule.SET_TENSION,
            plan_of(Exercise("Squat", tempo_reps(1, "1-0-1-0"))),
        ),
        ("long_hold_seconds", CautionRule.HOLD_REST, plan_of(Exercise("A", holds(3, 4), sets=2, rest_ms=0))),
    ],
)
def test_every_threshold_can_be_set(setting: str, rule: CautionRule, plan: Plan) -> None:
    assert asked(plan, rule) == []
    (found,) = asked(plan, rule, **{setting: 0})
    assert found.source.startswith("your own setting")


def test_other_thresholds_can_be_set_too() -> None:
    spaced = plan_of(Exercise("Skip", work_for(10), sets=2), kind=StageKind.REACTIVE)
    assert len(asked(spaced, CautionRule.EXPLOSIVE_REST, explosive_rest_ratio=7)) == 1
    lopsided = plan_of(
        Exercise("Hop", signals(10, 4), sides=Sides.LEFT), Exercise("Hop", signals(9, 4), sides=Sides.RIGHT)
    )
    assert len(asked(lopsided, CautionRule.SIDE_BALANCE, side_difference_percent=9.9)) == 1
    raises = Exercise("Raise", tempo_reps(5, "2-0-2-0"), target="calves")
    plan = staged(
        (StageKind.OTHER, (raises,)), (StageKind.POWER, (Exercise("Hop", own_pace(5), target="calves"),))
    )
    assert len(asked(plan, CautionRule.TIRED_TARGET, tension_before_power_seconds=19)) == 1


def everything_questionable() -> Plan:
    """A plan with every caution in it."""
    return staged(
        (StageKind.POWER, (Exercise("Jump", tempo_reps(50, "2-1-X-0"), sets=3, contacts=1),)),
        (
            StageKind.STABILITY,
            (
                Exercise("Wall sit", holds(5, 60), sets=9, rest_ms=5_000, target="thighs", sides=Sides.LEFT),
                Exercise("Row", work_for(600), sets=5),
            ),
        ),
        (StageKind.POWER, (Exercise("Hop", signals(5, 1), target="thighs", sets=2, rest_ms=5_000),)),
    )


def test_every_caution_says_where_what_why_on_what_and_how_weighty() -> None:
    found = cautions(compile_timeline(everything_questionable()))
    assert {caution.rule for caution in found} == set(CautionRule)
    for caution in found:
        assert caution.what
        assert caution.reason
        assert caution.source
        assert caution.standing in Standing
        said = str(caution)
        assert said.startswith(f"{caution.where}: {caution.what}; {caution.reason} ({caution.standing}")
        assert said.endswith(f"{caution.source})")
        assert f"{caution.standing}: {caution.standing}" not in said


def test_no_caution_refuses_diagnoses_or_promises() -> None:
    words = re.compile(
        r"must|forbid|not allowed|injur|diagnos|safe|danger|prevent|wrong|error|guarantee", re.IGNORECASE
    )
    for caution in cautions(compile_timeline(everything_questionable())):
        assert words.search(f"{caution.what} {caution.reason}") is None
