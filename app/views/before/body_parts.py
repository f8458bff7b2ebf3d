"""The outline of a body from the front and from the back, as shapes with names; drawn for this program.

Each figure stands in a frame 100 wide and 240 high, its middle at x = 50. Shapes are drawn for one half and
mirrored. Seen from the front the person's left is at the right of the frame, seen from the back at its left.
"""

from dataclasses import dataclass
from enum import StrEnum

from app.domain.plan import Side
from app.run.readiness_form import Spot
from app.views.translation import message

WIDTH, HEIGHT = 100.0, 240.0
MIDDLE = WIDTH / 2

Points = tuple[tuple[float, float], ...]


class Facing(StrEnum):
    """From where a figure is seen."""

    FRONT = "front"
    BACK = "back"


@dataclass(frozen=True, slots=True)
class Part:
    """A region of a figure: what it is called, and its corners in the frame."""

    facing: Facing
    spot: Spot
    corners: Points

    @property
    def centre(self) -> tuple[float, float]:
        """The mean of the corners."""
        count = len(self.corners)
        return sum(x for x, _ in self.corners) / count, sum(y for _, y in self.corners) / count


_MIDDLE_SHAPES: dict[str, Points] = {
    "head": ((-7, 1), (7, 1), (11.5, 7), (10.5, 15), (6, 22), (-6, 22), (-10.5, 15), (-11.5, 7)),
    "neck": ((-6.5, 23.5), (6.5, 23.5), (8, 36.5), (-8, 36.5)),
    "waist": ((-20, 74.5), (20, 74.5), (19, 102), (-19, 102)),
}
_HALF_SHAPES: dict[str, Points] = {
    "chest": ((0.7, 37.5), (13, 37.5), (19, 49), (21, 61), (20.5, 73), (0.7, 73)),
    "shoulder": ((14.5, 37.5), (25, 38.5), (33.5, 46), (36, 60), (22.5, 60), (20.5, 48)),
    "upper arm": ((22.5, 61.5), (36.4, 61.5), (39.5, 84), (26, 84)),
    "elbow": ((26.2, 85.5), (39.7, 85.5), (42, 99), (28.5, 99)),
    "forearm": ((28.8, 100.5), (42.3, 100.5), (46, 125), (35, 125)),
    "hand": ((34.8, 126.5), (46.4, 126.5), (49.5, 139), (47.5, 151), (39, 151)),
    "hip": ((0.7, 103.5), (19.3, 103.5), (24.5, 124), (14, 128), (0.7, 128)),
    "thigh": ((1.5, 129.5), (13.5, 129.5), (24.7, 125.5), (23.5, 167), (6.5, 167)),
    "knee": ((6.6, 168.5), (23.4, 168.5), (22.5, 186), (7.5, 186)),
    "shin": ((7.5, 187.5), (22.5, 187.5), (19.5, 217), (9.5, 217)),
    "foot": ((9.3, 218.5), (19.3, 218.5), (26, 233), (24, 238), (8.5, 238)),
}

_NAMES: dict[Facing, dict[str, str]] = {
    Facing.FRONT: {
        "head": message("head"),
        "neck": message("front of the neck"),
        "waist": message("belly"),
        "chest": message("chest"),
        "shoulder": message("front of the shoulder"),
        "upper arm": message("front of the upper arm"),
        "elbow": message("bend of the elbow"),
        "forearm": message("inside of the forearm"),
        "hand": message("wrist and hand"),
        "hip": message("hip and groin"),
        "thigh": message("front of the thigh"),
        "knee": message("knee"),
        "shin": message("shin"),
        "foot": message("ankle and foot"),
    },
    Facing.BACK: {
        "head": message("back of the head"),
        "neck": message("back of the neck"),
        "waist": message("lower back"),
        "chest": message("shoulder blade and upper back"),
        "shoulder": message("back of the shoulder"),
        "upper arm": message("back of the upper arm"),
        "elbow": message("elbow"),
        "forearm": message("outside of the forearm"),
        "hand": message("back of the hand"),
        "hip": message("buttock"),
        "thigh": message("back of the thigh"),
        "knee": message("back of the knee"),
        "shin": message("calf"),
        "foot": message("heel"),
    },
}


def _parts() -> tuple[Part, ...]:
    made: list[Part] = []
    for facing, names in _NAMES.items():
        outward = Side.LEFT if facing is Facing.FRONT else Side.RIGHT
        made += [Part(facing, Spot(names[key]), _placed(shape, 1)) for key, shape in _MIDDLE_SHAPES.items()]
        for key, shape in _HALF_SHAPES.items():
            made.append(Part(facing, Spot(names[key], outward), _placed(shape, 1)))
            made.append(Part(facing, Spot(names[key], outward.other), _placed(shape, -1)))
    return tuple(made)


def _placed(shape: Points, mirror: int) -> Points:
    return tuple((MIDDLE + mirror * x, y) for x, y in shape)


PARTS = _parts()
"""Every region once. The spots are all different."""
