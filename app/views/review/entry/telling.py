"""What is said at once of a try while it is typed: what its numbers come to, and what becomes of them all."""

from collections.abc import Sequence
from dataclasses import dataclass, field

from app.analysis.balance import MOST_ERRORS, in_square
from app.analysis.jumps import (
    TOO_FEW_REBOUNDS,
    Hop,
    fast_contact,
    flight_over_contact,
    height_over_contact,
    jump_height,
    take_off_speed,
    ten_hops,
)
from app.analysis.one_rep_max import estimated_one_rep_max
from app.analysis.tests_kinds import FieldTest
from app.views.translation import message, pointed

MS = 1_000
CM_A_METRE = 100
ESTIMATES = message("Estimated for one rep: Epley {epley}, Brzycki {brzycki}, Lombardi {lombardi} kg.")
BOTH_INDICES = message("Flight over contact {flight}, height over contact {height} m/s.")
SLOW = message("The contact lasts 250 ms or longer.")
SQUARE_SHARE = message("{good} of {n} in the square: {share} % ({low} to {high} %).")
CAPPED = message("{sum} errors; of each stance ten at most are counted.")
JUMPED = message("{height} cm high, take-off at {speed} m/s.")
BEST_FIVE = message("Best five of ten: flight over contact {flight}, height over contact {height} m/s.")
SLOW_CONTACTS = message("{slow} of 10 contacts last 250 ms or longer.")


@dataclass(frozen=True, slots=True)
class Said:
    """A message with the values that go into it."""

    text: str
    values: dict[str, str] = field(default_factory=dict)


def told_of_parts(test: FieldTest, values: Sequence[float]) -> tuple[Said, ...]:
    """What the numbers of one try come to."""
    key = test.key.partition(":")[0]
    if key.startswith("one_rep_max"):
        return _estimates(values[0], round(values[1]))
    if key.startswith(("drop_jump", "ten_hops")):
        return _indices(Hop(values[0] / MS, values[1] / MS))
    if key == "jumps_in_square":
        return _square(round(values[0]), round(values[1]))
    if key == "balance_errors":
        total = test.value_of(values)
        capped = any(value > MOST_ERRORS for value in values)
        return (Said(CAPPED, {"sum": f"{total:g}"}),) if capped and total is not None else ()
    if key == "jump_modified_index":
        return (told_of_flight(values[1] / MS),)
    return ()


def told_of_flight(flight_s: float) -> Said:
    """How high a jump was by the seconds in flight, and how fast it left the ground."""
    height, speed = jump_height(flight_s) * CM_A_METRE, take_off_speed(flight_s)
    return Said(JUMPED, {"height": _told(height, 1), "speed": _told(speed, 2)})


def told_of_hops(hops: Sequence[Sequence[float]]) -> tuple[Said, ...]:
    """What ten hops come to, of contact and flight in ms each; with other than ten that ten are asked for."""
    found = ten_hops([Hop(contact / MS, flight / MS) for contact, flight in hops])
    if found.flight_over_contact is None or found.height_over_contact is None:
        return (Said(TOO_FEW_REBOUNDS),)
    best = {"flight": _told(found.flight_over_contact, 2), "height": _told(found.height_over_contact, 2)}
    return Said(BEST_FIVE, best), Said(SLOW_CONTACTS, {"slow": str(found.slow)})


def _estimates(load: float, reps: int) -> tuple[Said, ...]:
    found = estimated_one_rep_max(load, reps)
    if found.epley is None or found.brzycki is None or found.lombardi is None:
        return (Said(found.reason or ""),)
    told = {
        name: _told(value, 1)
        for name, value in (
            ("epley", found.epley),
            ("brzycki", found.brzycki),
            ("lombardi", found.lombardi),
        )
    }
    return (Said(ESTIMATES, told),)


def _indices(hop: Hop) -> tuple[Said, ...]:
    flight = flight_over_contact(hop.flight_s, hop.contact_s)
    height = height_over_contact(jump_height(hop.flight_s), hop.contact_s)
    told = Said(BOTH_INDICES, {"flight": _told(flight, 2), "height": _told(height, 2)})
    return (told, Said(SLOW)) if not fast_contact(hop.contact_s) else (told,)


def _square(inside: int, outside: int) -> tuple[Said, ...]:
    found = in_square(inside, outside)
    if found.share is None or found.interval is None:
        return ()
    share, low, high = (
        f"{100 * each:.0f}" for each in (found.share, found.interval.low, found.interval.high)
    )
    values = {"good": str(found.good), "n": str(found.n), "share": share, "low": low, "high": high}
    return (Said(SQUARE_SHARE, values),)


def _told(value: float, places: int) -> str:
    return pointed(f"{value:.{places}f}")
