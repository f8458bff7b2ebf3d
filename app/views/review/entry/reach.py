"""Reach on one leg in three directions: what comes next, and what they come to once all are there."""

from app.analysis.balance import anterior_reach_apart, reach_composite
from app.analysis.tests_catalog import field_test
from app.analysis.tests_values import day_values
from app.domain.plan import Side
from app.views.review.entry.results import Known
from app.views.translation import message, pointed, tr

REACHES = ("reach_anterior", "reach_posteromedial", "reach_posterolateral")
"""In the order in which they are measured."""
LIMB = "limb_length"
COMPOSITE = message("Reach composite of the {side}: {value} % of the limb length.")
NO_LIMB = message("Enter the limb length of the {side}, and the composite is known.")
APART = message(
    "Forwards the sides are {apart} cm apart: more than 4 cm, a limit found in school basketball."
)
SIDES = {Side.LEFT: message("left side"), Side.RIGHT: message("right side")}


def next_reach(key: str) -> str | None:
    """The direction that is measured after one; None after the last, and for other tests."""
    place = REACHES.index(key) + 1 if key in REACHES else len(REACHES)
    return REACHES[place] if place < len(REACHES) else None


def reach_words(known: Known, side: Side) -> list[str]:
    """The composite of a side as far as it is known, and how far apart the sides are where that is much."""
    told = []
    reaches = [_last(known, key, side) for key in REACHES]
    limb = _last(known, LIMB, side)
    found = [each for each in reaches if each is not None]
    if len(found) == len(REACHES) and limb is None:
        told.append(tr(NO_LIMB).format(side=tr(SIDES[side])))
    elif len(found) == len(REACHES) and limb is not None:
        value = pointed(f"{reach_composite(found[0], found[1], found[2], limb):.1f}")
        told.append(tr(COMPOSITE).format(side=tr(SIDES[side]), value=value))
    left, right = (_last(known, REACHES[0], each) for each in (Side.LEFT, Side.RIGHT))
    if left is not None and right is not None and anterior_reach_apart(left, right):
        told.append(tr(APART).format(apart=pointed(f"{abs(left - right):.1f}")))
    return told


def _last(known: Known, key: str, side: Side) -> float | None:
    test = field_test(key)
    values = day_values((held.thing for held in known.results), test, side) if test is not None else ()
    return values[-1].value if values else None
