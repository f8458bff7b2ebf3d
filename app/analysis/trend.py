"""Whether a course rises or falls: a robust slope with its interval, and a rank test with its caution."""

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from app.analysis.adherence import Z_95

FEWEST = 8
TOO_FEW = "There are too few points for a trend: fewer than 8."
ONE_TIME = "All points are of one time."
CAUTION = (
    "Points of one athlete that follow one another are not independent: read the slope and its interval."
)
Numbers = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Slope:
    """A robust line. `slope` is in units of the values by unit of time, `low` to `high` its 95 % interval."""

    slope: float
    intercept: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class MannKendall:
    """Rank test of a trend, no units: `s`, its variance with ties, `z`, two-sided `p`, Kendall's taus.

    `tau_b` is None when all values are the same.
    """

    s: int
    variance: float
    z: float
    p: float
    tau_a: float
    tau_b: float | None


@dataclass(frozen=True, slots=True)
class Trend:
    """Slope and rank test of a course of `n` points; both None with a `reason` where there are too few."""

    n: int
    slope: Slope | None
    test: MannKendall | None
    reason: str | None


def trend(times: Sequence[float], values: Sequence[float]) -> Trend:
    """Trend of values at times, in order of time; no word of it under 8 points. See CAUTION."""
    if len(values) < FEWEST:
        return Trend(len(values), None, None, TOO_FEW)
    if min(times) == max(times):
        return Trend(len(values), None, None, ONE_TIME)
    in_order = [value for _, value in sorted(zip(times, values, strict=True), key=lambda pair: pair[0])]
    return Trend(len(values), theil_sen(times, values), mann_kendall(in_order), None)


def theil_sen(times: Sequence[float], values: Sequence[float]) -> Slope:
    """Median of the slopes of all pairs, with the 95 % interval of Sen, in units of value by unit of time.

    The intercept is median(values) - slope x median(times). Ties of either kind are taken into account.
    Source: Sen 1968, J Am Stat Assoc 63:1379-1389. Raises ValueError for fewer than two times.
    """
    x, y = np.asarray(times, float), np.asarray(values, float)
    if len(x) != len(y) or len(set(times)) < 2:
        raise ValueError("A slope needs values at two times at least.")
    slopes = _slopes(x, y)
    middle = float(np.median(slopes))
    intercept = float(np.median(y) - middle * np.median(x))
    half = Z_95 * math.sqrt(max(_sen_variance(x, y), 0.0))
    upper = min(round((len(slopes) + half) / 2), len(slopes) - 1)
    lower = max(round((len(slopes) - half) / 2) - 1, 0)
    ordered = np.partition(slopes, (lower, upper))
    return Slope(middle, intercept, float(ordered[lower]), float(ordered[upper]))


def repeated_medians(times: Sequence[float], values: Sequence[float]) -> tuple[float, float]:
    """Slope and intercept: the median over points of the median slope to all others, for comparison.

    It stands firm while fewer than half of the points are astray. The intercept is the median of value -
    slope x time. Source: Siegel 1982, Biometrika 69:242-244. Raises ValueError for fewer than two times.
    """
    x, y = np.asarray(times, float), np.asarray(values, float)
    if len(x) != len(y) or len(set(times)) < 2:
        raise ValueError("A slope needs values at two times at least.")
    medians = []
    for place in range(len(x)):
        apart = x != x[place]
        medians.append(float(np.median((y[apart] - y[place]) / (x[apart] - x[place]))))
    slope = float(np.median(medians))
    return slope, float(np.median(y - slope * x))


def mann_kendall(values: Sequence[float]) -> MannKendall:
    """Mann and Kendall's test of values in order of time, with the correction for ties; no units.

    S = rises - falls of all pairs; Var = (n(n-1)(2n+5) - sum t(t-1)(2t+5)) / 18; Z = (S -+ 1) / sqrt Var, 0
    for S = 0; p by the normal curve, which is rough under 11 values. Source: Mann 1945, Econometrica
    13:245-259; Gilbert 1987, Statistical Methods for Environmental Pollution Monitoring. Raises ValueError
    for fewer than two values.
    """
    n = len(values)
    if n < 2:
        raise ValueError("A trend needs two values at least.")
    y = np.asarray(values, float)
    s = sum(int(np.sign(y[place + 1 :] - y[place]).sum()) for place in range(n - 1))
    variance = (n * (n - 1) * (2 * n + 5) - _tied(values)) / 18
    z = (s - math.copysign(1, s)) / math.sqrt(variance) if s and variance else 0.0
    pairs = n * (n - 1) / 2
    untied = pairs - sum(t * (t - 1) / 2 for t in Counter(values).values())
    tau_b = s / math.sqrt(pairs * untied) if untied else None
    return MannKendall(s, variance, z, math.erfc(abs(z) / math.sqrt(2)), s / pairs, tau_b)


def _slopes(x: Numbers, y: Numbers) -> Numbers:
    first, second = np.triu_indices(len(x), 1)
    run, rise = x[second] - x[first], y[second] - y[first]
    apart = run != 0
    return np.asarray(rise[apart] / run[apart])


def _sen_variance(x: Numbers, y: Numbers) -> float:
    """Variance of Kendall's S with ties in both, equation 2.6 of Sen 1968 with its ties in time."""
    n = len(x)
    return (n * (n - 1) * (2 * n + 5) - _tied(x.tolist()) - _tied(y.tolist())) / 18


def _tied(values: Sequence[float]) -> int:
    return sum(t * (t - 1) * (2 * t + 5) for t in Counter(values).values())
