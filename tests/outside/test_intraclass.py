"""Intraclass correlations against the table of Shrout and Fleiss, numpy and a reference library."""

import numpy as np
import pandas as pd
import pingouin
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from app.analysis.intraclass import intraclass

# Six people rated by four judges: Shrout and Fleiss 1979, Psychol Bull 86:420-428. The data are typed from
# memory; the coefficients are worked from their formulas, to two places they are the paper's, from memory.
JUDGED = [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]]


def test_the_six_coefficients_of_six_people_and_four_judges() -> None:
    found = intraclass(JUDGED)
    assert found.one_way == pytest.approx(0.1657, abs=5e-5)
    assert found.agreement == pytest.approx(0.2898, abs=5e-5)
    assert found.consistency == pytest.approx(0.7148, abs=5e-5)
    assert found.one_way_mean == pytest.approx(0.4428, abs=5e-5)
    assert found.agreement_mean == pytest.approx(0.6201, abs=5e-5)
    assert found.consistency_mean == pytest.approx(0.9093, abs=5e-5)


@given(st.lists(st.tuples(st.floats(0, 500), st.floats(0, 500)), min_size=3, max_size=40))
def test_of_two_tries_the_consistency_is_that_of_covariance_over_the_mean_variance(
    pairs: list[tuple[float, float]],
) -> None:
    """For two columns ICC(3,1) is 2 cov / (var + var), by numpy: an identity of the two-way mean squares."""
    first, second = np.array(pairs).T
    spread = first.var(ddof=1) + second.var(ddof=1)
    assume(spread > 1e-3)
    expected = 2 * np.cov(first, second, ddof=1)[0, 1] / spread
    assert intraclass(pairs).consistency == pytest.approx(expected, abs=1e-6)


@given(st.lists(st.tuples(*[st.floats(0, 100)] * 3), min_size=3, max_size=20))
def test_the_reliability_of_a_mean_follows_from_that_of_one_by_spearman_and_brown(
    rows: list[tuple[float, float, float]],
) -> None:
    """k r / (1 + (k - 1) r): Spearman and Brown 1910, from memory."""
    found = intraclass(rows)
    for one, mean in (
        (found.one_way, found.one_way_mean),
        (found.consistency, found.consistency_mean),
    ):
        if one is not None and mean is not None and abs(1 + 2 * one) > 1e-3:
            assert mean == pytest.approx(3 * one / (1 + 2 * one), rel=1e-6, abs=1e-6)


@pytest.mark.filterwarnings("ignore:The inplace keyword")  # of pandas, about a call of pingouin's
@settings(max_examples=25)
@given(
    st.integers(2, 6).flatmap(
        lambda k: st.lists(st.tuples(*[st.integers(0, 50)] * k), min_size=3, max_size=9)
    )
)
def test_all_six_coefficients_are_those_of_pingouin(rows: list[tuple[int, ...]]) -> None:
    # pingouin.intraclass_corr: the analysis of variance of statsmodels.
    table = np.array(rows, float)
    rests = table - table.mean(axis=0) - table.mean(axis=1)[:, None] + table.mean()
    assume(np.ptp(table.mean(axis=1)) > 0.1)
    assume(np.abs(rests).max() > 0.1)
    long = [(row, column, value) for (row, column), value in np.ndenumerate(table)]
    frame = pd.DataFrame(long, columns=["whose", "try", "value"])
    expected = pingouin.intraclass_corr(frame, targets="whose", raters="try", ratings="value")["ICC"]
    found = intraclass(rows)
    one = found.one_way, found.agreement, found.consistency
    mean = found.one_way_mean, found.agreement_mean, found.consistency_mean
    assert (*one, *mean) == pytest.approx(tuple(expected), rel=1e-6, abs=1e-6)


def test_without_any_spread_there_is_no_correlation() -> None:
    assert intraclass([[5, 5], [5, 5], [5, 5]]).consistency is None


@pytest.mark.parametrize("table", [[], [[1, 2]], [[1], [2]]])
def test_one_row_or_one_column_is_no_table(table: list[list[float]]) -> None:
    with pytest.raises(ValueError, match="two rows and two columns"):
        intraclass(table)
