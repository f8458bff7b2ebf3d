"""Where marks stand on the axes of a chart."""

import math
from collections.abc import Sequence

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


def spread_labels(
    at: Sequence[float], seen: tuple[float, float], room: float, label: float
) -> tuple[int, ...]:
    """The places at these rising positions whose labels fit without touching, from the last one backwards.

    `seen` is the stretch in sight, `room` its width and `label` that of the widest label with its gap.
    """
    each = max(room, 1.0) / max(seen[1] - seen[0], 1e-9)
    chosen: list[int] = []
    for place in reversed(range(len(at))):
        if not seen[0] <= at[place] <= seen[1]:
            continue
        if not chosen or (at[chosen[-1]] - at[place]) * each >= label:
            chosen.append(place)
    return tuple(reversed(chosen))


def span_ticks(low: float, high: float, wanted: int = 3) -> tuple[float, ...]:
    """Ticks in steps of 1, 2 or 5 times a power of ten that enclose values from `low` to `high`.

    For what need not begin at 0; of one value only they reach a step to either side.
    """
    spread = high - low or abs(high) * 0.2 or 1.0
    raw = spread / wanted
    power = 10.0 ** math.floor(math.log10(raw))
    step = next(candidate * power for candidate in STEPS if candidate * power >= raw * (1 - 1e-9))
    first = math.floor(low / step + 1e-9) - (low == high)
    last = math.ceil(high / step - 1e-9) + (low == high)
    return tuple(round(step * number, 10) for number in range(first, max(last, first + 1) + 1))


def _stride(least: float) -> int:
    power = 1
    while True:
        for step in (1, 2, 5):
            if step * power >= least:
                return step * power
        power *= 10
