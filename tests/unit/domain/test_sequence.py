"""The order of the sets and the gaps between them."""

from app.domain.plan import Exercise, Plan, Stage, StageKind
from app.domain.sequence import Gap, PlannedSet, planned_sets, superset_groups
from app.domain.timeline import SpanKind
from tests.planned import plan_of, signals


def exercise(name: str, sets: int = 1, superset: str | None = None, rest_ms: int = 45_000) -> Exercise:
    return Exercise(name, signals(3, 2), sets=sets, superset=superset, rest_ms=rest_ms)


def order(plan: Plan) -> list[str]:
    """Each set as name and number, with the gap before it."""
    lines = []
    for planned in planned_sets(plan):
        name = plan.stages[planned.stage].exercises[planned.exercise].name
        gap = "" if planned.gap is None else f" after {planned.gap.kind} {planned.gap.length_ms // 1000}"
        lines.append(f"{name}{planned.number}{gap}")
    return lines


def test_sets_have_rest_between_and_exercises_a_changeover() -> None:
    plan = plan_of(exercise("A", 2), exercise("B"))
    assert order(plan) == ["A1", "A2 after rest 45", "B1 after changeover 20"]


def test_nothing_comes_before_the_first_set() -> None:
    first = next(planned_sets(plan_of(exercise("A"))))
    assert first == PlannedSet(stage=0, exercise=0, number=1, gap=None)


def test_a_changeover_also_stands_between_stages() -> None:
    stages = (
        Stage("One", StageKind.OTHER, (exercise("A"),)),
        Stage("Two", StageKind.OTHER, (exercise("B"),)),
    )
    assert order(Plan("Try-out", stages, changeover_ms=33_000)) == ["A1", "B1 after changeover 33"]


def test_the_sets_of_a_superset_alternate_with_rest_after_the_round() -> None:
    plan = plan_of(exercise("A", 2, "S", 30_000), exercise("B", 2, "S", 50_000), exercise("C"))
    assert order(plan) == [
        "A1",
        "B1 after changeover 20",
        "A2 after rest 50",
        "B2 after changeover 20",
        "C1 after changeover 20",
    ]


def test_an_exercise_whose_sets_are_used_up_drops_out() -> None:
    plan = plan_of(
        exercise("A", 3, "S", 30_000), exercise("B", 1, "S", 50_000), exercise("C", 2, "S", 70_000)
    )
    assert order(plan) == [
        "A1",
        "B1 after changeover 20",
        "C1 after changeover 20",
        "A2 after rest 70",
        "C2 after changeover 20",
        "A3 after rest 70",
    ]


def test_the_last_exercise_left_in_a_superset_rests_as_it_says() -> None:
    plan = plan_of(exercise("A", 1, "S"), exercise("B", 3, "S", 50_000))
    assert order(plan) == [
        "A1",
        "B1 after changeover 20",
        "B2 after rest 50",
        "B3 after rest 50",
    ]


def test_a_letter_groups_neighbours_only() -> None:
    stage = plan_of(
        exercise("A", superset="S"),
        exercise("B", superset="S"),
        exercise("C"),
        exercise("D", superset="S"),
        exercise("E", superset="T"),
        exercise("F", superset="T"),
    ).stages[0]
    assert list(superset_groups(stage)) == [(0, 1), (2,), (3,), (4, 5)]


def test_exercises_without_a_letter_are_alone() -> None:
    stage = plan_of(exercise("A"), exercise("B")).stages[0]
    assert list(superset_groups(stage)) == [(0,), (1,)]


def test_a_letter_does_not_reach_into_the_next_stage() -> None:
    stages = (
        Stage("One", StageKind.OTHER, (exercise("A", 2, "S"),)),
        Stage("Two", StageKind.OTHER, (exercise("B", 2, "S"),)),
    )
    assert order(Plan("Try-out", stages)) == [
        "A1",
        "A2 after rest 45",
        "B1 after changeover 20",
        "B2 after rest 45",
    ]


def test_a_gap_is_its_kind_and_length() -> None:
    second = list(planned_sets(plan_of(exercise("A", 2))))[1]
    assert second.gap == Gap(SpanKind.REST, 45_000)
