"""Behind the first page: keeps its state while pages come and go, asks the record, writes answers."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from zoneinfo import ZoneInfo

from PySide6.QtCore import QObject, QTimer, Signal

from app.domain.squad import OwedKind, OwedRating
from app.views.home.owed_card import LateAnswer
from app.views.home.page import HomePage
from app.views.home.people import GUEST, everybody
from app.views.home.plans import PlanShelf, likely, offered_plans
from app.views.home.record import (
    HomeRecord,
    due_now,
    keep_pain,
    keep_rpe,
    read_home,
    unasked_name,
)
from app.views.home.state import Door, HomeState, Offer
from app.views.house import House
from app.views.remembered import Remembered
from app.views.theme import Look
from app.views.translation import tr
from app.views.unfinished import Unfinished, latest_unfinished
from app.views.worker import RecordKeeper

LOOK_AGAIN_MS = 60_000
"""So often it is looked whether something is owed by now."""


class Homing(QObject):
    """Builds first pages and keeps what they show.

    `begun` carries a plan's path and a name; `taken_up` and `laid_down` the Unfinished that was offered.
    """

    begun = Signal(object, str)
    taken_up = Signal(object)
    laid_down = Signal(object)

    def __init__(self, house: House, keeper: RecordKeeper, remembered: Remembered, parent: QObject) -> None:
        super().__init__(parent)
        self._house, self._keeper, self._remembered = house, keeper, remembered
        self._shelf = PlanShelf(house.read_plan)
        self._names: tuple[str, ...] = ()
        self._record = HomeRecord((), (), ())
        self._athlete: str | None = None
        self._plan: Path | None = None
        self._handed: Path | None = None
        self._page: HomePage | None = None
        self._unfinished: Unfinished | None = None
        self._sent: set[str] = set()
        self._settled = self._closed = False
        self._again = QTimer(self, interval=LOOK_AGAIN_MS)
        self._again.timeout.connect(self._look_where_seen)

    @property
    def athlete(self) -> str:
        """Who is chosen: as a person did, else who trained last, else the guest."""
        if self._athlete is not None:
            return self._athlete
        trained = self._record.trained
        return trained[0].athlete if trained and trained[0].at is not None else GUEST

    def build(self, look: Look, doors: Sequence[Door]) -> HomePage:
        """Make a page that shows what there is, in place of the one made before."""
        page = self._page = HomePage(look, doors)
        page.begun.connect(self.begun)
        page.athlete_chosen.connect(self.choose_athlete)
        page.plan_chosen.connect(self._choose_plan)
        page.plan_brought.connect(self.bring)
        page.answered.connect(self._answer)
        page.unasked.connect(self._leave_unasked)
        self._show()
        self._offer(self._unfinished)
        return page

    def settle(self, names: Sequence[str], athlete: str | None) -> None:
        """Take who is in the roster and who is wished for, and look at the plans."""
        self._names, self._settled = tuple(names), True
        if athlete is not None:
            self._athlete = athlete
        if gone := self._remembered.drop_missing():
            self._say(tr("%n plan(s) led lately cannot be found any more and left the list.", "", gone))
        self._again.start()
        self._show()

    def look_again(self) -> None:
        """Ask the record what there is by now, a run that was cut short first of all."""
        if self._closed:
            return
        now, here = self._now()
        self._keeper.ask(latest_unfinished, self._offer)
        self._keeper.ask(lambda database: read_home(database, now, here), self._take)

    def _look_where_seen(self) -> None:
        if self._page is not None and self._page.isVisible():
            self.look_again()

    def close(self) -> None:
        """Ask nothing any more."""
        self._closed = True
        self._again.stop()

    def choose_athlete(self, name: str) -> None:
        """Let somebody train; the plan is then the one that is likely for them."""
        if name != self._athlete:
            self._athlete, self._plan = name, self._handed
            self._show()

    def bring(self, path: Path) -> None:
        """Offer a plan that was opened, dropped or handed over, and choose it where it can be led."""
        self._handed = self._plan = path.absolute()
        self._show()

    def led(self, path: Path | None, athlete: str) -> None:
        """Remember that an athlete was led through a plan."""
        if path is not None:
            self._remembered.led(path, athlete)
        self._athlete, self._handed = athlete, None
        self._show()

    def _choose_plan(self, path: Path | None) -> None:
        self._plan = path
        self._show()

    def _offer(self, unfinished: Unfinished | None) -> None:
        self._unfinished = unfinished
        if self._page is None:
            return
        if unfinished is None:
            self._page.offer(None)
            return
        take_up, lay_down = partial(self.taken_up.emit, unfinished), partial(self.laid_down.emit, unfinished)
        self._page.offer(Offer(unfinished.sentence, take_up, lay_down))

    def _say(self, sentence: str) -> None:
        if self._page is not None:
            self._page.show_notice(sentence)

    def _take(self, record: HomeRecord) -> None:
        self._record = record
        self._show()

    def _show(self) -> None:
        if self._page is not None:
            self._page.show_state(self._state())

    def _state(self) -> HomeState:
        now, here = self._now()
        athlete = self.athlete
        state = HomeState(here.date(), everybody(self._names, self._record.trained), athlete)
        if not self._settled:
            return state
        plans = offered_plans(
            self._shelf,
            [session for session in self._record.today if session.athlete == athlete],
            self._remembered.recent(athlete),
            self._house.plans,
            last=self._remembered.last(athlete),
            handed=self._handed,
        )
        ready = {plan.path for plan in plans if plan.figures is not None}
        best = likely(plans)
        plan = self._plan if self._plan in ready else None if best is None else best.path
        owed = due_now(self._record.owed, now, self._remembered.unasked | self._sent, athlete)
        return replace(state, plans=plans, plan=plan, owed=owed)

    def _answer(self, answer: LateAnswer) -> None:
        self._forget(answer.owed)
        now, _ = self._now()
        if answer.owed.kind is OwedKind.SESSION_RPE:
            keep = partial(keep_rpe, answer=answer, now=now)
            self._keeper.ask(keep, partial(self._heard, answer.owed))
        else:
            self._keep_pain(answer, answer.owed)

    def _leave_unasked(self, owed: OwedRating) -> None:
        self._forget(owed)
        if owed.kind is OwedKind.NEXT_MORNING_PAIN:
            self._keep_pain(owed, owed)
        else:
            self._remembered.leave_unasked(unasked_name(owed))

    def _keep_pain(self, answer: LateAnswer | OwedRating, owed: OwedRating) -> None:
        if self._house.stamp is None or self._house.new_id is None:
            return
        at, zone = self._house.stamp()
        keep = partial(keep_pain, answer=answer, name=self._house.new_id(at), at=at, zone=zone)
        self._keeper.ask(keep, partial(self._heard, owed))

    def _heard(self, owed: OwedRating, kept: bool) -> None:
        if not kept:
            self._sent.discard(unasked_name(owed))
            self._say(tr("That answer could not be kept. Please give it again."))
        self.look_again()

    def _forget(self, owed: OwedRating) -> None:
        """Show a question no more once it is answered."""
        self._sent.add(unasked_name(owed))
        self._show()
        if self._page is not None:
            self._page.take_focus()

    def _now(self) -> tuple[datetime, datetime]:
        """The present moment, in UTC and by the clock on the wall."""
        if self._house.stamp is None:
            now = datetime.now(UTC)
            return now, now.astimezone()
        now, zone = self._house.stamp()
        return now, now.astimezone(ZoneInfo(zone))
