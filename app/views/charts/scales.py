"""Where marks stand on the axes of a chart."""

import math

STEPS = (1, 2, 5, 10)


def round_ticks(top: float, wanted: int = 3) -> tuple[float, ...]:
    """Ticks from 0 in steps of 1, 2 or 5 times a power of ten, the last at or above `top`.

    There are at most `wanted` steps.
    """
    if top <= 0:
        return (0.0, 1.0)
    raw = top / wanted
    power = 10.0 ** math.floor(math.log10(raw))
    step = next(candidate * power for candidate in STEPS if candidate * power >= raw * (1 - 1e-9))
    return tuple(step * number for number in range(math.ceil(top / step - 1e-9) + 1))


def label_places(first: float, last: float, count: int, room: float, label: float) -> tuple[int, ...]:
    """The places between `first` and `last`, of `count` from 0, whose labels fit without touching.

    `room` is the width of the whole stretch and `label` that of the widest label with its gap, in one unit.
    Every place, or every second, fifth, tenth ... counted back from the last, which always has its label.
    """
    stretch = max(last - first, 1e-9)
    each = max(room, 1.0) / stretch
    stride = _stride(max(label / each, 1.0))
    lowest, highest = max(math.ceil(first), 0), min(math.floor(last), count - 1)
    return tuple(place for place in range(lowest, highest + 1) if (count - 1 - place) % stride == 0)


def _stride(least: float) -> int:
    power = 1
    while True:
        for step in (1, 2, 5):
            if step * power >= least:
                return step * power
        power *= 10
