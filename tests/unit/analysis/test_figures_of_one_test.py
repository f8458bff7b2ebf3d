"""Tests with more to say than their course: jumps in their square, hops, landings, sets to the last rep."""

from datetime import timedelta

import pytest
from statsmodels.stats.proportion import proportion_confint

from app.analysis.figure import Figure
from app.analysis.figures_of_one_test import figures_about
from app.analysis.figures_tests import figures_of_tests
from app.analysis.figures_trust import MEASURES, trust_figures
from app.analysis.reliability import TOO_FEW_PAIRS, UNKNOWN
from app.analysis.tests_catalog import field_test, tried_tests
from app.domain.keeping import Result
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from tests.full_record import full
from tests.reviewed import MONDAY, record, result


def tried(key: str, *tries: tuple[float, ...], **changes: object) -> list[Result]:
    """Tries of one day at a test that is made of parts."""
    test = field_test(key)
    assert test is not None
    return [
        result(value, part.key, unit=part.unit, attempt=attempt, **changes)
        for attempt, values in enumerate(tries, 1)
        for part, value in zip(test.parts, values, strict=True)
    ]


def figure_of(looked: AthleteRecord, name: str, of: str = "") -> Figure:
    """The one figure of a name and what it is of."""
    (found,) = (each for each in figures_of_tests(looked) if (each.name, each.of) == (name, of))
    return found


def test_jumps_in_the_square_have_the_interval_of_wilson_on_their_last_day() -> None:
    earlier = tried("jumps_in_square", (0, 10))
    jumps = tried("jumps_in_square", (8, 2), (3, 1), day=MONDAY + timedelta(days=2))
    found = figure_of(
        record(results=(*earlier, *jumps)), "Jumps that ended in the square, last day", "side: left"
    )
    assert found.value == pytest.approx(1100 / 14)
    assert found.n == 14
    low, high = proportion_confint(11, 14, method="wilson")
    assert found.low == pytest.approx(100 * low)
    assert found.high == pytest.approx(100 * high)
    assert found.caution == "as if reps were independent, which those of one athlete are not"


def test_a_side_without_jumps_says_so() -> None:
    jumps = tried("jumps_in_square", (8, 2))
    found = figure_of(record(results=tuple(jumps)), "Jumps that ended in the square, last day", "side: right")
    assert (found.value, found.n, found.reason, found.low) == (None, 0, "No jump was counted.", None)


def test_contacts_of_250_ms_and_longer_are_counted_of_ten_rebounds() -> None:
    # Schmidtbleicher 1992 (secondary): fast is under 250 ms; 250 itself is not.
    hops = tried("ten_hops_flight", *((200, 400),) * 7, (249, 400), (250, 400), (300, 400), side=Side.BOTH)
    looked = record(results=tuple(hops))
    found = figure_of(looked, "Ten hops: contacts of 250 ms or longer")
    assert (found.value, found.n) == (2, 10)
    assert dict(found.inputs)["flight over contact, best five"] == pytest.approx(2)
    assert figure_of(looked, "Ten hops, flight over contact: best").value == pytest.approx(2)


def test_nine_rebounds_are_too_few_to_count_slow_ones() -> None:
    hops = tried("ten_hops_flight", *((200, 400),) * 9, side=Side.BOTH)
    found = figure_of(record(results=tuple(hops)), "Ten hops: contacts of 250 ms or longer")
    assert (found.value, found.n, found.reason) == (None, 9, "The test asks for ten rebounds.")


@pytest.mark.parametrize(
    ("errors", "band"),
    [((4, 4, 4), "excellent"), ((4, 4, 5), "good"), ((5, 5, 6), "moderate"), ((6, 6, 7), "poor")],
)
def test_landing_errors_name_the_band_of_their_mean(errors: tuple[int, ...], band: str) -> None:
    # Padua et al. 2009, from memory: to 4, above 4 to 5, above 5 to 6, above 6.
    tries = [
        result(value, "landing_errors", unit="errors", side=Side.BOTH, attempt=number)
        for number, value in enumerate(errors, 1)
    ]
    found = figure_of(record(results=tuple(tries)), "Landing errors, last mean")
    assert found.value == pytest.approx(sum(errors) / 3)
    assert dict(found.inputs)["band"] == band


