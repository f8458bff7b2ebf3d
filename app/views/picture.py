"""Draws a screen into a picture file, without a display and without waiting for the moment to come."""

import os
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING

from app.domain.errors import PacewrightError
from app.domain.plan import WrittenPlan
from app.domain.records import Fact
from app.domain.timeline import Timeline
from app.run.intents import Begin, CountRep, Tick

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from app.store.database import Database
    from app.views.athlete.session import RunSession

NOBODY = "There is nobody called {name} in this record; the names stand in its list of athletes."
STEP_MS = 250
COUNT_EACH_MS = 2_000


class Screen(StrEnum):
    """Which screen is drawn."""

    ATHLETE = "athlete"
    HOME = "home"
    REVIEW = "review"


class HandClock:
    """A clock that is moved by hand."""

    def __init__(self) -> None:
        self.at_ms = 0

    def now_ms(self) -> int:
        """Whole milliseconds, as set."""
        return self.at_ms


def draw_athlete(
    timeline: Timeline, name: str, at_ms: int | None, size: tuple[int, int], fonts: Path, to: Path
) -> None:
    """Draw the athlete's screen `at_ms` after "ready", or before it when that is None.

    Reps at the athlete's own pace are counted one every two seconds. Raises PacewrightError when the file
    cannot be written.
    """
    from app.views.athlete.page import AthletePage
    from app.views.lettering import type_scale
    from app.views.theme import Look, Place, choose

    def build(family: str) -> "QWidget":
        clock = HandClock()
        session = _session(timeline, clock)
        look = Look(choose(Place.TRAINING), family, type_scale(size[1] * 22 / 1080))
        page = AthletePage(look, session, name)
        if at_ms is not None:
            _lead(session, clock, at_ms)
        page.refresh()
        return page

    _draw(build, size, fonts, to)


def draw_review(
    database: "Database", athlete: str | None, now: datetime, size: tuple[int, int], fonts: Path, to: Path
) -> None:
    """Draw the squad of a record at a moment by the clock of its place, or the page of one athlete.

    Raises PacewrightError when the file cannot be written, or nobody has that name.
    """
    from app.views.lettering import desk_scale
    from app.views.review.athlete.spans import Stretch
    from app.views.review.questions import read_athlete, read_squad
    from app.views.review.room import Asks, ReviewRoom
    from app.views.theme import Look, Place, choose

    lines = read_squad(database, now)
    if athlete is not None and athlete not in {line.athlete for line in lines}:
        raise PacewrightError(NOBODY.format(name=athlete))

    def build(family: str) -> "QWidget":
        room = ReviewRoom(Look(choose(Place.DESK), family, desk_scale(size[0])), Asks())
        room.show_squad(lines)
        if athlete is not None:
            room.open_athlete(athlete)
            room.show_athlete(read_athlete(database, athlete, Stretch(), now.date(), pain=True))
        return room

    _draw(build, size, fonts, to)


@dataclass(frozen=True, slots=True)
class Club:
    """Who may train, who does, and the plans there are, each read by `read`."""

    names: Sequence[str]
    athlete: str | None
    plans: Sequence[Path]
    read: Callable[[Path], WrittenPlan]


def draw_home(club: Club, today: date, size: tuple[int, int], fonts: Path, to: Path) -> None:
    """Draw the first page of a day without a record. Raises PacewrightError when it cannot be written."""
    from app.views.home.page import HomePage
    from app.views.home.people import GUEST, everybody
    from app.views.home.plans import PlanShelf, likely, offered_plans
    from app.views.home.state import HomeState
    from app.views.lettering import type_scale
    from app.views.theme import Look, Place, choose, palette

    plans = offered_plans(PlanShelf(club.read), [], [], club.plans)
    best = likely(plans)

    def build(family: str) -> "QWidget":
        look = Look(choose(Place.TRAINING), family, type_scale(size[1] * 22 / 1080))
        page = HomePage(look, ())
        page.setPalette(palette(look.scheme))
        chosen = None if best is None else best.path
        people = everybody(club.names, ())
        page.show_state(HomeState(today, people, club.athlete or GUEST, plans, chosen))
        return page

    _draw(build, size, fonts, to)


def _session(timeline: Timeline, clock: HandClock) -> "RunSession":
    from app.audio.speaker.silent import SilentSpeaker
    from app.run.sounding import NoSound
    from app.views.athlete.session import RunSession

    def forget(_first: int, _facts: Sequence[Fact]) -> None:
        """A picture leaves no record."""

    speaker = SilentSpeaker()
    return RunSession(timeline, clock, speaker, NoSound(), forget)


def _lead(session: "RunSession", clock: HandClock, at_ms: int) -> None:
    session.act(Begin())
    counted_ms = 0
    while clock.at_ms < at_ms:
        clock.at_ms = min(clock.at_ms + STEP_MS, at_ms)
        counts = clock.at_ms - counted_ms >= COUNT_EACH_MS
        session.act(CountRep() if counts else Tick())
        counted_ms = clock.at_ms if counts else counted_ms


def _draw(build: "Callable[[str], QWidget]", size: tuple[int, int], fonts: Path, to: Path) -> None:
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    from app.views.application import make_application
    from app.views.lettering import load_fonts

    application = make_application(["pacewright"])
    page = build(load_fonts(fonts))
    page.resize(*size)
    page.grab()
    application.processEvents()
    saved = page.grab().save(str(to), "PNG")
    page.close()
    page.deleteLater()
    application.processEvents()
    if not saved:
        raise PacewrightError(f"{to} cannot be written; name a file in a folder that exists and is yours.")
