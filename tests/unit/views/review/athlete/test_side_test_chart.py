"""Left against right in a test: raw values, direction, index with its reference, and the test's error."""

from datetime import timedelta

import pytest

from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.views.review.athlete.side_test_chart import side_test_chart, sided_tests
from app.views.review.athlete.view import athlete_view
from tests.reviewed import MONDAY, record, result
from tests.squads import season

NEXT = MONDAY + timedelta(days=1)


def looked(reference: Side | None = None) -> AthleteRecord:
    """18.2 against 20.0: an index of 91.0 % and a difference of 9.0 %, as in the table of indices."""
    tried = (result(18.2), result("20.0", side=Side.RIGHT), result(17, day=NEXT))
    return record(results=tried, reference=reference)


def cells(found: AthleteRecord, place: int = 0, errors: dict[str, float] | None = None) -> tuple[str, ...]:
    (test,) = sided_tests(athlete_view(found).tests)
    return side_test_chart(found, test, errors or {}).data.cells(place)


def test_both_raw_values_stand_there_whatever_else_is_known() -> None:
    assert cells(looked())[1:] == (
        "18.2\u202fcm",
        "20\u202fcm",
        "left by 9.0 %",
        "–",
        "not known",
    )
    assert cells(looked(), 1)[1:] == ("17\u202fcm", "–", "", "–", "")


@pytest.mark.parametrize(
    ("reference", "title", "index"),
    [
        (Side.RIGHT, "Index of the left side, reference right", "91.0\u202f%"),
        (Side.LEFT, "Index of the right side, reference left", "109.9\u202f%"),
    ],
)
def test_the_index_never_stands_without_its_reference(reference: Side, title: str, index: str) -> None:
    found = looked(reference)
    (test,) = sided_tests(athlete_view(found).tests)
    data = side_test_chart(found, test, {}).data
    assert data.titles[4] == f"Index, reference {reference.value}"
    assert data.cells(0)[4] == index
    assert f"reference {reference.value}" in data.spoken[0]
    assert title in data.aside


def test_without_a_reference_there_is_no_index_and_that_is_said() -> None:
    (test,) = sided_tests(athlete_view(looked()).tests)
    data = side_test_chart(looked(), test, {}).data
    assert "no index: nobody chose a reference side" in data.aside
    assert "index" not in data.spoken[0]


@pytest.mark.parametrize(
    ("error", "told"),
    [(1.7, "beyond"), (1.9, "within")],
)
def test_a_difference_is_compared_with_the_error_of_the_test(error: float, told: str) -> None:
    assert cells(looked(), 0, {"single_hop": error})[-1] == told
    (test,) = sided_tests(athlete_view(looked()).tests)
    assert (
        f"{told} the error of the test"
        in side_test_chart(looked(), test, {"single_hop": error}).data.spoken[0]
    )


def test_each_day_says_why_by_its_own_values() -> None:
    found = looked(Side.RIGHT)
    (test,) = sided_tests(athlete_view(found).tests)
    index, difference = side_test_chart(found, test, {}).whys[0]
    assert index.value == pytest.approx(91.0)
    assert difference.value == pytest.approx(9.0)
    assert index.formula.startswith("index of the left side, reference right")
    later, _ = side_test_chart(found, test, {}).whys[1]
    assert later.value is None


def test_tests_are_chosen_beside_the_exercises() -> None:
    view = athlete_view(season())
    assert [each if isinstance(each, str) else each.key for each in view.sided] == [
        "Drop landing",
        "External rotation hold",
        "single_hop",
    ]
    assert view.side(view.sided[-1]).data.aside.startswith("Single hop for distance")
