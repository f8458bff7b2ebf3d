"""A short check of the sound as it is set: a button, and in words what was heard."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QHideEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.domain.errors import PacewrightError
from app.views.errands import Errands
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import label, quiet_button, say

if TYPE_CHECKING:
    from app.audio.trial import Heard, Trial


class SoundCheck(QWidget):
    """Plays the invented bout once when it is asked to; silent as soon as it is out of sight."""

    def __init__(self, look: Look, make_trial: "Callable[[], Trial]") -> None:
        super().__init__()
        self._make_trial = make_trial
        self._trial: Trial | None = None
        self._errands: Errands | None = None
        self._button = quiet_button(look, "", self.test)
        self._told = label(look, colour=look.scheme.quiet, wrap=True)
        self._told.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._button, 0, Qt.AlignmentFlag.AlignLeading)
        column.addWidget(self._told)
        self._name_button()

    def test(self) -> None:
        """Play, or stop what plays."""
        if self._trial is not None:
            self._trial.stop()
            return
        try:
            trial = self._trial = self._make_trial()
        except PacewrightError as error:
            self._say(str(error))
            return
        if self._errands is None:
            self._errands = Errands("sound check", self)
        self._name_button()
        self._say(tr("Listen: left, then right."))
        self._errands.run(lambda: _played(trial), self._show_heard)

    def hideEvent(self, event: QHideEvent) -> None:
        """Be silent, and wait for nothing any more."""
        super().hideEvent(event)
        if self._trial is not None:
            self._trial.stop()
        if self._errands is not None:
            self._errands.close()
        self._trial = self._errands = None
        self._say("")
        self._name_button()

    def _show_heard(self, heard: "Heard") -> None:
        self._trial = None
        self._name_button()
        played = tr("Played through {speaker}. Nothing heard? See Sound on the first page.")
        self._say("\n".join((played.format(speaker=heard.speaker), *heard.notices)))

    def _say(self, words: str) -> None:
        say(self._told, words)
        self._told.setVisible(bool(words))

    def _name_button(self) -> None:
        words = tr("Test the sound") if self._trial is None else tr("Stop the test")
        self._button.setText(words)
        self._button.setAccessibleName(words)


def _played(trial: "Trial") -> "Heard":
    heard = trial.begin()
    trial.wait()
    return heard
