"""How long the window takes to appear, and the athlete's screen to paint. Prints; asserts no time."""

import compileall
import os
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.compiler import compile_timeline
from app.run.intents import Begin, Tick
from app.run.sounding import NoSound
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.lettering import load_fonts, type_scale
from app.views.theme import Look, Place, choose
from app.views.widgets.profile import ProfileView
from tests.fakes import HandClock, RecordingSpeaker

ROOT = Path(__file__).parents[2]
STARTS = 10
FRAMES = 2_000
FIRST_PAINT = """
import sys, time
from PySide6.QtWidgets import QStackedWidget
from app.views import window
painted = window.Window.paintEvent
def paint(self, event):
    painted(self, event)
    sys.stdout.write("painted\\n"); sys.stdout.flush()
    import os; os._exit(0)
window.Window.paintEvent = paint
from app.__main__ import main
main(["open", "--demo", "--sound", "silent"])
"""


@pytest.mark.bench
@pytest.mark.skipif(not os.environ.get("DISPLAY"), reason="needs a display")
def test_bench_cold_start_to_the_first_painted_window(tmp_path: Path) -> None:
    compileall.compile_dir(str(ROOT / "app"), quiet=2)
    environment = {**os.environ, "PACEWRIGHT_DATA": str(tmp_path)}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    taken = [_timed([sys.executable, "-c", FIRST_PAINT], environment) for _ in range(STARTS + 1)][1:]
    bare = [
        _timed([sys.executable, "-c", "from PySide6 import QtWidgets"], environment) for _ in range(STARTS)
    ]
    print(f"\nfirst painted window: median {statistics.median(taken):.3f} s, worst {max(taken):.3f} s")
    print(f"beside it, importing QtWidgets alone: median {statistics.median(bare):.3f} s")


def _timed(command: list[str], environment: dict[str, str]) -> float:
    begin = time.perf_counter()
    done = subprocess.run(command, check=False, env=environment, cwd=ROOT, capture_output=True, timeout=60)
    assert done.returncode == 0, done.stderr.decode()
    return time.perf_counter() - begin


@pytest.mark.bench
def test_bench_repaint_of_the_athletes_screen_at_1080p(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    plan = wiring.read_plan(wiring.demo_folder() / "shoulder_rotators.toml").plan
    clock = HandClock()
    session = RunSession(
        compile_timeline(plan), clock, RecordingSpeaker(), NoSound(), lambda _first, _facts: None
    )
    family = load_fonts(wiring.resources_folder() / "fonts")
    page = AthletePage(Look(choose(Place.TRAINING), family, type_scale(22)), session, "Hugo")
    page.resize(1920, 1080)
    qtbot.addWidget(page)
    painted = _timed_paints(monkeypatch)
    with qtbot.waitExposed(page):
        page.show()
    session.act(Begin())
    for _ in range(12):
        clock.at_ms += 500
        session.act(Tick())
    page.refresh()
    QApplication.processEvents()
    painted.clear()
    refreshed, shown = [], []
    for _ in range(FRAMES):
        clock.at_ms += 16
        refreshed.append(_ms(page.refresh))
        shown.append(_ms(QApplication.processEvents))
    assert len(painted) == FRAMES, "a frame was not painted"
    for name, taken in (
        ("state and texts", refreshed),
        ("painting", painted),
        ("painting and showing", shown),
    ):
        p50, p99 = _share(taken, 0.5), _share(taken, 0.99)
        print(f"\n{name}: p50 {p50:.2f} ms, p99 {p99:.2f} ms, max {max(taken):.2f} ms")


def _timed_paints(monkeypatch: pytest.MonkeyPatch) -> list[float]:
    paint, taken = ProfileView.paintEvent, list[float]()

    def timed(view: ProfileView, event: QPaintEvent) -> None:
        taken.append(_ms(lambda: paint(view, event)))

    monkeypatch.setattr(ProfileView, "paintEvent", timed)
    return taken


def _ms(act: Callable[[], object]) -> float:
    begin = time.perf_counter()
    act()
    return (time.perf_counter() - begin) * 1000


def _share(taken: list[float], share: float) -> float:
    return sorted(taken)[min(int(len(taken) * share), len(taken) - 1)]
