"""The way into the review: the passphrase where there is one, the room, what it asks, corrections from it."""

from collections.abc import Callable
from datetime import UTC, datetime
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.analysis.local_time import known_zone
from app.domain.keeping import Person
from app.domain.records import RunSummary
from app.views.theme import Look, palette
from app.views.widgets.plain import scrolling

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.house import House
    from app.views.review.athlete.page import Door
    from app.views.review.athlete.spans import Stretch
    from app.views.review.room import ReviewRoom
    from app.views.worker import RecordKeeper


class Reviewing:
    """Owns the review once it was opened. `frame` is what the window shows of it, None before.

    `doors` are the actions on an athlete's page, each given the athlete's name; they hold from the next time
    the review is built.
    """

    def __init__(self, house: "House", keeper: "RecordKeeper", leave: Callable[[], object]) -> None:
        self._house, self._keeper, self._leave = house, keeper, leave
        self._room: ReviewRoom | None = None
        self.frame: QWidget | None = None
        self.doors: tuple[Door, ...] = ()

    def enter(self, look: Look, window: QWidget, show: Callable[[QWidget], object]) -> None:
        """Have the frame shown, at once or once the passphrase was said. Raises FileProblemsError."""
        from app.views.review.curtain import pass_curtain

        settings = self._house.overrule(self._house.read_settings())
        enter = partial(self._show, look, window, show, presenting=settings.presentation)
        pass_curtain(settings.passphrase, look, window, enter)

    def turn(self) -> None:
        """Begin to present, or end it, while the review is seen."""
        if self._room is not None and self._room.isVisible():
            self._room.present(on=not self._room.presenting)

    def refresh(self) -> None:
        """Ask again for what is seen, as after something was written down."""
        if self._room is not None and self._room.isVisible():
            self._room.refresh()

    def renew(self, look: Look, window: QWidget, show: Callable[[QWidget], object]) -> None:
        """Let the review go; while it is seen, have one in another look shown, on the same page."""
        frame, room = self.frame, self._room
        self.frame = self._room = None
        if frame is None or room is None:
            return
        seen = frame.isVisible()
        room.close_charts()
        if seen:
            self._show(look, window, show, presenting=room.presenting, like=room)
        frame.setParent(None)
        frame.deleteLater()

    def _show(
        self,
        look: Look,
        window: QWidget,
        show: Callable[[QWidget], object],
        *,
        presenting: bool,
        like: "ReviewRoom | None" = None,
    ) -> None:
        from app.views.review.deeds import athlete_deeds
        from app.views.review.room import Asks, ReviewRoom

        if self.frame is None:
            deeds = athlete_deeds(self._house, self._keeper, look, window, self.refresh)
            asks = Asks(
                self._ask_squad,
                self._ask_athlete,
                self._ask_run,
                self._ask_sessions,
                self._leave,
                self._correct_with(window),
                (*deeds.doors, *self.doors),
                deeds.plan,
                deeds.reference,
            )
            room = self._room = ReviewRoom(look, asks)
            room.present(on=presenting)
            self.frame = scrolling(room, room.accessibleName(), sideways=True)
            self.frame.setPalette(palette(look.scheme))
            self.frame.setAutoFillBackground(True)
            self.frame.setFocusProxy(room)
        show(self.frame)
        if like is not None and self._room is not None:
            self._room.follow(like)

    def _ask_squad(self) -> None:
        from app.views.review.questions import read_squad

        room, now = self._room, self._now()
        if room is not None:
            self._keeper.ask(lambda database: read_squad(database, now), room.show_squad)

    def _ask_athlete(self, name: str, stretch: "Stretch", pain: bool) -> None:
        from app.views.review.questions import read_athlete

        room, today = self._room, self._now().date()
        if room is not None:
            self._keeper.ask(
                lambda database: read_athlete(database, name, stretch, today, pain=pain), room.show_athlete
            )

    def _ask_run(self, run_id: str) -> None:
        from app.views.review.questions import read_run

        room, parse = self._room, self._house.parse_plan
        if room is not None:
            self._keeper.ask(lambda database: read_run(database, run_id, parse), room.show_run)

    def _ask_sessions(self) -> None:
        room = self._room
        if room is not None:
            self._keeper.ask(_people, room.sessions.show_people)
            self._keeper.ask(_summaries, room.sessions.show_summaries)

    def _now(self) -> datetime:
        """The present moment by the clock of this place."""
        if self._house.stamp is None:
            return datetime.now(UTC).astimezone()
        moment, zone = self._house.stamp()
        return moment.astimezone(known_zone(zone))

    def _correct_with(self, window: QWidget) -> Callable[[str, Look], None] | None:
        from app.views.review.correcting import Correcting

        if self._house.stamp is None:
            return None
        correcting = Correcting(self._keeper, self._house.stamp, self.refresh)
        return lambda run_id, look: correcting.open(run_id, look, window)


def _people(database: "Database") -> tuple[Person, ...]:
    return database.answers.people()


def _summaries(database: "Database") -> tuple[RunSummary, ...]:
    return database.queries.run_summaries()
