"""Indices of symmetry against values worked from the published formulas, and at their limits."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.symmetry import (
    NO_DIVISION,
    NO_ERROR_KNOWN,
    NO_REFERENCE,
    Standing,
    limb_symmetry_index,
    other_indices,
    side_behind,
    standing,
    symmetric_difference,
    symmetry,
)
from app.domain.plan import Side

# Worked from the formulas: index = involved / uninvolved x 100 (Gokeler et al. 2017, PMC5315711), difference
# = (stronger - weaker) / stronger x 100 (Bishop et al. 2018, from memory). Involved, uninvolved, index,
# difference.
INDICES = [
    (90.0, 100.0, 90.0, 10.0),
    (80.0, 100.0, 80.0, 20.0),
    (100.0, 80.0, 125.0, 20.0),
    (150.0, 180.0, 83.3333, 16.6667),
    (18.2, 20.0, 91.0, 9.0),
]


@pytest.mark.parametrize(("involved", "uninvolved", "index", "difference"), INDICES)
def test_indices_are_those_of_the_formulas(
    involved: float, uninvolved: float, index: float, difference: float
) -> None:
    assert limb_symmetry_index(involved, uninvolved) == pytest.approx(index, abs=5e-5)
    assert symmetric_difference(involved, uninvolved) == pytest.approx(difference, abs=5e-5)
    assert symmetric_difference(uninvolved, involved) == pytest.approx(difference, abs=5e-5)


@pytest.mark.parametrize(("involved", "uninvolved", "index", "difference"), INDICES)
def test_the_reference_side_is_the_one_that_is_named(
    involved: float, uninvolved: float, index: float, difference: float
) -> None:
    left = symmetry(uninvolved, involved, reference=Side.LEFT)
    right = symmetry(involved, uninvolved, reference=Side.RIGHT)
    assert left.index == pytest.approx(index, abs=5e-5)
    assert right.index == pytest.approx(index, abs=5e-5)
    weaker_is_left = involved < uninvolved
    assert right.behind is (Side.LEFT if weaker_is_left else Side.RIGHT)
    assert left.behind is (Side.RIGHT if weaker_is_left else Side.LEFT)


def test_for_times_the_index_is_turned_over() -> None:
    # Timed hop: uninvolved / involved x 100 (Noyes et al. 1991, from memory). 2.0 s against 2.5 s: 80 %.
    assert limb_symmetry_index(2.5, 2.0, more_is_better=False) == pytest.approx(80.0)
    assert symmetry(2.5, 2.0, reference=Side.RIGHT, more_is_better=False).behind is Side.LEFT


def test_what_is_missing_of_a_comparison_is_said_and_nothing_else() -> None:
    # Common practice, no source: nobody's side is taken for the reference, no error for granted.
    assert symmetry(90, 100, reference=Side.RIGHT, mdc=4).reasons == ()
    assert symmetry(90, 100, reference=Side.RIGHT).reasons == (NO_ERROR_KNOWN,)
    assert symmetry(90, 100, mdc=4).reasons == (NO_REFERENCE,)
    assert symmetry(90, 0, reference=Side.RIGHT, mdc=4).reasons == (NO_DIVISION,)


def test_the_side_behind_is_the_lower_unless_less_is_better_and_neither_where_both_are_equal() -> None:
    # By the words: distance and time.
    assert side_behind(90, 100) is Side.LEFT
    assert side_behind(100, 90) is Side.RIGHT
    assert side_behind(90, 100, more_is_better=False) is Side.RIGHT
    assert side_behind(90, 90) is side_behind(90, 90, more_is_better=False) is Side.BOTH


def test_an_index_of_ninety_is_ninety_exactly() -> None:
    # The limit in use is "> 90 %" (PMC5315711): 90.0 is the value at which > and >= part.
    index = limb_symmetry_index(90, 100)
    assert index == 90.0
    assert not index > 90


def test_nothing_is_said_of_a_side_within_the_error_of_the_test() -> None:
    # Minimal detectable change: a difference has to exceed it (Hopkins 2000; secondary: course notes).
    assert standing(3.980779, 3.980779) is Standing.WITHIN_ERROR
    assert standing(3.99, 3.980779) is Standing.BEYOND_ERROR
    assert symmetry(100, 96.5, mdc=3.980779).standing is Standing.WITHIN_ERROR


# Worked from the formulas collected by Bishop et al. 2016 (doi 10.1519/SSC.0000000000000264): with the
# stronger S and the weaker W (S - W) / (S + W), (S - W) / mean, (S - W) / W, all in %; symmetry angle =
# (45 degrees - atan2(uninvolved, involved)) / 90 degrees x 100. Involved, uninvolved, and these four.
@pytest.mark.parametrize(
    ("involved", "uninvolved", "over_sum", "over_mean", "over_weaker", "angle"),
    [
        (90.0, 100.0, 5.2632, 10.5263, 11.1111, -3.3475),
        (80.0, 100.0, 11.1111, 22.2222, 25.0, -7.0447),
        (100.0, 80.0, 11.1111, 22.2222, 25.0, 7.0447),
        (150.0, 180.0, 9.0909, 18.1818, 20.0, -5.7716),
        (18.2, 20.0, 4.7120, 9.4241, 9.8901, -2.9976),
    ],
)
def test_further_indices_in_use(
    involved: float, uninvolved: float, over_sum: float, over_mean: float, over_weaker: float, angle: float
) -> None:
    found = other_indices(involved, uninvolved)
    assert found.over_sum == pytest.approx(over_sum, abs=5e-5)
    assert found.over_mean == pytest.approx(over_mean, abs=6e-5)
    assert found.over_smaller == pytest.approx(over_weaker, abs=5e-5)
    assert found.angle == pytest.approx(angle, abs=6e-5)


SIDES = st.floats(0.5, 500)


@given(SIDES, SIDES)
def test_symmetric_indices_are_the_same_whichever_side_is_which(one: float, other: float) -> None:
    # PMC8488821, table 4: four of twelve indices are. The index with a reference and the angle are not.
    there, back = other_indices(one, other), other_indices(other, one)
    assert (there.over_sum, there.over_mean, there.over_smaller) == (
        back.over_sum,
        back.over_mean,
        back.over_smaller,
    )
    assert symmetric_difference(one, other) == symmetric_difference(other, one)
    assert there.angle is not None
    assert back.angle == pytest.approx(-there.angle, abs=1e-9)
    assert limb_symmetry_index(one, other) == pytest.approx(
        1e4 / (limb_symmetry_index(other, one) or 0), rel=1e-9
    )


@given(SIDES, SIDES)
def test_the_symmetry_angle_is_that_of_a_complex_number(one: float, other: float) -> None:
    # numpy: the argument of one + i other, in degrees.
    argument = float(np.angle(complex(one, other), deg=True))
    assert other_indices(one, other).angle == pytest.approx((45 - argument) / 90 * 100, abs=1e-9)


def test_indices_of_two_noughts_are_undefined() -> None:
    found = other_indices(0, 0)
    assert (found.over_sum, found.over_mean, found.over_smaller, found.angle) == (None, None, None, None)
    assert other_indices(0, 5).over_smaller is None
