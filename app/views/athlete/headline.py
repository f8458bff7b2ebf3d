"""The three huge things: side, phase word with its seconds, count."""

from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.domain.plan import Side
from app.views.lettering import GLANCE_ARCMIN, LEAST_ARCMIN, Weight, digit_height_px, font_px, px_per_mm
from app.views.theme import Look

SHARE_OF_WINDOW = 0.152
COUNT_RATIO, OF_RATIO = 1.5, 0.32
MARGIN = 0.0375
MOST_OF_WINDOW = 0.3
LEADING = 0.95
LEAST_SHRUNK = LEAST_ARCMIN / GLANCE_ARCMIN
"""A long word for the phase gets letters this much smaller at most; what is too long then is cut."""
SQUEEZES = (0.0, 0.25, 0.5, 0.75, 1.0)
"""How far the count and the gaps give way, in turn, before side and phase do."""
MOST_SQUEEZED, SMALL_SQUEEZED = 0.8, 0.3
"""Shares by which gaps, and seconds with the small words, give way at most."""
BAR = 0.012


Part = tuple[str, QFont, str, float]
"""Words, their letters, their colour, and the room after them."""


@dataclass(frozen=True, slots=True)
class Headline:
    """What is huge at a moment; empty text leaves its place free. `colour` is that of the phase."""

    side: Side
    side_text: str
    phase_text: str
    seconds_text: str
    count_text: str
    of_text: str
    colour: str

    @property
    def spoken(self) -> str:
        """The same in a line, for a screen reader."""
        words = (
            self.side_text,
            self.phase_text,
            self.seconds_text,
            f"{self.count_text} {self.of_text}".strip(),
        )
        return ", ".join(word for word in words if word)


EMPTY = Headline(Side.BOTH, "", "", "", "", "", "#FFFFFF")


def wished_px(look: Look, window_height: int, screen_px_per_mm: float) -> float:
    """Font size of side and phase before fitting: by the distance, at least its share of the window."""
    height_px = digit_height_px(look.distance_m, GLANCE_ARCMIN, screen_px_per_mm)
    legible = font_px(height_px, look.family, Weight.BOLD)
    return float(max(legible, window_height * SHARE_OF_WINDOW))


def most_px(window_height: int) -> float:
    """The largest font size of side and phase that a window has the height for."""
    return window_height * MOST_OF_WINDOW / (COUNT_RATIO * LEADING)


