"""The gym screen as a whole: before, at work, standing still and afterwards."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from app.domain.group import GroupSession
from app.domain.grouping import Form
from app.run.room import RoomState
from app.run.state import Doing, Stand
from app.views.athlete.header import Header
from app.views.group.band import Crew, RosterBand
from app.views.group.legible import Legible, legible
from app.views.group.names import screen_names
from app.views.group.scene import RoomScene, room_scene
from app.views.group.stations_view import StationsView
from app.views.group.together_view import TogetherView
from app.views.group.wording import FORMS, room_headline
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import label, say


class GymPage(QWidget):
    """Paints the room it is shown; it takes no keys and owns no truth."""

    def __init__(self, look: Look, session: GroupSession, px_per_mm: float) -> None:
        super().__init__()
        self._look, self._session = look, session
        self._names = screen_names([part.athlete for part in session.parts])
        sizes = legible(look, px_per_mm)
        self._announced = ""
        self._header = Header(look)
        self._still = label(look, pixels=look.sizes.display, weight=Weight.BOLD, colour=look.scheme.notice)
        self._still.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self._view: TogetherView | StationsView
        if session.form is Form.STATIONS:
            self._view = StationsView(look, sizes, session)
        else:
            self._view = TogetherView(look, sizes, session.form)
        self._outside = Outside(look, sizes, session)
        self._pages = QStackedWidget()
        self._pages.addWidget(self._outside)
        self._pages.addWidget(self._view)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self._header)
        layout.addWidget(self._still)
        layout.addWidget(self._pages, 1)
        self.setStyleSheet(f"GymPage {{ background: {look.scheme.ground}; }}")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)

    @property
    def pages(self) -> int:
        """On how many pages names or stations take turns; more than one is too many to be read at once."""
        return self._view.pages

    @property
    def crowded(self) -> bool:
        """Whether names or stations are more than can be read across the room at once."""
        return self.pages > 1 or self._view.crowded

    def show_room(self, state: RoomState, now_ms: int) -> None:
        """Show the room at a clock time, its state brought up to that time."""
        scene = room_scene(self._session, state, self._names, now_ms)
        going = scene.leader.stand in (Stand.RUNNING, Stand.PAUSED)
        self._header.setVisible(going and self._session.form is not Form.STATIONS)
        self._still.setVisible(scene.leader.stand is Stand.PAUSED)
        say(self._still, tr("Paused: everybody stays where they are"))
        self._pages.setCurrentWidget(self._view if going else self._outside)
        if going:
            self._header.show_snapshot(scene.leader)
            self._view.show_scene(scene, now_ms)
            self._announce(scene)
        else:
            self._outside.show_scene(scene, now_ms)

    def _announce(self, scene: RoomScene) -> None:
        if scene.leader.doing is Doing.GAP or self._session.form is Form.STATIONS:
            return
        words = room_headline(scene, self._look.scheme).phase_text
        if words != self._announced:
            self._announced = words
            if QAccessible.isActive():
                QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, words))


class Outside(QWidget):
    """Before the session and after it: what it is, and who is here."""

    def __init__(self, look: Look, sizes: Legible, session: GroupSession) -> None:
        super().__init__()
        self._form = session.form
        self._title = FittedLabel(look, pixels=look.sizes.display * 1.4, weight=Weight.SEMIBOLD, lines=2)
        self._line = FittedLabel(look, pixels=look.sizes.title, colour=look.scheme.quiet, lines=2)
        self._band = RosterBand(look, sizes)
        say(self._title, session.leader.plan.title)
        layout = QVBoxLayout(self)
        side = look.margin
        layout.setContentsMargins(side, side, side, side)
        layout.addWidget(self._title)
        layout.addWidget(self._line)
        layout.addStretch(1)
        layout.addWidget(self._band)

    def show_scene(self, scene: RoomScene, now_ms: int) -> None:
        """Show who is here."""
        self._band.fit(self.window().height())
        over = scene.leader.stand is Stand.ENDED
        about = tr("The session is over. Tell your coach how hard it was, and what hurt.")
        say(self._line, about if over else tr(FORMS[self._form]))
        self._band.show_crews((Crew("", scene.people),), now_ms)
