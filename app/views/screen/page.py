"""The page of the screen: colours, contrast, motion, text, distance, language, and how all that looks."""

from PySide6.QtCore import Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.planfile.settings import Settings
from app.views.appearance import SystemWish
from app.views.athlete.headline import most_px, wished_px
from app.views.lettering import Weight, arcmin_of, character_px, px_per_mm
from app.views.screen.choices import ScreenChoices
from app.views.screen.sample import SampleView
from app.views.screen.words import measured_words, seen_words, unheard_words
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.choosing import follow_choosing
from app.views.widgets.columns import Columns
from app.views.widgets.plain import label, quiet_button, say, scrolling, strong_button


class ScreenPage(QWidget):
    """Takes a person's choices in the look they make.

    `chosen` carries them as settings at each change, `kept` once they are to stay, `left` when they are to be
    forgotten.
    """

    chosen = Signal(object)
    kept = Signal(object)
    left = Signal()

    def __init__(self, look: Look, desk: Look, settings: Settings, system: SystemWish) -> None:
        super().__init__()
        self._look, self._settings = look, settings
        self.choices = ScreenChoices(look, settings)
        self.choices.changed.connect(lambda: self.chosen.emit(self.choices.put_into(settings)))
        self.sample = SampleView(look, desk)
        self._measured, self._seen, self._unheard, self._notice = (
            label(look, colour=colour, wrap=True)
            for colour in (look.scheme.quiet, look.scheme.ink, look.scheme.quiet, look.scheme.notice)
        )
        say(self._unheard, unheard_words(system))
        self._unheard.setVisible(bool(self._unheard.text()))
        self._notice.hide()
        self._lay_out()

    def measure(self, window_height: int) -> None:
        """Say how large the screen is, and how large the count is on it in a window so high."""
        screen = self.screen()
        size, scale = screen.physicalSize(), px_per_mm(screen)
        pixels = min(wished_px(self._look, window_height, scale), most_px(window_height))
        height_mm = character_px(pixels, self._look.family, Weight.BOLD) / scale
        distance = self._look.distance_m
        say(self._measured, measured_words(size.width(), size.height()))
        say(self._seen, seen_words(distance, height_mm, arcmin_of(height_mm, distance)))

    def show_notice(self, sentence: str) -> None:
        """Say in a sentence that something went wrong."""
        say(self._notice, sentence)
        self._notice.setVisible(bool(sentence))

    def keep(self) -> None:
        """Have the choices kept."""
        self.kept.emit(self._settings)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the button reached, else keeps the choices; Esc forgets them."""
        if not follow_choosing(self, event, self.keep, self.left.emit):
            super().keyPressEvent(event)

    def _lay_out(self) -> None:
        look = self._look
        side = round(look.margin * 0.75)
        row = Columns(((self._chosen(), 7), (self._shown(), 6)), side)
        column = QVBoxLayout(self)
        column.setContentsMargins(side, side, side, round(side * 0.6))
        column.setSpacing(look.sizes.body)
        column.addWidget(label(look, tr("Screen"), pixels=look.sizes.display, weight=Weight.SEMIBOLD))
        column.addWidget(scrolling(row, tr("What may be chosen of the screen")), 1)
        column.addWidget(self._notice)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(quiet_button(look, tr("Leave it as it was  (Esc)"), self.left.emit))
        foot.addWidget(strong_button(look, tr("Keep it  (Enter)"), self.keep))
        column.addLayout(foot)

    def _chosen(self) -> QWidget:
        part = QWidget()
        column = QVBoxLayout(part)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._look.sizes.body)
        column.addWidget(self.choices)
        column.addWidget(self._unheard)
        column.addStretch(1)
        return part

    def _shown(self) -> QWidget:
        part = QWidget()
        column = QVBoxLayout(part)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(self._look.sizes.body)
        column.addWidget(self.sample)
        column.addWidget(self._measured)
        column.addWidget(self._seen)
        column.addStretch(1)
        return part
