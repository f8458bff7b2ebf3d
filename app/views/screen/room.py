"""The room of the screen: what is chosen takes effect at once, and stays only when it is kept."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QHideEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QStackedWidget, QWidget

from app.domain.errors import PacewrightError
from app.planfile.settings import Settings
from app.planfile.settings_edit import screen_changes
from app.views.appearance import Appearance
from app.views.house import House
from app.views.screen.page import ScreenPage
from app.views.ticker import Ticker

if TYPE_CHECKING:
    from app.audio.clocks import Clock


class ScreenRoom(QStackedWidget):
    """Shows the choices in the look they make, and writes those that are kept.

    `within` is the window it is shown in. `left` is emitted when the person is done. Raises FileProblemsError
    when the settings are not in order.
    """

    left = Signal()

    def __init__(self, appearance: Appearance, house: House, within: QWidget) -> None:
        super().__init__()
        self._within = within
        self._appearance, self._house = appearance, house
        self._before = house.read_settings()
        self._clock: Clock = house.make_clock()
        self._ticker = Ticker(self)
        self._ticker.tick.connect(self._refresh)
        self._page: ScreenPage | None = None
        appearance.changed.connect(self._build)
        appearance.take(self._before)
        if self._page is None:
            self._build()

    def end(self) -> None:
        """Let everything be again as it is kept."""
        self._ticker.stop()
        self._appearance.changed.disconnect(self._build)
        self._appearance.take(self._before)

    def showEvent(self, event: QShowEvent) -> None:
        """Let the sample move."""
        super().showEvent(event)
        self._ticker.start()
        self._measure()

    def hideEvent(self, event: QHideEvent) -> None:
        """Let the sample stand."""
        super().hideEvent(event)
        self._ticker.stop()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let the letters grow with the window."""
        old = event.oldSize().height()
        super().resizeEvent(event)
        if old > 0 and old != self.height():
            self._build()

    def _build(self) -> None:
        """Show the page anew in the look that holds now, the keys going to the same row."""
        old, appearance = self._page, self._appearance
        high, wide = self._within.height(), self._within.width()
        page = ScreenPage(
            appearance.training(high), appearance.desk(wide), appearance.settings, appearance.system
        )
        page.chosen.connect(appearance.take)
        page.kept.connect(self._keep)
        page.left.connect(self.left)
        self._page = page
        self.addWidget(page)
        self.setCurrentWidget(page)
        self.setFocusProxy(page.choices)
        page.choices.reach(None if old is None else old.choices.reached)
        if old is not None:
            self.removeWidget(old)
            old.deleteLater()
        self._measure()

    def _measure(self) -> None:
        if self._page is not None:
            self._page.measure(self._within.height())

    def _refresh(self) -> None:
        if self._page is not None:
            self._page.sample.show_moment(self._clock.now_ms())

    def _keep(self, chosen: Settings) -> None:
        changes = screen_changes(self._before, chosen)
        try:
            if changes:
                self._house.save_settings(changes)
        except PacewrightError as error:
            if self._page is not None:
                self._page.show_notice(str(error))
            return
        self._before = chosen
        self.left.emit()
