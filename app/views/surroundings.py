"""What the athlete's page knows beside the run: the pedals that were taught, when the next session is."""

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from PySide6.QtCore import QDate, QLocale, QTime

from app.domain.errors import PacewrightError
from app.domain.planned import Occurrence
from app.planfile.key_settings import PedalKeys
from app.views.athlete.around import Around
from app.views.translation import tr

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.house import House
    from app.views.worker import RecordKeeper


class Surroundings:
    """Looks up what is beside a run. `told` is given the next session in words once the record says it."""

    def __init__(self, house: "House", keeper: "RecordKeeper", told: Callable[[str], object]) -> None:
        self._house, self._keeper, self._told = house, keeper, told
        self._next: str | None = None

    def look_ahead(self, athlete: str) -> None:
        """Ask the record when the athlete trains next after today."""
        self._next = None
        if self._house.stamp is None:
            return
        now, zone = self._house.stamp()
        tonight = now.astimezone(ZoneInfo(zone)).replace(hour=23, minute=59, second=59)
        self._keeper.ask(_next_of(athlete, tonight), self._hear)

    def around(self, back: Callable[[], object] | None, *, key_just_pressed: bool) -> Around:
        """What is beside the run now."""
        known = Around(make_trial=self._house.trial, back=back, key_just_pressed=key_just_pressed)
        keep = self._house.keep_pedals
        return replace(known, pedals=self._pedals(), keep_pedals=keep, next_session=self._next)

    def _pedals(self) -> PedalKeys:
        try:
            return self._house.read_settings().keys
        except PacewrightError:
            return PedalKeys()

    def _hear(self, occurrence: Occurrence | None) -> None:
        if occurrence is not None:
            self._next = in_words(occurrence)
            self._told(self._next)


def _next_of(athlete: str, moment: datetime) -> "Callable[[Database], Occurrence | None]":
    return lambda database: database.planned.next_of(athlete, moment)


def in_words(occurrence: Occurrence) -> str:
    """Day, time of day where it is planned, and plan, in the language of the screens."""
    locale, day, clock = QLocale(), occurrence.day, occurrence.planned.clock
    date = locale.toString(QDate(day.year, day.month, day.day), "dddd d MMMM")
    if clock is None:
        return tr("{day}, {plan}").format(day=date, plan=occurrence.planned.plan_title)
    time = locale.toString(QTime(clock.hour, clock.minute), QLocale.FormatType.ShortFormat)
    return tr("{day}, {time}, {plan}").format(day=date, time=time, plan=occurrence.planned.plan_title)
