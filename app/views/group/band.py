"""The roster band: everybody's name, side and count, in tiles that can be read across the room."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.domain.plan import Side
from app.domain.words import side_word
from app.views.group.legible import Grid, Legible, grid_of, widest
from app.views.group.scene import Someone, Standing
from app.views.group.wording import about
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr

BAR = 0.06
"""Width of the white bar on a side, over the height of the name's letters."""
MOST_OF_ROOM = 0.46
"""The band takes no more of the height of the screen than this; who does not fit is on the next page."""
LONGEST_NAME = 0.4
"""A name takes no more of the width than this."""
BETWEEN = 1.2
"""Room between two crews, over that between two people."""
EDGE = 0.16
"""Room at the edges of a tile, over the size of the name's letters."""
DETAIL = 0.26
"""Letters of what stands beside a name, over its own: for those who stand near."""

IDLE = (Standing.SITS_OUT, Standing.ABSENT, Standing.GONE, Standing.RESTS)


@dataclass(frozen=True, slots=True)
class Crew:
    """Some of the people under a heading, or under none; whether it is they who work."""

    title: str
    people: tuple[Someone, ...]
    works: bool = True


class RosterBand(QWidget):
    """Paints crews of people side by side. It owns no truth and no clock."""

    def __init__(self, look: Look, sizes: Legible, *, waves: bool = False) -> None:
        super().__init__()
        self._look, self._sizes, self._waves = look, sizes, waves
        self._crews: tuple[Crew, ...] = ()
        self._names: tuple[str, ...] = ()
        self._cell = (0.0, 0.0)
        self._page = 0
        self._most = 0
        self.setAccessibleName(tr("Who is here"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    @property
    def pages(self) -> int:
        """On how many pages the people are, taking turns: more than one says that the roster is too large."""
        return max((self._grid(crew).pages for crew in self._crews), default=1)

    @property
    def crowded(self) -> bool:
        """Whether a name is too long to be read whole."""
        room = self._width - (self._cell[0] - self._name_width())
        return widest(self._names, self._look, self._sizes.name, Weight.SEMIBOLD) > room

    def fit(self, screen_height: int) -> None:
        """Take the height that the people need, within the share of the screen that there is for them."""
        self._most = round(screen_height * MOST_OF_ROOM)
        self.setFixedHeight(min(self._needed(), self._most))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Measure anew what finds room."""
        super().resizeEvent(event)
        self._cell = self._cell_for()
        if self._most:
            self.setFixedHeight(min(self._needed(), self._most))

    def sizeHint(self) -> QSize:
        """Give the height the people need."""
        return QSize(800, self._needed())

    def show_crews(self, crews: Sequence[Crew], now_ms: int) -> None:
        """Show these people at a time; nothing is painted anew when all is as it was."""
        crews = tuple(crews)
        names = tuple(someone.name for crew in crews for someone in crew.people)
        page = max((self._grid(crew).page_at(now_ms) for crew in crews), default=0)
        if crews == self._crews and page == self._page:
            return
        self._crews, self._page = crews, page
        if names != self._names:
            self._names = names
            self._cell = self._cell_for()
            if self._most:
                self.setFixedHeight(min(self._needed(), self._most))
        self.setAccessibleDescription("; ".join(self._spoken(crew) for crew in crews))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the people of the page."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(self._look.scheme.ground))
        for number, crew in enumerate(self._crews):
            grid, left = self._grid(crew), self._left(number)
            self._paint_title(painter, crew, left)
            first = self._page % grid.pages * grid.a_page
            for index, someone in enumerate(crew.people[first : first + grid.a_page]):
                row, column = divmod(index, grid.columns)
                self._paint_someone(painter, someone, self._place(grid, row, column, left))
        painter.end()

    @property
    def _width(self) -> float:
        """Width that a crew has."""
        count = max(len(self._crews), 1)
        return (self.width() - (count - 1) * BETWEEN * self._gap) / count

    def _left(self, number: int) -> float:
        if self.layoutDirection() is Qt.LayoutDirection.RightToLeft:
            number = len(self._crews) - 1 - number
        return number * (self._width + BETWEEN * self._gap)

    @property
    def _titled(self) -> float:
        """Height of the headings, nothing where there is none."""
        return self._title_px * 1.5 if any(crew.title for crew in self._crews) else 0.0

    @property
    def _gap(self) -> float:
        return self._sizes.name * 0.16

    @property
    def _title_px(self) -> float:
        return self._look.sizes.title * 0.9

    @property
    def _detail_px(self) -> float:
        return self._sizes.name * DETAIL

    def _cell_for(self) -> tuple[float, float]:
        look, edge = self._look, self._sizes.name * EDGE
        name = self._name_width()
        beside = widest(_usual(), look, self._detail_px, Weight.REGULAR)
        return name + beside + 2.4 * edge, self._sizes.name * 1.14

    def _name_width(self) -> float:
        wanted = widest(self._names, self._look, self._sizes.name, Weight.SEMIBOLD)
        return min(wanted, self.width() * LONGEST_NAME)

    def _about(self, someone: Someone) -> list[str]:
        return about(someone, waves=self._waves).split(" · ")

    def _grid(self, crew: Crew) -> Grid:
        room = self._width, (self._most or self.height()) - self._titled
        return grid_of(len(crew.people), self._cell, room, self._gap)

    def _needed(self) -> int:
        rows = max((self._grid(crew).rows for crew in self._crews), default=0)
        return max(round(self._titled + rows * (self._cell[1] + self._gap)), 1)

    def _place(self, grid: Grid, row: int, column: int, left: float) -> QRectF:
        width = (self._width - self._gap * (grid.columns - 1)) / grid.columns
        if self.layoutDirection() is Qt.LayoutDirection.RightToLeft:
            column = grid.columns - 1 - column
        top = self._titled + row * (self._cell[1] + self._gap)
        return QRectF(left + column * (width + self._gap), top, width, self._cell[1])

    def _paint_title(self, painter: QPainter, crew: Crew, left: float) -> None:
        font = self._look.font(self._title_px, Weight.SEMIBOLD)
        painter.setFont(font)
        painter.setPen(QColor(self._look.scheme.ink if crew.works else self._look.scheme.quiet))
        room = QRectF(left, 0, self._width, self._titled)
        title = QFontMetricsF(font).elidedText(crew.title, Qt.TextElideMode.ElideRight, room.width())
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeading, title)

    def _paint_someone(self, painter: QPainter, someone: Someone, place: QRectF) -> None:
        scheme, edge = self._look.scheme, self._sizes.name * EDGE
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(scheme.panel))
        painter.drawRoundedRect(place, edge * 0.5, edge * 0.5)
        idle = someone.standing in IDLE
        if someone.side is not Side.BOTH and someone.standing is Standing.WORKS:
            self._paint_bar(painter, someone.side, place)
        inside = place.adjusted(0.85 * edge, 0, -0.85 * edge, 0)
        font = self._look.font(self._sizes.name, Weight.SEMIBOLD)
        words = self._about(someone)
        detail = self._look.font(self._detail_px)
        detail_width = max(QFontMetricsF(detail).horizontalAdvance(word) for word in words)
        room = QRectF(inside)
        room.setWidth(inside.width() - detail_width - 0.7 * edge)
        painter.setFont(font)
        painter.setPen(QColor(scheme.quiet if idle else scheme.ink))
        name = QFontMetricsF(font).elidedText(someone.name, Qt.TextElideMode.ElideRight, room.width())
        at_right = someone.side is Side.RIGHT and someone.standing is Standing.WORKS
        left = inside.left()
        if at_right:
            room.moveRight(inside.right())
        else:
            left = inside.right() - detail_width
        hugs = Qt.AlignmentFlag.AlignRight if at_right else Qt.AlignmentFlag.AlignLeft
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | hugs, name)
        self._paint_details(painter, words, QRectF(left, place.top(), detail_width, place.height()))

    def _paint_details(self, painter: QPainter, words: Sequence[str], room: QRectF) -> None:
        font = self._look.font(self._detail_px)
        painter.setFont(font)
        painter.setPen(QColor(self._look.scheme.quiet))
        line = QFontMetricsF(font).height()
        top = room.center().y() - line * len(words) / 2
        for index, word in enumerate(words):
            where = QPointF(room.left(), top + index * line + QFontMetricsF(font).ascent())
            painter.drawText(where, word)

    def _paint_bar(self, painter: QPainter, side: Side, place: QRectF) -> None:
        width = max(self._sizes.name * BAR, 4.0)
        left = place.left() if side is Side.LEFT else place.right() - width
        painter.setBrush(QColor(self._look.scheme.ink))
        painter.drawRect(QRectF(left, place.top() + place.height() * 0.1, width, place.height() * 0.8))

    def _spoken(self, crew: Crew) -> str:
        said = ", ".join(f"{someone.name}: {about(someone, waves=self._waves)}" for someone in crew.people)
        return f"{crew.title}: {said}" if crew.title else said


def _usual() -> tuple[str, ...]:
    """What stands beside the name of somebody who works: tiles keep their places whatever else is said."""
    return tr(side_word(Side.LEFT)).lower(), tr(side_word(Side.RIGHT)).lower(), "20/20"
