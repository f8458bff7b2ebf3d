"""Loads that could be lifted once, estimated, against values worked from remembered formulas and tables."""

from collections.abc import Callable

import pytest

from app.analysis.one_rep_max import (
    brzycki,
    epley,
    estimated_one_rep_max,
    lombardi,
    mayhew,
    oconner,
    percent_of_maximum,
    wathen,
)
from app.analysis.tests_catalog import field_test


# Worked from formulas that are from memory: Epley w(1 + r/30), Brzycki 36w/(37 - r), Lombardi w r^0.10.
@pytest.mark.parametrize(
    ("load", "reps", "by_epley", "by_brzycki", "by_lombardi"),
    [
        (100, 5, 116.667, 112.5, 117.462),
        (100, 8, 126.667, 124.138, 123.114),
        (100, 10, 133.333, 133.333, 125.893),
        (80, 6, 96, 92.903, 95.698),
    ],
)
def test_estimates_of_one_rep(
    load: float, reps: int, by_epley: float, by_brzycki: float, by_lombardi: float
) -> None:
    assert epley(load, reps) == pytest.approx(by_epley, abs=5e-4)
    assert brzycki(load, reps) == pytest.approx(by_brzycki, abs=5e-4)
    assert lombardi(load, reps) == pytest.approx(by_lombardi, abs=5e-4)


# Worked from formulas that are from memory: O'Conner w(1 + .025r), Mayhew 100w/(52.2 + 41.9e^-.055r), Wathen
# 100w/(48.8 + 53.8e^-.075r).
@pytest.mark.parametrize(
    ("load", "reps", "by_oconner", "by_mayhew", "by_wathen"),
    [
        (100, 5, 112.5, 119.011, 116.583),
        (100, 8, 120, 126.286, 127.671),
        (100, 10, 125, 130.934, 134.747),
        (80, 6, 92, 97.178, 96.264),
    ],
)
def test_estimates_by_the_other_formulas_in_use(
    load: float, reps: int, by_oconner: float, by_mayhew: float, by_wathen: float
) -> None:
    assert oconner(load, reps) == pytest.approx(by_oconner, abs=5e-4)
    assert mayhew(load, reps) == pytest.approx(by_mayhew, abs=5e-4)
    assert wathen(load, reps) == pytest.approx(by_wathen, abs=5e-4)


@pytest.mark.parametrize("formula", [epley, brzycki, lombardi, oconner, mayhew, wathen])
def test_one_rep_is_the_maximum_whatever_the_formula_would_make_of_it(
    formula: Callable[[float, int], float],
) -> None:
    # By definition; the formulas by themselves give 103.333, 100, 100, 102.5, 108.864 and 101.304.
    assert formula(100, 1) == 100


def test_the_load_for_so_many_reps_in_percent_of_the_maximum() -> None:
    # Table of the National Strength and Conditioning Association, from memory.
    printed = {1: 100, 2: 95, 3: 93, 4: 90, 5: 87, 6: 85, 7: 83, 8: 80, 9: 77, 10: 75, 11: 70, 12: 67, 15: 65}
    assert {reps: percent_of_maximum(reps) for reps in printed} == printed
    assert percent_of_maximum(13) is None


def test_one_rep_returns_its_load() -> None:
    # By definition; Epley's formula alone would give 103.333.
    found = estimated_one_rep_max(100, 1)
    assert (found.epley, found.brzycki, found.lombardi) == (100, 100, 100)


def test_ten_reps_are_where_two_formulas_meet_and_a_circulating_variant_does_not() -> None:
    # 36/27 = 1 + 10/30 exactly; the linear (33 - n + 1)/33 that circulates under the same name gives 72.7 %.
    assert epley(100, 10) == pytest.approx(brzycki(100, 10), abs=1e-12)
    assert 100 / brzycki(100, 10) == pytest.approx(0.750, abs=5e-4)


def test_percentages_of_epley_as_a_coach_education_article_prints_them() -> None:
    printed = [97, 94, 91, 88, 86, 83, 81, 79, 77, 75, 73, 71]
    assert [round(100 * 100 / epley(100, reps)) for reps in range(2, 13)] == printed[1:]
    assert round(100 / (1 + 1 / 30)) == printed[0], "of the bare formula, where one rep is 100 % here"


@pytest.mark.parametrize("reps", [13, 37, 40])
@pytest.mark.parametrize("formula", [epley, brzycki, lombardi, oconner, mayhew, wathen])
def test_no_formula_is_used_where_it_fails(formula: Callable[[float, int], float], reps: int) -> None:
    # Brzycki's divides by nought at 37 reps and turns negative above; all are for 10 to 12 (from memory).
    with pytest.raises(ValueError, match="1 to 12 reps"):
        formula(100, reps)


def test_twelve_reps_are_the_most_and_no_load_is_none() -> None:
    # Worked from the same formulas: 100 x 1.4, 3600 / 25, 100 x 12^0.1.
    found = estimated_one_rep_max(100, 12)
    assert (found.epley, found.brzycki, found.lombardi) == pytest.approx((140, 144, 128.209), abs=5e-4)
    assert found.reason is None
    assert (epley(0, 5), brzycki(0, 5), lombardi(0, 5)) == (0, 0, 0)


@pytest.mark.parametrize(
    ("key", "estimate"),
    [("one_rep_max_epley", 96), ("one_rep_max_brzycki", 92.903), ("one_rep_max_lombardi", 95.698)],
)
def test_a_set_of_six_at_80_kg_is_worked_out_as_its_formula(key: str, estimate: float) -> None:
    # Worked from the same formulas, as a try is entered.
    test = field_test(key)
    assert test is not None
    assert test.value_of([80, 6]) == pytest.approx(estimate, abs=5e-4)
    assert test.value_of([80, 1]) == 80
    assert test.value_of([80, 13]) is None


@pytest.mark.parametrize(
    ("load", "reps", "tempo_work"), [(100.0, 13, False), (100.0, 5, True), (None, 5, False)]
)
def test_no_estimate_above_twelve_reps_for_tempo_work_or_without_a_load(
    load: float | None, reps: int, *, tempo_work: bool
) -> None:
    # The formulas are for few reps to the last possible one (from memory).
    found = estimated_one_rep_max(load, reps, tempo_work=tempo_work)
    assert (found.epley, found.brzycki, found.lombardi) == (None, None, None)
    assert found.reason
