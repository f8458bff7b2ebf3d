"""The sound's pages in one place: the choices, and beyond them sound and picture set together."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QStackedWidget

from app.domain.errors import PacewrightError
from app.planfile.settings import Settings
from app.planfile.settings_edit import Changes, sound_changes
from app.views.calibration import CalibrationPage
from app.views.house import House
from app.views.sound.page import SoundPage
from app.views.theme import Look
from app.views.ticker import Ticker

if TYPE_CHECKING:
    from app.audio.speaker.port import Speaker


class SoundRoom(QStackedWidget):
    """Shows the choices, writes those that are kept, and opens and leaves the calibration.

    `left` is emitted when the person is done. Raises FileProblemsError when the settings are not in order.
    """

    left = Signal()

    def __init__(self, look: Look, house: House) -> None:
        super().__init__()
        self._look, self._house = look, house
        self._settings = house.read_settings()
        self._ticker = Ticker(self)
        self._beating: tuple[CalibrationPage, Speaker] | None = None
        self._page = SoundPage(look, self._settings, house.overrule, house.list_devices, house.make_trial)
        self._page.kept.connect(self._keep)
        self._page.calibrate.connect(self._calibrate)
        self._page.left.connect(self.left)
        self.addWidget(self._page)
        self.setFocusProxy(self._page)

    def end(self) -> None:
        """Be silent, and let every device go."""
        self._leave_calibration()
        self._page.end()

    def _keep(self, chosen: Settings) -> None:
        if self._write(sound_changes(self._settings, chosen)):
            self.left.emit()

    def _write(self, changes: Changes) -> bool:
        try:
            if changes:
                self._house.save_settings(changes)
        except PacewrightError as error:
            self._page.show_notice(str(error))
            return False
        return True

    def _calibrate(self, chosen: Settings) -> None:
        speaker, clock = self._house.try_speaker(chosen), self._house.make_clock()
        page = CalibrationPage(self._look, clock, speaker, self._save_latency)
        page.left.connect(self._leave_calibration)
        self._beating = page, speaker
        self._ticker.tick.connect(page.refresh)
        self._ticker.start()
        self.addWidget(page)
        self.setCurrentWidget(page)
        page.setFocus()

    def _save_latency(self, speaker: str, ms: int) -> None:
        if self._write({("latency", speaker, "ms"): ms}):
            self._page.show_latency(speaker, ms)

    def _leave_calibration(self) -> None:
        if self._beating is None:
            return
        (page, speaker), self._beating = self._beating, None
        self._ticker.stop()
        self._ticker.tick.disconnect(page.refresh)
        speaker.stop()
        speaker.close()
        self.setCurrentWidget(self._page)
        self._page.setFocus()
        self.removeWidget(page)
        page.deleteLater()
