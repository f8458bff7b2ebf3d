"""How steadily the gym screen moves: 24 tiles with 24 running profiles at 1080p, frame by frame."""

import os
import time

import pytest
from PySide6.QtCore import QEventLoop, QTimer
from PySide6.QtWidgets import QApplication, QGridLayout, QWidget
from pytestqt.qtbot import QtBot

from app.audio.clocks import MonotonicClock
from app.audio.speaker.silent import SilentSpeaker
from app.domain.grouping import Form
from app.run.intents import Begin
from app.run.sounding import NoSound
from app.views.group.legible import Legible
from app.views.group.names import screen_names
from app.views.group.room_session import RoomSession
from app.views.group.scene import room_scene
from app.views.group.station_tile import StationTile
from app.views.lettering import training_scale
from app.views.theme import Look, Place, choose
from app.views.ticker import INTERVAL_MS, Ticker
from tests.halls import club, demo_plan, group_session

TILES, COLUMNS = 24, 6
SECONDS = float(os.environ.get("PACEWRIGHT_BENCH_SECONDS", "30"))


class Timed(QWidget):
    """The tiles of many stations, and how long each frame took to paint and came after the one before.

    `works` is the processor's time for painting, which others on the machine do not lengthen.
    """

    def __init__(self, room: RoomSession, look: Look) -> None:
        super().__init__()
        self._room = room
        self._names = screen_names([part.athlete for part in room.session.parts])
        self.states: list[float] = []
        self.paints: list[float] = []
        self.works: list[float] = []
        self.gaps: list[float] = []
        self._last: float | None = None
        grid = QGridLayout(self)
        self.tiles = [StationTile(look, Legible(46, 34)) for _ in range(TILES)]
        for index, tile in enumerate(self.tiles):
            grid.addWidget(tile, *divmod(index, COLUMNS))

    def frame(self) -> None:
        """Show the moment in every tile, what changed painted now."""
        began = time.perf_counter()
        scene = room_scene(self._room.session, self._room.look(), self._names, self._room.now_ms())
        for index, tile in enumerate(self.tiles):
            tile.show_station(scene.stations[index % len(scene.stations)], coming=False)
        ready, worked = time.perf_counter(), time.thread_time()
        QApplication.sendPostedEvents()
        self.states.append(ready - began)
        self.paints.append(time.perf_counter() - ready)
        self.works.append(time.thread_time() - worked)
        if self._last is not None:
            self.gaps.append(began - self._last)
        self._last = began


@pytest.mark.bench
def test_twenty_four_tiles_at_1080p(qtbot: QtBot) -> None:
    session = group_session(Form.STATIONS, demo_plan(), club(24))
    room = RoomSession(session, MonotonicClock(), SilentSpeaker(), NoSound(), lambda _told: None)
    look = Look(choose(Place.TRAINING), "Inter", training_scale(1080), 10.0)
    timed = Timed(room, look)
    qtbot.addWidget(timed)
    timed.resize(1920, 1080)
    timed.show()
    qtbot.waitExposed(timed)
    room.act(Begin())
    ticker = Ticker()
    ticker.tick.connect(timed.frame)
    ticker.start()
    loop = QEventLoop()
    QTimer.singleShot(round(SECONDS * 1000), loop.quit)
    loop.exec()
    ticker.stop()
    late = sum(gap > 0.033 for gap in timed.gaps)
    print(
        f"\n{TILES} tiles, {SECONDS:.0f} s at {INTERVAL_MS} ms: {len(timed.paints)} frames, {late} over 33 ms"
    )
    measured = {
        "state": timed.states,
        "paint": timed.paints,
        "paint, of the processor": timed.works,
        "interval": timed.gaps,
    }
    for name, taken in measured.items():
        p50, p99 = (sorted(taken)[int(len(taken) * share)] * 1e3 for share in (0.5, 0.99))
        print(f"{name}: p50 {p50:.1f}, p99 {p99:.1f}, worst {max(taken) * 1e3:.1f} ms")
    room.close()
