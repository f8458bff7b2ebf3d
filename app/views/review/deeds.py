"""What can be done on an athlete's page beside looking: a report made, a test entered, sessions planned."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.views.lettering import desk_scale
from app.views.review.athlete.page import Door
from app.views.review.entry.entering import Entering
from app.views.review.handout.handing_out import HandingOut
from app.views.review.planning.planner import Planner
from app.views.review.reference.choosing import Choosing
from app.views.theme import Look
from app.views.translation import message, tr

if TYPE_CHECKING:
    from app.views.house import House
    from app.views.worker import RecordKeeper

REPORT, TEST, PLAN = message("Report"), message("Enter a test"), message("Plan sessions")


@dataclass(frozen=True, slots=True)
class Deeds:
    """Actions, each given an athlete's name.

    The `doors` of their page, planning from the squad, and choosing the reference side.
    """

    doors: tuple[Door, ...] = ()
    plan: Callable[[str], object] | None = None
    reference: Callable[[str], object] | None = None


def athlete_deeds(
    house: "House", keeper: "RecordKeeper", look: Look, window: QWidget, after: Callable[[], object]
) -> Deeds:
    """The actions; `after` is called once something was kept.

    Without a clock or ids in the house there are none.
    """
    stamp, new_id = house.stamp, house.new_id
    if stamp is None or new_id is None:
        return Deeds()
    handing_out, entering = HandingOut(keeper, stamp, house.fonts), Entering(keeper, stamp, new_id, after)
    plans = house.plans, lambda path: house.read_plan(path).plan.title
    planner = Planner(keeper, stamp, new_id, plans, after)
    choosing = Choosing(keeper, stamp, after)

    def fitting() -> Look:
        return replace(look, sizes=desk_scale(window.width(), look.text))

    def plan(athlete: str) -> None:
        planner.open(athlete, fitting(), window)

    doors = (
        (tr(REPORT), lambda athlete: handing_out.open(athlete, fitting(), window)),
        (tr(TEST), lambda athlete: entering.open(athlete, fitting(), window)),
        (tr(PLAN), plan),
    )
    return Deeds(doors, plan, lambda athlete: choosing.open(athlete, fitting(), window))
