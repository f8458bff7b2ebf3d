"""Marks on the axes: round numbers that cover what is shown, labels that never touch."""

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.views.charts.scales import label_places, round_ticks, span_ticks, spread_labels


@pytest.mark.parametrize(
    ("top", "expected"),
    [
        (0.0, (0.0, 1.0)),
        (3.0, (0.0, 1.0, 2.0, 3.0)),
        (333.0, (0.0, 200.0, 400.0)),
        (400.0, (0.0, 200.0, 400.0)),
        (1452.0, (0.0, 500.0, 1000.0, 1500.0)),
    ],
)
def test_ticks_are_round(top: float, expected: tuple[float, ...]) -> None:
    assert round_ticks(top) == pytest.approx(expected)


@given(st.floats(0.001, 1e9), st.integers(1, 9))
def test_ticks_cover_the_top_with_no_step_too_many(top: float, wanted: int) -> None:
    ticks = round_ticks(top, wanted)
    assert ticks[0] == 0.0
    assert ticks[-1] >= top * (1 - 1e-9)
    assert ticks[-2] < top
    assert len(ticks) - 1 <= wanted


@given(
    count=st.integers(0, 700),
    first=st.floats(-1, 600),
    stretch=st.floats(1, 700),
    room=st.floats(0, 3000),
    label=st.floats(1, 120),
)
def test_labels_never_touch_and_lie_in_sight(
    count: int, first: float, stretch: float, room: float, label: float
) -> None:
    places = label_places(first, first + stretch, count, room, label)
    assert all(0 <= place < count and first <= place <= first + stretch for place in places)
    each = max(room, 1.0) / stretch
    assert all((later - earlier) * each >= label * (1 - 1e-9) for earlier, later in pairwise(places))


@given(count=st.integers(1, 300), room=st.floats(1, 3000))
def test_the_newest_place_in_sight_is_always_labelled(count: int, room: float) -> None:
    assert label_places(-0.6, count - 0.4, count, room, 30.0)[-1] == count - 1


def test_every_place_is_labelled_where_there_is_room() -> None:
    assert label_places(-0.6, 11.6, 12, 600.0, 20.0) == tuple(range(12))
    assert len(label_places(-0.6, 11.6, 12, 120.0, 20.0)) == math.ceil(12 / 5)


@given(st.floats(-1e4, 1e4), st.floats(0, 1e4))
def test_ticks_of_a_span_enclose_it_in_equal_round_steps(low: float, spread: float) -> None:
    ticks = span_ticks(low, low + spread)
    steps = [after - before for before, after in pairwise(ticks)]
    assert ticks[0] <= low + 1e-6 * max(abs(low), 1)
    assert ticks[-1] >= low + spread - 1e-6 * max(abs(low + spread), 1)
    assert 2 <= len(ticks) <= 6
    assert max(steps) - min(steps) < 1e-6 * max(abs(ticks[-1]), abs(ticks[0]), 1)


def test_one_value_stands_in_the_middle_of_its_ticks() -> None:
    assert span_ticks(5, 5) == (4.5, 5.0, 5.5)


def test_labels_of_uneven_places_are_chosen_from_the_last_backwards_and_never_touch() -> None:
    assert spread_labels((0.0, 0.5, 3.0, 3.2, 9.0), (0.0, 10.0), 100.0, 20.0) == (1, 3, 4)
    assert spread_labels((0.0, 0.5, 3.0), (2.0, 10.0), 100.0, 20.0) == (2,)
    assert spread_labels((), (0.0, 1.0), 100.0, 20.0) == ()
