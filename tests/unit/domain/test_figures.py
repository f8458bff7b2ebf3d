"""The figures derived from a plan."""

from decimal import Decimal

import pytest

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose
from app.domain.figures import Figures, Kilograms, bout_figures, session_figures, set_tut_ms, together, works
from app.domain.plan import Exercise, Side, Sides, StageKind
from tests.planned import compiled, holds, own_pace, signals, staged, sticks, tempo_reps, work_for


def figures(*exercises: Exercise, kind: StageKind = StageKind.OTHER) -> Figures:
    return session_figures(compiled(*exercises, kind=kind)).figures


def test_work_is_counted_and_gaps_belong_to_what_follows() -> None:
    session = session_figures(
        compiled(Exercise("A", work_for(30), sets=2, rest_ms=40_000), Exercise("B", work_for(10)))
    )
    first, second = session.stages[0].exercises
    assert (first.figures.duration_ms, first.figures.work_ms) == (5_000 + 30_000 + 40_000 + 30_000, 60_000)
    assert (second.figures.duration_ms, second.figures.work_ms) == (20_000 + 10_000, 10_000)
    assert session.figures.duration_ms == 135_000


def test_density_is_work_over_all_of_the_time() -> None:
    assert figures(Exercise("A", work_for(15), sets=2, rest_ms=15_000)).density == pytest.approx(30 / 50)


def test_work_without_an_end_leaves_the_lengths_unknown() -> None:
    found = figures(Exercise("A", work_for(15)), Exercise("B", own_pace((4, 6))))
    assert (found.duration_ms, found.work_ms, found.density) == (None, None, None)
    assert (found.timed_ms, found.timed_work_ms) == (5_000 + 15_000 + 20_000, 15_000)
    assert found.reps == Band(5, 7)


