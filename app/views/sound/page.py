"""The page of the sound: what plays it, how much is said in which language, how loud, and a test of it."""

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QHideEvent, QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.planfile.settings import Settings
from app.views.errands import Errands
from app.views.lettering import Weight
from app.views.sound.choices import SoundChoices
from app.views.sound.words import latency_words, overruled_words
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.choosing import follow_choosing
from app.views.widgets.columns import Columns
from app.views.widgets.plain import card, label, quiet_button, say, scrolling, strong_button

if TYPE_CHECKING:
    from app.audio.trial import Heard, Trial

TEST, STOP_TEST = message("Test"), message("Stop the test")


class SoundPage(QWidget):
    """Takes a person's choices; what is kept of them is for others to write.

    `kept` and `calibrate` carry the choices as settings, `left` says that they are to be forgotten.
    """

    kept = Signal(object)
    calibrate = Signal(object)
    left = Signal()

    def __init__(
        self,
        look: Look,
        settings: Settings,
        overrule: Callable[[Settings], Settings],
        list_devices: Callable[[], tuple[str, ...]],
        make_trial: "Callable[[Settings], Trial]",
    ) -> None:
        super().__init__()
        self._look, self._settings = look, settings
        self._overrule, self._list_devices, self._make_trial = overrule, list_devices, make_trial
        self._trial: Trial | None = None
        self._looks, self._trials = Errands("sound devices", self), Errands("sound trial", self)
        self._choices = SoundChoices(look, settings, self.look_for_devices)
        self._choices.changed.connect(self._say_overruled)
        self._test = strong_button(look, tr(TEST), self.test)
        self._told = label(look, pixels=look.sizes.heading, wrap=True)
        self._notice = label(look, colour=look.scheme.notice, wrap=True)
        self._overruled = label(look, colour=look.scheme.notice, wrap=True)
        self._latency = label(look, colour=look.scheme.quiet, wrap=True)
        self._lay_out()
        self._say_overruled()
        self.look_for_devices()

    @property
    def chosen(self) -> Settings:
        """The settings as chosen here."""
        return self._choices.put_into(self._settings)

    def show_notice(self, sentence: str) -> None:
        """Say in a sentence that something went wrong."""
        say(self._notice, sentence)

    def show_latency(self, speaker: str, ms: int) -> None:
        """Take it that the sound of a speaker comes so late."""
        known = {**self._settings.latency_ms, speaker: ms}
        self._settings = replace(self._settings, latency_ms=known)
        say(self._latency, latency_words(speaker, ms))

    def look_for_devices(self) -> None:
        """Look which outputs there are, away from the screen's thread."""
        self._choices.show_looking()
        self._looks.run(self._list_devices, self._choices.show_devices)

    def test(self) -> None:
        """Play the invented bout with what is chosen, or stop it."""
        if self._trial is not None:
            self._trial.stop()
            return
        trial = self._trial = self._make_trial(self.chosen)
        self._say_test(STOP_TEST)
        say(self._told, tr("Getting ready…"))
        self._trials.run(trial.begin, partial(self._show_heard, muted=self.chosen.mute))
        self._trials.run(trial.wait, lambda _nothing: self._end_test())

    def end(self) -> None:
        """Stop what plays, and wait for nothing any more."""
        if self._trial is not None:
            self._trial.stop()
        self._looks.close()
        self._trials.close()

    def keep(self) -> None:
        """Have the choices kept."""
        self.kept.emit(self.chosen)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the button reached, else keeps the choices; Esc forgets them."""
        if not follow_choosing(self, event, self.keep, self.left.emit):
            super().keyPressEvent(event)

    def hideEvent(self, event: QHideEvent) -> None:
        """Stop the test when the page is left."""
        super().hideEvent(event)
        if self._trial is not None:
            self._trial.stop()

    def _show_heard(self, heard: "Heard", *, muted: bool) -> None:
        say(self._told, _heard_words(heard, muted=muted))
        self.show_notice("\n".join(heard.notices))

    def _end_test(self) -> None:
        self._trial = None
        self._say_test(TEST)

    def _say_test(self, words: str) -> None:
        self._test.setText(tr(words))
        self._test.setAccessibleName(tr(words))

    def _say_overruled(self) -> None:
        chosen = self.chosen
        say(self._overruled, overruled_words(chosen, self._overrule(chosen)))

    def _lay_out(self) -> None:
        look = self._look
        side = look.margin
        column = QVBoxLayout(self)
        column.setContentsMargins(side, side, side, round(side * 0.6))
        column.setSpacing(look.sizes.body)
        column.addWidget(label(look, tr("Sound"), pixels=look.sizes.display, weight=Weight.SEMIBOLD))
        columns = Columns(((self._choices, 7), (self._trying(), 5)), side)
        column.addWidget(scrolling(columns, tr("What may be chosen of the sound")), 1)
        column.addWidget(self._overruled)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(quiet_button(look, tr("Leave it as it was  (Esc)"), self.left.emit))
        foot.addWidget(strong_button(look, tr("Keep it  (Enter)"), self.keep))
        column.addLayout(foot)

    def _trying(self) -> QWidget:
        look = self._look
        frame = card(look)
        inner = QVBoxLayout(frame)
        edge = round(look.sizes.body * 1.8)
        inner.setContentsMargins(edge, edge, edge, edge)
        inner.setSpacing(look.sizes.body)
        about = tr("A rep on the left, then one on the right: lower, hold, lift. Played as chosen here.")
        inner.addWidget(label(look, tr("Hear it"), pixels=look.sizes.heading, weight=Weight.SEMIBOLD))
        inner.addWidget(label(look, about, wrap=True))
        inner.addWidget(self._test)
        inner.addWidget(self._told)
        inner.addWidget(self._notice)
        inner.addSpacing(look.sizes.body)
        together = quiet_button(
            look, tr("Set sound and picture together…"), lambda: self.calibrate.emit(self.chosen)
        )
        inner.addWidget(together)
        inner.addWidget(self._latency)
        part = QWidget()
        outer = QVBoxLayout(part)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(frame)
        outer.addStretch(1)
        return part


def _heard_words(heard: "Heard", *, muted: bool) -> str:
    if muted:
        return tr("Muted: nothing is heard of it.")
    return tr("Plays through {speaker}.").format(speaker=heard.speaker)
