"""What the first page shows."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from app.domain.squad import OwedRating
from app.views.home.people import GUEST, Trainee
from app.views.home.plans import OfferedPlan


@dataclass(frozen=True, slots=True)
class Offer:
    """A run that was cut short: what it was, and what to do with it."""

    sentence: str
    take_up: Callable[[], object]
    lay_down: Callable[[], object]


Door = tuple[str, Callable[[], object]]
"""The words of a button, and what it does."""


@dataclass(frozen=True, slots=True)
class HomeState:
    """Who may train and who does, the plans and which is chosen, what is owed, and what day it is."""

    today: date
    people: tuple[Trainee, ...] = ()
    athlete: str = GUEST
    plans: tuple[OfferedPlan, ...] = ()
    plan: Path | None = None
    owed: tuple[OwedRating, ...] = ()
