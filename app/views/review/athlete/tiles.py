"""The figures at the top of the page: each a tile that can be asked why."""

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QGridLayout, QPushButton, QSizePolicy, QWidget

from app.analysis.figure import Figure
from app.analysis.figures_adherence import REPS, SESSIONS, TEMPO
from app.analysis.figures_wellbeing import OWN
from app.views.lettering import Weight
from app.views.review.figure_words import short_of_words, value_words, with_bounds
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.card import RADIUS

TILE_LETTERS = 8.8
"""A tile of so many letters shows its words whole."""
SHORT = {
    SESSIONS.name: message("Sessions done"),
    REPS.name: message("Reps done"),
    TEMPO.name: message("Tempo kept"),
    OWN.name: message("Against own days"),
}
"""Shorter words for a tile; the whole name stands in the tooltip."""


class Tile(QPushButton):
    """One figure: its name, its value large, what it is of; a dash where it is unknown."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.figure: Figure | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def show_figure(self, figure: Figure, look: Look) -> None:
        """Show a figure."""
        self.figure, self._look = figure, look
        told = with_bounds(figure) if figure.value is not None else tr("unknown")
        self.setAccessibleName(tr("{name}: {value}, why?").format(name=tr(figure.name), value=told))
        self.setToolTip(tr(figure.reason) if figure.reason else f"{tr(figure.name)}: {told}")
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Three lines of letters."""
        sizes = self._look.sizes
        return QSize(sizes.body * 8, round(sizes.small * 2.9 + sizes.heading * 1.7))

    def minimumSizeHint(self) -> QSize:
        """It gives way to a few letters."""
        return QSize(self._look.sizes.body * 5, self.sizeHint().height())

    def changeEvent(self, event: QEvent) -> None:
        """Repaint with other colours."""
        super().changeEvent(event)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the tile."""
        if self.figure is None:
            return
        scheme, sizes = self._look.scheme, self._look.sizes
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        edge = scheme.accent if self.hasFocus() or self.underMouse() else scheme.faint
        painter.setPen(QPen(QColor(edge), 2 if self.hasFocus() else 1))
        painter.setBrush(QColor(scheme.panel))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), RADIUS, RADIUS)
        pad = sizes.body * 0.7
        room = QRectF(self.rect()).adjusted(pad, pad * 0.6, -pad, -pad * 0.6)
        lines = (
            (
                tr(SHORT.get(self.figure.name, self.figure.name)),
                sizes.small,
                Weight.REGULAR,
                scheme.quiet,
                1.35,
            ),
            (value_words(self.figure), sizes.heading, Weight.SEMIBOLD, scheme.ink, 1.3),
            (short_of_words(self.figure) or tr("whole time"), sizes.small, Weight.REGULAR, scheme.quiet, 1.3),
        )
        for text, pixels, weight, colour, tall in lines:
            font = self._look.font(pixels, weight)
            painter.setFont(font)
            painter.setPen(QColor(colour))
            told = QFontMetricsF(font).elidedText(text, Qt.TextElideMode.ElideRight, room.width())
            line = QRectF(room.left(), room.top(), room.width(), pixels * tall)
            painter.drawText(line, Qt.AlignmentFlag.AlignVCenter, told)
            room.setTop(room.top() + pixels * tall)


class Tiles(QWidget):
    """The tiles in a row. `why` carries the figure asked about."""

    why = Signal(object)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.tiles: list[Tile] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._across = 0

    def show_figures(self, figures: Sequence[Figure]) -> None:
        """Show these figures; tiles are used again."""
        while len(self.tiles) < len(figures):
            tile = Tile(self._look, self)
            tile.clicked.connect(partial(self._ask, tile))
            self.tiles.append(tile)
            self._across = 0
        for number, tile in enumerate(self.tiles):
            tile.setVisible(number < len(figures))
            if number < len(figures):
                tile.show_figure(figures[number], self._look)
        self._arrange()

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._look = look
        self._grid.setSpacing(look.sizes.body // 2)
        for tile in self.tiles:
            if tile.figure is not None:
                tile.show_figure(tile.figure, look)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the tiles into two rows where one is too narrow for their words."""
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        shown = max(sum(tile.isVisibleTo(self) for tile in self.tiles), 1)
        fits = self.width() // round(self._look.sizes.body * TILE_LETTERS)
        across = shown if fits >= shown else -(-shown // 2)
        if across == self._across:
            return
        self._across = across
        for number, tile in enumerate(self.tiles):
            self._grid.addWidget(tile, number // across, number % across)
        for column in range(self._grid.columnCount()):
            self._grid.setColumnStretch(column, int(column < across))

    def _ask(self, tile: Tile, _checked: bool = False) -> None:
        if tile.figure is not None:
            self.why.emit(tile.figure)
