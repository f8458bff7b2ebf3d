"""Intraclass correlation: how much of the spread of measurements is a spread between those measured."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True, slots=True)
class Intraclass:
    """The six forms of Shrout and Fleiss, no unit; None where there is no spread to share out.

    `one_way` is (1,1), `agreement` (2,1), `consistency` (3,1): of a single measurement. The others are of the
    mean of all of them: (1,k), (2,k), (3,k).
    """

    one_way: float | None
    agreement: float | None
    consistency: float | None
    one_way_mean: float | None
    agreement_mean: float | None
    consistency_mean: float | None


def intraclass(table: Sequence[Sequence[float]]) -> Intraclass:
    """The six forms from rows of those measured and columns of measurements, n x k, in any one unit.

    From the mean squares between rows (BMS), within rows (WMS), between columns (JMS) and of the rest (EMS).
    Source: Shrout and Fleiss 1979, Psychol Bull 86:420-428. Raises ValueError for fewer than two rows or
    columns, or rows of different length.
    """
    values = np.asarray(table, float)
    if values.ndim != 2 or min(values.shape) < 2:
        raise ValueError("An intraclass correlation needs two rows and two columns at least.")
    n, k = values.shape
    whole, rows, columns = values.mean(), values.mean(axis=1), values.mean(axis=0)
    between = k * float(((rows - whole) ** 2).sum())
    across = n * float(((columns - whole) ** 2).sum())
    every = float(((values - whole) ** 2).sum())
    bms, jms = between / (n - 1), across / (k - 1)
    wms = (every - between) / (n * (k - 1))
    ems = max(every - between - across, 0.0) / ((n - 1) * (k - 1))
    return Intraclass(
        _over(bms - wms, bms + (k - 1) * wms),
        _over(bms - ems, bms + (k - 1) * ems + k * (jms - ems) / n),
        _over(bms - ems, bms + (k - 1) * ems),
        _over(bms - wms, bms),
        _over(bms - ems, bms + (jms - ems) / n),
        _over(bms - ems, bms),
    )


def _over(above: float, below: float) -> float | None:
    return above / below if below else None
