"""What a bout asks for, as it is kept with a run."""

from decimal import Decimal

from app.domain.athlete import Athlete
from app.domain.dose import DoseKind
from app.domain.plan import Exercise, Side, Sides, StageKind
from app.domain.prescription import prescriptions
from app.domain.records import BoutPrescribed
from tests.planned import compiled, holds, own_pace, signals, tempo_reps, work_for


def test_every_bout_is_prescribed_in_full() -> None:
    hop = Exercise("Hop", signals((2, 3), 4), sides=Sides.EACH, load_kg=Decimal("2.5"))
    assert prescriptions(compiled(hop, kind=StageKind.REACTIVE))[1] == BoutPrescribed(
        bout=1,
        stage_name="Stage",
        stage_kind=StageKind.REACTIVE,
        exercise="Hop",
        set_number=1,
        side=Side.RIGHT,
        low=2,
        high=3,
        work_ms=12_000,
        contacts_per_rep=1,
        load_kg="2.5",
        dose=DoseKind.SIGNAL,
    )


def test_the_time_under_tension_of_a_rep_is_that_of_its_phases_on_one_side() -> None:
    # Nominal time under tension is the sum of the tempo's phases: Wilk et al. 2021, Sports Med 51:1629-1650.
    row = Exercise("Row", tempo_reps(6, "3-1-1-0"), sides=Sides.ALTERNATE)
    bridge = Exercise("Bridge", holds(4, 10, relax=3))
    assert [each.rep_tut_ms for each in prescriptions(compiled(row, bridge))] == [5_000, 10_000]
    assert [each.dose for each in prescriptions(compiled(row, bridge))] == [DoseKind.TEMPO, DoseKind.HOLD]


def test_own_pace_work_has_no_length_and_an_unstated_load_is_unknown() -> None:
    (asked,) = prescriptions(compiled(Exercise("Jump", own_pace(5))))
    assert (asked.work_ms, asked.load_kg, asked.contacts_per_rep) == (None, None, 0)


def test_loads_that_differ_within_a_bout_are_no_one_load() -> None:
    loads = {("Press", Side.LEFT): Decimal(3), ("Press", Side.RIGHT): Decimal(4)}
    press = Exercise("Press", signals(2, 4), sides=Sides.ALTERNATE)
    (differing,) = prescriptions(compiled(press, athlete=Athlete("Ada", loads_kg=loads)))
    assert differing.load_kg is None


def test_equal_loads_within_an_alternating_bout_are_one_load() -> None:
    press = Exercise("Press", signals(2, 4), sides=Sides.ALTERNATE, load_kg=Decimal(3))
    (alike,) = prescriptions(compiled(press))
    assert alike.load_kg == "3"
    assert alike.side is Side.BOTH


def test_there_is_one_for_each_bout() -> None:
    asked = prescriptions(compiled(Exercise("Plank", work_for(30), sets=3)))
    assert [part.bout for part in asked] == [0, 1, 2]
    assert [part.set_number for part in asked] == [1, 2, 3]
