"""A station on the gym screen: its exercise, phase, count and small profile, who is there, where they go."""

from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.domain.plan import Side
from app.domain.profile import profile_of
from app.run.state import Doing
from app.views.athlete.headline import EMPTY, Headline
from app.views.athlete.wording import headline
from app.views.group.legible import PAGE_MS, Legible, lines_of
from app.views.group.scene import StationScene
from app.views.group.wording import where_next
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import label, say
from app.views.widgets.profile import ProfileView

BAR = 0.012
"""Width of the bar on the side that works, over the width of the tile."""
APART = "   "
"""What parts two names."""
BETWEEN = 0.3
"""Room between phase and count, over the size of their letters."""
LEAST_SHRUNK = 0.72
"""Of the size at a glance, for a phase word too long for its tile."""


class StationTile(QFrame):
    """Shows one station at one moment."""

    def __init__(self, look: Look, sizes: Legible) -> None:
        super().__init__()
        self._look = look
        self._entered: tuple[int, int, int, int] | None = None
        self._sizes = sizes
        self._side = Side.BOTH
        self._turns: tuple[tuple[str, ...], int, list[str]] = ((), 0, [])
        self._letter = label(
            look, pixels=look.sizes.title * 1.3, weight=Weight.BOLD, colour=look.scheme.quiet
        )
        self._exercise = FittedLabel(look, pixels=look.sizes.title, weight=Weight.SEMIBOLD)
        self._words = TileWords(look, sizes)
        self._profile = ProfileView(look)
        self._names = FittedLabel(look, pixels=sizes.name, weight=Weight.SEMIBOLD)
        self._next = label(look, pixels=look.sizes.title, colour=look.scheme.quiet)
        self.setObjectName("station")
        self.setStyleSheet(f"QFrame#station {{ background: {look.scheme.panel}; border-radius: 14px; }}")
        self._lay_out()

    def show_station(self, station: StationScene, *, coming: bool, now_ms: int = 0) -> None:
        """Show a moment; `coming` is the time of the change, when those named are on their way here.

        Names that are too many to be read take turns, line by line.
        """
        say(self._letter, station.letter)
        say(self._exercise, station.exercise)
        lines = self._lines(station.names)
        say(self._names, lines[now_ms // PAGE_MS % len(lines)] if lines else "–")
        say(self._next, "" if coming else where_next(station))
        shown = station.shown
        working = shown is not None and shown.doing is not Doing.GAP
        self._profile.setVisible(working and shown is not None and not shown.bout.open_ended)
        self._show_side(shown.side if shown is not None and working else Side.BOTH)
        if shown is None or not working:
            self._words.show_words(replace(EMPTY, phase_text=tr("Done")) if station.done else EMPTY)
            return
        entered = (id(shown.timeline), shown.bout.index, shown.attempt, shown.work_from_ms)
        if entered != self._entered:
            self._entered = entered
            self._profile.show_bout(profile_of(shown.bout, shown.exercise), shown.work_from_ms)
        self._words.show_words(headline(shown, self._look.scheme))
        self._profile.show_moment(shown.local_ms)

    @property
    def crowded(self) -> bool:
        """Whether more names are here than can be read across the room at once."""
        return len(self._turns[2]) > 1 or self._names.fitted()[0].pixelSize() < self._sizes.name

    def _lines(self, names: tuple[str, ...]) -> list[str]:
        width = self._names.width()
        if self._turns[:2] != (names, width):
            metrics = QFontMetricsF(self._look.font(self._sizes.name, Weight.SEMIBOLD))
            self._turns = (names, width, lines_of(names, APART, metrics.horizontalAdvance, width - 2))
        return self._turns[2]

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint a bar on the edge of the side that works."""
        super().paintEvent(event)
        if self._side is Side.BOTH:
            return
        painter = QPainter(self)
        width = min(max(self.width() * BAR, 4.0), self._look.sizes.body * 0.5)
        left = 0.0 if self._side is Side.LEFT else self.width() - width
        top, height = self.height() * 0.2, self.height() * 0.4
        painter.fillRect(QRectF(left, top, width, height), QColor(self._look.scheme.ink))
        painter.end()

    def _show_side(self, side: Side) -> None:
        if side is not self._side:
            self._side = side
            self.update()

    def _lay_out(self) -> None:
        edge = round(self._look.sizes.body)
        top = QHBoxLayout()
        top.setSpacing(edge)
        top.addWidget(self._letter)
        top.addWidget(self._exercise, 1)
        top.addWidget(self._next)
        self._names.setFixedHeight(self._names.sizeHint().height())
        self._profile.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(edge, edge // 3, edge, edge // 3)
        layout.setSpacing(edge // 4)
        layout.addLayout(top)
        layout.addWidget(self._words)
        layout.addWidget(self._profile, 1)
        layout.addStretch(0)
        layout.addWidget(self._names)


class TileWords(QWidget):
    """Phase on the left, count on the right, on one line, both to be read at a glance."""

    def __init__(self, look: Look, sizes: Legible) -> None:
        super().__init__()
        self._look, self._sizes = look, sizes
        self._shown = EMPTY
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Give a line of the letters to be read at a glance."""
        return QSize(300, round(self._sizes.glance * 1.04))

    @property
    def pixels(self) -> float:
        """Font size of the phase as it is painted."""
        room = self.width() - self._count_width() - self._sizes.glance * BETWEEN
        bold = QFontMetricsF(self._look.font(self._sizes.glance, Weight.BOLD))
        needed = bold.horizontalAdvance(tile_words(self._shown))
        share = 1.0 if needed <= room else max(room / needed, LEAST_SHRUNK)
        return self._sizes.glance * share

    def _count_width(self) -> float:
        metrics = QFontMetricsF(self._look.font(self._sizes.glance, Weight.BOLD))
        return metrics.horizontalAdvance(tile_count(self._shown))

    def show_words(self, words: Headline) -> None:
        """Show these words; nothing is painted anew when they are the same."""
        if words != self._shown:
            self._shown = words
            self.setAccessibleName(words.spoken)
            self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint phase and count."""
        painter = QPainter(self)
        shown, look = self._shown, self._look
        side = f"{shown.side_text[:1]} " if shown.side_text else ""
        count, count_width = tile_count(shown), self._count_width()
        bold = look.font(self._sizes.glance, Weight.BOLD)
        word = look.font(self.pixels, Weight.BOLD)
        base = self.height() * 0.86
        painter.setFont(word)
        painter.setPen(QColor(look.scheme.ink))
        painter.drawText(QPointF(0, base), side)
        painter.setPen(QColor(shown.colour))
        painter.drawText(QPointF(QFontMetricsF(word).horizontalAdvance(side), base), shown.phase_text)
        painter.setFont(bold)
        painter.setPen(QColor(look.scheme.ink))
        painter.drawText(QPointF(self.width() - count_width, base), count)
        painter.end()


def tile_words(shown: Headline) -> str:
    """The words on the left of a tile: the letter of the side, and the phase."""
    return f"{shown.side_text[:1]} {shown.phase_text}" if shown.side_text else shown.phase_text


def tile_count(shown: Headline) -> str:
    """The number on the right of a tile: the rep, else the seconds that are left."""
    return shown.count_text or shown.seconds_text


def tile_room(look: Look, sizes: Legible) -> float:
    """What a tile needs in width besides its words: between them, and at its edges."""
    return sizes.glance * BETWEEN + 2 * round(look.sizes.body)
