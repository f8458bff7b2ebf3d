"""The gym screen's monitor is unplugged and plugged in again: the session goes on, the screen comes back."""

import os
import shutil
import subprocess

import pytest
from PySide6.QtGui import QGuiApplication, QIcon
from pytestqt.qtbot import QtBot

from app.domain.grouping import Form
from app.run.intents import Begin
from app.run.state import Stand
from app.views.group.gym_window import GymWindow, monitor_name
from app.views.lettering import training_scale
from app.views.theme import Look, Place, choose
from tests.halls import Hall, club, demo_plan, group_session

NAME, PLACE = "hall", "960/300x1080/200+960+0"
pytestmark = pytest.mark.skipif(
    not os.environ.get("DISPLAY")
    or os.environ.get("QT_QPA_PLATFORM") == "offscreen"
    or not shutil.which("xrandr"),
    reason="needs a display whose monitors can be changed",
)


def xrandr(*words: str) -> None:
    subprocess.run(["xrandr", *words], check=True, timeout=20)


def names() -> list[str]:
    return [screen.name() for screen in QGuiApplication.screens()]


def plug_in(qtbot: QtBot) -> None:
    xrandr("--setmonitor", NAME, PLACE, "none")
    qtbot.waitUntil(lambda: NAME in names())


def unplug(qtbot: QtBot) -> None:
    xrandr("--delmonitor", NAME)
    qtbot.waitUntil(lambda: NAME not in names())


def test_the_session_goes_on_without_the_monitor_and_the_screen_returns_to_it(qtbot: QtBot) -> None:
    hall = Hall(group_session(Form.TOGETHER, demo_plan(), club(12))).do(Begin()).wait(4_000)
    plug_in(qtbot)
    try:
        gym = GymWindow(
            hall.room.session,
            lambda height: Look(choose(Place.TRAINING), "Inter", training_scale(height), 10.0),
            QIcon(),
        )
        qtbot.addWidget(gym)
        (monitor,) = [screen for screen in QGuiApplication.screens() if screen.name() == NAME]
        assert monitor_name(monitor).endswith(NAME)
        gym.put_on(monitor)
        qtbot.waitUntil(lambda: gym.geometry() == monitor.geometry())
        unplug(qtbot)
        qtbot.waitUntil(lambda: gym.screen().name() != NAME)
        assert gym.isVisible()
        hall.wait(4_000)
        gym.show_room(hall.room.state, hall.room.now_ms())
        assert hall.room.state.leader.stand is Stand.RUNNING
        plug_in(qtbot)
        qtbot.waitUntil(lambda: gym.screen().name() == NAME and gym.isFullScreen())
        gym.show_room(hall.wait(4_000).room.state, hall.room.now_ms())
        assert hall.room.state.leader.stand is Stand.RUNNING
        gym.close()
        unplug(qtbot)
    finally:
        if NAME in names():
            xrandr("--delmonitor", NAME)
