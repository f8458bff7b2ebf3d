"""Tries made twice on one day: what the error of a test is measured by."""

from collections.abc import Iterable, Mapping

from app.analysis.measurement import minimal_detectable_change, typical_error
from app.analysis.tests_catalog import FEWEST_PAIRS, field_test
from app.domain.tried import Tried

Pair = tuple[float, float]


def pairs_by_test(tries: Iterable[Tried]) -> Mapping[str, tuple[Pair, ...]]:
    """By test the first two tries of each day, athlete and side, in the unit of the test, in their order.

    Tries come in the order in which they were made; those in another unit than the test's are left out.
    """
    units: dict[str, str | None] = {}
    firsts: dict[tuple[object, ...], list[float]] = {}
    for tried in tries:
        if tried.test not in units:
            test = field_test(tried.test)
            units[tried.test] = None if test is None else test.unit
        if tried.unit == units[tried.test]:
            of = (tried.test, tried.whose, tried.side, tried.day)
            mine = firsts.setdefault(of, [])
            if len(mine) < 2:
                mine.append(tried.value)
    found: dict[str, list[Pair]] = {}
    for (test_key, *_), values in firsts.items():
        if len(values) > 1:
            found.setdefault(str(test_key), []).append((values[0], values[1]))
    return {key: tuple(pairs) for key, pairs in found.items()}


def detectable_changes(tries: Iterable[Tried]) -> dict[str, float]:
    """Minimal detectable change of each test in its unit, by the pairs of all tries; unknown ones left out.

    Under ten pairs it is unknown, a choice. Source: as in `measurement`.
    """
    errors = {
        key: typical_error([second - first for first, second in pairs])
        for key, pairs in pairs_by_test(tries).items()
        if len(pairs) >= FEWEST_PAIRS
    }
    return {key: minimal_detectable_change(error) for key, error in errors.items() if error is not None}
