"""Stations on the gym screen: a tile each, the countdown to the change, and who rests."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from app.domain.group import GroupSession
from app.domain.units import clock_text
from app.run.state import Doing
from app.views.group.legible import Grid, Legible, grid_of, widest
from app.views.group.scene import RoomScene, StationScene
from app.views.group.station_tile import StationTile, tile_room
from app.views.group.wording import change_line, round_line, seconds_left, tile_lines, where_next
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import label, say

LEAST_HEIGHT = 2.6
"""The least height of a tile over the size of letters to be read at a glance."""


class StationsView(QWidget):
    """Shows as many stations as can be read; more of them take turns, page by page.

    Two stand side by side at the least: a phase with very long words is written smaller for it.
    """

    def __init__(self, look: Look, sizes: Legible, session: GroupSession) -> None:
        super().__init__()
        stations = len(session.stations)
        self._look, self._sizes, self._count = look, sizes, stations
        self._least = widest(tile_lines(session), look, sizes.glance, Weight.BOLD) + tile_room(look, sizes)
        self._grid = Grid(1, 1, stations)
        self._page = -1
        self._round = FittedLabel(look, pixels=look.sizes.display, weight=Weight.SEMIBOLD)
        self._line = label(look, pixels=look.sizes.title, colour=look.scheme.quiet)
        self._clock = label(look, pixels=sizes.glance * 1.15, weight=Weight.BOLD)
        self._resting = FittedLabel(look, pixels=look.sizes.title, colour=look.scheme.quiet, lines=2)
        self._tiles = [StationTile(look, sizes) for _ in range(stations)]
        self._place = QWidget()
        self._cells = QGridLayout(self._place)
        self._lay_out()

    @property
    def pages(self) -> int:
        """On how many pages the stations are."""
        return self._grid.pages

    @property
    def crowded(self) -> bool:
        """Whether more names are at a station than can be read across the room."""
        return any(tile.crowded for tile in self._tiles if not tile.isHidden())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay out as many tiles as can be read."""
        super().resizeEvent(event)
        glance, gap = self._sizes.glance, self._look.sizes.body
        room = (self.width() - 6.4 * self._look.sizes.body, self.height() - glance * 1.6)
        least = min(self._least, (room[0] - gap) / 2)
        grid = grid_of(self._count, (least, glance * LEAST_HEIGHT), room, gap)
        if grid != self._grid:
            self._grid, self._page = grid, -1
            self._turn_to(0)

    def show_scene(self, scene: RoomScene, now_ms: int) -> None:
        """Show a moment of the room."""
        say(self._round, round_line(scene))
        say(self._line, change_line(scene))
        say(self._clock, clock_text(seconds_left(scene) * 1000))
        say(self._resting, "   ".join(map(_rests, scene.resting)))
        self._resting.setVisible(bool(scene.resting))
        self._turn_to(self._grid.page_at(now_ms))
        coming = scene.leader.doing is not Doing.WORK
        first = self._page * self._grid.a_page
        for index in range(first, min(first + self._grid.a_page, self._count)):
            self._tiles[index].show_station(scene.stations[index], coming=coming, now_ms=now_ms)

    def _turn_to(self, page: int) -> None:
        if page == self._page:
            return
        self._page = page
        first = page * self._grid.a_page
        for index, tile in enumerate(self._tiles):
            self._cells.removeWidget(tile)
            here = first <= index < first + self._grid.a_page
            tile.setVisible(here)
            if here:
                row, column = divmod(index - first, self._grid.columns)
                self._cells.addWidget(tile, row, column)
        for column in range(self._cells.columnCount()):
            self._cells.setColumnStretch(column, 1 if column < self._grid.columns else 0)
        for row in range(self._cells.rowCount()):
            self._cells.setRowStretch(row, 1 if row < self._grid.rows else 0)

    def _lay_out(self) -> None:
        side = self._look.margin
        where = QVBoxLayout()
        where.addWidget(self._round)
        where.addWidget(self._resting)
        top = QHBoxLayout()
        top.setContentsMargins(side, 0, side, 0)
        top.setSpacing(self._look.sizes.title)
        top.addLayout(where, 1)
        top.addWidget(self._line, 0, Qt.AlignmentFlag.AlignBottom)
        top.addWidget(self._clock)
        self._cells.setContentsMargins(side, 0, side, round(side * 0.4))
        self._cells.setSpacing(self._look.sizes.body)
        for tile in self._tiles:
            tile.setParent(self._place)
            tile.hide()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(top)
        layout.addWidget(self._place, 1)


def _rests(team: StationScene) -> str:
    names = ", ".join(team.names)
    if team.following is None:
        return tr("{names} rest").format(names=names)
    return tr("{names} rest, then go {where}").format(names=names, where=where_next(team))
