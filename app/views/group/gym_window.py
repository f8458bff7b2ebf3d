"""The gym screen's own window: full screen on the monitor the coach chose, wherever that goes."""

from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QCloseEvent, QGuiApplication, QIcon, QResizeEvent, QScreen
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.domain.group import GroupSession
from app.run.room import RoomState
from app.views.group.gym_page import GymPage
from app.views.lettering import px_per_mm
from app.views.theme import Look
from app.views.translation import tr

LookOf = Callable[[int], Look]
"""Gives the look for a window so many pixels high."""
REBUILD_AFTER_MS = 120
WITHOUT_MONITOR = 0.6
"""Share of the only monitor that the window takes, so as not to hide the console."""


def monitor_name(screen: QScreen) -> str:
    """What a monitor is called to a person: maker, model and place of its plug."""
    words = (screen.manufacturer(), screen.model(), screen.name())
    return " ".join(dict.fromkeys(word for word in words if word))


class GymWindow(QWidget):
    """Shows the room on a monitor; unplugged, it goes on in a window, and returns when the monitor does."""

    def __init__(self, session: GroupSession, look_of: LookOf, icon: QIcon) -> None:
        super().__init__(None, Qt.WindowType.Window)
        self._session, self._look_of = session, look_of
        self._wanted = ""
        self._shown: tuple[RoomState, int] | None = None
        self._page: GymPage | None = None
        self.setWindowTitle(tr("Gym screen"))
        self.setWindowIcon(icon)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSizeConstraint(QVBoxLayout.SizeConstraint.SetNoConstraint)
        self._resized = QTimer(self, singleShot=True, interval=REBUILD_AFTER_MS)
        self._resized.timeout.connect(self._build)
        self._listening = False

    @property
    def crowded(self) -> bool:
        """Whether names or stations are too many to be read at once."""
        return self._page is not None and self._page.crowded

    def put_on(self, screen: QScreen) -> None:
        """Fill a monitor."""
        self._listen(on=True)
        self._wanted = screen.name()
        self.setScreen(screen)
        self.setGeometry(screen.geometry())
        if len(QGuiApplication.screens()) > 1:
            self.showFullScreen()
        else:
            self._beside(screen)

    def show_room(self, state: RoomState, now_ms: int) -> None:
        """Show the room at a clock time."""
        self._shown = state, now_ms
        if self._page is not None and self.isVisible():
            self._page.show_room(state, now_ms)

    def renew(self) -> None:
        """Look as screens are to look now."""
        if self._page is not None:
            self._build()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Build the page anew, with letters to match, once the window has another size for good."""
        super().resizeEvent(event)
        if self._page is None:
            self._build()
        else:
            self._resized.start()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Go; the session goes on without it."""
        self._listen(on=False)
        self._resized.stop()
        event.accept()

    def _listen(self, *, on: bool) -> None:
        """Hear of monitors that come and go, or no longer."""
        application = QGuiApplication.instance()
        if on is self._listening or not isinstance(application, QGuiApplication):
            return
        self._listening = on
        for signal, slot in (
            (application.screenAdded, self._on_added),
            (application.screenRemoved, self._on_removed),
        ):
            if on:
                signal.connect(slot)
            else:
                signal.disconnect(slot)

    def _build(self) -> None:
        old, look = self._page, self._look_of(self.height())
        self._page = GymPage(look, self._session, px_per_mm(self.screen()))
        self._layout.addWidget(self._page)
        if old is not None:
            self._layout.removeWidget(old)
            old.deleteLater()
        if self._shown is not None:
            self._page.show_room(*self._shown)

    def _beside(self, screen: QScreen) -> None:
        """A window of its own, where there is one monitor for all."""
        self.showNormal()
        room = screen.availableGeometry()
        self.resize(round(room.width() * WITHOUT_MONITOR), round(room.height() * WITHOUT_MONITOR))
        self.move(room.topRight().x() - self.width(), room.top())

    def _on_added(self, screen: QScreen) -> None:
        if screen.name() == self._wanted:
            QTimer.singleShot(0, self, self._return)

    def _return(self) -> None:
        """Go to the wanted monitor again, once Qt knows it wholly."""
        screen = next((each for each in QGuiApplication.screens() if each.name() == self._wanted), None)
        if screen is not None and self._listening:
            self.put_on(screen)

    def _on_removed(self, screen: QScreen) -> None:
        if screen.name() != self._wanted:
            return
        remaining = [other for other in QGuiApplication.screens() if other is not screen]
        if remaining:
            self.setScreen(remaining[0])
            self._beside(remaining[0])
