"""A rep kept its tempo as far as it was led in time and not marked; where nobody knows, nothing is said."""

from dataclasses import replace
from typing import Any

from app.analysis.tempo_kept import TempoCount, tempo_of, tempo_of_dose
from app.domain.dose import DoseKind
from app.domain.plan import Side, StageKind
from app.domain.records import BoutOutcome, BoutPrescribed, BoutRecord, RepRecord
from app.domain.tolerance import Tolerance

REP_MS = 6_000


def prescribed(work_ms: int | None = 3 * REP_MS) -> BoutPrescribed:
    return BoutPrescribed(
        0, "Control", StageKind.ACTIVATION, "External rotation", 1, Side.LEFT, 3, 3, work_ms, 0, None
    )


def rep(number: int, **changes: Any) -> RepRecord:  # noqa: ANN401 - whatever a rep holds
    start = (number - 1) * REP_MS
    values: dict[str, Any] = {
        "rep": number,
        "side": Side.LEFT,
        "start_ms": start,
        "end_ms": start + REP_MS,
        "late_ms": 5,
    }
    return RepRecord(**(values | changes))


def bout(*reps: RepRecord, stated: int | None = None) -> BoutRecord:
    return BoutRecord(0, 1, reps, BoutOutcome.DONE, 0, 3 * REP_MS, reps_stated=stated)


def test_reps_led_in_time_keep_their_tempo() -> None:
    assert tempo_of(prescribed(), bout(rep(1), rep(2), rep(3))) == TempoCount(3, 3)


def test_a_missed_rep_was_led_and_not_kept() -> None:
    missed = rep(2, start_ms=2 * REP_MS, missed=True)
    assert tempo_of(prescribed(), bout(rep(1), missed, rep(3))) == TempoCount(3, 2)


def test_ten_percent_are_allowed_and_no_more() -> None:
    at, beyond = rep(2, end_ms=12_600), rep(3, end_ms=18_601)
    assert tempo_of(prescribed(), bout(rep(1), at, beyond), REP_MS) == TempoCount(3, 2)


def test_a_quarter_of_a_second_is_allowed_for_short_reps() -> None:
    assert Tolerance().of(1_000) == 250
    assert Tolerance().of(2_500) == 250
    assert Tolerance().of(6_000) == 600


def test_a_rep_that_was_led_late_did_not_keep_it() -> None:
    assert tempo_of(prescribed(), bout(rep(1), rep(2, late_ms=601))) == TempoCount(2, 1)
    assert tempo_of(prescribed(), bout(rep(1), rep(2, late_ms=600))) == TempoCount(2, 2)


def test_the_tolerance_is_a_setting() -> None:
    late = bout(rep(1), rep(2, late_ms=601))
    assert tempo_of(prescribed(), late, tolerance=Tolerance(20, 500)) == TempoCount(2, 2)


def test_at_the_own_pace_the_tempo_is_unknown() -> None:
    assert tempo_of(prescribed(work_ms=None), bout(rep(1), rep(2))) == TempoCount(0, 0)


def test_another_number_than_was_counted_leaves_it_unknown() -> None:
    assert tempo_of(prescribed(), bout(rep(1), rep(2), stated=1)) == TempoCount(0, 0)
    assert tempo_of(prescribed(), bout(rep(1), rep(2), stated=2)) == TempoCount(2, 2)


def test_a_fault_of_form_is_none_of_tempo_unless_it_is_named_so() -> None:
    hasty = bout(rep(1), rep(2, faults=("too fast",)), rep(3, faults=("knee inwards",)))
    assert tempo_of(prescribed(), hasty) == TempoCount(3, 3)
    assert tempo_of(prescribed(), hasty, tempo_faults={"too fast"}) == TempoCount(3, 2)


def test_a_rep_corrected_to_done_has_no_times_and_is_not_judged() -> None:
    assert tempo_of(prescribed(), bout(rep(1), rep(2, start_ms=12_000))) == TempoCount(1, 1)


def test_a_bout_without_reps_says_nothing() -> None:
    assert tempo_of(prescribed(), bout()) == TempoCount(0, 0)
    all_missed = bout(rep(1, start_ms=REP_MS, missed=True))
    assert tempo_of(prescribed(), all_missed) == TempoCount(1, 0)


def test_only_a_dose_with_a_tempo_or_a_hold_is_judged() -> None:
    led = bout(rep(1), rep(2))
    for dose, found in (
        (DoseKind.TEMPO, TempoCount(2, 2)),
        (DoseKind.HOLD, TempoCount(2, 2)),
        (DoseKind.STICK, TempoCount(0, 0)),
        (None, TempoCount(0, 0)),
    ):
        assert tempo_of_dose(replace(prescribed(), dose=dose, rep_tut_ms=REP_MS), led) == found
    assert tempo_of_dose(None, led) == TempoCount(0, 0)


def test_a_rep_at_a_tempo_is_held_against_its_plan_and_a_hold_against_the_others() -> None:
    slow = bout(rep(1), rep(2))
    asked = replace(prescribed(), dose=DoseKind.TEMPO, rep_tut_ms=REP_MS // 2)
    assert tempo_of_dose(asked, slow) == TempoCount(2, 0)
    assert tempo_of_dose(replace(asked, dose=DoseKind.HOLD), slow) == TempoCount(2, 2)
