"""Wilson intervals and weeks against worked and remembered values, libraries and the standard calendar."""

from datetime import UTC, date, datetime

import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import binomtest
from statsmodels.stats.proportion import proportion_confint

from app.analysis.adherence import Z_95, reps_by_week, wilson
from app.analysis.adherence_parts import Kept, SessionsKept, monday_of
from app.analysis.balance import CountShare
from app.domain.tolerance import Tolerance
from tests.summaries import summary

# The first four: Newcombe 1998, Statistics in Medicine 17:857-872, method 3 (from memory, to four places).
# 6/32: an example published with R's prop.test (RPubs 1367507). The others worked from the formula.
WILSON = [
    (81, 263, 0.255289, 0.366210),
    (15, 148, 0.062386, 0.160487),
    (0, 20, 0.0, 0.161125),
    (1, 29, 0.006113, 0.171755),
    (6, 32, 0.08889545, 0.35309155),
    (23, 60, 0.270883, 0.509824),
    (5, 10, 0.236593, 0.763407),
    (8, 10, 0.490162, 0.943318),
    (10, 12, 0.551969, 0.953035),
    (24, 30, 0.626943, 0.904949),
    (22, 27, 0.633013, 0.918193),
    (20, 20, 0.838875, 1.0),
    (27, 27, 0.875445, 1.0),
]


@pytest.mark.parametrize(("k", "n", "low", "high"), WILSON)
def test_wilson_intervals_are_those_worked_out(k: int, n: int, low: float, high: float) -> None:
    interval = wilson(k, n)
    assert interval is not None
    assert interval.low == pytest.approx(low, abs=1e-6)
    assert interval.high == pytest.approx(high, abs=1e-6)


# Shares of the same rows, to four places: arithmetic.
SHARES = [0.3080, 0.1014, 0, 0.0345, 0.1875, 0.3833, 0.5, 0.8, 0.8333, 0.8, 0.8148, 1, 1]


@pytest.mark.parametrize(("row", "share"), list(zip(WILSON, SHARES, strict=True)))
def test_shares_lie_in_their_intervals(row: tuple[int, int, float, float], share: float) -> None:
    k, n, low, high = row
    found = CountShare(k, n)
    assert found.share == pytest.approx(share, abs=5e-5)
    assert found.interval == wilson(k, n)
    assert low <= share <= high


def test_reps_beyond_those_asked_for_stand_apart_and_make_no_week_more_than_whole() -> None:
    # Common practice, no source: 20 asked for and 23 done are 20 of 20 and three more.
    (week,) = reps_by_week([summary(reps_prescribed=20, reps_met=20, reps_done=23)])
    assert (week.share, week.reps_extra) == (1, 3)
    assert week.interval is not None
    assert week.interval.low == pytest.approx(0.838875, abs=1e-6)
    assert week.interval.high == 1


def test_part_of_a_session_counts_by_its_reps() -> None:
    # Common practice, no source: 24 of 30 reps are a share of 0.8, and neither a session done nor one missed.
    (week,) = reps_by_week([summary(reps_prescribed=30, reps_met=24, reps_done=24)])
    assert week.share == pytest.approx(0.8)


def test_excused_sessions_and_those_not_due_are_no_denominator() -> None:
    # Common practice, no source: 10 done and 2 missed are 10 of 12, whatever was excused or is yet to come.
    kept = SessionsKept(done=10, missed=2, excused=3, not_due=5)
    assert kept.due == 12
    assert kept.share == pytest.approx(0.8333, abs=5e-5)
    assert kept.interval is not None
    assert kept.interval.low == pytest.approx(0.551969, abs=1e-6)
    assert kept.interval.high == pytest.approx(0.953035, abs=1e-6)
    none_due = SessionsKept(excused=3, not_due=5)
    assert (none_due.share, none_due.interval) == (None, None)


