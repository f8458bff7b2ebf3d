"""Sides are compared without any of them being taken for the better one."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.symmetry import Standing, limb_symmetry_index, symmetric_difference, symmetry
from app.domain.plan import Side

VALUES = st.floats(0.1, 1_000)


def test_without_one_side_nothing_is_compared() -> None:
    found = symmetry(None, 100, reference=Side.LEFT, mdc=5)
    assert (found.left, found.right, found.index, found.difference, found.behind) == (
        None,
        100,
        None,
        None,
        None,
    )
    assert found.standing is Standing.UNKNOWN
    assert found.reasons == ("A value of one side is missing.",)


@pytest.mark.parametrize("reference", [None, Side.BOTH])
def test_without_a_reference_there_is_no_index(reference: Side | None) -> None:
    found = symmetry(80, 100, reference=reference)
    assert found.index is None
    assert found.difference == pytest.approx(20)
    assert "Nobody has said which side is the reference." in found.reasons


def test_a_side_of_nought_is_compared_as_far_as_it_goes() -> None:
    found = symmetry(50, 0, reference=Side.RIGHT)
    assert found.index is None
    assert found.difference == 100
    assert symmetric_difference(0, 0) is None
    assert limb_symmetry_index(0, 100) == 0


def test_equal_sides_are_behind_on_neither() -> None:
    found = symmetry(100, 100, reference=Side.LEFT, mdc=0.0)
    assert (found.behind, found.index, found.difference) == (Side.BOTH, 100, 0)
    assert found.standing is Standing.WITHIN_ERROR


def test_a_negative_value_is_refused() -> None:
    with pytest.raises(ValueError, match="not negative"):
        symmetry(-1, 5, reference=Side.LEFT)


@given(VALUES, VALUES, st.booleans())
def test_turning_the_sides_round_turns_who_is_behind(left: float, right: float, better: bool) -> None:
    one, other = symmetry(left, right, more_is_better=better), symmetry(right, left, more_is_better=better)
    assert one.difference == other.difference
    assert one.behind is not None
    assert one.behind.other is other.behind


@given(VALUES, VALUES)
def test_the_two_references_give_indices_that_multiply_to_all(left: float, right: float) -> None:
    one = symmetry(left, right, reference=Side.LEFT).index
    other = symmetry(left, right, reference=Side.RIGHT).index
    assert one is not None
    assert other is not None
    assert one * other == pytest.approx(10_000)
