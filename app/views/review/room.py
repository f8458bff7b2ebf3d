"""The room of the review: squad, athlete, run, all sessions, one at a time; the answer to why beside."""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from enum import Enum

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QCloseEvent, QKeyEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from app.views.lettering import desk_scale
from app.views.review.athlete.page import AthletePage, Door
from app.views.review.athlete.spans import Stretch
from app.views.review.athlete.view import AthleteView
from app.views.review.figure_words import PAINFUL
from app.views.review.page import ReviewPage
from app.views.review.run.page import RunPage
from app.views.review.run.view import RunView
from app.views.review.squad.line import SquadLine
from app.views.review.squad.page import SquadPage
from app.views.review.why_panel import WhyPanel
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.outlines import outline_fields
from app.views.widgets.plain import quiet_button

BACK_TO_START = message("← Start  (Esc)")
BACK_TO_SQUAD = message("← Squad  (Esc)")
BACK_TO_ATHLETE = message("← Athlete  (Esc)")
BACK_TO_SESSIONS = message("← Sessions  (Esc)")


class Place(Enum):
    """Which page is seen."""

    SQUAD = "squad"
    ATHLETE = "athlete"
    RUN = "run"
    SESSIONS = "sessions"


def _nothing(*_said: object) -> None:
    """Somebody who asks nothing."""


@dataclass(frozen=True, slots=True)
class Asks:
    """What the room asks for; each answer comes at once or later through the method of its name's end.

    `squad` through `show_squad`; `athlete` (name, stretch, whether with pain) through `show_athlete`; `run`
    (its UUID) through `show_run`; `sessions` through the page of all sessions. `correct` opens the dialog for
    a run, `leave` goes back to the start. `doors` are the actions on an athlete's page; `plan` plans sessions
    from the squad, first for the athlete it is given; `reference` lets their reference side be chosen.
    """

    squad: Callable[[], object] = _nothing
    athlete: Callable[[str, Stretch, bool], object] = _nothing
    run: Callable[[str], object] = _nothing
    sessions: Callable[[], None] = _nothing
    leave: Callable[[], object] = _nothing
    correct: Callable[[str, Look], None] | None = None
    doors: tuple[Door, ...] = field(default=())
    plan: Callable[[str], object] | None = None
    reference: Callable[[str], object] | None = None


