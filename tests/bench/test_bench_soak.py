"""Half an hour of the athlete's screen at 1080p in real time: frames, paint, processor, memory, keys.

Prints; asserts no time. `PACEWRIGHT_SOAK_S` says how many seconds it lasts, 1800 without it.
"""

import os
import resource
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt, QTimer
from PySide6.QtGui import QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app import wiring
from app.audio.speaker.silent import SilentSpeaker
from app.domain.compiler import compile_timeline
from app.domain.records import BoutEnded, Fact
from app.planfile.settings import Settings
from app.run.intents import Begin, BeginNow
from app.run.state import Doing, Stand
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.lettering import load_fonts, type_scale
from app.views.theme import Look, Place, choose
from app.views.ticker import Ticker
from app.views.tidying import Tidying
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.profile import ProfileView

SECONDS = float(os.environ.get("PACEWRIGHT_SOAK_S", "1800"))
WARM_UP_S = 60.0
KEY_EVERY_MS = 2_300
LIMITS = "interval 33 ms, paint p99 4 ms, processor 15 %, memory 5 MB, key 33 ms"


@dataclass(slots=True)
class Watch:
    """What is measured: moments in seconds of frames at work, lengths in ms of painting and of keys."""

    page: AthletePage
    session: RunSession
    frames: list[tuple[int, float]] = field(default_factory=list)
    paints: list[float] = field(default_factory=list)
    keys: list[float] = field(default_factory=list)
    pressed_s: float | None = None

    @property
    def working(self) -> bool:
        """Whether work is led in time: then something moves in every frame."""
        state = self.session.controller.state
        running = state.stand is Stand.RUNNING
        doing = state.doing(self.session.timeline, state.seen_ms)
        return running and doing is Doing.WORK and not self.session.timeline.bouts[state.bout].open_ended

    def painted(self, begin_s: float) -> None:
        """A frame of the profile was painted, begun at a moment."""
        now = time.perf_counter()
        self.paints.append((now - begin_s) * 1000)
        if self.working:
            self.frames.append((self.session.controller.state.bout, now))

    def press(self) -> None:
        """Press the key of a fault, on a rep that has none yet."""
        if self.working and self.pressed_s is None and not self.session.look().marked:
            self.pressed_s = time.perf_counter()
            event = QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_F, Qt.KeyboardModifier.NoModifier)
            QApplication.postEvent(self.page, event)

    def shown(self) -> None:
        """What a key asked for was painted."""
        if self.pressed_s is not None:
            self.keys.append((time.perf_counter() - self.pressed_s) * 1000)
            self.pressed_s = None

    def hurry(self) -> None:
        """Cut gaps short: work is what is measured."""
        state = self.session.controller.state
        if state.stand is Stand.RUNNING and state.doing(self.session.timeline, state.seen_ms) is Doing.GAP:
            self.session.act(BeginNow())


@pytest.mark.bench
@pytest.mark.skipif(not os.environ.get("DISPLAY"), reason="needs a display")
def test_bench_soak_of_the_athletes_screen_at_1080p(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    session, page = _made(qtbot)
    watch = Watch(page, session)
    _watched(monkeypatch, watch)
    ticker, tidying = Ticker(), Tidying()
    ticker.tick.connect(page.refresh)
    page.due.connect(ticker.soon)
    session.moved.connect(lambda facts: _tidy(tidying, facts))
    timers = [_every(1_000, watch.hurry), _every(KEY_EVERY_MS, watch.press)]
    session.act(Begin())
    ticker.start()
    tidying.begin()
    qtbot.wait(round(WARM_UP_S * 1000))
    watch.frames.clear()
    watch.paints.clear()
    begun, cpu, memory = time.perf_counter(), time.process_time(), _memory_mb()
    while time.perf_counter() - begun < SECONDS and not session.over:
        qtbot.wait(1_000)
    passed, cpu = time.perf_counter() - begun, time.process_time() - cpu
    _print(watch, passed, cpu / passed * 100, _memory_mb() - memory)
    for timer in timers:
        timer.stop()
    ticker.stop()
    tidying.end()
    session.close()
    assert len(watch.frames) > passed, "hardly a frame was painted"
    assert watch.keys, "no key was seen"


def _made(qtbot: QtBot) -> tuple[RunSession, AthletePage]:
    plan = wiring.read_plan(wiring.demo_folder() / "shoulder_rotators.toml").plan
    timeline, clock, speaker = compile_timeline(plan), wiring.make_clock(), SilentSpeaker()
    sound = wiring.make_sound(timeline, speaker, clock, Settings())
    session = RunSession(timeline, clock, speaker, sound, lambda _first, _facts: None)
    family = load_fonts(wiring.resources_folder() / "fonts")
    page = AthletePage(Look(choose(Place.TRAINING), family, type_scale(22)), session, "Hugo")
    page.resize(1920, 1080)
    qtbot.addWidget(page)
    with qtbot.waitExposed(page):
        page.show()
    page.setFocus()
    return session, page


def _watched(monkeypatch: pytest.MonkeyPatch, watch: Watch) -> None:
    profile, words = ProfileView.paintEvent, FittedLabel.paintEvent
    cue = watch.page.findChild(FittedLabel, "coaching_cue")
    assert cue is not None

    def paint_profile(view: ProfileView, event: QPaintEvent) -> None:
        begin = time.perf_counter()
        profile(view, event)
        watch.painted(begin)

    def paint_words(view: FittedLabel, event: QPaintEvent) -> None:
        words(view, event)
        if view is cue:
            watch.shown()

    monkeypatch.setattr(ProfileView, "paintEvent", paint_profile)
    monkeypatch.setattr(FittedLabel, "paintEvent", paint_words)


def _tidy(tidying: Tidying, facts: tuple[Fact, ...]) -> None:
    if any(isinstance(fact, BoutEnded) for fact in facts):
        QTimer.singleShot(0, tidying.between)


def _every(ms: int, act: Callable[[], object]) -> QTimer:
    timer = QTimer(interval=ms)
    timer.timeout.connect(act)
    timer.start()
    return timer


def _memory_mb() -> float:
    pages = int(Path("/proc/self/statm").read_text(encoding="utf-8").split()[1])
    return pages * resource.getpagesize() / 1_000_000


def _print(watch: Watch, passed: float, cpu: float, grown: float) -> None:
    intervals = [
        (later - earlier) * 1000
        for (bout, earlier), (same, later) in zip(watch.frames, watch.frames[1:], strict=False)
        if bout == same
    ]
    late = sum(each > 33 for each in intervals)
    print(f"\nsoak of {passed:.0f} s at {watch.page.width()} x {watch.page.height()}; wanted: {LIMITS}")
    for name, taken in (("interval", intervals), ("paint", watch.paints), ("key to paint", watch.keys)):
        shares = ", ".join(f"{words} {_share(taken, at):.2f}" for words, at in (("p50", 0.5), ("p99", 0.99)))
        print(f"{name} in ms: {shares}, max {max(taken):.2f} ({len(taken)} of them)")
    print(f"intervals over 33 ms: {late}; processor {cpu:.1f} % of a core; memory grew by {grown:.1f} MB")


def _share(taken: list[float], share: float) -> float:
    return sorted(taken)[min(int(len(taken) * share), len(taken) - 1)]
