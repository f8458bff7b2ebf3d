"""The catalogue of tests is sound, and of a day's tries what counts is what the test says."""

from datetime import UTC, datetime, timedelta

import pytest

from app.analysis.tests_catalog import CATALOGUE, field_test, kept_under, keys_of, tried_tests
from app.analysis.tests_kinds import Counts, FieldTest, More
from app.analysis.tests_values import DayValue, Try, counting, day_tries, day_values
from app.domain.keeping import Result
from app.domain.plan import Side
from tests.reviewed import MONDAY, result

HOP = CATALOGUE[0]


@pytest.mark.parametrize("test", CATALOGUE, ids=lambda test: test.key)
def test_every_test_can_be_entered_and_found(test: FieldTest) -> None:
    assert field_test(test.key) is test
    assert test.name
    assert test.unit
    assert test.tries >= (5 if test.counts is Counts.MEAN_OF_BEST_FIVE else 1)
    assert test.least < test.most
    assert test.counts is not Counts.BEST or test.more_is_better is not None


def test_keys_and_names_are_of_one_test_each() -> None:
    assert len({test.key for test in CATALOGUE}) == len(CATALOGUE)
    assert len({test.name for test in CATALOGUE}) == len(CATALOGUE)
    assert field_test("no such test") is None


@pytest.mark.parametrize(
    ("counts", "more", "expected"),
    [
        (Counts.BEST, More.BETTER, 9.0),
        (Counts.BEST, More.WORSE, 1.0),
        (Counts.BEST, More.NEITHER, 2.0),
        (Counts.MEAN, More.BETTER, 25 / 6),
        (Counts.LAST, More.BETTER, 2.0),
        (Counts.MEAN_OF_BEST_FIVE, More.BETTER, 4.8),
    ],
)
def test_what_counts_of_several_tries(counts: Counts, more: More, expected: float) -> None:
    assert counting([4, 9, 1, 6, 3, 2], counts, more) == pytest.approx(expected)


def test_the_best_five_need_five_tries() -> None:
    assert counting([1, 2, 3, 4], Counts.MEAN_OF_BEST_FIVE, More.BETTER) is None
    assert counting([], Counts.BEST, More.BETTER) is None


def test_a_day_s_tries_are_one_value_by_side() -> None:
    later = MONDAY + timedelta(days=7)
    results = [
        result(120, attempt=1),
        result(131, attempt=2),
        result(150, side=Side.RIGHT),
        result(140, day=later),
        result(999, unit="in"),
        result(999, test="triple_hop"),
    ]
    assert day_values(results, HOP, Side.LEFT) == (DayValue(MONDAY, 131, 2), DayValue(later, 140, 1))
    assert day_values(results, HOP, Side.RIGHT) == (DayValue(MONDAY, 150, 1),)
    assert day_values(results, HOP, Side.BOTH) == ()


def of_parts(test: FieldTest, *tries: tuple[float, ...], side: Side = Side.BOTH) -> list[Result]:
    """Tries at a test given by their parts, on one day."""
    return [
        result(value, test=part.key, unit=part.unit, side=side, attempt=attempt)
        for attempt, values in enumerate(tries, 1)
        for part, value in zip(test.parts, values, strict=True)
    ]


def of_key(key: str) -> FieldTest:
    found = field_test(key)
    assert found is not None
    return found


@pytest.mark.parametrize("test", [each for each in CATALOGUE if each.parts], ids=lambda test: test.key)
def test_what_is_made_of_parts_has_a_value_within_its_bounds_and_distinct_keys(test: FieldTest) -> None:
    found = test.value_of([part.most if part.whole else 500.0 for part in test.parts])
    assert found is None or test.least <= found <= max(test.most, 60)
    assert len(set(keys_of(test))) == 1 + len(test.parts)
    with pytest.raises(ValueError, match="is made of"):
        test.value_of([1.0] * (len(test.parts) + 1))


def test_contact_and_flight_give_both_indices_from_one_entry() -> None:
    # 200 ms and 500 ms: 2.5, and 0.306563 m / 0.2 s = 1.5328 m/s (worked from the formulas).
    by_flight, by_height = of_key("drop_jump_flight"), of_key("drop_jump_height")
    tries = of_parts(by_flight, (200, 500), (250, 500))
    assert [each.value for each in day_values(tries, by_flight, Side.BOTH)] == [pytest.approx(2.5)]
    assert [each.value for each in day_values(tries, by_height, Side.BOTH)] == [
        pytest.approx(1.5328, abs=5e-5)
    ]
    assert [test.key for test in tried_tests(tries)] == ["drop_jump_flight", "drop_jump_height"]