@pytest.mark.parametrize(
    ("sides", "total", "left", "right"),
    [
        (Sides.BOTH, 60, 60, 60),
        (Sides.LEFT, 60, 60, 0),
        (Sides.RIGHT, 60, 0, 60),
        (Sides.EACH, 120, 60, 60),
        (Sides.ALTERNATE, 120, 60, 60),
    ],
)
def test_tension_and_reps_by_side(sides: Sides, total: int, left: int, right: int) -> None:
    found = figures(Exercise("A", tempo_reps((5, 6), "3-1-1-0"), sides=sides, sets=2))
    seconds = [found.tut_ms, found.tut_left_ms, found.tut_right_ms]
    assert seconds == [total * 1000, left * 1000, right * 1000]
    bands = [found.reps, found.reps_left, found.reps_right]
    assert bands == [Band(10 * value // 60, 12 * value // 60) for value in (total, left, right)]


def test_relaxing_is_no_tension_and_holds_are_led_to_the_upper_bound() -> None:
    found = figures(Exercise("A", holds(4, (20, 30), relax=5), sides=Sides.EACH))
    assert (found.tut_ms, found.tut_left_ms, found.isometric_ms) == (240_000, 120_000, 240_000)


def test_the_pauses_of_a_tempo_are_tension_but_no_isometric_work() -> None:
    found = figures(Exercise("A", tempo_reps(5, "2-2-2-2")))
    assert (found.tut_ms, found.isometric_ms) == (40_000, 0)


@pytest.mark.parametrize("dose", [sticks(5, 3), signals(5, 4), own_pace(5), work_for(30)])
def test_tension_is_not_defined_without_a_tempo_or_a_hold(dose: Dose) -> None:
    found = figures(Exercise("A", dose))
    assert (found.tut_ms, found.tut_left_ms, found.tut_right_ms) == (None, None, None)
    assert set_tut_ms(Exercise("A", dose), 1_000) is None


def test_tension_of_a_session_is_that_of_the_work_that_has_one() -> None:
    assert figures(Exercise("A", signals(5, 4)), Exercise("B", holds(2, 10))).tut_ms == 20_000


def test_an_x_makes_tension_nominal_at_the_length_the_plan_gives_it() -> None:
    explosive = session_figures(compiled(Exercise("A", tempo_reps(6, "4-0-X-0")), fast_ms=500)).figures
    assert (explosive.tut_ms, explosive.nominal) == (27_000, True)
    assert figures(Exercise("A", tempo_reps(6, "4-0-1-0"))).nominal is False


def test_contacts_are_counted_by_rep() -> None:
    assert figures(Exercise("A", sticks((3, 5), 3), sets=2), kind=StageKind.REACTIVE).contacts == Band(6, 10)
    assert figures(Exercise("A", signals(5, 3), contacts=2)).contacts == Band(10, 10)
    assert figures(Exercise("A", signals(5, 3))).contacts == Band(0, 0)
    alternating = Exercise("A", signals(5, 3), sides=Sides.ALTERNATE)
    assert figures(alternating, kind=StageKind.POWER).contacts == Band(10, 10)


def test_contacts_of_timed_work_are_unknown_unless_the_plan_states_them() -> None:
    counted = Exercise("A", signals(5, 3))
    assert figures(counted, Exercise("B", work_for(30)), kind=StageKind.POWER).contacts is None
    stated = Exercise("B", work_for(30), contacts=40)
    assert figures(counted, stated, kind=StageKind.POWER).contacts == Band(45, 45)
    assert figures(Exercise("B", work_for(30))).contacts == Band(0, 0)


def test_volume_load_is_load_times_reps() -> None:
    press = Exercise("A", tempo_reps((8, 10), "3-0-1-0"), sides=Sides.EACH, sets=2, load_kg=Decimal("2.5"))
    # 2.5 kg x 8 to 10 reps x 2 sets x 2 sides.
    assert figures(press).volume_load_kg == Kilograms(Decimal(80), Decimal(100))


def test_volume_load_with_a_load_for_each_side() -> None:
    loads = {("A", Side.LEFT): Decimal(3), ("A", Side.RIGHT): Decimal(4)}
    alternating = Exercise("A", signals((4, 5), 3), sides=Sides.ALTERNATE)
    timeline = compiled(alternating, athlete=Athlete("Ada", loads_kg=loads))
    assert session_figures(timeline).figures.volume_load_kg == Kilograms(Decimal(28), Decimal(35))
    half = compiled(alternating, athlete=Athlete("Ada", loads_kg={("A", Side.LEFT): Decimal(3)}))
    assert session_figures(half).figures.volume_load_kg is None


def test_volume_load_is_unknown_where_a_load_is_and_what_is_known_is_kept() -> None:
    found = figures(Exercise("A", signals((3, 5), 3), load_kg=Decimal(2)), Exercise("B", signals(5, 3)))
    assert (found.volume_load_kg, found.load_complete) == (None, False)
    assert found.known_load_kg == Kilograms(Decimal(6), Decimal(10))
    nothing = figures(Exercise("B", signals(5, 3)))
    assert (nothing.volume_load_kg, nothing.known_load_kg) == (None, None)


def test_timed_work_has_no_volume_load() -> None:
    assert figures(Exercise("A", work_for(30), load_kg=Decimal(2))).volume_load_kg is None


def test_stages_and_exercises_add_up_to_the_session() -> None:
    plan = staged(
        (StageKind.ACTIVATION, (Exercise("A", holds(3, 4)), Exercise("B", tempo_reps(5, "2-0-2-0")))),
        (
            StageKind.POWER,
            (Exercise("C", signals(6, 5), superset="S"), Exercise("D", own_pace(4), superset="S")),
        ),
    )
    session = session_figures(compile_timeline(plan))
    assert [stage.name for stage in session.stages] == ["1 activation", "2 power"]
    assert [[part.name for part in stage.exercises] for stage in session.stages] == [["A", "B"], ["C", "D"]]
    for stage in session.stages:
        assert stage.figures == together(part.figures for part in stage.exercises)
    assert session.figures == together(stage.figures for stage in session.stages)
    assert session.figures.timed_ms == compile_timeline(plan).timed_ms


def test_a_bout_has_figures_of_its_own() -> None:
    timeline = compiled(Exercise("A", tempo_reps(5, "2-0-2-0"), sides=Sides.EACH))
    right = bout_figures(timeline, timeline.bouts[1])
    assert (right.reps_left, right.reps_right) == (Band(0, 0), Band(5, 5))
    assert (right.tut_left_ms, right.tut_right_ms, right.timed_ms) == (0, 20_000, 8_000 + 20_000)


def test_which_sides_work_in_a_bout() -> None:
    for sides, left, right in (
        (Sides.BOTH, True, True),
        (Sides.LEFT, True, False),
        (Sides.ALTERNATE, True, True),
    ):
        timeline = compiled(Exercise("A", signals(2, 3), sides=sides))
        bout, exercise = timeline.bouts[0], timeline.exercise_of(timeline.bouts[0])
        assert (works(bout, exercise, Side.LEFT), works(bout, exercise, Side.RIGHT)) == (left, right)
