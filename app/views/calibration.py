"""Sound and picture set together: a beat that is heard and seen, shifted until both coincide."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.audio.beat import beat_sound
from app.audio.latency import BEAT_MS, TAPS, latency_from_taps
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import label, quiet_button, say, scrolling, strong_button

if TYPE_CHECKING:
    from app.audio.clocks import Clock
    from app.audio.speaker.port import Speaker

LARGE = 1.25
"""With letters so many times larger than usual, what is explained is scrolled."""
BEATS = 60
STEP_MS, COARSE_MS = 5, 25
MOST_MS = 1_000
LIT_MS = 120
ABOUT = message(
    "Listen and watch: the ring lands when it is lit. Shift the picture with ← and → until sound and "
    "landing are one. Or tap Enter along with the sound sixteen times."
)


class CalibrationPage(QWidget):
    """Plays a beat and shows it `shift` ms later; `save` is given the device's name and the shift.

    `left` is emitted when the person is done. The beat starts anew when it has run out.
    """

    left = Signal()

    def __init__(
        self, look: Look, clock: "Clock", speaker: "Speaker", save: Callable[[str, int], object]
    ) -> None:
        super().__init__()
        self._clock, self._speaker, self._save = clock, speaker, save
        self._shift_ms = speaker.latency_ms
        self._taps: list[int] = []
        self._began_ms = 0
        self._bounce = Bounce(look)
        self._figure = label(look, pixels=look.sizes.display / look.text * 1.4, weight=Weight.BOLD)
        self._device = label(look, colour=look.scheme.quiet)
        self._tapped = label(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        self._notice = label(look, colour=look.scheme.notice, wrap=True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._lay_out(look)
        self._play()
        self.refresh()

    @property
    def shift_ms(self) -> int:
        """How much later than it is sent the sound is taken to be heard."""
        return self._shift_ms

    def refresh(self) -> None:
        """Show the beat as it stands."""
        now = self._clock.now_ms() - self._began_ms
        if now >= (BEATS + 1) * BEAT_MS:
            self._play()
            now = 0
        self._bounce.show_moment(now - self._shift_ms)
        say(self._figure, tr("{ms} ms").format(ms=self._shift_ms))
        say(self._device, tr("for {speaker}").format(speaker=self._speaker.name))
        notice = self._speaker.notice
        say(self._notice, notice or "")

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows shift, Enter taps, Space saves, Esc leaves it as it was."""
        key = Qt.Key(event.key())
        step = COARSE_MS if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else STEP_MS
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self.shift(-step if key is Qt.Key.Key_Left else step)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat():
            self.tap()
        elif key is Qt.Key.Key_Space:
            self.save()
        elif key is Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def shift(self, by_ms: int) -> None:
        """Move the picture against the sound."""
        self._shift_ms = min(max(self._shift_ms + by_ms, 0), MOST_MS)
        self.refresh()

    def tap(self) -> None:
        """Take a tap; sixteen of them set the shift."""
        self._taps.append(self._clock.now_ms() - self._began_ms)
        found = latency_from_taps(self._taps)
        if found is not None:
            self._shift_ms = min(max(found, 0), MOST_MS)
        count = tr("{n} of {m} taps").format(n=len(self._taps), m=TAPS)
        say(self._tapped, count if found is None else tr("set by your taps"))
        self.refresh()

    def save(self) -> None:
        """Keep the shift for this device, and leave."""
        self._save(self._speaker.name, self._shift_ms)
        self.left.emit()

    def _play(self) -> None:
        self._taps.clear()
        self._speaker.play(beat_sound(BEATS))
        self._began_ms = self._clock.now_ms()

    def _lay_out(self, look: Look) -> None:
        side = look.margin
        column = QVBoxLayout(self)
        column.setContentsMargins(side, side, side, side)
        column.setSpacing(look.sizes.body)
        column.addWidget(
            label(look, tr("Sound and picture"), pixels=look.sizes.display, weight=Weight.SEMIBOLD)
        )
        about = label(look, tr(ABOUT), pixels=look.sizes.heading, wrap=True)
        column.addWidget(scrolling(about, tr("How to set them together")) if look.text > LARGE else about)
        column.addWidget(self._bounce, 1)
        row = FlowLayout(None, look.sizes.body)
        row.addWidget(quiet_button(look, tr("← earlier"), lambda: self.shift(-STEP_MS)))
        row.addWidget(self._figure)
        row.addWidget(quiet_button(look, tr("later →"), lambda: self.shift(STEP_MS)))
        row.addWidget(self._device)
        row.addWidget(quiet_button(look, tr("Tap  (Enter)"), self.tap))
        row.addWidget(self._tapped)
        column.addLayout(row)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(quiet_button(look, tr("Leave it as it was  (Esc)"), self.left.emit))
        foot.addWidget(strong_button(look, tr("Keep it  (Space)"), self.save))
        column.addLayout(foot)
        column.addWidget(self._notice)


class Bounce(QWidget):
    """A ring that lands on a line at each beat, and is lit as it lands."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._at_ms = 0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(round(look.sizes.display / look.text * 2))
        self.setAccessibleName(tr("The beat"))

    def show_moment(self, at_ms: int) -> None:
        """Show the ring `at_ms` after the beat began to play."""
        self._at_ms = at_ms
        self.update()

    @property
    def height_now(self) -> float:
        """How high the ring is, 0 on the line to 1: it falls and rises evenly between beats."""
        return abs((self._at_ms % BEAT_MS) / BEAT_MS * 2 - 1) * -1 + 1

    @property
    def lit(self) -> bool:
        """Whether the ring has just landed."""
        return self._at_ms % BEAT_MS < LIT_MS and self._at_ms >= 0

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the line and the ring."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        scheme = self._look.scheme
        floor, radius = self.height() * 0.82, self.height() * 0.09
        painter.setPen(QPen(QColor(scheme.ink if self.lit else scheme.unfilled), 4))
        painter.drawLine(QPointF(0, floor + radius), QPointF(self.width(), floor + radius))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(scheme.ink if self.lit else scheme.quiet))
        y = floor - self.height_now * self.height() * 0.66
        painter.drawEllipse(QRectF(self.width() / 2 - radius, y - radius, 2 * radius, 2 * radius))
        painter.end()