def test_reps_and_tempo_are_two_figures() -> None:
    # Common practice, no source: 24 of 30 reps, of which 22 of 27 led to a tempo kept it.
    kept = Kept(prescribed=30, met=24, extra=4, tempo_known=27, tempo_kept=22)
    assert (kept.reps_share, kept.tempo_share) == pytest.approx((0.8, 0.8148), abs=5e-5)
    assert Kept() == Kept(prescribed=0, met=0, extra=0, tempo_known=0, tempo_kept=0)
    assert Kept().reps_share is None
    assert Kept().tempo_share is None


@pytest.mark.parametrize(("planned_ms", "allowed_ms"), [(6000, 1200), (2500, 500), (1000, 500)])
def test_a_rep_may_be_off_by_the_larger_of_a_share_and_a_time(planned_ms: int, allowed_ms: int) -> None:
    # No standard was found: a choice that is a setting, here 20 % or 0.5 s; the products are arithmetic.
    assert Tolerance(percent=20, ms=500).of(planned_ms) == allowed_ms


def test_z_is_the_97_5_percent_point_of_the_normal_curve() -> None:
    # Any table of the normal distribution: 1.959964.
    assert pytest.approx(1.959964, abs=5e-7) == Z_95


def test_nothing_prescribed_gives_no_interval() -> None:
    # Common practice, no source: a proportion of nothing is not shown.
    assert wilson(0, 0) is None


@pytest.mark.parametrize("n", [1, 2, 7, 30, 144, 1000, 25_000])
def test_wilson_intervals_are_those_of_scipy(n: int) -> None:
    # The Wilson interval of the exact binomial test in scipy.stats.
    for k in sorted({0, 1, n // 7, n // 2, (9 * n) // 10, n - 1, n}):
        interval = wilson(k, n)
        expected = binomtest(k, n).proportion_ci(0.95, method="wilson")
        assert interval is not None
        assert interval.low == pytest.approx(expected.low, abs=1e-12)
        assert interval.high == pytest.approx(expected.high, abs=1e-12)


@given(st.integers(1, 5_000), st.floats(0, 1))
def test_wilson_intervals_are_those_of_statsmodels(n: int, part: float) -> None:
    # statsmodels: proportion_confint with method "wilson".
    k = round(part * n)
    interval = wilson(k, n)
    low, high = proportion_confint(k, n, alpha=0.05, method="wilson")
    assert interval is not None
    assert interval.low == pytest.approx(low, abs=1e-12)
    assert interval.high == pytest.approx(high, abs=1e-12)


@given(st.dates(date(2020, 1, 1), date(2035, 12, 31)))
def test_the_monday_of_a_week_is_that_of_pandas(day: date) -> None:
    # pandas: the week that ends on a Sunday.
    assert monday_of(day) == pd.Period(day, freq="W-SUN").start_time.date()


@pytest.mark.parametrize(
    ("day", "year", "week"),
    [
        # ISO 8601 puts a week in the year that holds its Thursday; the usual examples (from memory).
        (date(2008, 12, 29), 2009, 1),
        (date(2010, 1, 3), 2009, 53),
        (date(2005, 1, 1), 2004, 53),
        (date(2026, 12, 31), 2026, 53),
        (date(2027, 1, 3), 2026, 53),
        (date(2027, 1, 4), 2027, 1),
    ],
)
def test_days_about_new_year_lie_in_the_week_of_iso_8601(day: date, year: int, week: int) -> None:
    noon = datetime(day.year, day.month, day.day, 12, tzinfo=UTC)
    (found,) = reps_by_week([summary(started_at=noon, zone="UTC")])
    assert (found.year, found.week) == (year, week)


def test_a_season_over_new_year_counts_53_weeks_in_a_long_year() -> None:
    # 2026 begins on a Thursday and so has 53 weeks (ISO 8601).
    first, last = datetime(2026, 12, 21, 12, tzinfo=UTC), datetime(2027, 1, 11, 12, tzinfo=UTC)
    weeks = reps_by_week([summary(started_at=first, zone="UTC"), summary(started_at=last, zone="UTC")])
    assert [(week.year, week.week) for week in weeks] == [(2026, 52), (2026, 53), (2027, 1), (2027, 2)]