def test_a_try_of_which_a_part_is_missing_has_no_value() -> None:
    test = of_key("drop_jump_flight")
    assert day_values(of_parts(test, (200, 500))[:1], test, Side.BOTH) == ()


@pytest.mark.parametrize("hour", [11, 12, 13])
def test_a_value_given_by_itself_goes_before_the_parts_of_the_same_try(hour: int) -> None:
    test = of_key("drop_jump_flight")
    at = datetime(MONDAY.year, MONDAY.month, MONDAY.day, hour, tzinfo=UTC)
    by_itself = result(1.5, test=test.key, unit="1", side=Side.BOTH, at=at)
    both = [*of_parts(test, (200, 500), (200, 400)), by_itself]
    (tries,) = day_tries(both, test, Side.BOTH).values()
    assert sorted(each.value or 0 for each in tries) == [1.5, 2.0]


def test_six_stances_add_up_each_at_most_ten() -> None:
    test = of_key("balance_errors")
    tries = of_parts(test, (0, 2, 1, 3, 6, 4))
    assert [each.value for each in day_values(tries, test, Side.BOTH)] == [16]
    assert [each.value for each in day_values(of_parts(test, (12, 0, 0, 0, 0, 0)), test, Side.BOTH)] == [10]
    total = [result(21, test="balance_errors", unit="errors", side=Side.BOTH)]
    assert [each.value for each in day_values(total, test, Side.BOTH)] == [21]


def test_jumps_in_the_square_are_a_share_by_side() -> None:
    test = of_key("jumps_in_square")
    tries = of_parts(test, (8, 2), side=Side.LEFT)
    assert [each.value for each in day_values(tries, test, Side.LEFT)] == [80]
    assert day_values(of_parts(test, (0, 0), side=Side.LEFT), test, Side.LEFT) == ()


def test_a_lift_is_a_test_of_its_own() -> None:
    squat, bench = (of_key("one_rep_max").with_lift(lift) for lift in ("Front squat", " bench press "))
    results = [
        result(90, test=squat.key, unit="kg", side=Side.BOTH),
        result(60, test=bench.key, unit="kg", side=Side.BOTH),
        result(100, test="one_rep_max", unit="kg", side=Side.BOTH),
    ]
    assert [test.name for test in tried_tests(results)] == [
        "One-rep maximum, measured",
        "One-rep maximum, measured: bench press",
        "One-rep maximum, measured: Front squat",
    ]
    assert field_test(squat.key) == squat
    assert [each.value for each in day_values(results, bench, Side.BOTH)] == [60]
    assert field_test("single_hop:Front squat") is None
    with pytest.raises(ValueError, match="lift"):
        of_key("one_rep_max").with_lift(" ")


def test_a_lift_is_one_however_many_spaces_stand_around_it() -> None:
    assert [
        test.lift for test in kept_under(["one_rep_max:Squat", "one_rep_max: Squat ", "one_rep_max: "])
    ] == ["Squat"]


def test_a_set_to_the_last_rep_is_estimated_by_three_formulas_up_to_twelve_reps() -> None:
    epley = of_key("one_rep_max_epley:Front squat")
    tries = of_parts(epley, (100, 5), (100, 13))
    names = [test.name for test in tried_tests(tries)]
    assert names == [
        f"One-rep maximum, estimated ({by}): Front squat" for by in ("Epley", "Brzycki", "Lombardi")
    ]
    found = {test.key: day_values(tries, test, Side.BOTH)[0] for test in tried_tests(tries)}
    # Worked from the formulas, which are from memory.
    assert [round(each.value, 3) for each in found.values()] == [116.667, 112.5, 117.462]
    assert {each.tries for each in found.values()} == {1}
    (every,) = day_tries(tries, epley, Side.BOTH).values()
    assert [each.parts for each in every] == [(100, 5), (100, 13)]
    assert every[0].value == pytest.approx(116.667, abs=5e-4)
    assert every[1] == Try(None, (100, 13))
