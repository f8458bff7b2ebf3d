"""Signs of progression: what the trade looks at before a load is raised, held or lowered.

They are signs and no advice: each says what was done, and the practitioner decides.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction

REPS_ABOVE, SESSIONS_RUNNING = 2, 2
LEAST_STEP, MOST_STEP = Decimal("0.02"), Decimal("0.10")
_TEN_PERCENT = Fraction(1, 10)
_FINEST = 60_000
"""Loads are whole milliseconds x whole efforts a minute, and grams: no finer part of one is meant."""


class Reached(StrEnum):
    """Where the sets of a session lie against the range asked for."""

    TOP = "top of the range in every set"
    WITHIN = "within the range"
    BELOW = "below the range in a set"


@dataclass(frozen=True, slots=True)
class WeekChange:
    """What changed from one week to the next, in the unit of both.

    `absolute` is None where either week is unknown, `percent` is None too where the one before was 0.
    `beyond_ten_percent` says that it rose by more than a tenth; None where there is no percent.
    """

    before: float | None
    this: float | None
    absolute: float | None
    percent: float | None
    beyond_ten_percent: bool | None


@dataclass(frozen=True, slots=True)
class LoadStep:
    """The least and the greatest customary step of a load, in kg."""

    least_kg: Decimal
    most_kg: Decimal


def two_for_two(goal: int, last_sets: Sequence[int | None]) -> bool | None:
    """Whether the last set was at least 2 reps above the goal in the last two sessions running.

    `last_sets` are the reps of the last set of each session in which the exercise was asked for, the latest
    at the end: 0 where it was left out, which breaks the run, and None where nobody knows how many. None is
    unknown: a session that would decide is unknown or not there. A session that was not held at all is no
    session and breaks nothing: a choice. Source: NSCA, from memory.
    """
    pair = (*[None] * SESSIONS_RUNNING, *last_sets)[-SESSIONS_RUNNING:]
    if any(reps is not None and reps < goal + REPS_ABOVE for reps in pair):
        return False
    return None if None in pair else True


def double_progression(low: int, high: int, sets: Sequence[int | None]) -> Reached | None:
    """Where the reps of all sets of a session lie against the range asked for; None where that is unknown.

    Reps rise within the range first, and the load once every set is at its top. A set below the range decides
    whatever is unknown of the others. Raises ValueError for a range the wrong way round. Common practice,
    from memory.
    """
    if low > high:
        raise ValueError("A range of reps begins with its lesser number.")
    if any(reps is not None and reps < low for reps in sets):
        return Reached.BELOW
    known = [reps for reps in sets if reps is not None]
    if not sets or len(known) < len(sets):
        return None
    return Reached.TOP if min(known) >= high else Reached.WITHIN


def week_change(before: float | None, this: float | None) -> WeekChange:
    """Change from one week to the next, in their unit and in percent of the one before.

    Exactly a tenth more is not beyond ten percent; it is compared in whole fractions. A soft prompt and no
    limit: the ten percent rule did not lower injuries (Buist et al. 2008, 20.8 % against 20.3 %), and more
    distance-related ones were seen above 30 % in two weeks (Nielsen et al. 2014). Raises ValueError below 0.
    """
    if min(before or 0.0, this or 0.0) < 0:
        raise ValueError("There is no load below nought.")
    if before is None or this is None:
        return WeekChange(before, this, None, None, None)
    begin = _exact(before)
    change = _exact(this) - begin
    if not begin:
        return WeekChange(before, this, float(change), None, None)
    share = change / begin
    return WeekChange(before, this, float(change), float(share * 100), share > _TEN_PERCENT)


def load_step(load_kg: Decimal) -> LoadStep:
    """2 % and 10 % of a load, in kg: the customary step once 1 or 2 reps above the target can be done.

    Source: ACSM 2009, position stand on progression models, Med Sci Sports Exerc 41:687-708.
    """
    return LoadStep(load_kg * LEAST_STEP, load_kg * MOST_STEP)


def _exact(value: float) -> Fraction:
    return Fraction(value).limit_denominator(_FINEST)
