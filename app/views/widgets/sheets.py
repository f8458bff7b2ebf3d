"""The profile as sheets that stand still one after the other, for those who asked for less motion."""

from bisect import bisect_right
from collections.abc import Sequence

EDGE = 0.06
"""Share of a sheet before its own start: the end of what came before it."""
FULL = 0.4
"""A sheet is turned at the start of a rep, before the marker has crossed more than this share of it."""
HALF = 0.5
"""Share after which a sheet is turned in the middle of a rep that fills it."""


def sheet_starts(reps: Sequence[int], end_ms: int, whole_ms: float) -> tuple[float, ...]:
    """Where on a bout's axis each sheet begins, in ms, rising.

    `reps` are the starts of the reps, rising; `whole_ms` is what fits on a sheet. Whole reps where they fit,
    so that those to come are in sight beside the one under way.
    """
    starts = [float(reps[0])] if reps else []
    while starts and starts[-1] + HALF * whole_ms < end_ms:
        last = reps[bisect_right(reps, starts[-1] + FULL * whole_ms) - 1]
        starts.append(float(last) if last > starts[-1] else starts[-1] + HALF * whole_ms)
    return tuple(starts)


def sheet_of(starts: Sequence[float], at_ms: float) -> float:
    """Where the sheet begins that shows a moment; before the first sheet it is the first."""
    return starts[max(bisect_right(starts, at_ms) - 1, 0)]
