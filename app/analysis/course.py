"""Where somebody stands in a test: best, last, and the change since the baseline against the test's error."""

from collections.abc import Sequence
from dataclasses import dataclass

from app.analysis.symmetry import Standing, standing

NO_RESULT = "There is no result."
ONE_RESULT = "There is one result, so that nothing has changed yet."


@dataclass(frozen=True, slots=True)
class Course:
    """Results in the unit of their test, in order of time; None with a `reason` where unknown.

    `baseline` is the first, `change` the last less the first, `change_share` the same over the baseline in %.
    `standing` says whether the change exceeds the minimal detectable change.
    """

    n: int
    baseline: float | None
    last: float | None
    best: float | None
    change: float | None
    change_share: float | None
    standing: Standing
    reason: str | None


def course(
    values: Sequence[float], *, more_is_better: bool | None = True, mdc: float | None = None
) -> Course:
    """Best, last and change of results in order of time; none is best where more is neither good nor bad."""
    if not values:
        return Course(0, None, None, None, None, None, Standing.UNKNOWN, NO_RESULT)
    best = None if more_is_better is None else max(values) if more_is_better else min(values)
    first, last = values[0], values[-1]
    if len(values) == 1:
        return Course(1, first, last, best, None, None, Standing.UNKNOWN, ONE_RESULT)
    change = last - first
    share = change / first * 100 if first else None
    return Course(len(values), first, last, best, change, share, standing(abs(change), mdc), None)
