"""Columns share the room there is."""

from hypothesis import given
from hypothesis import strategies as st

from app.views.widgets.rows_table import LEAST_WIDTH, shared

wishes = st.lists(st.integers(0, 1500), min_size=1, max_size=5)


def test_the_widest_gives_way_first() -> None:
    assert shared(300, [100, 900]) == [100, 200]
    assert shared(300, [900, 100]) == [200, 100]


def test_what_is_over_goes_out_in_equal_parts() -> None:
    assert shared(400, [100, 200]) == [150, 250]


@given(st.integers(0, 4000), wishes)
def test_columns_fill_the_room_and_no_more_unless_it_is_too_small_for_all(
    room: int, wished: list[int]
) -> None:
    widths = shared(room, wished)
    assert all(width >= LEAST_WIDTH for width in widths)
    assert room - len(wished) < sum(widths) <= max(room, LEAST_WIDTH * len(wished))


def test_no_columns_share_nothing() -> None:
    assert shared(100, []) == []