class HeadlineView(QWidget):
    """Paints the headline as large as legibility at a distance asks for, and as the window allows."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._shown = EMPTY
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Give the count its height."""
        return QSize(800, round(self.wished_px() * COUNT_RATIO))

    def fit_window(self) -> None:
        """Take the height that goes with the window as it is now."""
        self.setFixedHeight(min(self.sizeHint().height(), round(self.window().height() * MOST_OF_WINDOW)))

    def wished_px(self) -> float:
        """Font size of side and phase before fitting."""
        return wished_px(self._look, self.window().height(), px_per_mm(self.screen()))

    def show_headline(self, headline: Headline) -> None:
        """Show these words; nothing is painted anew when they are the same."""
        if headline == self._shown:
            return
        self._shown = headline
        self.setAccessibleName(headline.spoken)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint side bar, side, phase, seconds and count on one base line."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setLayoutDirection(Qt.LayoutDirection.LayoutDirectionAuto)
        fit = self._fit()
        base = self.height() * 0.86
        self._paint_bar(painter, base, fit.pixels)
        x = self.width() * MARGIN
        for text, font, colour, space in self._left_parts(fit, self._fitting_word(fit)):
            painter.setFont(font)
            painter.setPen(QColor(colour))
            painter.drawText(QPointF(x, base), text)
            x += QFontMetricsF(font).horizontalAdvance(text) + space
        x = self.width() * (1 - MARGIN)
        for text, font, colour, space in reversed(self._right_parts(fit)):
            x -= QFontMetricsF(font).horizontalAdvance(text)
            painter.setFont(font)
            painter.setPen(QColor(colour))
            painter.drawText(QPointF(x, base), text)
            x -= space
        painter.end()

    def _paint_bar(self, painter: QPainter, base: float, pixels: float) -> None:
        if self._shown.side is Side.BOTH:
            return
        width = self.width() * BAR
        left = 0.0 if self._shown.side is Side.LEFT else self.width() - width
        painter.fillRect(
            QRectF(left, base - pixels * 0.78, width, pixels * 0.84), QColor(self._look.scheme.ink)
        )

    def _left_parts(self, fit: "Fit", phase_text: str) -> list[Part]:
        shown, look, pixels = self._shown, self._look, fit.pixels
        parts = []
        if shown.side_text:
            parts.append((shown.side_text, look.font(pixels, Weight.BOLD), look.scheme.ink, fit.gap(0.8)))
        if phase_text:
            font = look.font(pixels * fit.word, Weight.BOLD)
            parts.append((phase_text, font, shown.colour, fit.gap(0.42)))
        if shown.seconds_text:
            font = look.font(fit.small(pixels), Weight.LIGHT)
            parts.append((shown.seconds_text, font, shown.colour, fit.gap(0.3)))
        return parts

    def _right_parts(self, fit: "Fit") -> list[Part]:
        shown, look = self._shown, self._look
        parts = []
        if shown.count_text:
            font = look.font(fit.count_px, Weight.BOLD)
            parts.append((shown.count_text, font, look.scheme.ink, fit.gap(0.2)))
        if shown.of_text:
            font = look.font(fit.small(fit.pixels * OF_RATIO), Weight.REGULAR)
            parts.append((shown.of_text, font, look.scheme.quiet, fit.gap(0.2)))
        return parts

    def _fit(self) -> "Fit":
        """How large everything is: count and gaps give way first, then the word of the phase alone."""
        pixels = min(self.wished_px(), self.height() / (COUNT_RATIO * LEADING))
        fit = Fit(pixels)
        for squeeze in SQUEEZES:
            fit = Fit(pixels, squeeze)
            over = self._width(fit, self._shown.phase_text) - self._room
            if over <= 0:
                return fit
        word = self._word_width(fit, self._shown.phase_text)
        return replace(fit, word=min(max((word - over) / word, LEAST_SHRUNK), 1.0)) if word else fit

    def _fitting_word(self, fit: "Fit") -> str:
        """The word of the phase, cut where even small letters do not fit."""
        word = self._shown.phase_text
        over = self._width(fit, word) - self._room
        if over <= 1:
            return word
        metrics = QFontMetricsF(self._look.font(fit.pixels * fit.word, Weight.BOLD))
        return metrics.elidedText(word, Qt.TextElideMode.ElideRight, metrics.horizontalAdvance(word) - over)

    @property
    def _room(self) -> float:
        return self.width() * (1 - 2 * MARGIN)

    def _word_width(self, fit: "Fit", word: str) -> float:
        return QFontMetricsF(self._look.font(fit.pixels * fit.word, Weight.BOLD)).horizontalAdvance(word)

    def _width(self, fit: "Fit", phase_text: str) -> float:
        parts = (*self._left_parts(fit, phase_text), *self._right_parts(fit))
        return sum(QFontMetricsF(font).horizontalAdvance(text) + space for text, font, _, space in parts)


@dataclass(frozen=True, slots=True)
class Fit:
    """How a headline fits: font size of side and seconds, how far count and gaps are squeezed (0 to 1).

    `word` is the size of the phase's word, of that of the side.
    """

    pixels: float
    squeeze: float = 0.0
    word: float = 1.0

    @property
    def count_px(self) -> float:
        """Font size of the count; squeezed, it is as large as the side."""
        return self.pixels * (COUNT_RATIO - (COUNT_RATIO - 1.0) * self.squeeze)

    def small(self, pixels: float) -> float:
        """Font size of what may be smaller where there is no room: seconds, and of how many the count is."""
        return pixels * (1.0 - SMALL_SQUEEZED * self.squeeze)

    def gap(self, ratio: float) -> float:
        """Room after a part, as a ratio of the font size."""
        return self.pixels * ratio * (1.0 - MOST_SQUEEZED * self.squeeze)
