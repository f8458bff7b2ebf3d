"""Jumps: height from the time in flight, and the two reactive strength indices, which are not the same."""

from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean

GRAVITY = 9.81
"""Standard of the trade in m/s^2; 9.80665 differs in the fourth place."""

REBOUNDS = 10
BEST_OF_TEN = 5
FAST_CONTACT_S = 0.250
TOO_FEW_REBOUNDS = "The test asks for ten rebounds."


@dataclass(frozen=True, slots=True)
class Hop:
    """One rebound: contact with the ground and the flight after it, both in seconds."""

    contact_s: float
    flight_s: float


@dataclass(frozen=True, slots=True)
class TenHops:
    """Mean of the best five indices of ten rebounds; None with a `reason` where there are not ten."""

    flight_over_contact: float | None
    height_over_contact: float | None
    hops: int
    slow: int
    reason: str | None = None


def jump_height(flight_s: float, gravity: float = GRAVITY) -> float:
    """Height in m from the time in flight in s: g t^2 / 8. Landing with bent knees makes it too great.

    Source: PMC9750644, table 1. Raises ValueError for a negative time.
    """
    if flight_s < 0:
        raise ValueError("A time in flight is not negative.")
    return gravity * flight_s**2 / 8


def take_off_speed(flight_s: float, gravity: float = GRAVITY) -> float:
    """Speed at take-off in m/s from the time in flight in s: g t / 2. Source: mechanics of a free flight."""
    return gravity * flight_s / 2


def flight_over_contact(flight_s: float, contact_s: float) -> float:
    """Reactive strength as time in flight / time of contact, both in s: no unit.

    The form of Southey et al. 2024, Kinesiology 56(2). Not to be compared with `height_over_contact`. Raises
    ValueError unless the contact lasts.
    """
    return flight_s / _lasting(contact_s)


def height_over_contact(height_m: float, contact_s: float) -> float:
    """Reactive strength as jump height in m / time of contact in s: m/s.

    The form of PMC9750644, table 1. Not to be compared with `flight_over_contact`. Raises ValueError unless
    the contact lasts.
    """
    return height_m / _lasting(contact_s)


def height_over_take_off(height_m: float, take_off_s: float) -> float:
    """Jump height in m / time from the first movement to take-off in s: m/s, the modified index.

    Source: Ebben and Petushek 2010, from memory. Raises ValueError unless the time lasts.
    """
    return height_m / _lasting(take_off_s)


def fast_contact(contact_s: float) -> bool:
    """Whether a contact is short enough for the fast stretch-shortening cycle: under 250 ms.

    Source: Schmidtbleicher 1992 (secondary).
    """
    return contact_s < FAST_CONTACT_S


def ten_hops(hops: Sequence[Hop]) -> TenHops:
    """Mean of the best five of ten rebounds by each index; the jump before them is not among them.

    `slow` counts contacts of 250 ms and more. Source: Harper et al. 2011, from memory. Raises ValueError
    unless each contact lasts.
    """
    slow = sum(not fast_contact(hop.contact_s) for hop in hops)
    if len(hops) != REBOUNDS:
        return TenHops(None, None, len(hops), slow, TOO_FEW_REBOUNDS)
    by_flight = [flight_over_contact(hop.flight_s, hop.contact_s) for hop in hops]
    by_height = [height_over_contact(jump_height(hop.flight_s), hop.contact_s) for hop in hops]
    return TenHops(
        mean_of_best(by_flight, BEST_OF_TEN), mean_of_best(by_height, BEST_OF_TEN), len(hops), slow
    )


def mean_of_best(values: Sequence[float], count: int) -> float | None:
    """Mean of the greatest `count` values, in their unit; None when there are fewer. Common practice."""
    return fmean(sorted(values, reverse=True)[:count]) if len(values) >= count > 0 else None


def _lasting(seconds: float) -> float:
    if seconds <= 0:
        raise ValueError("A time that is divided by has to be longer than nought.")
    return seconds
