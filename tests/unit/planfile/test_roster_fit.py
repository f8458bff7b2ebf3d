"""What of a roster has no effect on a plan."""

from decimal import Decimal

from app.domain.athlete import Athlete
from app.domain.dose import Band
from app.domain.plan import Exercise, Side
from app.planfile.roster_fit import unmatched, without_effect
from tests.planned import plan_of, tempo_reps, work_for

PLAN = plan_of(Exercise("Row", work_for(30)), Exercise("Split squat", tempo_reps(5, "3010")))
LOADS = {("Split squat", Side.LEFT): Decimal(4), ("Press", Side.BOTH): Decimal(10)}


def having(*names: str, loads: dict[tuple[str, Side], Decimal] | None = None) -> Athlete:
    """An athlete with reps of their own for some exercises."""
    return Athlete("Ines", reps={name: Band(3, 4) for name in names}, loads_kg=loads or {})


def test_what_a_plan_does_not_have_is_found_once_each_in_order() -> None:
    assert unmatched(having("Press", "Hop", "Row", loads=LOADS), PLAN) == ("Press", "Hop")
    assert unmatched(having(), PLAN) == ()


def test_numbers_for_an_exercise_that_is_not_there_are_named_and_a_misspelling_gets_a_suggestion() -> None:
    assert without_effect(having("Splitt squat", "Press"), PLAN) == (
        '"Splitt squat" is not in this plan; what Ines has for it is not used, did you mean "Split squat"?',
        '"Press" is not in this plan; what Ines has for it is not used.',
    )


def test_reps_for_timed_work_are_named() -> None:
    assert without_effect(having("Row", "Split squat"), PLAN) == (
        '"Row" is timed work in this plan; the reps that Ines has for it are not used.',
    )
    row_twice = plan_of(Exercise("Row", work_for(30)), Exercise("Row", tempo_reps(5, "3010")))
    assert without_effect(having("Row"), row_twice) == ()


def test_what_is_sat_out_and_variants_are_looked_at_too() -> None:
    plan = plan_of(Exercise("Row", work_for(30), easier="Row, kneeling"))
    some = Athlete("Ines", sits_out=frozenset({"Rows"}), variants={"Row": "harder", "Hop": "easier"})
    assert without_effect(some, plan) == (
        '"Hop" is not in this plan; what Ines has for it is not used.',
        '"Rows" is not in this plan; what Ines has for it is not used, did you mean "Row"?',
        '"Row" has no harder variant in this plan; Ines does it as it is.',
    )
    assert without_effect(Athlete("Ines", variants={"Row": "easier"}), plan) == ()


def test_loads_for_timed_work_and_numbers_that_are_used_are_not_named() -> None:
    assert without_effect(having("Split squat", loads={("Row", Side.BOTH): Decimal(3)}), PLAN) == ()
