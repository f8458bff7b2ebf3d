"""The cautions of a plan: every question a sensible colleague would ask of it. Nothing is refused."""

from collections.abc import Callable, Iterator

from app.domain.caution_dose import explosive_holds, isometric_totals, set_tensions, stop_signs
from app.domain.caution_session import contacts, session_length, side_balance, stage_order
from app.domain.caution_time import explosive_rests, hold_rests, tired_targets
from app.domain.caution_value import Caution
from app.domain.thresholds import DEFAULT, Thresholds
from app.domain.timeline import Timeline

Check = Callable[[Timeline, Thresholds], Iterator[Caution]]

CHECKS: tuple[Check, ...] = (
    stage_order,
    session_length,
    contacts,
    side_balance,
    stop_signs,
    explosive_holds,
    explosive_rests,
    set_tensions,
    isometric_totals,
    hold_rests,
    tired_targets,
)


def cautions(timeline: Timeline, thresholds: Thresholds = DEFAULT) -> tuple[Caution, ...]:
    """Every caution of a compiled plan: those of the session first, then by kind and order of the plan."""
    return tuple(found for check in CHECKS for found in check(timeline, thresholds))
