"""The body outline: every region once, each where its name says, none over another."""

from itertools import combinations

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainterPath, QPolygonF

from app.domain.plan import Side
from app.views.before.body_parts import HEIGHT, MIDDLE, PARTS, WIDTH, Facing, Part


def test_every_region_has_a_place_of_its_own_name() -> None:
    spots = [part.spot for part in PARTS]
    assert len(set(spots)) == len(spots) == 50


def test_both_sides_have_the_same_regions() -> None:
    places = {
        side: sorted(part.spot.place for part in PARTS if part.spot.side is side)
        for side in (Side.LEFT, Side.RIGHT)
    }
    assert places[Side.LEFT] == places[Side.RIGHT]


@pytest.mark.parametrize("part", PARTS, ids=str)
def test_a_region_lies_on_its_side_of_the_figure_and_within_the_frame(part: Part) -> None:
    assert all(0 <= x <= WIDTH and 0 <= y <= HEIGHT for x, y in part.corners)
    # Who faces you has the left at your right.
    at_right = Side.LEFT if part.facing is Facing.FRONT else Side.RIGHT
    if part.spot.side is None:
        assert part.centre[0] == pytest.approx(MIDDLE)
    elif part.spot.side is at_right:
        assert all(x > MIDDLE for x, _ in part.corners)
    else:
        assert all(x < MIDDLE for x, _ in part.corners)


def shape(part: Part) -> QPainterPath:
    path = QPainterPath()
    path.addPolygon(QPolygonF([QPointF(x, y) for x, y in part.corners]))
    path.closeSubpath()
    return path


def test_no_region_lies_over_another() -> None:
    for facing in Facing:
        there = [(part.spot, shape(part)) for part in PARTS if part.facing is facing]
        over = [(a, b) for (a, one), (b, other) in combinations(there, 2) if one.intersects(other)]
        assert over == []


def test_the_figure_is_as_high_from_the_back_as_from_the_front() -> None:
    for facing in Facing:
        heights = [y for part in PARTS if part.facing is facing for _, y in part.corners]
        assert (min(heights), max(heights)) == (1, 238)
