"""Best, last and change are what they say, and a change within the error is none."""

import pytest

from app.analysis.course import course
from app.analysis.symmetry import Standing


def test_of_several_results_there_are_best_last_and_change() -> None:
    found = course([100, 120, 110], mdc=9)
    assert (found.baseline, found.best, found.last, found.change) == (100, 120, 110, 10)
    assert found.change_share == pytest.approx(10)
    assert found.standing is Standing.BEYOND_ERROR
    assert course([100, 120, 110], mdc=10).standing is Standing.WITHIN_ERROR
    assert course([100, 120, 110]).standing is Standing.UNKNOWN


@pytest.mark.parametrize(("more_is_better", "best"), [(True, 3.0), (False, 1.0), (None, None)])
def test_best_is_what_the_test_says(more_is_better: bool | None, best: float | None) -> None:
    assert course([2, 3, 1], more_is_better=more_is_better).best == best


def test_one_result_has_not_changed_and_none_is_unknown() -> None:
    assert [course(values).n for values in ([], [100], [100, 120])] == [0, 1, 2]
    assert course([100]).change is None
    assert course([100]).reason == "There is one result, so that nothing has changed yet."
    assert course([]).reason == "There is no result."


def test_from_a_baseline_of_nought_there_is_a_change_and_no_share() -> None:
    found = course([0, 5])
    assert (found.change, found.change_share) == (5, None)
