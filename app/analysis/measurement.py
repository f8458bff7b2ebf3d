"""How far a test can be trusted: typical error, changes worthwhile and detectable, agreement."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean, stdev

from app.analysis.adherence import Z_95

SMALL_EFFECT = 0.2


@dataclass(frozen=True, slots=True)
class Agreement:
    """Two ways of measuring compared: `bias` (first less second), `sd` of the differences, their limits."""

    bias: float
    sd: float
    low: float
    high: float


def typical_error(differences: Sequence[float]) -> float | None:
    """Standard deviation (n - 1) of the differences between two tries / sqrt 2, in the unit of the test.

    None of fewer than two differences. Source: Hopkins 2000, Sports Med 30:1-15 (secondary: course notes).
    """
    return None if len(differences) < 2 else stdev(differences) / math.sqrt(2)


def minimal_detectable_change(error: float) -> float:
    """1.96 x sqrt 2 x typical error, in the unit of the test: what a real change has to exceed, 95 %.

    Source: Hopkins 2000, Sports Med 30:1-15 (secondary: course notes). Raises ValueError for a negative
    error.
    """
    if error < 0:
        raise ValueError("A typical error is not negative.")
    return Z_95 * math.sqrt(2) * error


def smallest_worthwhile_change(values: Sequence[float], error: float | None = None) -> float | None:
    """0.2 x standard deviation (n - 1) between athletes, in the unit of the test; None of fewer than two.

    With the test's typical `error` known, the SD is freed of it: sqrt(SD^2 - error^2), 0 where nothing
    remains. Source: Hopkins 2000, Sports Med 30:1-15 (secondary: course notes); freed of the error, Hopkins
    2002.
    """
    if len(values) < 2:
        return None
    between = stdev(values)
    if error is not None:
        between = math.sqrt(max(between**2 - error**2, 0.0))
    return SMALL_EFFECT * between


def can_show_small_change(worthwhile: float | None, error: float | None) -> bool | None:
    """Whether a test can show the smallest worthwhile change: not when it is below the typical error.

    None when either is unknown. Source: Hopkins 2000, Sports Med 30:1-15 (secondary: course notes).
    """
    return None if worthwhile is None or error is None else worthwhile >= error


def pair_variation(pairs: Sequence[tuple[float, float]]) -> float | None:
    """Coefficient of variation of a try in %: 100 x typical error / mean of all tries.

    None of fewer than two pairs or a mean of 0. Source: CV % = 100 SD / mean, of Hopkins 2000, Sports Med
    30:1-15 (secondary: course notes), with the SD within athletes.
    """
    error = typical_error([second - first for first, second in pairs])
    mean = fmean([value for pair in pairs for value in pair]) if pairs else 0.0
    return None if error is None or not mean else 100 * error / mean


def agreement(first: Sequence[float], second: Sequence[float], multiple: float = 2.0) -> Agreement | None:
    """Bias, SD of the differences (n - 1) and limits of agreement, bias -+ `multiple` x SD, in their unit.

    None of fewer than two pairs. Source: Bland and Altman 1986, Lancet 327:307-310. Raises ValueError when
    the two are not equally long.
    """
    differences = [one - other for one, other in zip(first, second, strict=True)]
    if len(differences) < 2:
        return None
    bias, sd = fmean(differences), stdev(differences)
    return Agreement(bias, sd, bias - multiple * sd, bias + multiple * sd)


def repeatability_sd(first: Sequence[float], second: Sequence[float]) -> float | None:
    """Root mean square of the differences between two tries, in their unit; None of none.

    Source: Bland and Altman 1986, Lancet 327:307-310. Raises ValueError when they are not equally long.
    """
    squares = [(one - other) ** 2 for one, other in zip(first, second, strict=True)]
    return math.sqrt(fmean(squares)) if squares else None