def test_the_last_set_is_told_by_every_formula_in_use() -> None:
    # 80 kg x 6, worked from the formulas, which are from memory; 85 % of the maximum by the table.
    sets = tried("one_rep_max_epley:Front squat", (100, 5), (80, 6), side=Side.BOTH)
    found = figure_of(record(results=tuple(sets)), "Set to the last rep", "lift: Front squat")
    told = dict(found.inputs)
    assert found.value == 96
    assert [round(float(told[f"{by}, kg"] or 0), 3) for by in ("Brzycki", "Lombardi", "O'Conner")] == [
        92.903,
        95.698,
        92,
    ]
    assert [round(float(told[f"{by}, kg"] or 0), 3) for by in ("Mayhew", "Wathen")] == [97.178, 96.264]
    assert told["load of the maximum by a table, %"] == 85


def test_thirteen_reps_have_no_estimate_and_every_figure_says_why() -> None:
    looked = record(results=tuple(tried("one_rep_max_epley:Front squat", (60, 13), side=Side.BOTH)))
    for name, of in (
        ("Set to the last rep", "lift: Front squat"),
        ("One-rep maximum, estimated (Epley): Front squat: best", ""),
        ("One-rep maximum, estimated (Lombardi): Front squat: last", ""),
    ):
        found = figure_of(looked, name, of)
        assert (found.value, found.reason) == (None, "Above 12 reps the estimate is too far off.")


def test_a_set_of_other_days_is_not_said_to_have_too_many_reps() -> None:
    before = MONDAY - timedelta(days=3)
    sets = tried("one_rep_max_epley:Front squat", (60, 5), side=Side.BOTH, day=before)
    found = figure_of(record(results=tuple(sets)), "One-rep maximum, estimated (Epley): Front squat: best")
    assert (found.value, found.reason) == (None, "There is no result.")


def test_every_figure_of_tests_is_told_with_one_of_them() -> None:
    looked = full()
    figures = figures_of_tests(looked)
    told = [figures_about(figures, test) for test in tried_tests(looked.results)]
    every = {figure.name for figure in figures if figure.reason != TOO_FEW_PAIRS}
    assert every <= {figure.name for own in told for figure in own}


def test_what_a_test_alone_has_is_told_before_its_trust_and_too_few_tries_are_said_once() -> None:
    errors = (result(value, "landing_errors", unit="errors", side=Side.BOTH) for value in (4, 5))
    looked = record(results=tuple(errors))
    (test,) = tried_tests(looked.results)
    names = [
        each.name.removeprefix(f"{test.name}: ") for each in figures_about(figures_of_tests(looked), test)
    ]
    assert names == [
        *("best", "last", "change", "slope", "rank test"),
        *("Landing errors, last mean", "typical error", "smallest worthwhile change"),
    ]


def test_the_measures_of_trust_are_those_that_are_told() -> None:
    (hop, *_) = tried_tests(full().results)
    assert {each.name.rpartition(": ")[2] for each in trust_figures(hop, UNKNOWN)} == MEASURES


def test_a_test_of_a_lift_is_told_apart_from_that_of_another_and_of_none() -> None:
    looked = record(
        results=(
            result(100, "one_rep_max", unit="kg", side=Side.BOTH),
            result(90, "one_rep_max:Front squat", unit="kg", side=Side.BOTH),
            *tried("one_rep_max_epley:Front squat", (80, 6), side=Side.BOTH),
            *tried("one_rep_max_epley:Bench press", (60, 6), side=Side.BOTH),
        )
    )
    figures = figures_of_tests(looked)
    plain, estimated = field_test("one_rep_max"), field_test("one_rep_max_epley:Bench press")
    assert plain is not None
    assert estimated is not None
    assert {each.value for each in figures_about(figures, plain) if each.name.endswith(": best")} == {100}
    sets = [each for each in figures_about(figures, estimated) if each.name == "Set to the last rep"]
    assert [(each.of, each.value) for each in sets] == [("lift: Bench press", 72)]