class ReviewRoom(QWidget):
    """Holds the pages and the way between them.

    Esc and Backspace go back, F8 begins to present or ends it, F5 reads anew.
    """

    def __init__(self, look: Look, asks: Asks, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look, self._asks = look, asks
        self._presenting = False
        self._trail: list[Place] = [Place.SQUAD]
        self.setAccessibleName(tr("Review"))
        self.setAutoFillBackground(True)
        self.setPalette(palette(look.scheme))
        self.squad = SquadPage(look)
        self.athlete = AthletePage(look, asks.doors)
        self.run = RunPage(look)
        self.sessions = ReviewPage(look, asks.sessions, asks.correct)
        self.why = WhyPanel(look, self)
        self.why.hide()
        self.back: QPushButton = quiet_button(look, tr(BACK_TO_START), self.go_back)
        self._pages = QStackedWidget()
        self._lay_out()
        self._connect()
        application = QCoreApplication.instance()
        if application:
            application.aboutToQuit.connect(self.close_charts)

    @property
    def place(self) -> Place:
        """The page that is seen."""
        return self._trail[-1]

    @property
    def presenting(self) -> bool:
        """Whether pain, notes and the names of others are hidden."""
        return self._presenting

    def show_squad(self, lines: tuple[SquadLine, ...]) -> None:
        """Take the lines of the squad."""
        self.squad.show_lines(lines)

    def show_athlete(self, view: AthleteView) -> None:
        """Take what was worked out of an athlete; what was asked for with pain is not shown without."""
        if view.pain is not self._presenting:
            self.athlete.show_view(view, correcting=self._correcting)

    def show_run(self, view: RunView) -> None:
        """Take a run."""
        if self.place is Place.RUN:
            self.run.show_view(view, pain=not self._presenting, correcting=self._correcting)

    def open_athlete(self, name: str) -> None:
        """Go to the page of an athlete."""
        self.athlete.begin(name)
        self._go(Place.ATHLETE)
        self._ask_athlete()

    def open_run(self, run_id: str) -> None:
        """Go to the page of a run."""
        self.run.begin()
        self._go(Place.RUN)
        self._asks.run(run_id)

    def open_sessions(self) -> None:
        """Go to the list of all sessions."""
        self._go(Place.SESSIONS)

    def follow(self, other: "ReviewRoom") -> None:
        """Go where another room stands, the way it went there."""
        self.athlete.range.show_stretch(other.athlete.range.stretch)
        for place in other._trail[1:]:  # noqa: SLF001 - its own kind
            if place is Place.ATHLETE:
                self.open_athlete(other.athlete.athlete)
            elif place is Place.SESSIONS:
                self.open_sessions()
            elif other.run.view is not None:
                self.open_run(other.run.view.header.run_id)

    def go_back(self) -> None:
        """Close the answer to why, else go back a page, else leave."""
        if self.why.isVisible():
            self._close_why()
        elif len(self._trail) > 1:
            self._trail.pop()
            self._show_place()
            self.refresh()
        else:
            self._asks.leave()

    def refresh(self) -> None:
        """Ask again for what is seen."""
        if self.place is Place.SQUAD:
            self._asks.squad()
        elif self.place is Place.ATHLETE:
            self._ask_athlete()
        elif self.place is Place.SESSIONS:
            self._asks.sessions()
        elif self.run.view is not None:
            self._asks.run(self.run.view.header.run_id)

    def present(self, *, on: bool) -> None:
        """Hide pain, notes and the names of others, or show them again."""
        if on == self._presenting:
            return
        self._presenting = on
        self._close_why()
        self.squad.present(on=on)
        for door in self.athlete.doors:
            door.setVisible(not on)
        self._offer_reference()
        self.sessions.present(on=on)
        if self.run.view is not None:
            self.run.show_view(self.run.view, pain=not on, correcting=self._correcting)
        if self.athlete.athlete:
            self.athlete.begin(self.athlete.athlete)
            self._ask_athlete()

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._look = look
        self.setPalette(palette(look.scheme))
        outline_fields(self, look.scheme)
        for page in (self.squad, self.athlete, self.run, self.why):
            page.set_look(look)

    def close_charts(self) -> None:
        """Let go of the drawings before the program ends."""
        self.athlete.close_plots()
        self.sessions.close_charts()

    def showEvent(self, event: QShowEvent) -> None:
        """Ask for what is seen as it is now."""
        super().showEvent(event)
        if not event.spontaneous():
            self.refresh()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Let go of the drawings."""
        self.close_charts()
        super().closeEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let the letters grow with the window."""
        super().resizeEvent(event)
        sizes = desk_scale(self.width(), self._look.text)
        if sizes != self._look.sizes:
            self.set_look(replace(self._look, sizes=sizes))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc and Backspace go back, F8 presents, F5 reads anew."""
        acts: dict[int, Callable[[], None]] = {
            Qt.Key.Key_Escape: self.go_back,
            Qt.Key.Key_Backspace: self.go_back,
            Qt.Key.Key_F8: lambda: self.present(on=not self._presenting),
            Qt.Key.Key_F5: self.refresh,
        }
        leaves_full_screen = event.key() == Qt.Key.Key_Escape and self.window().isFullScreen()
        if event.key() in acts and not leaves_full_screen:
            acts[event.key()]()
        else:
            super().keyPressEvent(event)

    @property
    def _correcting(self) -> bool:
        return self._asks.correct is not None

    @property
    def _page(self) -> QWidget:
        return {
            Place.SQUAD: self.squad,
            Place.ATHLETE: self.athlete,
            Place.RUN: self.run,
            Place.SESSIONS: self.sessions,
        }[self.place]

    def _lay_out(self) -> None:
        for page in (self.squad, self.athlete, self.run, self.sessions):
            self._pages.addWidget(page)
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(self._pages, 1)
        beside = QVBoxLayout()
        beside.setContentsMargins(0, 0, 16, 16)
        beside.addWidget(self.why)
        row.addLayout(beside)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.back, 0, Qt.AlignmentFlag.AlignLeft)
        column.addLayout(row, 1)
        self.setFocusProxy(self.squad)

    def _connect(self) -> None:
        self.squad.opened.connect(self.open_athlete)
        if self._asks.plan is not None:
            self.squad.plan.connect(self._asks.plan)
            self.squad.offer_planning()
        if self._asks.reference is not None:
            self.athlete.reference.connect(self._asks.reference)
        self._offer_reference()
        self.squad.sessions.connect(self.open_sessions)
        for page in (self.athlete, self.sessions):
            page.opened.connect(self.open_run)
        self.athlete.stretched.connect(self._ask_athlete)
        self.athlete.correct.connect(self._correct)
        self.run.correct.connect(self._correct)
        for asking in (self.squad.why, self.athlete.why, self.run.why):
            asking.connect(self._explain)
        self.why.closed.connect(self._close_why)

    def _ask_athlete(self, _stretch: Stretch | None = None) -> None:
        self._asks.athlete(self.athlete.athlete, self.athlete.range.stretch, not self._presenting)

    def _go(self, place: Place) -> None:
        self._trail.append(place)
        self._show_place()

    def _show_place(self) -> None:
        self._close_why()
        self._pages.setCurrentWidget(self._page)
        before = self._trail[-2] if len(self._trail) > 1 else None
        told = {
            None: BACK_TO_START,
            Place.SQUAD: BACK_TO_SQUAD,
            Place.ATHLETE: BACK_TO_ATHLETE,
            Place.SESSIONS: BACK_TO_SESSIONS,
            Place.RUN: BACK_TO_SESSIONS,
        }[before]
        self.back.setText(tr(told))
        self.back.setAccessibleName(tr(told))
        self.setFocusProxy(self._page)
        self._page.setFocus()

    def _explain(self, heading: str, figures: object) -> None:
        if isinstance(figures, tuple):
            hidden = PAINFUL if self._presenting else frozenset()
            self.why.explain(heading, [each for each in figures if each.name not in hidden])
            self.why.show()
            self.why.setFocus()

    def _close_why(self) -> None:
        if self.why.isVisible():
            self.why.hide()
            self._page.setFocus()

    def _offer_reference(self) -> None:
        """Nothing is chosen while others look on: the history has names."""
        self.athlete.board.offer_reference(on=self._asks.reference is not None and not self._presenting)

    def _correct(self, run_id: str) -> None:
        if self._asks.correct is not None:
            self._asks.correct(run_id, self._look)
