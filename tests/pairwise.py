"""Few rows in which each value of a parameter meets each value of every other: pairwise testing."""

from collections.abc import Sequence
from itertools import combinations, product


def pairwise(*parameters: Sequence[object]) -> list[tuple[object, ...]]:
    """Rows that hold every pair of values of two parameters, found greedily; the same each time."""
    places = list(combinations(range(len(parameters)), 2))
    missing = {
        (one, other, left, right)
        for one, other in places
        for left, right in product(range(len(parameters[one])), range(len(parameters[other])))
    }
    rows = []
    while missing:
        row = _row(parameters, missing)
        missing -= {(one, other, row[one], row[other]) for one, other in places}
        rows.append(tuple(parameters[place][value] for place, value in enumerate(row)))
    return rows


def _row(parameters: Sequence[Sequence[object]], missing: set[tuple[int, int, int, int]]) -> list[int]:
    """A row that holds a pair not held yet, and as many others as can be found step by step."""
    one, other, left, right = min(missing)
    row = {one: left, other: right}
    for place in range(len(parameters)):
        if place not in row:
            gains = [_gain(row, place, value, missing) for value in range(len(parameters[place]))]
            row[place] = gains.index(max(gains))
    return [row[place] for place in range(len(parameters))]


def _gain(row: dict[int, int], place: int, value: int, missing: set[tuple[int, int, int, int]]) -> int:
    pairs = (
        (known, place, held, value) if known < place else (place, known, value, held)
        for known, held in row.items()
    )
    return sum(pair in missing for pair in pairs)
